#include "tests/random_plans/random_plan.hpp"

#include <cmath>
#include <optional>
#include <random>

#include "bodyforms/form.hpp"
#include "model/body/girth.hpp"
#include "model/core/number_text.hpp"
#include "model/layout/forms/layout_form.hpp"
#include "model/pipeline/prepare.hpp"

namespace wrapgauge::random_plans {
namespace {

// The standard's distributions may differ from library to library; the generator itself may not.
class Dice {
 public:
  explicit Dice(unsigned seed) : generator_(seed) {}
  double between(double least, double most) {
    return least + (most - least) * static_cast<double>(generator_()) / 4294967296.0;
  }
  // As likely between 1 and 2 as between 10 and 20.
  double between_in_proportion(double least, double most) {
    return std::exp(between(std::log(least), std::log(most)));
  }
  bool one_in(double times) { return between(0.0, times) < 1.0; }
  template <class List>
  const auto& one_of(const List& list) {
    return list[static_cast<std::size_t>(between(0.0, static_cast<double>(list.size())))];
  }

 private:
  std::mt19937 generator_;
};

Sheet random_sheet(Dice& dice, const Resources& resources) {
  Sheet sheet;
  sheet.material = dice.one_of(resources.silicones).hardness;
  sheet.thickness = Length(dice.between_in_proportion(0.5e-3, 4e-3));
  return sheet;
}

Person random_person(Dice& dice, const Form& form) {
  Person person;
  person.sex = dice.one_in(2.0) ? Sex::kMale : Sex::kFemale;
  person.percentile = dice.between(2.0, 98.0);
  if (form.sided && dice.one_in(2.0)) person.side = BodySide::kLeft;
  return person;
}

// Parameters with no default are tape values that only a person can give: an upper arm's, from memory of what
// is usual.
std::map<std::string, double> tape_values(Dice& dice, const Form& form) {
  std::map<std::string, double> values;
  for (const FormParameter& parameter : form.parameters)
    if (!parameter.default_value)
      values[parameter.name] =
          dice.between(std::max(parameter.least, 270.0), std::min(parameter.most, 330.0));
  return values;
}

// Lengths of the layout form up to 30 % off its defaults; girths as the body has them at `station`.
std::optional<std::map<std::string, double>> layout_values(Dice& dice, const LayoutForm& form,
                                                           const Body& body, Length station) {
  std::map<std::string, double> values;
  double height_mm = 0.0;
  for (const LayoutParameter& parameter : form.parameters) {
    if (parameter.measured_at || parameter.whole || parameter.default_value == 0.0) continue;
    // Packs lie loose, as in the plans that the figures in docs were counted on.
    if (form.name == "quilted-pack" && (parameter.name == "strap-width" || parameter.fit)) {
      if (!parameter.fit) values[parameter.name] = 0.0;
      continue;
    }
    const double wanted = parameter.default_value * dice.between(0.7, 1.3);
    values[parameter.name] = std::clamp(wanted, parameter.least, parameter.most);
    if (parameter.name == "height") height_mm = values[parameter.name];
  }
  for (const LayoutParameter& parameter : form.parameters) {
    if (!parameter.measured_at) continue;
    const Girth girth = girth_at(body, station + *parameter.measured_at * height_mm * mm);
    if (girth.kind != SectionKind::kOneLoop) return std::nullopt;
    values[parameter.name] = girth.girth / mm;
  }
  return values;
}

std::vector<InletProgram> random_inflation(Dice& dice, const Layout& layout, std::string& words) {
  std::vector<InletProgram> inflation;
  const bool by_volume = dice.one_in(3.0);
  for (const Inlet& inlet : layout.inlets) {
    InletProgram program;
    program.inlet = inlet.name;
    if (by_volume)
      program.target = Volume(dice.between_in_proportion(1e-6, 60e-6));
    else
      program.target = Pressure(dice.between_in_proportion(500.0, 30000.0));
    words += by_volume ? ", " + fixed_text(std::get<Volume>(program.target) / mL, 1) + " mL"
                       : ", " + fixed_text(std::get<Pressure>(program.target) / kPa, 1) + " kPa";
    inflation.push_back(program);
  }
  return inflation;
}

std::optional<RandomPlan> draw(Dice& dice, const Resources& resources) {
  RandomPlan drawn;
  const Form& form = dice.one_of(forms());
  const Person person = random_person(dice, form);
  const std::map<std::string, double> tape = tape_values(dice, form);
  auto body = make_form(form.name, tape, person);
  if (!body) return std::nullopt;
  drawn.body = std::move(body).value();

  Plan& plan = drawn.plan;
  plan.name = "random";
  plan.body = BodyForm{form.name, tape, person};
  if (!form.part) plan.part = BodyPart::kForearm;  // a test solid says nothing of itself
  plan.tissue_site = form.tissue_site.empty() ? dice.one_of(resources.tissues).name : form.tissue_site;
  const Length station = dice.between(0.2, 0.8) * body_length(drawn.body);
  const LayoutForm& layout_form = dice.one_of(layout_forms());
  const auto values = layout_values(dice, layout_form, drawn.body, station);
  if (!values) return std::nullopt;
  const Sheet skin = random_sheet(dice, resources);
  const Sheet outer = dice.one_in(2.0) ? skin : random_sheet(dice, resources);
  auto layout = make_layout(layout_form.name, *values, {skin, outer});
  if (!layout) return std::nullopt;
  plan.layout = std::move(layout).value();
  plan.placement.anchor = AnchorAtStation{station, dice.between(0.0, 360.0)};
  plan.placement.turn_deg = plan.layout.closure ? 0.0 : dice.between(-180.0, 180.0);
  plan.friction = dice.between(0.3, 1.0);  // without any, a cuff on a tapered limb rests nowhere
  plan.mesh_edge = Length(dice.between(7e-3, 10e-3));
  drawn.words = form.name + ", " + layout_form.name + ", skin " + skin.material + " " +
                fixed_text(skin.thickness / mm, 2) + " mm, outer " + outer.material + " " +
                fixed_text(outer.thickness / mm, 2) + " mm, friction " + fixed_text(plan.friction, 2);
  plan.inflation = random_inflation(dice, plan.layout, drawn.words);

  auto ready = body_of_plan(plan, drawn.body);
  if (!ready) return std::nullopt;
  drawn.body = std::move(ready).value();
  if (!prepare(plan, drawn.body, resources, mesh_of_plan(plan))) return std::nullopt;
  return drawn;
}

}  // namespace

RandomPlan random_plan(unsigned seed, const Resources& resources, int& turned_down) {
  Dice dice(seed);
  for (;;) {
    if (auto drawn = draw(dice, resources)) return std::move(*drawn);
    ++turned_down;
  }
}

}  // namespace wrapgauge::random_plans
