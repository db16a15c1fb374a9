#include "model/study/uncertain_input.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "model/core/json_object.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

using TableJson = nlohmann::json;

struct Known {
  UncertainQuantity quantity;
  const char* name;
  const char* unit;
  double least, most;  // what a table may say
};

constexpr std::array kKnown = {
    Known{UncertainQuantity::kSkinModulus, "skin sheet modulus", "", 0.1, 10.0},
    Known{UncertainQuantity::kOuterModulus, "outer sheet modulus", "", 0.1, 10.0},
    Known{UncertainQuantity::kSkinThickness, "skin sheet thickness", "mm", -5.0, 5.0},
    Known{UncertainQuantity::kOuterThickness, "outer sheet thickness", "mm", -5.0, 5.0},
    Known{UncertainQuantity::kTissueStiffness, "tissue stiffness", "", 0.05, 20.0},
    Known{UncertainQuantity::kTissueDepth, "tissue depth", "", 0.2, 5.0},
    Known{UncertainQuantity::kFriction, "friction", "", 0.0, 3.0},
    Known{UncertainQuantity::kGirth, "girth", "", 0.5, 2.0},
    Known{UncertainQuantity::kClosingLength, "closing length", "mm", -100.0, 100.0},
    Known{UncertainQuantity::kGaugePressure, "gauge pressure", "kPa", -10.0, 10.0},
    Known{UncertainQuantity::kFillVolume, "fill volume", "", 0.5, 2.0},
};

std::vector<std::string> known_names() {
  std::vector<std::string> names;
  for (const Known& known : kKnown) names.emplace_back(known.name);
  return names;
}

const Known& known_of(const std::string& name) {
  return *std::find_if(kKnown.begin(), kKnown.end(), [&](const Known& k) { return name == k.name; });
}

void read_range(JsonObject& object, const Known& known, UncertainInput& input) {
  const NumberRange range{known.least, known.most, known.unit};
  input.low = object.number("low", range);
  input.high = object.number("high", range);
  input.logarithmic = object.has("scale") && object.choice("scale", {"even", "log"}) == "log";
  if (object.failed()) return;
  if (input.low >= input.high)
    object.fail(Phrase::worded("low is %1 and high %2; low must be the smaller one.",
                               {figures_of(number_text(input.low)), figures_of(number_text(input.high))}));
  if (input.logarithmic && input.low <= 0.0)
    object.fail(
        Phrase::worded("a log scale needs low above 0, and it is %1.", {figures_of(number_text(input.low))}));
}

Result<UncertainInput> input_from_json(const TableJson& value, const std::string& where) {
  JsonObject object(value, where);
  const Known& known = known_of(object.choice("input", known_names()));
  UncertainInput input;
  input.quantity = known.quantity;
  input.name = known.name;
  input.unit = known.unit;
  const bool modulus =
      known.quantity == UncertainQuantity::kSkinModulus || known.quantity == UncertainQuantity::kOuterModulus;
  input.band_of_grade = modulus && object.flag_or("band_of_grade", false);
  if (input.band_of_grade)
    input.logarithmic = true;
  else
    read_range(object, known, input);
  input.source = object.text("source");
  input.status = object.status("status");
  input.remark = object.text_or("remark", "");
  if (auto problem = object.finish()) return *problem;
  return input;
}

void read_inputs(JsonObject& table, SpreadTable& spread) {
  for (const TableJson& value : table.list("inputs")) {
    if (table.failed()) return;
    auto input = input_from_json(value, table.place("inputs ") + std::to_string(spread.inputs.size() + 1));
    if (!input) return table.fail(input.problem());
    for (const UncertainInput& before : spread.inputs)
      if (before.quantity == input->quantity)
        return table.fail(Phrase::worded("the input '%1' stands twice; keep one.", {name_of(before.name)}));
    spread.inputs.push_back(std::move(input).value());
  }
}

bool any_by_volume(const Plan& plan, bool volume) {
  return std::any_of(plan.inflation.begin(), plan.inflation.end(), [&](const InletProgram& program) {
    return std::holds_alternative<Pressure>(program.target) != volume;
  });
}

bool applies(const UncertainInput& input, const Plan& plan) {
  switch (input.quantity) {
    case UncertainQuantity::kClosingLength:
      return plan.layout.closure.has_value();
    case UncertainQuantity::kGaugePressure:
      return any_by_volume(plan, false);
    case UncertainQuantity::kFillVolume:
      return any_by_volume(plan, true);
    default:
      return true;
  }
}

std::optional<Problem> fill_band(const Plan& plan, const Resources& resources, UncertainInput& input) {
  const Sheet& sheet =
      input.quantity == UncertainQuantity::kSkinModulus ? plan.layout.skin_sheet : plan.layout.outer_sheet;
  const auto grade = find_grade(resources.silicones, sheet.material);
  if (!grade) return grade.problem();
  input.low = grade->stiffness_band_low;
  input.high = grade->stiffness_band_high;
  input.remark = "Stiffness band of silicone " + grade->hardness + ". " + grade->caution;
  return std::nullopt;
}

}  // namespace

double UncertainInput::value(double share) const {
  if (logarithmic) return low * std::pow(high / low, share);
  return low + (high - low) * share;
}

Result<SpreadTable> read_spread_table(const std::filesystem::path& file) {
  const Result<TableJson> parsed = read_json(file);
  if (!parsed) return parsed.problem();
  JsonObject table(*parsed, file.filename().string());
  table.format_one("wrapgauge-spread");
  SpreadTable spread;
  spread.name = table.text("name");
  spread.remark = table.text("remark");
  spread.seed = static_cast<std::uint64_t>(table.whole_number_or("seed", 1, 0, 1000000000));
  spread.runs = table.whole_number_or("runs", 32, 8, 100000);
  spread.preview_edge = table.number_or("preview_edge_mm", 8.0, {1.0, 30.0, "mm"}) * mm;
  read_inputs(table, spread);
  if (!table.failed() && spread.inputs.empty())
    table.fail(Phrase::worded("inputs is empty; name at least one."));
  if (auto problem = table.finish()) return *problem;
  return spread;
}

Result<std::vector<UncertainInput>> inputs_of_plan(const SpreadTable& table, const Plan& plan,
                                                   const Resources& resources) {
  std::vector<UncertainInput> inputs;
  for (UncertainInput input : table.inputs) {
    if (!applies(input, plan)) continue;
    if (input.band_of_grade) {
      if (auto problem = fill_band(plan, resources, input)) return *problem;
      if (input.low == input.high) continue;  // the grade gives no band
    }
    inputs.push_back(std::move(input));
  }
  return inputs;
}

}  // namespace wrapgauge
