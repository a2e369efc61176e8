#include "report/html_style.hpp"

namespace lengthwise::report {

std::string_view const html_style =
    R"(:root { --paper: #fbfaf7; --ink: #1b1a18; --soft: #55524b; --line: #c9c5ba; }
@media (prefers-color-scheme: dark) {
  :root { --paper: #17181a; --ink: #eceae4; --soft: #b5b1a7; --line: #4c4b46; }
}
@media print {
  :root { --paper: #ffffff; --ink: #000000; --soft: #333333; --line: #999999; }
}
* { box-sizing: border-box; }
html { background: var(--paper); color: var(--ink); color-scheme: light dark; }
body { max-width: 44rem; margin: 0 auto; padding: 1.5rem 1rem 3rem;
  font: 1rem/1.5 "Source Sans 3", "Noto Sans", "DejaVu Sans", sans-serif; overflow-wrap: anywhere; }
h1, h2, h3, h4 { line-height: 1.25; font-weight: 700; margin: 0; }
h1 { font-size: 1.75rem; text-wrap: balance; }
h2 { font-size: 1.25rem; margin-top: 3rem; padding-bottom: .25rem; border-bottom: 2px solid var(--ink); }
h3 { font-size: 1.125rem; margin-top: 2rem; }
h4 { font-size: 1rem; margin-top: 1.25rem; }
p { margin: .25rem 0; }
a { color: inherit; text-underline-offset: .2em; }
a:focus-visible, figure:focus-visible { outline: 2px solid var(--ink); outline-offset: 3px; }
.soft { color: var(--soft); }
.note { margin: .5rem 0; padding-left: .75rem; border-left: 2px solid var(--line); }
nav ul { list-style: none; margin: .5rem 0 0; padding: 0; }
nav li { padding: .375rem 0; }
nav ul ul { margin: 0 0 0 1rem; }
figure { margin: 1.5rem 0 0; overflow-x: auto; }
figure svg { display: block; margin: 0 auto; }
table { width: 100%; border-collapse: collapse; margin-top: .75rem; font-variant-numeric: tabular-nums; }
th, td { padding: .25rem 0 .25rem .75rem; text-align: left; vertical-align: top; }
th:first-child, td:first-child { padding-left: 0; }
th.figure, td.figure { text-align: right; white-space: nowrap; width: 1%; }
thead th { font-weight: 400; color: var(--soft); border-bottom: 1px solid var(--line); }
tbody th { padding-top: .75rem; }
tbody td { border-bottom: 1px solid var(--line); }
tbody td.figure:first-child { color: var(--soft); }
tfoot td { border-top: 2px solid var(--ink); font-weight: 700; }
footer { margin-top: 3rem; }
@media (min-width: 60rem) { figure { margin-left: -6rem; margin-right: -6rem; } }
@media (max-width: 30rem) {
  th, td { padding-left: .5rem; }
  thead th { font-size: .8125rem; }
}
@media print {
  @page { margin: 15mm; }
  body { max-width: none; padding: 0; font-size: 10.5pt; }
  nav { display: none; }
  h2 { margin-top: 2rem; }
  h3 { margin-top: 1.25rem; }
  h1, h2, h3, h4, p, thead, tbody th { break-after: avoid; }
  .lane, figure, tr { break-inside: avoid; }
  figure svg { max-width: 100%; height: auto; }
  tfoot { display: table-row-group; }
  th, td { padding-top: .125rem; padding-bottom: .125rem; }
}
)";

} // namespace lengthwise::report
