// The tables of the note and of summary.md, column by column: what a heading says is what stands below it.
#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

#include "model/note/note_figures.hpp"
#include "model/note/note_sections.hpp"
#include "tests/note/full_summary.hpp"
#include "tests/note/named_cautions.hpp"

namespace wrapgauge {
namespace {

using Row = std::vector<std::string>;

NoteExtras full_extras() {
  NoteExtras extras;
  extras.bands = NoteBands{"Over 32 runs.", {{"pad", 2.4 * kPa, 8.8 * kPa}}, full_summary().inputs};
  return extras;
}

Note full_note(const Summary& summary = full_summary(), const NoteExtras& extras = full_extras()) {
  const auto note = study_note(summary, summary.inputs, extras);
  EXPECT_TRUE(note.ok()) << (note ? "" : note.problem().message);
  return note ? *note : Note{};
}

// The table that begins with a column of this name; empty, with a failure, when there is none.
NoteTable table_of(const Note& note, const std::string& first_column) {
  for (const NoteBlock& block : note.blocks)
    if (const auto* table = std::get_if<NoteTable>(&block))
      if (!table->header.empty() && table->header[0] == first_column) return *table;
  ADD_FAILURE() << "the note has no table that begins with " << first_column;
  return {};
}

// The list under a heading.
std::string list_under(const Note& note, const std::string& heading) {
  std::string all;
  for (std::size_t b = 0; b + 1 < note.blocks.size(); ++b) {
    const auto* found = std::get_if<NoteHeading>(&note.blocks[b]);
    const auto* list = std::get_if<NoteList>(&note.blocks[b + 1]);
    if (!found || !list || found->text.find(heading) == std::string::npos) continue;
    for (const std::string& item : list->items) all += item + "\n";
  }
  EXPECT_NE(all, "") << "no list stands under " << heading;
  return all;
}

// 5.3 kPa x 1.7 = 9.01 kPa; 1.9 kPa x 1.7 = 3.23 kPa.
TEST(NoteTable, OfPressuresHoldsWhatItsColumnsSayAndTheLastOneCarriesTheFactor) {
  const NoteTable table = table_of(full_note(), "Chamber");
  EXPECT_EQ(table.header, (Row{"Chamber", "Air inside", "Mean on the skin", "Peak over 1 cm²",
                               "Band of the peak, 5 to 95 %", "Peak × 1.7"}));
  ASSERT_EQ(table.rows.size(), 2u);
  EXPECT_EQ(table.rows[0], (Row{"pad", "7.1 kPa (53 mmHg)", "4.2 kPa (32 mmHg)", "5.3 kPa (40 mmHg)",
                                "2.4 to 8.8 kPa (18 to 66 mmHg)", "9.0 kPa (68 mmHg)"}));
  EXPECT_EQ(table.rows[1], (Row{"other", "3.3 kPa (25 mmHg)", "1.6 kPa (12 mmHg)", "1.9 kPa (14 mmHg)",
                                "not calculated", "3.2 kPa (24 mmHg)"}));
}

TEST(NoteTable, OfPressuresHoldsEveryChamberHoweverManyThereAre) {
  Summary summary = full_summary();
  summary.figures.chambers.assign(40, full_chamber());
  for (std::size_t k = 0; k < 40; ++k) summary.figures.chambers[k].chamber = "chamber " + std::to_string(k);
  const Note note = full_note(summary);
  const NoteTable pressures = table_of(note, "Chamber"), sensors = table_of(note, "Thin sensor under");
  ASSERT_EQ(pressures.rows.size(), 40u);
  ASSERT_EQ(sensors.rows.size(), 40u);
  for (std::size_t k = 0; k < 40; ++k) {
    EXPECT_EQ(pressures.rows[k][0], "chamber " + std::to_string(k));
    EXPECT_EQ(sensors.rows[k][0], "chamber " + std::to_string(k));
  }
}

TEST(NoteTable, OfLimitsHoldsTheRowsInUse) {
  const NoteTable table = table_of(full_note(), "Place");
  EXPECT_EQ(table.header, (Row{"Place", "Warning", "Limit", "How long", "Status and source"}));
  ASSERT_EQ(table.rows.size(), 1u);
  EXPECT_EQ(table.rows[0],
            (Row{"for a pad on a soft place", "2.7 kPa (20 mmHg)", "4.0 kPa (30 mmHg)",
                 "look at the skin after 15 min and every 1 h afterwards, hold for 50 min at "
                 "most, then off for at least 0.2 times as long, no more than 2 h in a session",
                 "judgement; chosen below others"}));
}

TEST(NoteTable, OfHazardsHoldsEveryHazardWithWhatKeepsItInCheck) {
  const NoteTable table = table_of(full_note(), "Hazard");
  EXPECT_EQ(table.header, (Row{"Hazard", "What was calculated", "What keeps it in check"}));
  ASSERT_EQ(table.rows.size(), 2u);
  EXPECT_EQ(table.rows[0], (Row{"Vents too slowly", "It falls in 0.5 s.", "Time it."}));
  EXPECT_EQ(table.rows[1],
            (Row{"Above limit: A valve or pump that sticks", "It opens too late.", "Fit another."}));
}

TEST(NoteTable, OfHazardsLeavesWhatIsNotKnownEmptyForTheStudyToFill) {
  Summary summary = full_summary();
  summary.hazards = {{HazardKind::kLatex, Phrase::worded("Latex"), Severity::kNote, Phrase(), Phrase()}};
  const NoteTable table = table_of(full_note(summary), "Hazard");
  EXPECT_EQ(table.rows[0], (Row{"Latex", "", ""}));
}

Finding card() {
  Finding finding{Severity::kAboveLimit, "pad", Phrase::worded("The pad presses."), 1.125, 1.7};
  finding.place = Phrase::worded("Pad over the ulna");
  finding.measured = Measured{Amount::kPressure, 3000.0, 4500.0, 4000.0, Phrase::worded("over bone")};
  finding.cause = Cause::kBone;
  finding.action = Phrase::worded("Move it off the bone.");
  finding.source_key = "bony, short hold";
  return finding;
}

// 4.5 of 4.0 kPa is 112.5 %.
TEST(NoteTable, OfFindingsHoldsEachFieldOfACardUnderItsName) {
  Summary summary = full_summary();
  summary.findings = {card()};
  const NoteTable table = table_of(full_note(summary), "Where");
  EXPECT_EQ(table.header,
            (Row{"Where", "Predicted", "With the factor", "Limit and row", "Share", "Cause", "What to do"}));
  ASSERT_EQ(table.rows.size(), 1u);
  EXPECT_EQ(table.rows[0],
            (Row{"Above limit: Pad over the ulna", "3.0 kPa (23 mmHg)", "4.5 kPa (34 mmHg)",
                 "4.0 kPa (30 mmHg), over bone", "112 %", "bone or nerve", "Move it off the bone."}));
}

TEST(NoteTable, OfFindingsFallsBackOnTheSentenceAndNoFindingIsLeftOut) {
  Summary summary = full_summary();
  summary.findings.clear();
  for (int k = 0; k < 30; ++k)
    summary.findings.push_back(
        {Severity::kNote, "place " + std::to_string(k), Phrase::worded("It presses (judgement, why)."), 0.5});
  const NoteTable table = table_of(full_note(summary), "Where");
  ASSERT_EQ(table.rows.size(), 30u);
  for (int k = 0; k < 30; ++k)
    EXPECT_EQ(table.rows[static_cast<std::size_t>(k)], (Row{"place " + std::to_string(k), "It presses."}));
}

TEST(NoteFigures, ShowAnExcessHoweverSmallAndRoundAcceptLinesDown) {
  EXPECT_EQ(amount_text(Amount::kPressure, 2004.0), "2.0 kPa (15 mmHg)");
  EXPECT_EQ(amount_text_against(Amount::kPressure, 2004.0, 2000.0), "2.004 kPa (15.03 mmHg)");
  EXPECT_EQ(limit_text_beside(Amount::kPressure, 2000.0, 2004.0), "2.000 kPa (15.00 mmHg)");
  EXPECT_EQ(amount_text_against(Amount::kPressure, 1996.0, 2000.0), "2.0 kPa (15 mmHg)");
  EXPECT_EQ(amount_text_against(Amount::kStrain, 0.3004, 0.3), "30.04 %");
  EXPECT_EQ(amount_text_against(Amount::kExposure, 19.0 * 6e4, 13.3 * 6e4), "19.0 kPa·min (143 mmHg·min)");
  EXPECT_EQ(share_text(1.002), "100.2 %");
  EXPECT_EQ(share_text(0.998), "100 %");
  EXPECT_EQ(at_most_text(2.69 * kPa), "2.6 kPa (20 mmHg)");
  EXPECT_EQ(at_most_text(2.7 * kPa), "2.7 kPa (20 mmHg)");
}

// Predicted 5.3 kPa, and the strictest row in use allows 4.0. The other: 1.9, which is the lower.
TEST(NoteTable, OfSensorsAcceptsUpToTheLowerOfLimitAndPrediction) {
  const NoteTable table = table_of(full_note(), "Thin sensor under");
  ASSERT_EQ(table.rows.size(), 2u);
  EXPECT_EQ(table.rows[0],
            (Row{"pad", "5.3 kPa (40 mmHg)", "4.0 kPa (30 mmHg)", "4.0 kPa (30 mmHg)", "", ""}));
  EXPECT_EQ(table.rows[1],
            (Row{"other", "1.9 kPa (14 mmHg)", "4.0 kPa (30 mmHg)", "1.9 kPa (14 mmHg)", "", ""}));
}

TEST(NoteTable, OfSensorsHoldsAChamberWhoseRowNoFindingNamesAgainstTheStrictestRowInUse) {
  Summary summary = full_summary();
  LimitRow strict = full_row();
  strict.limit = 2.7 * kPa;
  for (const auto& rows : {std::vector{full_row(), strict}, std::vector{strict, full_row()}}) {
    summary.rows_in_use = rows;
    EXPECT_EQ(table_of(full_note(summary), "Thin sensor under").rows[0][3], "2.7 kPa (20 mmHg)");
  }
}

TEST(NoteTable, OfSensorsTakesTheLowestLimitThatAFindingGivesAChamberAndOtherPlacesToo) {
  Summary summary = full_summary();
  Finding strict = card(), strap = card();
  strict.measured->limit = 2700.0;
  strap.where = "strap", strap.place = Phrase::worded("Closing strap"), strap.source_key = "soft, sustained";
  Finding cuff = strap;
  cuff.where = "whole cuff", cuff.source_key = "tourniquet";
  summary.findings = {card(), strict, strap, cuff};
  const NoteTable table = table_of(full_note(summary), "Thin sensor under");
  ASSERT_EQ(table.rows.size(), 3u);
  EXPECT_EQ(table.rows[0][3], "2.7 kPa (20 mmHg)");
  EXPECT_EQ(table.rows[2],
            (Row{"Closing strap", "3.0 kPa (23 mmHg)", "4.0 kPa (30 mmHg)", "3.0 kPa (23 mmHg)", "", ""}));
}

// The inlet stands at 8.2 kPa: 1.5 times 12.3, 3 times 24.6.
TEST(NoteTable, OfTestsOffTheBodyFollowsTheHighestInlet) {
  Summary summary = full_summary();
  summary.inlets.push_back({"lower", "1.0 kPa (8 mmHg)", 1.0 * kPa, 3.0 * mL});
  const NoteTable table = table_of(full_note(summary), "Test off the body");
  EXPECT_EQ(table.header, (Row{"Test off the body", "Accept when", "Reading", "Date, name"}));
  ASSERT_EQ(table.rows.size(), 7u);
  EXPECT_EQ(table.rows[0][0], "Leak: fill to 8.2 kPa (62 mmHg), shut, wait 5 min");
  EXPECT_EQ(table.rows[1][0], "Hold: 10 min at 1.5 times, 12.3 kPa (92 mmHg)");
  EXPECT_EQ(table.rows[2][1], "it opens at 4.6 kPa (34 mmHg) for inlet 'valve' or less");
  EXPECT_EQ(table.rows[3][1], "below 0.5 kPa (4 mmHg) within 3 s");
  EXPECT_EQ(table.rows[4][1], "it is open within 3 s");
  EXPECT_EQ(table.rows[6][1], "they hold 24.6 kPa (185 mmHg), three times, or more");
  for (const Row& row : table.rows) {
    ASSERT_EQ(row.size(), 4u);
    EXPECT_EQ(row[2] + row[3], "") << "a reading is the study's to fill";
  }
}

TEST(NoteTable, OfSkinChecksFollowsTheExposureAndWithoutOneTheRows) {
  Summary summary = full_summary();
  const NoteTable calculated = table_of(full_note(summary), "Look at the skin");
  ASSERT_EQ(calculated.rows.size(), 5u);
  EXPECT_EQ(calculated.rows[1][0], "After 9 min");
  EXPECT_EQ(calculated.rows[2][0], "Then every 1 h until it comes off");
  EXPECT_EQ(calculated.rows[4][0], "35 min later");
  EXPECT_GE(calculated.room_lines, 3) << "there is room to write";
  summary.exposure.reset();
  LimitRow strict = full_row();
  strict.times.first_check = 6.0 * minute, strict.times.check_every = 20.0 * minute;
  summary.rows_in_use = {full_row(), strict};
  const NoteTable of_rows = table_of(full_note(summary), "Look at the skin");
  ASSERT_EQ(of_rows.rows.size(), 5u);
  EXPECT_EQ(of_rows.rows[1][0], "After 6 min");
  EXPECT_EQ(of_rows.rows[2][0], "Then every 20 min until it comes off");
  EXPECT_EQ(of_rows.rows[4][0], "30 min later");
}

TEST(NoteTable, OfWearersPrintsWhatIsKnownAndLeavesTheRestToFill) {
  Summary summary = full_summary();
  const NoteTable empty = table_of(full_note(summary), "About the wearers");
  for (std::size_t row = 0; row < 4; ++row) EXPECT_EQ(empty.rows[row][1], "") << empty.rows[row][0];
  summary.part = BodyPart::kForearm, summary.side = BodySide::kLeft;
  summary.wearers = {"healthy adults", 12, WearerPosture::kSitting, -15.0 * cm, "a nurse", "by word"};
  const Note note = full_note(summary);
  const NoteTable known = table_of(note, "About the wearers");
  EXPECT_EQ(known.rows, (std::vector<Row>{{"Who takes part", "healthy adults"},
                                          {"How many", "12"},
                                          {"Posture", "sitting"},
                                          {"Limb against the heart", "15 cm below the heart"},
                                          {"Part of the body", "forearm, left"}}));
  EXPECT_EQ(
      table_of(note, "About the watch").rows,
      (std::vector<Row>{{"Who watches", "a nurse"}, {"How the wearer tells that it hurts", "by word"}}));
}

TEST(NoteTable, OfSitesNamesEachWithTheNumberItHasInThePicture) {
  Summary summary = full_summary();
  summary.sites_known = true;
  for (int k = 0; k < 12; ++k)
    summary.bony_sites.push_back({"site " + std::to_string(k), Vec3::Zero(), 10.0 * mm, 3.25 * mm,
                                  k % 2 ? SiteKind::kNerve : SiteKind::kBone, k % 2 ? "" : "judgement"});
  const NoteTable table = table_of(full_note(summary), "No.");
  ASSERT_EQ(table.rows.size(), 12u);
  EXPECT_EQ(table.rows[0], (Row{"1", "site 0", "bone", "3.2 mm", "judgement"}));
  EXPECT_EQ(table.rows[11], (Row{"12", "site 11", "nerve", "3.2 mm", "not said"}));
}

TEST(StudyNote, NamesEveryoneWhoMustNotTakePartAndEveryStopSignInEveryForm) {
  const Note note = full_note();
  EXPECT_EQ(missing_from(list_under(note, "Who must not take part"), named_exclusions()), Row{});
  EXPECT_EQ(missing_from(list_under(note, "Stop signs"), named_stop_signs()), Row{});
  // The last is what the window shows.
  for (const std::string& text :
       {note_markdown(note), note_html(note), note_prose(note), note_body_html(note)}) {
    EXPECT_EQ(missing_from(text, named_exclusions()), Row{});
    EXPECT_EQ(missing_from(text, named_stop_signs()), Row{});
    EXPECT_EQ(missing_from(text, named_rules()), Row{});
  }
}

TEST(StudyNote, SaysWhatToMindOnThePartOfTheBody) {
  Summary summary = full_summary();
  summary.part = BodyPart::kChest;
  EXPECT_NE(note_markdown(full_note(summary)).find("Leave room to breathe"), std::string::npos);
  summary.part = BodyPart::kForearm;
  EXPECT_EQ(note_markdown(full_note(summary)).find("Leave room to breathe"), std::string::npos);
}

TEST(StudyNote, TellsHowManyFindingsAndHazardsLieAboveALimitAndTheWorst) {
  EXPECT_NE(note_markdown(full_note())
                .find("ABOVE LIMIT: 1 finding and 1 hazard. Worst: pad, 225 % of its "
                      "limit. Change the plan before anyone wears the device."),
            std::string::npos);
  Summary summary = full_summary();
  summary.findings = {card()};
  EXPECT_NE(note_markdown(full_note(summary)).find("Worst: Pad over the ulna, 112 % of 4.0 kPa (30 mmHg)."),
            std::string::npos);
}

TEST(StudyNote, ToldByAHazardAloneToStopSaysStop) {
  Summary summary = full_summary();
  summary.findings.clear();
  summary.hazards[1].severity = summary.worst = Severity::kStop;
  EXPECT_NE(note_markdown(full_note(summary)).find("STOP: this device must not be worn as planned."),
            std::string::npos);
}

// Cells of the Markdown row that begins with this name.
Row markdown_row(const std::string& page, const std::string& name) {
  std::istringstream in(page);
  for (std::string line; std::getline(in, line);) {
    if (line.rfind("| " + name + " |", 0) != 0) continue;
    Row cells;
    std::istringstream row(line.substr(1));
    for (std::string cell; std::getline(row, cell, '|');)
      cells.push_back(cell.substr(1, cell.size() > 2 ? cell.size() - 2 : 0));
    return cells;
  }
  ADD_FAILURE() << "no row begins with " << name;
  return {};
}

TEST(SummaryPage, EveryColumnHoldsItsOwnFigure) {
  const std::string page = summary_markdown(full_summary());
  EXPECT_EQ(markdown_row(page, "chamber"),
            (Row{"chamber", "gauge", "mL", "mean on the skin", "peak over 1 cm²", "touching, cm²", "force, N",
                 "stretch", "indentation, mm"}));
  const std::string pressures = between(page, "## Predicted pressures", "##");
  EXPECT_EQ(markdown_row(pressures, "pad"),
            (Row{"pad", "7.1 (53)", "23.5", "4.2 (32)", "5.3 (40)", "12.3 of 15.5", "6.5", "1.31", "3.7"}));
  EXPECT_EQ(markdown_row(between(page, "## Seams", "##"), "inset spot 1 of chamber 'pad'"),
            (Row{"inset spot 1 of chamber 'pad'", "0.81", "0.52", "1.6", "61, 72", "outer"}));
  EXPECT_EQ(markdown_row(between(page, "## Against", "##"), "pad"),
            (Row{"pad", "4.20", "3.90", "+8 %", "5.30", "4.80", "+10 %"}));
  EXPECT_NE(pressures.find("Highest anywhere over 1 cm²: 9.3 kPa (70 mmHg), at seam."), std::string::npos);
  EXPECT_NE(pressures.find("Pressed share of the girth: up to 43 %."), std::string::npos);
  EXPECT_NE(pressures.find("chamber means move by up to 0.12 kPa and the peak by 0.34 kPa"),
            std::string::npos);
  EXPECT_NE(pressures.find("1.7 times these pressures is what is held against the limits"),
            std::string::npos);
}

TEST(SummaryPage, SaysWhatHoldsEveryTimeItGoesOn) {
  EXPECT_EQ(missing_from(between(summary_markdown(full_summary()), "## Cautions", "Who must not take part:"),
                         named_rules()),
            Row{});
}

// Breathing, eyes and airway are said on the parts that they belong to, and on a part that nobody named.
TEST(SummaryPage, SaysWhatToMindOnThePartOfTheBody) {
  const auto says = [](std::optional<BodyPart> part, const char* words) {
    Summary summary = full_summary();
    summary.part = part;
    return summary_markdown(summary).find(words) != std::string::npos;
  };
  for (const BodyPart part : {BodyPart::kChest, BodyPart::kAbdomen})
    EXPECT_TRUE(says(part, "Leave room to breathe")) << body_part_name(part);
  EXPECT_TRUE(says(BodyPart::kHead, "temples"));
  EXPECT_TRUE(says(BodyPart::kHead, "Keep eyes, nose, mouth and airway free"));
  EXPECT_TRUE(says(std::nullopt, "Leave room to breathe") && says(std::nullopt, "temples"));
  EXPECT_FALSE(says(BodyPart::kForearm, "Leave room to breathe") || says(BodyPart::kForearm, "temples"));
}

TEST(SummaryPage, NamesEveryoneWhoMustNotTakePartAndEveryStopSign) {
  const std::string page = summary_markdown(full_summary());
  EXPECT_EQ(
      missing_from(between(page, "Who must not take part:", "Vent it, open the closure"), named_exclusions()),
      Row{});
  EXPECT_EQ(missing_from(between(page, "take it off at once on:", "Ask a clinician"), named_stop_signs()),
            Row{});
}

TEST(SummaryPage, MarksFindingsAndHazardsByTheirSeverity) {
  Summary summary = full_summary();
  summary.hazards[0].severity = Severity::kStop;
  const std::string page = summary_markdown(summary);
  EXPECT_NE(page.find("- **ABOVE LIMIT** The pad presses."), std::string::npos);
  EXPECT_NE(page.find("- **Warning** The other presses."), std::string::npos);
  EXPECT_NE(page.find("- **STOP: not to be worn** Vents too slowly: It falls in 0.5 s. Control: Time it."),
            std::string::npos);
  EXPECT_NE(
      page.find("- **ABOVE LIMIT** A valve or pump that sticks: It opens too late. Control: Fit another."),
      std::string::npos);
}

TEST(SummaryPage, SaysTowardsWhichEndTheTaperPushes) {
  Summary summary = full_summary();
  EXPECT_NE(summary_markdown(summary).find("with 1.7 N towards the distal end"), std::string::npos);
  summary.audit.push_along_axis = 1.7 * newton;
  EXPECT_NE(summary_markdown(summary).find("with 1.7 N towards the proximal end"), std::string::npos);
}

TEST(SummaryPage, SaysFirstThatTheInflationWasNotReached) {
  Summary summary = full_summary();
  summary.limit_point = "The chambers run away.";
  const std::string findings = between(summary_markdown(summary), "## Findings\n\n", "\n");
  EXPECT_EQ(findings, "- **Not reached** The chambers run away.");
}

}  // namespace
}  // namespace wrapgauge
