// Sites laid on a scan by landmarks, decided one by one, and what takes their decision back.
#include "app/desk/session/marked_sites.hpp"

#include <algorithm>
#include <functional>

#include "app/desk/session/skin_place.hpp"
#include "bodyforms/form.hpp"
#include "model/body/part_rules.hpp"
#include "model/io/writers/mesh_writer.hpp"
#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

const std::string kStyloid = "ulnar styloid", kElbow = "olecranon side of the elbow";

Body forearm() {
  return make_form("forearm", {{"edge", 6.0}}, {std::nullopt, std::nullopt, BodySide::kRight}).value();
}

// As a scan: its skin is known and nothing else.
struct Scan {
  Body known = forearm(), body = known;
  Plan plan = small_plan();

  Scan() {
    body.bony_sites.clear();
    body.part.reset();
    body.side.reset();
    body.front.reset();
    BodyFile file;
    file.file = "scan.ply";
    file.side = BodySide::kRight;
    plan.body = file;
  }
  Vec3 place_m(const std::string& name) const {
    const auto site = std::find_if(known.bony_sites.begin(), known.bony_sites.end(),
                                   [&](const BonySite& one) { return one.name == name; });
    return site->point_m;
  }
  Landmark landmark(const std::string& name) const { return {name, place_m(name)}; }
  BodyFile& file() { return std::get<BodyFile>(plan.body); }
  std::string refusal(const std::vector<Landmark>& landmarks) const {
    const auto marked = with_sites_marked(plan, body, landmarks, {});
    return marked ? "" : marked.problem().message;
  }
};

std::size_t count_confirmed(const Plan& plan) {
  return static_cast<std::size_t>(
      std::count_if(plan.bony_sites.begin(), plan.bony_sites.end(), std::not_fn(is_proposed)));
}

TEST(MarkedSites, ALandmarkBringsEveryPlaceAsAProposalAndTheFront) {
  const Scan scan;
  const auto marked = with_sites_marked(scan.plan, scan.body, {scan.landmark(kStyloid)}, {});
  ASSERT_TRUE(marked.ok()) << marked.problem().message;
  ASSERT_EQ(marked->plan.bony_sites.size(), scan.known.bony_sites.size());
  EXPECT_EQ(count_confirmed(marked->plan), 0U);
  for (const BonySite& site : marked->plan.bony_sites)
    EXPECT_LT((site.point_m - scan.place_m(site.name)).norm(), 0.003) << site.name;
  ASSERT_TRUE(marked->front);
  EXPECT_EQ(std::get<BodyFile>(marked->plan.body).front, marked->front);
  EXPECT_GT(marked->front->dot(*scan.known.front), 0.99);
  EXPECT_EQ(sites_to_decide(marked->plan, scan.body).size(), marked->plan.bony_sites.size());
}

TEST(MarkedSites, MarkedAnewTheyGiveWayAndSitesOfOnesOwnStay) {
  Scan scan;
  scan.plan.bony_sites = {
      {"old scar", scan.place_m(kStyloid), 15.0 * mm, 5.0 * mm, SiteKind::kBone, "judgement", ""}};
  auto first = with_sites_marked(scan.plan, scan.body, {scan.landmark(kStyloid)}, {});
  ASSERT_TRUE(first.ok()) << first.problem().message;
  const Plan decided = with_site_confirmed(first->plan, 1, true);
  EXPECT_EQ(count_confirmed(decided), 2U);
  const auto again =
      with_sites_marked(decided, scan.body, {scan.landmark(kStyloid), scan.landmark(kElbow)}, first->front);
  ASSERT_TRUE(again.ok()) << again.problem().message;
  EXPECT_EQ(again->plan.bony_sites.size(), decided.bony_sites.size());
  EXPECT_EQ(again->plan.bony_sites[0].name, "old scar");
  EXPECT_EQ(count_confirmed(again->plan), 1U) << "a site that was laid on anew is still called confirmed";
}

// The front of the first marking is no word of anyone's: a corrected click may turn it round.
TEST(MarkedSites, OnlyAFrontThatSomeoneGaveSpeaksAgainstALandmark) {
  Scan scan;
  const auto wrong =
      with_sites_marked(scan.plan, scan.body, {{kStyloid, scan.place_m("radial styloid")}}, {});
  ASSERT_TRUE(wrong.ok()) << wrong.problem().message;
  const auto corrected = with_sites_marked(wrong->plan, scan.body, {scan.landmark(kStyloid)}, wrong->front);
  ASSERT_TRUE(corrected.ok()) << corrected.problem().message;
  EXPECT_GT(corrected->front->dot(*scan.known.front), 0.99);
  scan.file().front = Vec3(-*scan.known.front);
  EXPECT_NE(scan.refusal({scan.landmark(kStyloid)}).find("lies on the wrong side"), std::string::npos);
}

TEST(MarkedSites, WhatCannotBeIsRefusedInTheModelsWords) {
  Scan scan;
  Landmark off = scan.landmark(kStyloid);
  off.point_m *= 2.0;
  EXPECT_NE(scan.refusal({off}).find("mm off the skin"), std::string::npos);
  scan.file().side = BodySide::kLeft;
  EXPECT_NE(
      scan.refusal({scan.landmark(kStyloid), scan.landmark(kElbow)}).find("as on a right part, not a left"),
      std::string::npos);
  scan.file().side.reset();
  EXPECT_FALSE(side_is_clear(scan.plan, scan.body));
  EXPECT_NE(scan.refusal({scan.landmark(kStyloid)}).find("a left and a right"), std::string::npos);
  scan.plan.part = BodyPart::kFinger;
  EXPECT_NE(scan.refusal({scan.landmark(kStyloid)}).find("no standard places"), std::string::npos);
}

