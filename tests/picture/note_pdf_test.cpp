// The note's PDF as a reader sees it: read back with the programs of poppler-utils.
#include "app/picture/note_pdf.hpp"

#include <gtest/gtest.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "app/picture/pdf_properties.hpp"
#include "app/picture/picture_program.hpp"
#include "tests/note/full_summary.hpp"

namespace wrapgauge {
namespace {

class NotePdf : public testing::Test {
 protected:
  struct Word {
    double left, top, right, bottom;  // points, from the upper left corner of the page
    std::string text;
  };

  void SetUp() override {
    ASSERT_TRUE(start_picture_program().ok());
    if (std::system("command -v pdftotext > /dev/null 2>&1 && command -v pdfinfo > /dev/null 2>&1") != 0)
      GTEST_SKIP() << "NOT CHECKED: there is no pdftotext or pdfinfo to read the PDF with";
    file_ = std::filesystem::temp_directory_path() / ("wrapgauge-note-" + std::to_string(getpid()) + ".pdf");
  }
  void TearDown() override { std::filesystem::remove(file_); }

  static Note note_of(const Summary& summary) {
    const auto note = study_note(summary, summary.inputs);
    EXPECT_TRUE(note.ok()) << (note ? "" : note.problem().message);
    return note ? *note : Note{};
  }
  static std::string pdf_of(const Note& note) {
    NotePictures pictures{QImage(1800, 800, QImage::Format_RGB32), QImage(1800, 640, QImage::Format_RGB32)};
    pictures.place.fill(Qt::gray);
    pictures.pressure.fill(Qt::lightGray);
    const auto pdf = note_pdf(note, pictures);
    EXPECT_TRUE(pdf.ok()) << (pdf ? "" : pdf.problem().message);
    return pdf ? *pdf : "";
  }
  void write(const std::string& pdf) const { std::ofstream(file_, std::ios::binary) << pdf; }

