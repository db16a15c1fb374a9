#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "app/command/command_line.hpp"
#include "model/core/file.hpp"
#include "model/io/writers/mesh_writer.hpp"
#include "tests/body/scan_like.hpp"
#include "tests/command/command_test.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

// A folder with a noisy, holed scan and a plan whose body is a form.
class BodyRepair : public CommandTest {
 protected:
  void SetUp() override {
    CommandTest::SetUp();
    RawMesh raw = shapes::egg_limb();
    raw.vertices.leftCols(2) *= 1.39;  // the sleeve goes round it
    shapes::add_noise(raw, 0.3);
    shapes::punch_hole(raw, 60 * 36 + 10, 9.0);
    raw = shapes::moved(raw, 0.7, {1, 1, 0}, {20, 30, 40});
    ASSERT_TRUE(write_mesh({1e-3 * raw.vertices, raw.faces}, folder_ / "scan.ply").ok());
    std::filesystem::copy_file(WRAPGAUGE_SOURCE_DIR "/resources/plans/calf-sleeve.json",
                               folder_ / "plan.json");
    std::filesystem::create_directories(folder_ / "layouts");
    std::filesystem::copy_file(WRAPGAUGE_SOURCE_DIR "/resources/layouts/calf-sleeve.json",
                               folder_ / "layouts/calf-sleeve.json");
    json plan = json::parse(bytes("plan.json"));
    plan["layout"]["file"] = "layouts/calf-sleeve.json";
    plan["tissue"]["site"] = "calf";
    std::ofstream(folder_ / "plan.json") << plan.dump();
  }
  int run(std::vector<std::string> options) {
    options.insert(options.begin(), {"body", "repair", path("scan.ply"), "--unit", "mm"});
    std::ostringstream out, err;
    const int code = run_command_line(options, {out, err});
    out_ = out.str();
    err_ = err.str();
    return code;
  }

  std::string out_, err_;
};

TEST_F(BodyRepair, WritesTheBodyAndItsPictureAndLeavesTheScanAlone) {
  const std::string scan = bytes("scan.ply");
  ASSERT_EQ(run({"--cut", "20", "200", "--out", path("limb.stl"), "--picture", path("limb.png")}), 0) << err_;
  EXPECT_EQ(bytes("scan.ply"), scan);
  EXPECT_EQ(bytes("limb.png").substr(1, 3), "PNG");
  EXPECT_EQ(bytes("limb.stl").rfind("unit: mm", 0), 0u);
  for (const char* part :
       {"drop crumbs: ", "fill holes: Filled 1 hole", "smooth: ", "pose: ", "cut: ", "decimate: "})
    EXPECT_NE(out_.find(part), std::string::npos) << part << out_;
}

TEST_F(BodyRepair, TheStepsInThePlanGiveTheSameBodyAgain) {
  ASSERT_EQ(run({"--edge-mm", "5", "--plan", path("plan.json"), "--json"}), 0) << err_;
  const json said = json::parse(out_), plan = json::parse(bytes("plan.json"));
  EXPECT_EQ(plan["body"]["file"], "scan.ply");
  EXPECT_EQ(plan["body"]["part"], "lower leg") << "the form's part is lost with the form";
  EXPECT_EQ(plan["body"]["unit"], "mm");
  EXPECT_EQ(plan["body"]["repair"], said["repair"]);
  EXPECT_EQ(plan["wear"]["anchor"]["station_mm"], 255);
  std::ostringstream out, err;
  run_command_line({"look", path("plan.json")}, {out, err});
  EXPECT_NE(err.str().find("The anchor's station is 255.0 mm, but the body reaches from 0"),
            std::string::npos)
      << err.str();  // the limb ends at 240 mm
  json moved = plan;
  moved["wear"]["anchor"]["station_mm"] = 120;
  std::ofstream(folder_ / "plan.json") << moved.dump();
  ASSERT_EQ(run_command_line({"look", path("plan.json")}, {out, err}), 0) << err.str();
  EXPECT_NE(unwrapped(out.str()).find(std::to_string(said["triangles"].get<int>()) + " triangles"),
            std::string::npos);
  EXPECT_NE(unwrapped(out.str()).find("body: decimate: Meshed anew"), std::string::npos);
}

TEST_F(BodyRepair, ALayoutOverANoGoRegionIsRefusedByName) {
  ASSERT_EQ(run({"--plan", path("plan.json")}), 0) << err_;
  json plan = json::parse(bytes("plan.json"));
  plan["wear"]["anchor"]["station_mm"] = 120;
  plan["regions"] = {
      {{"name", "wound"}, {"stations_mm", {100, 110}}, {"angles_deg", {80, 100}}, {"no_go", true}}};
  std::ofstream(folder_ / "plan.json") << plan.dump();
  std::ostringstream out, err;
  EXPECT_EQ(run_command_line({"look", path("plan.json")}, {out, err}), 2);
  EXPECT_NE(err.str().find("The layout lies on 'wound', where nothing may lie"), std::string::npos)
      << err.str();
}

TEST_F(BodyRepair, BadOptionsExitWithTwoAndWriteNothing) {
  EXPECT_EQ(run({"--out", path("scan.ply")}), 2);
  EXPECT_NE(err_.find("the scan itself"), std::string::npos);
  EXPECT_EQ(run({"--out", path("limb.dae")}), 2);
  EXPECT_EQ(run({"--cut", "200", "20"}), 2);
  EXPECT_EQ(run({"--cut", "20", "900", "--out", path("limb.stl")}), 2);
  EXPECT_NE(err_.find("(cut): The limb cannot be cut between"), std::string::npos) << err_;
  EXPECT_EQ(run({"--edge-mm", "0.1"}), 2);
  EXPECT_FALSE(std::filesystem::exists(folder_ / "limb.stl"));
}

}  // namespace
}  // namespace wrapgauge
