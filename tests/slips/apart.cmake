# Included by project(): sources that a slip changes are compiled by themselves, so that putting one in compiles one
# file and not the twelve that a unity build takes for one.
function(compile_slipped_sources_apart)
  file(GLOB patches ${PROJECT_SOURCE_DIR}/tests/slips/*.patch)
  foreach(patch ${patches})
    file(STRINGS ${patch} lines REGEX "^\\+\\+\\+ b/.*\\.cpp")
    foreach(line ${lines})
      string(REGEX REPLACE "^\\+\\+\\+ b/([^\t ]*).*" "\\1" source "${line}")
      get_filename_component(folder ${source} DIRECTORY)
      while(NOT EXISTS ${PROJECT_SOURCE_DIR}/${folder}/CMakeLists.txt)
        get_filename_component(folder ${folder} DIRECTORY)
      endwhile()
      set_source_files_properties(${PROJECT_SOURCE_DIR}/${source} DIRECTORY ${folder}
        PROPERTIES SKIP_UNITY_BUILD_INCLUSION ON)
    endforeach()
  endforeach()
endfunction()
cmake_language(DEFER CALL compile_slipped_sources_apart)
