#include "model/casting/casting_rules.hpp"

#include <algorithm>
#include <array>

#include "model/core/json_object.hpp"

namespace wrapgauge {
namespace {

// In the order of CastingRule.
constexpr std::array<const char*, 23> kNames = {"seam width",
                                                "inset gap",
                                                "channel least",
                                                "channel least, thick sheets",
                                                "channel most",
                                                "chamber least",
                                                "chamber most",
                                                "sheet least",
                                                "corner radius",
                                                "outline notch",
                                                "curl by thickness",
                                                "curl by stiffness",
                                                "curl by prestretch",
                                                "twist length",
                                                "shared seam",
                                                "inlet to seam",
                                                "inlet to bony site",
                                                "chamber to keep-clear site",
                                                "closing line on the sheet",
                                                "closure overlap",
                                                "spill",
                                                "trim border",
                                                "fusing layer"};

CastingRuleRow row_from_json(JsonObject& object) {
  CastingRuleRow row;
  row.name = object.text("name");
  row.value = object.number("value", {1e-3, 1000.0, ""});
  row.unit = object.text("unit");
  row.source = object.text("source");
  row.status = object.status("status");
  row.remark = object.text("remark");
  return row;
}

}  // namespace

Result<CastingRules> read_casting_rules(const std::filesystem::path& file) {
  const auto parsed = read_json(file);
  if (!parsed) return parsed.problem();
  JsonObject table(*parsed, file.filename().string());
  table.format_one("wrapgauge-casting");
  CastingRules rules;
  rules.remark = table.text("remark");
  rules.rows.resize(kNames.size());
  std::size_t number = 0;
  for (const auto& item : table.list("rules")) {
    JsonObject object(item, table.place("rule ") + std::to_string(++number));
    const CastingRuleRow row = row_from_json(object);
    const auto name = std::find(kNames.begin(), kNames.end(), row.name);
    if (!object.failed() && name == kNames.end())
      object.fail(Phrase::worded("there is no rule \"%1\".", {name_of(row.name)}));
    if (name != kNames.end()) {
      CastingRuleRow& place = rules.rows[static_cast<std::size_t>(name - kNames.begin())];
      if (!place.name.empty())
        object.fail(Phrase::worded("the rule \"%1\" stands twice; keep one.", {name_of(row.name)}));
      place = row;
    }
    if (auto problem = object.finish()) return *problem;
  }
  for (std::size_t i = 0; i < kNames.size(); ++i)
    if (!table.failed() && rules.rows[i].name.empty())
      table.fail(Phrase::worded("the rule \"%1\" is missing.", {name_of(std::string(kNames[i]))}));
  if (auto problem = table.finish()) return *problem;
  return rules;
}

}  // namespace wrapgauge
