#include <QListWidget>
#include <nlohmann/json.hpp>

#include "app/desk/window/findings_list.hpp"
#include "tests/desk_session/small_plan.hpp"
#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class Limits : public JobTest {
 protected:
  void open_small(Pressure inside = 2.0 * kPa) {
    Plan plan = small_plan();
    plan.inflation[0].target = inside;
    plan.layout.rim_bonded = true;  // held down, so that it presses
    ASSERT_TRUE(write_plan(plan, root() / "pad.json").ok());
    hand::drop(window_, root() / "pad.json");
    open(PlanStep::kLimits);
    ASSERT_TRUE(wait_for_result()) << window_.message().words().toStdString();
  }

  // The program's set with every limit and warning times `factor`.
  std::filesystem::path own_set(const std::string& name, double factor) {
    const auto shipped = std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources/limits.json";
    auto set = nlohmann::json::parse(*read_file(shipped));
    for (auto& row : set["rows"])
      for (const char* key : {"warn_kpa", "limit_kpa"}) row[key] = factor * row[key].get<double>();
    EXPECT_TRUE(write_file_atomically(root() / name, set.dump()).ok());
    return root() / name;
  }
  // Pointed at, a card shows the plan as it would be; nothing of the plan is changed by it.
  void look_ahead(QListWidget& cards) {
    const ShownPlan& shown = window_.views().shown();
    const auto of_plan = window_.session().solved()->estimate;
    const SessionState before = window_.session().now();
    QTest::mouseMove(cards.viewport(), cards.visualItemRect(cards.item(0)).center());
    ASSERT_TRUE(wait_until([&] { return !shown.would_be().isEmpty(); }));
    EXPECT_NE(shown.estimate(), of_plan);
    EXPECT_LT(shown.estimate()->findings.front().severity, Severity::kAboveLimit)
        << "what is shown is not the change within the limits";
    EXPECT_EQ(window_.session().now(), before);
    picture(QStringLiteral("limits-look-ahead"));
    QTest::mouseMove(&window_, {5, 5});
    ASSERT_TRUE(wait_until([&] { return shown.would_be().isEmpty(); }));
    EXPECT_EQ(shown.estimate(), of_plan);
    EXPECT_EQ(*shown.layout(), window_.session().plan().layout);
    EXPECT_NE(shown.worn(), nullptr);
  }
  QString share_of_limit() {
    const auto* table = window_.findChild<ChamberTable*>();
    return table->model()->index(0, ChamberTableModel::kShareOfLimit).data().toString();
  }
  void take_set(const std::filesystem::path& file) {
    hand::with_answers([this] { hand::press(window_, QStringLiteral("Another limit set…")); },
                       {hand::give_file(file)});
    ASSERT_TRUE(wait_for_checks());
  }
};

TEST_F(Limits, NotesAreCountedAndShownWhenAskedFor) {
  window_.start({});
  open(PlanStep::kLimits);
  ASSERT_TRUE(wait_for_result());
  auto* findings = named<QListWidget>(QStringLiteral("findings"));
  auto* notes = named<QListWidget>(QStringLiteral("notes"));
  const auto listed = listed_findings(*window_.session().solved()->estimate);
  const ListedApart apart = listed_apart(listed);
  const auto warns = [](const ListedFinding& finding) { return finding.severity == Severity::kWarn; };
  ASSERT_TRUE(std::any_of(listed.begin(), listed.end(), warns)) << "the demo has no warning";
  ASSERT_FALSE(apart.aside.empty()) << "the demo has no note";
  for (const ListedFinding& finding : apart.aside) EXPECT_EQ(finding.severity, Severity::kNote);
  EXPECT_EQ(static_cast<std::size_t>(findings->count()), apart.to_act_on.size());
  EXPECT_EQ(apart.to_act_on.size() + apart.aside.size(), listed.size()) << "something is not said at all";
  EXPECT_FALSE(notes->isVisible());
  hand::press(window_, QStringLiteral("Notes: %1").arg(apart.aside.size()));
  EXPECT_TRUE(notes->isVisible());
  EXPECT_EQ(static_cast<std::size_t>(notes->count()), apart.aside.size());
}

