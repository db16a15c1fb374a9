#include "model/material/tissue.hpp"

#include <gtest/gtest.h>
#include <unistd.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <string>

namespace wrapgauge {
namespace {

const std::filesystem::path kTissueTable = WRAPGAUGE_SOURCE_DIR "/resources/tissues.json";

std::string tissue_message(const std::string& text) {
  const auto file =
      std::filesystem::path(testing::TempDir()) / ("tissue-" + std::to_string(::getpid()) + ".json");
  std::ofstream(file) << text;
  const auto sites = read_tissue_sites(file);
  std::filesystem::remove(file);
  return sites ? "" : sites.problem().message;
}

double kpa_per_mm(double young_kpa, double poisson, double depth_mm) {
  return *foundation_modulus(young_kpa * kPa, poisson, depth_mm * mm) / kPa_per_mm;
}

// Closed form of a bonded layer, E 50 kPa, h 20 mm.
TEST(FoundationModulus, IsTheClosedFormOfABondedLayer) {
  EXPECT_NEAR(kpa_per_mm(50.0, 0.30, 20.0), 3.36538, 1e-5 * 3.36538);
  EXPECT_NEAR(kpa_per_mm(50.0, 0.40, 20.0), 5.35714, 1e-5 * 5.35714);
  EXPECT_NEAR(kpa_per_mm(50.0, 0.45, 20.0), 9.48276, 1e-5 * 9.48276);
}

TEST(FoundationModulus, WithoutConfinementIsModulusOverDepth) {
  EXPECT_DOUBLE_EQ(kpa_per_mm(25.0, 0.0, 20.0), 1.25);
}

TEST(FoundationModulus, GrowsWithConfinementAndFallsWithDepth) {
  EXPECT_GT(kpa_per_mm(25.0, 0.45, 20.0), kpa_per_mm(25.0, 0.3, 20.0));
  EXPECT_DOUBLE_EQ(kpa_per_mm(25.0, 0.3, 40.0), 0.5 * kpa_per_mm(25.0, 0.3, 20.0));
}

TEST(FoundationModulus, RefusesWhatIsNotALayer) {
  EXPECT_FALSE(foundation_modulus(25.0 * kPa, 0.495, 20.0 * mm).ok());
  EXPECT_FALSE(foundation_modulus(25.0 * kPa, -0.1, 20.0 * mm).ok());
  EXPECT_FALSE(foundation_modulus(25.0 * kPa, std::nan(""), 20.0 * mm).ok());
  EXPECT_FALSE(foundation_modulus(0.0 * kPa, 0.3, 20.0 * mm).ok());
  EXPECT_FALSE(foundation_modulus(25.0 * kPa, 0.3, -1.0 * mm).ok());
  EXPECT_NE(foundation_modulus(25.0 * kPa, 0.5, 20.0 * mm).problem().message.find("Poisson ratio of 0.5"),
            std::string::npos);
}

// Default rows (judgement): foundation modulus in kPa/mm, two or three digits.
TEST(TissueTable, GivesTheFoundationOfEachSite) {
  const auto sites = read_tissue_sites(kTissueTable);
  ASSERT_TRUE(sites.ok()) << sites.problem().message;
  EXPECT_EQ(sites->size(), 10u);
  for (const auto& [name, expected] : {std::pair{"upper arm relaxed", 0.83},
                                       {"forearm relaxed", 1.25},
                                       {"forearm tense", 3.0},
                                       {"wrist dorsal", 16.0},
                                       {"thigh", 0.56},
                                       {"calf", 0.86},
                                       {"shin", 25.0},
                                       {"abdomen", 0.30},
                                       {"rib or sternum", 6.0},
                                       {"forehead", 20.0}}) {
    const auto site = find_tissue(*sites, name);
    ASSERT_TRUE(site.ok()) << name;
    EXPECT_NEAR(*foundation_modulus(site->young, site->poisson, site->depth) / kPa_per_mm, expected, 0.005);
    EXPECT_EQ(site->status, "judgement");
    EXPECT_FALSE(site->source.empty());
  }
}

TEST(FindTissue, ListsTheKnownSitesForAnUnknownOne) {
  const auto sites = read_tissue_sites(kTissueTable);
  ASSERT_TRUE(sites.ok());
  const auto neck = find_tissue(*sites, "neck");
  ASSERT_FALSE(neck.ok());
  EXPECT_NE(neck.problem().message.find("\"forearm relaxed\""), std::string::npos);
}

TEST(TissueReader, NamesTheSiteTheFieldAndTheNumber) {
  const auto expect = [](const std::string& site, const std::string& part) {
    const std::string message = tissue_message(R"({"wrapgauge-tissues": 1, "sites": [)" + site + "]}");
    EXPECT_NE(message.find(part), std::string::npos) << message;
  };
  expect(
      R"({"name": "a", "young_kpa": 25, "poisson": 0.5, "depth_mm": 20, "source": "s", "status": "judgement"})",
      "site 1: poisson is 0.5; it must lie between 0 and 0.49.");
  expect(
      R"({"name": "a", "young_kpa": -1, "poisson": 0, "depth_mm": 20, "source": "s", "status": "judgement"})",
      "young_kpa is -1 kPa");
  expect(
      R"({"name": "a", "young_kpa": 25, "poisson": 0, "depth_mm": 0, "source": "s", "status": "judgement"})",
      "depth_mm is 0 mm");
  expect(R"({"name": "a", "young_kpa": 25, "poisson": 0, "depth_mm": 20, "source": "s", "status": "sure"})",
         "status is \"sure\"");
  expect(R"({"name": "a"})", "\"young_kpa\" is missing");
  expect("7", "must be a JSON object");
  expect("", "has no sites");
}

}  // namespace
}  // namespace wrapgauge
