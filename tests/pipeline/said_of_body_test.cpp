// What a plan says of the person is held against the body before anything is solved.
#include "model/pipeline/said_of_body.hpp"

#include <gtest/gtest.h>

#include "model/body/part_rules.hpp"
#include "model/pipeline/pipeline.hpp"
#include "model/pipeline/prepare.hpp"
#include "tests/geometry/shapes.hpp"

namespace wrapgauge {
namespace {

Polygon square_m(double half) {
  return {{-half, -half}, {half, -half}, {half, half}, {-half, half}};
}

// A pad on a round limb of 40 mm radius, its axis along z.
Plan worn_plan() {
  Plan plan;
  plan.name = "pad";
  plan.body = BodyFile{"limb.ply", {}, {}, {}, {}, {}};
  plan.part = BodyPart::kForearm;
  plan.tissue_site = "forearm relaxed";
  plan.layout.name = "pad";
  plan.layout.outline_m = square_m(0.02);
  plan.layout.chambers = {{"cell", square_m(0.012), {}, {}}};
  plan.layout.inlets = {{"tube", {0.0, 0.0}}};
  plan.layout.skin_sheet = plan.layout.outer_sheet = {"00-30", 2.0 * mm};
  plan.placement.anchor = AnchorAtStation{50.0 * mm, 0.0};
  plan.inflation = {{"tube", 2.0 * kPa, {}}};
  plan.mesh_edge = 10.0 * mm;
  return plan;
}

Body limb() {
  Body body;
  body.name = "limb";
  body.surface = shapes::tube(0.04, 0.04, 0.1, 72, 20);
  return body;
}

const Resources& resources() {
  static const Resources all = read_resources(WRAPGAUGE_SOURCE_DIR "/resources").value();
  return all;
}

// Empty: it is ready to be solved.
std::string refusal(const Plan& plan, const Body& body = limb()) {
  const auto ready = prepare(plan, body, resources(), mesh_of_plan(plan));
  return ready ? "" : ready.problem().message;
}

template <class Answer>
std::string message_of(const Result<Answer>& answer) {
  return answer ? "not refused" : answer.problem().message;
}

void expect_refused(const Plan& plan, const std::string& words, const Body& body = limb()) {
  for (const std::string& said : {refusal(plan, body), message_of(look(plan, body, resources())),
                                  message_of(estimate(plan, body, resources()))})
    EXPECT_NE(said.find(words), std::string::npos) << said;
}

TEST(SaidOfBody, WithoutAPartNothingIsSolved) {
  Plan plan = worn_plan();
  EXPECT_EQ(refusal(plan), "");
  plan.part.reset();
  expect_refused(plan, "does not say which part of the person it is");
  Body forearm = limb();
  forearm.part = BodyPart::kForearm;
  EXPECT_EQ(refusal(plan, forearm), "");
}

TEST(SaidOfBody, NeckAndFaceAreNeverSolved) {
  Plan plan = worn_plan();
  for (const BodyPart part : {BodyPart::kNeck, BodyPart::kFace}) {
    plan.part = part;
    expect_refused(plan, "nothing may press on neck, face, eyes or airway");
    Body body = limb();
    body.part = part;
    plan.part.reset();
    expect_refused(plan, "nothing may press on neck, face, eyes or airway", body);
  }
}

TEST(SaidOfBody, AnEarlierPreparationIsNoWayRoundTheNeck) {
  Plan plan = worn_plan();
  const auto ready = prepare(plan, limb(), resources(), mesh_of_plan(plan));
  ASSERT_TRUE(ready.ok());
  plan.part = BodyPart::kNeck;
  EXPECT_FALSE(
      estimate(plan, limb(), resources(), {.prepared = std::make_shared<const Prepared>(*ready)}).ok());
}

TEST(SaidOfBody, SiteOffTheSkinIsRefusedWithItsDistance) {
  Plan plan = worn_plan();
  plan.bony_sites = {{"styloid", {0.059, 0.0, 0.05}, 10.0 * mm, 4.0 * mm}};
  EXPECT_EQ(refusal(plan), "");
  plan.bony_sites[0].point_m.x() = 0.0625;
  expect_refused(plan, "the site 'styloid' at (62.5, 0.0, 50.0) mm lies 22.5 mm off the skin");
}

TEST(SaidOfBody, LandmarkOffTheSkinIsRefused) {
  Plan plan = worn_plan();
  plan.landmarks = {{"belly", {0.0, 0.0, 0.05}}};
  expect_refused(plan, "the landmark 'belly'");
}

TEST(SaidOfBody, SideAndFrontMayNotContradictTheBodysOwn) {
  Plan plan = worn_plan();
  Body body = limb();
  body.side = BodySide::kRight;
  body.front = Vec3::UnitY();
  std::get<BodyFile>(plan.body).side = BodySide::kLeft;
  expect_refused(plan, "correct body.side", body);
  std::get<BodyFile>(plan.body).side = BodySide::kRight;
  std::get<BodyFile>(plan.body).front = Vec3(1.0, 0.3, 0.0);
  expect_refused(plan, "lies 73 degrees from that of its label", body);
  std::get<BodyFile>(plan.body).front = Vec3(0.3, 1.0, 0.4);
  const auto taken = body_of_plan(plan, body);
  ASSERT_TRUE(taken.ok()) << taken.problem().message;
  EXPECT_NEAR(taken->front->z(), 0.0, 1e-12);
  EXPECT_NEAR(taken->front->norm(), 1.0, 1e-12);
  EXPECT_NEAR(taken->front->x() / taken->front->y(), 0.3, 1e-12);
  std::get<BodyFile>(plan.body).front = Vec3(0.0, 0.1, 1.0);
  expect_refused(plan, "points along its axis", limb());
}

TEST(SaidOfBody, SitesAreKnownOnlyWhenNoneOfThemIsStillProposed) {
  Plan plan = worn_plan();
  const auto known = [&] {
    const auto ready = prepare(plan, limb(), resources(), mesh_of_plan(plan));
    EXPECT_TRUE(ready.ok());
    return ready && limit_inputs(plan, *ready).sites_known;
  };
  EXPECT_FALSE(known()) << "none marked";
  const BonySite marked{"styloid", {0.04, 0.0, 0.05}, 10.0 * mm, 4.0 * mm, SiteKind::kBone, "judgement"};
  plan.bony_sites = {marked};
  EXPECT_TRUE(known());
  plan.bony_sites.push_back(marked);
  plan.bony_sites[1].status = kProposedSite;
  EXPECT_FALSE(known()) << "one is only proposed";
  plan.bony_sites.clear();
  plan.sites_confirmed = SitesConfirmed{"A. Person", "2026-11-20", "felt"};
  EXPECT_TRUE(known());
}

TEST(SaidOfBody, EveryRowOfferedForAPartIsInTheTissueTable) {
  for (const BodyPart part : kBodyParts)
    for (const std::string_view row : tissue_rows_of(part))
      EXPECT_TRUE(find_tissue(resources().tissues, std::string(row)).ok()) << row;
}

}  // namespace
}  // namespace wrapgauge
