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

Phrase in_mm(double length_mm) {
  return figures_of(fixed_text(length_mm, 1));
}

Phrase in_degrees(double angle_deg) {
  return figures_of(fixed_text(angle_deg, 1));
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

Phrase figure_words(const InflationTarget& target) {
  if (const auto* pressure = std::get_if<Pressure>(&target)) return figures_of(setting_text(*pressure));
  const Phrase volume = figures_of(fixed_text(figure_of(target), 1) + " mL");
  return std::holds_alternative<TrappedAir>(target) ? Phrase::worded("%1 of air pushed in", {volume})
                                                    : volume;
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

Phrase lower_words(const InletLadder& inlet, const InflationTarget& target) {
  const Phrase name = name_of(inlet.inlet), asked = figures_of(fixed_text(figure_of(inlet.asked), 1));
  return std::holds_alternative<Pressure>(target)
             ? Phrase::worded("Lower '%1' from %2 to %3", {name, asked, figure_words(target)})
             : Phrase::worded("Fill '%1' with %2 instead of %3 mL", {name, figure_words(target), asked});
}

void add_lower_inlets(const ChangeBasis& basis, PlanChanges& all) {
  for (const InletLadder& inlet : inlet_ladders(basis)) {
    if (inlet.ladder.rungs < 1) {
      all.left_out.push_back(
          {Phrase::worded("Lower '%1'", {name_of(inlet.inlet)}), "it is set to the least there is already"});
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
  all.changes.push_back(
      {"all inlets lower", "all inlets", ChangeKind::kInflation, kSteps - 1,
       [plan = basis.plan, inlets, share](int rung) {
         Plan changed = plan;
         for (const InletLadder& inlet : inlets)
           changed.inflation[inlet.program].target = share_of_asked(inlet, share(rung));
         return changed;
       },
       [inlets, share](int rung) {
         std::vector<Phrase> settings;
         for (const InletLadder& inlet : inlets)
           settings.push_back(Phrase::worded(
               "'%1' to %2", {name_of(inlet.inlet), figure_words(share_of_asked(inlet, share(rung)))}));
         return Phrase::worded("Lower all inlets together: %1", {in_a_row(std::move(settings), ", ")});
       }});
}

void add_fixed(PlanChanges& all, ChangeKind kind, std::string name, std::string family, Plan changed,
               Phrase words) {
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
Phrase refasten(Closure& closure, double factor) {
  if (closure.closing_length) {
    const Length before = *closure.closing_length;
    closure.closing_length = std::round(before * factor / (0.1 * mm)) * 0.1 * mm;
    return Phrase::worded("closing length %1 instead of %2 mm",
                          {in_mm(*closure.closing_length / mm), in_mm(before / mm)});
  }
  const double before = closure.stretch.value_or(0.0);
  closure.stretch = std::round(((1.0 + before) / factor - 1.0) * 1e4) * 1e-4;
  return Phrase::worded(
      "closure stretch %1 instead of %2 %",
      {figures_of(fixed_text(100.0 * *closure.stretch, 2)), figures_of(fixed_text(100.0 * before, 2))});
}

void add_fastening(const ChangeBasis& basis, PlanChanges& all) {
  if (!basis.plan.layout.closure) {
    all.left_out.push_back({Phrase::worded("Fasten it looser or tighter"), "the layout has no closure"});
    return;
  }
  for (const bool looser : {true, false})
    for (const int percent : {1, 2, 3}) {
      Plan changed = basis.plan;
      // Shorter by as much as longer: closed to the girth it then has the opposite stretch.
      const double factor = looser ? 1.0 + percent / 100.0 : 1.0 - percent / 100.0;
      const Phrase how = refasten(*own_layout(changed).closure, factor), much = figures_of(percent);
      const Phrase words = looser ? Phrase::worded("Fasten it %1 % looser: %2", {much, how})
                                  : Phrase::worded("Fasten it %1 % tighter: %2", {much, how});
      const std::string way = looser ? "looser" : "tighter", amount = std::to_string(percent) + " % " + way;
      add_fixed(all, ChangeKind::kFastening, "fastening " + amount, "fastening " + way, std::move(changed),
                words);
    }
}

Result<AnchorAtStation> station_of(const ChangeBasis& basis) {
  if (const auto* station = std::get_if<AnchorAtStation>(&basis.plan.placement.anchor)) return *station;
  const BodySurface surface(basis.body);
  const Vec3 on_skin = surface.project(std::get<AnchorAtPoint>(basis.plan.placement.anchor).point_m);
  return station_and_angle(surface.sections(), basis.body.axis, on_skin);
}

void add_moves(const ChangeBasis& basis, PlanChanges& all) {
  constexpr double kMove_mm = 10.0;
  const auto anchor = station_of(basis);
  if (!anchor) {
    all.left_out.push_back({Phrase::worded("Move it along or round the limb"), anchor.problem().message});
    return;
  }
  for (const double way : {1.0, -1.0}) {
    Plan changed = basis.plan;
    AnchorAtStation moved = *anchor;
    moved.station = moved.station + way * kMove_mm * mm;
    changed.placement.anchor = moved;
    const std::string where = way > 0.0 ? "towards the trunk" : "away from the trunk";
    const std::vector<Phrase> stations{in_mm(moved.station / mm), in_mm(anchor->station / mm)};
    add_fixed(all, ChangeKind::kPlacement, "10 mm " + where, "moved " + where, std::move(changed),
              way > 0.0
                  ? Phrase::worded("Move it 10 mm towards the trunk: anchor at station %1 instead of %2 mm",
                                   stations)
                  : Phrase::worded("Move it 10 mm away from the trunk: anchor at station %1 instead of %2 mm",
                                   stations));
  }
  const double girth_mm = girth_at(basis.body, anchor->station).girth / mm;
  if (!(girth_mm > 0.0)) {
    all.left_out.push_back({Phrase::worded("Move it round the limb"), "the body has no girth at the anchor"});
    return;
  }
  const double turn_deg = std::round(360.0 * kMove_mm / girth_mm * 10.0) / 10.0;
  for (const double way : {1.0, -1.0}) {
    Plan changed = basis.plan;
    AnchorAtStation moved = *anchor;
    moved.angle_deg += way * turn_deg;
    changed.placement.anchor = moved;
    const std::string to = way > 0.0 ? "a larger angle" : "a smaller angle";
    const std::vector<Phrase> angles{in_degrees(moved.angle_deg), in_degrees(anchor->angle_deg)};
    add_fixed(all, ChangeKind::kPlacement, "10 mm round to " + to, "round to " + to, std::move(changed),
              way > 0.0
                  ? Phrase::worded("Move it 10 mm round the limb, to a larger angle: anchor at %1 instead "
                                   "of %2 degrees",
                                   angles)
                  : Phrase::worded("Move it 10 mm round the limb, to a smaller angle: anchor at %1 "
                                   "instead of %2 degrees",
                                   angles));
  }
}

void add_turns(const ChangeBasis& basis, PlanChanges& all) {
  for (const double turn_deg : {5.0, -5.0}) {
    Plan changed = basis.plan;
    changed.placement.turn_deg += turn_deg;
    const std::string way = turn_deg > 0.0 ? "+5 degrees" : "-5 degrees";
    add_fixed(
        all, ChangeKind::kPlacement, "turned " + way, "turned " + way, changed,
        Phrase::worded("Turn it on the skin by %1 degrees: turn %2 instead of %3 degrees",
                       {figures_of(turn_deg > 0.0 ? "+5" : "-5"), in_degrees(changed.placement.turn_deg),
                        in_degrees(basis.plan.placement.turn_deg)}));
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

void add_sheet(const ChangeBasis& basis, const std::string& side, const Phrase& side_words,
               Sheet Layout::*sheet, PlanChanges& all) {
  const Sheet& before = basis.plan.layout.*sheet;
  Plan thicker = basis.plan;
  Sheet& thick = own_layout(thicker).*sheet;
  thick.thickness = thick.thickness + 0.5 * mm;
  const std::vector<Phrase> values{side_words, in_mm(thick.thickness / mm), in_mm(before.thickness / mm)};
  add_fixed(all, ChangeKind::kSheet, side + " thicker", side + " thicker", std::move(thicker),
            Phrase::worded("Cast the %1 0.5 mm thicker: %2 instead of %3 mm", values));
  const auto softer = next_softer(basis.silicones, before.material);
  if (!softer) {
    all.left_out.push_back({Phrase::worded("Cast the %1 in a softer grade", {side_words}),
                            before.material + " is the softest grade of the table already"});
    return;
  }
  Plan soft = basis.plan;
  (own_layout(soft).*sheet).material = *softer;
  add_fixed(all, ChangeKind::kSheet, side + " softer", side + " softer", std::move(soft),
            Phrase::worded("Cast the %1 in %2 instead of %3",
                           {side_words, name_of(*softer), name_of(before.material)}));
}

void add_sheets(const ChangeBasis& basis, PlanChanges& all) {
  add_sheet(basis, "skin sheet", Phrase::worded("skin sheet"), &Layout::skin_sheet, all);
  add_sheet(basis, "outer sheet", Phrase::worded("outer sheet"), &Layout::outer_sheet, all);
}

// One time of the plan, set to less. `words`: of the new time and the one asked.
void add_shorter(PlanChanges& all, const std::string& name,
                 const std::function<Phrase(Phrase time, Phrase asked)>& words, const Plan& plan, Time asked,
                 const std::function<void(Plan&, Time)>& set) {
  const Ladder ladder = times_below(asked);
  if (ladder.rungs < 1) return;
  const auto time = [ladder](int rung) { return ladder.at(rung) * second; };
  all.changes.push_back(
      {name, name, ChangeKind::kTime, ladder.rungs,
       [plan, set, time](int rung) {
         Plan changed = plan;
         set(changed, time(rung));
         return changed;
       },
       [words, asked, time](int rung) { return words(figures_of(time(rung)), figures_of(asked)); }});
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

void add_shorter_holds(const Plan& plan, std::size_t program, PlanChanges& all) {
  const InletProgram& inlet = plan.inflation[program];
  add_shorter(
      all, "hold of " + inlet.inlet + " shorter",
      [name = inlet.inlet](Phrase time, Phrase longest) {
        return Phrase::worded("Hold no step of '%1' longer than %2 instead of %3",
                              {name_of(name), std::move(time), std::move(longest)});
      },
      plan, longest_pressed_hold(inlet.steps),
      [program](Plan& changed, Time time) { shorten_holds(changed.inflation[program].steps, time); });
}

void add_times(const ChangeBasis& basis, PlanChanges& all) {
  const Plan& plan = basis.plan;
  if (!basis.time_breaks || !plan.session) return;
  add_shorter(
      all, "session shorter",
      [](Phrase time, Phrase whole) {
        return Phrase::worded("Let the session last %1 instead of %2", {std::move(time), std::move(whole)});
      },
      plan, plan.session->length, [](Plan& changed, Time time) { changed.session->length = time; });
  const bool session_rules = std::any_of(plan.inflation.begin(), plan.inflation.end(),
                                         [](const InletProgram& inlet) { return inlet.steps.empty(); });
  if (plan.session->hold && session_rules)
    add_shorter(
        all, "hold shorter",
        [](Phrase time, Phrase whole) {
          return Phrase::worded("Hold it %1 instead of %2", {std::move(time), std::move(whole)});
        },
        plan, *plan.session->hold, [](Plan& changed, Time time) { changed.session->hold = time; });
  for (std::size_t p = 0; p < plan.inflation.size(); ++p)
    if (!plan.inflation[p].steps.empty()) add_shorter_holds(plan, p, all);
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
              Phrase::worded("Set the relief valves lower"));
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
