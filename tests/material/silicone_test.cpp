#include "model/material/silicone.hpp"

#include <gtest/gtest.h>
#include <unistd.h>

#include <array>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <string>

namespace wrapgauge {
namespace {

const std::filesystem::path kTable = WRAPGAUGE_SOURCE_DIR "/resources/silicones.json";

std::string read_message(const std::string& text) {
  const auto file =
      std::filesystem::path(testing::TempDir()) / ("silicone-" + std::to_string(::getpid()) + ".json");
  std::ofstream(file) << text;
  const auto grades = read_silicone_grades(file);
  std::filesystem::remove(file);
  return grades ? "" : grades.problem().message;
}

std::string table_with(const std::string& law, const std::string& more = "") {
  return R"({"wrapgauge-silicones": 1, "grades": [{"hardness": "A1", "law": )" + law +
         R"(, "fitted_stretch": [1, 3], "fit_rms_percent": 1, "stiffness_band": [1, 2], "density_kg_per_m3": 1000,
            "elongation_at_break_percent": 100, "source": "s", "sheet_source": "t", "status": "derived",
            "caution": "c")" +
         more + "}]}";
}

TEST(SiliconeTable, HoldsEveryHardnessItPromises) {
  const auto grades = read_silicone_grades(kTable);
  ASSERT_TRUE(grades.ok()) << grades.problem().message;
  for (const char* hardness :
       {"00-10", "00-30", "00-35", "00-50", "A2", "A10", "A16", "A20", "A25", "A30", "A40"}) {
    const auto grade = find_grade(*grades, hardness);
    ASSERT_TRUE(grade.ok()) << hardness;
    EXPECT_EQ(grade->status, "derived");
    EXPECT_NE(grade->source.find("10.1089/soro.2019.0115"), std::string::npos);
    EXPECT_NE(grade->sheet_source.find("from memory"), std::string::npos) << hardness;
    EXPECT_DOUBLE_EQ(grade->stiffness_band_high, grade->hardness.starts_with("00") ? 2.5 : 1.4);
    EXPECT_DOUBLE_EQ(grade->stretch_max, 3.0);
  }
}

// Nominal stress at stretch 2 and 3 of the tensile set the laws were fitted on (open data set of Marechal et
// al. 2020, doi 10.1089/soro.2019.0115), MPa, three decimals.
TEST(SiliconeTable, LawsReturnTheStressTheyWereFittedOn) {
  struct Row {
    const char* hardness;
    double at_2_mpa, at_3_mpa;
  };
  const std::array<Row, 11> rows = {{{"00-10", .015, .031},
                                     {"00-30", .030, .052},
                                     {"00-35", .055, .117},
                                     {"00-50", .041, .079},
                                     {"A2", .062, .132},
                                     {"A10", .113, .273},
                                     {"A16", .185, .433},
                                     {"A20", .318, .722},
                                     {"A25", .232, .538},
                                     {"A30", .437, .959},
                                     {"A40", .564, 1.217}}};
  const auto grades = read_silicone_grades(kTable);
  ASSERT_TRUE(grades.ok()) << grades.problem().message;
  for (const Row& row : rows) {
    const HyperelasticLaw law = find_grade(*grades, row.hardness)->law;
    const auto nominal_mpa = [&](double l) { return 1e-6 * stretch_energy(law, l, 1.0 / std::sqrt(l)).w1; };
    EXPECT_NEAR(nominal_mpa(2.0), row.at_2_mpa, 0.04 * row.at_2_mpa + 0.0005) << row.hardness;
    EXPECT_NEAR(nominal_mpa(3.0), row.at_3_mpa, 0.04 * row.at_3_mpa + 0.0005) << row.hardness;
  }
}

TEST(SiliconeTable, LawsStiffenNoLessThanTheyPromiseUpToTheFittedStretch) {
  const auto grades = read_silicone_grades(kTable);
  ASSERT_TRUE(grades.ok());
  for (const SiliconeGrade& grade : *grades) {
    double last = 0.0;
    for (double l = 1.02; l <= grade.stretch_max; l += 0.02) {
      const double nominal = stretch_energy(grade.law, l, 1.0 / std::sqrt(l)).w1;
      EXPECT_GT(nominal, last) << grade.hardness << " at " << l;
      last = nominal;
    }
  }
}

TEST(FindGrade, ListsTheKnownHardnessesForAnUnknownOne) {
  const auto grades = read_silicone_grades(kTable);
  ASSERT_TRUE(grades.ok());
  const auto unknown = find_grade(*grades, "A99");
  ASSERT_FALSE(unknown.ok());
  EXPECT_NE(unknown.problem().message.find("\"A99\""), std::string::npos);
  EXPECT_NE(unknown.problem().message.find("00-10, 00-30"), std::string::npos);
}

TEST(SiliconeReader, TakesEveryLaw) {
  EXPECT_EQ(read_message(table_with(R"({"neo-hookean": {"mu_kpa": 30}})")), "");
  EXPECT_EQ(read_message(table_with(R"({"mooney-rivlin": {"c1_kpa": 13, "c2_kpa": 2}})")), "");
  EXPECT_EQ(read_message(table_with(R"({"yeoh": {"c1_kpa": 13, "c2_kpa": 2, "c3_kpa": 0}})")), "");
  EXPECT_EQ(read_message(table_with(R"({"ogden": [{"mu_kpa": 13, "alpha": 2.5}]})")), "");
}

TEST(SiliconeReader, NamesTheGradeTheFieldAndTheNumber) {
  const std::string good = R"({"neo-hookean": {"mu_kpa": 30}})";
  const auto expect = [](const std::string& text, const std::string& part) {
    const std::string message = read_message(text);
    EXPECT_NE(message.find(part), std::string::npos) << message;
  };
  expect(table_with(R"({"neo-hookean": {"mu_kpa": -30}})"),
         "grade 1, law: The neo-Hookean law has an initial");
  expect(table_with(R"({"neo-hookean": {"mu_mpa": 30}})"), "\"mu_kpa\" is missing");
  expect(table_with(R"({"gent": {"mu_kpa": 30}})"), "exactly one of");
  expect(table_with(R"({})"), "exactly one of");
  expect(table_with(R"([])"), "exactly one of");
  expect(table_with(R"({"ogden": []})"), "no terms");
  expect(table_with(R"({"ogden": [{"mu_kpa": 1, "alpha": 99}]})"), "term 1: alpha is 99");
  expect(table_with(good, R"(, "colour": "red")"), "the key \"colour\" is not known");
  expect(R"({"wrapgauge-silicones": 1, "grades": []})", "no grades");
  expect(R"({"wrapgauge-tissues": 1, "sites": []})", "not the kind of file");
  expect("", "is empty");
  std::string twice = table_with(good);
  const std::string row = twice.substr(twice.find("[{") + 1, twice.rfind("}]") - twice.find("[{"));
  expect(R"({"wrapgauge-silicones": 1, "grades": [)" + row + "," + row + "]}",
         "grade 2: the hardness \"A1\"");
  std::string backwards = table_with(good);
  backwards.replace(backwards.find("[1, 3]"), 6, "[3, 1]");
  expect(backwards, "fitted_stretch runs from 3 down to 1");
}

TEST(SiliconeReader, OfAFileThatIsNotThereSaysSo) {
  const auto missing = read_silicone_grades("no/such/table.json");
  ASSERT_FALSE(missing.ok());
  EXPECT_NE(missing.problem().message.find("no/such/table.json"), std::string::npos);
}

// Formula from memory (Gent 1958); the rows are it worked out apart from the project.
TEST(HardnessRelation, GivesTheRowsOfGentsFormula) {
  const std::array<double, 7> mpa = {.41268, .73192, 1.14237, 1.68964, 2.45581, 3.60507, 5.52051};
  for (std::size_t i = 0; i < mpa.size(); ++i) {
    const auto young = young_modulus_from_shore_a(10.0 * (static_cast<double>(i) + 1.0));
    ASSERT_TRUE(young.ok());
    EXPECT_NEAR(*young / MPa, mpa[i], 1e-5 * mpa[i]);
  }
}

TEST(HardnessRelation, OverReadsTheSoftCastGradesTwoToThreefold) {
  const auto grades = read_silicone_grades(kTable);
  ASSERT_TRUE(grades.ok());
  for (const auto& [hardness, shore] : {std::pair{"A10", 10.0}, {"A30", 30.0}, {"A40", 40.0}}) {
    const Pressure fitted = 3.0 * initial_shear_modulus(find_grade(*grades, hardness)->law);
    const double ratio = *young_modulus_from_shore_a(shore) / fitted;
    EXPECT_GT(ratio, 1.9) << hardness;
    EXPECT_LT(ratio, 3.4) << hardness;
  }
}

TEST(HardnessRelation, RefusesHardnessOutsideItsRange) {
  for (double shore : {9.9, 70.1, -5.0, 1e300, std::nan("")})
    EXPECT_FALSE(young_modulus_from_shore_a(shore).ok());
}

}  // namespace
}  // namespace wrapgauge
