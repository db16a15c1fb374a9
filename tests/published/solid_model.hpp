#pragma once
// A neo-Hookean solid solved by CalculiX (Debian package calculix-ccx), a general-purpose finite-element
// program that shares no code and no shell theory with ours: 20-node bricks, follower pressure, large
// strain. Units there: mm, N, MPa.

#include <array>
#include <cmath>
#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "model/core/array.hpp"

namespace wrapgauge::published {

// Layers of bricks over a grid of cells, placed by `place` (cell coordinates -> mm).
struct SolidGrid {
  int columns = 1, rows = 1, layers = 1;
  std::function<Vec3(double u, double v, double w)> place;  // w = 0 lower face, `layers` upper face
};

// Cell coordinate u of n cells, 0 to 1, that grow narrow towards the clamp at 1 as a power of the way to it.
inline double graded(double u, int n) {
  return 1.0 - std::pow(1.0 - u / n, 1.4);
}

class SolidModel {
 public:
  explicit SolidModel(const SolidGrid& grid);

  // Nodes at grid place (u, v, w) for which `wanted` holds; places count in half cells.
  std::vector<int> nodes_where(const std::function<bool(int u, int v, int w)>& wanted) const;

  void hold(const std::vector<int>& nodes, int first_direction, int last_direction);
  void use_polar_directions();  // 1 radial, 2 around z, 3 along z
  // Rigid frictionless plate that the lower face meets after moving down by `distance_mm`: a stiff one-way
  // spring at every node of the face.
  void add_plate_below(double distance_mm);
  // Solves with `pressure_mpa` on the upper face or, pushing up, on the lower one. None: the program is not
  // installed, or `problem` says what it said.
  struct Answer {
    std::map<int, Vec3> displacement_mm;
    Vec3 clamp_force_n;  // reaction of the nodes in `clamped`
  };
  std::optional<Answer> solve(double shear_mpa, double pressure_mpa, bool on_upper_face,
                              const std::vector<int>& clamped, std::string& problem) const;

  static bool installed();

 private:
  std::string deck(double shear_mpa, double pressure_mpa, bool on_upper_face,
                   const std::vector<int>& clamped) const;
  int node_at(const SolidGrid& grid, int u, int v, int w);

  std::map<std::array<int, 3>, int> ids_;
  std::vector<Vec3> places_;
  std::vector<std::array<int, 20>> bricks_;
  std::vector<int> lowest_, highest_;  // bricks of the two outer layers, counted from 1
  struct Hold {
    std::vector<int> nodes;
    int first, last;
  };
  std::vector<Hold> holds_;
  bool polar_ = false;
  std::optional<double> plate_mm_;
};

// A quarter of a clamped square 60 x 60 mm of shear modulus 30 kPa under 2 kPa, of cells x cells x layers
// bricks: how far its middle rises, mm, or with how much force the whole square presses a plate below, N.
struct SquareSolid {
  double thickness_mm = 1.5;
  int cells = 8, layers = 1;
  std::optional<double> plate_mm = std::nullopt;  // below the lower face; pushed down then
};
std::optional<double> quarter_square(const SquareSolid& square, std::string& problem);

}  // namespace wrapgauge::published