  // What a command that reads the file says, with what it complains about.
  std::string said_by(const std::string& program, const std::string& after = "") const {
    FILE* pipe = popen((program + " '" + file_.string() + "' " + after + " 2>&1").c_str(), "r");
    std::string out;
    std::array<char, 4096> part{};
    for (std::size_t read; (read = fread(part.data(), 1, part.size(), pipe)) > 0;)
      out.append(part.data(), read);
    EXPECT_EQ(pclose(pipe), 0) << program << ": " << out;
    return out;
  }
  int pages() const {
    const std::string info = said_by("pdfinfo");
    return std::atoi(info.substr(info.find("Pages:") + 6).c_str());
  }
  std::vector<Word> words_on(int page) const {
    const std::string number = std::to_string(page);
    std::istringstream lines(said_by("pdftotext -bbox -f " + number + " -l " + number, "-"));
    std::vector<Word> words;
    for (std::string line; std::getline(lines, line);) {
      Word word{};
      if (std::sscanf(line.c_str(), " <word xMin=\"%lf\" yMin=\"%lf\" xMax=\"%lf\" yMax=\"%lf\">", &word.left,
                      &word.top, &word.right, &word.bottom) != 4)
        continue;
      word.text = line.substr(line.find('>') + 1);
      words.push_back(word);
    }
    return words;
  }
  // Letters and digits only; two letters where the font has one sign for both.
  static std::string bare(std::string text) {
    for (const auto& [sign, letters] : {std::pair{"\uFB00", "ff"}, {"\uFB01", "fi"}, {"\uFB02", "fl"}})
      for (auto at = text.find(sign); at != std::string::npos; at = text.find(sign, at))
        text.replace(at, std::string(sign).size(), letters);
    std::erase_if(text, [](unsigned char c) { return c >= 0x80 || std::isalnum(c) == 0; });
    return text;
  }
  // The words as they are drawn, without the feet of the pages.
  std::string drawn(const Note& note) const {
    std::string all;
    const int count = pages();
    for (int page = 1; page <= count; ++page) {
      const std::string number = std::to_string(page);
      const std::string text = bare(said_by("pdftotext -raw -f " + number + " -l " + number, "-"));
      const std::string foot = bare(note.title + "page" + number + "of" + std::to_string(count));
      EXPECT_TRUE(text.ends_with(foot)) << "page " << page << " ends with " << text.substr(text.size() - 60);
      all += text.substr(0, text.size() - std::min(text.size(), foot.size()));
    }
    return all;
  }
  // Reads `text` on from `at`; a table's header may stand again before any of its rows.
  static bool take(const std::string& text, std::size_t& at, const std::string& words,
                   const std::string& header) {
    if (text.compare(at, words.size(), words) != 0 && !header.empty() &&
        text.compare(at, header.size(), header) == 0)
      at += header.size();
    const bool found = text.compare(at, words.size(), words) == 0;
    EXPECT_TRUE(found) << "not in its place: " << words << "; there stands: " << text.substr(at, 80);
    at += words.size();
    return found;
  }
  static bool take_table(const std::string& text, std::size_t& at, const NoteTable& table) {
    std::string header;
    for (const std::string& cell : table.header) header += bare(cell);
    if (!take(text, at, header, "")) return false;
    for (const auto& row : table.rows) {
      std::string words;
      for (const std::string& cell : row) words += bare(cell);
      if (!take(text, at, words, header)) return false;
    }
    return true;
  }
  static bool take_block(const std::string& text, std::size_t& at, const NoteBlock& block) {
    std::string words;
    if (const auto* table = std::get_if<NoteTable>(&block)) return take_table(text, at, *table);
    if (const auto* heading = std::get_if<NoteHeading>(&block)) words = heading->text;
    if (const auto* said = std::get_if<NoteText>(&block)) words = said->text;
    if (const auto* picture = std::get_if<NotePicture>(&block)) words = picture->caption;
    if (const auto* box = std::get_if<NoteBox>(&block))
      for (const std::string& line : box->lines) words += line;
    if (const auto* list = std::get_if<NoteList>(&block))
      for (const std::string& item : list->items) words += item;
    return take(text, at, bare(words), "");
  }
  void expect_every_word_once_and_in_order(const Note& note) const {
    const std::string text = drawn(note);
    std::size_t at = 0;
    ASSERT_TRUE(take(text, at, bare(note.title), ""));
    for (const NoteBlock& block : note.blocks) ASSERT_TRUE(take_block(text, at, block));
    EXPECT_EQ(at, text.size()) << "more stands there: " << text.substr(std::min(at, text.size()));
  }
  static Summary long_summary() {
    Summary summary = full_summary();
    summary.limits_override = "Reason:";
    for (int k = 0; k < 900; ++k) *summary.limits_override += " word" + std::to_string(k);
    for (int k = 0; k < 60; ++k)
      summary.findings.push_back({Severity::kWarn, "place " + std::to_string(k),
                                  Phrase::worded("It is pressed harder than its warning allows."), 0.8});
    summary.figures.chambers[0].chamber = std::string(150, 'W');
    summary.inputs[0].name = std::string(90, 'm') + ".json";
    return summary;
  }

