# Untested, see ../../README.md. Builds from the working copy that this file stands in.
get_filename_component(SOURCE_PATH "${CMAKE_CURRENT_LIST_DIR}/../../.." ABSOLUTE)

vcpkg_check_features(OUT_FEATURE_OPTIONS features FEATURES c TAUTEN_C)
if(NOT "c" IN_LIST FEATURES)
  set(VCPKG_BUILD_TYPE release) # headers only
endif()
vcpkg_cmake_configure(
  SOURCE_PATH "${SOURCE_PATH}"
  OPTIONS ${features} -DTAUTEN_COMMAND=OFF -DTAUTEN_PYTHON=OFF -DTAUTEN_TESTS=OFF -DTAUTEN_BENCHMARKS=OFF)
vcpkg_cmake_install()
vcpkg_cmake_config_fixup(CONFIG_PATH lib/cmake/tauten)
if("c" IN_LIST FEATURES)
  vcpkg_fixup_pkgconfig()
  file(REMOVE_RECURSE "${CURRENT_PACKAGES_DIR}/debug/include")
else()
  file(REMOVE_RECURSE "${CURRENT_PACKAGES_DIR}/lib")
endif()
vcpkg_install_copyright(FILE_LIST "${SOURCE_PATH}/LICENSE")
