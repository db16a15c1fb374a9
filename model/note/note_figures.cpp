#include "model/note/note_figures.hpp"

#include <cctype>
#include <charconv>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/quantity.hpp"

namespace wrapgauge {
namespace {

constexpr int kMostDigits = 6;

// Back from text to the number that a reader sees.
double read_back(const std::string& shown) {
  double value = 0.0;
  std::from_chars(shown.data(), shown.data() + shown.size(), value);
  return value;
}

// One figure: the number that is printed and what follows it.
struct Printed {
  double in_unit;
  int decimals;
  const char* unit;
};

Printed printed(Amount amount, double value) {
  switch (amount) {
    case Amount::kPressure:
      return {value / kPa.si(), 1, " kPa"};
    case Amount::kStrain:
      return {100.0 * value, 0, " %"};
    case Amount::kStretch:
      return {value, 2, " times"};
    case Amount::kExposure:
      break;
  }
  return {value / kPa_min.si(), 1, " kPa·min"};
}

// The mmHg are those of the kPa that are shown, as everywhere.
std::string in_mmhg(Amount amount, const std::string& shown, int more) {
  if (amount != Amount::kPressure && amount != Amount::kExposure) return "";
  return " (" + fixed_text(read_back(shown) * kPa.si() / mmHg.si(), more) +
         (amount == Amount::kPressure ? " mmHg)" : " mmHg·min)");
}

std::string with_digits(Amount amount, double value, int more) {
  const Printed figure = printed(amount, value);
  const std::string shown = fixed_text(figure.in_unit, figure.decimals + more);
  return shown + figure.unit + in_mmhg(amount, shown, more);
}

// Digits beyond the usual ones until `value` is seen to lie above `limit`.
int digits_that_show(Amount amount, double value, double limit) {
  if (value <= limit) return 0;
  const Printed above = printed(amount, value), line = printed(amount, limit);
  for (int more = 0; more < kMostDigits; ++more)
    if (read_back(fixed_text(above.in_unit, above.decimals + more)) >
        read_back(fixed_text(line.in_unit, line.decimals)))
      return more;
  return kMostDigits;
}

}  // namespace

std::string amount_text(Amount amount, double value) {
  return with_digits(amount, value, 0);
}

std::string amount_text_against(Amount amount, double value, double limit) {
  return with_digits(amount, value, digits_that_show(amount, value, limit));
}

std::string limit_text_beside(Amount amount, double limit, double value) {
  return with_digits(amount, limit, digits_that_show(amount, value, limit));
}

std::string at_most_text(Pressure pressure) {
  constexpr double kSlack = 1e-9;  // 2.7 may be stored as 2.6999999
  const double tenths = std::floor(10.0 * (pressure / kPa) + kSlack);
  return pressure_text(0.1 * tenths * kPa);
}

std::string share_text(double share) {
  int decimals = 0;
  if (share > 1.0)
    while (decimals < kMostDigits && read_back(fixed_text(100.0 * share, decimals)) <= 100.0) ++decimals;
  return fixed_text(100.0 * share, decimals) + " %";
}

std::string place_text(const Finding& finding) {
  const std::string place = english(finding.place);
  return place.empty() ? finding.where : place;
}

std::string without_source(const std::string& sentence) {
  std::string text = sentence;
  for (const char* status :
       {" (judgement", " (confirmed", " (from memory", " (derived", " (common practice"}) {
    for (std::size_t at; (at = text.find(status)) != std::string::npos;) {
      std::size_t end = at + 1;
      int depth = 0;
      do {
        depth += text[end] == '(' ? 1 : text[end] == ')' ? -1 : 0;
        ++end;
      } while (depth > 0 && end < text.size());
      text.erase(at, end - at);
    }
  }
  return text;
}

std::string marked(Severity severity, const std::string& words) {
  if (severity == Severity::kNote) return words;
  std::string mark(severity_text(severity));
  mark[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(mark[0])));
  return mark + ": " + words;
}

}  // namespace wrapgauge
