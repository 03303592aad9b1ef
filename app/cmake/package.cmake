# What stands around the program on a desktop, where it is installed, and the Debian package:  sh app/package.sh
# The same source gives the same bytes: times come from SOURCE_DATE_EPOCH, or from the last commit when it is not set.
include(GNUInstallDirs)

set(TIERLOAM_MAINTAINER "Tierloam <tierloam@example.org>" CACHE STRING "Who publishes the package: name and address")
if(DEFINED ENV{SOURCE_DATE_EPOCH})
    set(epoch $ENV{SOURCE_DATE_EPOCH})
else()
    execute_process(COMMAND git log -1 --format=%ct WORKING_DIRECTORY ${CMAKE_SOURCE_DIR} OUTPUT_VARIABLE epoch
        OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
    if(NOT epoch)
        set(epoch 0)
    endif()
    set(ENV{SOURCE_DATE_EPOCH} ${epoch}) # for string(TIMESTAMP) below
endif()
string(TIMESTAMP TIERLOAM_RELEASE_DAY "%Y-%m-%d" UTC)
string(TIMESTAMP TIERLOAM_RELEASE_TIME "%a, %d %b %Y %H:%M:%S +0000" UTC)

# The number by which a household file is known, read where it is defined.
file(STRINGS ${CMAKE_SOURCE_DIR}/core/store/schema.h line REGEX "applicationId = 0x")
string(REGEX MATCH "0x[0-9a-f]+" TIERLOAM_APPLICATION_ID "${line}")
if(NOT TIERLOAM_APPLICATION_ID)
    message(FATAL_ERROR "core/store/schema.h names no applicationId")
endif()

set(desktop ${CMAKE_CURRENT_BINARY_DIR}/desktop)
set(name tierloam.metainfo.xml)
configure_file(desktop/tierloam.xml.in ${desktop}/tierloam.xml @ONLY)
configure_file(desktop/${name}.in ${desktop}/${name} @ONLY)
configure_file(desktop/changelog.in ${desktop}/changelog @ONLY)

add_executable(tierloam-icons icons.cpp)
target_link_libraries(tierloam-icons PRIVATE tierloam_flags Qt6::Svg)
add_executable(tierloam-man man_page.cpp command_line.cpp command_line.h)
target_link_libraries(tierloam-man PRIVATE tierloam_flags room_core_quantity Qt6::Core)
target_compile_definitions(tierloam-man PRIVATE TIERLOAM_VERSION="${PROJECT_VERSION}")

set(sizes 16 22 24 32 48 64 128 256 512)
list(TRANSFORM sizes REPLACE "(.+)" "${desktop}/icons/\\1.png" OUTPUT_VARIABLE pictures)
add_custom_command(OUTPUT ${pictures} COMMAND tierloam-icons ${CMAKE_CURRENT_SOURCE_DIR}/desktop/tierloam.svg ${desktop}/icons ${sizes}
    DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/desktop/tierloam.svg tierloam-icons VERBATIM)
add_custom_command(OUTPUT ${desktop}/tierloam.1 COMMAND tierloam-man ${TIERLOAM_RELEASE_DAY} > ${desktop}/tierloam.1 DEPENDS tierloam-man)
# gzip without a name and a time in it.
foreach(file tierloam.1 changelog)
    add_custom_command(OUTPUT ${desktop}/${file}.gz COMMAND gzip -9nc ${desktop}/${file} > ${desktop}/${file}.gz DEPENDS ${desktop}/${file})
endforeach()
add_custom_target(tierloam_desktop ALL DEPENDS ${pictures} ${desktop}/tierloam.1.gz ${desktop}/changelog.gz)

install(TARGETS tierloam RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(FILES desktop/tierloam.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${desktop}/tierloam.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages)
install(FILES ${desktop}/${name} DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES desktop/tierloam.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
foreach(size ${sizes})
    install(FILES ${desktop}/icons/${size}.png DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/${size}x${size}/apps RENAME tierloam.png)
endforeach()
install(FILES ${desktop}/tierloam.1.gz DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
install(FILES desktop/copyright ${desktop}/changelog.gz DESTINATION ${CMAKE_INSTALL_DATADIR}/doc/tierloam)

# Everything that is drawn in the window's title bar and on its page "About" is inside the program.
set(inside ${desktop}/icons/64.png ${desktop}/icons/256.png)
set_source_files_properties(${inside} PROPERTIES GENERATED ON)
qt_add_resources(tierloam icon PREFIX /icon BASE ${desktop}/icons FILES ${inside})

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME tierloam)
set(CPACK_PACKAGE_VENDOR Tierloam)
set(CPACK_PACKAGE_CONTACT "${TIERLOAM_MAINTAINER}")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "journal and estimates for stacked-tray worm bins")
set(CPACK_PACKAGE_DESCRIPTION "Tierloam keeps the record of a household's stacks of worm bins and makes of
it an estimate of what goes on inside: how many worms there are, how much
food is left, how much of each tray is castings, when the bottom tray is
ready and when its turn comes. Every estimate comes with its range.
.
It draws each stack from the side, says what is due and why, plans the
year's harvests, and prints sheets of a stack and labels for trays. It uses
no network.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES TRUE)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION TRUE)
# What it links is found by dpkg-shlibdeps; what is only loaded while it runs is not: SQLite's driver, the reader of SVG, the font of paper.
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libqt6sql6-sqlite, libqt6svg6, fonts-dejavu-core")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "qt6-translations-l10n, qt6-wayland")
set(CPACK_DEBIAN_COMPRESSION_TYPE xz)
set(CPACK_PROJECT_CONFIG_FILE ${CMAKE_CURRENT_BINARY_DIR}/package_times.cmake)
set(CPACK_PRE_BUILD_SCRIPTS ${CMAKE_CURRENT_BINARY_DIR}/package_touch.cmake)
file(CONFIGURE OUTPUT ${CPACK_PROJECT_CONFIG_FILE} CONTENT "set(ENV{SOURCE_DATE_EPOCH} @epoch@)\n" @ONLY)
# The time of every file is that of the source, not that of this build.
file(CONFIGURE OUTPUT ${CPACK_PRE_BUILD_SCRIPTS} @ONLY CONTENT
    "execute_process(COMMAND find . -exec touch -h -d @@epoch@ {} + WORKING_DIRECTORY \${CPACK_TEMPORARY_INSTALL_DIRECTORY})\n")
include(CPack)
