#pragma once
// Contact pressure as people read it: a map on the skin, the same map on the flat layout, figures a chamber
// each.

#include <string>
#include <vector>

#include "model/body/body.hpp"
#include "model/contact/seam_figures.hpp"
#include "model/inflation/load_path.hpp"
#include "model/inflation/membrane_stress.hpp"

namespace wrapgauge {

struct ContactMap {  // a flat vertex each
  Eigen::VectorXd on_layout_pa;
  Eigen::VectorXd mean_1cm2_pa;  // averaged over 1 cm2 around it
};

ContactMap contact_map(const InflationSetup& setup, const LoadPath& path, const EquilibriumState& state);

struct SkinMap {
  TriangleMesh skin;            // body surface, refined where the layout lies so that the map is smooth
  Eigen::VectorXd pressure_pa;  // a vertex of `skin` each; 0 where nothing touches
};

SkinMap skin_map(const Body& body, const InflationSetup& setup, const LoadPath& path,
                 const EquilibriumState& state);

struct ChamberFigures {
  std::string chamber;
  Pressure gauge;
  Volume volume;  // its own share of the group's volume
  Pressure mean;  // contact force over the chamber's drawn area
  Pressure peak;  // highest average over 1 cm2
  Vec3 peak_at_m = Vec3::Zero();
  Vec2 peak_at_flat_m = Vec2::Zero();
  Pressure p95;  // area-weighted 95th percentile of touching skin
  Area drawn_area, contact_area;
  double contact_fraction = 0.0;  // contact area over the chamber's deformed skin-side area
  Force force;
  double stretch_max = 1.0;
  double share_of_break = 0.0;  // (stretch - 1) / elongation at break
  LineTension seam_tension;     // largest membrane tension in triangles along the chamber's seam
  Length indentation_max;
  double tissue_strain = 0.0;  // largest indentation over tissue depth
};

struct ContactFigures {
  std::vector<ChamberFigures> chambers;
  Pressure peak_anywhere;  // over 1 cm2, seams and straps included
  Vec3 peak_at_m = Vec3::Zero();
  Phrase peak_part;  // the name of a chamber, strap or channel, or "seam"
  double share_of_girth =
      0.0;  // largest share of a girth that is pressed, 0..1, over sections along the axis
  Force total_force;
  std::vector<SeamFigures> seams;  // most loaded first
};

struct FigureInputs {
  double skin_elongation_at_break = 0.0, outer_elongation_at_break = 0.0;
  Eigen::VectorXd tissue_depth_m;  // a flat vertex each
};

// Of each chamber: gauge, volume, force, areas, mean, peak and stretch, for one state of many. What takes
// long is left out: p95, indentation, and all that is of the whole device.
std::vector<ChamberFigures> brief_chamber_figures(const InflationSetup& setup, const FigureInputs& inputs,
                                                  const LoadPath& path, const EquilibriumState& state,
                                                  const ContactMap& map);

ContactFigures contact_figures(const Body& body, const InflationSetup& setup, const FigureInputs& inputs,
                               const LoadPath& path, const EquilibriumState& state, const ContactMap& map);

}  // namespace wrapgauge
