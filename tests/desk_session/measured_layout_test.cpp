#include "app/job/measured_layout.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "bodyforms/form.hpp"
#include "model/layout/flat_mesh.hpp"
#include "model/wrap/wrap.hpp"

namespace wrapgauge {
namespace {

std::map<std::string, double> measured(const LayoutForm& form, const Body& body, Length station) {
  std::map<std::string, double> values;
  const auto measures = measures_of(form, {}, body, station);
  EXPECT_TRUE(measures.ok());
  if (measures)
    for (const LimbMeasure& measure : *measures) values[measure.parameter] = measure.value_mm;
  return values;
}

const Length kStation = 235.0 * mm;

struct OnACalf {
  Body calf = make_form("calf", {}).value();
  Placement placement{AnchorAtStation{kStation, 270.0}, std::nullopt};

  Result<FlatMesh> mesh(const Layout& layout) const {
    const auto length = resolve_closing_length(calf, layout, placement);
    if (!length) return length.problem();
    return triangulate_layout(layout, *length, FlatMeshOptions{.edge = 9.0 * mm});
  }
  // Of all heights.
  struct Stretch {
    double least = 1.0, most = -1.0;
    double spread() const { return most - least; }
  };
  Stretch stretch(const Layout& layout) const {
    const auto wrap = wrap_layout(calf, layout, mesh(layout).value(), placement);
    EXPECT_TRUE(wrap) << wrap.problem().message;
    Stretch stretch;
    for (const GirthSection& section : wrap->fit.sections) {
      stretch.least = std::min(stretch.least, section.stretch());
      stretch.most = std::max(stretch.most, section.stretch());
    }
    return stretch;
  }
};

// A calf is rounder between a sleeve's edges than both edges say.
TEST(MeasuredLayout, ASleeveMadeForACalfBendsWithItAndIsStretchedMoreEvenly) {
  const OnACalf on;
  const LayoutForm form = find_layout_form("sleeve").value();
  std::map<std::string, double> values = measured(form, on.calf, kStation);
  ASSERT_TRUE(values.contains("bulge"));
  EXPECT_GT(values["bulge"], 10.0);
  const auto panelled = make_for_body(form, values, on.calf, kStation);
  ASSERT_TRUE(panelled) << panelled.problem().message;
  const double fitted = layout_parameters("sleeve", values)->at("stretch");
  EXPECT_LE(on.stretch(panelled->layout).most, fitted + 0.023) << "nowhere tighter than some 2 %";
  const auto said = made_layout_cautions(panelled->layout, girth_bulge(panelled->layout, on.calf, kStation));
  ASSERT_FALSE(said.empty());
  EXPECT_NE(english(said.front()).find("panelled to follow the limb"), std::string::npos);
  values["bulge"] = 0.0;
  const auto straight = make_for_body(form, values, on.calf, kStation);
  ASSERT_TRUE(straight) << straight.problem().message;
  EXPECT_LT(on.stretch(panelled->layout).spread(), 0.6 * on.stretch(straight->layout).spread());
}

TEST(MeasuredLayout, ASleeveWithStraightSidesReachesRoundACalfToo) {
  const OnACalf on;
  for (const char* name : {"sleeve", "graduated-sleeve"}) {
    SCOPED_TRACE(name);
    const LayoutForm form = find_layout_form(name).value();
    std::map<std::string, double> values = measured(form, on.calf, kStation);
    values["bulge"] = 0.0;
    EXPECT_FALSE(on.mesh(make_layout(name, values).value())) << "nothing is tried here";
    const auto made = make_for_body(form, values, on.calf, kStation);
    ASSERT_TRUE(made) << made.problem().message;
    EXPECT_TRUE(on.mesh(made->layout));
    EXPECT_GT(made->wider, 0.0);
    for (const LayoutParameter& parameter : form.parameters)
      if (parameter.fit) values[parameter.name] = 0.02;
    EXPECT_EQ(make_for_body(form, values, on.calf, kStation).value().layout,
              make_layout(name, values).value())
        << "what was said is drawn";
  }
}

TEST(MeasuredLayout, ALayoutThatReachesRoundStaysAsItIs) {
  const Body limb = make_form("cylinder", {}).value();
  const LayoutForm form = find_layout_form("cuff").value();
  const std::map<std::string, double> values = measured(form, limb, 100.0 * mm);
  EXPECT_EQ(make_for_body(form, values, limb, 100.0 * mm).value().layout,
            make_layout("cuff", values).value());
}

}  // namespace
}  // namespace wrapgauge
