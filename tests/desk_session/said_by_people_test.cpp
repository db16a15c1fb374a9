// What people answer for: taken whole, refused in the words of the plan file, kept by saving.
#include "app/desk/session/said_by_people.hpp"

#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

template <class Changed>
std::string refusal(const Changed& changed) {
  return changed ? "" : changed.problem().message;
}

bool says(const std::string& message, const std::string& beginning) {
  return message.starts_with(beginning);
}

TEST(SaidByPeople, AWordOnTheSitesIsWholeOrRefused) {
  const SitesConfirmed word{"A. Person, physiotherapist", "2026-11-20", "felt and marked"};
  const auto taken = with_sites_confirmed(small_plan(), word);
  ASSERT_TRUE(taken.ok()) << taken.problem().message;
  EXPECT_EQ(taken->sites_confirmed, word);
  Plan otherwise = *taken;
  otherwise.sites_confirmed.reset();
  EXPECT_EQ(otherwise, small_plan()) << "something else changed with it";
  EXPECT_TRUE(
      says(refusal(with_sites_confirmed(small_plan(), {"", "2026-11-20", "felt"})), "who holds nothing"));
  EXPECT_TRUE(says(refusal(with_sites_confirmed(small_plan(), {"A", " ", "felt"})), "when holds nothing"));
  EXPECT_TRUE(
      says(refusal(with_sites_confirmed(small_plan(), {"A", "2026-11-20", ""})), "why holds nothing"));
}

TEST(SaidByPeople, AClinicianHasANameARoleAndADay) {
  const Clearance clinician{"B. Person", "chest physician", "2026-11-21"};
  const auto taken = with_clearance(small_plan(), clinician);
  ASSERT_TRUE(taken.ok()) << taken.problem().message;
  EXPECT_EQ(taken->cleared_by, clinician);
  EXPECT_TRUE(
      says(refusal(with_clearance(small_plan(), {"", "physician", "2026-11-21"})), "name holds nothing"));
  EXPECT_TRUE(says(refusal(with_clearance(small_plan(), {"B", "", "2026-11-21"})), "role holds nothing"));
  for (const char* day : {"", "yesterday", "2026-02-30"})
    EXPECT_TRUE(says(refusal(with_clearance(small_plan(), {"B", "physician", day})), "date is \"")) << day;
}

TEST(SaidByPeople, TheDateOfTheNoteIsADayOrEmpty) {
  EXPECT_EQ(with_date(small_plan(), "2026-11-29")->date, "2026-11-29");
  EXPECT_EQ(with_date(small_plan(), "")->date, "");
  EXPECT_TRUE(says(refusal(with_date(small_plan(), "29.11.2026")), "date is \"29.11.2026\"; write a day as"));
}

// A plan that has no body or layout yet takes them too.
TEST(SaidByPeople, IsTakenByAPlanInTheMaking) {
  EXPECT_TRUE(with_date(Plan(), "2026-11-29").ok());
  EXPECT_TRUE(with_clearance(Plan(), {"B", "physician", "2026-11-21"}).ok());
}

TEST(SaidByPeople, MissingAnswersAreCounted) {
  Plan plan = small_plan();
  EXPECT_EQ(answers_missing(plan), 7);
  plan.wearers = {"healthy adults", 8, WearerPosture::kSitting, -20.0 * 10.0 * mm, "a helper", "by word"};
  EXPECT_EQ(answers_missing(plan), 1);
  plan.date = "2026-11-29";
  EXPECT_EQ(answers_missing(plan), 0);
}

class SaidInSession : public testing::Test, protected WithSession {
 protected:
  bool wait_for_result() {
    return wait_until(
        [&] { return session.solved() && session.stale().empty() && !session.runner().busy(); });
  }
  // The worked cuff, fastened all round a cylinder of its girth.
  void open_band(BodyPart part) {
    const auto file = std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources/plans/forearm-cuff.json";
    Plan plan = read_plan(file).value();
    plan.body = BodyForm{"cylinder", {{"girth", 270.0}, {"length", 300.0}}, {}};
    plan.part = part;
    session.edit("band", std::move(plan));
    ASSERT_TRUE(wait_for_result());
  }
  Severity worst() const { return session.solved()->summary->worst; }
};

