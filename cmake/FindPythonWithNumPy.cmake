# Sets TAUTEN_PYTHON_EXECUTABLE to the first interpreter that has NumPy and the C headers, whatever comes first on the
# search path. If the tests are built, one that has pytest as well is preferred. Setting the variable beforehand wins.

if(NOT EXISTS "${TAUTEN_PYTHON_EXECUTABLE}")
  set(needs numpy)
  if(TAUTEN_TESTS)
    set(needs "numpy, pytest" numpy)
  endif()
  set(candidates python3 python3.13 python3.12 python3.11 python3.10 /usr/bin/python3 /usr/local/bin/python3)
  set(found "")
  foreach(need IN LISTS needs)
    foreach(candidate IN LISTS candidates)
      execute_process(
        COMMAND ${candidate} -c "import ${need}, os, sys, sysconfig
assert os.path.exists(os.path.join(sysconfig.get_path('include'), 'Python.h'))
print(sys.executable)"
        RESULT_VARIABLE result OUTPUT_VARIABLE executable OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
      if(result EQUAL 0)
        set(found "${executable}")
        break()
      endif()
    endforeach()
    if(found)
      break()
    endif()
  endforeach()
  if(NOT found)
    message(FATAL_ERROR "No Python 3 with NumPy and the C headers was found among: ${candidates}. "
      "Install python3-dev and python3-numpy, or name one with -DTAUTEN_PYTHON_EXECUTABLE=/path/to/python3.")
  endif()
  set(TAUTEN_PYTHON_EXECUTABLE "${found}" CACHE FILEPATH "Interpreter for the package and the tests" FORCE)
endif()
message(STATUS "Python with NumPy: ${TAUTEN_PYTHON_EXECUTABLE}")
