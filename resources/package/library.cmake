# The model for programs of others: static libraries, their headers and what find_package(wrapgauge) reads. Not in the
# Debian packages: cmake --install build/package --component library --prefix FOLDER
include(CMakePackageConfigHelpers)
set(stages core geometry material body layout layout_forms wrap casting inflation contact limits plan readers writers
    note pipeline study bodyforms)
add_library(wrapgauge_model INTERFACE)
set_target_properties(wrapgauge_model PROPERTIES EXPORT_NAME wrapgauge)
set(libraries wrapgauge_model)
foreach(stage ${stages})
  set_target_properties(wg_${stage} PROPERTIES EXPORT_NAME ${stage})
  target_link_libraries(wrapgauge_model INTERFACE wg_${stage})
  list(APPEND libraries wg_${stage})
endforeach()
add_custom_target(library_files DEPENDS ${libraries})
set(headers ${CMAKE_INSTALL_INCLUDEDIR}/wrapgauge)
set(settings ${CMAKE_INSTALL_LIBDIR}/cmake/wrapgauge)
install(TARGETS ${libraries} EXPORT wrapgauge_library ARCHIVE DESTINATION ${CMAKE_INSTALL_LIBDIR}/wrapgauge
        COMPONENT library)
install(EXPORT wrapgauge_library FILE wrapgauge-targets.cmake NAMESPACE wrapgauge:: DESTINATION ${settings}
        COMPONENT library)
install(DIRECTORY ${PROJECT_SOURCE_DIR}/model ${PROJECT_SOURCE_DIR}/bodyforms DESTINATION ${headers} COMPONENT library
        FILES_MATCHING PATTERN "*.hpp")
configure_package_config_file(${CMAKE_CURRENT_SOURCE_DIR}/wrapgauge-config.cmake.in wrapgauge-config.cmake
  INSTALL_DESTINATION ${settings})
# Before 1.0 the second number counts for others (docs/changes.md).
write_basic_package_version_file(wrapgauge-config-version.cmake COMPATIBILITY SameMinorVersion)
install(FILES ${CMAKE_CURRENT_BINARY_DIR}/wrapgauge-config.cmake ${CMAKE_CURRENT_BINARY_DIR}/wrapgauge-config-version.cmake
        DESTINATION ${settings} COMPONENT library)
