// Where the bones are, that there are no others, who wears it and who allows it: said by hand.

#include <QCheckBox>
#include <QLineEdit>
#include <QListWidget>

#include "bodyforms/form.hpp"
#include "model/io/writers/mesh_writer.hpp"
#include "tests/desk_session/small_plan.hpp"
#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class WhoAndWhere : public JobTest {
 protected:
  const Plan& plan() { return window_.session().plan(); }
  void undo() { hand::key(window_, Qt::Key_Z, Qt::ControlModifier); }

  // The skin of a right forearm and nothing else, as a scan that was mended elsewhere.
  void open_scan() {
    forearm_ = make_form("forearm", {{"edge", 5.0}}, {std::nullopt, std::nullopt, BodySide::kRight}).value();
    const auto file = root() / "arm.ply";
    ASSERT_TRUE(write_mesh({forearm_.surface.vertices_m, forearm_.surface.faces}, file).ok());
    window_.start({});
    hand::key(window_, Qt::Key_N, Qt::ControlModifier);
    hand::drop(window_, file);
    ASSERT_TRUE(wait_for_checks());
    hand::choose(window_, QStringLiteral("Long axis of the body"),
                 QStringLiteral("long axis along +z of the file"));
    hand::choose(window_, QStringLiteral("Part of the person"), QStringLiteral("forearm"));
    ASSERT_TRUE(wait_for_checks());
  }
  Vec3 place_m(const std::string& name) const {
    for (const BonySite& site : forearm_.bony_sites)
      if (site.name == name) return site.point_m;
    ADD_FAILURE() << name;
    return Vec3::Zero();
  }
  // The body is turned to it, as by hand, and clicked where it is seen.
  void click_on_body(const Vec3& point_m) {
    BodyView& view = window_.views().body();
    view.show_place(point_m);
    const RasterPoint at = view.turntable().view().project(point_m);
    hand::click(canvas(), QPoint(static_cast<int>(at.x), static_cast<int>(at.y)));
  }
  QListWidget& sites() { return *named<QListWidget>(QStringLiteral("sites")); }
  int ticked() {
    int count = 0;
    for (int row = 0; row < sites().count(); ++row) count += sites().item(row)->checkState() == Qt::Checked;
    return count;
  }
  // The list is scrolled to the row, which is clicked in the middle or on its box.
  QRect row_rect(int row) {
    sites().scrollToItem(sites().item(row));
    return sites().visualItemRect(sites().item(row));
  }
  void tick(int row) {
    const QRect at = row_rect(row);
    hand::click(*sites().viewport(), {at.left() + 9, at.center().y()});
  }

  Body forearm_;
};

TEST_F(WhoAndWhere, BonesAreMarkedByAClickAndEachSiteIsConfirmedOrDropped) {
  open_scan();
  EXPECT_TRUE(is_said(QStringLiteral("Say first which side it is")));
  EXPECT_FALSE(hand::button(window_, QStringLiteral("Click the landmark on the body"))->isEnabled());
  hand::choose(window_, QStringLiteral("Side of the person"), QStringLiteral("right"));
  ASSERT_TRUE(wait_for_checks());
  picture(QStringLiteral("sites-1-none"));
  hand::choose(window_, QStringLiteral("Landmark"), QStringLiteral("ulnar styloid"));
  hand::press(window_, QStringLiteral("Click the landmark on the body"));
  picture(QStringLiteral("sites-2-asked"));
  click_on_body(place_m("ulnar styloid"));
  const int all = static_cast<int>(forearm_.bony_sites.size());
  ASSERT_EQ(sites().count(), all) << "no sites were laid on";
  EXPECT_TRUE(is_said(QStringLiteral("%1 of %1 still to tick or drop").arg(all)));
  ASSERT_TRUE(wait_for_checks());
  picture(QStringLiteral("sites-3-proposed"));

  const auto at_first = plan().bony_sites[0].point_m;
  hand::click(*sites().viewport(), row_rect(0).center());
  EXPECT_EQ(window_.views().selection().place_m(), at_first) << "a click on a row does not show the site";
  EXPECT_EQ(ticked(), 0);
  for (int row = 0; row < all - 1; ++row) tick(row);
  EXPECT_EQ(ticked(), all - 1);
  EXPECT_TRUE(is_said(QStringLiteral("1 of %1 still to tick or drop").arg(all)));
  hand::click(*sites().viewport(), row_rect(all - 1).center());
  hand::press(window_, QStringLiteral("Drop the chosen site"));
  EXPECT_EQ(sites().count(), all - 1);
  EXPECT_TRUE(is_said(QStringLiteral("All %1 are confirmed").arg(all - 1)));
  for (const BonySite& site : plan().bony_sites) EXPECT_EQ(site.status, "confirmed") << site.name;
  ASSERT_TRUE(wait_for_checks());
  picture(QStringLiteral("sites-4-confirmed"));
  undo();
  EXPECT_EQ(sites().count(), all);
  for (int row = 0; row < all - 1; ++row) undo();
  EXPECT_EQ(ticked(), 0);
  undo();
  EXPECT_TRUE(plan().bony_sites.empty());
}

