# A room is a folder and a target. It sees only itself and the rooms it names; the test `rooms` holds every #include to that.
add_library(tierloam_flags INTERFACE)
target_compile_options(tierloam_flags INTERFACE -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wno-sign-conversion -Wnon-virtual-dtor
    -Woverloaded-virtual -Wold-style-cast -Werror)
target_compile_definitions(tierloam_flags INTERFACE QT_NO_CAST_FROM_ASCII QT_NO_CAST_TO_ASCII QT_NO_URL_CAST_FROM_STRING
    QT_NO_CAST_FROM_BYTEARRAY QT_USE_QSTRINGBUILDER QT_NO_NARROWING_CONVERSIONS_IN_CONNECT QT_NO_FOREACH QT_DISABLE_DEPRECATED_BEFORE=0x060400)
target_include_directories(tierloam_flags INTERFACE ${CMAKE_SOURCE_DIR})

set_property(GLOBAL PROPERTY TIERLOAM_ROOMS "")

# tierloam_room(core/journal USES core/quantity [LINKS Qt6::Core …])
# Sources are all *.cpp and *.h of the folder itself.
function(tierloam_room name)
    cmake_parse_arguments(ROOM "" "" "USES;LINKS" ${ARGN})
    string(REPLACE "/" "_" target ${name})
    set(target room_${target})
    file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/${name}/*.cpp ${CMAKE_SOURCE_DIR}/${name}/*.h)
    add_library(${target} STATIC ${sources})
    set_target_properties(${target} PROPERTIES LINKER_LANGUAGE CXX)
    target_link_libraries(${target} PUBLIC tierloam_flags ${ROOM_LINKS})
    foreach(used ${ROOM_USES})
        string(REPLACE "/" "_" usedTarget ${used})
        target_link_libraries(${target} PUBLIC room_${usedTarget})
    endforeach()
    string(JOIN "," uses ${ROOM_USES})
    set_property(GLOBAL APPEND PROPERTY TIERLOAM_ROOMS "${name}:${uses}")
endfunction()
