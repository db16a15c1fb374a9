// What the fit alone tells is said by `look` as `estimate` says it beside solved figures. The plans are the
// smallest that show each fault.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>

#include "tests/command/command_test.hpp"

namespace wrapgauge {
namespace {

std::string fit_plan(const std::string& name) {
  return WRAPGAUGE_SOURCE_DIR "/tests/data/wrap/" + name + ".json";
}

class FitWords : public CommandTest {
 protected:
  Answer look(const std::string& name) const { return run({"look", fit_plan(name)}); }
  Answer estimate(const std::string& name) const {
    return run({"estimate", fit_plan(name), "--out", path("out"), "--no-mesh-error"});
  }

  // `sentence` as a warning by both.
  void both_warn(const std::string& name, const std::string& sentence) const {
    const Answer looked = look(name);
    EXPECT_EQ(looked.code, kExitDone) << looked.err;
    const std::string warnings = unwrapped(looked.out);
    EXPECT_NE(warnings.find(sentence), std::string::npos) << warnings;
    const std::size_t from = warnings.find("warning: ");
    ASSERT_NE(from, std::string::npos) << warnings;
    // What `look` alone says follows: what fastening would press with, and that it is ready.
    const std::size_t to = std::min(warnings.find(" fastening: ", from), warnings.find(" ready: ", from));
    const std::string whole = warnings.substr(from + 9, to - from - 9);
    const Answer solved = estimate(name);
    EXPECT_NE(unwrapped(solved.out).find(whole), std::string::npos) << whole << "\n"
                                                                    << solved.out << solved.err;
  }

