#include "app/command/command_line.hpp"

#include <gtest/gtest.h>

#include <QImage>
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "model/core/file.hpp"
#include "tests/command/command_test.hpp"
#include "tests/io/summary_schema.hpp"

namespace wrapgauge {
namespace {

// A problem is told in one line, by the program's name, and leaves nothing on the results' stream.
void expect_one_sentence(const Answer& answer, int code) {
  EXPECT_EQ(answer.code, code) << answer.err;
  EXPECT_EQ(answer.out, "");
  EXPECT_EQ(answer.err.rfind("wrapgauge: ", 0), 0u) << answer.err;
  EXPECT_EQ(std::count(answer.err.begin(), answer.err.end(), '\n'), 1) << answer.err;
}

// Empty at the start and gone at the end of each test.
class CommandLine : public CommandTest {
 protected:
  // A small closed band with one chamber; solves in about a second.
  std::string small_plan(double pressure_kpa, const std::string& extra = "") const {
    write("band.json", R"({"wrapgauge-layout": 1, "name": "band",
      "outline": {"rectangle": {"x": 0, "y": 0, "width": 270, "height": 50, "corner_radius": 0}},
      "chambers": [{"name": "pad", "rectangle": {"x": 60, "y": 10, "width": 50, "height": 30, "corner_radius": 8}}],
      "inlets": [{"name": "valve", "point": [85, 25]}],
      "skin_sheet": {"material": "00-30", "thickness": 1.5},
      "outer_sheet": {"material": "A10", "thickness": 2},
      "backing": {"along": 1.5, "across": 1},
      "closure": {"from_x": 0, "stretch": 0.03}})");
    return write(
        "plan.json",
        R"({"wrapgauge-plan": 1, "name": "small band", "body": {"form": "cylinder", "part": "forearm"},
      "tissue": {"site": "forearm relaxed"}, "layout": {"file": "band.json"},
      "wear": {"anchor": {"station_mm": 120, "angle_deg": 90}, "layout_point_mm": [85, 25], "turn_deg": 0},
      "friction": 0.5, "inflation": [{"inlet": "valve", "pressure_kpa": )" +
            std::to_string(pressure_kpa) + R"(}], "limits": {"use": "short hold"},
      "mesh": {"edge_mm": 8})" +
            extra + "}");
  }
};

const std::vector<std::string> kResults = {"summary.json", "summary.md", "chambers.csv", "body.vtp",
                                           "layout.vtp",   "body.png",   "layout.png"};

TEST_F(CommandLine, EstimateWritesEveryResultAndSaysWhatItFound) {
  const Answer answer = run({"estimate", small_plan(1.0), "--out", path("a"), "--json"});
  ASSERT_TRUE(answer.code == kExitDone || answer.code == kExitAboveLimit) << answer.err;
  EXPECT_EQ(answer.err, "");
  for (const std::string& name : kResults) EXPECT_GT(bytes("a/" + name).size(), 100u) << name;
  EXPECT_EQ(answer.out, bytes("a/summary.json"));
  const auto json = nlohmann::json::parse(answer.out);
  EXPECT_NEAR(json["chambers"][0]["gauge_kPa"].get<double>(), 1.0, 1e-3);
  EXPECT_GT(json["chambers"][0]["mean_kPa"].get<double>(), 0.1);
  EXPECT_LT(json["audit"]["cut_balance"].get<double>(), 0.02);
  EXPECT_EQ(json["inputs"][0]["sha256"].get<std::string>().size(), 64u);
  EXPECT_EQ(json["above_limit"].get<bool>(), answer.code == kExitAboveLimit);
  test::expect_fits(test::summary_schema(), json, "");
}

TEST_F(CommandLine, SameInputGivesTheSameBytes) {
  const std::string plan = small_plan(1.0);
  ASSERT_NE(run({"estimate", plan, "--out", path("a"), "--no-mesh-error"}).code, kExitBadInput);
  ASSERT_NE(run({"estimate", plan, "--out", path("b"), "--no-mesh-error"}).code, kExitBadInput);
  for (const std::string& name : kResults) EXPECT_EQ(bytes("a/" + name), bytes("b/" + name)) << name;
}

TEST_F(CommandLine, PressureAboveTheLimitExitsWithFour) {
  const Answer answer = run({"estimate", small_plan(2.8), "--out", path("a"), "--no-mesh-error"});
  EXPECT_EQ(answer.code, kExitAboveLimit) << answer.err;
  EXPECT_TRUE(answer.out.starts_with("Above the limit in ")) << answer.out;
  EXPECT_NE(answer.out.find("\nabove limit  "), std::string::npos) << answer.out;
  EXPECT_NE(bytes("a/summary.md").find("ABOVE LIMIT"), std::string::npos);
}

TEST_F(CommandLine, SummaryNamesWhoMustNotTakePartAndNeverPromisesSafety) {
  ASSERT_NE(run({"estimate", small_plan(1.0), "--out", path("a"), "--no-mesh-error"}).code, kExitBadInput);
  const std::string page = bytes("a/summary.md");
  EXPECT_NE(page.find("Who must not take part"), std::string::npos);
  EXPECT_NE(page.find("not a medical device"), std::string::npos);
  EXPECT_NE(page.find("Ask a clinician"), std::string::npos);
  for (const char* promise : {" safe ", "safely", " safe."}) EXPECT_EQ(page.find(promise), std::string::npos);
}

TEST_F(CommandLine, ADeviceThatMayActAsATourniquetIsNeverCalledDone) {
  const Answer answer = run({"estimate", small_plan(6.0), "--out", path("a"), "--no-mesh-error"});
  EXPECT_EQ(answer.code, kExitStop) << answer.out << answer.err;
  EXPECT_NE(answer.out.find("Status: stopped: not to be worn."), std::string::npos);
  EXPECT_NE(bytes("a/summary.md").find("Status: stopped: not to be worn."), std::string::npos);
  EXPECT_EQ(nlohmann::json::parse(bytes("a/summary.json"))["status"], "stopped: not to be worn");
}

TEST_F(CommandLine, AnOverrideOfLimitsIsRefusedWithoutAReasonAndCarriedByEveryOutputWithOne) {
  auto limits = nlohmann::json::parse(*read_file(WRAPGAUGE_SOURCE_DIR "/resources/limits.json"));
  limits["rows"][3]["limit_kpa"] = 9;
  write("ours.json", limits.dump());
  const auto with_limits = [&](const std::string& words) {
    std::string plan = bytes("plan.json");
    const std::string before = "\"limits\": {\"use\": \"short hold\"";
    plan.replace(plan.find(before), before.size(), before + words);
    return write("own.json", plan);
  };
  small_plan(1.0);
  expect_one_sentence(run({"look", with_limits(", \"file\": \"ours.json\"")}), kExitBadInput);
  const Answer answer =
      run({"estimate", with_limits(", \"file\": \"ours.json\", \"override_reason\": \"bench dummy only\""),
           "--out", path("a"), "--no-mesh-error"});
  ASSERT_NE(answer.code, kExitBadInput) << answer.err;
  EXPECT_NE(answer.out.find("bench dummy only"), std::string::npos);
  EXPECT_NE(answer.out.find("not the program's own"), std::string::npos) << answer.out;
  for (const char* name : {"summary.md", "summary.json", "chambers.csv", "body.vtp", "layout.vtp"})
    EXPECT_NE(bytes("a/" + std::string(name)).find("bench dummy only"), std::string::npos) << name;
}

// Tables of one's own, as WRAPGAUGE_RESOURCES names their folder.
class OwnTables : public CommandLine {
 protected:
  void SetUp() override {
    CommandLine::SetUp();
    std::filesystem::create_directories(folder_ / "tables");
    for (const char* name : {"silicones", "tissues", "limits", "comparisons", "casting", "spread"}) {
      const std::string file = std::string(name) + ".json";
      std::filesystem::copy_file(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources" / file,
                                 folder_ / "tables" / file);
    }
    ::setenv("WRAPGAUGE_RESOURCES", path("tables").c_str(), 1);
  }
  void TearDown() override {
    ::unsetenv("WRAPGAUGE_RESOURCES");
    CommandLine::TearDown();
  }
  // The table of that name with `change` made in it.
  template <class Change>
  void change_table(const std::string& name, const Change& change) const {
    auto table = nlohmann::json::parse(bytes("tables/" + name));
    change(table);
    write("tables/" + name, table.dump());
  }
  std::string plan_with_reason(const std::string& reason) const {
    small_plan(1.0);
    std::string plan = bytes("plan.json");
    const std::string before = "\"limits\": {\"use\": \"short hold\"";
    plan.replace(plan.find(before), before.size(), before + ", \"override_reason\": \"" + reason + "\"");
    return write("reason.json", plan);
  }
};

TEST_F(OwnTables, ThatAreLaxerAreRefusedWithoutAReasonInWords) {
  change_table("limits.json", [](auto& table) { table["rows"][3]["limit_kpa"] = 100; });
  for (const std::string& plan : {small_plan(1.0), plan_with_reason("   ")})
    expect_one_sentence(run({"estimate", plan, "--out", path("a"), "--no-mesh-error"}), kExitBadInput);
  EXPECT_FALSE(std::filesystem::exists(folder_ / "a"));
}

TEST_F(OwnTables, ThatAreLaxerAreCarriedWithTheirReasonByEveryOutput) {
  change_table("limits.json", [](auto& table) { table["rows"][3]["limit_kpa"] = 100; });
  const Answer answer =
      run({"estimate", plan_with_reason("bench dummy only"), "--out", path("a"), "--no-mesh-error"});
  ASSERT_NE(answer.code, kExitBadInput) << answer.err;
  EXPECT_NE(answer.out.find("bench dummy only"), std::string::npos) << answer.out;
  for (const char* name : {"summary.md", "summary.json", "chambers.csv", "body.vtp", "layout.vtp"})
    EXPECT_NE(bytes("a/" + std::string(name)).find("bench dummy only"), std::string::npos) << name;
}

TEST_F(OwnTables, ThatDifferAtAllAreNamedByEveryOutput) {
  change_table("limits.json", [](auto& table) { table["rows"][3]["limit_kpa"] = 5; });
  change_table("tissues.json", [](auto& table) { table["sites"][0]["young_kpa"] = 99; });
  const Answer answer = run({"estimate", small_plan(1.0), "--out", path("a"), "--no-mesh-error"});
  ASSERT_NE(answer.code, kExitBadInput) << answer.err;
  for (const char* words :
       {"not the program's own: 1 of their numbers are stricter", "'tissues.json' is not the one"}) {
    for (const char* name : {"summary.md", "summary.json", "chambers.csv", "body.vtp", "layout.vtp"})
      EXPECT_NE(bytes("a/" + std::string(name)).find(words), std::string::npos) << name << ": " << words;
    EXPECT_NE(answer.out.find(std::string(words).substr(0, 20)), std::string::npos) << answer.out;
  }
}

TEST_F(OwnTables, ThatAreTheProgramsOwnAreNamedByNone) {
  const Answer answer = run({"estimate", small_plan(1.0), "--out", path("a"), "--no-mesh-error"});
  ASSERT_NE(answer.code, kExitBadInput) << answer.err;
  EXPECT_EQ(answer.out.find("program ships"), std::string::npos);
  EXPECT_TRUE(nlohmann::json::parse(bytes("a/summary.json"))["limits"]["tables_differ"].empty());
}

int pages_of(const std::string& pdf) {
  int pages = 0;
  for (std::size_t at = 0; (at = pdf.find("/Type /Page\n", at)) != std::string::npos; ++at) ++pages;
  return pages;
}

TEST_F(CommandLine, NoteIsTheSameBytesEachTimeAndBearsTheDayThatIsAskedFor) {
  const std::string plan = small_plan(1.0);
  for (const char* folder : {"a", "b"}) {
    const Answer answer = run({"note", plan, "--out", path(folder), "--date", "2026-11-29"});
    ASSERT_NE(answer.code, kExitBadInput) << answer.err;
    EXPECT_NE(answer.out.find("note.pdf"), std::string::npos);
  }
  const std::string pdf = bytes("a/note.pdf");
  EXPECT_EQ(pdf.rfind("%PDF-", 0), 0u);
  EXPECT_GT(pages_of(pdf), 2);
  EXPECT_NE(pdf.find("/CreationDate (D:20261129"), std::string::npos);
  EXPECT_NE(bytes("a/note.md").find("| 2026-11-29 |"), std::string::npos);
  for (const char* name : {"note.pdf", "note.md", "note.html", "note-place.png", "note-pressure.png"})
    EXPECT_EQ(bytes("a/" + std::string(name)), bytes("b/" + std::string(name))) << name;
  EXPECT_FALSE(std::filesystem::exists(folder_ / "a/summary.md"));
}

TEST_F(CommandLine, ADayThatIsNotOnTheCalendarIsRefusedAndNothingIsWritten) {
  const Answer answer = run({"note", small_plan(1.0), "--out", path("a"), "--date", "2026-02-30"});
  EXPECT_EQ(answer.code, kExitBadInput);
  EXPECT_NE(answer.err.find("'2026-02-30' is no day; write year-month-day, 2026-11-29."), std::string::npos)
      << answer.err;
  EXPECT_FALSE(std::filesystem::exists(folder_ / "a"));
}

TEST_F(CommandLine, EstimateWritesTheNoteWhenAsked) {
  const Answer answer = run({"estimate", small_plan(6.0), "--out", path("a"), "--no-mesh-error", "--note"});
  EXPECT_EQ(answer.code, kExitStop) << answer.err;
  EXPECT_NE(bytes("a/note.md").find("STOP: this device must not be worn as planned"), std::string::npos);
  EXPECT_GT(pages_of(bytes("a/note.pdf")), 2);
}

TEST_F(CommandLine, LookSaysWhatIsReadyAndWritesNothing) {
  const Answer answer = run({"look", small_plan(1.0)});
  EXPECT_EQ(answer.code, kExitDone) << answer.err;
  EXPECT_NE(answer.said().find("1 chamber fed by 1 inlet,"), std::string::npos) << answer.out;
  EXPECT_NE(answer.said().find("nothing has been solved"), std::string::npos);
}

TEST_F(CommandLine, LookNamesThePlaceAndDrawsItOnThePartAndOnTheWholeBody) {
  nlohmann::json plan =
      nlohmann::json::parse(bytes(std::filesystem::path(small_plan(1.0)).filename().string()));
  plan["body"] = {{"form", "forearm"}, {"sex", "male"}};
  plan["wear"]["anchor"]["angle_deg"] = 270.0;
  const Answer answer = run({"look", write("arm.json", plan.dump()), "--picture", path("arm.png")});
  EXPECT_EQ(answer.code, kExitDone) << answer.err;
  EXPECT_NE(answer.said().find("place: on the back, anchored at station"), std::string::npos) << answer.out;
  const QImage picture = QImage::fromData(QByteArray::fromStdString(bytes("arm.png")));
  ASSERT_FALSE(picture.isNull());
  const auto inked = [&](const QRect& area) {
    int count = 0;
    for (int y = area.top(); y <= area.bottom(); ++y)
      for (int x = area.left(); x <= area.right(); ++x)
        if (picture.pixelColor(x, y).lightness() < 120) ++count;
    return count;
  };
  EXPECT_GT(inked({30, 120, 560, 680}), 1000) << "the layout seen at the anchor";
  EXPECT_GT(inked({1186, 560, 200, 250}), 100) << "the layout on the whole body";
}

TEST_F(CommandLine, DemoPlansCanBeLookedAt) {
  ASSERT_EQ(run({"demo", path("demo")}).code, kExitDone);
  int plans = 0;
  for (const auto& file : std::filesystem::directory_iterator(folder_ / "demo/plans")) {
    if (!file.is_regular_file()) continue;  // the invented readings of one
    EXPECT_EQ(run({"look", file.path().string()}).code, kExitDone) << file.path();
    ++plans;
  }
  EXPECT_GE(plans, 2);
}

TEST_F(CommandLine, BodyReportsGirthsOfAFile) {
  // A square tube, 60 mm wide and 200 mm long, girth 240 mm.
  const std::string file =
      write("tube.obj",
            "v 0 0 0\nv 60 0 0\nv 60 60 0\nv 0 60 0\nv 0 0 200\nv 60 0 200\nv 60 60 200\n"
            "v 0 60 200\nf 1 2 6 5\nf 2 3 7 6\nf 3 4 8 7\nf 4 1 5 8\n");
  const Answer answer = run({"body", "check", file, "--unit", "mm", "--json"});
  ASSERT_EQ(answer.code, kExitDone) << answer.err;
  const auto json = nlohmann::json::parse(answer.out);
  EXPECT_NEAR(json["length_mm"].get<double>(), 200.0, 1e-3);
  ASSERT_EQ(json["girths"].size(), 11u);
  EXPECT_NEAR(json["girths"][5]["girth_mm"].get<double>(), 240.0, 0.01);
  EXPECT_EQ(run({"body", "check", file}).code, kExitDone);
}

TEST_F(CommandLine, BodyMakeWritesTheBodyItWasAskedFor) {
  const Answer answer =
      run({"body", "make", "calf", "--sex", "female", "--percentile", "5", "--side", "left", "--set",
           "edge=8", "--out", path("calf.ply"), "--picture", path("calf.png"), "--json"});
  ASSERT_EQ(answer.code, kExitDone) << answer.err;
  const auto json = nlohmann::json::parse(answer.out);
  EXPECT_NEAR(json["girths"][1]["asked_mm"].get<double>(), 328.0, 1e-3);  // ANSUR II, women, P5 of the calf
  EXPECT_NEAR(json["girths"][1]["made_mm"].get<double>(), 328.0, 0.6);
  EXPECT_FALSE(json["bony_sites"].empty());
  EXPECT_EQ(json["body"]["side"], "left");
  EXPECT_NE(json["caution"].get<std::string>().find("soldiers"), std::string::npos);
  EXPECT_GT(bytes("calf.png").size(), 1000u);
  const auto measured = nlohmann::json::parse(
      run({"body", "girths", path("calf.ply"), "--at", json["girths"][1]["station_mm"].dump(), "--axis", "0",
           "0", "1", "--picture", path("girths.png"), "--out", path("again.obj"), "--json"})
          .out);
  EXPECT_NEAR(measured["girths"][0]["girth_mm"].get<double>(), 328.0, 0.6);
  EXPECT_GT(bytes("girths.png").size(), 1000u);
  EXPECT_NE(bytes("again.obj").find("mm"), std::string::npos);
}

TEST_F(CommandLine, BodyMakeTakesTapeValuesAndSaysWhereTheRestComesFrom) {
  const Answer answer =
      run({"body", "make", "forearm", "--girths", "wrist=168,forearm=262", "--set", "length=250,edge=8"});
  ASSERT_EQ(answer.code, kExitDone) << answer.err;
  EXPECT_NE(answer.out.find("girth_wrist at 0.0 mm: asked 168.0, made 168.0 mm (0.00 %); as given"),
            std::string::npos)
      << answer.out;
  EXPECT_NE(answer.out.find("judgement: 0.94 of the widest"), std::string::npos) << answer.out;
  EXPECT_NE(answer.out.find("\"form\":\"forearm\""), std::string::npos) << answer.out;
  EXPECT_NE(run({"body", "make", "--list"}).out.find("head-band"), std::string::npos);
  EXPECT_NE(run({"body", "make", "torso", "--list"}).out.find("girth_waist"), std::string::npos);
}

TEST_F(CommandLine, BodyMakeInventsNoMeasure) {
  const auto expect = [](std::vector<std::string> arguments, const std::string& part) {
    arguments.insert(arguments.begin(), {"body", "make"});
    const Answer answer = run(arguments);
    expect_one_sentence(answer, kExitBadInput);
    EXPECT_NE(answer.err.find(part), std::string::npos) << answer.err;
  };
  expect({}, "name a form; there are: wrist, forearm");
  expect({"tail"}, "no body form 'tail'");
  expect({"forearm"}, "still needs length, girth_wrist, girth_forearm");
  expect({"forearm", "--percentile", "5"}, "--percentile needs --sex");
  expect({"forearm", "--sex", "male", "--percentile", "99.5"}, "percentile");
  expect({"upper-arm", "--sex", "male"}, "no relaxed upper arm");
  expect({"forearm", "--sex", "male", "--girths", "wrist"}, "'wrist' is not NAME=NUMBER");
  expect({"forearm", "--sex", "male", "--girths", "wrist=wide"}, "'wrist=wide' is not NAME=NUMBER");
  expect({"forearm", "--sex", "male", "--girths", "wrist=nan"}, "girth_wrist");
  expect({"forearm", "--sex", "male", "--girths", "wrist=170,wrist=171"}, "given twice");
  expect({"forearm", "--sex", "male", "--girths", "knee=170"}, "no parameter \"girth_knee\"");
  expect({"torso", "--sex", "male", "--side", "left"}, "no left and right");
  expect({"calf", "--sex", "male", "--out", "calf.step"}, ".step");
}

TEST_F(CommandLine, LookSaysWhoseMeasuresAFormTakes) {
  auto plan = nlohmann::json::parse(bytes(std::filesystem::path(small_plan(1.0)).filename().string()));
  plan["body"] = {{"form", "calf"}, {"sex", "female"}, {"percentile", 5}, {"side", "left"}};
  plan["wear"]["anchor"]["station_mm"] = 60;
  const Answer answer = run({"look", write("her.json", plan.dump())});
  EXPECT_NE(answer.said().find(
                "form 'calf', left; measures not given are those of women at percentile 5; it brings"),
            std::string::npos)
      << answer.out << answer.err;
}

TEST_F(CommandLine, BodyGirthsOffTheBodyAreRefused) {
  ASSERT_EQ(run({"body", "make", "cylinder", "--set", "edge=10", "--out", path("tube.stl")}).code, kExitDone);
  const Answer off = run({"body", "girths", path("tube.stl"), "--at", "50", "500"});
  expect_one_sentence(off, kExitBadInput);
  EXPECT_NE(off.err.find("500 mm lies off the body, which is 200.0 mm long"), std::string::npos) << off.err;
  const Answer row = run({"body", "girths", path("tube.stl"), "--every", "50"});
  EXPECT_EQ(row.code, kExitDone) << row.err;
  EXPECT_NE(row.out.find("at 50.0 mm: 251.3 mm (one loop)"), std::string::npos) << row.out;
  expect_one_sentence(run({"body", "girths", path("tube.stl"), "--every", "50", "--at", "10"}),
                      kExitBadInput);
}

TEST_F(CommandLine, BadInputsExitWithTwoAndOneSentence) {
  small_plan(1.0);
  expect_one_sentence(run({"estimate", path("missing.json"), "--out", path("a")}), kExitBadInput);
  expect_one_sentence(run({"look", write("broken.json", "{\"wrapgauge-plan\": 1,")}), kExitBadInput);
  expect_one_sentence(run({"look", small_plan(1.0, ", \"colour\": 3")}), kExitBadInput);
  expect_one_sentence(run({"body", "check", write("empty.stl", "")}), kExitBadInput);
  expect_one_sentence(run({"body", "check", write("bytes.ply", std::string("ply\n\0\xff\x01", 7))}),
                      kExitBadInput);
}

TEST_F(CommandLine, BadOptionsExitWithTwoAndOneSentence) {
  expect_one_sentence(run({}), kExitBadInput);
  expect_one_sentence(run({"press"}), kExitBadInput);
  expect_one_sentence(run({"estimate", "plan.json"}), kExitBadInput);
  expect_one_sentence(run({"estimate", "plan.json", "--out", "a", "--edge-mm", "0"}), kExitBadInput);
  expect_one_sentence(run({"body", "check", "limb.obj", "--unit", "foot"}), kExitBadInput);
}

TEST_F(CommandLine, HelpShowsExamplesAndExitCodes) {
  const Answer all = run({"--help"});
  EXPECT_EQ(all.code, kExitDone);
  EXPECT_NE(all.out.find("Exit codes, of every command:"), std::string::npos);
  const std::vector<std::vector<std::string>> commands{
      {"estimate"}, {"note"}, {"look"}, {"body", "check"}, {"body", "make"}, {"body", "girths"}, {"demo"}};
  for (std::vector<std::string> command : commands) {
    std::string example = "  wrapgauge";
    for (const std::string& word : command) example += " " + word;
    command.push_back("--help");
    const Answer one = run(command);
    EXPECT_EQ(one.code, kExitDone);
    EXPECT_NE(one.out.find(example), std::string::npos) << one.out;
  }
}

TEST_F(CommandLine, AnOutputFolderThatCannotBeMadeIsNamed) {
  const std::string in_the_way = write("a", "a file");
  const Answer answer = run({"estimate", small_plan(1.0), "--out", in_the_way + "/b", "--no-mesh-error"});
  expect_one_sentence(answer, kExitBadInput);
  EXPECT_NE(answer.err.find(in_the_way), std::string::npos);
}

}  // namespace
}  // namespace wrapgauge
