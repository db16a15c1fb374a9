// A form and the file that it was exported to are one body; what a scan lacks is proposed and asked for.
#include <nlohmann/json.hpp>

#include "tests/command/command_test.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

class BodyLabelCommand : public CommandTest {
 protected:
  void SetUp() override {
    CommandTest::SetUp();
    const Answer made =
        run({"body", "make", "forearm", "--sex", "male", "--set", "edge=5", "--out", path("arm.obj")});
    ASSERT_EQ(made.code, 0) << made.err;
    said_ = made.out;
  }
  // A pad over the back edge of the ulna.
  std::string plan(const std::string& name, const json& body, const json& more = json::object()) const {
    json plan = json::parse(R"({"wrapgauge-plan": 1, "name": "pad", "tissue": {"site": "forearm relaxed"},
      "layout": {"wrapgauge-layout": 1, "name": "pad",
        "outline": {"rectangle": {"x": -30, "y": -30, "width": 60, "height": 60}},
        "chambers": [{"name": "cell", "rectangle": {"x": -20, "y": -20, "width": 40, "height": 40}}],
        "inlets": [{"name": "tube", "point": [0, 0]}],
        "skin_sheet": {"material": "00-30", "thickness": 2},
        "outer_sheet": {"material": "00-30", "thickness": 2}, "rim_bonded": true},
      "wear": {"anchor": {"station_mm": 120, "angle_deg": 232}},
      "inflation": [{"inlet": "tube", "pressure_kpa": 3}], "limits": {"use": "short hold"},
      "mesh": {"edge_mm": 8}, "solver": {"steps": 2}})");
    plan["body"] = body;
    plan.update(more);
    return write(name, plan.dump());
  }
  json estimate(const std::string& file) const {
    const Answer answer = run({"estimate", file, "--out", path("out"), "--no-mesh-error"});
    EXPECT_EQ(answer.err, "");
    return json::parse(bytes("out/summary.json"));
  }
  std::string refusal(const std::string& file) const {
    const Answer answer = run({"look", file});
    EXPECT_EQ(answer.code, 2) << answer.out;
    EXPECT_EQ(std::count(answer.err.begin(), answer.err.end(), '\n'), 1) << answer.err;
    return answer.err;
  }

  const json form_{{"form", "forearm"}, {"sex", "male"}, {"parameters", {{"edge", 5}}}};
  const json file_{{"file", "arm.obj"}};
  std::string said_;
};

TEST_F(BodyLabelCommand, AFormAndItsOwnExportGiveTheSameFindings) {
  EXPECT_NE(said_.find("arm.obj.label.json, which says its part, side, front and places"), std::string::npos);
  const json form = estimate(plan("form.json", form_)), file = estimate(plan("file.json", file_));
  ASSERT_GT(form["findings"].size(), 1U);
  ASSERT_EQ(form["findings"].size(), file["findings"].size());
  for (std::size_t f = 0; f < form["findings"].size(); ++f) {
    EXPECT_EQ(form["findings"][f]["where"], file["findings"][f]["where"]);
    EXPECT_EQ(form["findings"][f]["severity"], file["findings"][f]["severity"]);
    EXPECT_NEAR(form["findings"][f]["share_of_limit"].get<double>(),
                file["findings"][f]["share_of_limit"].get<double>(), 1e-3);
  }
  EXPECT_NEAR(form["chambers"][0]["peak_1cm2_kPa"].get<double>(),
              file["chambers"][0]["peak_1cm2_kPa"].get<double>(), 1e-3);
  const std::string inputs = file["inputs"].dump();
  EXPECT_NE(inputs.find("body label"), std::string::npos) << inputs;
}

TEST_F(BodyLabelCommand, WithoutItsLabelTheFileIsAskedForItsPartAndItsSites) {
  std::filesystem::remove(path("arm.obj.label.json"));
  EXPECT_NE(refusal(plan("file.json", file_)).find("does not say which part"), std::string::npos);
  json named = file_;
  named["part"] = "forearm";
  const Answer answer = run({"look", plan("file.json", named)});
  EXPECT_NE(answer.said().find("sites: 0 marked; until they are marked or their absence is confirmed"),
            std::string::npos)
      << answer.out << answer.err;
  named["sites_confirmed"] = {{"who", "A. Person"}, {"when", "2026-11-20"}, {"why", "a padded dummy arm"}};
  EXPECT_NE(run({"look", plan("file.json", named)}).said().find("no others, by word of A. Person"),
            std::string::npos);
}

TEST_F(BodyLabelCommand, APlanThatContradictsTheLabelIsRefused) {
  json body = file_;
  body["part"] = "thigh";
  EXPECT_NE(refusal(plan("file.json", body)).find("it may be forearm, test object"), std::string::npos);
  body = file_;
  body["side"] = "left";
  EXPECT_NE(refusal(plan("file.json", body)).find("correct body.side"), std::string::npos);
  body = file_;
  body["front"] = {0, -1, 0};
  EXPECT_NE(refusal(plan("file.json", body)).find("correct body.front"), std::string::npos);
}

