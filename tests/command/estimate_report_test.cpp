// What the terminal says: the verdict first, 80 columns, one card a finding.
#include "app/command/estimate_report.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

#include "app/command/clean_stream.hpp"
#include "app/command/wrapped_text.hpp"
#include "tests/command/run_command.hpp"
#include "tests/note/full_summary.hpp"

namespace wrapgauge {
namespace {

std::size_t widest(const std::string& text) {
  std::size_t most = 0;
  for (const std::string& line : lines_of(text)) most = std::max(most, columns_of(line));
  return most;
}

Finding card(Severity severity, const char* place, double with_factor_kpa, double limit_kpa) {
  Finding finding{severity, place, Phrase::worded("The whole sentence, with its source."),
                  with_factor_kpa / limit_kpa, 1.5};
  finding.place = name_of(place);
  finding.measured = Measured{Amount::kPressure, with_factor_kpa * 1e3 / 1.5, with_factor_kpa * 1e3,
                              limit_kpa * 1e3, Phrase::worded("over bone")};
  finding.cause = Cause::kInflation;
  finding.action = Phrase::worded("Lower the pressure.");
  return finding;
}

Summary two_above() {
  Summary summary = full_summary();
  summary.hazards.clear();
  summary.findings = {card(Severity::kAboveLimit, "left back", 4.48, 4.0),
                      card(Severity::kAboveLimit, "right", 4.2, 4.0),
                      card(Severity::kNote, "front", 1.0, 4.0)};
  return summary;
}

TEST(EstimateReport, BeginsWithTheVerdict) {
  EXPECT_EQ(lines_of(estimate_report(two_above(), "out", false)).front(),
            "Above the limit in 2 places; worst: left back, 112 % of 4.0 kPa (30 mmHg).");
  Summary fine = two_above();
  fine.findings.erase(fine.findings.begin(), fine.findings.begin() + 2);
  const std::string words = unwrapped(estimate_report(fine, "out", false));
  EXPECT_TRUE(
      words.starts_with("Nothing predicted exceeds the limits used. The limits are judgement and the "
                        "model is not calibrated; this is not approval to wear the device."))
      << words;
  Summary stop = two_above();
  stop.findings.insert(stop.findings.begin(), card(Severity::kStop, "whole cuff", 6.0, 5.3));
  EXPECT_EQ(lines_of(estimate_report(stop, "out", false)).front(),
            "Do not wear it like this: whole cuff, 113 % of 5.3 kPa (40 mmHg).");
}

// The verdict never rounds an excess away: 4.004 of 4.0 kPa is 100.1 %.
TEST(EstimateReport, RoundsNoExcessAway) {
  Summary summary = two_above();
  summary.findings = {card(Severity::kAboveLimit, "left", 4.004, 4.0)};
  const std::string text = estimate_report(summary, "out", false);
  EXPECT_NE(text.find("100.1 % of 4.0 kPa"), std::string::npos) << text;
  EXPECT_NE(text.find("with the factor 4.004 kPa"), std::string::npos) << text;
}

TEST(EstimateReport, ListsCardsAndCountsNotes) {
  const std::string text = unwrapped(estimate_report(two_above(), "out", false));
  EXPECT_NE(
      text.find("above limit left back: 3.0 kPa (23 mmHg), with the factor 4.5 kPa (34 mmHg), limit 4.0 "
                "kPa (30 mmHg): 112 %. Cause: inflation. Lower the pressure."),
      std::string::npos)
      << text;
  EXPECT_EQ(text.find("front:"), std::string::npos);
  EXPECT_NE(text.find("1 note is not listed here"), std::string::npos);
  EXPECT_EQ(text.find("The whole sentence"), std::string::npos);
}

// Findings and hazards alike: a valve above its limit does not stand behind a warning.
TEST(EstimateReport, ListsTheGravestFirst) {
  Summary summary = two_above();
  summary.findings.insert(summary.findings.begin() + 2, card(Severity::kWarn, "rim", 3.0, 4.0));
  summary.hazards = full_hazards();  // a note, and one above its limit
  const std::string text = unwrapped(estimate_report(summary, "out", false));
  const auto hazard = text.find("above limit A valve or pump that sticks"),
             warning = text.find("warning rim");
  ASSERT_TRUE(hazard != std::string::npos && warning != std::string::npos) << text;
  EXPECT_LT(hazard, warning);
}

TEST(EstimateReport, InFullListsEverything) {
  const std::string text = unwrapped(estimate_report(two_above(), "out", true));
  EXPECT_NE(text.find("note The whole sentence, with its source."), std::string::npos) << text;
  EXPECT_EQ(text.find("not listed here"), std::string::npos);
}

TEST(EstimateReport, FitsEightyColumnsWhateverTheNames) {
  for (const bool full : {false, true})
    for (const std::string& name :
         {std::string("pad"), std::string("a chamber whose name is rather long for a line"),
          std::string("Kammer über dem Knöchel")}) {
      Summary summary = full_summary();
      summary.tables_differ = {
          "The limits are those of the set 'ours, for a bench', not the program's own: 3 of "
          "their numbers are stricter, 0 laxer."};
      summary.figures.chambers[0].chamber = name;
      summary.findings.push_back(card(Severity::kWarn, name.c_str(), 3.0, 4.0));
      const std::string text = estimate_report(summary, "results/of/a/plan", full);
      EXPECT_LE(widest(text), kColumns) << text;
    }
}

TEST(EstimateReport, NamesTablesThatAreNotTheProgramsOwn) {
  Summary summary = two_above();
  summary.tables_differ = {"The table 'tissues.json' is not the one that the program ships."};
  EXPECT_EQ(lines_of(estimate_report(summary, "out", false)).at(1),
            "The table 'tissues.json' is not the one that the program ships.");
}

TEST(WrappedText, BreaksBetweenWordsAndIndentsTheRest) {
  const std::string text = wrapped("mark         " + std::string(60, 'x') + " and more", 13);
  EXPECT_EQ(text, "mark         " + std::string(60, 'x') + " and\n" + std::string(13, ' ') + "more\n");
  EXPECT_EQ(wrapped("short"), "short\n");
  const std::string far_in = std::string(30, ' ') + "a description that goes on and on and on and on and on";
  EXPECT_EQ(wrapped_help(far_in), std::string(30, ' ') + "a description that goes on and on and on and on\n" +
                                      std::string(30, ' ') + "and on\n");
}

TEST(CleanStream, PassesOnNothingThatATerminalObeys) {
  std::ostringstream sink;
  {
    CleanStream out(sink);
    out << "chamber \033[2Jleft\n" << 3.5 << " and the rest";
  }
  EXPECT_EQ(sink.str(), "chamber [2Jleft\n3.5 and the rest");
}

}  // namespace
}  // namespace wrapgauge
