# How everything is compiled: warnings are errors, Qt's lenient conversions are off, ccache is used where it is installed.
if(NOT CMAKE_CXX_COMPILER_LAUNCHER)
    find_program(TIERLOAM_CCACHE ccache)
    if(TIERLOAM_CCACHE)
        # Builds of several presets share what is the same in them, and precompiled headers may be cached.
        set(CMAKE_CXX_COMPILER_LAUNCHER ${CMAKE_COMMAND} -E env CCACHE_BASEDIR=${CMAKE_SOURCE_DIR} CCACHE_NOHASHDIR=1
            CCACHE_SLOPPINESS=pch_defines,time_macros ${TIERLOAM_CCACHE})
    endif()
endif()

add_library(tierloam_flags INTERFACE)
target_compile_features(tierloam_flags INTERFACE cxx_std_20)
target_compile_options(tierloam_flags INTERFACE -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wno-sign-conversion -Wnon-virtual-dtor
    -Woverloaded-virtual -Wold-style-cast -Wcast-qual -Wundef -Wvla -Wformat=2
    -Wno-missing-field-initializers -Werror) # a designated initialiser leaves the rest at its default, which is what it is for
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
    # With optimisation GCC 12 takes the empty state of std::optional for an uninitialised read.
    target_compile_options(tierloam_flags INTERFACE -Wno-maybe-uninitialized)
    target_compile_options(tierloam_flags INTERFACE -Wduplicated-cond -Wlogical-op -Wextra-semi -fpch-preprocess)
endif()
if(CMAKE_CXX_COMPILER_ID STREQUAL "Clang")
    # Clang builds the fuzz targets alone; what counts as a warning is decided with GCC.
    target_compile_options(tierloam_flags INTERFACE -Wno-error -Wno-unknown-pragmas)
endif()
target_compile_definitions(tierloam_flags INTERFACE QT_NO_KEYWORDS QT_NO_CAST_FROM_ASCII QT_NO_CAST_TO_ASCII QT_NO_URL_CAST_FROM_STRING
    QT_NO_CAST_FROM_BYTEARRAY QT_USE_QSTRINGBUILDER QT_NO_NARROWING_CONVERSIONS_IN_CONNECT QT_NO_FOREACH
    QT_DISABLE_DEPRECATED_BEFORE=0x060400 $<$<NOT:$<CONFIG:Release>>:_GLIBCXX_ASSERTIONS>)
# The same bytes wherever the source lies.
target_compile_options(tierloam_flags INTERFACE $<$<CONFIG:Release>:-ffile-prefix-map=${CMAKE_BINARY_DIR}=build>
    $<$<CONFIG:Release>:-ffile-prefix-map=${CMAKE_SOURCE_DIR}=.>)
target_include_directories(tierloam_flags INTERFACE ${CMAKE_SOURCE_DIR})

# Test programs are linked by a quick linker where one is installed; what people use is linked by the compiler's own.
if(CMAKE_BUILD_TYPE STREQUAL "Debug" AND CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND NOT CMAKE_EXE_LINKER_FLAGS MATCHES "-fuse-ld=")
    find_program(TIERLOAM_QUICK_LINKER NAMES ld.mold ld.lld)
    if(TIERLOAM_QUICK_LINKER)
        get_filename_component(linker ${TIERLOAM_QUICK_LINKER} NAME)
        string(REGEX REPLACE "^ld\\." "" linker ${linker})
        add_link_options(-fuse-ld=${linker})
    endif()
endif()

if(TIERLOAM_SANITIZE)
    # -O0 and -g1 keep the build short; the rooms that reckon are optimised (rooms.cmake), or the tests would take an hour.
    add_compile_options(-fsanitize=${TIERLOAM_SANITIZE} -fno-omit-frame-pointer -fno-sanitize-recover=all -O0 -g1)
    add_link_options(-fsanitize=${TIERLOAM_SANITIZE})
endif()
