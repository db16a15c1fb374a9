// Names and sentences out of files, on every surface that a command writes.

#include <QXmlStreamReader>
#include <algorithm>

#include "tests/command/command_test.hpp"
#include "tests/command/small_band_plan.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::json;

constexpr const char* kHostile = "\x1b[31m\\[pad](https://a.example)<b> & | -- \xE2\x80\xAE=1";

class WordsFromFiles : public CommandTest {
 protected:
  // Every word that a plan may give is hostile; the limits are laxer, for a hostile reason.
  std::string hostile_plan() const {
    Json plan = small_band_plan(1.0);
    plan["name"] = kHostile;
    plan["layout"]["name"] = kHostile;
    plan["layout"]["chambers"][0]["name"] = std::string("  =") + kHostile;
    plan["layout"]["inlets"][0]["name"] = kHostile;
    plan["inflation"][0]["inlet"] = kHostile;
    Json limits = Json::parse(*read_file(WRAPGAUGE_SOURCE_DIR "/resources/limits.json"));
    limits["model_factor"] = 1.2;
    write("limits.json", limits.dump());
    plan["limits"]["file"] = "limits.json";
    plan["limits"]["override_reason"] = std::string("---> ") + kHostile + " -";
    return write("plan.json", plan.dump());
  }
};

bool holds_control(const std::string& text) {
  return std::any_of(
             text.begin(), text.end(),
             [](char c) { return (static_cast<unsigned char>(c) < 0x20 && c != '\n') || c == 0x7F; }) ||
         text.find("\xE2\x80\xAE") != std::string::npos;
}

// Whether a mark of Markdown stands there without a backslash of its own before it.
bool holds_bare(const std::string& text, const std::string& mark) {
  for (std::size_t at = 0; (at = text.find(mark, at)) != std::string::npos; ++at) {
    std::size_t slashes = 0;
    while (slashes < at && text[at - 1 - slashes] == '\\') ++slashes;
    if (slashes % 2 == 0) return true;
  }
  return false;
}

TEST_F(WordsFromFiles, ReachNoTerminalWithControlCharacters) {
  const std::string plan = hostile_plan();
  for (const auto& command : std::vector<std::vector<std::string>>{
           {"look", plan}, {"estimate", plan, "--out", path("out"), "--no-mesh-error", "--full"}}) {
    const Answer answer = run(command);
    ASSERT_LE(answer.code, 5) << answer.err;
    EXPECT_NE(answer.code, 2) << answer.err;
    EXPECT_FALSE(holds_control(answer.out)) << command[0];
    EXPECT_FALSE(holds_control(answer.err)) << command[0];
  }
  const Answer refused = run({"look", path("no\x1b[31msuch.json")});
  EXPECT_EQ(refused.code, 2);
  EXPECT_FALSE(holds_control(refused.err));
}

TEST_F(WordsFromFiles, AreNoLinkAndNoHtmlInMarkdown) {
  const Answer answer = run({"estimate", hostile_plan(), "--out", path("out"), "--no-mesh-error", "--note"});
  ASSERT_NE(answer.code, 2) << answer.err;
  for (const char* page : {"out/summary.md", "out/note.md"}) {
    const std::string text = bytes(page);
    ASSERT_NE(text.find("a.example"), std::string::npos) << page;
    for (const char* mark : {"[pad", "<b>", "://"})
      EXPECT_FALSE(holds_bare(text, mark)) << page << " " << mark;
    EXPECT_FALSE(holds_control(text)) << page;
  }
  EXPECT_EQ(bytes("out/note.html").find("<b> &"), std::string::npos);
}

TEST_F(WordsFromFiles, AreNoFormulaInASpreadsheet) {
  ASSERT_NE(run({"estimate", hostile_plan(), "--out", path("out"), "--no-mesh-error"}).code, 2);
  EXPECT_NE(bytes("out/chambers.csv").find("\n\"'  ="), std::string::npos);
}

TEST_F(WordsFromFiles, LeaveTheMapsWellFormed) {
  ASSERT_NE(run({"estimate", hostile_plan(), "--out", path("out"), "--no-mesh-error"}).code, 2);
  for (const char* map : {"out/body.vtp", "out/layout.vtp"}) {
    const std::string text = bytes(map);
    ASSERT_NE(text.find("a.example"), std::string::npos) << map;
    QXmlStreamReader reader(QByteArray::fromStdString(text));
    while (!reader.atEnd()) reader.readNext();
    EXPECT_FALSE(reader.hasError()) << map << ": " << reader.errorString().toStdString();
  }
}

TEST_F(WordsFromFiles, WithTheCharacterNulAreRefused) {
  Json plan = small_band_plan(1.0);
  plan["layout"]["chambers"][0]["name"] = std::string("pa\0d", 4);
  const Answer answer = run({"look", write("plan.json", plan.dump())});
  EXPECT_EQ(answer.code, 2);
  EXPECT_NE(answer.err.find("NUL"), std::string::npos) << answer.err;
  const Answer people =
      run({"people", write("fine.json", small_band_plan(1.0).dump()), "--list",
           write("people.csv", std::string("id,diameter\na\0b,80\n", 19)), "--out", path("who")});
  EXPECT_EQ(people.code, 2);
  EXPECT_NE(people.err.find("NUL"), std::string::npos) << people.err;
}

TEST_F(WordsFromFiles, NameFilesOutsideTheFolderOfThePlanAndThatIsSaidOnce) {
  Json plan = small_band_plan(1.0);
  std::filesystem::create_directories(folder_ / "plans/deep");
  write("band.json", plan["layout"].dump());
  plan["layout"] = {{"file", "deep/../../band.json"}};
  const std::string file = write("plans/plan.json", plan.dump());
  const Answer answer = run({"estimate", file, "--out", path("out"), "--no-mesh-error", "--note"});
  ASSERT_NE(answer.code, 2) << answer.err;
  const std::string said = "plan.json reads a file outside its folder: deep/../../band.json.";
  const auto first = unwrapped(answer.err).find(said);
  ASSERT_NE(first, std::string::npos) << answer.err;
  EXPECT_EQ(unwrapped(answer.err).find("outside its folder", first + said.size()), std::string::npos);
  plan["layout"] = {{"file", path("band.json")}};
  EXPECT_NE(
      unwrapped(run({"look", write("plans/absolute.json", plan.dump())}).err).find("outside its folder"),
      std::string::npos);
  plan["layout"] = {{"file", "deep/../band.json"}};
  write("plans/band.json", bytes("band.json"));
  EXPECT_EQ(run({"look", write("plans/inside.json", plan.dump())}).err, "");
}

}  // namespace
}  // namespace wrapgauge
