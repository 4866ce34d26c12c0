# What all compiled targets of this project share. Projects that only use the headers see none of it.

set(CMAKE_CXX_EXTENSIONS OFF)
if(PROJECT_IS_TOP_LEVEL AND NOT CMAKE_BUILD_TYPE AND NOT CMAKE_CONFIGURATION_TYPES)
  set(CMAKE_BUILD_TYPE Release CACHE STRING "Release, Debug or RelWithDebInfo" FORCE)
endif()

find_program(TAUTEN_CCACHE ccache)
if(TAUTEN_CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
  # A clone in another folder finds what this one has compiled.
  set(CMAKE_CXX_COMPILER_LAUNCHER
    ${CMAKE_COMMAND} -E env CCACHE_BASEDIR=${PROJECT_SOURCE_DIR} CCACHE_NOHASHDIR=1 ${TAUTEN_CCACHE})
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

# For a target that is words but for its `loops`: the words are compiled with -Og (or ARGN) in a release, since to be built soon
# matters more there than speed, and a group of them as one file, since all of them pay for the same large headers.
# Tools that look at each file want TAUTEN_UNITY=OFF.
option(TAUTEN_UNITY "Compile source files that share large headers together" ON)
function(tauten_optimise_loops target loops)
  if(NOT ARGN)
    set(ARGN -Og)
  endif()
  target_compile_options(${target} PRIVATE $<$<CONFIG:Release>:${ARGN}>)
  if(loops)
    set_source_files_properties(${loops} PROPERTIES COMPILE_OPTIONS $<$<CONFIG:Release>:-O3>)
  endif()
endfunction()
function(tauten_compile_together target group sources)
  set_target_properties(${target} PROPERTIES UNITY_BUILD ${TAUTEN_UNITY} UNITY_BUILD_MODE GROUP)
  set_source_files_properties(${sources} PROPERTIES UNITY_GROUP ${group})
endfunction()
