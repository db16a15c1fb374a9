#include "app/command/help_format.hpp"

#include <set>

namespace wrapgauge {
namespace {

// What stands in braces behind a flag's name is the parser's own.
std::string without_braces(std::string name) {
  for (auto open = name.find('{'); open != std::string::npos; open = name.find('{')) {
    const auto close = name.find('}', open);
    name.erase(open, close == std::string::npos ? close : close - open + 1);
  }
  return name;
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  for (auto at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
    text.replace(at, from.size(), to);
  return text;
}

// "FLOAT in [1 - 20]" -> "1 to 20"; empty for anything else.
std::string range_of(const std::string& checks) {
  const auto open = checks.find(" in ["), close = checks.rfind(']');
  if (open == std::string::npos || close == std::string::npos || close < open) return {};
  return replaced(checks.substr(open + 5, close - open - 5), " - ", " to ");
}

// "TEXT:{mm,cm}" -> "mm|cm", "FLOAT:..." -> "NUMBER"; a name of our own stays.
std::string value_name(const std::string& type, const std::string& checks) {
  if (!checks.empty() && checks.front() == '{')
    return replaced(checks.substr(1, checks.find('}') - 1), ",", "|");
  return type == "FLOAT" || type == "INT" ? "NUMBER" : type;
}

std::string names_of(const std::set<CLI::Option*>& options) {
  std::string names;
  for (const CLI::Option* option : options) names += (names.empty() ? "" : " or ") + option->get_name();
  return without_braces(names);
}

std::string value_words(const CLI::Option& option) {
  const std::string whole = option.get_type_name();
  const auto colon = whole.find(':');
  const std::string checks = colon == std::string::npos ? "" : whole.substr(colon + 1);
  std::string words = " " + value_name(whole.substr(0, colon), checks);
  const bool many = option.get_expected_max() == CLI::detail::expected_max_vector_size;
  if (many && words.find("...") == std::string::npos) words += " ...";
  const std::string range = range_of(checks);
  if (!range.empty() && option.get_description().find(range) == std::string::npos) words += ", " + range;
  if (!option.get_default_str().empty()) words += "; " + option.get_default_str() + " if not given";
  return words;
}

}  // namespace

std::string HelpFormat::make_option_name(const CLI::Option* option, bool positional) const {
  return without_braces(CLI::Formatter::make_option_name(option, positional));
}

std::string HelpFormat::make_option_opts(const CLI::Option* option) const {
  if (option->get_type_size() == 0) {
    return option->get_excludes().empty() ? std::string()
                                          : " (not with " + names_of(option->get_excludes()) + ")";
  }
  std::string words = value_words(*option);
  if (option->get_required()) words += " (needed)";
  if (!option->get_needs().empty()) words += " (with " + names_of(option->get_needs()) + ")";
  if (!option->get_excludes().empty()) words += " (not with " + names_of(option->get_excludes()) + ")";
  return words;
}

}  // namespace wrapgauge
