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

std::string line_and_column(std::string_view bytes, std::size_t position) {
  const std::string_view before = bytes.substr(0, std::min(position == 0 ? 0 : position - 1, bytes.size()));
  const auto line = std::count(before.begin(), before.end(), '\n') + 1;
  const std::size_t last_break = before.rfind('\n');
  const std::size_t column = before.size() - (last_break == std::string_view::npos ? 0 : last_break + 1) + 1;
  return "line " + std::to_string(line) + ", column " + std::to_string(column);
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

std::string kind_of(const json& value) {
  if (value.is_null()) return "empty (null)";
  if (value.is_boolean()) return "true or false";
  if (value.is_array()) return "a list";
  return std::string("a ") + (value.is_string() ? "text" : value.type_name());
}

}  // namespace

Result<json> parse_json(std::string_view bytes, const std::string& where) {
  if (bytes.empty()) return bad_input(where + " is empty; it must hold a JSON object.");
  ParseWatch watch;
  json parsed;
  try {
    parsed = json::parse(bytes, [&watch](int depth, json::parse_event_t event, json& value) {
      return watch(depth, event, value);
    });
  } catch (const json::parse_error& error) {
    return bad_input(where + " is not valid JSON at " + line_and_column(bytes, error.byte) +
                     "; correct the text there (a comma, a quote or a bracket too many or too few).");
  } catch (const json::exception&) {
    return bad_input(where + " holds a number too large to be read; use ordinary numbers.");
  }
  if (watch.too_deep)
    return bad_input(where + " is nested deeper than " + std::to_string(kMaxDepth) + " levels.");
  if (watch.with_nul)
    return bad_input(where + ": the text " + in_quotes(*watch.with_nul) +
                     " holds the character NUL (\\u0000, shown as ?): take it out.");
  if (!watch.repeated_key.empty())
    return bad_input(where + ": the key " + in_quotes(watch.repeated_key) +
                     " stands twice in one object; keep one.");
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
  if (!value.is_object()) fail("must be a JSON object { ... } and is " + kind_of(value) + ".");
}

void JsonObject::fail(std::string message) {
  fail(bad_input(where_ + ": " + message));
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
  if (!found && !failed()) fail(std::string("\"") + key + "\" is missing.");
  return found;
}

double JsonObject::checked_number(const json& value, const std::string& name, NumberRange range) {
  if (!value.is_number()) {
    fail(name + " must be a number and is " + kind_of(value) + ".");
    return range.low;
  }
  const double number = value.get<double>();
  if (number >= range.low && number <= range.high) return number;
  std::string unit(range.unit);
  if (!unit.empty()) unit.insert(unit.begin(), ' ');
  fail(name + " is " + number_text(number) + unit + "; it must lie between " + number_text(range.low) +
       " and " + number_text(range.high) + unit + ".");
  return range.low;
}

void JsonObject::format_one(const char* key) {
  const json* found = find(key);
  if (failed()) return;
  if (!found) return fail(in_quotes(key) + ": 1 is missing, so this is not the kind of file asked for.");
  if (*found != 1) fail(std::string(key) + " must be 1, the only format number this program reads.");
}

double JsonObject::number(const char* key, NumberRange range) {
  const json* found = require(key);
  return found ? checked_number(*found, key, range) : range.low;
}

std::optional<double> JsonObject::optional_number(const char* key, NumberRange range) {
  const json* found = find(key);
  return found ? std::optional(checked_number(*found, key, range)) : std::nullopt;
}

double JsonObject::number_or(const char* key, double fallback, NumberRange range) {
  return optional_number(key, range).value_or(fallback);
}

int JsonObject::whole_number_or(const char* key, int fallback, int low, int high) {
  const json* found = find(key);
  if (!found) return fallback;
  const double number =
      checked_number(*found, key, {static_cast<double>(low), static_cast<double>(high), ""});
  if (number != static_cast<int>(number))
    fail(std::string(key) + " is " + number_text(number) + "; give a whole number.");
  return static_cast<int>(number);
}

std::vector<double> JsonObject::numbers(const char* key, std::size_t count, NumberRange range) {
  std::vector<double> out(count, range.low);
  const json* found = require(key);
  if (!found) return out;
  if (!found->is_array() || found->size() != count) {
    fail(std::string(key) + " must be a list of " + std::to_string(count) + " numbers.");
    return out;
  }
  for (std::size_t i = 0; i < count && !failed(); ++i)
    out[i] = checked_number((*found)[i], std::string(key) + " number " + std::to_string(i + 1), range);
  return out;
}

std::optional<std::string> JsonObject::optional_text(const char* key) {
  const json* found = find(key);
  if (!found) return std::nullopt;
  if (!found->is_string() || found->get_ref<const std::string&>().empty()) {
    fail(std::string(key) + " must be a text in quotes, not empty.");
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
    fail(std::string(key) + " holds nothing but spaces; say it in words.");
  return found;
}

std::string JsonObject::date(const char* key) {
  const std::string found = text(key);
  if (failed() || is_day(found)) return found;
  fail(std::string(key) + " is " + in_quotes(found) + "; write a day as year-month-day, \"2026-11-29\".");
  return {};
}

std::string JsonObject::choice(const char* key, const std::vector<std::string>& allowed) {
  const std::string found = text(key);
  if (failed() || std::find(allowed.begin(), allowed.end(), found) != allowed.end()) return found;
  std::string words;
  for (const std::string& word : allowed) words += (words.empty() ? "" : ", ") + word;
  fail(std::string(key) + " is " + in_quotes(found) + "; it must be one of: " + words + ".");
  return allowed.front();
}

std::string JsonObject::status(const char* key) {
  return choice(key, {"confirmed", "from memory", "judgement", "derived", "common practice"});
}

bool JsonObject::flag_or(const char* key, bool fallback) {
  const json* found = find(key);
  if (!found) return fallback;
  if (!found->is_boolean()) {
    fail(std::string(key) + " must be true or false.");
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
  fail(std::string(key) + " must be a list [ ... ].");
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
    fail("the key " + in_quotes(item.key()) + " is not known; known here: " + known + ".");
    break;
  }
  return problem_;
}

}  // namespace wrapgauge
