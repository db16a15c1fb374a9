#pragma once
#include <filesystem>

#include "model/core/result.hpp"

namespace wrapgauge {

// The folder with the tables the program ships: the environment variable WRAPGAUGE_RESOURCES, else
// ../share/wrapgauge beside the program, else the source folder it was built from.
Result<std::filesystem::path> resource_folder();

}  // namespace wrapgauge
