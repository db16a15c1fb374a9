#pragma once
// A small closed band with one or two chambers on a cylinder, coarse enough to solve in a blink.

#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include "bodyforms/form.hpp"
#include "model/layout/layout_json.hpp"
#include "model/study/study_case.hpp"

namespace wrapgauge::small_band {

inline Resources resources() {
  return read_resources(WRAPGAUGE_SOURCE_DIR "/resources").value();
}
inline Body body() {
  return make_form("cylinder", {}).value();
}

inline Polygon rectangle(double x, double y, double width, double height) {
  return {{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}};
}

// `stretch`: of the closure. One chamber "pad", its inlet "valve".
inline Plan plan(InflationTarget target, double stretch = -0.02) {
  Plan plan;
  plan.name = "small band";
  plan.part = BodyPart::kForearm;
  plan.tissue_site = "forearm relaxed";
  Layout& layout = plan.layout;
  layout.name = "band";
  layout.outline_m = rectangle(0, 0, 0.270, 0.050);
  layout.chambers = {{"pad", rectangle(0.060, 0.010, 0.050, 0.030), {}, {}}};
  layout.inlets = {{"valve", {0.085, 0.025}}};
  layout.skin_sheet = {"00-30", 1.5 * mm};
  layout.outer_sheet = {"A10", 2.0 * mm};
  layout.backing = {1.5 * N_per_mm, 1.0 * N_per_mm};
  layout.closure = Closure{0.0, std::nullopt, stretch};
  plan.placement.anchor = AnchorAtStation{120.0 * mm, 90.0};
  plan.placement.layout_point_m = Vec2(0.085, 0.025);
  plan.inflation.resize(1);
  plan.inflation[0].inlet = "valve";
  plan.inflation[0].target = target;
  plan.use = UsePattern::kShortHold;
  plan.mesh_edge = 14.0 * mm;
  plan.solver.steps = 2;
  return plan;
}

// A second chamber on the far side, joined to the first by a channel: one inlet feeds both.
inline Plan two_chambers(InflationTarget target) {
  Plan two = plan(target);
  two.layout.chambers.push_back({"far pad", rectangle(0.130, 0.010, 0.070, 0.030), {}, {}});
  two.layout.channels = {{"joint", {{0.105, 0.025}, {0.135, 0.025}}, 5.0 * mm}};
  return two;
}

// Empty at the start, gone at the end.
class Folder {
 public:
  explicit Folder(const std::string& name)
      : path_(std::filesystem::temp_directory_path() /
              ("wrapgauge-study-" + std::to_string(::getpid()) + "-" + name)) {
    std::filesystem::remove_all(path_);
    std::filesystem::create_directories(path_);
  }
  ~Folder() { std::filesystem::remove_all(path_); }
  const std::filesystem::path& path() const { return path_; }
  // Whole lines of every part's file of runs.
  std::ptrdiff_t kept_runs() const {
    std::ptrdiff_t lines = 0;
    for (const auto& entry : std::filesystem::directory_iterator(path_)) {
      std::ifstream in(entry.path(), std::ios::binary);
      lines += std::count(std::istreambuf_iterator<char>(in), {}, '\n');
    }
    return lines;
  }

 private:
  std::filesystem::path path_;
};

}  // namespace wrapgauge::small_band
