#include "model/bench/bench_model.hpp"

#include <gtest/gtest.h>

#include <iostream>

#include "model/bench/family_solver.hpp"
#include "model/contact/closing_pull.hpp"
#include "model/pipeline/prepare.hpp"
#include "tests/bench_readings/bench_rows.hpp"
#include "tests/published/device_fixture.hpp"

namespace wrapgauge {
namespace {

using namespace bench;

TEST(BenchModel, SettledAnewIsWhatTheWholePathGives) {
  for (const ReadingKind kind : {ReadingKind::kFill, ReadingKind::kBulge, ReadingKind::kPlate}) {
    std::vector<Reading> rows = afternoon(0.05);
    std::erase_if(rows, [&](const Reading& one) { return one.kind != kind; });
    const FlatMeshOptions mesh = mesh_of_plan(job().plan);
    const auto flat = triangulate_layout(job().plan.layout, 257.0 * mm, mesh);
    ASSERT_TRUE(flat);
    const auto families = bench_families(rows, job().plan.layout, *flat);
    ASSERT_EQ(families.size(), 1u);
    const BenchJob of = job();
    auto made = FamilySolver::make(of, rows, families.front(), mesh);
    ASSERT_TRUE(made) << made.problem().message;
    FamilySolver solver = std::move(made).value();
    const SheetFactors other{1.4, 0.8, 0.1 * mm, -0.1 * mm, 1.0};
    ASSERT_TRUE(solver.by_path({}, silent_progress()));
    const auto settled = solver.from_known(other, silent_progress()),
               whole = solver.by_path(other, silent_progress());
    ASSERT_TRUE(settled && whole);
    for (std::size_t k = 0; k < rows.size(); ++k) EXPECT_NEAR((*settled)[k] / (*whole)[k], 1.0, 0.005);
  }
}

TEST(BenchModel, NamesAReadingBeyondTheLimitPoint) {
  std::vector<Reading> rows = {row(ReadingKind::kBulge, "pad", {{F::kGauge, 30e3}, {F::kHeight, 0.02}})};
  rows[0].id = "b1";
  rows[0].line = 9;
  const auto made = BenchModel::make(job(), rows, silent_progress());
  ASSERT_FALSE(made);
  EXPECT_NE(
      made.problem().message.find("line 9, reading 'b1': 30.00 kPa (225.0 mmHg) lies beyond the limit point"),
      std::string::npos)
      << made.problem().message;
}

// Treloar 1944, pulled one way (rows and the three-term law from memory, as in tests/published): the masses
// that a strip of it carries come back within what the law itself misses them by.
TEST(BenchModel, StripFollowsTheClassicRubberRows) {
  const HyperelasticLaw law = Ogden{{{0.63 * MPa, 1.3}, {0.0012 * MPa, 5.0}, {-0.01 * MPa, -2.0}}};
  for (const auto& [stretch, stress_mpa] : std::vector<std::pair<double, double>>{
           {1.24, .23}, {1.61, .42}, {2.17, .58}, {3.01, .85}, {4.03, 1.21}, {5.36, 1.94}, {6.15, 2.67}}) {
    const Reading read = strip(SheetSide::kSkin, stretch);
    EXPECT_NEAR(strip_load_n(law, read) / (stress_mpa * 1e6 * 0.010 * 0.0015), 1.0, 0.13) << stretch;
  }
}

// ISO 2758:2014, 5.2: 30 kPa bulge a diaphragm of natural rubber of 0.86 mm by 9.0 mm; the orifice of 33.1 mm
// is from memory. Soft natural rubber has a shear modulus of 0.3 to 0.7 MPa.
TEST(BenchModel, ABulgedDiaphragmHasTheModulusOfSoftNaturalRubber) {
  Plan plan = job().plan;
  Resources resources = job().resources;
  SiliconeGrade rubber = resources.silicones.front();
  rubber.hardness = "natural rubber";
  rubber.law = NeoHookean{0.5 * MPa};
  rubber.stretch_max = 4.0;
  resources.silicones.push_back(rubber);
  plan.layout = Layout{};
  plan.layout.name = "diaphragm";
  plan.layout.outline_m = published::circle(0.022, 64);
  plan.layout.chambers = {{"orifice", published::circle(0.01655, 64), {}, {}}};
  plan.layout.inlets = {{"valve", Vec2::Zero()}};
  plan.layout.skin_sheet = plan.layout.outer_sheet = {"natural rubber", 0.86 * mm};
  plan.mesh_edge = 2.0 * mm;
  std::vector<Reading> rows;
  for (const double height_mm : {8.8, 9.0, 9.2})
    rows.push_back(
        row(ReadingKind::kBulge, "orifice", {{F::kGauge, 30e3}, {F::kHeight, height_mm * 1e-3}}, 0.022));
  for (Reading& one : rows) one.clamped = true;
  auto made = BenchModel::make({plan, job().body, resources, 2.0 * mm, 2.0 * mm}, rows, silent_progress());
  ASSERT_TRUE(made) << made.problem().message;
  BenchModel model = std::move(made).value();
  const auto fit = fit_bench({rows, model.fitted_rows(), nominal_of(model), false}, response_of(model));
  ASSERT_TRUE(fit) << fit.problem().message;
  std::cout << "  shear modulus " << 0.5 * fit->factors.skin_law << " MPa, bulge at 0.5 MPa "
            << 1e3 * *model.nominal()[0] << " mm\n";
  EXPECT_GT(0.5 * fit->factors.skin_law, 0.3);
  EXPECT_LT(0.5 * fit->factors.skin_law, 0.7);
}

// Laplace: what a band that is fastened tight presses with, times its width and the limb's radius, is the
// pull at its closure.
TEST(BenchModel, ContactUnderATightBandIsLaplacesOfItsPull) {
  Plan plan = job().plan;
  plan.mesh_edge = 6.0 * mm;
  plan.layout.closure->stretch.reset();
  plan.layout.closure->closing_length = 250.0 * mm;
  plan.layout.chambers = {{"pad", small_band::rectangle(0.110, 0.020, 0.010, 0.010), {}, {}}};
  plan.layout.inlets = {{"valve", {0.115, 0.025}}};
  std::vector<Reading> rows;
  for (const double x : {0.06, 0.18, 0.22})
    rows.push_back(
        row(ReadingKind::kContact, "",
            {{F::kGauge, 10.0}, {F::kX, x}, {F::kY, 0.025}, {F::kSensorArea, 2e-4}, {F::kSensor, 1e3}}));
  for (Reading& one : rows) one.all_inlets = true;
  rows.push_back(row(ReadingKind::kClosure, "", {{F::kFastened, 0.250}, {F::kPull, 1.0}}));
  const auto model = BenchModel::make({plan, job().body, job().resources, 6.0 * mm}, rows, silent_progress());
  ASSERT_TRUE(model) << model.problem().message;
  const double girth =
      resolve_closing_length(job().body, small_band::plan(0.0 * kPa, 0.0).layout, plan.placement)
          .value()
          ->si();
  const double radius = girth / (2.0 * M_PI) - *model->nominal()[1] / 1e6;  // sunk in by about a millimetre
  const double laplace = *model->nominal()[3] / (0.050 * radius);
  for (int k = 0; k < 3; ++k) {
    std::cout << "  contact " << *model->nominal()[k] << " Pa, Laplace " << laplace << " Pa\n";
    EXPECT_NEAR(*model->nominal()[k] / laplace, 1.0, 0.12);
  }
}

// Flush, a thicker sensor reads more: it dents the tissue.
TEST(BenchModel, ASensorsThicknessRaisesWhatItReads) {
  std::vector<Reading> rows;
  for (const double thickness : {0.0, 1e-3})
    rows.push_back(row(ReadingKind::kContact, "",
                       {{F::kGauge, 100.0},
                        {F::kX, 0.20},
                        {F::kY, 0.025},
                        {F::kSensorArea, 4e-4},
                        {F::kSensorThickness, thickness}}));
  for (Reading& one : rows) one.all_inlets = true;
  Plan plan = job().plan;
  plan.layout.closure->stretch = 0.05;
  const auto model =
      BenchModel::make({plan, job().body, job().resources, 14.0 * mm}, rows, silent_progress());
  ASSERT_TRUE(model) << model.problem().message;
  EXPECT_GT(*model->nominal()[1], 1.05 * *model->nominal()[0]);
}

}  // namespace
}  // namespace wrapgauge