  // Refused by both in one sentence, with nothing written.
  void both_refuse(const std::string& name, const std::string& sentence) const {
    for (const Answer& answer : {look(name), estimate(name)}) {
      EXPECT_EQ(answer.code, kExitBadInput);
      EXPECT_EQ(answer.out, "");
      EXPECT_NE(answer.err.find(sentence), std::string::npos) << answer.err;
    }
    EXPECT_FALSE(std::filesystem::exists(path("out")));
  }
};

TEST_F(FitWords, AClosureElevenPercentTightIsSaidToBeTightWithItsStations) {
  both_warn(
      "tight",
      "fastened at a closing length of 225.2 mm and deflated: at the distal edge 11.0 % at station 80.0 mm "
      "(girth 250.0 mm), at the anchor 11.0 % at station 100.0 mm (girth 250.0 mm), at the proximal edge "
      "11.0 % at station 120.0 mm (girth 250.0 mm). The most, 11.0 % at station");
}

// 4 % is not called tight, and presses hard all the same where the cloth is stiff: within a fifth of the
// solve.
TEST_F(FitWords, AStiffBackingPressesAtAStretchThatIsNotTightAndLookSaysSo) {
  const std::string words = unwrapped(look("stiff").out);
  EXPECT_EQ(words.find("warning:"), std::string::npos) << words;
  std::smatch told;
  ASSERT_TRUE(std::regex_search(words, told, std::regex("it would press with about ([0-9.]+) kPa"))) << words;
  EXPECT_NE(estimate("stiff").code, kExitBadInput);
  const auto solved = nlohmann::json::parse(bytes("out/summary.json"));
  const double mean_kpa = solved["chambers"][0]["mean_kPa"].get<double>();  // of it, 0.5 kPa is air
  EXPECT_GT(mean_kpa, 5.0);
  EXPECT_NEAR(std::stod(told[1]), mean_kpa, 0.2 * mean_kpa);
}

// A mean of 3 % hides it.
TEST_F(FitWords, UnevenStretchIsSaidAtBothEdgesWithTheTaperThatEvensItOut) {
  both_warn("uneven", "It is uneven: most and least lie");
  const std::string words = unwrapped(look("uneven").out);
  EXPECT_NE(words.find("at the anchor 3.1 % at station 100.0 mm"), std::string::npos) << words;
  EXPECT_NE(words.find("a taper near"), std::string::npos) << words;
  EXPECT_NE(words.find("fastening: at station 139.4 mm it would press with about"), std::string::npos)
      << words;
}

TEST_F(FitWords, ATurnByHalfClosesAndTellsTheSameGirthsAsUpright) {
  const Answer turned = look("turned_half");
  ASSERT_EQ(turned.code, kExitDone) << turned.err;
  auto plan = nlohmann::json::parse(*read_file(fit_plan("turned_half")));
  plan["wear"]["turn_deg"] = 0;
  const Answer upright = run({"look", write("upright.json", plan.dump())});
  ASSERT_EQ(upright.code, kExitDone) << upright.err;
  const auto girths = [](const Answer& answer) {
    const std::string words = unwrapped(answer.out);
    const std::size_t from = words.find("Stretch round the body");
    return from == std::string::npos ? std::string() : words.substr(from, words.find(").", from) - from);
  };
  EXPECT_NE(girths(turned), "");
  EXPECT_EQ(girths(turned), girths(upright));
}

TEST_F(FitWords, EdgesThatDoNotMeetLeaveASlitThatIsMeasured) {
  both_warn(
      "slit",
      "The edges do not meet: at station 100.0 mm a slit of 30.0 mm stays open, 12.0 % of the girth of 250.0 "
      "mm, and nothing that pulls them together is calculated.");
}

TEST_F(FitWords, ClosingLinesThatMeetOverAPartOfTheHeightLeaveASlitBesideThem) {
  both_warn("slit_beside",
            "The closing lines meet over 15.0 mm of the layout's 60.0 mm: beside them a slit stays");
}

TEST_F(FitWords, ATailThatGoesRoundAgainIsSaidToBeLeftOut) {
  both_warn("tail",
            "the layout goes on for 275.0 mm, 1.1 times round the girth of 250.0 mm at station 100.0 mm");
}

TEST_F(FitWords, ALayoutOnABallIsSaidToBePressedTogetherAndWhere) {
  both_warn("ball", "Laid on, the layout is stretched by between -");
}

TEST_F(FitWords, ALayoutWoundRoundTwiceIsRefused) {
  both_refuse("wound_twice", "The closing length of 500.0 mm is 2.0 times the girth of 250.0 mm at station");
}

TEST_F(FitWords, ALayoutWithoutClosureThatLapsItselfIsRefused) {
  both_refuse("lap", "the layout overlaps itself: round station 100.0 mm, where the girth is 250.0 mm");
}

TEST_F(FitWords, ALayoutPointOffTheLayoutIsRefusedWithHowFarOff) {
  both_refuse("off_point",
              "(112.0, 65.0) mm, lies 25.0 mm off the layout, which reaches from x = 0.0 to 240.0 mm");
}

// Whatever is printed of one plan names each girth with its station, and one station has one girth.
TEST_F(FitWords, EverySentenceAboutGirthsOfOnePlanAgrees) {
  std::string all = unwrapped(look("uneven").out) + " ";
  const Answer solved =
      run({"estimate", fit_plan("uneven"), "--out", path("out"), "--no-mesh-error", "--full", "--note"});
  ASSERT_NE(solved.code, kExitBadInput) << solved.err;
  all += unwrapped(solved.out) + " " + unwrapped(bytes("out/summary.md")) + " " +
         unwrapped(bytes("out/note.md"));
  std::map<std::string, std::set<std::string>> girths_at;
  const std::regex said(R"(at station ([0-9.]+) mm \(girth ([0-9.]+) mm)");
  for (std::sregex_iterator found(all.begin(), all.end(), said), end; found != end; ++found)
    girths_at[(*found)[1]].insert((*found)[2]);
  EXPECT_EQ(girths_at.size(), 3U);
  for (const auto& [station, girths] : girths_at) EXPECT_EQ(girths.size(), 1U) << station;
  EXPECT_EQ(all.find("would meet without stretching"), std::string::npos);
  const std::regex bare("[Gg]irth (at the anchor|there) ");
  EXPECT_FALSE(std::regex_search(all, bare)) << "a girth without its station";
}

// Said on the error stream before the solve starts, so before its folder is found wanting; no file has it.
TEST_F(FitWords, ASolveThatWouldTakeMinutesIsForecastBeforeItStarts) {
  auto plan = nlohmann::json::parse(*read_file(fit_plan("slit")));
  plan["mesh"]["edge_mm"] = 1.5;
  plan["solver"]["steps"] = 6;
  plan["layout"]["rim_bonded"] = false;
  const std::string file = write("fine.json", plan.dump());
  const std::string forecast = "time: solving this may take about";
  EXPECT_NE(unwrapped(run({"look", file}).out).find(forecast), std::string::npos);
  const Answer answer =
      run({"estimate", file, "--out", write("taken", "a file, no folder"), "--no-mesh-error"});
  EXPECT_EQ(answer.code, kExitBadInput);
  EXPECT_NE(unwrapped(answer.err).find(forecast), std::string::npos) << answer.err;
  EXPECT_EQ(unwrapped(look("slit").out).find(forecast), std::string::npos) << "a short one is not forecast";
}

}  // namespace
}  // namespace wrapgauge
