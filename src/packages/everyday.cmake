# What stands beside the program: its manual, completions, samples.

find_program(LENGTHWISE_GZIP gzip)
file(MAKE_DIRECTORY ${PROJECT_BINARY_DIR}/share)

# A page as it is kept by most systems: packed, without the time at which it was.
function(lengthwise_pack from to)
  if(LENGTHWISE_GZIP)
    execute_process(COMMAND ${LENGTHWISE_GZIP} -9nc ${from} OUTPUT_FILE ${PROJECT_BINARY_DIR}/share/${to}.gz
                            COMMAND_ERROR_IS_FATAL ANY)
    set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${from})
    set(packed ${PROJECT_BINARY_DIR}/share/${to}.gz PARENT_SCOPE)
  else()
    set(packed ${from} PARENT_SCOPE)
  endif()
endfunction()

foreach(section IN ITEMS 1 5)
  file(GLOB pages CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/docs/man/*.${section})
  foreach(page IN LISTS pages)
    cmake_path(GET page FILENAME name)
    lengthwise_pack(${page} ${name})
    install(FILES ${packed} DESTINATION ${CMAKE_INSTALL_MANDIR}/man${section} COMPONENT program)
  endforeach()
endforeach()

if(LENGTHWISE_CARDS)
  file(WRITE ${PROJECT_BINARY_DIR}/share/lengthwise-cards ".so man1/lengthwise.1\n")
  lengthwise_pack(${PROJECT_BINARY_DIR}/share/lengthwise-cards lengthwise-cards.1)
  install(FILES ${packed} DESTINATION ${CMAKE_INSTALL_MANDIR}/man1 RENAME lengthwise-cards.1.gz COMPONENT cards)
endif()

if(EXISTS /etc/debian_version)
  set(LENGTHWISE_ZSH_DEFAULT vendor-completions)
else()
  set(LENGTHWISE_ZSH_DEFAULT site-functions)
endif()
set(LENGTHWISE_ZSH ${LENGTHWISE_ZSH_DEFAULT} CACHE STRING "Folder below share/zsh that zsh looks for completions in")
install(
  FILES docs/completions/lengthwise.bash
  DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions
  RENAME lengthwise
  COMPONENT program)
install(
  FILES docs/completions/_lengthwise
  DESTINATION ${CMAKE_INSTALL_DATADIR}/zsh/${LENGTHWISE_ZSH}
  COMPONENT program)
install(
  FILES docs/completions/lengthwise.fish
  DESTINATION ${CMAKE_INSTALL_DATADIR}/fish/vendor_completions.d
  COMPONENT program)

file(GLOB samples CONFIGURE_DEPENDS sets/*.swim)
install(
  FILES ${samples}
  DESTINATION ${CMAKE_INSTALL_DATADIR}/doc/lengthwise/examples
  COMPONENT program)
