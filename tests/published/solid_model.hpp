#pragma once
// A neo-Hookean solid solved by CalculiX (Debian package calculix-ccx), a general-purpose finite-element
// program that shares no code and no shell theory with ours: 20-node bricks, follower pressure, large
// strain. Units there: mm, N, MPa.

#include <array>
#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "model/core/array.hpp"

namespace wrapgauge::published {

// One layer of bricks over a grid of cells, placed by `place` (cell coordinates -> mm).
struct SolidGrid {
  int columns = 1, rows = 1;
  std::function<Vec3(double u, double v, double w)> place;  // w = 0 lower face, 1 upper face
};

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
  struct Hold {
    std::vector<int> nodes;
    int first, last;
  };
  std::vector<Hold> holds_;
  bool polar_ = false;
  std::optional<double> plate_mm_;
};

// Rise of the middle of a clamped square 60 x 60 x 1.5 mm, shear modulus 30 kPa, under 2 kPa, from a quarter
// of cells x cells bricks.
std::optional<double> quarter_square_rise_mm(int cells, std::string& problem);

}  // namespace wrapgauge::published
