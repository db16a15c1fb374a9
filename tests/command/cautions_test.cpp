// Who must not take part and what stops a session, in every file that is written and as a reader of the PDF
// sees them.
#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <cstdlib>

#include "tests/command/command_test.hpp"
#include "tests/note/named_cautions.hpp"

namespace wrapgauge {
namespace {

class WrittenCautions : public CommandTest {
 protected:
  void SetUp() override {
    CommandTest::SetUp();
    const std::string plan = write("plan.json", R"({"wrapgauge-plan": 1, "name": "small pad",
      "body": {"form": "cylinder", "part": "forearm"}, "tissue": {"site": "forearm relaxed"},
      "layout": {"wrapgauge-layout": 1, "name": "pad",
        "outline": {"rectangle": {"x": -30, "y": -30, "width": 60, "height": 60}},
        "chambers": [{"name": "cell", "rectangle": {"x": -20, "y": -20, "width": 40, "height": 40}}],
        "inlets": [{"name": "tube", "point": [0, 0]}],
        "skin_sheet": {"material": "00-30", "thickness": 2},
        "outer_sheet": {"material": "00-30", "thickness": 2}, "rim_bonded": true},
      "wear": {"anchor": {"station_mm": 100, "angle_deg": 0}},
      "inflation": [{"inlet": "tube", "pressure_kpa": 1}], "limits": {"use": "short hold"},
      "mesh": {"edge_mm": 12}, "solver": {"steps": 1}})");
    answer_ = run({"estimate", plan, "--out", path("out"), "--no-mesh-error", "--note"});
    ASSERT_TRUE(answer_.code == 0 || answer_.code == 4) << answer_.err;
  }
  // The PDF's words in reading order; none when there is no program to read them.
  std::optional<std::string> pdf_words() const {
    if (std::system("command -v pdftotext > /dev/null 2>&1") != 0) return std::nullopt;
    const std::string text = path("note.txt");
    if (std::system(("pdftotext '" + path("out/note.pdf") + "' '" + text + "'").c_str()) != 0) return "";
    return without_ligatures(bytes("note.txt"));
  }
  // A reader sees two letters where the font has one sign for both.
  static std::string without_ligatures(std::string text) {
    for (const auto& [sign, letters] : {std::pair{"\uFB00", "ff"}, {"\uFB01", "fi"}, {"\uFB02", "fl"}})
      for (auto at = text.find(sign); at != std::string::npos; at = text.find(sign, at))
        text.replace(at, std::string(sign).size(), letters);
    return text;
  }
  Answer answer_;
};

TEST_F(WrittenCautions, StandInTheSummaryTheNoteAndTheJson) {
  for (const char* name : {"summary.md", "summary.json", "note.md", "note.html"}) {
    const std::string text = bytes("out/" + std::string(name));
    EXPECT_EQ(missing_from(text, named_exclusions()), std::vector<std::string>{}) << name;
    EXPECT_EQ(missing_from(text, named_stop_signs()), std::vector<std::string>{}) << name;
  }
}

TEST_F(WrittenCautions, CanBeReadInThePdf) {
  const auto words = pdf_words();
  if (!words) GTEST_SKIP() << "NOT CHECKED: there is no pdftotext to read the PDF with";
  const std::string line = on_one_line(*words);
  EXPECT_EQ(missing_from(between(line, "Who must not take part", "Stop signs"), named_exclusions()),
            std::vector<std::string>{});
  EXPECT_EQ(missing_from(between(line, "Stop signs", "Tests before any person"), named_stop_signs()),
            std::vector<std::string>{});
}

TEST_F(WrittenCautions, OfTheTerminalSayThatItIsNoMedicalDeviceAndWhereTheRestStands) {
  EXPECT_NE(on_one_line(answer_.out)
                .find("Predicted by an uncalibrated model; not a medical device. Written to " + path("out")),
            std::string::npos)
      << answer_.out;
}

}  // namespace
}  // namespace wrapgauge