TEST(MarkedSites, AreNotOfferedWhereTheBodyBringsItsOwn) {
  Scan scan;
  EXPECT_FALSE(places_to_mark(scan.plan, scan.body).empty());
  EXPECT_TRUE(places_to_mark(scan.plan, scan.known).empty());
  scan.plan.body = BodyForm{"cylinder", {}, {}};
  EXPECT_TRUE(places_to_mark(scan.plan, scan.body).empty());
  scan.body.bony_sites = {{"wrist", Vec3::Zero(), 10.0 * mm, 5.0 * mm, SiteKind::kBone, kProposedSite, ""}};
  EXPECT_EQ(proposed_in_label(scan.body), 1);
}

class InSession : public testing::Test, protected WithSession {
 protected:
  // The scan as a file, with every site laid on and confirmed and both words given.
  void open_decided() {
    ASSERT_TRUE(
        write_mesh({scan_.body.surface.vertices_m, scan_.body.surface.faces}, root / "scan.ply").ok());
    scan_.file().file = root / "scan.ply";
    scan_.plan.folder = root;
    session.edit("scan", scan_.plan);
    ASSERT_TRUE(wait_until([&] { return session.checked() && session.checked()->body; }));
    const auto marked =
        with_sites_marked(session.plan(), *session.now().body(), {scan_.landmark(kStyloid)}, {});
    ASSERT_TRUE(marked.ok()) << marked.problem().message;
    Plan decided = marked->plan;
    for (std::size_t i = 0; i < decided.bony_sites.size(); ++i)
      decided = with_site_confirmed(decided, i, true);
    decided.sites_confirmed = SitesConfirmed{"A. Person", "2026-11-20", "felt"};
    decided.cleared_by = Clearance{"B. Person", "physician", "2026-11-21"};
    session.edit("decide", decided);
    all_ = decided.bony_sites.size();
    EXPECT_EQ(count_confirmed(session.plan()), all_);
  }
  void edit(const std::function<void(Plan&)>& change) {
    Plan changed = session.plan();
    change(changed);
    session.edit("change", changed);
  }

  Scan scan_;
  std::size_t all_ = 0;
};

TEST_F(InSession, AnotherSideOrBodyMakesThemProposalsAgainAndUndoBringsThemBack) {
  open_decided();
  for (const auto& change : std::initializer_list<std::function<void(BodyFile&)>>{
           [](BodyFile& file) { file.side = BodySide::kLeft; },
           [](BodyFile& file) { file.unit = LengthUnit::kCentimetre; },
           [](BodyFile& file) { file.axis_direction = Vec3(-Vec3::UnitZ()); }}) {
    edit([&](Plan& plan) { change(std::get<BodyFile>(plan.body)); });
    EXPECT_EQ(count_confirmed(session.plan()), 0U);
    EXPECT_TRUE(session.plan().sites_confirmed) << "the part is the same";
    session.undo_stack().undo();
    EXPECT_EQ(count_confirmed(session.plan()), all_);
  }
  edit([](Plan& plan) { std::get<BodyFile>(plan.body).front = Vec3::UnitY(); });
  edit([](Plan& plan) { plan.friction = 0.7; });
  EXPECT_EQ(count_confirmed(session.plan()), all_) << "they lie where they lay";
}

TEST_F(InSession, AWordGivenForOnePartHoldsForNoOther) {
  open_decided();
  edit([](Plan& plan) { plan.part = BodyPart::kWrist; });
  EXPECT_FALSE(session.plan().sites_confirmed);
  EXPECT_FALSE(session.plan().cleared_by);
  EXPECT_EQ(count_confirmed(session.plan()), 0U);
}

TEST_F(InSession, WhatIsDecidedSurvivesSavingAndTheScanIsNotReadAgainForIt) {
  open_decided();
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  const auto body = session.now().check->body;
  session.edit("drop", without_place(session.plan(), {SkinPlace::Kind::kBonySite, 0}));
  session.edit("doubt", with_site_confirmed(session.plan(), 0, false));
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  EXPECT_EQ(session.now().check->body, body);
  ASSERT_TRUE(session.save(root / "plan.json").ok());
  const auto again = read_plan(root / "plan.json");
  ASSERT_TRUE(again.ok()) << again.problem().message;
  ASSERT_EQ(again->bony_sites.size(), all_ - 1);
  for (std::size_t i = 0; i < again->bony_sites.size(); ++i) {
    EXPECT_EQ(again->bony_sites[i].name, session.plan().bony_sites[i].name);
    EXPECT_LT((again->bony_sites[i].point_m - session.plan().bony_sites[i].point_m).norm(), 1e-8);
  }
  EXPECT_EQ(count_confirmed(*again), all_ - 2);
}

// The bony limit holds everywhere until the last one is decided.
TEST_F(InSession, SitesAreKnownOnceNoneIsProposedAnyMore) {
  open_decided();
  edit([](Plan& plan) { plan.sites_confirmed.reset(); });
  ASSERT_TRUE(wait_until([&] { return session.checked() && session.checked()->prepared; }));
  const auto known = [&] { return limit_inputs(session.plan(), *session.checked()->prepared).sites_known; };
  EXPECT_TRUE(known());
  session.edit("doubt", with_site_confirmed(session.plan(), 0, false));
  ASSERT_TRUE(wait_until([&] { return session.checked() && session.checked()->prepared; }));
  EXPECT_FALSE(known());
  session.edit("drop", without_place(session.plan(), {SkinPlace::Kind::kBonySite, 0}));
  ASSERT_TRUE(wait_until([&] { return session.checked() && session.checked()->prepared; }));
  EXPECT_TRUE(known());
}

}  // namespace
}  // namespace wrapgauge