TEST_F(Limits, AStricterSetIsTakenAndALaxerOneOnlyWithAReason) {
  open_small();
  const auto before = state(PlanStep::kLimits);
  const QString share = share_of_limit();
  take_set(own_set("strict.json", 0.1));
  ASSERT_TRUE(wait_for_result())
      << state(PlanStep::kLimits)
      << window_.session().state(PlanStep::kLimits).findings.join(" ").toStdString();
  EXPECT_TRUE(is_said(QStringLiteral("strict.json")));
  EXPECT_NE(share_of_limit(), share);
  take_set(own_set("lax.json", 1.5));
  EXPECT_EQ(state(PlanStep::kLimits), "needs another limit set");
  EXPECT_TRUE(is_said(QStringLiteral("laxer"))) << "what is wrong with the set is not said";
  picture(QStringLiteral("limits-laxer"));
  hand::type(window_, QStringLiteral("Why a laxer limit set is used"), QStringLiteral("bench only"));
  ASSERT_TRUE(wait_for_result()) << window_.message().words().toStdString();
  hand::press(window_, QStringLiteral("Take the program's own limit set"));
  ASSERT_TRUE(wait_for_result());
  EXPECT_EQ(state(PlanStep::kLimits), before);
  EXPECT_EQ(share_of_limit(), share);
}

TEST_F(Limits, TheHighestInflationIsFoundAndSaid) {
  open_small();
  hand::press(window_, QStringLiteral("Find the highest inflation within limits"));
  ASSERT_TRUE(wait_until([&] { return window_.session().ceiling() != nullptr; }))
      << window_.message().words().toStdString();
  EXPECT_TRUE(is_said(QStringLiteral("tube")));
  picture(QStringLiteral("limits-ceiling"));
}

TEST_F(Limits, AChangeIsFoundMadeAndTakenBack) {
  open_small(12.0 * kPa);
  const Plan before = window_.session().plan();
  hand::press(window_, QStringLiteral("Find what to change"));
  ASSERT_TRUE(wait_until([&] { return window_.session().advice() && !window_.session().runner().busy(); }))
      << window_.message().words().toStdString();
  auto* cards = named<QListWidget>(QStringLiteral("changes"));
  ASSERT_GE(cards->count(), 1);
  picture(QStringLiteral("limits-what-to-change"));
  look_ahead(*cards);
  hand::click(*cards->viewport(), cards->visualItemRect(cards->item(0)).center());
  hand::press(window_, QStringLiteral("Make the chosen change of the plan"));
  EXPECT_NE(window_.session().plan(), before);
  EXPECT_FALSE(cards->isEnabled()) << "cards of the plan before could be made of this one";
  ASSERT_TRUE(wait_for_result());
  EXPECT_LT(window_.session().solved()->summary->worst, Severity::kAboveLimit);
  hand::key(window_, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(window_.session().plan(), before);
  EXPECT_TRUE(cards->isEnabled());
}

TEST_F(Limits, AWantedPressureGivesAnInflationThatIsTakenAndTakenBack) {
  open_small();
  hand::press(window_, QStringLiteral("Find the inflation"));
  EXPECT_TRUE(window_.message().words().contains(QStringLiteral("no wanted pressure")));
  hand::type_in_cell(window_, QStringLiteral("Wanted mean contact pressure"), 0, 1, QStringLiteral("0.5"));
  hand::press(window_, QStringLiteral("Find the inflation"));
  ASSERT_TRUE(wait_until([&] { return window_.session().aim() != nullptr; }))
      << window_.message().words().toStdString();
  picture(QStringLiteral("limits-aim"));
  const double found = window_.session().aim()->as_drawn.inlets[0].gauge / kPa;
  hand::press(window_, QStringLiteral("Use the inflation that was found"));
  EXPECT_NEAR(std::get<Pressure>(window_.session().plan().inflation[0].target) / kPa, found, 1e-9);
  hand::key(window_, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_NEAR(std::get<Pressure>(window_.session().plan().inflation[0].target) / kPa, 2.0, 1e-9);
}

}  // namespace
}  // namespace wrapgauge
