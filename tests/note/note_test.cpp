#include "model/note/note.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>

#include "model/note/note_pages.hpp"

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
  summary.hazards = {{Phrase::worded("No way out in time"), Severity::kNote,
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
  summary.highest_relief = 2.5 * kPa;
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

TEST(StudyNote, HoldsWhatReviewersAskFor) {
  const std::string text = note_markdown(note_of(sample()));
  for (const char* part : {"What is worn and where",
                           "Predicted pressure on the skin",
                           "Limits used",
                           "Findings",
                           "Hazards",
                           "Who must not take part",
                           "Stop signs",
                           "Tests before any person",
                           "Skin checks",
                           "Cleaning",
                           "Not checked",
                           "Versions and inputs",
                           "not a medical device",
                           "ask a clinician",
                           "2.1 kPa (16 mmHg)",
                           "judgement",
                           "Hold: 10 min at 1.5 times, 3.0 kPa (23 mmHg)",
                           "6.0 kPa (45 mmHg), three times, or more",
                           "it opens at 2.5 kPa (19 mmHg) or less",
                           "below 0.5 kPa (4 mmHg) within 3 s",
                           "aaaaaaaaaaaa",
                           "Wrapgauge 0.1.0"})
    EXPECT_TRUE(contains(text, part)) << part << "\n" << text;
  EXPECT_FALSE(contains(text, " safe"));
}

TEST(StudyNote, SaysOnTopThatSomethingLiesAboveALimitOrMustNotBeWorn) {
  Summary summary = sample();
  EXPECT_EQ(note_markdown(note_of(summary)).find("> **No prediction lies above a limit of the set used."),
            note_markdown(note_of(summary)).find("> **"));
  summary.findings[0].severity = summary.worst = Severity::kAboveLimit;
  EXPECT_TRUE(contains(note_markdown(note_of(summary)), "> **ABOVE LIMIT: 1 finding lies above a limit."));
  summary.worst = Severity::kStop;
  EXPECT_TRUE(
      contains(note_markdown(note_of(summary)), "> **STOP: this device must not be worn as planned."));
}

TEST(StudyNote, CarriesTheReasonOfAnOverrideOnTop) {
  Summary summary = sample();
  summary.limits_override = "Limits were overridden. Reason: bench dummy.";
  EXPECT_TRUE(
      contains(note_markdown(note_of(summary)), "> **Limits were overridden. Reason: bench dummy.**"));
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

TEST(StudyNote, ShowsBandsAndCeilingOnlyWhenTheyWereWorkedOut) {
  const Summary summary = sample();
  EXPECT_TRUE(contains(note_markdown(note_of(summary)), "| not worked out |"));
  EXPECT_TRUE(
      contains(note_markdown(note_of(summary)), "The highest inflation within limits was not worked out."));
  NoteExtras extras;
  extras.bands = NoteBands{"Over 32 runs.", {{"pad", 1.2 * kPa, 3.4 * kPa}}, summary.inputs};
  extras.ceiling = NoteCeiling{"The highest inflation is 2.4 kPa (18 mmHg).", summary.inputs,
                               "2.2 kPa (16 mmHg) for inlet 'valve'"};
  const std::string text = note_markdown(note_of(summary, extras));
  EXPECT_TRUE(contains(text, "| 1.2 to 3.4 kPa (9 to 26 mmHg) |"));
  EXPECT_TRUE(contains(text, "The highest inflation is 2.4 kPa (18 mmHg)."));
  EXPECT_FALSE(contains(text, "not worked out |"));
  EXPECT_TRUE(contains(text, "it opens at 2.2 kPa (16 mmHg) for inlet 'valve' or less, as solved for"));
}

TEST(StudyNote, SaysHowManyFindingsAreLeftOutAndWhereTheyAre) {
  Summary summary = sample();
  summary.findings.clear();
  for (const char* where : {"a", "b", "c", "d", "e", "f"})
    summary.findings.push_back(
        {Severity::kAboveLimit, where, Phrase::worded("%1 presses.", {name_of(where)}), 2.0});
  EXPECT_FALSE(contains(note_markdown(note_of(summary)), "left out"));
  summary.findings.push_back({Severity::kAboveLimit, "heel", Phrase::worded("The heel presses."), 1.5});
  summary.findings.push_back({Severity::kWarn, "toe", Phrase::worded("The toe presses."), 0.9});
  summary.findings.push_back({Severity::kWarn, "toe", Phrase::worded("The toe is squeezed."), 0.8});
  EXPECT_TRUE(contains(note_markdown(note_of(summary)),
                       "3 more are left out here: 1 above a limit, at 'heel'; 2 warnings, at 'toe'. All "
                       "stand in full in summary.md"));
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

TEST(StudyNote, LeavesFieldsOfTheStudyEmpty) {
  const std::string text = note_markdown(note_of(sample()));
  EXPECT_TRUE(contains(text,
                       "| Study | Responsible person | Ethics reference | Date and signature "
                       "|\n|---|---|---|---|\n|  |  |  |  |"));
  EXPECT_TRUE(contains(text, "| no seam opens, no bulge grows |  |  |"));
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

TEST(StudyNote, HasTheSameWordsInEveryForm) {
  const Note note = note_of(sample());
  const std::string html = bare_html(note_html(note)), markdown = bare(note_markdown(note));
  for (const NotePage& page : note.pages)
    for (const NoteBlock& block : page.blocks) {
      if (const auto* text = std::get_if<NoteText>(&block)) {
        EXPECT_TRUE(contains(html, bare(text->text)) && contains(markdown, bare(text->text))) << text->text;
      } else if (const auto* list = std::get_if<NoteList>(&block)) {
        for (const std::string& item : list->items)
          EXPECT_TRUE(contains(html, bare(item)) && contains(markdown, bare(item))) << item;
      } else if (const auto* table = std::get_if<NoteTable>(&block)) {
        for (const auto& row : table->rows)
          for (const std::string& cell : row)
            EXPECT_TRUE(contains(html, bare(cell)) && contains(markdown, bare(cell))) << cell;
      }
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
