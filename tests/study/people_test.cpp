#include "model/study/people.hpp"

#include <gtest/gtest.h>

#include "bodyforms/anthropometry.hpp"
#include "model/body/girth.hpp"
#include "model/core/file.hpp"
#include "model/study/people_report.hpp"
#include "model/study/person_json.hpp"
#include "model/study/study_case.hpp"
#include "tests/study/small_band.hpp"

namespace wrapgauge {
namespace {

// People are cylinders of other girths; the small band closes on those it reaches round.
struct SmallPeople {
  Plan plan = small_band::plan(2.0 * kPa);
  Body body = small_band::body();
  Resources resources = small_band::resources();
  PeopleOptions options{14.0 * mm, false, {}};

  SmallPeople() {
    plan.body = BodyForm{"cylinder", {}, {}};
    plan.solver.steps = 1;
  }
  PeopleJob job(std::vector<PersonTried> people) const {
    return {plan,
            body,
            resources,
            [](const Plan& theirs) {
              const auto& form = std::get<BodyForm>(theirs.body);
              return make_form(form.form, form.parameters, form.person);
            },
            "hash",
            std::move(people),
            options};
  }
  static PersonTried person(const std::string& id, double girth_mm, double length_mm = 200.0) {
    return {id, BodyForm{"cylinder", {{"girth", girth_mm}, {"length", length_mm}}, {}}, ""};
  }
  People tried(const std::vector<PersonTried>& people, const std::string& folder) const {
    const small_band::Folder runs(folder);
    int missing = 0;
    auto tried = try_people(job(people), {runs.path(), {}}, {}, missing);
    EXPECT_TRUE(tried.ok()) << tried.problem().message;
    EXPECT_TRUE(*tried);
    return **tried;
  }
};

TEST(People, EachIsWhatTheSamePlanComesToOnTheirBody) {
  SmallPeople small;
  const People people = small.tried({small.person("slim", 240.0), small.person("plan's", 251.327)}, "each");
  ASSERT_EQ(people.people.size(), 2u);
  Plan plan = small.plan;
  const Body slim = make_form("cylinder", {{"girth", 240.0}}).value();
  const auto ready = body_of_plan(plan, slim);
  ASSERT_TRUE(ready.ok());
  const auto study = StudyCase::make(plan, *ready, small.resources, mesh_of_plan(plan));
  ASSERT_TRUE(study.ok()) << study.problem().message;
  const auto path = study->inflate_to(study->targets(), silent_progress());
  ASSERT_TRUE(path.ok());
  const StateReading reading = study->read(*path);
  EXPECT_DOUBLE_EQ(people.people[0].answer.share, reading.nearest.share);
  EXPECT_EQ(people.people[0].answer.where, reading.nearest.where);
  EXPECT_NEAR(people.people[0].answer.girth / mm, 240.0, 0.5);
  EXPECT_NEAR(people.people[1].answer.girth / mm, 251.3, 0.5);
  EXPECT_NE(people.people[0].answer.share, people.people[1].answer.share);
}

TEST(People, SomebodyTheLayoutDoesNotReachRoundIsARowWithItsReason) {
  SmallPeople small;
  const People people = small.tried({small.person("wide", 300.0), small.person("usual", 251.0)}, "wide");
  EXPECT_EQ(people.people[0].verdict, PersonVerdict::kNoAnswer);
  ASSERT_TRUE(people.people[0].answer.failed);
  EXPECT_NE(people.people[0].answer.failed->find("mm"), std::string::npos) << *people.people[0].answer.failed;
  EXPECT_NEAR(people.people[0].answer.girth / mm, 300.0, 0.5);  // measured all the same
  EXPECT_NE(people.people[1].verdict, PersonVerdict::kNoAnswer);
  const std::string csv = people_csv(people);
  EXPECT_NE(csv.find("\"wide\",no answer,30"), std::string::npos) << csv;
}

TEST(People, TheAnchorKeepsItsShareOfTheLimb) {
  SmallPeople small;
  const PersonTried tall = small.person("tall", 251.0, 260.0);
  const Body body = make_form("cylinder", {{"girth", 251.0}, {"length", 260.0}}).value();
  const auto plan = plan_on(small.job({tall}), tall, body);
  ASSERT_TRUE(plan.ok()) << plan.problem().message;
  EXPECT_NEAR(std::get<AnchorAtStation>(plan->placement.anchor).station / mm, 120.0 * 260.0 / 200.0, 1e-9);
}

TEST(People, AClosingRowIsNeverTighterThanThePlanWhereOneIsLooser) {
  SmallPeople small;
  small.options.rows = {230.0 * mm, 245.0 * mm, 260.0 * mm};
  // The plan closes 2 % longer than the girth.
  const auto row_on = [&](double girth_mm) {
    const PersonTried person = small.person("one", girth_mm);
    const Body body = make_form("cylinder", {{"girth", girth_mm}}).value();
    const auto plan = plan_on(small.job({person}), person, body);
    EXPECT_TRUE(plan.ok());
    return *plan->layout.closure->closing_length / mm;
  };
  EXPECT_NEAR(row_on(225.0), 230.0, 1e-9);  // 225 / 0.98 = 229.6
  EXPECT_NEAR(row_on(228.0), 245.0, 1e-9);  // 232.7 is longer than row 1
  EXPECT_NEAR(row_on(239.0), 245.0, 1e-9);
  EXPECT_NEAR(row_on(300.0), 260.0, 1e-9);  // none is long enough
}

TEST(People, PartsMergeToTheSameBytes) {
  SmallPeople small;
  small.options.ceiling = true;
  const std::vector<PersonTried> all{small.person("a", 240.0), small.person("b", 246.0),
                                     small.person("c", 251.0), small.person("d", 310.0)};
  const small_band::Folder one("one"), two("two"), merged("merged"), whole("whole");
  int missing = 0;
  const auto first = try_people(small.job(all), {one.path(), {}}, {1, 2}, missing);
  ASSERT_TRUE(first.ok()) << first.problem().message;
  EXPECT_FALSE(*first);
  EXPECT_EQ(missing, 2);
  ASSERT_TRUE(try_people(small.job(all), {two.path(), {}}, {2, 2}, missing).ok());
  const auto together = try_people(small.job(all), {merged.path(), {one.path(), two.path()}}, {}, missing);
  ASSERT_TRUE(together.ok());
  ASSERT_TRUE(*together);
  EXPECT_EQ(merged.kept_runs(), 0);
  const auto at_once = try_people(small.job(all), {whole.path(), {}}, {}, missing);
  ASSERT_TRUE(at_once.ok());
  EXPECT_EQ(people_json(**together), people_json(**at_once));
  EXPECT_EQ(people_csv(**together), people_csv(**at_once));
  EXPECT_EQ(people_markdown(**together, true), people_markdown(**at_once, true));
}

TEST(People, AnAnswerIsReadBackWhole) {
  PersonAnswer answer;
  answer.station = 120.5 * mm;
  answer.girth = 251.25 * mm;
  answer.limb = 200.0 * mm;
  answer.closing = 256.0 * mm;
  answer.row = 2;
  answer.share = 0.875;
  answer.where = "pad";
  answer.ceiling = PersonCeiling{
      CeilingStop::kLimitPoint, 0.5, {{"valve", false, std::nullopt, 1.5 * kPa, 12.0 * mL}}, "'pad'"};
  const auto back = person_from(person_json(answer));
  ASSERT_TRUE(back);
  EXPECT_EQ(person_json(*back), person_json(answer));
  EXPECT_FALSE(person_from("{\"failed\": null}"));
  EXPECT_FALSE(person_from("{\"fai"));
}

PersonRow row(double girth_mm, PersonVerdict verdict) {
  PersonRow made{"x", {}, verdict};
  made.answer.girth = girth_mm * mm;
  return made;
}

constexpr auto kIn = PersonVerdict::kWithin, kOut = PersonVerdict::kAbove, kNone = PersonVerdict::kNoAnswer;

TEST(AcceptedGirths, LieBetweenPeopleWhoAreWithinLessTheTapesError) {
  const auto accepted = accepted_girths({row(300, kOut), row(240.4, kIn), row(290.3, kIn), row(265, kIn)});
  ASSERT_TRUE(accepted);
  EXPECT_NEAR(accepted->from / mm, 246.0, 1e-9);  // 245.4, rounded inwards
  EXPECT_NEAR(accepted->to / mm, 285.0, 1e-9);    // 285.3
  EXPECT_EQ(accepted->people, 3);
}

TEST(AcceptedGirths, EndAtWhoeverIsNotWithin) {
  const auto accepted = accepted_girths({row(220, kIn), row(238, kIn), row(239, kNone), row(240, kIn),
                                         row(280, kIn), row(281, kOut), row(330, kIn)});
  ASSERT_TRUE(accepted);
  EXPECT_NEAR(accepted->smallest / mm, 240.0, 1e-9);
  EXPECT_NEAR(accepted->largest / mm, 280.0, 1e-9);
  // Of two people of one girth, one above a limit: the girth is not accepted.
  EXPECT_FALSE(accepted_girths({row(240, kIn), row(260, kIn), row(260, kOut), row(262, kIn)}) &&
               accepted_girths({row(240, kIn), row(260, kIn), row(260, kOut), row(262, kIn)})->largest >
                   255.0 * mm);
}

TEST(AcceptedGirths, AreNoneOfOnePersonOrLessThanATape) {
  EXPECT_FALSE(accepted_girths({row(240, kIn)}));
  EXPECT_FALSE(accepted_girths({row(240, kIn), row(249, kIn)}));
  EXPECT_FALSE(accepted_girths({row(240, kIn), row(250, kOut), row(260, kIn)}));
  EXPECT_FALSE(accepted_girths({}));
}

TEST(People, ASharePastTheLimitOnThePlansOwnMeshIsNotWithin) {
  SmallPeople small;
  small.plan.mesh_edge = 9.0 * mm;
  small.options.edge = 16.0 * mm;
  const People people = small.tried({small.person("one", 251.327)}, "factor");
  EXPECT_GE(people.mesh_factor, 1.0);
  const PersonRow& one = people.people.front();
  EXPECT_EQ(one.verdict == PersonVerdict::kWithin,
            !one.answer.above && one.answer.share * people.mesh_factor <= 1.0);
}

// Someone's word that there are no other sites was given for one body.
TEST(People, AWordOnThePlansOwnSitesIsNotCarriedToAScan) {
  SmallPeople small;
  small.plan.sites_confirmed = SitesConfirmed{};
  const PersonTried scanned{"scanned", BodyFile{"arm.stl", {}, {}, {}, {}, {}}, "hash"};
  const auto on_scan = plan_on(small.job({scanned}), scanned, small_band::body());
  ASSERT_TRUE(on_scan.ok()) << on_scan.problem().message;
  EXPECT_FALSE(on_scan->sites_confirmed);
}

TEST(People, AReliefValveThatOpensTooLateOnThemIsAboveALimit) {
  SmallPeople small;
  small.plan = small_band::plan(0.5 * kPa, -0.04);
  small.plan.body = BodyForm{"cylinder", {}, {}};
  small.plan.solver.steps = 1;
  const PersonTried one = small.person("one", 251.327);
  EXPECT_EQ(small.tried({one}, "no-valve").people.front().verdict, PersonVerdict::kWithin);
  small.plan.supply.relief = 30.0 * kPa;
  const PersonRow row = small.tried({one}, "valve").people.front();
  EXPECT_EQ(row.verdict, PersonVerdict::kAbove);
  EXPECT_EQ(row.answer.where, "A valve or pump that sticks") << row.answer.sentence;
}

TEST(People, WhatLiesAtAPointOfThePlansOwnBodyIsRefused) {
  SmallPeople small;
  Plan plan = small.plan;
  plan.placement.anchor = AnchorAtPoint{Vec3(0.04, 0.0, 0.1)};
  EXPECT_TRUE(not_for_other_bodies(plan));
  plan = small.plan;
  plan.bony_sites.resize(1);
  plan.bony_sites[0].name = "ulna";
  ASSERT_TRUE(not_for_other_bodies(plan));
  EXPECT_NE(not_for_other_bodies(plan)->message.find("'ulna'"), std::string::npos);
  plan = small.plan;
  plan.tissue_depth_mm = {8.0, 9.0};
  EXPECT_TRUE(not_for_other_bodies(plan));
  EXPECT_FALSE(not_for_other_bodies(small.plan));
}

TEST(People, ANoteTakesTheRangeAndRefusesAStaleOne) {
  SmallPeople small;
  const People people = small.tried({small.person("a", 240.0), small.person("b", 254.0)}, "note");
  const small_band::Folder folder("people-json");
  const auto file = folder.path() / "people.json";
  ASSERT_TRUE(write_file_atomically(file, people_json(people)).ok());
  const auto brief = read_people_brief(file, "hash");
  ASSERT_TRUE(brief.ok()) << brief.problem().message;
  EXPECT_EQ(*brief, people_brief(people));
  EXPECT_NE(brief->find("Nobody else was tried."), std::string::npos);
  const auto stale = read_people_brief(file, "another");
  ASSERT_FALSE(stale.ok());
  EXPECT_NE(stale.problem().message.find("stale"), std::string::npos);
}

}  // namespace
}  // namespace wrapgauge
