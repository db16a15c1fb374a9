// Girths of every form at small, median and large sizes, measured on the mesh.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <map>

#include "bodyforms/anthropometry.hpp"
#include "made.hpp"
#include "model/body/girth.hpp"

namespace wrapgauge {
namespace {

constexpr double kEdge_mm = 6.0;  // coarser than the default, for speed

// Ends are measured a hair inside, where a plane still cuts the surface.
double measured_mm(const Body& body, Length station) {
  const Length hair = 0.001 * mm;
  const Girth girth = girth_at(body, std::clamp(station, hair, body_length(body) - hair));
  EXPECT_EQ(girth.kind, SectionKind::kOneLoop);
  return girth.girth / mm;
}

TEST(FormGirths, AreWithinAFifthOfAPercentOfWhatWasAsked) {
  double worst = 0.0;
  int rows = 0;
  for (const Form& form : forms())
    for (const Sex sex : {Sex::kMale, Sex::kFemale})
      for (const double percentile : {5.0, 50.0, 95.0}) {
        const auto made = forms_in_tests::made(form.name, {sex, percentile, BodySide::kRight}, kEdge_mm);
        ASSERT_TRUE(made.ok()) << made.problem().message;
        ASSERT_FALSE(made->girths.empty()) << form.name;
        for (const FormGirth& girth : made->girths) {
          const double found = measured_mm(made->body, girth.station), asked = girth.girth / mm;
          EXPECT_DOUBLE_EQ(asked, made->values.at(girth.parameter));
          EXPECT_NEAR(found, asked, 0.002 * asked)
              << form.name << " " << girth.parameter << " P" << percentile;
          worst = std::max(worst, std::abs(found / asked - 1.0));
          ++rows;
        }
      }
  std::printf("  %d girths of the forms, largest difference %.4f %%\n", rows, 100.0 * worst);
}

TEST(FormGirths, OfACoarseMeshAreStillWithinAFifthOfAPercent) {
  for (const Form& form : forms()) {
    std::map<std::string, double> values = forms_in_tests::tape_values(form.name);
    values["edge"] = 15.0;
    const auto made = make_measured_form(form.name, values);
    ASSERT_TRUE(made.ok()) << made.problem().message;
    for (const FormGirth& girth : made->girths)
      EXPECT_NEAR(measured_mm(made->body, girth.station), girth.girth / mm, 0.002 * (girth.girth / mm))
          << form.name << " " << girth.parameter;
  }
}

struct PublishedRow {
  const char *form, *parameter;
  double men[3], women[3];  // P5, P50, P95, mm
};

// ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007), worked out from its public data files; typed in apart
// from the program's own table.
constexpr PublishedRow kPublished[] = {
    {"wrist", "girth_wrist", {162, 176, 191}, {142.2, 154, 168}},
    {"forearm", "girth_wrist", {162, 176, 191}, {142.2, 154, 168}},
    {"forearm", "girth_forearm", {275, 310, 347.9}, {235, 263, 296}},
    {"hand-back", "girth_hand", {195, 212, 230}, {173, 187, 202}},
    {"thigh", "girth_thigh", {532, 624, 723}, {527, 613, 711}},
    {"thigh", "girth_lower_thigh", {359, 408, 463}, {347, 398, 464.8}},
    {"knee", "girth_lower_thigh", {359, 408, 463}, {347, 398, 464.8}},
    {"calf", "girth_calf", {346, 392, 443}, {328, 372, 423}},
    {"calf", "girth_ankle", {206, 228, 254}, {193, 215, 242}},
    {"ankle", "girth_ankle", {206, 228, 254}, {193, 215, 242}},
    {"lower-leg", "girth_calf", {346, 392, 443}, {328, 372, 423}},
    {"lower-leg", "girth_ankle", {206, 228, 254}, {193, 215, 242}},
    {"torso", "girth_chest", {922, 1056, 1207}, {824.2, 940, 1094}},
    {"torso", "girth_waist", {768, 937, 1130.9}, {710, 852, 1040}},
    {"torso", "girth_hip", {899, 1017, 1149}, {901.2, 1018.5, 1155.8}},
    {"head-band", "girth_head", {548, 574, 601}, {532, 560, 597}},
};

TEST(FormGirths, AreThePublishedPercentiles) {
  constexpr double kPercentiles[] = {5.0, 50.0, 95.0};
  for (const PublishedRow& row : kPublished)
    for (const Sex sex : {Sex::kMale, Sex::kFemale})
      for (int i = 0; i < 3; ++i) {
        const auto made = forms_in_tests::made(row.form, {sex, kPercentiles[i], BodySide::kRight}, kEdge_mm);
        ASSERT_TRUE(made.ok());
        const double published = sex == Sex::kMale ? row.men[i] : row.women[i];
        const auto found =
            std::find_if(made->girths.begin(), made->girths.end(),
                         [&](const FormGirth& girth) { return girth.parameter == row.parameter; });
        ASSERT_NE(found, made->girths.end());
        EXPECT_NEAR(measured_mm(made->body, found->station), published, 0.002 * published)
            << row.form << " " << row.parameter;
      }
}

TEST(FormGirths, StayBetweenTheSmallestAndTheLargestAsked) {
  for (const char* name : {"forearm", "calf", "lower-leg", "thigh", "upper-arm"}) {
    const auto made = forms_in_tests::made(name);
    ASSERT_TRUE(made.ok());
    double least = 1e9, most = 0.0;
    for (const FormGirth& girth : made->girths) {
      least = std::min(least, girth.girth / mm);
      most = std::max(most, girth.girth / mm);
    }
    for (const Girth& girth : girth_profile(made->body)) {
      EXPECT_GE(girth.girth / mm, 0.998 * least) << name;
      EXPECT_LE(girth.girth / mm, 1.002 * most) << name;
    }
  }
}

}  // namespace
}  // namespace wrapgauge
