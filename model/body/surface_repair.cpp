#include "model/body/surface_repair.hpp"

#include <cmath>
#include <utility>

#include "model/body/manifold_repair.hpp"
#include "model/body/thin_face.hpp"
#include "model/body/used_vertices.hpp"
#include "model/body/vertex_weld.hpp"

namespace wrapgauge {
namespace {

Phrase vertex_count(int count) {
  return count == 1 ? Phrase::worded("1 vertex") : Phrase::worded("%1 vertices", {figures_of(count)});
}

Phrase face_count(int count) {
  return count == 1 ? Phrase::worded("1 face") : Phrase::worded("%1 faces", {figures_of(count)});
}

class Log {
 public:
  explicit Log(std::vector<Repair>& repairs) : repairs_(repairs) {}
  void add(RepairKind kind, int count, Phrase sentence) {
    if (count > 0) repairs_.push_back({kind, count, std::move(sentence)});
  }

 private:
  std::vector<Repair>& repairs_;
};

void mend_faces(RepairedSurface& surface, Log& log) {
  const int welded = weld_vertices(surface.vertices, surface.faces);
  log.add(RepairKind::kWelded, welded,
          Phrase::worded("Welded %1 onto others at the same place.", {vertex_count(welded)}));
  int doubled = remove_doubled_faces(surface.faces);
  const ThinFaceRepair thin = remove_thin_faces(surface.vertices, surface.faces);
  const Phrase removed = face_count(thin.dropped + thin.flipped);
  log.add(RepairKind::kNoArea, thin.dropped + thin.flipped,
          thin.flipped > 0 ? Phrase::worded("Removed %1 without area, %2 of them by flipping an edge.",
                                            {removed, figures_of(thin.flipped)})
                           : Phrase::worded("Removed %1 without area.", {removed}));
  if (thin.flipped > 0) doubled += remove_doubled_faces(surface.faces);  // flips may make them
  log.add(RepairKind::kDoubled, doubled,
          doubled == 1
              ? Phrase::worded("Dropped 1 face that was there more than once.")
              : Phrase::worded("Dropped %1 faces that were there more than once.", {figures_of(doubled)}));
}

void drop_unused_vertices(RepairedSurface& surface) {
  const std::vector<int> used = used_vertices(surface.faces, surface.vertices.rows());
  std::vector<int> index(static_cast<std::size_t>(surface.vertices.rows()), -1);
  for (std::size_t i = 0; i < used.size(); ++i)
    index[static_cast<std::size_t>(used[i])] = static_cast<int>(i);
  surface.vertices = Points3(surface.vertices(used, Eigen::all));
  for (int& corner : surface.faces.reshaped()) corner = index[static_cast<std::size_t>(corner)];
}

// Judgement: what a scanner leaves beside a limb is far smaller; what is not may be the limb that was meant.
constexpr double kSimilar = 0.25;

std::optional<Problem> choose_piece(RepairedSurface& surface, Log& log) {
  const PieceChoice choice = keep_largest_piece(surface.vertices, surface.faces);
  if (choice.next_share > kSimilar * choice.share_of_area)
    return bad_input(Phrase::worded(
        "The mesh holds %1 separate pieces, the two largest with %2 % and %3 % of the area, so it "
        "may be two limbs: write each to a file of its own with 'wrapgauge body pieces' and name "
        "the one you mean; a table under a limb is dropped by 'wrapgauge body repair'.",
        {figures_of(choice.pieces), figures_of(std::to_string(std::lround(100.0 * choice.share_of_area))),
         figures_of(std::to_string(std::lround(100.0 * choice.next_share)))}));
  log.add(RepairKind::kOtherPieces, choice.faces_left_out,
          Phrase::worded("Kept the largest of %1 separate pieces (%2 of the area) and left out the %3 of the "
                         "rest.",
                         {figures_of(choice.pieces),
                          figures_of(std::to_string(std::lround(100.0 * choice.share_of_area)) + " %"),
                          face_count(choice.faces_left_out)}));
  return std::nullopt;
}

}  // namespace

Result<RepairedSurface> repair_surface(Points3 vertices, Triangles faces) {
  RepairedSurface surface{std::move(vertices), std::move(faces), {}};
  Log log(surface.repairs);
  mend_faces(surface, log);
  if (surface.faces.rows() == 0)
    return bad_input(Phrase::worded("The mesh has no face with any area; it is not a body surface."));
  const Result<int> fins = cut_fins(surface.vertices, surface.faces);
  if (!fins) return fins.problem();
  log.add(RepairKind::kFin, *fins,
          Phrase::worded("Cut off %1 hanging on edges that already joined two others.", {face_count(*fins)}));
  if (auto problem = choose_piece(surface, log)) return *problem;
  const int split = split_touching_vertices(surface.vertices, surface.faces);
  log.add(RepairKind::kSplitVertices, split,
          Phrase::worded("Split %1 where the surface touched itself at a point.", {vertex_count(split)}));
  const std::optional<int> turned = turn_outward(surface.vertices, surface.faces);
  if (!turned)
    return bad_input(Phrase::worded(
        "The surface has only one side, like a twisted ring, so no outside can be told; correct it "
        "in the program that made it."));
  log.add(RepairKind::kTurned, *turned, Phrase::worded("Turned %1 to face outward.", {face_count(*turned)}));
  drop_unused_vertices(surface);
  return surface;
}

}  // namespace wrapgauge
