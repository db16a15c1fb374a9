#pragma once
#include "model/core/phrase.hpp"

namespace wrapgauge {

// What an errno says, as the system words it; what is met most is said in other languages too.
Phrase system_words(int error);

}  // namespace wrapgauge
