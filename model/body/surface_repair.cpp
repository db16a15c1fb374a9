#include "model/body/surface_repair.hpp"

#include <cmath>

#include "model/body/manifold_repair.hpp"
#include "model/body/thin_face.hpp"
#include "model/body/vertex_weld.hpp"

namespace wrapgauge {
namespace {

std::string counted(int count, const std::string& one, const std::string& many) {
  return std::to_string(count) + " " + (count == 1 ? one : many);
}

class Log {
 public:
  explicit Log(std::vector<Repair>& repairs) : repairs_(repairs) {}
  void add(RepairKind kind, int count, std::string sentence) {
    if (count > 0) repairs_.push_back({kind, count, std::move(sentence)});
  }

 private:
  std::vector<Repair>& repairs_;
};

void mend_faces(RepairedSurface& surface, Log& log) {
  const int welded = weld_vertices(surface.vertices, surface.faces);
  log.add(RepairKind::kWelded, welded,
          "Welded " + counted(welded, "vertex", "vertices") + " onto others at the same place.");
  int doubled = remove_doubled_faces(surface.faces);
  const ThinFaceRepair thin = remove_thin_faces(surface.vertices, surface.faces);
  log.add(
      RepairKind::kNoArea, thin.dropped + thin.flipped,
      "Removed " + counted(thin.dropped + thin.flipped, "face", "faces") + " without area" +
          (thin.flipped > 0 ? ", " + std::to_string(thin.flipped) + " of them by flipping an edge." : "."));
  doubled += remove_doubled_faces(surface.faces);
  log.add(RepairKind::kDoubled, doubled,
          "Dropped " + counted(doubled, "face that was", "faces that were") + " there more than once.");
}

void drop_unused_vertices(RepairedSurface& surface) {
  std::vector<int> index(surface.vertices.rows(), -1);
  for (int i = 0; i < surface.faces.size(); ++i) index[surface.faces.data()[i]] = 0;
  int used = 0;
  for (int v = 0; v < surface.vertices.rows(); ++v) {
    if (index[v] < 0) continue;
    surface.vertices.row(used) = surface.vertices.row(v).eval();
    index[v] = used++;
  }
  surface.vertices.conservativeResize(used, 3);
  for (int i = 0; i < surface.faces.size(); ++i) surface.faces.data()[i] = index[surface.faces.data()[i]];
}

void choose_piece(RepairedSurface& surface, Log& log) {
  const PieceChoice choice = keep_largest_piece(surface.vertices, surface.faces);
  const long percent = std::lround(100.0 * choice.share_of_area);
  log.add(RepairKind::kOtherPieces, choice.faces_left_out,
          "Kept the largest of " + std::to_string(choice.pieces) + " separate pieces (" +
              std::to_string(percent) + " % of the area) and left out the " +
              counted(choice.faces_left_out, "face", "faces") + " of the rest.");
}

}  // namespace

Result<RepairedSurface> repair_surface(const RawMesh& raw) {
  RepairedSurface surface{raw.vertices, raw.faces, {}};
  Log log(surface.repairs);
  mend_faces(surface, log);
  if (surface.faces.rows() == 0)
    return bad_input("The mesh has no face with any area; it is not a body surface.");
  const Result<int> fins = cut_fins(surface.vertices, surface.faces);
  if (!fins) return fins.problem();
  log.add(RepairKind::kFin, *fins,
          "Cut off " + counted(*fins, "face", "faces") + " hanging on edges that already joined two others.");
  choose_piece(surface, log);
  const int split = split_touching_vertices(surface.vertices, surface.faces);
  log.add(RepairKind::kSplitVertices, split,
          "Split " + counted(split, "vertex", "vertices") + " where the surface touched itself at a point.");
  const std::optional<int> turned = turn_outward(surface.vertices, surface.faces);
  if (!turned)
    return bad_input(
        "The surface has only one side, like a twisted ring, so no outside can be told; mend it in the "
        "program that "
        "made it.");
  log.add(RepairKind::kTurned, *turned, "Turned " + counted(*turned, "face", "faces") + " to face outward.");
  drop_unused_vertices(surface);
  return surface;
}

}  // namespace wrapgauge
