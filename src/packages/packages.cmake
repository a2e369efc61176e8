# Packages: `cpack` in the build folder makes Debian packages and a .tar.gz that runs wherever it is unpacked.
# With SOURCE_DATE_EPOCH set, the same sources give the same bytes.

set(LENGTHWISE_MAINTAINER "The lengthwise authors <lengthwise@packages.invalid>"
    CACHE STRING "Who answers for the packages: NAME <ADDRESS>")

set(CPACK_PACKAGE_NAME lengthwise)
set(CPACK_PACKAGE_VENDOR "The lengthwise authors")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY ${PROJECT_DESCRIPTION})
set(CPACK_RESOURCE_FILE_LICENSE ${PROJECT_SOURCE_DIR}/LICENSE)
set(CPACK_STRIP_FILES ON)
set(CPACK_VERBATIM_VARIABLES ON)
set(CPACK_GENERATOR DEB TGZ)

# One archive with all; a Debian package for each part, so that no server has to take in Pango.
set(CPACK_ARCHIVE_COMPONENT_INSTALL OFF)
set(CPACK_DEB_COMPONENT_INSTALL ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_RELEASE 1)
set(CPACK_DEBIAN_PACKAGE_MAINTAINER ${LENGTHWISE_MAINTAINER})
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_SECTION utils)
set(CPACK_DEBIAN_DEVELOPMENT_PACKAGE_SECTION libdevel)
set(CPACK_DEBIAN_PROGRAM_PACKAGE_NAME lengthwise)
set(CPACK_DEBIAN_PROGRAM_PACKAGE_SUGGESTS lengthwise-cards)
set(CPACK_DEBIAN_CARDS_PACKAGE_NAME lengthwise-cards)
set(CPACK_DEBIAN_CARDS_PACKAGE_DEPENDS "lengthwise (= ${PROJECT_VERSION}-1), fonts-inter")
set(CPACK_DEBIAN_DEVELOPMENT_PACKAGE_NAME liblengthwise-dev)
set(CPACK_DEBIAN_DEVELOPMENT_PACKAGE_DEPENDS "libfmt-dev (>= 9), libutf8proc-dev")
set(CPACK_DEBIAN_PROGRAM_DESCRIPTION
    "Reads pool sessions written the way a coach writes them, and adds up metres,
lengths, times and the longest unbroken rep; finds what does not add up, and
prints a session to be read on a wet deck.")
set(CPACK_DEBIAN_CARDS_DESCRIPTION
    "Draws the sessions of a plan on waterproof cards, to print, laminate and take
along.
It is run by \"lengthwise cards\".")
set(CPACK_DEBIAN_DEVELOPMENT_DESCRIPTION
    "The headers and the static library behind lengthwise, to be found by CMake's
find_package(lengthwise).")

# Debian wants its own copyright and changelog beside each.
file(READ ${PROJECT_SOURCE_DIR}/LICENSE license)
string(REGEX REPLACE "^MIT License\n+(Copyright[^\n]*)\n+" "" terms "${license}")
string(REGEX REPLACE "\n\n" "\n.\n" terms "${terms}")
string(REGEX REPLACE "\n+$" "" terms "${terms}")
string(REPLACE "\n" "\n " terms "${terms}")
file(WRITE ${PROJECT_BINARY_DIR}/share/copyright
     "Format: https://www.debian.org/doc/packaging-manuals/copyright-format/1.0/\n\nFiles: *\n"
     "Copyright: 2026 the lengthwise authors\nLicense: Expat\n ${terms}\n")
string(TIMESTAMP now "%a, %d %b %Y %H:%M:%S +0000" UTC) # SOURCE_DATE_EPOCH, where that is set
file(WRITE ${PROJECT_BINARY_DIR}/share/changelog.Debian
     "lengthwise (${PROJECT_VERSION}-1) unstable; urgency=medium\n\n  * What is new stands in changelog.gz.\n\n"
     " -- ${LENGTHWISE_MAINTAINER}  ${now}\n")
set(LENGTHWISE_PARTS program:lengthwise development:liblengthwise-dev)
if(LENGTHWISE_CARDS)
  list(APPEND LENGTHWISE_PARTS cards:lengthwise-cards)
endif()
lengthwise_pack(${PROJECT_BINARY_DIR}/share/changelog.Debian changelog.Debian)
set(debian_changes ${packed})
lengthwise_pack(${PROJECT_SOURCE_DIR}/CHANGELOG.md changelog)
foreach(part IN LISTS LENGTHWISE_PARTS)
  string(REGEX MATCH "^[a-z]+" component ${part})
  string(REGEX REPLACE "^[a-z]+:" "" name ${part})
  install(
    FILES ${PROJECT_BINARY_DIR}/share/copyright ${debian_changes} ${packed}
    DESTINATION ${CMAKE_INSTALL_DATADIR}/doc/${name}
    COMPONENT ${component})
endforeach()

include(CPack)
