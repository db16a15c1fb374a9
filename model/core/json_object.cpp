#include "model/core/json_object.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "model/core/day.hpp"
#include "model/core/file.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

constexpr int kMaxDepth = 40;
constexpr std::size_t kLongestQuote = 60;
const json kNothing;
const json kEmptyList = json::array();

// A piece of someone's file inside a sentence: cut short, control characters made visible.
std::string in_quotes(std::string_view text) {
  std::string out = "\"";
  for (char c : text.substr(0, kLongestQuote)) out += static_cast<unsigned char>(c) < 0x20 ? '?' : c;
  return out + (text.size() > kLongestQuote ? "...\"" : "\"");
}

Phrase line_and_column(std::string_view bytes, std::size_t position) {
  const std::string_view before = bytes.substr(0, std::min(position == 0 ? 0 : position - 1, bytes.size()));
  const auto line = std::count(before.begin(), before.end(), '\n') + 1;
  const std::size_t last_break = before.rfind('\n');
  const std::size_t column = before.size() - (last_break == std::string_view::npos ? 0 : last_break + 1) + 1;
  return Phrase::worded("line %1, column %2",
                        {figures_of(std::to_string(line)), figures_of(std::to_string(column))});
}

// What is wrong beside the grammar, found while parsing.
struct ParseWatch {
  std::vector<std::set<std::string>> keys;
  std::string repeated_key;
  std::optional<std::string> with_nul;  // a text or key that holds the character U+0000
  bool too_deep = false;

  bool operator()(int depth, json::parse_event_t event, json& parsed) {
    if (depth > kMaxDepth) too_deep = true;
    if (parsed.is_string() && !with_nul &&
        parsed.get_ref<const std::string&>().find('\0') != std::string::npos)
      with_nul = parsed.get<std::string>();
    if (event == json::parse_event_t::object_start) keys.emplace_back();
    if (event == json::parse_event_t::object_end && !keys.empty()) keys.pop_back();
    if (event == json::parse_event_t::key && !keys.empty()) {
      const std::string& key = parsed.get_ref<const std::string&>();
      if (!keys.back().insert(key).second && repeated_key.empty()) repeated_key = key;
    }
    return !too_deep;
  }
};

Phrase kind_of(const json& value) {
  if (value.is_null()) return Phrase::worded("empty (null)");
  if (value.is_boolean()) return Phrase::worded("true or false");
  if (value.is_array()) return Phrase::worded("a list");
  if (value.is_string()) return Phrase::worded("text");
  return value.is_object() ? Phrase::worded("an object") : Phrase::worded("a number");
}

// Units that are words.
Phrase unit_words(std::string_view unit) {
  return unit == "degrees" ? Phrase::worded("degrees") : name_of(std::string(unit));
}

}  // namespace

Result<json> parse_json(std::string_view bytes, const std::string& where) {
  if (bytes.empty())
    return bad_input(Phrase::worded("%1 is empty; it must hold a JSON object.", {name_of(where)}));
  ParseWatch watch;
  json parsed;
  try {
    parsed = json::parse(bytes, [&watch](int depth, json::parse_event_t event, json& value) {
      return watch(depth, event, value);
    });
  } catch (const json::parse_error& error) {
    return bad_input(
        Phrase::worded("%1 is not valid JSON at %2; correct the text there (a comma, a quote or a bracket "
                       "too many or too few).",
                       {name_of(where), line_and_column(bytes, error.byte)}));
  } catch (const json::exception&) {
    return bad_input(
        Phrase::worded("%1 holds a number too large to be read; use ordinary numbers.", {name_of(where)}));
  }
  if (watch.too_deep)
    return bad_input(
        Phrase::worded("%1 is nested deeper than %2 levels.", {name_of(where), figures_of(kMaxDepth)}));
  if (watch.with_nul)
    return bad_input(
        Phrase::worded("%1: the text %2 holds the character NUL (\\u0000, shown as ?): take it out.",
                       {name_of(where), name_of(in_quotes(*watch.with_nul))}));
  if (!watch.repeated_key.empty())
    return bad_input(Phrase::worded("%1: the key %2 stands twice in one object; keep one.",
                                    {name_of(where), name_of(in_quotes(watch.repeated_key))}));
  return parsed;
}

Result<json> read_json(const std::filesystem::path& file) {
  constexpr std::uintmax_t kMaxBytes = std::uintmax_t{64} << 20;
  const Result<std::string> bytes = read_file(file, kMaxBytes);
  if (!bytes) return bytes.problem();
  return parse_json(*bytes, file.filename().string());
}

JsonObject::JsonObject(const json& value, std::string where)
    : object_(value.is_object() ? value : kNothing), where_(std::move(where)) {
  if (!value.is_object()) fail(Phrase::worded("must be a JSON object { ... } and is %1.", {kind_of(value)}));
}

void JsonObject::fail(Phrase words) {
  fail(bad_input(in_a_row({name_of(where_), std::move(words)}, ": ")));
}

void JsonObject::fail(Problem problem) {
  if (!problem_) problem_ = std::move(problem);
}

const json* JsonObject::find(const char* key) {
  asked_.insert(key);
  if (failed()) return nullptr;
  const auto found = object_.find(key);
  return found == object_.end() ? nullptr : &*found;
}

const json* JsonObject::require(const char* key) {
  const json* found = find(key);
  if (!found && !failed()) fail(Phrase::worded("\"%1\" is missing.", {name_of(key)}));
  return found;
}

