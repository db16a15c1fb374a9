#include "model/note/note.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>

#include "model/note/note_figures.hpp"
#include "model/note/note_sections.hpp"

namespace wrapgauge {
namespace {

Summary sample() {
  Summary summary;
  summary.program_version = "0.1.0";
  summary.plan = "small <cuff> & band";
  summary.inputs = {{"plan", "plan.json", std::string(64, 'a')},
                    {"limits", "limits.json", std::string(64, 'b')}};
  summary.worn = {"Layout 'band' with 1 chambers on body 'forearm'.", "Laid on without going round."};
  summary.inlets = {{"valve", "2.0 kPa (15 mmHg)", 2.0 * kPa, 12.0 * mL}};
  ChamberFigures chamber;
  chamber.chamber = "pad";
  chamber.gauge = 2.0 * kPa, chamber.mean = 1.4 * kPa, chamber.peak = 2.1 * kPa;
  summary.figures.chambers = {chamber};
  summary.figures.peak_anywhere = 2.1 * kPa;
  summary.figures.peak_part = name_of("pad");
  summary.findings = {
      {Severity::kWarn, "pad",
       Phrase::worded(
           "Chamber 'pad' is predicted to press 2.1 kPa (16 mmHg) at its highest square centimetre; that is "
           "above the warning (judgement, chosen below Sacks (authors from memory)). Lower the inflation."),
       0.8}};
  summary.hazards = {{HazardKind::kVent, Phrase::worded("Vents too slowly"), Severity::kNote,
                      Phrase::worded("It falls in 0.5 s."), Phrase::worded("Time it.")}};
  summary.limits_name = "first set";
  summary.rows_in_use = {{SiteClass::kSoft,
                          UsePattern::kSustained,
                          2.7 * kPa,
                          4.0 * kPa,
                          std::nullopt,
                          {15.0 * minute, 60.0 * minute, 50.0 * minute, 0.2, 120.0 * minute},
                          "chosen below others",
                          "judgement",
                          "why"}};
  summary.relief = {{"pump", 2.5 * kPa}};
  summary.release = {3.0 * second, 0.5 * kPa, "judgement, no source"};
  summary.session = Session{30.0 * minute, std::nullopt, std::nullopt, Time()};
  return summary;
}

Note note_of(const Summary& summary, const NoteExtras& extras = {}) {
  const auto note = study_note(summary, summary.inputs, extras);
  EXPECT_TRUE(note.ok()) << (note ? "" : note.problem().message);
  return note ? *note : Note{};
}

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

TEST(StudyNote, HoldsWhatReviewersAskForInTheOrderTheyReadIt) {
  std::vector<std::string> headings;
  const Note note = note_of(sample());
  for (const NoteBlock& block : note.blocks)
    if (const auto* heading = std::get_if<NoteHeading>(&block)) headings.push_back(heading->text);
  EXPECT_EQ(headings,
            (std::vector<std::string>{
                "1. What is worn", "2. Who wears it", "3. Where it sits", "4. Predicted pressure on the skin",
                "5. Limits used", "6. Findings", "7. Hazards and what keeps them in check",
                "8. Who must not take part", "9. Stop signs: open it and take it off at once",
                "10. Who watches, and how", "11. Tests before any person wears it", "12. Skin checks",
                "13. Release and emergency", "14. Materials and cleaning", "15. Calibration",
                "16. What was not checked", "17. Versions and input files", "18. Signatures"}));
  EXPECT_TRUE(std::holds_alternative<NoteBox>(note.blocks.front())) << "the verdict stands first";
  EXPECT_EQ(std::get<NoteTable>(note.blocks.back()).header[3], "Signature") << "signatures stand last";
}

TEST(StudyNote, HoldsTheFiguresOfTheSummary) {
  const std::string text = note_markdown(note_of(sample()));
  for (const char* part :
       {"not a medical device", "ask a clinician", "2.1 kPa (16 mmHg)", "judgement",
        "Hold: 10 min at 1.5 times, 3.0 kPa (23 mmHg)", "6.0 kPa (45 mmHg), three times, or more",
        "it opens at 2.5 kPa (18 mmHg) for inlet 'pump' or less", "below 0.5 kPa (4 mmHg) within 3 s",
        "Wrapgauge 0.1.0"})
    EXPECT_TRUE(contains(text, part)) << part << "\n" << text;
  EXPECT_TRUE(contains(text, std::string(64, 'a'))) << "the whole of a hash, so that it can be compared";
  EXPECT_FALSE(contains(text, " safe"));
}

TEST(StudyNote, SaysOnTopThatSomethingLiesAboveALimitOrMustNotBeWorn) {
  Summary summary = sample();
  const auto on_top = [](const Summary& now) { return std::get<NoteBox>(note_of(now).blocks[0]).lines[0]; };
  EXPECT_EQ(on_top(summary),
            "Nothing predicted exceeds the limits used. The limits are judgement and the model is not "
            "calibrated; this is not approval to wear the device.");
  summary.findings[0].severity = summary.worst = Severity::kAboveLimit;
  EXPECT_EQ(on_top(summary).rfind("ABOVE LIMIT: 1 finding.", 0), 0u) << on_top(summary);
  summary.findings[0].severity = summary.worst = Severity::kStop;
  EXPECT_EQ(on_top(summary).rfind("STOP: this device must not be worn as planned. 1 finding says stop.", 0),
            0u)
      << on_top(summary);
}

TEST(StudyNote, IsRefusedForATestObject) {
  Summary summary = sample();
  summary.part = BodyPart::kTestObject;
  const auto note = study_note(summary, summary.inputs);
  ASSERT_FALSE(note.ok());
  EXPECT_EQ(note.problem().kind, ProblemKind::kBadInput);
  EXPECT_TRUE(contains(note.problem().message, "body.part is 'test object', which nobody wears"));
}

TEST(StudyNote, SaysOnTopWhatIsNotKnownAndWhoAnswersForIt) {
  Summary summary = sample();
  const auto box = [&] {
    std::string all;
    const Note note = note_of(summary);
    for (const std::string& line : std::get<NoteBox>(note.blocks[0]).lines) all += line + "\n";
    return all;
  };
  EXPECT_TRUE(contains(box(), "so the limit over bone holds everywhere"));
  EXPECT_TRUE(contains(box(), "The tissue row was not chosen for this part: it is not confirmed."));
  EXPECT_TRUE(contains(box(), "6 of them about the wearers."));
  summary.sites_known = summary.tissue_confirmed = true;
  summary.sites_confirmed = SitesConfirmed{"A physiotherapist", "2026-11-01", "felt and drawn on"};
  summary.cleared_by = Clearance{"The doctor on duty", "physician", "2026-11-02"};
  summary.tables_differ = {"The limits are not the ones shipped."};
  summary.wearers = {"healthy adults", 12, WearerPosture::kSitting, 0.0 * cm, "a nurse", "by word"};
  EXPECT_FALSE(contains(box(), "not known"));
  EXPECT_FALSE(contains(box(), "not confirmed"));
  EXPECT_TRUE(contains(box(), "A physiotherapist gave their word on 2026-11-01"));
  EXPECT_TRUE(contains(box(), "felt and drawn on"));
  EXPECT_TRUE(contains(box(), "Cleared by The doctor on duty, physician, on 2026-11-02."));
  EXPECT_TRUE(contains(box(), "The limits are not the ones shipped."));
  EXPECT_TRUE(contains(box(), "none of them about the wearers."));
}

// Counted in the Markdown too, where an empty cell is two spaces.
TEST(StudyNote, CountsTheCellsThatAreLeftToFill) {
  Summary summary = sample();
  const Note note = note_of(summary);
  const int count = cells_to_fill(note.blocks);
  const std::string text = note_markdown(note);
  int seen = 0;
  for (std::size_t at = 0; (at = text.find("|  |", at)) != std::string::npos; at += 3) ++seen;
  EXPECT_EQ(seen, count);
  EXPECT_TRUE(contains(text, std::to_string(count) + " empty cells are for the study to fill,"));
  summary.wearers.population = "healthy adults";
  summary.date = "2026-11-29";
  EXPECT_EQ(cells_to_fill(note_of(summary).blocks), count - 2);
}

TEST(StudyNote, SaysThatReleaseIsToOpenTheClosureAndHowHardAVentedCuffStillPresses) {
  Summary summary = sample();
  EXPECT_TRUE(contains(note_markdown(note_of(summary)), "Release means: vent it and lift it off."));
  summary.closure = ClosureReport{};
  EXPECT_TRUE(
      contains(note_markdown(note_of(summary)), "Release means: open the closure. Venting is not enough."));
  EXPECT_TRUE(contains(note_markdown(note_of(summary)), "A vented band that is still fastened can press."));
  summary.exposure = SkinExposure{};
  summary.exposure->still_pressed = 1.3 * kPa;
  EXPECT_TRUE(contains(note_markdown(note_of(summary)),
                       "Vented but still worn, it is predicted to press up to 1.3 kPa (10 mmHg)."));
}

TEST(StudyNote, CarriesTheReasonOfAnOverrideOnTop) {
  Summary summary = sample();
  summary.limits_override = "Limits were overridden. Reason: bench dummy.";
  EXPECT_EQ(std::get<NoteBox>(note_of(summary).blocks[0]).lines[1],
            "Limits were overridden. Reason: bench dummy.");
}

TEST(StudyNote, IsRefusedWhenAnInputChanged) {
  const Summary summary = sample();
  std::vector<InputFile> now = summary.inputs;
  now[1].sha256[0] = 'c';
  const auto changed = study_note(summary, now);
  ASSERT_FALSE(changed.ok());
  EXPECT_TRUE(
      contains(changed.problem().message, "limits 'limits.json' has changed or gone since the estimate"));
  now = summary.inputs;
  now.push_back({"body", "arm.stl", "d"});
  EXPECT_FALSE(study_note(summary, now).ok());
  NoteExtras extras;
  extras.bands = NoteBands{"32 runs.", {}, summary.inputs};
  extras.bands->inputs[0].sha256 = "old";
  const auto old_study = study_note(summary, summary.inputs, extras);
  ASSERT_FALSE(old_study.ok());
  EXPECT_TRUE(contains(old_study.problem().message, "since the study of spread read it"));
}

TEST(StudyNote, IsRefusedWhenTheInflationIsNeverReached) {
  Summary summary = sample();
  summary.limit_point = "The chambers hold no more than 1.0 kPa (8 mmHg).";
  const auto note = study_note(summary, summary.inputs);
  ASSERT_FALSE(note.ok());
  EXPECT_EQ(note.problem().kind, ProblemKind::kNotConverged);
}

TEST(StudyNote, ShowsBandsAndCeilingOnlyWhenTheyWereCalculated) {
  const Summary summary = sample();
  EXPECT_TRUE(contains(note_markdown(note_of(summary)), "| not calculated |"));
  EXPECT_TRUE(
      contains(note_markdown(note_of(summary)), "The highest inflation within limits was not calculated."));
  NoteExtras extras;
  extras.bands = NoteBands{"Over 32 runs.", {{"pad", 1.2 * kPa, 3.4 * kPa}}, summary.inputs};
  extras.ceiling = NoteCeiling{"The highest inflation is 2.4 kPa (18 mmHg).", summary.inputs,
                               "2.2 kPa (16 mmHg) for inlet 'valve'"};
  const std::string text = note_markdown(note_of(summary, extras));
  EXPECT_TRUE(contains(text, "| 1.2 to 3.4 kPa (9 to 26 mmHg) |"));
  EXPECT_TRUE(contains(text, "The highest inflation is 2.4 kPa (18 mmHg)."));
  EXPECT_FALSE(contains(text, "not calculated |"));
  EXPECT_TRUE(contains(text, "it opens at 2.2 kPa (16 mmHg) for inlet 'valve' or less, as solved for"));
}

TEST(StudyNote, TellsTheStepsOfAnInletThatHasItsOwn) {
  Summary summary = sample();
  summary.session = Session{9.0 * minute, 30.0 * second, 90.0 * second, Time()};
  EXPECT_TRUE(contains(note_markdown(note_of(summary)),
                       "worn for 9 min, inflated for 30 s and vented for 90 s in turn."));
  summary.inlets[0].steps = {{1.0, 3.0 * second, 30.0 * second}, {0.0, Time(), 90.0 * second}};
  const std::string own =
      "Inlet 'valve' goes to 100 % in 3 s, held for 30 s; vented at once, held for 90 s; "
      "and so on.";
  EXPECT_TRUE(contains(note_markdown(note_of(summary)), "It is worn for 9 min. " + own));
  EXPECT_FALSE(contains(note_markdown(note_of(summary)), "in turn"));
  summary.inlets.push_back({"other", "", 1.0 * kPa, 5.0 * mL});
  EXPECT_TRUE(contains(note_markdown(note_of(summary)),
                       own + " The other inlets: inflated for 30 s and vented for 90 s in turn."));
}

TEST(StudyNote, SaysHowMuchOfAGirthIsPressedAndWhetherThatMakesItACuff) {
  Summary summary = sample();
  summary.figures.share_of_girth = 0.41;
  EXPECT_TRUE(contains(note_markdown(note_of(summary)),
                       "up to 41 % of a girth, so the row for a cuff round the limb does not hold."));
  summary.figures.share_of_girth = 0.97;
  summary.rows_in_use[0].site = SiteClass::kCircumferential;
  EXPECT_TRUE(contains(note_markdown(note_of(summary)),
                       "up to 97 % of a girth, so the row for a cuff round the limb holds."));
}

TEST(StudyNote, LeavesFieldsOfTheStudyEmptyAndTakesTheDayOfMakingFromThePlan) {
  Summary summary = sample();
  const std::string header =
      "| Study name | Ethics reference | Responsible person | Date of making |\n|---|---|---|---|\n";
  EXPECT_TRUE(contains(note_markdown(note_of(summary)), header + "|  |  |  |  |"));
  EXPECT_TRUE(contains(note_markdown(note_of(summary)), "| no seam opens, no bulge grows |  |  |"));
  summary.date = "2026-11-29";
  EXPECT_TRUE(contains(note_markdown(note_of(summary)), header + "|  |  |  | 2026-11-29 |"));
  EXPECT_TRUE(contains(note_html(note_of(summary)), "<meta name=\"date\" content=\"2026-11-29\">"));
}

// Letters and digits only, so that marks and their escapes do not count.
std::string bare(const std::string& text) {
  std::string out;
  for (const char c : text)
    if (std::isalnum(static_cast<unsigned char>(c)) != 0) out += c;
  return out;
}

// What a reader sees: no tags, entities as the letters they stand for (all of those used are marks).
std::string bare_html(const std::string& html) {
  std::string shown;
  char until = 0;
  for (const char c : html) {
    if (until != 0) {
      if (c == until) until = 0;
    } else if (c == '<' || c == '&') {
      until = c == '<' ? '>' : ';';
    } else {
      shown += c;
    }
  }
  return bare(shown);
}

// Every word of a block, cell by cell.
std::vector<std::string> words_of(const NoteBlock& block) {
  if (const auto* heading = std::get_if<NoteHeading>(&block)) return {heading->text};
  if (const auto* text = std::get_if<NoteText>(&block)) return {text->text};
  if (const auto* box = std::get_if<NoteBox>(&block)) return box->lines;
  if (const auto* list = std::get_if<NoteList>(&block)) return list->items;
  if (const auto* picture = std::get_if<NotePicture>(&block)) return {picture->caption};
  const auto& table = std::get<NoteTable>(block);
  std::vector<std::string> words = table.header;
  for (const auto& row : table.rows) words.insert(words.end(), row.begin(), row.end());
  return words;
}

TEST(StudyNote, HasTheSameWordsInTheSameOrderInEveryForm) {
  const Note note = note_of(sample());
  const std::string html = bare_html(note_html(note)), markdown = bare(note_markdown(note));
  std::size_t in_html = 0, in_markdown = 0;
  for (const NoteBlock& block : note.blocks)
    for (const std::string& words : words_of(block)) {
      in_html = html.find(bare(words), in_html), in_markdown = markdown.find(bare(words), in_markdown);
      ASSERT_NE(in_html, std::string::npos) << words;
      ASSERT_NE(in_markdown, std::string::npos) << words;
      in_html += bare(words).size(), in_markdown += bare(words).size();
    }
}

TEST(StudyNote, EscapesNamesInMarkup) {
  const Note note = note_of(sample());
  EXPECT_TRUE(contains(note_html(note), "small &lt;cuff&gt; &amp; band"));
  EXPECT_FALSE(contains(note_html(note), "<cuff>"));
}

TEST(WithoutSource, CutsTheWholeBracketThatNamesIt) {
  EXPECT_EQ(without_source("Above 2 kPa (judgement, half of it (from memory)). Lower it."),
            "Above 2 kPa. Lower it.");
  EXPECT_EQ(without_source("It is 2.0 kPa (15 mmHg)."), "It is 2.0 kPa (15 mmHg).");
}

// Groups of vowels, a silent e at the end left out; at least one a word.
int syllables(const std::string& word) {
  int count = 0;
  bool before = false;
  for (const char c : word) {
    const bool vowel =
        std::string("aeiouy").find(static_cast<char>(std::tolower(static_cast<unsigned char>(c)))) !=
        std::string::npos;
    if (vowel && !before) ++count;
    before = vowel;
  }
  if (word.size() > 2 && std::tolower(static_cast<unsigned char>(word.back())) == 'e' && count > 1) --count;
  return std::max(count, 1);
}

// Flesch 1948, A new readability yardstick, formula from memory: 206.835 - 1.015 words a sentence - 84.6
// syllables a word; 60 to 70 is plain English. Numbers and units are left out.
double reading_ease(const std::string& text) {
  int words = 0, sentences = 0, spoken = 0;
  std::string word;
  for (std::size_t i = 0; i <= text.size(); ++i) {
    const char c = i < text.size() ? text[i] : ' ';
    if (std::isalpha(static_cast<unsigned char>(c)) != 0) {
      word += c;
      continue;
    }
    if (word.size() > 0) ++words, spoken += syllables(word);
    word.clear();
    const bool inside_number = i > 0 && std::isdigit(static_cast<unsigned char>(text[i - 1])) != 0 &&
                               i + 1 < text.size() &&
                               std::isdigit(static_cast<unsigned char>(text[i + 1])) != 0;
    if ((c == '.' && !inside_number) || c == ';' || c == ':') ++sentences;
  }
  return 206.835 - 1.015 * words / sentences - 84.6 * spoken / words;
}

TEST(ReadingEase, OfAPlainSentenceIsHighAndOfAStiffOneLow) {
  EXPECT_GT(reading_ease("The cat sat on the mat. It was warm."), 100.0);
  EXPECT_LT(
      reading_ease("Circumferential compression necessitates individualised haemodynamic consideration."),
      0.0);
}

TEST(StudyNote, IsWrittenInPlainWords) {
  const double ease = reading_ease(note_prose(note_of(sample())));
  RecordProperty("reading_ease", static_cast<int>(ease));
  EXPECT_GT(ease, 60.0);
}

}  // namespace
}  // namespace wrapgauge
