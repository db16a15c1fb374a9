#include <gtest/gtest.h>

#include <cctype>
#include <functional>
#include <nlohmann/json.hpp>

#include "model/core/file.hpp"
#include "model/plan/plan_to_json.hpp"
#include "model/study/solve_variants.hpp"
#include "tests/study/small_band.hpp"

namespace wrapgauge {
namespace {

std::vector<PathChange> changes_of(const std::vector<std::string>& texts) {
  std::vector<PathChange> changes;
  for (const std::string& text : texts) changes.push_back(path_change_of(text).value());
  return changes;
}

// As a plan file would have it: its body by name.
Plan band_plan() {
  Plan plan = small_band::plan(2.0 * kPa);
  plan.body = BodyForm{"cylinder", {}, {}};
  return plan;
}

Variants band_variants(const std::vector<std::string>& texts, VariantOrder order = VariantOrder::kGrid) {
  return Variants::make(band_plan(), changes_of(texts), order).value();
}

std::string refusal(const std::vector<std::string>& texts, VariantOrder order = VariantOrder::kGrid) {
  const auto made = Variants::make(band_plan(), changes_of(texts), order);
  EXPECT_FALSE(made.ok());
  return made.ok() ? "" : made.problem().message;
}

void expect_one_sentence(const std::string& message, const std::string& part) {
  EXPECT_NE(message.find(part), std::string::npos) << message;
  EXPECT_TRUE(message.ends_with('.')) << message;
  for (std::size_t dot = message.find(". "); dot != std::string::npos; dot = message.find(". ", dot + 1))
    EXPECT_FALSE(std::isupper(static_cast<unsigned char>(message[dot + 2]))) << message;
}

VaryJob band_job(const std::vector<std::string>& texts, VariantOrder order = VariantOrder::kGrid) {
  static const auto body = std::make_shared<const Body>(small_band::body());
  static const auto resources = std::make_shared<const Resources>(small_band::resources());
  const auto inputs = [](const Plan&) -> Result<VariantInputs> {
    static const auto distances = std::make_shared<DistancePool>();
    static const auto worn = std::make_shared<WornCases>();
    return VariantInputs{body, resources, "hash", distances, worn};
  };
  return {"small band", band_variants(texts, order), {14.0 * mm}, false, inputs};
}

std::vector<VariantAnswer> solved(const VaryJob& job, const RunFolders& folders, const RunPart& part = {}) {
  const auto orders = variant_orders(job);
  EXPECT_TRUE(orders.ok());
  const auto answers = solve_variants(job, *orders, folders, part);
  EXPECT_TRUE(answers.ok()) << (answers.ok() ? "" : answers.problem().message);
  std::vector<VariantAnswer> out;
  for (const auto& answer : *answers)
    if (answer) out.push_back(variant_from(*answer).value());
  return out;
}

TEST(PathChange, TakesNumbersWordsAndLists) {
  const PathChange change = path_change_of("a.b = 1, 1.50,A10,\"two, three\",true,[1,2],00-30").value();
  EXPECT_EQ(change.path, "a.b");
  EXPECT_EQ(change.values, (std::vector<std::string>{"1", "1.5", "\"A10\"", "\"two, three\"", "true", "[1,2]",
                                                     "\"00-30\""}));
  EXPECT_EQ(value_words("\"A10\""), "A10");
  EXPECT_EQ(short_path("layout.skin_sheet.thickness"), "skin_sheet.thickness");
  EXPECT_EQ(short_path("friction"), "friction");
}

TEST(PathChange, AnEmptyListAnEmptyValueAndADoubledValueAreRefused) {
  for (const char* text : {"friction", "friction=", "=3", "friction=0.3,,0.5"})
    EXPECT_FALSE(path_change_of(text).ok()) << text;
  expect_one_sentence(path_change_of("friction=0.3,0.30").problem().message, "0.30 twice");
}

TEST(SetInPlan, FindsItemsByNameInletAndNumber) {
  nlohmann::json plan(plan_to_json(small_band::two_chambers(2.0 * kPa)));
  EXPECT_EQ(set_in_plan(plan, "inflation.valve.pressure_kpa", "3")->pointer, "/inflation/0/pressure_kpa");
  EXPECT_EQ(set_in_plan(plan, "inflation.1.pressure_kpa", "3")->pointer, "/inflation/0/pressure_kpa");
  EXPECT_EQ(plan["inflation"][0]["pressure_kpa"], 3);
  EXPECT_EQ(set_in_plan(plan, "layout.chambers.far pad.name", "\"heel\"")->pointer,
            "/layout/chambers/1/name");
  plan["inflation"][0]["inlet"] = "no.1";  // names may hold dots
  EXPECT_EQ(set_in_plan(plan, "inflation.no.1.pressure_kpa", "4")->pointer, "/inflation/0/pressure_kpa");
  const auto missing = set_in_plan(plan, "inflation.tap.pressure_kpa", "3");
  ASSERT_FALSE(missing.ok());
  expect_one_sentence(missing.problem().message, "the list has no 'tap'; it has 'no.1'");
  EXPECT_FALSE(set_in_plan(plan, "friction.left", "3").ok());
  EXPECT_TRUE(set_in_plan(plan, "tissue.stiffness_factor", "2")->added);
}

TEST(SetInPlan, AKeyTakesThePlaceOfItsAlternative) {
  const Variants volumes =
      band_variants({"inflation.valve.volume_ml=5,8", "layout.closure.closing_length=260"});
  const Plan plan = volumes.plan(1).value();
  EXPECT_NEAR(std::get<Volume>(plan.inflation[0].target) / mL, 8.0, 1e-12);
  EXPECT_NEAR(plan.layout.closure->closing_length.value() / mm, 260.0, 1e-12);
  EXPECT_FALSE(plan.layout.closure->stretch);
}

TEST(Variants, AGridRunsThroughTheLastChangeQuickest) {
  const Variants grid =
      band_variants({"layout.skin_sheet.thickness=1,1.5,2", "layout.skin_sheet.material=00-30,A10"});
  ASSERT_EQ(grid.count(), 6u);
  std::vector<std::string> names;
  for (std::size_t v = 0; v < grid.count(); ++v) names.push_back(grid.name(v));
  EXPECT_EQ(names[0], "skin_sheet.thickness 1, skin_sheet.material 00-30");
  EXPECT_EQ(names[1], "skin_sheet.thickness 1, skin_sheet.material A10");
  EXPECT_EQ(names[5], "skin_sheet.thickness 2, skin_sheet.material A10");
  const Plan last = grid.plan(5).value();
  EXPECT_NEAR(last.layout.skin_sheet.thickness / mm, 2.0, 1e-12);
  EXPECT_EQ(last.layout.skin_sheet.material, "A10");
  Plan undone = last;  // nothing else is changed
  undone.layout.skin_sheet = band_plan().layout.skin_sheet;
  EXPECT_EQ(plan_to_json(undone), plan_to_json(band_plan()));
}

TEST(Variants, AlongTakesTheValuesTogether) {
  const Variants along =
      band_variants({"friction=0.3,0.5", "tissue.stiffness_factor=1,2"}, VariantOrder::kAlong);
  ASSERT_EQ(along.count(), 2u);
  EXPECT_EQ(along.name(1), "friction 0.5, tissue.stiffness_factor 2");
  EXPECT_EQ(along.plan(1)->tissue_stiffness_factor, 2.0);
}

TEST(Variants, WhatCannotBeIsRefusedInOneSentence) {
  expect_one_sentence(refusal({"tissue.stifness_factor=1,2"}), "the nearest that is there is tissue.site");
  expect_one_sentence(refusal({"layout.skin_sheet.thicknes=1,2"}),
                      "the nearest that is there is layout.skin_sheet.thickness");
  expect_one_sentence(refusal({"friction=0.3,9"}), "friction is 9");
  expect_one_sentence(refusal({"friction=rough"}), "friction must be a number");
  expect_one_sentence(refusal({"friction=0.1,0.2", "mesh.edge_mm=8,9,10"}, VariantOrder::kAlong),
                      "friction has 2 values and mesh.edge_mm has 3");
  expect_one_sentence(refusal({"inflation.valve.pressure_kpa=1", "inflation.1.pressure_kpa=2"}),
                      "the same place twice");
  expect_one_sentence(refusal({}), "nothing is varied");
  std::string many = "friction=0", more = "wear.anchor.angle_deg=0";
  for (int i = 1; i <= 100; ++i) {
    many.append(",").append(std::to_string(0.001 * i));
    if (i < 100) more.append(",").append(std::to_string(i));
  }
  expect_one_sentence(refusal({many, more}), "10100 variants");
}

TEST(SolveVariant, GivesTheFiguresOfThePlanChangedByHand) {
  const small_band::Folder folder("vary-hand");
  const auto answers = solved(band_job({"layout.skin_sheet.thickness=1,2.5"}), {folder.path(), {}});
  ASSERT_EQ(answers.size(), 2u);
  Plan plan = band_plan();
  plan.layout.skin_sheet.thickness = 2.5 * mm;
  const Resources resources = small_band::resources();
  const Body body = body_of_plan(plan, small_band::body()).value();
  const auto study = StudyCase::make(plan, body, resources, mesh_of_plan(plan)).value();
  const auto path = study.inflate_to(study.targets(), silent_progress()).value();
  const StateReading reading = study.read_with_relief(path, silent_progress()).value();
  const RunFigures figures = run_figures(reading);
  const VariantAnswer& variant = answers[1];
  ASSERT_FALSE(variant.failed);
  for (std::size_t f = 0; f < figures.chambers[0].size(); ++f)
    EXPECT_NEAR(variant.figures.chambers[0][f], figures.chambers[0][f],
                5e-3 * std::abs(figures.chambers[0][f]) + 1e-4)  // distances on another lattice
        << chamber_figure_names()[f].key;
  EXPECT_EQ(variant.exit_code, reading.judgement.worst() >= Severity::kAboveLimit ? 4 : 0);
  EXPECT_NEAR(variant.share, reading.nearest.share, 5e-3);
  ASSERT_EQ(variant.curves[0].points.size(), path.states.size());
  EXPECT_NEAR(variant.curves[0].points.back().peak_kpa, variant.figures.chambers[0][3], 1e-5);
  EXPECT_EQ(variant.map.contact_pa.size(), static_cast<std::size_t>(study.setup().flat.vertices_m.rows()));
}

// The verdict counts the relief valves, as an estimate's does: of a plan that is within otherwise.
TEST(SolveVariant, AReliefValveThatOpensTooHighIsAboveTheLimit) {
  Plan plan = small_band::plan(0.5 * kPa, 0.02);
  const Resources resources = small_band::resources();
  const auto within = solve_variant(plan, small_band::body(), resources, false).value();
  ASSERT_FALSE(within.failed) << *within.failed;
  ASSERT_EQ(within.exit_code, 0) << within.sentence;
  plan.supply.relief = 60.0 * kPa;
  const auto above = solve_variant(plan, small_band::body(), resources, false).value();
  EXPECT_EQ(above.exit_code, 4) << above.sentence;
  EXPECT_EQ(above.valve, "A valve or pump that sticks");
  EXPECT_LE(above.share, 1.0);
}

TEST(SolveVariant, IsTheSameBitsWhateverWasSolvedBefore) {
  const Body body = small_band::body();
  const Resources resources = small_band::resources();
  Plan first = small_band::plan(1.0 * kPa), second = small_band::plan(2.0 * kPa);
  second.supply.relief = 2.5 * kPa;
  DistanceBlocks distances;
  WornCases worn;
  const LeftByRuns left{&distances, &worn};
  ASSERT_TRUE(solve_variant(first, body, resources, false, silent_progress(), left).ok());
  ASSERT_TRUE(worn.as_worn(second));
  const auto after = solve_variant(second, body, resources, false, silent_progress(), left).value();
  EXPECT_EQ(variant_json(after), variant_json(solve_variant(second, body, resources, false).value()));
}

TEST(WornCases, AreOnlyOfPlansThatDifferInInflationSessionAndSupply) {
  const Plan plan = small_band::plan(1.0 * kPa);
  WornCases worn;
  worn.keep(plan,
            StudyCase::make(plan, small_band::body(), small_band::resources(), mesh_of_plan(plan)).value());
  EXPECT_TRUE(worn.as_worn(plan));
  const std::vector<std::function<void(Plan&)>> changes = {
      [](Plan& p) { p.friction = 0.4; },
      [](Plan& p) { p.tissue_stiffness_factor = 1.1; },
      [](Plan& p) { p.layout.skin_sheet.thickness = 1.1 * mm; },
      [](Plan& p) { p.layout.skin_sheet.material += "x"; },
      [](Plan& p) { p.layout.closure->stretch = 0.011; },
      [](Plan& p) { p.placement.turn_deg += 1.0; },
      [](Plan& p) { p.mesh_edge = p.mesh_edge + 1.0 * mm; },
      [](Plan& p) { p.solver.steps += 1; },
      [](Plan& p) { p.use = UsePattern::kPulse; },
      [](Plan& p) { p.filling.medium = Medium::kWater; },
      [](Plan& p) { p.part = BodyPart::kWrist; }};
  for (std::size_t k = 0; k < changes.size(); ++k) {
    Plan other = plan;
    changes[k](other);
    EXPECT_FALSE(worn.as_worn(other)) << "change " << k;
  }
}

TEST(SolveVariant, ASmallChangeMovesAFigureInProportion) {
  const small_band::Folder folder("vary-linear");
  const auto answers = solved(band_job({"inflation.valve.pressure_kpa=2,2.02,2.04"}), {folder.path(), {}});
  const auto mean = [&](std::size_t v) { return answers[v].figures.chambers[0][2]; };
  const double half = mean(1) - mean(0), whole = mean(2) - mean(0);
  EXPECT_GT(whole, 1e-3);
  EXPECT_NEAR(half / whole, 0.5, 0.03);
}

TEST(SolveVariant, ChambersSwellAlongTheirCurves) {
  const small_band::Folder folder("vary-curve");
  const auto answers = solved(band_job({"inflation.valve.pressure_kpa=3"}), {folder.path(), {}});
  const auto& points = answers[0].curves[0].points;
  ASSERT_EQ(points.size(), 3u);  // closed, and two steps
  EXPECT_NEAR(points[0].gauge_kpa, 0.0, 1e-9);
  EXPECT_NEAR(points[2].gauge_kpa, 3.0, 1e-6);
  const double area_mm2 = 50.0 * 30.0;
  for (std::size_t s = 1; s < points.size(); ++s) {
    EXPECT_GT(points[s].bulge_mm, points[s - 1].bulge_mm);
    EXPECT_GT(points[s].volume_ml, points[s - 1].volume_ml);
    // A dome over the drawn area: less than the box round it, more than a tenth of it.
    EXPECT_LT(1e3 * points[s].volume_ml, 1.3 * area_mm2 * points[s].bulge_mm);
    EXPECT_GT(1e3 * points[s].volume_ml, 0.1 * area_mm2 * points[s].bulge_mm);
  }
}

TEST(SolveVariants, OneThatCannotBeSolvedIsARowWithItsReason) {
  const small_band::Folder folder("vary-fails");
  const auto answers = solved(band_job({"layout.closure.closing_length=262,400"}), {folder.path(), {}});
  ASSERT_EQ(answers.size(), 2u);
  EXPECT_FALSE(answers[0].failed);
  ASSERT_TRUE(answers[1].failed);
  EXPECT_EQ(answers[1].exit_code, 2);
  EXPECT_TRUE(answers[1].failed->ends_with('.')) << *answers[1].failed;
}

TEST(SolveVariants, PartsMergeToTheSameAnswers) {
  const std::vector<std::string> changes{"friction=0.3,0.4,0.5", "inflation.valve.pressure_kpa=1,2"};
  const small_band::Folder whole("vary-whole"), one("vary-one"), two("vary-two"), all("vary-all");
  const VaryJob job = band_job(changes);
  const auto orders = variant_orders(job).value();
  const auto at_once = solve_variants(job, orders, {whole.path(), {}}, {}).value();
  EXPECT_EQ(missing_runs(solve_variants(job, orders, {one.path(), {}}, {1, 2}).value()), 3);
  EXPECT_EQ(missing_runs(solve_variants(job, orders, {two.path(), {}}, {2, 2}).value()), 3);
  const auto merged = solve_variants(job, orders, {all.path(), {two.path(), one.path()}}, {}).value();
  EXPECT_EQ(all.kept_runs(), 0);  // nothing was solved again
  EXPECT_EQ(merged, at_once);
}

TEST(SolveVariants, AnAnswerOfOtherInputsIsNotTaken) {
  const small_band::Folder folder("vary-stale");
  VaryJob job = band_job({"friction=0.3"});
  ASSERT_EQ(solved(job, {folder.path(), {}}).size(), 1u);
  const std::string identity = variant_orders(job)->front().identity;
  job.mesh.edge = 16.0 * mm;
  EXPECT_NE(variant_orders(job)->front().identity, identity);
  job.mesh.edge = 14.0 * mm;
  job.with_ceiling = true;
  EXPECT_NE(variant_orders(job)->front().identity, identity);
  job.with_ceiling = false;
  EXPECT_EQ(variant_orders(job)->front().identity, identity);
  EXPECT_NE(variant_orders(band_job({"friction=0.31"}))->front().identity, identity);
}

TEST(SolveVariant, FindsACeilingThatLiesBelowAPlanThatIsAbove) {
  Plan plan = small_band::plan(6.0 * kPa);
  const auto answer = solve_variant(plan, small_band::body(), small_band::resources(), true).value();
  ASSERT_FALSE(answer.failed);
  EXPECT_GE(answer.exit_code, 4);
  ASSERT_TRUE(answer.ceiling);
  ASSERT_EQ(answer.ceiling->inlets.size(), 1u);
  EXPECT_LT(answer.ceiling->inlets[0].gauge, 6.0 * kPa);
  EXPECT_GT(answer.ceiling->inlets[0].gauge, 0.5 * kPa);
  const auto kept = variant_from(variant_json(answer)).value();
  EXPECT_EQ(variant_json(kept), variant_json(answer));
}

}  // namespace
}  // namespace wrapgauge
