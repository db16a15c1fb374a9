#pragma once
// The skin-side nodes against soft tissue: E = 1/2 k A <g>^2 where g < 0, g = signed distance - offset +
// lowering. A (deformed nodal area), the friction limit mu N and the skin normal are held during a step and
// follow the shape after it. The place where the skin grips and its lowering by other nodes' forces (0 on a
// plain foundation) are held during a whole solve.

#include <optional>
#include <vector>

#include "model/inflation/coupled_layer.hpp"
#include "model/inflation/friction.hpp"
#include "model/inflation/load_path.hpp"

namespace wrapgauge {

struct ContactNode {
  int node = 0;
  int flat_vertex = 0;
  double foundation_pa_per_m = 0.0;
  double offset_m = 0.0;
  bool bonded = false;  // glued rim: the tissue also pulls, and nothing slides below the bond's strength
  // Held during a step:
  double area_m2 = 0.0;
  double friction_limit_n = 0.0;
  Vec3 normal = Vec3::UnitZ();
  // Held during a solve:
  double lowering_m = 0.0;  // of the skin here, beside the node's own spring
  Vec3 grip_m = Vec3::Zero();
};

using SkinSamples = std::vector<DistanceSample>;

// A flat vertex each: on a rim that is glued or taped to the skin. The rim is what is fused outside the
// chambers, their edges included, and the layout's own edge; straps are cloth and not glued.
std::vector<bool> glued_vertices(const InflationSetup& setup, const SheetMesh& sheet);

// How the lowering that is held compares with the one that the forces in a shape cause.
struct CoupledFit {
  Eigen::VectorXd lowering_m;  // caused, a contact node each
  double worst_misfit_m = 0.0;
  double largest_lowering_m = 0.0;  // of the skin, own spring included
};

class TissueContact {
 public:
  TissueContact(const InflationSetup& setup, const SheetMesh& sheet, const InflationOptions& options,
                const Points3& start_m);

  const std::vector<ContactNode>& nodes() const { return nodes_; }
  // The body's signed distance at each contact node, in their order.
  SkinSamples samples(const Points3& positions_m) const;
  // Energy, gradient and Hessian at one node: normal pressure and friction.
  FrictionTerm term(const ContactNode& node, const Vec3& position_m, bool projected) const;
  FrictionTerm term(const ContactNode& node, const Vec3& position_m, const DistanceSample& sample,
                    bool projected) const;
  // What the Hessian lacks at one node for sliding to meet a share of the resistance across it.
  Mat3 sliding_resistance(const ContactNode& node, const Vec3& position_m, double share) const;
  Vec3 force_on_sheet(const ContactNode& node, const Vec3& position_m) const;
  // Compression of the node's own spring: contact pressure / foundation.
  double compression_m(const ContactNode& node, const Vec3& position_m) const;
  // How far the skin is lowered from rest, own spring included.
  double indentation_m(const ContactNode& node, const Vec3& position_m) const;

  bool is_coupled() const { return layer_.has_value(); }
  Eigen::VectorXd lowering_m() const;
  void set_lowering_m(const Eigen::VectorXd& lowering_m);
  // Coupled tissue only.
  CoupledFit coupled_fit(const Points3& positions_m) const;

  // Brings area, friction limit and normal to the present shape, or by `share` of the way to it.
  void refresh(const SheetMesh& sheet, const Points3& positions_m, const SkinSamples& samples,
               double share = 1.0);
  // How the gradient (3 a sheet node) changes along `way_m` because area, normal and friction limit follow
  // the shape: what the Hessian of term() leaves out. Not symmetric.
  void add_following(const SheetMesh& sheet, const Points3& positions_m, const SkinSamples& samples,
                     const Points3& way_m, Eigen::VectorXd& change_n) const;
  void drag_grips(const Points3& positions_m);

 private:
  Eigen::VectorXd area_change(const SheetMesh& sheet, const Points3& positions_m, const Points3& way_m) const;
  double friction_limit_n(const ContactNode& contact) const;
  FrictionTerm friction_of(const ContactNode& contact, const Vec3& position_m) const;
  static double gap_m(const ContactNode& contact, const DistanceSample& sample) {
    return sample.distance_m - contact.offset_m + contact.lowering_m;
  }
  Eigen::VectorXd areas_m2(const SheetMesh& sheet, const Points3& positions_m) const;  // a contact node each
  SkinPlaces places(const Points3& positions_m) const;

  const SignedDistance* body_;
  double friction_;
  double elastic_slip_m_;
  double bond_pa_;
  std::vector<ContactNode> nodes_;
  std::optional<CoupledLayer> layer_;
};

}  // namespace wrapgauge
