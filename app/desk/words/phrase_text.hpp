#pragma once
// What the model says, in the language of the window and with its decimal mark.

#include <QString>

#include "model/core/phrase.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

QString text(const Phrase& phrase);
QString text(const Problem& problem);

// "4.2 kPa": every point is a decimal point.
QString figures_text(const std::string& figures);
QString fixed_words(double value, int decimals);  // "4.0"

}  // namespace wrapgauge
