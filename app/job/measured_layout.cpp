#include "app/job/measured_layout.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "model/body/girth.hpp"
#include "model/core/number_text.hpp"
#include "model/layout/forms/form_dimensions.hpp"
#include "model/layout/part_words.hpp"

namespace wrapgauge {
namespace {

constexpr double kBulge = 0.02;
constexpr double kPanelSlack = 0.08;  // of the girth (judgement)
constexpr double kStraight = 0.01;  // of the girth: a bulge of less is no reason to bend an edge (judgement)
constexpr double kNothingMissing = 1e-3;  // of the girth: the outer sheet gives way by more
constexpr int kStations = 9;              // between the edges

Result<Length> single_girth(const Body& body, const LayoutParameter& parameter, Length station) {
  const Girth girth = girth_at(body, station);
  if (girth.kind == SectionKind::kOneLoop) return girth.girth;
  return bad_input(Phrase::worded(
      "The body has no single closed section at %1, where \"%2\" is measured (the body is %3 long): "
      "choose another --station, or give --%2.",
      {millimetres_of(station), name_of(parameter.name), millimetres_of(body_length(body))}));
}

// None: the limb runs straight enough.
Result<std::optional<LimbMeasure>> measured_bulge(const LayoutParameter& parameter, const Body& body,
                                                  Length station, Length height) {
  const auto [from, halfway, to] = *parameter.measured_bulge;
  std::array<Length, 3> girths;
  for (std::size_t k = 0; k < 3; ++k) {
    const auto girth = single_girth(body, parameter, station + (*parameter.measured_bulge)[k] * height);
    if (!girth) return girth.problem();
    girths[k] = *girth;
  }
  const Length bulge = girths[1] - 0.5 * (girths[0] + girths[2]);
  if (std::abs(bulge / girths[1]) < kStraight) return std::optional<LimbMeasure>{};
  return std::optional<LimbMeasure>{{parameter.name, bulge / mm,
                                     "at " + in_millimetres((station + halfway * height).si()) + " against " +
                                         in_millimetres((station + from * height).si()) + " and " +
                                         in_millimetres((station + to * height).si())}};
}

// Of the loop, halfway up.
double middle_width_m(const Polygon& loop) {
  const Bounds2 box = bounds(loop);
  const auto ends = ends_across(loop, 0.5 * (box.low.y() + box.high.y()));
  return ends ? ends->second - ends->first : 0.0;
}

// Such a form is fastened by its strap.
bool covers_part(const LayoutForm& form) {
  return std::any_of(form.parameters.begin(), form.parameters.end(),
                     [](const LayoutParameter& parameter) { return parameter.name == "cover"; });
}

bool said_how_tight(const LayoutForm& form, const std::map<std::string, double>& values) {
  return std::any_of(form.parameters.begin(), form.parameters.end(), [&](const LayoutParameter& parameter) {
    return parameter.fit && values.contains(parameter.name);
  });
}

double height_mm(const LayoutForm& form, const std::map<std::string, double>& given) {
  if (const auto found = given.find("height"); found != given.end()) return found->second;
  for (const LayoutParameter& parameter : form.parameters)
    if (parameter.name == "height") return parameter.default_value;
  return 0.0;
}

// How it follows the limb, for whoever cuts it.
Phrase panel_words(const Layout& layout) {
  const Bounds2 box = bounds(layout.outline_m);
  const double bulge_m = 0.5 * layout.closure->bend * (box.high.y() - box.low.y());
  const Phrase by = millimetres_of(Length(std::abs(bulge_m)));
  return bulge_m > 0.0 ? Phrase::worded(
                             "The sides are panelled to follow the limb: straight from each edge to "
                             "half height, where the layout is %1 wider than straight sides would "
                             "make it.",
                             {by})
                       : Phrase::worded(
                             "The sides are panelled to follow the limb: straight from each edge to "
                             "half height, where the layout is %1 narrower than straight sides "
                             "would make it.",
                             {by});
}

// At stations between the edges: by how much the limb is rounder than the closing lines allow for. None where
// it has no single section.
std::vector<GirthBulge> bulges_between(const Layout& layout, const Body& body, Length station) {
  if (!layout.closure) return {};
  const Bounds2 box = bounds(layout.outline_m);
  const Length height = (box.high.y() - box.low.y()) * metre;
  const Girth low = girth_at(body, station - 0.5 * height), high = girth_at(body, station + 0.5 * height);
  if (low.kind != SectionKind::kOneLoop || high.kind != SectionKind::kOneLoop) return {};
  std::vector<GirthBulge> all;
  for (int i = 1; i <= kStations; ++i) {
    const double share = static_cast<double>(i) / (kStations + 1);
    const Girth here = girth_at(body, station + (share - 0.5) * height);
    if (here.kind != SectionKind::kOneLoop) continue;
    const Length followed = low.girth + share * (high.girth - low.girth) +
                            (0.5 - std::abs(share - 0.5)) * layout.closure->bend *
                                (1.0 + layout.closure->stretch.value_or(0.0)) * height;
    all.push_back({here.station, here.girth, here.girth / followed - 1.0});
  }
  return all;
}

// By how much it has to be wider to reach round at its middle, where it is fastened, and to be tight by no
// more than 2 % elsewhere. A panelled one fits closely all along, so that on its stiff cloth all that its
// chambers swell by presses over a shin: it is tight nowhere and has slack (start_pressure_test).
double missing_share(const Layout& layout, const Body& body, const Girth& at_middle) {
  const double fastened_m = middle_width_m(layout.outline_m);
  const bool panelled = layout.closure->bend != 0.0;
  double missing = at_middle.girth.si() / (1.0 + *layout.closure->stretch) / fastened_m - 1.0;
  for (const GirthBulge& bulge : bulges_between(layout, body, at_middle.station))
    missing =
        std::max(missing, panelled ? bulge.share + kPanelSlack : (1.0 + bulge.share) / (1.0 + kBulge) - 1.0);
  return missing;
}

}  // namespace

Result<std::vector<LimbMeasure>> measures_of(const LayoutForm& form,
                                             const std::map<std::string, double>& given, const Body& body,
                                             Length station) {
  std::vector<LimbMeasure> measures;
  const Length height = height_mm(form, given) * mm;
  for (const LayoutParameter& parameter : form.parameters) {
    if (given.contains(parameter.name)) continue;
    if (parameter.measured_at) {
      const Length at = station + *parameter.measured_at * height;
      const auto girth = single_girth(body, parameter, at);
      if (!girth) return girth.problem();
      measures.push_back({parameter.name, *girth / mm, "at " + in_millimetres(at.si())});
    } else if (parameter.measured_between) {
      const auto [from, to] = *parameter.measured_between;
      const Length low = station + from * height, high = station + to * height;
      const auto distal = single_girth(body, parameter, low), proximal = single_girth(body, parameter, high);
      if (!distal || !proximal) return distal ? proximal.problem() : distal.problem();
      measures.push_back({parameter.name, (*proximal - *distal) / mm,
                          "from " + in_millimetres(low.si()) + " to " + in_millimetres(high.si())});
    } else if (parameter.measured_bulge) {
      const auto bulge = measured_bulge(parameter, body, station, height);
      if (!bulge) return bulge.problem();
      if (*bulge) measures.push_back(**bulge);
    }
  }
  return measures;
}

Result<MadeForBody> make_for_body(const LayoutForm& form, std::map<std::string, double> values,
                                  const Body& body, Length station, const MadeSheets& sheets) {
  const auto used = layout_parameters(form.name, values, sheets);
  if (!used) return used.problem();
  auto made = make_layout(form.name, values, sheets);
  if (!made) return made.problem();
  MadeForBody out{std::move(made).value(), *used, 0.0};
  const Girth girth = girth_at(body, station);
  if (!out.layout.closure || girth.kind != SectionKind::kOneLoop || covers_part(form) ||
      said_how_tight(form, values))
    return out;
  out.wider = missing_share(out.layout, body, girth);
  if (out.wider <= kNothingMissing) {
    out.wider = 0.0;
    return out;
  }
  for (const LayoutParameter& parameter : form.parameters)
    if (parameter.fit)
      values[parameter.name] = std::clamp((1.0 + used->at(parameter.name)) / (1.0 + out.wider) - 1.0,
                                          parameter.least, parameter.most);
  made = make_layout(form.name, values, sheets);
  if (!made) return made.problem();
  out.layout = std::move(made).value();
  out.layout.closure->closing_length = middle_width_m(out.layout.outline_m) * metre;
  out.layout.closure->stretch.reset();
  for (const auto& [name, value] : values) out.values[name] = value;
  return out;
}

std::optional<GirthBulge> girth_bulge(const Layout& layout, const Body& body, Length station) {
  std::optional<GirthBulge> worst;
  for (const GirthBulge& bulge : bulges_between(layout, body, station))
    if (std::abs(bulge.share) > (worst ? std::abs(worst->share) : kBulge)) worst = bulge;
  return worst;
}

std::vector<Phrase> made_layout_cautions(const Layout& layout, const std::optional<GirthBulge>& bulge,
                                         double wider) {
  std::vector<Phrase> cautions;
  if (!is_held(layout))
    cautions.push_back(Phrase::worded(
        "Nothing holds this layout on the body, and whatever holds it in use presses too: put a strap or a "
        "bonded rim into the layout, or every estimate of it counts as above the limits."));
  if (layout.closure && layout.closure->bend != 0.0) cautions.push_back(panel_words(layout));
  if (wider > 0.0) {
    cautions.push_back(
        Phrase::worded("The limb is rounder between the layout's edges: it is drawn %1 wider, so that it "
                       "reaches round there, and "
                       "lies looser at its edges.",
                       {figures_of(fixed_text(100.0 * wider, 1) + " %")}));
    return cautions;
  }
  if (!bulge) return cautions;
  const std::vector<Phrase> figures = {millimetres_of(bulge->girth), millimetres_of(bulge->station),
                                       figures_of(fixed_text(100.0 * std::abs(bulge->share), 1) + " %")};
  cautions.push_back(bulge->share > 0.0
                         ? Phrase::worded("The layout is tight between its edges: the limb is %1 round at "
                                          "%2, %3 more than its "
                                          "closing lines allow for. Make it shorter, or make two.",
                                          figures)
                         : Phrase::worded("The layout is loose between its edges: the limb is %1 round at "
                                          "%2, %3 less than its "
                                          "closing lines allow for. Make it shorter, or make two.",
                                          figures));
  return cautions;
}

}  // namespace wrapgauge
