// Who can wear it, as a user meets it: lists, percentiles, and what is refused.

#include <nlohmann/json.hpp>

#include "app/command/exit_code.hpp"
#include "bodyforms/anthropometry.hpp"
#include "tests/command/command_test.hpp"

namespace wrapgauge {
namespace {

class PeopleCommands : public CommandTest {
 protected:
  std::string plan() const { return WRAPGAUGE_SOURCE_DIR "/resources/plans/forearm-cuff.json"; }
  Answer people(const std::string& out, std::vector<std::string> more) const {
    std::vector<std::string> all{"people", plan(), "--out", path(out), "--preview-mm", "14", "--no-ceiling"};
    all.insert(all.end(), more.begin(), more.end());
    return run(all);
  }
  // One sentence that holds `words`, and nothing solved or written.
  void expect_refused_list(const std::string& csv, const std::string& words) const {
    const Answer answer = people("refused", {"--list", write("list.csv", csv)});
    EXPECT_EQ(answer.code, kExitBadInput) << csv;
    EXPECT_NE(unwrapped(answer.err).find(words), std::string::npos) << answer.err;
    EXPECT_FALSE(std::filesystem::exists(path("refused")));
  }
};

TEST_F(PeopleCommands, AListIsTriedAndItsFilesAreWritten) {
  const std::string list = write("list.csv",
                                 "id,girth_wrist,girth_forearm,girth_elbow,length\n"
                                 "anna,165,262,247,240\n"
                                 "\"ben, tall\",170,276,260,265\n"
                                 "carl,185,360,340,280\n");
  const Answer answer = people("who", {"--list", list, "--json"});
  ASSERT_EQ(answer.code, kExitAboveLimit) << answer.err;
  const auto json = nlohmann::json::parse(answer.out);
  ASSERT_EQ(json["people"].size(), 3u);
  EXPECT_EQ(json["people"][1]["id"], "ben, tall");
  EXPECT_LT(json["people"][0]["girth_mm"].get<double>(), json["people"][1]["girth_mm"].get<double>());
  for (const char* name : {"people.csv", "people.json", "people.md", "people.png"})
    EXPECT_TRUE(std::filesystem::exists(path(std::string("who/") + name))) << name;
  // Started again, nothing is solved anew and the bytes stay.
  const std::string before = bytes("who/people.json"), runs = bytes("who/runs/part-1-of-1.jsonl");
  EXPECT_EQ(people("who", {"--list", list}).code, kExitAboveLimit);
  EXPECT_EQ(bytes("who/people.json"), before);
  EXPECT_EQ(bytes("who/runs/part-1-of-1.jsonl"), runs);
}

TEST_F(PeopleCommands, InchesInAColumnOfInchesAreTheSamePerson) {
  const Answer in_mm =
      people("mm", {"--list", write("a.csv", "id,sex,girth_forearm\na,male,275\n"), "--json"});
  const Answer in_inches = people(
      "in", {"--list", write("b.csv", "id,sex,girth_forearm_in\na,male,10.826771653543307\n"), "--json"});
  ASSERT_FALSE(in_mm.out.empty()) << in_mm.err;
  ASSERT_FALSE(in_inches.out.empty()) << in_inches.err;
  EXPECT_NEAR(nlohmann::json::parse(in_mm.out)["people"][0]["girth_mm"].get<double>(),
              nlohmann::json::parse(in_inches.out)["people"][0]["girth_mm"].get<double>(), 1e-6);
}

TEST_F(PeopleCommands, BadListsAreRefusedInOneSentence) {
  expect_refused_list("id,sex,girth_forearm\na,male,10.6\n", "girth_forearm 10.6: is this inches?");
  expect_refused_list("id,sex,girth_forearm\na,male,27.5\n", "girth_forearm 27.5: is this centimetres?");
  expect_refused_list("id,sex,girth_forearm\na,male,275\nb,male,27,5\n", "Line 3 of list.csv has 4 cells");
  expect_refused_list("id,sex,girth_forearm\na,male,\"275,5\"\n", "with a point for its decimals");
  expect_refused_list("id;sex;girth_forearm\na;male;275\n", "semicolons");
  expect_refused_list("id,sex,girth_forearm\na,male,275\na,male,280\n",
                      "the id 'a' stands in line 2 already");
  expect_refused_list("id,sex,girth_forearm\n\x02,male,275\n", "Line 2 of list.csv: the person has no id");
  expect_refused_list("sex,girth_forearm\nmale,275\n", "no column 'id'");
  expect_refused_list("id,sex,shoe\na,male,43\n", "a column 'shoe' that is no measure here");
  expect_refused_list("id,sex,forearm,girth_forearm\na,male,270,275\n", "girth_forearm in two columns");
  expect_refused_list("id,sex\na,male\n", "gives no measures");
  expect_refused_list("id,girth_forearm\na,275\n", "no sex is given, so that the survey cannot supply");
  expect_refused_list("id,sex,girth_forearm\na,male,2750\n", "Line 2 of list.csv: \"girth_forearm\"");
  expect_refused_list("id,file\na,arm.stl\n", "Line 2 of list.csv: Cannot read");
  expect_refused_list("id,file,girth_forearm\na,arm.stl,275\n", "body files and measures");
  expect_refused_list("", "lists no people");
  expect_refused_list("id,sex,girth_forearm\n", "lists no people");
  expect_refused_list("id,sex,girth_forearm\n\"a,male,275\n", "never ends");
  std::string many = "id,sex,girth_forearm\n";
  for (int i = 0; i < 100000; ++i) many += std::to_string(i) + ",male,275\n";
  expect_refused_list(many, "more than 50000 people");
}

TEST_F(PeopleCommands, OptionsThatDoNotGoTogetherAreRefused) {
  const std::string list = write("list.csv", "id,sex,girth_forearm\na,male,275\n");
  EXPECT_EQ(people("x", {"--list", list, "--percentiles", "5"}).code, kExitBadInput);
  EXPECT_EQ(people("x", {"--percentiles", "5,5"}).code, kExitBadInput);
  EXPECT_EQ(people("x", {"--percentiles", "0.5"}).code, kExitBadInput);
  EXPECT_EQ(people("x", {"--part", "3/2"}).code, kExitBadInput);
  EXPECT_EQ(people("x", {"--rows-mm", "250,250"}).code, kExitBadInput);
}

// ANSUR II, percentiles as in the table of bodyforms/anthropometry (confirmed there): the share of the
// survey's people whose measured girth lies in a range is that of their percentiles.
TEST_F(PeopleCommands, GirthsOfThePercentilesAreThoseOfTheSurvey) {
  const Answer answer = people("survey", {"--percentiles", "25,75", "--sex", "male", "--json"});
  const auto json = nlohmann::json::parse(answer.out);
  ASSERT_EQ(json["people"].size(), 2u);
  EXPECT_EQ(json["people"][0]["id"], "men p25");
  for (const int p : {0, 1}) {
    const double survey =
        body_measure_mm("forearmcircumferenceflexed", Sex::kMale, p == 0 ? 25.0 : 75.0).value();
    // At the anchor, near where the form is widest; the mesh's girth is a polygon's.
    EXPECT_NEAR(json["people"][static_cast<std::size_t>(p)]["girth_mm"].get<double>() / survey, 1.0, 0.02);
  }
}

}  // namespace
}  // namespace wrapgauge
