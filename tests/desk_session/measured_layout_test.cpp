#include "app/job/measured_layout.hpp"

#include <gtest/gtest.h>

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

// A calf is rounder between a sleeve's edges than both edges say.
TEST(MeasuredLayout, ASleeveMadeForACalfReachesRoundIt) {
  const Body calf = make_form("calf", {}).value();
  const Length station = 235.0 * mm;
  for (const char* name : {"sleeve", "graduated-sleeve"}) {
    SCOPED_TRACE(name);
    const LayoutForm form = find_layout_form(name).value();
    std::map<std::string, double> values = measured(form, calf, station);
    Placement placement;
    placement.anchor = AnchorAtStation{station, 270.0};
    const auto closes = [&](const Layout& layout) {
      const auto length = resolve_closing_length(calf, layout, placement);
      return length && triangulate_layout(layout, *length, FlatMeshOptions{.edge = 9.0 * mm}).ok();
    };
    EXPECT_FALSE(closes(make_layout(name, values).value())) << "nothing is tried here";
    const auto made = make_for_body(form, values, calf, station);
    ASSERT_TRUE(made) << made.problem().message;
    EXPECT_TRUE(closes(made->layout));
    EXPECT_GT(made->wider, 0.0);
    for (const LayoutParameter& parameter : form.parameters)
      if (parameter.fit) values[parameter.name] = 0.02;
    EXPECT_EQ(make_for_body(form, values, calf, station).value().layout, make_layout(name, values).value())
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