  std::filesystem::path file_;
};

TEST_F(NotePdf, HoldsEveryWordOfTheNoteOnceAndInOrder) {
  const Note note = note_of(full_summary());
  write(pdf_of(note));
  expect_every_word_once_and_in_order(note);
}

TEST_F(NotePdf, CutsNothingOffWhenNamesAreLongAndTablesGoOverPages) {
  const Note note = note_of(long_summary());
  write(pdf_of(note));
  expect_every_word_once_and_in_order(note);
  EXPECT_GT(pages(), 8);
}

TEST_F(NotePdf, RepeatsATablesHeaderOnEachPageItGoesOnTo) {
  write(pdf_of(note_of(long_summary())));
  int headers = 0, pages_with_rows = 0;
  for (int page = 1; page <= pages(); ++page) {
    const std::string number = std::to_string(page);
    const std::string text = bare(said_by("pdftotext -raw -f " + number + " -l " + number, "-"));
    headers += text.find("WherePredictedWiththefactor") != std::string::npos;
    pages_with_rows += text.find("Warningplace") != std::string::npos;
  }
  EXPECT_GT(pages_with_rows, 1);
  EXPECT_EQ(headers, pages_with_rows);
}

// A4 is 595.3 by 841.9 points, with margins of 15 mm, 42.5 points. Letters may lean out of their box a
// little.
TEST_F(NotePdf, KeepsEveryWordWithinTheMarginsAndOffTheOthers) {
  write(pdf_of(note_of(long_summary())));
  constexpr double kSlack = 1.0;
  for (int page = 1; page <= pages(); ++page) {
    const std::vector<Word> words = words_on(page);
    for (std::size_t i = 0; i < words.size(); ++i) {
      const Word& word = words[i];
      EXPECT_GT(word.left, 42.5 - kSlack) << word.text;
      EXPECT_LT(word.right, 595.3 - 42.5 + kSlack) << word.text;
      EXPECT_LT(word.bottom, 841.9 - 42.5 + kSlack) << word.text;
      for (std::size_t j = 0; j < i; ++j)
        EXPECT_FALSE(std::min(word.right, words[j].right) - std::max(word.left, words[j].left) > kSlack &&
                     std::min(word.bottom, words[j].bottom) - std::max(word.top, words[j].top) > 2.0 * kSlack)
            << word.text << " lies over " << words[j].text << " on page " << page;
    }
  }
}

// As the column of predicted figures is, 15 % of the page.
TEST_F(NotePdf, BreaksAPressureTimesTimeBeforeItsUnitAndNotWithin) {
  Note note;
  note.title = "Narrow";
  note.blocks = {NoteTable{{"Predicted", "Rest"}, {{"206.3 kPa·min", "23 mmHg"}}, {15, 85}}};
  write(pdf_of(note));
  std::string all;
  for (const Word& word : words_on(1)) all += word.text + "|";
  EXPECT_NE(all.find("kPa·min<"), std::string::npos) << all;
}

TEST_F(NotePdf, HasNoTypeSmallerThanTenPoints) {
  write(pdf_of(note_of(full_summary())));
  const std::string sizes = said_by("pdftohtml -xml -stdout -i -zoom 1");
  int fonts = 0;
  for (std::size_t at = 0; (at = sizes.find(" size=\"", at)) != std::string::npos; ++at, ++fonts)
    EXPECT_GE(std::atoi(sizes.c_str() + at + 7), 10);
  EXPECT_GE(fonts, 3);
}

TEST_F(NotePdf, NamesItsTitleItsLanguageAndTheDayOfThePlan) {
  Summary summary = full_summary();
  summary.plan = "Bänder & <Manschette>";
  summary.date = "2026-11-29";
  const std::string pdf = pdf_of(note_of(summary));
  write(pdf);
  const std::string info = said_by("TZ=UTC pdfinfo -isodates");
  EXPECT_NE(info.find("Title:           Study note: Bänder & <Manschette>"), std::string::npos) << info;
  EXPECT_NE(info.find("CreationDate:    2026-11-29T00:00:00Z"), std::string::npos) << info;
  EXPECT_EQ(info.find("rror"), std::string::npos) << info;
  EXPECT_NE(pdf.find("/Lang (en) /ViewerPreferences << /DisplayDocTitle true >>"), std::string::npos);
}

TEST_F(NotePdf, BearsNoDayWhenTheNoteHasNone) {
  write(pdf_of(note_of(full_summary())));
  EXPECT_EQ(said_by("pdfinfo").find("Date:"), std::string::npos) << said_by("pdfinfo");
}

TEST_F(NotePdf, IsTheSameBytesEachTime) {
  const Note note = note_of(full_summary());
  EXPECT_EQ(pdf_of(note), pdf_of(note));
}

TEST(PdfProperties, AreRefusedToWhatIsNoPdf) {
  EXPECT_FALSE(with_properties("", {}).ok());
  EXPECT_FALSE(
      with_properties("trailer\n<< /Size 3 /Root 1 0 R /Info 2 0 R >>\nstartxref\n9\n%%EOF\n", {}).ok());
}

}  // namespace
}  // namespace wrapgauge
