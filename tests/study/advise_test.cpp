#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "model/pipeline/pipeline.hpp"
#include "model/plan/as_written.hpp"
#include "model/study/advice_report.hpp"
#include "model/study/run_lines.hpp"
#include "model/wrap/station_angle.hpp"
#include "tests/study/small_band.hpp"

namespace wrapgauge {
namespace {

AdviceJob advice_job(Plan plan) {
  plan.body = BodyForm{"cylinder", {}, {}};
  return {std::move(plan), small_band::body(), small_band::resources(), "hash"};
}

Result<Advice> advice_of(const Plan& plan, const char* folder) {
  const small_band::Folder runs(folder);
  return find_advice(advice_job(plan), {runs.path(), {}});
}

Plan too_hard() {
  Plan plan = small_band::plan(6.0 * kPa);
  plan.supply.relief = 8.0 * kPa;  // opens too late
  return plan;
}

// Solved once; its runs stay for tests that change what was kept.
struct KeptAdvice {
  small_band::Folder runs{"advice"};
  Result<Advice> advice = find_advice(advice_job(too_hard()), {runs.path(), {}});
};
const KeptAdvice& kept_advice() {
  static const KeptAdvice kept;
  return kept;
}
const Result<Advice>& advice_for_too_hard() {
  return kept_advice().advice;
}

// The same runs in a folder of one's own.
void copy_runs(const small_band::Folder& to) {
  std::filesystem::copy(
      kept_advice().runs.path(), to.path(),
      std::filesystem::copy_options::recursive | std::filesystem::copy_options::overwrite_existing);
}

// A plan that gives every kind of change something to do.
Plan with_everything() {
  Plan plan = small_band::plan(6.0 * kPa);
  plan.session = Session{600.0 * second, 120.0 * second, 120.0 * second, 3.0 * second};
  plan.inflation.push_back(
      {"second valve", 12.0 * mL, {{1.0, 3.0 * second, 90.0 * second}, {0.0, 3.0 * second, 90.0 * second}}});
  plan.layout.inlets.push_back({"second valve", {0.16, 0.025}});
  plan.layout_file = "band.json";
  return plan;
}

PlanChanges changes_of(const Plan& plan) {
  static const Body body = small_band::body();
  static const Resources resources = small_band::resources();
  return single_changes({plan, body, resources.silicones, {{"second valve", 2.0 * mL}}, true, true});
}

// `changed` with what a change of this kind may touch put back.
Plan put_back(Plan changed, const Plan& plan, ChangeKind kind) {
  switch (kind) {
    case ChangeKind::kInflation:
      for (std::size_t i = 0; i < plan.inflation.size(); ++i)
        changed.inflation[i].target = plan.inflation[i].target;
      break;
    case ChangeKind::kFastening:
      changed.layout.closure = plan.layout.closure;
      changed.layout_file = plan.layout_file;
      break;
    case ChangeKind::kPlacement:
      changed.placement = plan.placement;
      break;
    case ChangeKind::kSheet:
      changed.layout.skin_sheet = plan.layout.skin_sheet;
      changed.layout.outer_sheet = plan.layout.outer_sheet;
      changed.layout_file = plan.layout_file;
      break;
    case ChangeKind::kTime:
      changed.session = plan.session;
      for (std::size_t i = 0; i < plan.inflation.size(); ++i)
        changed.inflation[i].steps = plan.inflation[i].steps;
      break;
    case ChangeKind::kValves:
      break;
  }
  return changed;
}

TEST(PlanChange, ChangesWhatItSaysAndNothingElse) {
  const Plan plan = with_everything();
  const PlanChanges all = changes_of(plan);
  std::set<ChangeKind> kinds;
  std::set<std::string> names, words;
  for (const PlanChange& change : all.changes) {
    kinds.insert(change.kind);
    EXPECT_TRUE(names.insert(change.name).second) << change.name;
    for (const int rung : {0, change.rungs - 1}) {
      const Plan changed = change.plan_at(rung);
      EXPECT_EQ(changed == plan, change.kind == ChangeKind::kValves) << english(change.words_at(rung));
      EXPECT_TRUE(put_back(changed, plan, change.kind) == plan) << english(change.words_at(rung));
      words.insert(english(change.words_at(rung)));
    }
    // A layout that is no longer its file's is written out.
    const bool of_layout = change.kind == ChangeKind::kFastening || change.kind == ChangeKind::kSheet;
    EXPECT_EQ(change.plan_at(0).layout_file.has_value(), !of_layout) << change.name;
  }
  EXPECT_EQ(kinds.size(), 6u);
  EXPECT_GE(words.size(), names.size());
  // 2 inlets and both, valves, 6 fastenings, 4 moves, 2 turns, 2 sheets thicker and softer, 3 times.
  EXPECT_EQ(all.changes.size(), 23u);
}

TEST(PlanChange, AmountsFallToWhatIsSetAndPrinted) {
  const PlanChanges all = changes_of(with_everything());
  const PlanChange& pressure = all.changes[0];
  ASSERT_EQ(pressure.name, "inlet valve lower");
  ASSERT_EQ(pressure.rungs, 59);
  Pressure last = 6.0 * kPa;
  for (int rung = 0; rung < pressure.rungs; ++rung) {
    const Pressure set = std::get<Pressure>(pressure.plan_at(rung).inflation[0].target);
    EXPECT_NEAR((last - set) / kPa, 0.1, 1e-9);
    last = set;
  }
  EXPECT_NEAR(last / kPa, 0.1, 1e-9);
  EXPECT_EQ(english(pressure.words_at(43)), "Lower 'valve' from 6.0 to 1.6 kPa (12 mmHg)");
  const PlanChange& volume = all.changes[1];
  for (int rung = 0; rung < volume.rungs; ++rung)
    EXPECT_GT(std::get<Volume>(volume.plan_at(rung).inflation[1].target) / mL, 2.0) << "less than it holds";
  EXPECT_EQ(english(volume.words_at(0)), "Fill 'second valve' with 11.8 mL instead of 12.0 mL");
}

TEST(PlanChange, FastensLongerByAsMuchAsItSays) {
  const Plan plan = small_band::plan(6.0 * kPa);
  for (const PlanChange& change : changes_of(plan).changes) {
    if (change.name != "fastening 3 % looser") continue;
    const Plan changed = change.plan_at(0);
    const auto before = resolve_closing_length(small_band::body(), plan.layout, plan.placement),
               after = resolve_closing_length(small_band::body(), changed.layout, changed.placement);
    ASSERT_TRUE(before.ok() && after.ok());
    EXPECT_NEAR(**after / **before, 1.03, 2e-4);
    return;
  }
  FAIL() << "no such change";
}

TEST(PlanChange, MovesTheSkinPointByTenMillimetres) {
  const Plan plan = small_band::plan(6.0 * kPa);
  const Body body = small_band::body();
  const BodySurface surface(body);
  const auto anchor_of = [&](const Plan& of) {
    const auto point = skin_point_at(surface, std::get<AnchorAtStation>(of.placement.anchor));
    EXPECT_TRUE(point.ok());
    return point ? point->point_m : Vec3(Vec3::Zero());
  };
  const Vec3 before = anchor_of(plan);
  int moves = 0;
  for (const PlanChange& change : changes_of(plan).changes) {
    if (!change.name.starts_with("10 mm")) continue;
    ++moves;
    // A chord is a little shorter than the arc.
    EXPECT_NEAR((anchor_of(change.plan_at(0)) - before).norm(), 0.010, 2e-4) << change.name;
  }
  EXPECT_EQ(moves, 4);
}

TEST(PlanChange, LeavesOutWhatCannotBe) {
  Plan plan = small_band::plan(6.0 * kPa);
  plan.layout.closure.reset();
  plan.layout.skin_sheet.material = "00-10";
  const PlanChanges all = changes_of(plan);
  ASSERT_EQ(all.left_out.size(), 2u);
  EXPECT_EQ(all.left_out[0].reason, "the layout has no closure");
  EXPECT_NE(all.left_out[1].reason.find("softest"), std::string::npos);
  for (const PlanChange& change : all.changes) EXPECT_NE(change.kind, ChangeKind::kFastening) << change.name;
}

ChangeOutcome outcome_with(std::vector<LimitMark> marks) {
  ChangeOutcome outcome;
  outcome.marks = std::move(marks);
  return outcome;
}

TEST(Worsened, IsAShareThatGrowsASeverityThatRisesOrANewOneAboveALimit) {
  const ChangeOutcome before = outcome_with({{"pad", "pressure", 1.30, Severity::kAboveLimit, ""},
                                             {"strap", "pressure", 0.50, Severity::kNote, ""},
                                             {"Heat", "hazard", 0.0, Severity::kNote, ""}});
  ChangeOutcome after = before;
  after.marks[0] = {"pad", "pressure", 0.90, Severity::kWarn, ""};
  EXPECT_FALSE(worsened(before, after));
  after.marks[1].share = 0.515;  // as remeshing moves it
  EXPECT_FALSE(worsened(before, after));
  after.marks[1].share = 0.53;
  EXPECT_EQ(worsened(before, after).value_or(""),
            "'strap' (pressure) would rise from 50 % to 53 % of its limit");
  after.marks[1].share = 0.50;
  after.marks[2].severity = Severity::kWarn;
  EXPECT_TRUE(worsened(before, after));
  after.marks[2].severity = Severity::kNote;
  after.marks.push_back({"seam", "pressure", 0.8, Severity::kWarn, ""});
  EXPECT_FALSE(worsened(before, after)) << "a new warning may come";
  after.marks.back().severity = Severity::kAboveLimit;
  EXPECT_TRUE(worsened(before, after));
}

TEST(Worsened, IsAReliefValveWithoutASetting) {
  ChangeOutcome before = outcome_with({});
  before.relief = {{"valve", 2.0 * kPa}};
  EXPECT_TRUE(worsened(before, outcome_with({})));
  EXPECT_FALSE(worsened(outcome_with({}), before));
}

TEST(Drift, IsTheRootMeanSquareWeightedByArea) {
  ChangeOutcome before, after;
  before.mean = {1.0 * kPa, 2.0 * kPa};
  after.mean = {1.0 * kPa, 4.0 * kPa};
  EXPECT_NEAR(drift(before, after, {3.0 * cm2, 1.0 * cm2}) / kPa, 1.0, 1e-12);
  EXPECT_NEAR(drift(before, before, {3.0 * cm2, 1.0 * cm2}) / kPa, 0.0, 1e-12);
}

Pressure mean_of(const Plan& plan) {
  const Body body = body_of_plan(plan, small_band::body()).value();
  const auto study = StudyCase::make(plan, body, small_band::resources(), mesh_of_plan(plan)).value();
  const LoadPath path = study.inflate_to(study.targets(), silent_progress()).value();
  return study.read(path).figures.chambers[0].mean;
}

// A file rounds to a millionth of a millimetre: what is advised is what its maker will have in hand.
TEST(SolveChange, IsSolvedAsItsPlanIsWritten) {
  Plan plan = small_band::plan(2.0 * kPa);
  plan.body = BodyForm{"cylinder", {}, {}};
  for (Vec2& point : plan.layout.chambers[0].boundary_m) point += Vec2(0.4e-9, -0.3e-9);
  const auto all = changes_of(plan).changes;
  const auto looser =
      std::find_if(all.begin(), all.end(), [](const auto& c) { return c.name == "fastening 3 % looser"; });
  ASSERT_NE(looser, all.end());
  ChangeSolve how{.mesh = mesh_of_plan(plan), .search = false};
  const Body body = body_of_plan(plan, small_band::body()).value();
  const auto outcome = solve_change(*looser, how, body, small_band::resources(), silent_progress()).value();
  ASSERT_FALSE(outcome.failed) << *outcome.failed;
  const Plan changed = looser->plan_at(outcome.rung);
  EXPECT_EQ(outcome.mean[0], mean_of(as_written(changed).value()));
  EXPECT_NE(outcome.mean[0], mean_of(changed));
}

TEST(Advise, WhatIsAdvisedEndsAsAnEstimateWithNothingAboveALimit) {
  const auto& advice = advice_for_too_hard();
  ASSERT_TRUE(advice.ok()) << advice.problem().message;
  ASSERT_FALSE(advice->plan.within);
  ASSERT_TRUE(advice->advised());
  int advised = 0;
  for (const TriedChange& change : advice->changes) {
    if (change.fate != ChangeFate::kAdvised) continue;
    ++advised;
    ASSERT_TRUE(change.plan);
    // The file that the maker gets, not only the plan in memory: its layout's numbers are rounded.
    const small_band::Folder folder("written");
    ASSERT_TRUE(write_plan(*change.plan, folder.path() / "plan.json").ok());
    const auto written = read_plan(folder.path() / "plan.json");
    ASSERT_TRUE(written.ok()) << written.problem().message;
    const auto solved =
        estimate(*written, small_band::body(), small_band::resources(), {.mesh_error = false});
    ASSERT_TRUE(solved.ok()) << solved.problem().message;
    EXPECT_FALSE(solved->above_limit()) << english(change.words) << ": " << static_cast<int>(solved->worst());
    EXPECT_FALSE(worsened(advice->plan, change.outcome)) << english(change.words);
    EXPECT_EQ(change.edge, advice->edge);
  }
  EXPECT_GE(advised, 1);
  EXPECT_LE(advised, 3);
}

TEST(Advise, ThePlanAsItIsReadsAsItsEstimate) {
  const auto& advice = advice_for_too_hard();
  ASSERT_TRUE(advice.ok()) << advice.problem().message;
  const auto solved =
      estimate(too_hard(), small_band::body(), small_band::resources(), {.mesh_error = false});
  ASSERT_TRUE(solved.ok());
  double highest = 0.0;
  for (const Finding& finding : solved->findings) highest = std::max(highest, finding.share_of_limit);
  double read = 0.0;
  for (const LimitMark& mark : advice->plan.marks) read = std::max(read, mark.share);
  EXPECT_NEAR(read, highest, 1e-9);
  EXPECT_GT(highest, 1.0);
}

TEST(Advise, FindsTheHighestPressureThatIsWithinAndLowersTheValveWithIt) {
  const auto& advice = advice_for_too_hard();
  ASSERT_TRUE(advice.ok()) << advice.problem().message;
  for (const TriedChange& change : advice->changes) {
    if (change.name != "inlet valve lower") continue;
    ASSERT_EQ(change.fate, ChangeFate::kAdvised) << change.reason;
    Plan plan = *change.plan;
    const auto valve = plan.supply.relief_of("valve");
    ASSERT_TRUE(valve);
    EXPECT_LT(*valve, 8.0 * kPa);
    EXPECT_NE(english(change.words).find("set the relief valve no higher than"), std::string::npos)
        << english(change.words);
    // One step of 0.1 kPa higher is above.
    plan.inflation[0].target = std::get<Pressure>(plan.inflation[0].target) + 0.1 * kPa;
    const auto higher = estimate(plan, small_band::body(), small_band::resources(), {.mesh_error = false});
    ASSERT_TRUE(higher.ok());
    EXPECT_TRUE(higher->above_limit());
    return;
  }
  FAIL() << "lowering the inlet was not tried";
}

TEST(Advise, IsRankedAndNeverCallsAnythingSafe) {
  const auto& advice = advice_for_too_hard();
  ASSERT_TRUE(advice.ok()) << advice.problem().message;
  for (std::size_t c = 1; c < advice->changes.size(); ++c) {
    const TriedChange &first = advice->changes[c - 1], &second = advice->changes[c];
    EXPECT_LE(first.fate, second.fate);
    const bool both = first.fate == ChangeFate::kAdvised && second.fate == first.fate;
    EXPECT_TRUE(!both || first.moved <= second.moved) << english(second.words);
  }
  const std::string page = advice_markdown(*advice, "small band", "band.json") +
                           advice_json(*advice, "small band", "hash", "band.json");
  for (const char* word : {"safe", "Safe", "harmless"}) EXPECT_EQ(page.find(word), std::string::npos) << word;
  EXPECT_NE(advice_words(*advice, "band.json")[0].find("within its limits, "), std::string::npos)
      << advice_words(*advice, "band.json")[0];
}

TEST(Advise, IsTheSameFromKeptRuns) {
  const small_band::Folder runs("advice-kept");
  const auto& once = advice_for_too_hard();
  ASSERT_TRUE(once.ok()) << once.problem().message;
  copy_runs(runs);
  const auto kept = runs.kept_runs();
  EXPECT_GT(kept, 10);
  const auto again = find_advice(advice_job(too_hard()), {runs.path(), {}});
  ASSERT_TRUE(again.ok());
  EXPECT_EQ(runs.kept_runs(), kept) << "solved twice";
  EXPECT_EQ(advice_json(*once, "p", "h", "f"), advice_json(*again, "p", "h", "f"));
}

// Rewrites what was kept of changes solved on the plan's own mesh.
void rewrite_verified(const std::filesystem::path& folder,
                      const std::function<void(const std::string& change, nlohmann::json&)>& rewrite) {
  std::string text;
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    std::ifstream in(entry.path());
    for (std::string line; std::getline(in, line);) {
      const auto kept = read_run_line(line);
      ASSERT_TRUE(kept);
      const auto of = nlohmann::json::parse(kept->identity);
      auto answer = nlohmann::json::parse(kept->answer);
      const std::string change = of["change"].get<std::string>();
      if (!of["search"].get<bool>() && change != "plan as it is") rewrite(change, answer);
      text += run_line("\"x\"", kept->identity, answer.dump());
      if (text.back() != '\n') text += '\n';
    }
    in.close();
    std::ofstream(entry.path()) << text;
  }
}

TEST(Advise, WhatIsNotWithinOnThePlansOwnMeshIsNotAdvised) {
  const small_band::Folder runs("advice-forged");
  const auto& once = advice_for_too_hard();
  ASSERT_TRUE(once.ok() && once->advised());
  copy_runs(runs);
  const std::string first = once->changes.front().name;
  rewrite_verified(runs.path(), [&](const std::string& change, nlohmann::json& answer) {
    if (change == first) answer["within"] = false;
  });
  const auto again = find_advice(advice_job(too_hard()), {runs.path(), {}});
  ASSERT_TRUE(again.ok()) << again.problem().message;
  bool seen = false;
  for (const TriedChange& change : again->changes)
    if (change.name == first) {
      seen = true;
      EXPECT_EQ(change.fate, ChangeFate::kNotThere);
      EXPECT_FALSE(change.plan);
    }
  EXPECT_TRUE(seen);
}

TEST(Advise, WhatMakesAnotherPlaceWorseOnThePlansOwnMeshIsNotAdvised) {
  const small_band::Folder runs("advice-worse");
  const auto& once = advice_for_too_hard();
  ASSERT_TRUE(once.ok() && once->advised());
  copy_runs(runs);
  const std::string first = once->changes.front().name;
  rewrite_verified(runs.path(), [&](const std::string& change, nlohmann::json& answer) {
    if (change == first)
      answer["marks"].push_back(
          {"another place", "pressure", 1.2, static_cast<int>(Severity::kAboveLimit), ""});
  });
  const auto again = find_advice(advice_job(too_hard()), {runs.path(), {}});
  ASSERT_TRUE(again.ok()) << again.problem().message;
  for (const TriedChange& change : again->changes)
    EXPECT_EQ(change.fate == ChangeFate::kNotThere, change.name == first) << change.name;
}

TEST(Advise, APlanWithinItsLimitsIsToldSoAndNothingIsTried) {
  const auto advice = advice_of(small_band::plan(0.5 * kPa), "advice-within");
  ASSERT_TRUE(advice.ok()) << advice.problem().message;
  EXPECT_TRUE(advice->plan.within);
  EXPECT_TRUE(advice->changes.empty());
  EXPECT_NE(advice_words(*advice, "band.json")[0].find("within its limits as it is"), std::string::npos);
}

TEST(Advise, WhereNothingHelpsItSaysSoAndNamesTheCeiling) {
  const auto advice = advice_of(small_band::plan(2.0 * kPa, 0.25), "advice-none");
  ASSERT_TRUE(advice.ok()) << advice.problem().message;
  EXPECT_FALSE(advice->advised());
  const auto words = advice_words(*advice, "band.json");
  EXPECT_EQ(words[0], "No single change that was tried brings the plan within its limits.");
  EXPECT_NE(words[2].find("wrapgauge ceiling band.json"), std::string::npos);
  bool nearer = false;
  for (const TriedChange& change : advice->changes) nearer |= change.fate == ChangeFate::kNotEnough;
  EXPECT_TRUE(nearer) << "three per cent looser should come nearer";
}

TEST(Advise, WhereTimeBreaksTheRuleAShorterTimeComesFirst) {
  Plan plan = small_band::plan(1.3 * kPa);
  plan.session = Session{600.0 * second, 240.0 * second, 300.0 * second, 2.0 * second};
  const auto advice = advice_of(plan, "advice-time");
  ASSERT_TRUE(advice.ok()) << advice.problem().message;
  ASSERT_FALSE(advice->plan.within) << advice_words(*advice, "f")[0];
  ASSERT_TRUE(advice->advised()) << advice_markdown(*advice, "p", "f");
  EXPECT_EQ(advice->changes.front().kind, ChangeKind::kTime) << advice_markdown(*advice, "p", "f");
  EXPECT_NEAR(advice->changes.front().moved / kPa, 0.0, 1e-9);
}

TEST(Advise, AFillVolumeIsLoweredInMillilitres) {
  const Plan plan = small_band::plan(14.0 * mL);
  const Resources resources = small_band::resources();
  const Body body = body_of_plan(plan, small_band::body()).value();
  const StudyCase planned = StudyCase::make(plan, body, resources, mesh_of_plan(plan)).value();
  const auto path = planned.inflate_to(planned.targets(), silent_progress());
  ASSERT_TRUE(path.ok());
  const Volume closed(path->states.front().group_volume_m3[0]);
  const PlanChange lower =
      single_changes({plan, body, resources.silicones, {{"valve", closed}}}).changes.front();
  ASSERT_EQ(lower.name, "inlet valve lower");
  const ChangeSolve how{.mesh = mesh_of_plan(plan), .as_planned = &planned};
  const auto outcome = solve_change(lower, how, body, resources, silent_progress());
  ASSERT_TRUE(outcome.ok() && !outcome->failed);
  EXPECT_TRUE(outcome->within);
  EXPECT_GT(outcome->rung, 0) << "14 mL less one step should not do";
  EXPECT_NE(english(lower.words_at(outcome->rung)).find("instead of 14.0 mL"), std::string::npos);
  // The step before is not within.
  PlanChange before = lower;
  before.plan_at = [&](int) { return lower.plan_at(outcome->rung - 1); };
  before.rungs = 1;
  const auto higher = solve_change(before, how, body, resources, silent_progress());
  ASSERT_TRUE(higher.ok());
  EXPECT_FALSE(higher->within);
}

// Property: small changes act in proportion, so that one and two per cent tell the same slope.
TEST(Advise, SmallChangesOfTheFasteningActInProportion) {
  const Plan plan = advice_job(small_band::plan(1.0 * kPa, 0.04)).plan;
  const Body body = body_of_plan(plan, small_band::body()).value();
  const Resources resources = small_band::resources();
  const auto mean_at = [&](double stretch) {
    Plan changed = plan;
    changed.layout.closure->stretch = stretch;
    const PlanChange change{"", "", ChangeKind::kFastening, 1, [&](int) { return changed; }, {}};
    const auto solved =
        solve_change(change, {mesh_of_plan(plan), 1.0, true, 0}, body, resources, silent_progress());
    EXPECT_TRUE(solved.ok() && !solved->failed);
    return solved.ok() && !solved->mean.empty() ? solved->mean[0] / Pa : 0.0;
  };
  const double middle = mean_at(0.04), near = mean_at(0.05) - mean_at(0.03),
               far = mean_at(0.06) - mean_at(0.02);
  EXPECT_GT(near, 0.0) << "tighter presses harder";
  EXPECT_NEAR(far / near, 2.0, 0.4) << middle;
}

}  // namespace
}  // namespace wrapgauge
