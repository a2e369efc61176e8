# Installs the program's part into a folder of its own, and uses it there: BUILD, FOLDER.
function(run)
  execute_process(COMMAND ${ARGV} WORKING_DIRECTORY ${FOLDER} OUTPUT_VARIABLE said COMMAND_ERROR_IS_FATAL ANY)
  set(said "${said}" PARENT_SCOPE)
endfunction()

file(REMOVE_RECURSE ${FOLDER})
file(MAKE_DIRECTORY ${FOLDER})
run(${CMAKE_COMMAND} --install ${BUILD} --prefix ${FOLDER}/there --component program)
file(RENAME ${FOLDER}/there ${FOLDER}/moved) # wherever it is unpacked
run(moved/bin/lengthwise new)
run(moved/bin/lengthwise check plan.swim)
if(NOT said MATCHES "^plan.swim: nothing to mend")
  message(FATAL_ERROR "the installed program says: ${said}")
endif()
run(moved/bin/lengthwise tally moved/share/doc/lengthwise/examples --format json)

foreach(file IN ITEMS man/man1/lengthwise.1* man/man5/lengthwise-notation.5*
                      bash-completion/completions/lengthwise zsh/*/_lengthwise
                      fish/vendor_completions.d/lengthwise.fish doc/lengthwise/copyright)
  file(GLOB found ${FOLDER}/moved/share/${file})
  if(NOT found)
    message(FATAL_ERROR "not installed: share/${file}")
  endif()
endforeach()