TEST_F(WhoAndWhere, ALandmarkOfTheOtherSideIsRefusedBesideItAndAskedForNoMoreByEsc) {
  open_scan();
  hand::choose(window_, QStringLiteral("Side of the person"), QStringLiteral("left"));
  ASSERT_TRUE(wait_for_checks());
  hand::choose(window_, QStringLiteral("Landmark"), QStringLiteral("ulnar styloid"));
  hand::press(window_, QStringLiteral("Click the landmark on the body"));
  click_on_body(place_m("ulnar styloid"));
  const Plan one = plan();
  EXPECT_FALSE(one.bony_sites.empty()) << "one landmark cannot tell left from right";
  hand::choose(window_, QStringLiteral("Second landmark"), QStringLiteral("olecranon side of the elbow"));
  hand::press(window_, QStringLiteral("Click the second landmark on the body"));
  click_on_body(place_m("olecranon side of the elbow"));
  EXPECT_TRUE(is_said(QStringLiteral("lie as on a right part, not a left one")));
  EXPECT_EQ(plan(), one);
  picture(QStringLiteral("sites-5-refused"));
  hand::press(window_, QStringLiteral("Click the landmark on the body"));
  window_.views().body().setFocus();
  hand::key(window_, Qt::Key_Escape);
  EXPECT_FALSE(hand::button(window_, QStringLiteral("Click the landmark on the body"))->isChecked());
  click_on_body(place_m("radial styloid"));
  EXPECT_EQ(plan(), one) << "a click that was asked for no more counted";
}

TEST_F(WhoAndWhere, ThatThereAreNoOtherSitesIsSaidWholeOrNotAndTakenBack) {
  open_scan();
  hand::press(window_, QStringLiteral("There are no other sites"));
  EXPECT_TRUE(is_said(QStringLiteral("laxer limits and thicker tissue")));
  hand::type(window_, QStringLiteral("Who says that there are no other sites"), QStringLiteral("A. Person"));
  hand::press(window_, QStringLiteral("Confirm: There are no other sites"));
  EXPECT_TRUE(is_said(QStringLiteral("when holds nothing but spaces")));
  EXPECT_FALSE(plan().sites_confirmed);
  picture(QStringLiteral("sites-6-word-refused"));
  hand::type(window_, QStringLiteral("When it was found"), QStringLiteral("2026-11-20"));
  hand::type(window_, QStringLiteral("Why there are no other sites"), QStringLiteral("felt along the arm"));
  hand::press(window_, QStringLiteral("Confirm: There are no other sites"));
  EXPECT_EQ(plan().sites_confirmed, (SitesConfirmed{"A. Person", "2026-11-20", "felt along the arm"}));
  hand::press(window_, QStringLiteral("There are no other sites"));
  EXPECT_FALSE(plan().sites_confirmed);
  undo();
  EXPECT_TRUE(plan().sites_confirmed);
  undo();
  EXPECT_FALSE(plan().sites_confirmed);
}

