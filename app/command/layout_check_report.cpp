#include "app/command/layout_check_report.hpp"

#include <cmath>
#include <nlohmann/json.hpp>
#include <ostream>

#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

std::string in_mm(Length length) {
  return fixed_text(length / mm, 1) + " mm";
}

void say_amounts(const LayoutCheckReport& report, std::ostream& out) {
  for (const SheetAmount& amount : report.amounts)
    out << "silicone: " << amount.sheet << ", " << amount.material << ", " << in_mm(amount.thickness)
        << ": mix about " << about_amount(amount.grams_to_mix) << " g (" << about_amount(amount.to_mix / mL)
        << " mL)\n";
  out << "silicone: about " << about_amount(grams_of(report.amounts)) << " g in all, with a trim border of "
      << in_mm(report.allowance.trim_border) << " and " << number_text(100.0 * report.allowance.spill)
      << " % for spill; densities are table values from memory, so weigh by the maker's sheet if you have "
         "it\n";
}

// Less than no stretch is slack: the girth is closing length x (1 + stretch).
std::string stretch_words(double stretch) {
  const std::string stretched = fixed_text(100.0 * stretch, 1) + " %";
  if (stretched.front() != '-') return "stretched by " + stretched;
  return "slack: " + fixed_text(100.0 * (1.0 / (1.0 + stretch) - 1.0), 1) +
         " % longer than the limb (stretch " + stretched + ")";
}

void say_range(const ClosingRange& range, const CastingRules& rules, std::ostream& out) {
  out << "closing: goes round girths from " << in_mm(range.smallest_girth()) << " to "
      << in_mm(range.largest_girth()) << " at its middle height, " << stretch_words(range.stretch);
  if (range.longest_held > range.shortest)
    out << "; to " << in_mm(range.largest_held_girth()) << " with "
        << number_text(rules.value(CastingRule::kClosureOverlap)) << " mm left to hold it by\n";
  else
    out << "; nothing is left beyond the closing line to hold it by, so its edges have to be joined\n";
}

void say_worn(const WornReport& worn, std::ostream& out) {
  if (worn.closing_length) out << "worn: " << worn.round_body << "\n";
  for (const SiteOnLayout& site : worn.sites)
    out << "worn: " << site_word(site.kind) << " '" << site.name << "' lies at ("
        << fixed_text(1e3 * site.centre_m.x(), 1) << ", " << fixed_text(1e3 * site.centre_m.y(), 1)
        << ") mm of the layout\n";
}

double tidy(double value) {
  return std::round(value * 1e4) / 1e4;
}
double tidy_mm(Length length) {
  return tidy(length / mm);
}
Json point_json(const Vec2& point_m) {
  return {tidy(1e3 * point_m.x()), tidy(1e3 * point_m.y())};
}

Json amount_json(const SheetAmount& amount) {
  return {{"sheet", amount.sheet},
          {"material", amount.material},
          {"thickness_mm", tidy_mm(amount.thickness)},
          {"area_cm2", tidy(amount.area / cm2)},
          {"volume_ml", tidy(amount.volume / mL)},
          {"mix_ml", tidy(amount.to_mix / mL)},
          {"mix_g", tidy(amount.grams_to_mix)},
          {"density_source", amount.density_source}};
}

Json closing_json(const ClosingRange& range) {
  const bool held = range.longest_held > range.shortest;
  return {{"smallest_girth_mm", tidy_mm(range.smallest_girth())},
          {"largest_girth_mm", tidy_mm(range.largest_girth())},
          {"largest_held_girth_mm", held ? Json(tidy_mm(range.largest_held_girth())) : Json(nullptr)},
          {"stretch", tidy(range.stretch)}};
}

Json worn_json(const WornReport& worn) {
  const auto length = [](const std::optional<Length>& l) { return l ? Json(tidy_mm(*l)) : Json(nullptr); };
  Json json{{"closing_length_mm", length(worn.closing_length)}, {"girth_mm", length(worn.girth)}};
  json["sites"] = Json::array();
  for (const SiteOnLayout& site : worn.sites)
    json["sites"].push_back({{"name", site.name},
                             {"kind", site_word(site.kind)},
                             {"place_mm", point_json(site.centre_m)},
                             {"radius_mm", tidy_mm(site.radius)}});
  return json;
}

// Value and threshold are lengths but for the rules named here.
const char* unit_of(CastingRule rule) {
  switch (rule) {
    case CastingRule::kCurlThickness:
    case CastingRule::kCurlStiffness:
    case CastingRule::kTwistLength:
      return "ratio";
    case CastingRule::kCurlPrestretch:
      return "degrees";
    case CastingRule::kClosingLine:
      return "percent";
    default:
      return "mm";
  }
}

Json finding_json(const CastingFinding& finding, const CastingRules& rules) {
  const CastingRuleRow& row = rules.row(finding.rule);
  return {{"rule", row.name},
          {"value", tidy(finding.value)},
          {"threshold", tidy(finding.threshold)},
          {"unit", unit_of(finding.rule)},
          {"place_mm", finding.place_m ? point_json(*finding.place_m) : Json(nullptr)},
          {"sentence", english(finding.sentence)},
          {"source", row.source},
          {"status", row.status}};
}

}  // namespace

void say_layout_check(const LayoutCheckReport& report, const CastingRules& rules, std::ostream& out) {
  if (!report.problems.empty()) return;
  say_amounts(report, out);
  if (report.closing) say_range(*report.closing, rules, out);
  if (report.worn) say_worn(*report.worn, out);
  for (const CastingFinding& finding : report.findings) {
    const CastingRuleRow& row = rules.row(finding.rule);
    out << "change (" << row.name << ", " << row.status << "): " << english(finding.sentence) << "\n";
  }
  out << (report.findings.empty() ? "Keeps to every rule. " : "") << rules.remark << "\n";
}

std::string layout_check_json(const Layout& layout, const LayoutCheckReport& report,
                              const CastingRules& rules) {
  Json json{{"wrapgauge-layout-check", 1}, {"layout", layout.name}, {"problems", Json::array()}};
  for (const Problem& problem : report.problems) json["problems"].push_back(problem.message);
  json["silicone"] = Json::array();
  for (const SheetAmount& amount : report.amounts) json["silicone"].push_back(amount_json(amount));
  json["silicone_mix_g"] = report.amounts.empty() ? Json(nullptr) : Json(tidy(grams_of(report.amounts)));
  json["spill_percent"] = rules.value(CastingRule::kSpill);
  json["trim_border_mm"] = tidy_mm(report.allowance.trim_border);
  json["closing"] = report.closing ? closing_json(*report.closing) : Json(nullptr);
  json["worn"] = report.worn ? worn_json(*report.worn) : Json(nullptr);
  json["findings"] = Json::array();
  for (const CastingFinding& finding : report.findings)
    json["findings"].push_back(finding_json(finding, rules));
  json["remark"] = rules.remark;
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace wrapgauge
