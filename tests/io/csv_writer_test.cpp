#include "model/io/writers/csv_writer.hpp"

#include <gtest/gtest.h>

#include <map>
#include <sstream>

#include "tests/note/full_summary.hpp"

namespace wrapgauge {
namespace {

// The fields hold no comma of their own.
std::vector<std::string> fields_of(const std::string& line) {
  std::vector<std::string> fields;
  std::istringstream in(line);
  for (std::string field; std::getline(in, field, ',');) fields.push_back(field);
  return fields;
}

// Rows of the file, each a field by the name of its column.
std::vector<std::map<std::string, std::string>> rows_of(const std::string& csv) {
  std::istringstream in(csv);
  std::string line;
  std::getline(in, line);
  const std::vector<std::string> names = fields_of(line);
  std::vector<std::map<std::string, std::string>> rows;
  while (std::getline(in, line)) {
    const std::vector<std::string> fields = fields_of(line);
    EXPECT_EQ(fields.size(), names.size()) << line;
    rows.emplace_back();
    for (std::size_t k = 0; k < std::min(fields.size(), names.size()); ++k) rows.back()[names[k]] = fields[k];
  }
  return rows;
}

TEST(ChambersCsv, EveryColumnHoldsItsOwnFigureInItsOwnUnit) {
  const auto rows = rows_of(chambers_csv(full_summary().figures));
  ASSERT_EQ(rows.size(), 2u);
  const std::map<std::string, std::string> expected{{"chamber", "\"pad\""},
                                                    {"gauge_kPa", "7.100"},
                                                    {"gauge_mmHg", "53.3"},
                                                    {"volume_mL", "23.47"},
                                                    {"mean_kPa", "4.200"},
                                                    {"mean_mmHg", "31.5"},
                                                    {"peak_1cm2_kPa", "5.300"},
                                                    {"peak_1cm2_mmHg", "39.8"},
                                                    {"p95_kPa", "6.400"},
                                                    {"p95_mmHg", "48.0"},
                                                    {"drawn_area_cm2", "15.500"},
                                                    {"contact_area_cm2", "12.270"},
                                                    {"contact_fraction", "0.815"},
                                                    {"force_N", "6.510"},
                                                    {"stretch_max", "1.3100"},
                                                    {"share_of_elongation_at_break", "0.0710"},
                                                    {"seam_tension_N_per_mm", "0.1630"},
                                                    {"indentation_max_mm", "3.700"},
                                                    {"tissue_strain", "0.1850"}};
  EXPECT_EQ(rows[0], expected);
}

TEST(ChambersCsv, EveryColumnOfMillimetresOfMercuryIsItsColumnOfKilopascals) {
  for (const auto& row : rows_of(chambers_csv(full_summary().figures)))
    for (const char* figure : {"gauge", "mean", "peak_1cm2", "p95"}) {
      const auto kpa = row.find(figure + std::string("_kPa")), mmhg = row.find(figure + std::string("_mmHg"));
      ASSERT_TRUE(kpa != row.end() && mmhg != row.end()) << figure << " is missing in one of the units";
      EXPECT_NEAR(std::stod(mmhg->second), 7.50062 * std::stod(kpa->second), 0.06) << figure;
    }
}

TEST(ChambersCsv, EveryRowCarriesTheReasonOfAnOverride) {
  const auto rows = rows_of(chambers_csv(full_summary().figures, {"bench dummy only"}));
  ASSERT_EQ(rows.size(), 2u);
  for (const auto& row : rows) {
    const auto reason = row.find("not_the_programs_own");
    ASSERT_NE(reason, row.end()) << "there is no column for the reason";
    EXPECT_EQ(reason->second, "\"bench dummy only\"");
  }
}

}  // namespace
}  // namespace wrapgauge
