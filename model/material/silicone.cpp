#include "model/material/silicone.hpp"

#include <array>
#include <set>
#include <utility>

#include "model/core/json_object.hpp"
#include "model/core/number_text.hpp"
#include "model/core/said_problem.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

constexpr NumberRange kModulus{-1e5, 1e5, "kPa"};

Result<HyperelasticLaw> ogden_from_json(const json& list, const std::string& where) {
  Ogden law;
  if (!list.is_array())
    return bad_input(Phrase::worded("%1 must be a list of terms { mu_kpa, alpha }.", {name_of(where)}));
  for (const json& item : list) {
    JsonObject term(item, where + ", term " + std::to_string(law.terms.size() + 1));
    law.terms.push_back({term.number("mu_kpa", kModulus) * kPa, term.number("alpha", {-30.0, 30.0, ""})});
    if (auto problem = term.finish()) return *problem;
  }
  return HyperelasticLaw(law);
}

Result<HyperelasticLaw> invariant_law_from_json(const std::string& name, const json& coefficients,
                                                const std::string& where) {
  JsonObject object(coefficients, where);
  const auto modulus = [&](const char* key) { return object.number(key, kModulus) * kPa; };
  HyperelasticLaw law;
  if (name == "neo-hookean") law = NeoHookean{modulus("mu_kpa")};
  if (name == "mooney-rivlin") law = MooneyRivlin{modulus("c1_kpa"), modulus("c2_kpa")};
  if (name == "yeoh") law = Yeoh{modulus("c1_kpa"), modulus("c2_kpa"), modulus("c3_kpa")};
  if (auto problem = object.finish()) return *problem;
  return law;
}

// {"NAME": coefficients} with exactly one name.
Result<HyperelasticLaw> law_from_json(const json& value, const std::string& where) {
  static const std::set<std::string> kNames = {"neo-hookean", "mooney-rivlin", "yeoh", "ogden"};
  if (!value.is_object() || value.size() != 1 || !kNames.contains(value.begin().key())) {
    return bad_input(Phrase::worded("%1 must hold exactly one of neo-hookean, mooney-rivlin, yeoh or ogden.",
                                    {name_of(where)}));
  }
  const std::string& name = value.begin().key();
  Result<HyperelasticLaw> law = name == "ogden"
                                    ? ogden_from_json(value.front(), where + ", ogden")
                                    : invariant_law_from_json(name, value.front(), where + ", " + name);
  if (!law) return law;
  Result<HyperelasticLaw> sound = checked(std::move(law).value());
  return sound ? sound : Result<HyperelasticLaw>(told_of(where, sound.problem()));
}

// Two numbers, the second not below the first.
std::array<double, 2> span_of(JsonObject& object, const char* key, NumberRange range) {
  const std::vector<double> ends = object.numbers(key, 2, range);
  if (!object.failed() && ends[0] > ends[1]) {
    object.fail(
        Phrase::worded("%1 runs from %2 down to %3; write the smaller number first.",
                       {name_of(key), figures_of(number_text(ends[0])), figures_of(number_text(ends[1]))}));
  }
  return {ends[0], ends[1]};
}

Result<SiliconeGrade> grade_from_json(const json& row, const std::string& where) {
  JsonObject object(row, where);
  SiliconeGrade grade;
  grade.hardness = object.text("hardness");
  const json& law_json = object.value("law");
  if (!object.failed()) {
    Result<HyperelasticLaw> law = law_from_json(law_json, object.place("law"));
    if (law)
      grade.law = std::move(law).value();
    else
      object.fail(law.problem());
  }
  const auto fitted = span_of(object, "fitted_stretch", {0.1, 20.0, ""});
  const auto band = span_of(object, "stiffness_band", {0.1, 10.0, ""});
  grade.stretch_min = fitted[0], grade.stretch_max = fitted[1];
  grade.stiffness_band_low = band[0], grade.stiffness_band_high = band[1];
  grade.fit_rms = 0.01 * object.number("fit_rms_percent", {0.0, 100.0, "%"});
  grade.density = object.number("density_kg_per_m3", {500.0, 3000.0, "kg/m3"}) * kg_per_m3;
  grade.elongation_at_break = 0.01 * object.number("elongation_at_break_percent", {10.0, 3000.0, "%"});
  grade.source = object.text("source");
  grade.status = object.status("status");
  grade.sheet_source = object.text("sheet_source");
  grade.caution = object.text("caution");
  if (auto problem = object.finish()) return *problem;
  return grade;
}

}  // namespace

Result<std::vector<SiliconeGrade>> read_silicone_grades(const std::filesystem::path& file) {
  const Result<json> parsed = read_json(file);
  if (!parsed) return parsed.problem();
  JsonObject table(*parsed, file.filename().string());
  table.format_one("wrapgauge-silicones");
  std::vector<SiliconeGrade> grades;
  std::set<std::string> names;
  for (const json& row : table.list("grades")) {
    const std::string where = table.place("grade ") + std::to_string(grades.size() + 1);
    Result<SiliconeGrade> grade = grade_from_json(row, where);
    if (!grade) return grade.problem();
    if (!names.insert(grade->hardness).second)
      return bad_input(Phrase::worded("%1: the hardness \"%2\" stands twice; keep one row.",
                                      {name_of(where), name_of(grade->hardness)}));
    grades.push_back(std::move(grade).value());
  }
  if (!table.failed() && grades.empty()) table.fail(Phrase::worded("has no grades; give at least one."));
  if (auto problem = table.finish()) return *problem;
  return grades;
}

Result<SiliconeGrade> find_grade(const std::vector<SiliconeGrade>& grades, const std::string& hardness) {
  std::string known;
  for (const SiliconeGrade& grade : grades) {
    if (grade.hardness == hardness) return grade;
    known += (known.empty() ? "" : ", ") + grade.hardness;
  }
  return bad_input(Phrase::worded("No silicone of hardness \"%1\" is in the table; known: %2.",
                                  {name_of(hardness), name_of(known)}));
}

Result<Pressure> young_modulus_from_shore_a(double shore_a) {
  if (!(shore_a >= 10.0 && shore_a <= 70.0)) {
    return bad_input(Phrase::worded(
        "Shore A %1 is outside 10 to 70, where the hardness relation is used; give a measured law instead.",
        {figures_of(number_text(shore_a))}));
  }
  return 0.0981 * (56.0 + 7.62336 * shore_a) / (0.137505 * (254.0 - 2.54 * shore_a)) * MPa;
}

}  // namespace wrapgauge
