#include "model/body/thin_face.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <tuple>
#include <utility>

#include "model/body/edge_table.hpp"
#include "model/geometry/keyed_runs.hpp"

namespace wrapgauge {
namespace {

// Height over longest side below which a face is a line. Far above rounding of 8-byte numbers, far below any
// face that was meant. Judgement.
constexpr double kThin = 1e-7;

// The side opposite to which a face has no height; 3 for a face with area.
int thin_side(const Points3& vertices, const Triangles& faces, int face) {
  const Vec3 a = vertices.row(faces(face, 0)), b = vertices.row(faces(face, 1)),
             c = vertices.row(faces(face, 2));
  const std::array<double, 3> squares = {(b - a).squaredNorm(), (c - b).squaredNorm(), (a - c).squaredNorm()};
  const int longest = static_cast<int>(std::max_element(squares.begin(), squares.end()) - squares.begin());
  return (b - a).cross(c - a).norm() <= kThin * squares[longest] ? longest : 3;
}

bool uses_vertex_twice(const Triangles& faces, int f) {
  return faces(f, 0) == faces(f, 1) || faces(f, 1) == faces(f, 2) || faces(f, 2) == faces(f, 0);
}

// Corners: thin face a b c with long side a-b, neighbour b a d in either turn -> a d c and d b c.
void flip(Triangles& faces, EdgeTable::Use thin, EdgeTable::Use other) {
  const int a = faces(thin.face, thin.side), b = faces(thin.face, (thin.side + 1) % 3),
            c = faces(thin.face, (thin.side + 2) % 3), d = faces(other.face, (other.side + 2) % 3);
  const bool opposed = faces(other.face, other.side) == b;
  faces.row(thin.face) << a, d, c;
  faces.row(other.face) << d, b, c;
  if (opposed) return;
  // The neighbour is turned the other way: each new face keeps the turn of one of the two.
  std::swap(faces(other.face, 0), faces(other.face, 1));
}

// One round over all edges. A face changes at most once a round.
ThinFaceRepair repair_round(const Points3& vertices, Triangles& faces) {
  const EdgeTable edges(faces);
  std::vector<char> keep(faces.rows(), 1), touched(faces.rows(), 0);
  ThinFaceRepair result;
  for (std::size_t edge = 0; edge < edges.size(); ++edge) {
    const auto uses = edges.uses(edge);
    for (std::size_t i = 0; i < uses.size(); ++i) {
      if (touched[uses[i].face] || thin_side(vertices, faces, uses[i].face) != uses[i].side) continue;
      const EdgeTable::Use other = uses[uses.size() == 2 ? 1 - i : i];
      if (uses.size() == 2 && touched[other.face]) continue;
      touched[uses[i].face] = touched[other.face] = 1;
      if (uses.size() == 2) {
        flip(faces, uses[i], other);
        ++result.flipped;
      } else {
        keep[uses[i].face] = 0;
        ++result.dropped;
      }
    }
  }
  keep_faces(faces, keep);
  return result;
}

}  // namespace

void keep_faces(Triangles& faces, const std::vector<char>& keep) {
  int kept = 0;
  for (int f = 0; f < faces.rows(); ++f) {
    if (!keep[f]) continue;
    if (kept != f) faces.row(kept) = faces.row(f).eval();
    ++kept;
  }
  faces.conservativeResize(kept, 3);
}

ThinFaceRepair remove_thin_faces(const Points3& vertices, Triangles& faces) {
  ThinFaceRepair total;
  // Flips may bring forth faces without height again; runs of them die out within a few rounds.
  for (int round = 0; round < 8; ++round) {
    std::vector<char> keep(faces.rows());
    for (int f = 0; f < faces.rows(); ++f) keep[f] = !uses_vertex_twice(faces, f);
    const int before = static_cast<int>(faces.rows());
    keep_faces(faces, keep);
    total.dropped += before - static_cast<int>(faces.rows());
    bool any = false;
    for (int f = 0; f < faces.rows() && !any; ++f) any = thin_side(vertices, faces, f) != 3;
    if (!any) break;
    const ThinFaceRepair more = repair_round(vertices, faces);
    total.dropped += more.dropped;
    total.flipped += more.flipped;
  }
  return total;
}

int remove_doubled_faces(Triangles& faces) {
  struct Key {
    int middle, highest, face;
  };
  const std::size_t vertices = faces.size() > 0 ? static_cast<std::size_t>(faces.maxCoeff()) + 1 : 0;
  KeyedRuns<Key> by_lowest(vertices, [&](const auto& put) {
    for (int f = 0; f < faces.rows(); ++f) {
      std::array<int, 3> corners = {faces(f, 0), faces(f, 1), faces(f, 2)};
      std::sort(corners.begin(), corners.end());
      put(corners[0], Key{corners[1], corners[2], f});
    }
  });
  std::vector<char> keep(faces.rows(), 1);
  int doubled = 0;
  for (std::size_t lowest = 0; lowest < by_lowest.keys(); ++lowest) {
    const auto run = by_lowest.run(lowest);
    std::sort(run.begin(), run.end(), [](const Key& a, const Key& b) {
      return std::tie(a.middle, a.highest, a.face) < std::tie(b.middle, b.highest, b.face);
    });
    for (std::size_t i = 1; i < run.size(); ++i) {
      if (run[i].middle != run[i - 1].middle || run[i].highest != run[i - 1].highest) continue;
      keep[run[i].face] = 0;
      ++doubled;
    }
  }
  if (doubled > 0) keep_faces(faces, keep);
  return doubled;
}

}  // namespace wrapgauge
