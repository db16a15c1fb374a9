// Girths of every form at small, median and large sizes, measured on the mesh.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <string>

#include "made.hpp"
#include "model/body/girth.hpp"
#include "model/core/number_text.hpp"

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

constexpr double kPercentiles[] = {5.0, 50.0, 95.0};

struct Row {
  std::string asked, made;  // P5, P50, P95, mm
  double worst_percent = 0.0;
};

std::string origin_of(const std::string& form, const std::string& girth) {
  if (forms_in_tests::tape_values(form).contains(girth)) return "tape (an example)";
  for (const Form& known : forms())
    for (const FormParameter& parameter : known.parameters)
      if (known.name == form && parameter.name == girth)
        return parameter.source.rfind("ANSUR", 0) == 0 ? "survey" : "judgement";
  return "";
}

// Measures the girths of one form at all three percentiles; a row a girth.
std::map<std::string, Row> measured_rows(const std::string& form, Sex sex) {
  std::map<std::string, Row> rows;
  for (const double percentile : kPercentiles) {
    const auto made = forms_in_tests::made(form, {sex, percentile, BodySide::kRight}, kEdge_mm);
    EXPECT_TRUE(made.ok());
    if (!made) return rows;
    EXPECT_FALSE(made->girths.empty()) << form;
    for (const FormGirth& girth : made->girths) {
      const double found = measured_mm(made->body, girth.station), asked = girth.girth / mm;
      EXPECT_DOUBLE_EQ(asked, made->values.at(girth.parameter));
      EXPECT_NEAR(found, asked, 0.002 * asked) << form << " " << girth.parameter << " P" << percentile;
      Row& row = rows[girth.parameter];
      row.asked += (row.asked.empty() ? "" : " / ") + fixed_text(asked, 1);
      row.made += (row.made.empty() ? "" : " / ") + fixed_text(found, 1);
      row.worst_percent = std::max(row.worst_percent, 100.0 * std::abs(found / asked - 1.0));
    }
  }
  return rows;
}

// The lines it prints become the table docs/form-girths.md, see tests/form_girths.sh.
TEST(FormGirths, AreWithinAFifthOfAPercentOfWhatWasAsked) {
  for (const Form& form : forms()) {
    const bool of_a_person = std::any_of(form.parameters.begin(), form.parameters.end(),
                                         [](const FormParameter& p) { return p.follows_person(); });
    for (const Sex sex : {Sex::kMale, Sex::kFemale}) {
      if (!of_a_person && sex == Sex::kFemale) continue;
      for (const auto& [girth, row] : measured_rows(form.name, sex))
        if (of_a_person)
          std::printf("  girth of %s, %s, %s: asked %s, made %s, difference %.3f %%, from %s\n",
                      form.name.c_str(), girth.c_str(), sex == Sex::kMale ? "men" : "women",
                      row.asked.c_str(), row.made.c_str(), row.worst_percent,
                      origin_of(form.name, girth).c_str());
    }
  }
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
