# What all compiled targets of this project share. Projects that only use the headers see none of it.

set(CMAKE_CXX_EXTENSIONS OFF)
if(PROJECT_IS_TOP_LEVEL AND NOT CMAKE_BUILD_TYPE AND NOT CMAKE_CONFIGURATION_TYPES)
  set(CMAKE_BUILD_TYPE Release CACHE STRING "Release, Debug or RelWithDebInfo" FORCE)
endif()

find_program(TAUTEN_CCACHE ccache)
if(TAUTEN_CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
  set(CMAKE_CXX_COMPILER_LAUNCHER ${TAUTEN_CCACHE})
endif()

add_library(tauten_own INTERFACE)
target_link_libraries(tauten_own INTERFACE tauten)
target_compile_options(tauten_own INTERFACE
  $<$<CXX_COMPILER_ID:GNU,Clang,AppleClang>:-Wall;-Wextra;-Wpedantic;-Wconversion;-Wshadow;-Wdouble-promotion>
  # g++ 12 and 13 see overlaps in the standard string that are not there (GCC bug 105651).
  $<$<CXX_COMPILER_ID:GNU>:-Wno-restrict>
  # A release has -O3 from CMake. Square roots in a loop vectorise only if errno is left alone. Never -ffast-math: NaN has a meaning here.
  $<$<AND:$<CXX_COMPILER_ID:GNU,Clang,AppleClang>,$<CONFIG:Release>>:-fno-math-errno>
  # The same roundings on every machine: no fused multiply-add unless it is written.
  $<$<CXX_COMPILER_ID:GNU,Clang,AppleClang>:-ffp-contract=off>)

# Lists source files below the current folder. A new file is noticed at the next build.
macro(tauten_sources variable)
  set(${variable} "")
  foreach(pattern ${ARGN})
    file(GLOB_RECURSE found CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/${pattern})
    list(APPEND ${variable} ${found})
  endforeach()
endmacro()