TEST_F(BodyLabelCommand, AMeshThatWasMadeAnewDoesNotKeepAnOldLabel) {
  const std::string label = bytes("arm.obj.label.json");
  ASSERT_EQ(run({"body", "make", "thigh", "--sex", "male", "--out", path("arm.obj")}).code, 0);
  EXPECT_NE(bytes("arm.obj.label.json"), label);
  write("arm.obj.label.json", label);
  EXPECT_NE(refusal(plan("file.json", file_)).find("was written for a mesh of"), std::string::npos);
}

TEST_F(BodyLabelCommand, SitesAreProposedFromALandmarkAndAskedToBeConfirmed) {
  json label = json::parse(bytes("arm.obj.label.json"));
  const json own = label["bony_sites"];
  std::vector<std::string> words{"body",   "sites",      path("arm.obj"), "--part", "forearm",
                                 "--side", "right",      "--axis",        "0",      "0",
                                 "1",      "--landmark", own[0]["name"]};
  for (const json& x : own[0]["point_mm"]) words.push_back(x.dump());
  words.insert(words.end(), {"--out", path("arm.obj.label.json")});
  const Answer answer = run(words);
  ASSERT_EQ(answer.code, 0) << answer.err;
  EXPECT_NE(answer.out.find("turn from 'ulnar styloid', length from the scan's proximal end"),
            std::string::npos);
  label = json::parse(bytes("arm.obj.label.json"));
  ASSERT_EQ(label["bony_sites"].size(), own.size());
  for (const json& site : label["bony_sites"]) EXPECT_EQ(site["status"], "proposed");
  EXPECT_NE(
      run({"look", plan("file.json", file_)}).said().find("of them only proposed: confirm or drop each"),
      std::string::npos);
}

TEST_F(BodyLabelCommand, SitesThatCannotBeProposedWriteNothing) {
  const auto expect = [&](std::vector<std::string> more, const std::string& words) {
    more.insert(more.begin(),
                {"body", "sites", path("arm.obj"), "--axis", "0", "0", "1", "--out", path("out")});
    const Answer answer = run(more);
    EXPECT_EQ(answer.code, 2);
    EXPECT_NE(answer.err.find(words), std::string::npos) << answer.err;
    EXPECT_FALSE(std::filesystem::exists(path("out")));
  };
  expect({"--part", "forearm", "--landmark", "ulnar styloid", "0", "0", "5"}, "give --side");
  expect({"--part", "abdomen", "--side", "left"}, "leave --side out");
  expect({"--part", "neck"}, "nothing may press on neck");
  expect({"--part", "finger", "--side", "left"}, "no standard places");
  expect({"--part", "forearm", "--side", "right"}, "one or two landmarks");
  expect({"--part", "forearm", "--side", "right", "--landmark", "ulnar styloid", "200", "0", "5"},
         "mm off the skin");
}

TEST_F(BodyLabelCommand, TwoLimbsInOneFileAreToldApart) {
  std::string text = bytes("arm.obj");
  std::string second;
  int vertices = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = text.find('\n', at);
    vertices += text.compare(at, 2, "v ") == 0;
    at = end + 1;
  }
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = text.find('\n', at);
    std::istringstream line(text.substr(at, end - at));
    std::string kind;
    line >> kind;
    if (double x = 0, y = 0, z = 0; kind == "v" && line >> x >> y >> z)
      second += "v " + std::to_string(x + 300.0) + " " + std::to_string(y) + " " + std::to_string(z) + "\n";
    if (int a = 0, b = 0, c = 0; kind == "f" && line >> a >> b >> c)
      second += "f " + std::to_string(a + vertices) + " " + std::to_string(b + vertices) + " " +
                std::to_string(c + vertices) + "\n";
    at = end + 1;
  }
  write("two.obj", text + second);
  EXPECT_NE(
      refusal(plan("two.json", {{"file", "two.obj"}, {"unit", "mm"}, {"part", "forearm"}})).find("two limbs"),
      std::string::npos);
  const Answer told = run({"body", "pieces", path("two.obj"), "--unit", "mm", "--out", path("pieces")});
  EXPECT_EQ(told.code, 0) << told.err;
  EXPECT_NE(told.out.find("piece 2: 50.0 % of the area"), std::string::npos) << told.out;
  EXPECT_EQ(run({"look", plan("one.json", {{"file", "pieces/two-2.ply"}, {"part", "forearm"}},
                              {{"wear", {{"anchor", {{"station_mm", 120}, {"angle_deg", 0}}}}}})})
                .code,
            0);
}

}  // namespace
}  // namespace wrapgauge
