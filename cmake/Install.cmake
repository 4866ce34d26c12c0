# Installs the headers so that `find_package(tauten)` and `tauten::tauten` work in other projects. src/library/ installs the
# compiled library beside them.
include(GNUInstallDirs)
include(CMakePackageConfigHelpers)

set(tauten_package_dir ${CMAKE_INSTALL_LIBDIR}/cmake/tauten)
install(TARGETS tauten EXPORT tautenTargets INCLUDES DESTINATION ${CMAKE_INSTALL_INCLUDEDIR})
install(DIRECTORY include/tauten DESTINATION ${CMAKE_INSTALL_INCLUDEDIR} COMPONENT headers)
install(EXPORT tautenTargets NAMESPACE tauten:: DESTINATION ${tauten_package_dir} COMPONENT headers)
configure_package_config_file(cmake/tautenConfig.cmake.in tautenConfig.cmake INSTALL_DESTINATION ${tauten_package_dir})
write_basic_package_version_file(tautenConfigVersion.cmake COMPATIBILITY SameMinorVersion ARCH_INDEPENDENT)
foreach(component IN ITEMS headers compiled c)  # headers or c may be installed alone
  install(FILES
    ${CMAKE_CURRENT_BINARY_DIR}/tautenConfig.cmake
    ${CMAKE_CURRENT_BINARY_DIR}/tautenConfigVersion.cmake
    DESTINATION ${tauten_package_dir} COMPONENT ${component})
endforeach()
