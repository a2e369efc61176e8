#pragma once

#include "check/rule.hpp"

/// Every rule of this program; what each asks stands in the file of its name.
namespace lengthwise::check {

extern Rule const race_rep;
extern Rule const rep_step;
extern Rule const week_growth;
extern Rule const sessions;
extern Rule const session_floor;
extern Rule const taper;
extern Rule const calendar;
extern Rule const slot;
extern Rule const send_off;
extern Rule const rest_band;
extern Rule const whole_lengths;
extern Rule const home_wall;
extern Rule const medley;
extern Rule const shape;
extern Rule const lanes;
extern Rule const feasible;
extern Rule const caution;
extern Rule const second_look;

} // namespace lengthwise::check
