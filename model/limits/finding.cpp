#include "model/limits/finding.hpp"

#include <algorithm>
#include <iterator>
#include <limits>
#include <tuple>

#include "model/core/number_text.hpp"
#include "model/limits/device_finding.hpp"
#include "model/limits/exposure.hpp"
#include "model/limits/fit_finding.hpp"
#include "model/limits/limit_place.hpp"
#include "model/limits/part_finding.hpp"
#include "model/limits/pressure_finding.hpp"

namespace wrapgauge {
namespace {

void append(std::vector<Finding>& all, std::vector<Finding> more) {
  all.insert(all.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

Finding note(const char* where, Phrase place, Phrase action, Phrase sentence) {
  Finding finding{Severity::kNote, where, std::move(sentence)};
  finding.place = std::move(place);
  finding.action = std::move(action);
  finding.source_key = where;
  return finding;
}

Finding factor_note(const LimitSet& limits) {
  const Phrase action = Phrase::worded("Measure on a bench, with every chamber, before anyone wears it.");
  return note("model factor", Phrase::worded("Every pressure"), action,
              Phrase::worded("Predicted pressures are multiplied by %1 before they are held against a limit "
                             "(%2). %3",
                             {figures_of(number_text(limits.model_factor, 3)),
                              table_words(limits.model_factor_source), action}));
}

// The limits mean nothing without the times that go with them.
Finding time_note(const LimitSet& limits, const LimitInputs& inputs, const ContactFigures& figures) {
  const LimitPlaces places(limits, inputs, figures.share_of_girth);
  const SiteClass site = bony_everywhere(inputs)    ? SiteClass::kBony
                         : places.circumferential() ? SiteClass::kCircumferential
                                                    : SiteClass::kSoft;
  const LimitRow* row = find_row(limits, site, inputs.use, Area());
  const Phrase times =
      row ? times_words(times_that_hold(limits, *row, inputs.use)) : Phrase::worded("none given");
  return note("time on the skin", Phrase::worded("Time on the skin"), times,
              Phrase::worded("The limits %1, %2, apply only with these times: %3.",
                             {site_words(site), use_words(inputs.use), times}));
}

// A set that is not the program's own, and what it allows beyond it.
void add_set_notes(const LimitSet& limits, std::vector<Finding>& all) {
  const Phrase place = Phrase::worded("Limits used");
  for (const auto& words : {limits.override_words, limits.differs_words})
    if (words) {
      Finding finding{Severity::kWarn, "limits", *words};
      finding.place = place;
      finding.source_key = "limits of one's own";
      all.push_back(std::move(finding));
    }
}

}  // namespace

std::vector<Finding> findings(const LimitSet& limits, const LimitInputs& inputs, const InflationSetup& setup,
                              const LoadPath& path, const EquilibriumState& state, const ContactMap& map,
                              const ContactFigures& figures, const Audit& audit) {
  std::vector<Finding> all = part_findings(limits, inputs, figures);
  append(all, fit_findings(inputs.fit));
  append(all, device_findings(limits, inputs, setup, path, figures, audit));
  if (!is_test_object(inputs)) {
    const PressedState pressed = pressed_state(setup, path, state, map, figures);
    append(all, pressure_findings(limits, inputs, pressed));
    append(all, cuff_findings(limits, pressed));
    all.push_back(time_note(limits, inputs, figures));
    all.push_back(factor_note(limits));
  }
  add_set_notes(limits, all);
  worst_first(all);
  return all;
}

void worst_first(std::vector<Finding>& findings) {
  std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
    return std::tie(a.comes_first, a.severity, a.share_of_limit) >
           std::tie(b.comes_first, b.severity, b.share_of_limit);
  });
}

std::string_view cause_text(Cause cause) {
  switch (cause) {
    case Cause::kNone:
      return "";
    case Cause::kFastening:
      return "fastening alone";
    case Cause::kInflation:
      return "inflation";
    case Cause::kEdge:
      return "edge or strap";
    case Cause::kBone:
      return "bone or nerve";
    case Cause::kRunaway:
      return "runaway";
    case Cause::kTime:
      return "time";
  }
  return "";
}

std::string_view severity_text(Severity severity) {
  if (severity == Severity::kStop) return "stop";
  if (severity == Severity::kAboveLimit) return "above limit";
  return severity == Severity::kWarn ? "warning" : "note";
}

std::vector<const LimitRow*> rows_on_layout(const LimitSet& limits, const LimitInputs& inputs,
                                            const InflationSetup& setup, const EquilibriumState& state,
                                            const SheetMesh& sheet, const ContactFigures& figures) {
  const LimitPlaces places(limits, inputs, figures.share_of_girth);
  const auto count = static_cast<std::size_t>(setup.flat.vertices_m.rows());
  // Pressed area decides whether a pulse row holds; outside chambers it is taken as large.
  std::vector<Area> pressed(count, Area(1.0));
  for (std::size_t t = 0; t < setup.flat.regions.size(); ++t) {
    const FlatRegion region = setup.flat.regions[t];
    const auto part = static_cast<std::size_t>(region.part);
    if (region.kind != RegionKind::kChamber || part >= figures.chambers.size()) continue;
    for (int corner = 0; corner < 3; ++corner)
      pressed[static_cast<std::size_t>(setup.flat.triangles(static_cast<Eigen::Index>(t), corner))] =
          figures.chambers[part].contact_area;
  }
  std::vector<const LimitRow*> rows(count);
  for (std::size_t v = 0; v < count; ++v)
    rows[v] = places.at(state.positions_m.row(sheet.skin_node[v]), pressed[v]).row;
  return rows;
}

Eigen::VectorXd limit_on_layout_pa(const LimitSet& limits, const LimitInputs& inputs,
                                   const InflationSetup& setup, const EquilibriumState& state,
                                   const SheetMesh& sheet, const ContactFigures& figures) {
  const auto rows = rows_on_layout(limits, inputs, setup, state, sheet, figures);
  Eigen::VectorXd limit_pa(static_cast<Eigen::Index>(rows.size()));
  for (std::size_t v = 0; v < rows.size(); ++v)
    limit_pa[static_cast<Eigen::Index>(v)] =
        rows[v] ? rows[v]->limit.si() : std::numeric_limits<double>::infinity();
  return limit_pa;
}

}  // namespace wrapgauge
