#pragma once
// Reading JSON strictly: every key is asked for by name and range, what nobody asked for is refused.
// Include from .cpp files only; the rest of the library does not see the JSON library.
//
//   JsonObject object(json, "plan.json");
//   plan.friction = object.number_or("friction", 0.5, {0.0, 2.0, ""});
//   if (auto problem = object.finish()) return *problem;

#include <filesystem>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

// Rejects syntax errors (with line and column), keys that stand twice in one object and nesting beyond 40
// levels.
Result<nlohmann::json> parse_json(std::string_view bytes, const std::string& where);
// Read and parsed; at most 64 MiB.
Result<nlohmann::json> read_json(const std::filesystem::path& file);

struct NumberRange {
  double low, high;  // both allowed
  std::string_view unit;
};

// Keeps the first problem it meets; from then on every getter returns a default at once.
class JsonObject {
 public:
  // `where` names the place for people: "plan.json, inflation 2".
  JsonObject(const nlohmann::json& value, std::string where);

  // The key that says what the file is and holds its format number; only 1 is known yet.
  void format_one(const char* key);
  double number(const char* key, NumberRange range);
  double number_or(const char* key, double fallback, NumberRange range);
  std::optional<double> optional_number(const char* key, NumberRange range);
  int whole_number_or(const char* key, int fallback, int low, int high);
  // A list of exactly `count` numbers.
  std::vector<double> numbers(const char* key, std::size_t count, NumberRange range);

  std::string text(const char* key);  // not empty
  std::string said(const char* key);  // not empty, and more than spaces
  std::string date(const char* key);  // a day of the calendar, "2026-11-29"
  std::string text_or(const char* key, std::string fallback);
  std::optional<std::string> optional_text(const char* key);
  // One of the words allowed; the first of them when it is missing or wrong.
  std::string choice(const char* key, const std::vector<std::string>& allowed);
  // Where a physical value stands: confirmed | from memory | judgement | derived | common practice.
  std::string status(const char* key);
  bool flag_or(const char* key, bool fallback);

  bool has(const char* key);                     // counts as asked for
  const nlohmann::json& value(const char* key);  // any kind; a null value when it is missing
  const nlohmann::json& list(const char* key);   // an empty list when missing and reported
  const nlohmann::json& list_or_empty(const char* key);

  const std::string& where() const { return where_; }
  std::string place(const char* key) const { return where_ + ", " + key; }

  void fail(Phrase words);  // "WHERE: words"
  void fail(Problem problem);
  bool failed() const { return problem_.has_value(); }
  // The first problem, or an unknown key, or a key missing.
  std::optional<Problem> finish();

 private:
  const nlohmann::json* find(const char* key);
  const nlohmann::json* require(const char* key);
  double checked_number(const nlohmann::json& value, const Phrase& name, NumberRange range);

  const nlohmann::json& object_;
  std::string where_;
  std::set<std::string, std::less<>> asked_;
  std::optional<Problem> problem_;
};

}  // namespace wrapgauge
