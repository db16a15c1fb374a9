#pragma once
#include <span>

namespace wrapgauge {

// Words of the program's own data files that findings quote, and what readers of drawings say of a shape, so
// that they come into the list of what is to be translated. A test holds the former against the files.
std::span<const char* const> table_words_known();

}  // namespace wrapgauge
