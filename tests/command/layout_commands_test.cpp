#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "model/core/file.hpp"
#include "model/layout/layout_json.hpp"
#include "tests/command/command_test.hpp"

namespace wrapgauge {
namespace {

class LayoutCommands : public CommandTest {
 protected:
  std::string make(const std::string& form, const std::vector<std::string>& more = {}) const {
    std::vector<std::string> arguments = {"layout", "make", form, "--out", path(form + ".json")};
    arguments.insert(arguments.end(), more.begin(), more.end());
    const Answer answer = run(arguments);
    EXPECT_EQ(answer.code, 0) << answer.err;
    return path(form + ".json");
  }
  // A plan that wears a made cuff on a made forearm.
  std::string cuff_plan(const std::string& inlet_site = "[60, 0, 165]") const {
    make("cuff");
    return write("plan.json", R"({"wrapgauge-plan": 1, "name": "cuff", "body": {"form": "forearm"},
      "tissue": {"site": "forearm relaxed"}, "layout": {"file": "cuff.json"},
      "bony_sites": [{"name": "test site", "point_mm": )" +
                                  inlet_site +
                                  R"(, "radius_mm": 15, "tissue_depth_mm": 4}],
      "wear": {"anchor": {"station_mm": 165, "angle_deg": 0}},
      "inflation": [{"inlet": "row 1", "pressure_kpa": 2}], "limits": {"use": "short hold"}})");
  }
  // A square prism of 50 x 50 mm and 200 mm height: girth 200 mm everywhere.
  std::string prism() const {
    return write("prism.obj",
                 "v 0 0 0\nv 50 0 0\nv 50 50 0\nv 0 50 0\nv 0 0 200\nv 50 0 200\nv 50 50 200\nv 0 50 200\n"
                 "f 1 2 6 5\nf 2 3 7 6\nf 3 4 8 7\nf 4 1 5 8\n");
  }
};

TEST_F(LayoutCommands, EveryMadeLayoutPassesTheCheckAndSaysItsSilicone) {
  for (const char* form : {"cuff", "sleeve", "graduated-sleeve", "round-pad", "quilted-pack"}) {
    const Answer answer = run({"layout", "check", make(form)});
    EXPECT_EQ(answer.code, 0) << form << ": " << answer.out << answer.err;
    EXPECT_NE(answer.out.find("silicone: outer sheet, "), std::string::npos) << answer.out;
    EXPECT_NE(answer.out.find("Keeps to every rule. "), std::string::npos) << answer.out;
  }
}

// Chambers so narrow that the channels' ends nearly meet in them, and so short that the inlet has little
// room.
TEST_F(LayoutCommands, MadeLayoutsOfManySmallChambersRaiseNothing) {
  for (const std::vector<std::string>& more :
       {std::vector<std::string>{"--chambers", "12"}, {"--chambers", "12", "--bands", "3"}}) {
    const Answer answer = run({"layout", "check", make("sleeve", more)});
    EXPECT_EQ(answer.code, 0) << answer.out;
  }
  const Answer answer = run({"layout", "check", make("cuff", {"--rows", "3"})});
  EXPECT_EQ(answer.code, 0) << answer.out;
}

// 00-30 at 1.5 mm: 264.7 x 100 mm need 48.9 g, and with a border of 20 mm 78.1 g.
TEST_F(LayoutCommands, CheckTakesTheTrimBorderAndTheFusingLayerThatOneSets) {
  const std::string layout = make("cuff", {"--stretch", "0.02"});
  const Answer bare = run({"layout", "check", layout, "--trim", "0", "--fusing", "0"});
  EXPECT_NE(bare.out.find("silicone: skin sheet, 00-30, 1.5 mm: mix about 50 g (45 mL)"), std::string::npos)
      << bare.out;
  EXPECT_EQ(bare.out.find("fusing layer"), std::string::npos) << bare.out;
  const Answer wide = run({"layout", "check", layout, "--trim", "20"});
  EXPECT_NE(wide.out.find("silicone: skin sheet, 00-30, 1.5 mm: mix about 80 g"), std::string::npos)
      << wide.out;
  EXPECT_NE(wide.out.find("silicone: fusing layer, A10, 0.5 mm"), std::string::npos) << wide.out;
  const Answer refused = run({"layout", "check", layout, "--trim", "-1"});
  EXPECT_EQ(refused.code, 2);
  EXPECT_NE(refused.err.find("--trim"), std::string::npos) << refused.err;
}

TEST_F(LayoutCommands, MakeMeasuresGirthsOnABody) {
  prism();
  const std::vector<std::string> body = {"--body", path("prism.obj"), "--station", "100"};
  make("cuff", {"--body", path("prism.obj"), "--station", "100", "--stretch", "0", "--height", "80"});
  EXPECT_NE(bytes("cuff.json").find("200.0"), std::string::npos);
  const Answer off = run({"layout", "make", "sleeve", "--body", path("prism.obj"), "--station", "60",
                          "--height", "160", "--out", path("x.json")});
  EXPECT_EQ(off.code, 2);
  EXPECT_NE(off.err.find("no single closed section at -20.0 mm"), std::string::npos) << off.err;
  EXPECT_FALSE(std::filesystem::exists(path("x.json")));
  const Answer half = run({"layout", "make", "cuff", "--station", "60", "--out", path("x.json")});
  EXPECT_EQ(half.code, 2);
  EXPECT_NE(half.err.find("go together"), std::string::npos) << half.err;
}

TEST_F(LayoutCommands, ACuffMadeOnATaperedBodyTapersWithIt) {
  ASSERT_EQ(run({"body", "make", "cone", "--out", path("cone.obj")}).code, 0);
  const Answer made = run({"layout", "make", "cuff", "--body", path("cone.obj"), "--station", "100",
                           "--height", "60", "--out", path("cuff.json")});
  EXPECT_EQ(made.code, 0) << made.err;
  EXPECT_NE(made.out.find("growth measured from 70.0 mm to 130.0 mm: "), std::string::npos) << made.out;
  EXPECT_GT(nlohmann::json::parse(bytes("cuff.json"))["closure"]["taper"].get<double>(), 0.05);
}

TEST_F(LayoutCommands, ABodyIsReadInTheUnitAndAlongTheAxisThatAreStated) {
  prism();
  const auto girth = [&](const std::vector<std::string>& more) {
    std::vector<std::string> arguments = {"layout", "make",         "cuff",      "--body", path("prism.obj"),
                                          "--out",  path("c.json"), "--station", "100"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return run(arguments);
  };
  EXPECT_NE(girth({"--height", "80"}).out.find("girth measured at 100.0 mm: 200.0 mm"), std::string::npos);
  // In inches the same numbers are a body of 5 m, which no limb has.
  const Answer inches = girth({"--unit", "in"});
  EXPECT_EQ(inches.code, 2);
  EXPECT_NE(inches.err.find("in the stated unit in"), std::string::npos) << inches.err;
  const Answer across = girth({"--axis", "1", "0", "0", "--height", "20"});
  EXPECT_EQ(across.out.find("girth measured at 100.0 mm: 200.0 mm"), std::string::npos) << across.out;
  const Answer alone = run({"layout", "make", "cuff", "--unit", "in", "--out", path("c.json")});
  EXPECT_EQ(alone.code, 2);
  EXPECT_NE(alone.err.find("name it with --body"), std::string::npos) << alone.err;
}

// Fastened and not inflated, each presses within the limits on the body that it was made for.
TEST_F(LayoutCommands, AMadeLayoutIsWithinTheLimitsWhenFastenedAndDeflated) {
  struct Made {
    std::string layout, form, tissue, height;
    double station_mm;
  };
  for (const Made& made :
       {Made{"cuff", "forearm", "forearm relaxed", "80", 150.0},
        Made{"cuff", "wrist", "wrist dorsal", "40", 45.0}, Made{"sleeve", "calf", "calf", "120", 150.0},
        Made{"graduated-sleeve", "lower-leg", "calf", "120", 200.0},
        Made{"quilted-pack", "thigh", "thigh", "120", 200.0}}) {
    const std::string station = std::to_string(made.station_mm);
    ASSERT_EQ(run({"body", "make", made.form, "--sex", "female", "--out", path("body.obj")}).code, 0);
    ASSERT_EQ(run({"layout", "make", made.layout, "--body", path("body.obj"), "--station", station,
                   "--height", made.height, "--out", path("made.json")})
                  .code,
              0);
    const auto layout = read_layout(path("made.json"));
    ASSERT_TRUE(layout) << layout.problem().message;
    const Bounds2 box = bounds(layout->outline_m);
    const Vec2 middle = 500.0 * (box.low + box.high);
    nlohmann::json plan{{"wrapgauge-plan", 1},
                        {"name", made.layout},
                        {"body", {{"file", "body.obj"}, {"unit", "mm"}}},
                        {"tissue", {{"site", made.tissue}}},
                        {"layout", {{"file", "made.json"}}},
                        {"wear",
                         {{"anchor", {{"station_mm", made.station_mm}, {"angle_deg", 90}}},
                          {"layout_point_mm", {middle.x(), middle.y()}}}},
                        {"inflation", nlohmann::json::array()},
                        {"limits", {{"use", "short hold"}}},
                        {"mesh", {{"edge_mm", 10}}}};
    for (const Inlet& inlet : layout->inlets)
      plan["inflation"].push_back({{"inlet", inlet.name}, {"pressure_kpa", 0}});
    const Answer answer =
        run({"estimate", write("plan.json", plan.dump()), "--out", path("out"), "--no-mesh-error"});
    EXPECT_EQ(answer.code, 0) << made.layout << " on " << made.form << ": " << answer.out << answer.err;
  }
}

TEST_F(LayoutCommands, APackThatNothingHoldsIsSaidSoAtOnceAndIsNoSuccess) {
  const Answer loose =
      run({"layout", "make", "quilted-pack", "--strap-width", "0", "--out", path("pack.json")});
  EXPECT_EQ(loose.code, 4);
  EXPECT_NE(loose.out.find("Nothing holds this layout on the body"), std::string::npos) << loose.out;
  EXPECT_TRUE(std::filesystem::exists(path("pack.json")));
  EXPECT_EQ(run({"layout", "make", "quilted-pack", "--out", path("held.json")}).code, 0);
}

TEST_F(LayoutCommands, CheckTellsEveryBrokenRuleAndEveryMistakeOfTheDrawing) {
  const Answer thin = run({"layout", "check", make("cuff", {"--seam", "5", "--channel", "2"})});
  EXPECT_EQ(thin.code, 4);
  EXPECT_NE(thin.out.find("change (seam width, judgement): the seam between"), std::string::npos) << thin.out;
  EXPECT_NE(thin.out.find("change (channel least, judgement): channel"), std::string::npos) << thin.out;
  nlohmann::json layout = nlohmann::json::parse(bytes("cuff.json"));
  layout["inlets"].clear();
  const Answer wrong = run({"layout", "check", write("wrong.json", layout.dump())});
  EXPECT_EQ(wrong.code, 2);
  EXPECT_EQ(wrong.out, "");
  EXPECT_NE(wrong.err.find("No inlet reaches"), std::string::npos) << wrong.err;
  const auto json = nlohmann::json::parse(run({"layout", "check", path("wrong.json"), "--json"}).out);
  EXPECT_EQ(json["problems"].size(),
            static_cast<std::size_t>(std::count(wrong.err.begin(), wrong.err.end(), '\n')));
  EXPECT_TRUE(json["silicone_mix_g"].is_null());
}

TEST_F(LayoutCommands, CheckAsJsonHoldsTheFiguresOfTheSentences) {
  const std::string plan = cuff_plan("[45, 0, 165]");
  const Answer said = run({"layout", "check", make("cuff", {"--seam", "5"}), "--plan", plan});
  const Answer answer = run({"layout", "check", path("cuff.json"), "--plan", plan, "--json"});
  EXPECT_EQ(answer.code, 4) << answer.err;
  const auto json = nlohmann::json::parse(answer.out);
  EXPECT_TRUE(json["problems"].empty());
  EXPECT_EQ(json["silicone"].size(), 3u);
  double grams = 0.0;
  for (const auto& amount : json["silicone"]) grams += amount["mix_g"].get<double>();
  EXPECT_NEAR(json["silicone_mix_g"].get<double>(), grams, 1e-3);
  EXPECT_EQ(json["trim_border_mm"], 10.0);
  EXPECT_LT(json["closing"]["smallest_girth_mm"], json["closing"]["largest_girth_mm"]);
  EXPECT_GT(json["worn"]["girth_mm"], 100.0);
  ASSERT_FALSE(json["findings"].empty());
  for (const auto& finding : json["findings"]) {
    EXPECT_NE(said.out.find(finding["sentence"].get<std::string>()), std::string::npos);
    EXPECT_LT(finding["value"], finding["threshold"]);
    EXPECT_EQ(finding["unit"], "mm");
  }
  EXPECT_EQ(json["findings"][0]["rule"], "seam width");
  EXPECT_NEAR(json["findings"][0]["value"].get<double>(), 5.0, 1e-3);
}

TEST_F(LayoutCommands, CheckWithAPlanSaysWhereBonySitesLieAndWhatAnInletPressesOn) {
  const std::string plan = cuff_plan();
  const Answer answer = run({"layout", "check", path("cuff.json"), "--plan", plan});
  EXPECT_NE(answer.out.find("worn: Stretch round the body, fastened at a closing length of "),
            std::string::npos)
      << answer.out << answer.err;
  EXPECT_NE(answer.out.find("bony site 'test site' lies at ("), std::string::npos) << answer.out;
}

// A closing length of girth / (1 + stretch): at -5 % it is 1 / 0.95 = 1.053 girths.
TEST_F(LayoutCommands, CheckSaysOfASlackLayoutHowMuchLongerThanTheLimbItIs) {
  const Answer slack = run({"layout", "check", make("cuff", {"--stretch", "-0.05"})});
  EXPECT_NE(slack.out.find("at its middle height, slack: 5.3 % longer than the limb (stretch -5.0 %); to "),
            std::string::npos)
      << slack.out;
  const Answer tight = run({"layout", "check", make("cuff", {"--stretch", "0.03"})});
  EXPECT_NE(tight.out.find("at its middle height, stretched by 3.0 %; to "), std::string::npos) << tight.out;
}

// The longest run of dark pixels in a row of the check bar, and the bar's height, both in mm.
struct Bar {
  double length_mm = 0.0, height_mm = 0.0;
};

Bar measured_bar(const std::string& file) {
  std::ifstream in(file, std::ios::binary);
  std::string magic;
  int width = 0, height = 0, most = 0;
  in >> magic >> width >> height >> most;
  in.get();
  std::vector<unsigned char> pixels(static_cast<std::size_t>(width) * static_cast<std::size_t>(height));
  in.read(reinterpret_cast<char*>(pixels.data()), static_cast<std::streamsize>(pixels.size()));
  EXPECT_EQ(magic, "P5");
  const double mm_a_pixel = 25.4 / 300.0;
  const auto dark = [&](int x, int y) { return pixels[static_cast<std::size_t>(y * width + x)] < 128; };
  // The bar lies from 22 to 20 mm above the page's lower edge.
  const int row = height - static_cast<int>(21.0 / mm_a_pixel);
  Bar bar;
  int run_length = 0, end = 0, longest = 0;
  for (int x = 0; x < width; ++x) {
    run_length = dark(x, row) ? run_length + 1 : 0;
    if (run_length > longest) longest = run_length, end = x;
  }
  bar.length_mm = longest * mm_a_pixel;
  // Up and down from the middle as far as it is dark: the words below are not the bar.
  const int middle = end - longest / 2;
  int top = row, bottom = row;
  while (top > row - 40 && dark(middle, top - 1)) --top;
  while (bottom < row + 40 && dark(middle, bottom + 1)) ++bottom;
  const int tall = bottom - top + 1;
  bar.height_mm = tall * mm_a_pixel;
  return bar;
}

TEST_F(LayoutCommands, TheCheckBarOfEveryPrintedPageMeasuresFiftyMillimetres) {
  if (std::system("command -v pdftoppm >/dev/null 2>&1") != 0)
    GTEST_SKIP() << "NOT CHECKED: pdftoppm (poppler-utils) is missing, so no page can be measured";
  const std::string plan = cuff_plan();
  for (const char* paper : {"a4", "letter"}) {
    const Answer answer = run({"layout", "template", plan, "--paper", paper, "--out", path("cuff.pdf")});
    ASSERT_EQ(answer.code, 0) << answer.err;
    const std::string command = "pdftoppm -r 300 -gray '" + path("cuff.pdf") + "' '" + path(paper) + "'";
    ASSERT_EQ(std::system(command.c_str()), 0);
    int pages = 0;
    for (const auto& entry : std::filesystem::directory_iterator(path(""))) {
      if (entry.path().extension() != ".pgm" || entry.path().filename().string().rfind(paper, 0) != 0)
        continue;
      const Bar bar = measured_bar(entry.path().string());
      EXPECT_NEAR(bar.length_mm, 50.0, 0.2) << entry.path();
      EXPECT_NEAR(bar.height_mm, 2.0, 0.2) << entry.path();
      ++pages;
    }
    EXPECT_EQ(answer.out.find(std::to_string(pages - 1) + " "), 0u) << paper << ": " << answer.out;
    EXPECT_NE(answer.out.find("and an overview"), std::string::npos) << answer.out;
  }
}

TEST_F(LayoutCommands, ATemplateDependsOnItsInputAlone) {
  const std::string layout = make("round-pad");
  ASSERT_EQ(run({"layout", "template", layout, "--out", path("one.pdf")}).code, 0);
  setenv("TZ", "Asia/Kathmandu", 1);
  ASSERT_EQ(run({"layout", "template", layout, "--out", path("two.pdf")}).code, 0);
  EXPECT_STREQ(std::getenv("TZ"), "Asia/Kathmandu");
  unsetenv("TZ");
  EXPECT_EQ(bytes("one.pdf"), bytes("two.pdf"));
  EXPECT_NE(bytes("one.pdf").find("/CreationDate (D:20000101000000"), std::string::npos);
  EXPECT_EQ(bytes("one.pdf").rfind("%PDF-", 0), 0u);
}

TEST_F(LayoutCommands, AnSvgTemplateIsTrueSizeWithMarksAndBar) {
  const std::string plan = cuff_plan();
  ASSERT_EQ(run({"layout", "template", plan, "--out", path("cuff.svg")}).code, 0);
  const std::string svg = bytes("cuff.svg");
  for (const char* piece :
       {"mm\" viewBox=", "<g id=\"cut\"", "<g id=\"marks\"", "width=\"50.000\" height=\"2.000\"",
        ">distal</text>", "keep clear: test site", "<g id=\"closing\""})
    EXPECT_NE(svg.find(piece), std::string::npos) << piece;
  EXPECT_EQ(svg.substr(svg.size() - 7), "</svg>\n");
  // Read as a drawing it has the layout's size, and the bar its 50 mm.
  const auto list = nlohmann::json::parse(run({"layout", "read", path("cuff.svg"), "--json"}).out);
  const auto width = [](const nlohmann::json& shape) {
    return shape["bounds_mm"][2].get<double>() - shape["bounds_mm"][0].get<double>();
  };
  const Bounds2 box = bounds(read_layout(path("cuff.json"))->outline_m);
  EXPECT_NEAR(width(list["shapes"][0]), (box.high - box.low).x() / 1e-3, 2e-3);
  const auto bar = std::find_if(list["shapes"].begin(), list["shapes"].end(),
                                [](const nlohmann::json& shape) { return shape["kind"] == "rect"; });
  ASSERT_NE(bar, list["shapes"].end());
  EXPECT_NEAR(width(*bar), 50.0, 1e-3);
}

TEST_F(LayoutCommands, ATemplateCarriesGramsAndLegendAndTheSkinSideWhenAsked) {
  const std::string layout = make("quilted-pack");
  const Answer answer =
      run({"layout", "template", layout, "--trim", "0", "--side", "skin", "--out", path("pack.svg")});
  ASSERT_EQ(answer.code, 0) << answer.err;
  const std::string svg = bytes("pack.svg");
  // 156 x 120 mm with corners of 24 mm: 182.3 cm2 x 2 mm x 1.15 x 1.07 g/mL = 44.9 g.
  for (const char* piece : {"skin sheet: 00-30, 2.0 mm thick, mix about 45 g<",
                            "skin sheet towards you (mirrored)<", ">inset seam<", ">cut the silicone<",
                            ">edge of chambers and channels<", ">inlet<", ">arrow: towards distal<"})
    EXPECT_NE(svg.find(piece), std::string::npos) << piece;
  ASSERT_EQ(run({"layout", "read", path("pack.svg"), "--out", path("again.json")}).code, 0);
  EXPECT_EQ(bytes("again.json"), bytes("quilted-pack.json"));
  EXPECT_EQ(run({"layout", "template", layout, "--side", "left", "--out", path("pack.svg")}).code, 2);
}

// A hardness that no table has: the paper can still be tried on.
TEST_F(LayoutCommands, ATemplateOfAnUnknownHardnessIsPrintedWithoutGrams) {
  nlohmann::json layout = nlohmann::json::parse(bytes(make("cuff").substr(path("").size())));
  layout["skin_sheet"]["material"] = "Z99";
  const Answer answer = run({"layout", "template", write("z.json", layout.dump()), "--out", path("z.svg")});
  EXPECT_EQ(answer.code, 0) << answer.err;
  EXPECT_NE(answer.out.find("No grams on it: "), std::string::npos) << answer.out;
  EXPECT_NE(bytes("z.svg").find("skin sheet: Z99, 1.5 mm thick<"), std::string::npos);
  EXPECT_EQ(bytes("z.svg").find("mix about"), std::string::npos);
}

TEST_F(LayoutCommands, TemplateRefusesOtherEndingsPapersAndFiles) {
  const std::string layout = make("cuff");
  const Answer ending = run({"layout", "template", layout, "--out", path("cuff.png")});
  EXPECT_EQ(ending.code, 2);
  EXPECT_NE(ending.err.find("as .pdf or .svg, not as 'cuff.png'"), std::string::npos) << ending.err;
  EXPECT_EQ(run({"layout", "template", layout, "--paper", "a0", "--out", path("cuff.pdf")}).code, 2);
  EXPECT_EQ(run({"layout", "template", path("missing.json"), "--out", path("cuff.pdf")}).code, 2);
  EXPECT_EQ(run({"layout", "template", layout, "--out", path("no/such/cuff.pdf")}).code, 2);
}

}  // namespace
}  // namespace wrapgauge
