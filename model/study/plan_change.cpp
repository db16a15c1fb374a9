#include "model/study/plan_change.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/body/girth.hpp"
#include "model/core/number_text.hpp"
#include "model/core/rounded_down.hpp"
#include "model/core/time_text.hpp"
#include "model/wrap/station_angle.hpp"

namespace wrapgauge {
namespace {

// Multiples of `step` below `asked` and above `least`, the highest first.
struct Ladder {
  double step = 1.0;
  int top = 0, rungs = 0;
  double at(int rung) const { return step * (top - rung); }
};

Ladder ladder_below(double asked, double least, double step) {
  Ladder ladder{step, static_cast<int>(std::ceil(asked / step - 1e-9)) - 1, 0};
  ladder.rungs = std::max(0, ladder.top - static_cast<int>(std::floor(least / step + 1e-9)));
  return ladder;
}

// In tenths, as pressures and volumes are set, but no finer than 2 % of what is asked.
Ladder tenths_below(double asked, double least) {
  return ladder_below(asked, least, 0.1 * std::max(1.0, std::round(asked / 5.0)));
}

// Whole steps that people would use; at most 40 of them.
Ladder times_below(Time asked) {
  double step = 0.1;
  for (const double nice : {0.5, 1.0, 5.0, 10.0, 30.0, 60.0, 300.0, 600.0, 1800.0, 3600.0})
    if (asked / second / step > 40.0) step = nice;
  return ladder_below(asked / second, 0.0, step);
}

std::string quoted(const std::string& name) {
  return "'" + name + "'";
}

// What one inlet may be set to instead of what the plan asks.
struct InletLadder {
  std::size_t program = 0;
  std::string inlet;
  InflationTarget asked;
  Ladder ladder;  // kPa or mL
  double closed_ml = 0.0;
};

double figure_of(const InflationTarget& target) {  // kPa or mL
  if (const auto* pressure = std::get_if<Pressure>(&target)) return *pressure / kPa;
  if (const auto* air = std::get_if<TrappedAir>(&target)) return air->pushed / mL;
  return std::get<Volume>(target) / mL;
}

InflationTarget target_at(const InflationTarget& asked, double figure) {
  if (std::holds_alternative<Pressure>(asked)) return figure * kPa;
  if (const auto* air = std::get_if<TrappedAir>(&asked)) return TrappedAir{figure * mL, air->dead};
  return figure * mL;
}

std::string figure_text(const InflationTarget& target) {
  if (const auto* pressure = std::get_if<Pressure>(&target)) return setting_text(*pressure);
  return fixed_text(figure_of(target), 1) + " mL" +
         (std::holds_alternative<TrappedAir>(target) ? " of air pushed in" : "");
}

std::vector<InletLadder> inlet_ladders(const ChangeBasis& basis) {
  std::vector<InletLadder> ladders;
  for (std::size_t p = 0; p < basis.plan.inflation.size(); ++p) {
    const InletProgram& program = basis.plan.inflation[p];
    const double asked = figure_of(program.target);
    if (!(asked > 0.0)) continue;
    InletLadder inlet{p, program.inlet, program.target, {}, 0.0};
    if (std::holds_alternative<Volume>(program.target)) {
      const auto closed = basis.closed_volume.find(program.inlet);
      if (closed != basis.closed_volume.end()) inlet.closed_ml = closed->second / mL;
    }
    inlet.ladder = tenths_below(asked, 1.01 * inlet.closed_ml);
    ladders.push_back(inlet);
  }
  return ladders;
}

Plan with_target(const Plan& plan, std::size_t program, const InflationTarget& target) {
  Plan changed = plan;
  changed.inflation[program].target = target;
  return changed;
}

std::string lower_words(const InletLadder& inlet, const InflationTarget& target) {
  if (std::holds_alternative<Pressure>(target))
    return "Lower " + quoted(inlet.inlet) + " from " + fixed_text(figure_of(inlet.asked), 1) + " to " +
           figure_text(target);
  return "Fill " + quoted(inlet.inlet) + " with " + figure_text(target) + " instead of " +
         fixed_text(figure_of(inlet.asked), 1) + " mL";
}

void add_lower_inlets(const ChangeBasis& basis, PlanChanges& all) {
  for (const InletLadder& inlet : inlet_ladders(basis)) {
    if (inlet.ladder.rungs < 1) {
      all.left_out.push_back({"Lower " + quoted(inlet.inlet), "it is set to the least there is already"});
      continue;
    }
    const auto target = [inlet](int rung) { return target_at(inlet.asked, inlet.ladder.at(rung)); };
    all.changes.push_back({"inlet " + inlet.inlet + " lower", "inlet " + inlet.inlet, ChangeKind::kInflation,
                           inlet.ladder.rungs,
                           [plan = basis.plan, inlet, target](int rung) {
                             return with_target(plan, inlet.program, target(rung));
                           },
                           [inlet, target](int rung) { return lower_words(inlet, target(rung)); }});
  }
}

// In the plan's proportion, as a ceiling scales them.
InflationTarget share_of_asked(const InletLadder& inlet, double share) {
  const double asked = figure_of(inlet.asked);
  const double scaled = inlet.closed_ml + share * (asked - inlet.closed_ml);
  return target_at(inlet.asked, std::min(asked, std::max(0.1, rounded_down(scaled, 0.1))));
}

void add_lower_all(const ChangeBasis& basis, PlanChanges& all) {
  const std::vector<InletLadder> inlets = inlet_ladders(basis);
  if (inlets.size() < 2) return;
  constexpr int kSteps = 40;
  const auto share = [](int rung) { return 1.0 - (rung + 1.0) / kSteps; };
  all.changes.push_back({"all inlets lower", "all inlets", ChangeKind::kInflation, kSteps - 1,
                         [plan = basis.plan, inlets, share](int rung) {
                           Plan changed = plan;
                           for (const InletLadder& inlet : inlets)
                             changed.inflation[inlet.program].target = share_of_asked(inlet, share(rung));
                           return changed;
                         },
                         [inlets, share](int rung) {
                           std::string words = "Lower all inlets together: ";
                           for (const InletLadder& inlet : inlets)
                             words += (inlet.program == inlets.front().program ? "" : ", ") +
                                      quoted(inlet.inlet) + " to " +
                                      figure_text(share_of_asked(inlet, share(rung)));
                           return words;
                         }});
}

void add_fixed(PlanChanges& all, ChangeKind kind, std::string name, std::string family, Plan changed,
               std::string words) {
  all.changes.push_back({std::move(name), std::move(family), kind, 1,
                         [changed = std::move(changed)](int) { return changed; },
                         [words = std::move(words)](int) { return words; }});
}

// The layout is no longer that of its file.
Layout& own_layout(Plan& plan) {
  plan.layout_file.reset();
  plan.layout_drawing.reset();
  return plan.layout;
}

// Closed `factor` times as long; tenths of a millimetre or of a per mille, as it is printed.
std::string refasten(Closure& closure, double factor) {
  if (closure.closing_length) {
    const Length before = *closure.closing_length;
    closure.closing_length = std::round(before * factor / (0.1 * mm)) * 0.1 * mm;
    return "closing length " + fixed_text(*closure.closing_length / mm, 1) + " instead of " +
           fixed_text(before / mm, 1) + " mm";
  }
  const double before = closure.stretch.value_or(0.0);
  closure.stretch = std::round(((1.0 + before) / factor - 1.0) * 1e4) * 1e-4;
  return "closure stretch " + fixed_text(100.0 * *closure.stretch, 2) + " instead of " +
         fixed_text(100.0 * before, 2) + " %";
}

void add_fastening(const ChangeBasis& basis, PlanChanges& all) {
  if (!basis.plan.layout.closure) {
    all.left_out.push_back({"Fasten it looser or tighter", "the layout has no closure"});
    return;
  }
  for (const bool looser : {true, false})
    for (const int percent : {1, 2, 3}) {
      Plan changed = basis.plan;
      // Shorter by as much as longer: closed to the girth it then has the opposite stretch.
      const double factor = looser ? 1.0 + percent / 100.0 : 1.0 - percent / 100.0;
      const std::string how = refasten(*own_layout(changed).closure, factor);
      const std::string way = looser ? "looser" : "tighter", amount = std::to_string(percent) + " % " + way;
      add_fixed(all, ChangeKind::kFastening, "fastening " + amount, "fastening " + way, std::move(changed),
                "Fasten it " + amount + ": " + how);
    }
}

Result<AnchorAtStation> station_of(const ChangeBasis& basis) {
  if (const auto* station = std::get_if<AnchorAtStation>(&basis.plan.placement.anchor)) return *station;
  const BodySurface surface(basis.body);
  const Vec3 on_skin = surface.project(std::get<AnchorAtPoint>(basis.plan.placement.anchor).point_m);
  return station_and_angle(surface.sections(), basis.body.axis, on_skin);
}

std::string station_words(double mm_before, double mm_after) {
  return "anchor at station " + fixed_text(mm_after, 1) + " instead of " + fixed_text(mm_before, 1) + " mm";
}

void add_moves(const ChangeBasis& basis, PlanChanges& all) {
  constexpr double kMove_mm = 10.0;
  const auto anchor = station_of(basis);
  if (!anchor) {
    all.left_out.push_back({"Move it along or round the limb", anchor.problem().message});
    return;
  }
  for (const double way : {1.0, -1.0}) {
    Plan changed = basis.plan;
    AnchorAtStation moved = *anchor;
    moved.station = moved.station + way * kMove_mm * mm;
    changed.placement.anchor = moved;
    const std::string where = way > 0.0 ? "towards the trunk" : "away from the trunk";
    add_fixed(all, ChangeKind::kPlacement, "10 mm " + where, "moved " + where, std::move(changed),
              "Move it 10 mm " + where + ": " + station_words(anchor->station / mm, moved.station / mm));
  }
  const double girth_mm = girth_at(basis.body, anchor->station).girth / mm;
  if (!(girth_mm > 0.0)) {
    all.left_out.push_back({"Move it round the limb", "the body has no girth at the anchor"});
    return;
  }
  const double turn_deg = std::round(360.0 * kMove_mm / girth_mm * 10.0) / 10.0;
  for (const double way : {1.0, -1.0}) {
    Plan changed = basis.plan;
    AnchorAtStation moved = *anchor;
    moved.angle_deg += way * turn_deg;
    changed.placement.anchor = moved;
    const std::string to = way > 0.0 ? "a larger angle" : "a smaller angle";
    add_fixed(all, ChangeKind::kPlacement, "10 mm round to " + to, "round to " + to, std::move(changed),
              "Move it 10 mm round the limb, to " + to + ": anchor at " + fixed_text(moved.angle_deg, 1) +
                  " instead of " + fixed_text(anchor->angle_deg, 1) + " degrees");
  }
}

void add_turns(const ChangeBasis& basis, PlanChanges& all) {
  for (const double turn_deg : {5.0, -5.0}) {
    Plan changed = basis.plan;
    changed.placement.turn_deg += turn_deg;
    const std::string way = turn_deg > 0.0 ? "+5 degrees" : "-5 degrees";
    add_fixed(all, ChangeKind::kPlacement, "turned " + way, "turned " + way, changed,
              "Turn it on the skin by " + way + ": turn " + fixed_text(changed.placement.turn_deg, 1) +
                  " instead of " + fixed_text(basis.plan.placement.turn_deg, 1) + " degrees");
  }
}

// Where a hardness stands among others: Shore 00 is softer than Shore A (grades A2 and harder).
std::optional<double> softness_rank(const std::string& hardness) {
  const bool shore_00 = hardness.starts_with("00-"), shore_a = hardness.starts_with("A");
  if (!shore_00 && !shore_a) return std::nullopt;
  const std::string figure = hardness.substr(shore_00 ? 3 : 1);
  if (figure.empty() || figure.find_first_not_of("0123456789") != std::string::npos || figure.size() > 4)
    return std::nullopt;
  return (shore_00 ? 0.0 : 1e5) + std::stod(figure);
}

std::optional<std::string> next_softer(const std::vector<SiliconeGrade>& grades, const std::string& than) {
  const auto own = softness_rank(than);
  std::optional<std::string> found;
  double best = -1.0;
  for (const SiliconeGrade& grade : grades)
    if (const auto rank = softness_rank(grade.hardness); own && rank && *rank<*own&& * rank> best)
      best = *rank, found = grade.hardness;
  return found;
}

void add_sheets(const ChangeBasis& basis, PlanChanges& all) {
  const Length more = 0.5 * mm;
  for (const auto& [name, sheet] :
       {std::pair<const char*, Sheet Layout::*>{"skin sheet", &Layout::skin_sheet},
        {"outer sheet", &Layout::outer_sheet}}) {
    const std::string side = name;
    const Sheet& before = basis.plan.layout.*sheet;
    Plan thicker = basis.plan;
    Sheet& thick = own_layout(thicker).*sheet;
    thick.thickness = thick.thickness + more;
    const std::string words = "Cast the " + side + " 0.5 mm thicker: " + fixed_text(thick.thickness / mm, 1) +
                              " instead of " + fixed_text(before.thickness / mm, 1) + " mm";
    add_fixed(all, ChangeKind::kSheet, side + " thicker", side + " thicker", std::move(thicker), words);
    const auto softer = next_softer(basis.silicones, before.material);
    if (!softer) {
      all.left_out.push_back({"Cast the " + side + " in a softer grade",
                              before.material + " is the softest grade of the table already"});
      continue;
    }
    Plan soft = basis.plan;
    (own_layout(soft).*sheet).material = *softer;
    add_fixed(all, ChangeKind::kSheet, side + " softer", side + " softer", std::move(soft),
              "Cast the " + side + " in " + *softer + " instead of " + before.material);
  }
}

// One time of the plan, set to less.
void add_shorter(PlanChanges& all, const std::string& name, const std::string& what, const Plan& plan,
                 Time asked, const std::function<void(Plan&, Time)>& set) {
  const Ladder ladder = times_below(asked);
  if (ladder.rungs < 1) return;
  const auto time = [ladder](int rung) { return ladder.at(rung) * second; };
  all.changes.push_back({name, name, ChangeKind::kTime, ladder.rungs,
                         [plan, set, time](int rung) {
                           Plan changed = plan;
                           set(changed, time(rung));
                           return changed;
                         },
                         [what, asked, time](int rung) {
                           return what + " " + time_text(time(rung)) + " instead of " + time_text(asked);
                         }});
}

Time longest_pressed_hold(const std::vector<ProgrammeStep>& steps) {
  Time longest;
  for (const ProgrammeStep& step : steps)
    if (step.level > 0.0) longest = std::max(longest, step.hold);
  return longest;
}

// None of the pressed holds longer than `most`.
void shorten_holds(std::vector<ProgrammeStep>& steps, Time most) {
  for (ProgrammeStep& step : steps)
    if (step.level > 0.0) step.hold = std::min(step.hold, most);
}

void add_times(const ChangeBasis& basis, PlanChanges& all) {
  const Plan& plan = basis.plan;
  if (!basis.time_breaks || !plan.session) return;
  add_shorter(all, "session shorter", "Let the session last", plan, plan.session->length,
              [](Plan& changed, Time time) { changed.session->length = time; });
  const bool session_rules = std::any_of(plan.inflation.begin(), plan.inflation.end(),
                                         [](const InletProgram& inlet) { return inlet.steps.empty(); });
  if (plan.session->hold && session_rules)
    add_shorter(all, "hold shorter", "Hold it", plan, *plan.session->hold,
                [](Plan& changed, Time time) { changed.session->hold = time; });
  for (std::size_t p = 0; p < plan.inflation.size(); ++p) {
    const InletProgram& program = plan.inflation[p];
    if (program.steps.empty()) continue;
    add_shorter(all, "hold of " + program.inlet + " shorter",
                "Hold no step of " + quoted(program.inlet) + " longer than", plan,
                longest_pressed_hold(program.steps),
                [p](Plan& changed, Time time) { shorten_holds(changed.inflation[p].steps, time); });
  }
}

}  // namespace

std::string_view change_kind_name(ChangeKind kind) {
  switch (kind) {
    case ChangeKind::kInflation:
      return "inflation";
    case ChangeKind::kFastening:
      return "fastening";
    case ChangeKind::kPlacement:
      return "placement";
    case ChangeKind::kSheet:
      return "sheet";
    case ChangeKind::kTime:
      return "time";
    case ChangeKind::kValves:
      break;
  }
  return "relief valves";
}

PlanChanges single_changes(const ChangeBasis& basis) {
  PlanChanges all;
  add_lower_inlets(basis, all);
  add_lower_all(basis, all);
  // Valves are lowered with every change where that is needed; here nothing else is changed.
  if (basis.valves_break)
    add_fixed(all, ChangeKind::kValves, "relief valves lower", "relief valves", basis.plan,
              "Set the relief valves lower");
  add_fastening(basis, all);
  add_moves(basis, all);
  add_turns(basis, all);
  add_sheets(basis, all);
  add_times(basis, all);
  return all;
}

std::vector<InletRelief> valves_above(const Supply& supply, const std::vector<InletRelief>& highest) {
  std::vector<InletRelief> above;
  for (const InletRelief& allowed : highest)
    if (const auto opens = supply.relief_of(allowed.inlet); opens && *opens > allowed.highest)
      above.push_back(allowed);
  return above;
}

void lower_valves(Supply& supply, const std::vector<InletRelief>& lowered) {
  for (const InletRelief& valve : lowered) supply.inlet_relief[valve.inlet] = valve.highest;
}

}  // namespace wrapgauge
