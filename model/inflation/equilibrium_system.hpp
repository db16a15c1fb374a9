#pragma once
// The total potential of the worn device as a function of all node positions: sheets, cloth, bending,
// stitches, sheet on sheet, tissue with friction, and chamber loads. One evaluation gives energy, gradient
// and tangent.

#include "model/inflation/bending.hpp"
#include "model/inflation/block_matrix.hpp"
#include "model/inflation/cavity_load.hpp"
#include "model/inflation/closure.hpp"
#include "model/inflation/rigid_plates.hpp"
#include "model/inflation/sheet_contact.hpp"
#include "model/inflation/sheet_elements.hpp"
#include "model/inflation/tissue_contact.hpp"

namespace wrapgauge {

struct Evaluation {
  double energy_j = 0.0;
  Eigen::VectorXd gradient_n;  // 3 a node; 0 on held nodes
  Eigen::VectorXd group_volume_m3;
  Eigen::MatrixXd volume_gradient_m2;  // a column a group; filled with the tangent
};

// The sheet that is nearest to the end of what its law is known for.
struct MostStretched {
  double share = 0.0;  // of its stretch limit, both less 1
  int group = 0;       // the chamber group it belongs to
};

class EquilibriumSystem {
 public:
  EquilibriumSystem(const InflationSetup& setup, const InflationOptions& options);

  const SolverSettings& settings() const { return options_.settings; }
  const SheetMesh& sheet() const { return sheet_; }
  const Points3& start_m() const { return start_m_; }
  const std::vector<GapCell>& cells() const { return cells_; }
  TissueContact& tissue() { return tissue_; }
  const TissueContact& tissue() const { return tissue_; }
  const std::vector<PlateNode>& plate_nodes() const { return plate_nodes_; }
  BlockMatrix& tangent() { return tangent_; }
  // Rest area over three of all triangles around a node: the load a pressure puts on it.
  const Eigen::VectorXd& node_area_m2() const { return node_area_m2_; }

  // The tangent matrix holds everything but the rank-one terms of what follows the volume: stiffness x the
  // square of a volume_gradient column. kProjected: positive semi-definite parts only, and no chamber term.
  // `next` is what the tangent is likely to be asked for at this same shape: the sheets' part is kept.
  Evaluation evaluate(const Points3& positions_m, const std::vector<CavityLoad>& loads, TangentKind kind,
                      TangentKind next = TangentKind::kNone);

  // Adds to the tangent what gives sliding skin this share of the resistance it meets across its way: the
  // tangent is no longer exact, but a step by it does not overshoot along the skin.
  void resist_sliding(const Points3& positions_m, double share);

  MostStretched most_stretched(const Points3& positions_m) const;

  // Brings what is held of the tissue during a step (areas, normals, friction limits) to the present shape,
  // or by `share` of the way to it.
  void refresh(const Points3& positions_m, double share = 1.0);

  // Change of the gradient along `way_m` because of what refresh() brings up to date: the part of the
  // Jacobian that the tangent leaves out. Not symmetric.
  Eigen::VectorXd following(const Points3& positions_m, const Points3& way_m);

 private:
  struct TriangleTerms {
    double energy, volume;
    Vec3 gradient[3], volume_gradient[3];
    Mat3 blocks[6];
  };
  struct EdgeTerms {
    double energy;
    Vec3 gradient[4];
    std::array<Mat3, 10> blocks;
  };
  // What terms_ and edge_terms_ were made for.
  struct TermsKey {
    Points3 positions_m;
    std::vector<double> pressure_pa;
    TangentKind kind = TangentKind::kNone;
  };
  // At the last shape asked for: a step asks several times at one.
  const SkinSamples& skin_samples(const Points3& positions_m);
  void bind_stencils();
  void evaluate_triangles(const Points3& x, const std::vector<CavityLoad>& loads, TangentKind kind);
  void set_triangle_terms(const Points3& x, int t, double pressure_pa, TangentKind kind);
  void add_sheet_terms(const Points3& x, int t, TangentKind kind, TriangleTerms& terms) const;
  void add_cavity_terms(const Points3& x, int t, double pressure_pa, TangentKind kind,
                        TriangleTerms& terms) const;
  void evaluate_edges(const Points3& x, TangentKind kind);
  void set_edge_terms(const Points3& x, std::size_t edge, TangentKind kind);
  void set_tangent_of_sheets();
  // Energy, gradient and volumes.
  void add_triangles(const std::vector<CavityLoad>& loads, TangentKind kind, Evaluation& out);
  void add_bending_and_stitches(const Points3& x, Evaluation& out) const;
  void add_gap_cells(const Points3& x, TangentKind kind, Evaluation& out);
  void add_tissue(const Points3& x, TangentKind kind, Evaluation& out);
  void add_weight(const Points3& x, Evaluation& out) const;
  void add_plates(const Points3& x, TangentKind kind, Evaluation& out);

  const InflationSetup& setup_;
  InflationOptions options_;
  SheetMesh sheet_;
  Points3 start_m_;
  std::vector<bool> held_;
  std::vector<HyperelasticLaw> strap_laws_;
  std::vector<SheetElement> elements_;
  BendingEdges edges_;
  std::vector<Stencil<4>> edge_stencils_;        // hinges, then welds
  std::vector<EdgeTerms> edge_terms_;            // the same
  std::vector<PlateFlexibility> flexibilities_;  // a triangle each
  std::vector<Stitch> stitches_;
  std::vector<GapCell> cells_;
  GapLaw gap_law_;
  std::vector<std::optional<GapTerms>> cell_terms_;  // a cell each, of the last evaluation
  TissueContact tissue_;
  std::vector<PlateNode> plate_nodes_;
  std::vector<Stencil<1>> plate_stencils_;
  std::vector<Stencil<3>> triangle_stencils_;
  std::vector<int> triangle_group_;    // -1: encloses nothing
  std::vector<double> triangle_side_;  // +1 outer, -1 skin
  std::vector<TriangleTerms> terms_;
  TermsKey terms_key_;
  std::vector<FrictionTerm> tissue_terms_;  // a contact node each
  Points3 sampled_at_m_;
  SkinSamples samples_;
  std::vector<Stencil<1>> tissue_stencils_;
  Eigen::VectorXd node_area_m2_;
  Eigen::VectorXd weight_n_;  // 3 a node; empty: none
  BlockMatrix tangent_;
  std::vector<double> constant_tangent_;  // stitches
};

}  // namespace wrapgauge