TEST_F(WhoAndWhere, TheNoteSaysWhoWearsItWithoutAnotherEstimate) {
  ASSERT_TRUE(write_plan(small_plan(), root() / "pad.json").ok());
  hand::drop(window_, root() / "pad.json");
  ASSERT_TRUE(wait_for_result());
  estimate_on(QStringLiteral("9"));
  EXPECT_TRUE(is_said(QStringLiteral("7 cells of the note are still to be filled here.")));
  hand::type(window_, QStringLiteral("Who wears it"), QStringLiteral("healthy adults"));
  hand::press(window_, QStringLiteral("How many"));
  hand::type(window_, QStringLiteral("How many"), QStringLiteral("8"));
  hand::choose(window_, QStringLiteral("Posture of the wearers"), QStringLiteral("sitting"));
  hand::press(window_, QStringLiteral("Above the heart"));
  hand::type(window_, QStringLiteral("Above the heart"), QStringLiteral("-20"));
  hand::type(window_, QStringLiteral("Who watches"), QStringLiteral("a trained helper"));
  hand::type(window_, QStringLiteral("Date of the note"), QStringLiteral("29.11.2026"));
  EXPECT_TRUE(is_said(QStringLiteral("write a day as year-month-day")));
  EXPECT_EQ(plan().date, "");
  EXPECT_TRUE(is_said(QStringLiteral("2 cells of the note")));
  picture(QStringLiteral("note-date-refused"));
  hand::type(window_, QStringLiteral("Date of the note"), QStringLiteral("2026-11-29"));
  EXPECT_EQ(plan().date, "2026-11-29");
  EXPECT_TRUE(is_said(QStringLiteral("1 cell of the note")));
  hand::type(window_, QStringLiteral("How a wearer tells"), QStringLiteral("by word"));
  EXPECT_TRUE(is_said(QStringLiteral("All answers are given.")));
  EXPECT_EQ(plan().wearers, (Wearers{"healthy adults", 8, WearerPosture::kSitting, -200.0 * mm,
                                     "a trained helper", "by word"}));
  EXPECT_EQ(state(PlanStep::kNote), "ready") << "who wears it asked for another estimate";
  const auto note = [this] { return named<QTextBrowser>(QStringLiteral("note preview"))->toPlainText(); };
  EXPECT_TRUE(wait_until([&] { return note().contains(QStringLiteral("by word")); }));
  EXPECT_TRUE(note().contains(QStringLiteral("healthy adults")));
  EXPECT_TRUE(note().contains(QStringLiteral("none of them about the wearers")));
  picture(QStringLiteral("note-wearers"));
  window_.session().undo_stack().undo();
  EXPECT_EQ(plan().wearers.how_they_tell, "");
}

TEST_F(WhoAndWhere, AClinicianIsNamedWhereABandGoesRoundTheChest) {
  auto band =
      read_plan(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources/plans/forearm-cuff.json").value();
  band.body = BodyForm{"cylinder", {{"girth", 270.0}, {"length", 300.0}}, {}};
  band.part = BodyPart::kChest;
  ASSERT_TRUE(write_plan(band, root() / "band.json").ok());
  hand::drop(window_, root() / "band.json");
  open(PlanStep::kLimits);
  ASSERT_TRUE(wait_for_result());
  EXPECT_TRUE(is_said(QStringLiteral("no clinician is named who allows it")));
  hand::press(window_, QStringLiteral("A clinician allows it all round"));
  hand::type(window_, QStringLiteral("Name of the clinician"), QStringLiteral("B. Person"));
  hand::type(window_, QStringLiteral("Day of the clinician"), QStringLiteral("2026-11-21"));
  hand::press(window_, QStringLiteral("Confirm: A clinician allows it all round"));
  EXPECT_TRUE(is_said(QStringLiteral("role holds nothing but spaces")));
  EXPECT_FALSE(plan().cleared_by);
  picture(QStringLiteral("limits-clinician-refused"));
  hand::type(window_, QStringLiteral("Role of the clinician"), QStringLiteral("chest physician"));
  hand::press(window_, QStringLiteral("Confirm: A clinician allows it all round"));
  EXPECT_EQ(plan().cleared_by, (Clearance{"B. Person", "chest physician", "2026-11-21"}));
  ASSERT_TRUE(wait_for_result());
  EXPECT_TRUE(is_said(QStringLiteral("B. Person (chest physician) allowed it on 2026-11-21")));
  EXPECT_FALSE(is_said(QStringLiteral("no clinician is named")));
  picture(QStringLiteral("limits-clinician"));
  hand::press(window_, QStringLiteral("A clinician allows it all round"));
  ASSERT_TRUE(wait_for_result());
  EXPECT_TRUE(is_said(QStringLiteral("no clinician is named who allows it")));
}

}  // namespace
}  // namespace wrapgauge