double JsonObject::checked_number(const json& value, const Phrase& name, NumberRange range) {
  if (!value.is_number()) {
    fail(Phrase::worded("%1 must be a number and is %2.", {name, kind_of(value)}));
    return range.low;
  }
  const double number = value.get<double>();
  if (number >= range.low && number <= range.high) return number;
  std::vector<Phrase> values{name, figures_of(number_text(number)), figures_of(number_text(range.low)),
                             figures_of(number_text(range.high))};
  if (range.unit.empty()) {
    fail(Phrase::worded("%1 is %2; it must lie between %3 and %4.", std::move(values)));
  } else {
    values.push_back(unit_words(range.unit));
    fail(Phrase::worded("%1 is %2 %5; it must lie between %3 and %4 %5.", std::move(values)));
  }
  return range.low;
}

void JsonObject::format_one(const char* key) {
  const json* found = find(key);
  if (failed()) return;
  if (!found)
    return fail(Phrase::worded("%1: 1 is missing, so this is not the kind of file asked for.",
                               {name_of(in_quotes(key))}));
  if (*found != 1)
    fail(Phrase::worded("%1 must be 1, the only format number this program reads.", {name_of(key)}));
}

double JsonObject::number(const char* key, NumberRange range) {
  const json* found = require(key);
  return found ? checked_number(*found, name_of(key), range) : range.low;
}

std::optional<double> JsonObject::optional_number(const char* key, NumberRange range) {
  const json* found = find(key);
  return found ? std::optional(checked_number(*found, name_of(key), range)) : std::nullopt;
}

double JsonObject::number_or(const char* key, double fallback, NumberRange range) {
  return optional_number(key, range).value_or(fallback);
}

int JsonObject::whole_number_or(const char* key, int fallback, int low, int high) {
  const json* found = find(key);
  if (!found) return fallback;
  const double number =
      checked_number(*found, name_of(key), {static_cast<double>(low), static_cast<double>(high), ""});
  if (number != static_cast<int>(number))
    fail(Phrase::worded("%1 is %2; give a whole number.", {name_of(key), figures_of(number_text(number))}));
  return static_cast<int>(number);
}

std::vector<double> JsonObject::numbers(const char* key, std::size_t count, NumberRange range) {
  std::vector<double> out(count, range.low);
  const json* found = require(key);
  if (!found) return out;
  if (!found->is_array() || found->size() != count) {
    fail(Phrase::worded("%1 must be a list of %2 numbers.",
                        {name_of(key), figures_of(static_cast<int>(count))}));
    return out;
  }
  for (std::size_t i = 0; i < count && !failed(); ++i)
    out[i] = checked_number(
        (*found)[i], Phrase::worded("%1 number %2", {name_of(key), figures_of(static_cast<int>(i + 1))}),
        range);
  return out;
}

std::optional<std::string> JsonObject::optional_text(const char* key) {
  const json* found = find(key);
  if (!found) return std::nullopt;
  if (!found->is_string() || found->get_ref<const std::string&>().empty()) {
    fail(Phrase::worded("%1 must be text in quotes, not empty.", {name_of(key)}));
    return std::nullopt;
  }
  return found->get<std::string>();
}

std::string JsonObject::text_or(const char* key, std::string fallback) {
  return optional_text(key).value_or(std::move(fallback));
}

std::string JsonObject::text(const char* key) {
  return require(key) ? text_or(key, {}) : std::string();
}

std::string JsonObject::said(const char* key) {
  const std::string found = text(key);
  if (!failed() && found.find_first_not_of(" \t\r\n") == std::string::npos)
    fail(Phrase::worded("%1 holds nothing but spaces; say it in words.", {name_of(key)}));
  return found;
}

std::string JsonObject::date(const char* key) {
  const std::string found = text(key);
  if (failed() || is_day(found)) return found;
  fail(Phrase::worded("%1 is %2; write a day as year-month-day, \"2026-11-29\".",
                      {name_of(key), name_of(in_quotes(found))}));
  return {};
}

std::string JsonObject::choice(const char* key, const std::vector<std::string>& allowed) {
  const std::string found = text(key);
  if (failed() || std::find(allowed.begin(), allowed.end(), found) != allowed.end()) return found;
  std::string words;
  for (const std::string& word : allowed) words += (words.empty() ? "" : ", ") + word;
  fail(Phrase::worded("%1 is %2; it must be one of: %3.",
                      {name_of(key), name_of(in_quotes(found)), name_of(words)}));
  return allowed.front();
}

std::string JsonObject::status(const char* key) {
  return choice(key, {"confirmed", "from memory", "judgement", "derived", "common practice"});
}

bool JsonObject::flag_or(const char* key, bool fallback) {
  const json* found = find(key);
  if (!found) return fallback;
  if (!found->is_boolean()) {
    fail(Phrase::worded("%1 must be true or false.", {name_of(key)}));
    return fallback;
  }
  return found->get<bool>();
}

bool JsonObject::has(const char* key) {
  return find(key) != nullptr;
}

const json& JsonObject::value(const char* key) {
  const json* found = require(key);
  return found ? *found : kNothing;
}

const json& JsonObject::list(const char* key) {
  const json* found = require(key);
  if (!found) return kEmptyList;
  if (found->is_array()) return *found;
  fail(Phrase::worded("%1 must be a list [ ... ].", {name_of(key)}));
  return kEmptyList;
}

const json& JsonObject::list_or_empty(const char* key) {
  return has(key) ? list(key) : kEmptyList;
}

std::optional<Problem> JsonObject::finish() {
  if (failed()) return problem_;
  for (const auto& item : object_.items()) {
    if (asked_.contains(item.key())) continue;
    std::string known;
    for (const std::string& key : asked_) known += (known.empty() ? "" : ", ") + key;
    fail(Phrase::worded("the key %1 is not known; known here: %2.",
                        {name_of(in_quotes(item.key())), name_of(known)}));
    break;
  }
  return problem_;
}

}  // namespace wrapgauge
