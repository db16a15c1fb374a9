// The whole way on bodies of all kinds: a form or a mended scan, a starting layout for its girths, an
// estimate. On a coarse mesh, for time; docs/body-estimates.md has more bodies on finer ones.
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

class BodyEstimate : public CommandTest {
 protected:
  // Exit code; what was said is kept in out_.
  int run(const std::vector<std::string>& words) {
    std::ostringstream out, err;
    const int code = run_command_line(words, {out, err});
    out_ = out.str();
    EXPECT_EQ(err.str(), "");
    return code;
  }
  std::string said_after(const std::string& start) const {
    const std::size_t at = out_.rfind(start) + start.size();
    return out_.substr(at, out_.find('\n', at) - at);
  }
  // A cuff round the body in body.obj, estimated; the forces have to be in balance.
  void expect_estimate(const json& body, const std::string& tissue, double station_mm) {
    ASSERT_EQ(
        run({"layout", "make", "cuff", "--body", path("body.obj"), "--station", std::to_string(station_mm),
             "--height", "50", "--chambers", "2", "--out", path("cuff.json")}),
        0);
    json plan{{"wrapgauge-plan", 1},
              {"name", "cuff"},
              {"body", body},
              {"layout", {{"file", "cuff.json"}}},
              {"wear", {{"anchor", {{"station_mm", station_mm}, {"angle_deg", 90}}}}},
              {"inflation", {{{"inlet", "row 1"}, {"pressure_kpa", 2}}}},
              {"mesh", {{"edge_mm", 15}}},
              {"solver", {{"steps", 2}}}};
    if (!tissue.empty()) plan["tissue"]["site"] = tissue;
    std::ofstream(folder_ / "plan.json") << plan.dump();
    const int code = run({"estimate", path("plan.json"), "--out", path("out"), "--no-mesh-error"});
    ASSERT_TRUE(code == 0 || code == 4 || code == 5) << code;
    const json summary = json::parse(*read_file(folder_ / "out/summary.json"));
    EXPECT_LT(summary["audit"]["largest_residual_N"], 0.01);
    EXPECT_LT(std::abs(summary["audit"]["lateral_balance"].get<double>()), 0.01);
    EXPECT_EQ(summary["chambers"].size(), 2u);
    for (const json& chamber : summary["chambers"]) EXPECT_GT(chamber["mean_kPa"], 0.2);
  }

  std::string out_;
};

TEST_F(BodyEstimate, RunsOnForms) {
  struct Case {
    std::string form, girth;
    double station_mm;
  };
  for (const Case& one :
       {Case{"wrist", "", 45}, Case{"upper-arm", "middle=315", 105}, Case{"calf", "", 240}}) {
    SCOPED_TRACE(one.form);
    std::vector<std::string> words{"body",  "make",   one.form, "--sex",         "male",
                                   "--set", "edge=6", "--out",  path("body.obj")};
    if (!one.girth.empty()) words.insert(words.end(), {"--girths", one.girth});
    ASSERT_EQ(run(words), 0);
    expect_estimate(json::parse(said_after("for a plan: \"body\": ")), "", one.station_mm);
  }
}

TEST_F(BodyEstimate, RunsOnARepairedScan) {
  const RawMesh scan = shapes::scan_of_limb(shapes::egg_limb(), 0.4, true);
  ASSERT_TRUE(write_mesh({1e-3 * scan.vertices, scan.faces}, folder_ / "scan.ply").ok());
  ASSERT_EQ(run({"body", "repair", path("scan.ply"), "--unit", "mm", "--cut", "15", "225", "--out",
                 path("body.obj")}),
            0);
  json body{{"file", "scan.ply"}, {"unit", "mm"}, {"part", "forearm"}};
  body["repair"] = json::parse(said_after("for a plan: \"repair\": "));
  expect_estimate(body, "forearm relaxed", 110);
}

}  // namespace
}  // namespace wrapgauge
