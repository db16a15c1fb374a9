#include "tests/published/solid_model.hpp"

#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

namespace wrapgauge::published {
namespace {

constexpr double kBulkOverShear = 1000.0;  // Poisson ratio 0.4995
constexpr double kGroundMm = 1e4;          // so far below that springs stay upright
constexpr double kPlateNPerMm = 5.0;

// Corner and mid-edge places of a 20-node brick, in half cells.
constexpr int kBrick[20][3] = {{0, 0, 0}, {2, 0, 0}, {2, 2, 0}, {0, 2, 0}, {0, 0, 2}, {2, 0, 2}, {2, 2, 2},
                               {0, 2, 2}, {1, 0, 0}, {2, 1, 0}, {1, 2, 0}, {0, 1, 0}, {1, 0, 2}, {2, 1, 2},
                               {1, 2, 2}, {0, 1, 2}, {0, 0, 1}, {2, 0, 1}, {2, 2, 1}, {0, 2, 1}};

void write_set(std::ostream& out, const std::string& name, const std::vector<int>& members,
               const std::string& kind = "NSET") {
  out << "*" << kind << "," << kind << "=" << name << "\n";
  for (int member : members) out << member << ",\n";
}

void write_node(std::ostream& out, int id, const Vec3& at) {
  out << id << "," << at.x() << "," << at.y() << "," << at.z() << "\n";
}

// A folder of this run's own, removed at the end.
struct RunFolder {
  std::filesystem::path path =
      std::filesystem::temp_directory_path() / ("wrapgauge-solid-" + std::to_string(::getpid()));
  RunFolder() { std::filesystem::create_directories(path); }
  ~RunFolder() { std::filesystem::remove_all(path); }
};

}  // namespace

SolidModel::SolidModel(const SolidGrid& grid) {
  for (int layer = 0; layer < grid.layers; ++layer)
    for (int row = 0; row < grid.rows; ++row)
      for (int column = 0; column < grid.columns; ++column) {
        std::array<int, 20> brick;
        for (int k = 0; k < 20; ++k)
          brick[k] =
              node_at(grid, 2 * column + kBrick[k][0], 2 * row + kBrick[k][1], 2 * layer + kBrick[k][2]);
        bricks_.push_back(brick);
        if (layer == 0) lowest_.push_back(static_cast<int>(bricks_.size()));
        if (layer + 1 == grid.layers) highest_.push_back(static_cast<int>(bricks_.size()));
      }
}

int SolidModel::node_at(const SolidGrid& grid, int u, int v, int w) {
  const auto [found, is_new] = ids_.try_emplace({u, v, w}, static_cast<int>(places_.size()) + 1);
  if (is_new) places_.push_back(grid.place(0.5 * u, 0.5 * v, 0.5 * w));
  return found->second;
}

std::vector<int> SolidModel::nodes_where(const std::function<bool(int, int, int)>& wanted) const {
  std::vector<int> nodes;
  for (const auto& [at, id] : ids_)
    if (wanted(at[0], at[1], at[2])) nodes.push_back(id);
  return nodes;
}

void SolidModel::hold(const std::vector<int>& nodes, int first_direction, int last_direction) {
  holds_.push_back({nodes, first_direction, last_direction});
}
void SolidModel::use_polar_directions() {
  polar_ = true;
}
void SolidModel::add_plate_below(double distance_mm) {
  plate_mm_ = distance_mm;
}

bool SolidModel::installed() {
  return std::system("command -v ccx >/dev/null 2>&1") == 0;
}

std::string SolidModel::deck(double shear_mpa, double pressure_mpa, bool on_upper_face,
                             const std::vector<int>& clamped) const {
  std::ostringstream out;
  out << std::scientific;  // the program tells numbers from directions by the decimal point
  out.precision(10);
  out << "*NODE,NSET=ALL\n";
  for (std::size_t i = 0; i < places_.size(); ++i) write_node(out, static_cast<int>(i) + 1, places_[i]);
  out << "*ELEMENT,TYPE=C3D20R,ELSET=SHEET\n";
  for (std::size_t e = 0; e < bricks_.size(); ++e) {
    out << e + 1;
    for (int k = 0; k < 20; ++k) out << (k == 15 ? ",\n" : ",") << bricks_[e][k];
    out << "\n";
  }
  out << "*MATERIAL,NAME=SOFT\n*HYPERELASTIC,NEO HOOKE\n"
      << 0.5 * shear_mpa << "," << 2.0 / (kBulkOverShear * shear_mpa)
      << "\n*SOLID SECTION,ELSET=SHEET,MATERIAL=SOFT\n";
  if (polar_) out << "*TRANSFORM,NSET=ALL,TYPE=C\n0,0,0,0,0,1\n";
  for (std::size_t k = 0; k < holds_.size(); ++k) {
    const std::string name = "HELD" + std::to_string(k);
    write_set(out, name, holds_[k].nodes);
    out << "*BOUNDARY\n" << name << "," << holds_[k].first << "," << holds_[k].last << "\n";
  }
  if (plate_mm_) {
    const std::vector<int> face = nodes_where([](int, int, int w) { return w == 0; });
    const int grounds = static_cast<int>(places_.size()) + 1, springs = static_cast<int>(bricks_.size()) + 1;
    out << "*NODE,NSET=GROUND\n";
    for (int k = 0; k < static_cast<int>(face.size()); ++k)
      write_node(out, grounds + k, places_[face[k] - 1] - kGroundMm * Vec3::UnitZ());
    out << "*ELEMENT,TYPE=SPRINGA,ELSET=PLATE\n";
    for (int k = 0; k < static_cast<int>(face.size()); ++k)
      out << springs + k << "," << grounds + k << "," << face[k] << "\n";
    out << "*BOUNDARY\nGROUND,1,3\n*SPRING,ELSET=PLATE,NONLINEAR\n\n"
        << -kPlateNPerMm << "," << -*plate_mm_ - 1.0 << "\n0.0," << -*plate_mm_ << "\n0.0,100.0\n";
  }
  write_set(out, "CLAMP", clamped);
  write_set(out, "PUSHED", on_upper_face ? highest_ : lowest_, "ELSET");
  out << "*STEP,NLGEOM,INC=500\n*STATIC\n0.02,1.0,1e-6,0.2\n*DLOAD\nPUSHED,"
      << (on_upper_face ? "P2," : "P1,") << pressure_mpa << "\n*NODE PRINT,NSET=ALL,FREQUENCY=500\nU\n"
      << "*NODE PRINT,NSET=CLAMP,FREQUENCY=500,TOTALS=ONLY\nRF\n*END STEP\n";
  return out.str();
}

std::optional<SolidModel::Answer> SolidModel::solve(double shear_mpa, double pressure_mpa, bool on_upper_face,
                                                    const std::vector<int>& clamped,
                                                    std::string& problem) const {
  const RunFolder folder;
  std::ofstream(folder.path / "sheet.inp") << deck(shear_mpa, pressure_mpa, on_upper_face, clamped);
  const std::string command =
      "cd '" + folder.path.string() + "' && OMP_NUM_THREADS=1 timeout 900 ccx sheet > said.txt 2>&1";
  const int code = std::system(command.c_str());
  std::ifstream printed(folder.path / "sheet.dat"), steps(folder.path / "sheet.sta");
  std::string line, last_step;
  while (std::getline(steps, line))
    if (!line.empty()) last_step = line;
  if (code != 0 || last_step.find("0.100000E+01") == std::string::npos) {
    problem = "CalculiX ended with code " + std::to_string(code) + " after: " + last_step;
    return std::nullopt;
  }
  Answer answer;
  bool forces = false;
  while (std::getline(printed, line)) {
    if (line.find("total force") != std::string::npos) forces = true;
    std::istringstream words(line);
    int node = 0;
    Vec3 value;
    if (forces && words >> value.x() >> value.y() >> value.z()) answer.clamp_force_n = value;
    if (!forces && words >> node >> value.x() >> value.y() >> value.z()) answer.displacement_mm[node] = value;
  }
  return answer;
}

std::optional<double> quarter_square(const SquareSolid& square, std::string& problem) {
  const int cells = square.cells, layers = square.layers;
  SolidModel solid({cells, cells, layers, [&](double u, double v, double w) {
                      return Vec3(30.0 * graded(u, cells), 30.0 * graded(v, cells),
                                  square.thickness_mm * (w / layers - 0.5));
                    }});
  const auto clamped =
      solid.nodes_where([cells](int u, int v, int) { return u == 2 * cells || v == 2 * cells; });
  solid.hold(solid.nodes_where([](int u, int, int) { return u == 0; }), 1, 1);
  solid.hold(solid.nodes_where([](int, int v, int) { return v == 0; }), 2, 2);
  solid.hold(clamped, 1, 3);
  if (square.plate_mm) solid.add_plate_below(*square.plate_mm);
  constexpr double kPressureMpa = 0.002;
  const auto answer = solid.solve(0.03, kPressureMpa, square.plate_mm.has_value(), clamped, problem);
  if (!answer) return std::nullopt;
  if (square.plate_mm) return 4.0 * (kPressureMpa * 30.0 * 30.0 - answer->clamp_force_n.z());
  const auto middle = solid.nodes_where([&](int u, int v, int w) { return u == 0 && v == 0 && w == layers; });
  return answer->displacement_mm.at(middle[0]).z();
}

}  // namespace wrapgauge::published
