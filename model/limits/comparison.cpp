#include "model/limits/comparison.hpp"

#include "model/core/json_object.hpp"
#include "model/core/number_text.hpp"
#include "model/core/shipped_table.hpp"
#include "model/limits/shipped_limits.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

constexpr NumberRange kClassPressure{1.0, 200.0, "mmHg"};

std::optional<Problem> read_class(const json& value, const std::string& where, Comparisons& out) {
  JsonObject object(value, where);
  CompressionClass row;
  row.scheme = object.text("scheme");
  row.name = object.text("class");
  row.low = object.number("low_mmhg", kClassPressure) * mmHg;
  if (const auto high = object.optional_number("high_mmhg", kClassPressure)) {
    row.high = *high * mmHg;
    if (*row.high < row.low && !object.failed())
      object.fail(Phrase::worded("high_mmhg lies below low_mmhg."));
  }
  row.place = object.text("place");
  row.source = object.text("source");
  // Classes stand in standards that were not read themselves.
  row.status = object.choice(
      "status", {"confirmed", "from memory", "judgement", "derived", "common practice", "secondary page"});
  row.remark = object.text("remark");
  out.classes.push_back(row);
  return object.finish();
}

std::optional<Problem> read_refused(const json& value, const std::string& where, Comparisons& out) {
  JsonObject object(value, where);
  RefusedSource row;
  row.name = object.text("name");
  for (const json& word : object.list("named_as")) {
    // Shorter words would be found in sources that mean something else.
    if (!word.is_string() || word.get_ref<const std::string&>().size() < 3)
      object.fail(Phrase::worded("named_as must hold texts of three letters or more."));
    else
      row.named_as.push_back(word.get<std::string>());
  }
  row.reason = object.text("reason");
  row.source = object.text("source");
  row.status = object.status("status");
  out.refused.push_back(row);
  return object.finish();
}

Result<Comparisons> comparisons_from_json(const Result<json>& parsed, const std::string& where) {
  if (!parsed) return parsed.problem();
  JsonObject table(*parsed, where);
  table.format_one("wrapgauge-comparisons");
  Comparisons out;
  out.remark = table.text("remark");
  for (const json& value : table.list("classes"))
    if (auto problem = read_class(value, table.place("class ") + std::to_string(out.classes.size() + 1), out))
      return *problem;
  for (const json& value : table.list("refused"))
    if (auto problem =
            read_refused(value, table.place("refused ") + std::to_string(out.refused.size() + 1), out))
      return *problem;
  if (auto problem = table.finish()) return *problem;
  return out;
}

}  // namespace

Result<Comparisons> read_comparisons(const std::filesystem::path& file) {
  return comparisons_from_json(read_json(file), file.filename().string());
}

Result<Comparisons> shipped_comparisons() {
  constexpr const char* kName = "comparisons.json";
  return comparisons_from_json(parse_json(shipped_table(kName).value_or(""), kName), kName);
}

std::optional<Phrase> classes_words(const Comparisons& comparisons, Pressure pressure) {
  std::vector<Phrase> classes;
  for (const CompressionClass& row : comparisons.classes) {
    if (pressure < row.low || (row.high && pressure > *row.high)) continue;
    const Phrase low = figures_of(fixed_text(row.low / mmHg, 0));
    const Phrase range =
        row.high ? Phrase::worded("%1 to %2 mmHg", {low, figures_of(fixed_text(*row.high / mmHg, 0))})
                 : Phrase::worded("%1 and more mmHg", {low});
    classes.push_back(Phrase::worded(
        "class %1 of %2 (%3 at the %4, %5)",
        {name_of(row.name), name_of(row.scheme), range, table_words(row.place), table_words(row.status)}));
  }
  if (classes.empty()) return std::nullopt;
  return in_a_row(std::move(classes), ", ");
}

}  // namespace wrapgauge