TEST_F(SaidInSession, EveryEditIsOneStepAndSurvivesSaving) {
  open_small();
  const Plan before = session.plan();
  session.edit("word", with_sites_confirmed(session.plan(), {"A", "2026-11-20", "felt"}).value());
  session.edit("clinician", with_clearance(session.plan(), {"B", "physician", "2026-11-21"}).value());
  session.edit("date", with_date(session.plan(), "2026-11-29").value());
  Plan plan = session.plan();
  plan.wearers = {"healthy adults", 8, WearerPosture::kSitting, -200.0 * mm, "a helper", "by word"};
  session.edit("wearers", plan);
  EXPECT_EQ(session.undo_stack().count(), 4);
  ASSERT_TRUE(session.save(root / "said.json").ok());
  const auto again = read_plan(root / "said.json");
  ASSERT_TRUE(again.ok()) << again.problem().message;
  EXPECT_EQ(again->sites_confirmed, plan.sites_confirmed);
  EXPECT_EQ(again->cleared_by, plan.cleared_by);
  EXPECT_EQ(again->wearers, plan.wearers);
  EXPECT_EQ(again->date, "2026-11-29");
  for (int step = 0; step < 4; ++step) session.undo_stack().undo();
  EXPECT_EQ(session.plan(), before);
}

// The rule asks for a clinician on chest, abdomen, back and head alone, and only all round.
TEST_F(SaidInSession, AClinicianIsAskedForWhereTheRuleStopsTheDevice) {
  ASSERT_NO_FATAL_FAILURE(open_band(BodyPart::kThigh));
  EXPECT_FALSE(asks_for_clearance(session.now()));
  ASSERT_NO_FATAL_FAILURE(open_band(BodyPart::kChest));
  EXPECT_TRUE(asks_for_clearance(session.now()));
  EXPECT_EQ(worst(), Severity::kStop);
  session.edit("clinician", with_clearance(session.plan(), {"B", "physician", "2026-11-21"}).value());
  ASSERT_TRUE(wait_for_result());
  EXPECT_TRUE(asks_for_clearance(session.now())) << "it could not be taken back";
  for (const Finding& finding : session.solved()->estimate->findings)
    EXPECT_TRUE(finding.where != "chest" || finding.severity < Severity::kStop) << english(finding.sentence);
  Plan pad = small_plan();
  pad.part = BodyPart::kChest;
  session.edit("pad", pad);
  ASSERT_TRUE(wait_for_result());
  EXPECT_FALSE(asks_for_clearance(session.now())) << "a pad goes round nothing";
}

TEST_F(SaidInSession, ThatThereAreNoSitesIsAskedOfBodiesThatBringNone) {
  open_small();
  EXPECT_TRUE(may_have_no_sites(session.now()));
  Plan plan = session.plan();
  plan.part = BodyPart::kTestObject;
  session.edit("dummy", plan);
  EXPECT_FALSE(may_have_no_sites(session.now()));
  plan.part.reset();
  plan.body = BodyForm{"forearm", {}, {}};
  session.edit("form", plan);
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  EXPECT_FALSE(may_have_no_sites(session.now()));
}

// The estimate does not wait for who wears it: it stands, and the note says the new words.
TEST_F(SaidInSession, WordsOfTheNoteKeepTheEstimateAndWhatElseWasFound) {
  open_small();
  session.estimate_standard();
  ASSERT_TRUE(wait_until([&] {
    return session.solved() && session.solved()->fineness == Fineness::kStandard && !session.runner().busy();
  }));
  session.find_ceiling();
  ASSERT_TRUE(wait_until([&] { return session.ceiling() && !session.runner().busy(); }));
  const auto estimate = session.solved()->estimate;
  Plan plan = session.plan();
  plan.name = "another name";
  plan.wearers.population = "healthy adults";
  plan.date = "2026-11-29";
  session.edit("words", plan);
  EXPECT_FALSE(session.runner().busy());
  EXPECT_EQ(session.solved()->estimate, estimate);
  EXPECT_TRUE(session.stale().empty());
  EXPECT_TRUE(session.ceiling());
  EXPECT_EQ(session.state(PlanStep::kNote).kind, StepState::Kind::kReady);
  EXPECT_EQ(session.solved()->summary->plan, "another name");
  EXPECT_EQ(session.solved()->summary->wearers, plan.wearers);
  EXPECT_EQ(session.solved()->summary->date, "2026-11-29");
  session.undo_stack().undo();
  EXPECT_EQ(session.solved()->summary->date, "");
  EXPECT_EQ(session.solved()->estimate, estimate);
  plan.use = UsePattern::kPulse;
  session.edit("use", plan);
  EXPECT_FALSE(session.stale().empty()) << "the limits are no words of the note";
}

}  // namespace
}  // namespace wrapgauge
