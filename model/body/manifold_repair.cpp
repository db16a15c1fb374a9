#include "model/body/manifold_repair.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <string>
#include <vector>

#include "model/body/boundary_loop.hpp"
#include "model/body/thin_face.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

UnionFind joined_faces(const Triangles& faces, const EdgeTable& edges) {
  UnionFind patches(static_cast<int>(faces.rows()));
  for (std::size_t edge = 0; edge < edges.size(); ++edge)
    if (const auto uses = edges.uses(edge); uses.size() == 2) patches.join(uses[0].face, uses[1].face);
  return patches;
}

Phrase place(const Points3& vertices, int v) {
  const auto coordinate = [&](int k) { return figures_of(number_text(vertices(v, k))); };
  return Phrase::worded("vertex %1 (%2, %3, %4)",
                        {figures_of(v + 1), coordinate(0), coordinate(1), coordinate(2)});
}

std::optional<Problem> crowded_edge(const Points3& vertices, const Triangles& faces) {
  const EdgeTable edges(faces);
  for (std::size_t edge = 0; edge < edges.size(); ++edge) {
    const auto uses = edges.uses(edge);
    if (uses.size() < 3) continue;
    const int a = faces(uses[0].face, uses[0].side), b = faces(uses[0].face, (uses[0].side + 1) % 3);
    return bad_input(
        Phrase::worded(
            "The edge from %1 to %2 belongs to %3 faces; a skin has two at an edge, so remove inner "
            "walls in the program that made the mesh.",
            {place(vertices, a), place(vertices, b), figures_of(static_cast<int>(uses.size()))}),
        {{ProblemPlace::Kind::kVertex, a}, {ProblemPlace::Kind::kVertex, b}});
  }
  return std::nullopt;
}

// Patches in the order they may be cut off: few faces first, then by lowest face.
std::vector<int> small_patches(UnionFind& patches, int face_count, std::vector<int>& size) {
  size.assign(face_count, 0);
  for (int f = 0; f < face_count; ++f) ++size[patches.root(f)];
  std::vector<int> small;
  for (int f = 0; f < face_count; ++f)
    if (size[f] > 0 && size[f] <= std::max(4, face_count / 100)) small.push_back(f);
  std::stable_sort(small.begin(), small.end(), [&](int a, int b) { return size[a] < size[b]; });
  return small;
}

int cut_round(Triangles& faces) {
  const EdgeTable edges(faces);
  const int count = static_cast<int>(faces.rows());
  UnionFind patches = joined_faces(faces, edges);
  std::vector<int> size;
  const std::vector<int> small = small_patches(patches, count, size);
  std::vector<std::vector<std::size_t>> crowded_of(count);  // by patch root
  std::vector<std::size_t> faces_left(edges.size());
  for (std::size_t edge = 0; edge < edges.size(); ++edge) {
    const auto uses = edges.uses(edge);
    faces_left[edge] = uses.size();
    if (uses.size() > 2)
      for (const auto& use : uses) crowded_of[patches.root(use.face)].push_back(edge);
  }
  std::vector<char> cut(count, 0);  // by patch root
  for (const int patch : small) {
    const auto& crowded = crowded_of[patch];
    if (std::none_of(crowded.begin(), crowded.end(), [&](std::size_t edge) { return faces_left[edge] > 2; }))
      continue;
    cut[patch] = 1;
    for (const std::size_t edge : crowded) --faces_left[edge];
  }
  std::vector<char> keep(count);
  for (int f = 0; f < count; ++f) keep[f] = !cut[patches.root(f)];
  keep_faces(faces, keep);
  return count - static_cast<int>(faces.rows());
}

// Six times the volume between a triangle and the origin.
double six_volumes(const Vec3& a, const Vec3& b, const Vec3& c) {
  return a.dot(b.cross(c));
}

double closed_volume(const Points3& vertices, const Triangles& faces) {
  const Vec3 origin = vertices.row(faces(0, 0));
  const auto at = [&](int v) -> Vec3 { return vertices.row(v).transpose() - origin; };
  double six = 0.0;
  for (int f = 0; f < faces.rows(); ++f)
    six += six_volumes(at(faces(f, 0)), at(faces(f, 1)), at(faces(f, 2)));
  for (const auto& loop : boundary_loops(faces)) {
    Vec3 centre = Vec3::Zero();
    for (const int v : loop) centre += at(v) / static_cast<double>(loop.size());
    for (std::size_t i = 0; i < loop.size(); ++i)
      six += six_volumes(at(loop[(i + 1) % loop.size()]), at(loop[i]), centre);
  }
  return six / 6.0;
}

struct Neighbour {
  int face = -1;
  bool agrees = true;
};

std::vector<Neighbour> neighbours(const Triangles& faces) {
  const EdgeTable edges(faces);
  std::vector<Neighbour> result(faces.size());
  for (std::size_t edge = 0; edge < edges.size(); ++edge) {
    const auto uses = edges.uses(edge);
    if (uses.size() != 2) continue;
    const bool agrees = faces(uses[0].face, uses[0].side) != faces(uses[1].face, uses[1].side);
    result[3 * uses[0].face + uses[0].side] = {uses[1].face, agrees};
    result[3 * uses[1].face + uses[1].side] = {uses[0].face, agrees};
  }
  return result;
}

// Whether each face has to be turned to agree with the first of its piece; none: not possible.
std::optional<std::vector<char>> agreeing_turns(const Triangles& faces) {
  const std::vector<Neighbour> across = neighbours(faces);
  std::vector<char> turn(faces.rows(), 2);  // 2: not yet known
  std::vector<int> front;
  for (int first = 0; first < faces.rows(); ++first) {
    if (turn[first] != 2) continue;
    turn[first] = 0;
    front.push_back(first);
    while (!front.empty()) {
      const int face = front.back();
      front.pop_back();
      for (int k = 0; k < 3; ++k) {
        const Neighbour& next = across[3 * face + k];
        if (next.face < 0) continue;
        const char wanted = static_cast<char>(next.agrees ? turn[face] : 1 - turn[face]);
        if (turn[next.face] == 2) {
          turn[next.face] = wanted;
          front.push_back(next.face);
        } else if (turn[next.face] != wanted) {
          return std::nullopt;
        }
      }
    }
  }
  return turn;
}

void turn_face(Triangles& faces, int f) {
  std::swap(faces(f, 1), faces(f, 2));
}

}  // namespace

Result<int> cut_fins(const Points3& vertices, Triangles& faces) {
  int total = 0;
  for (int round = 0; round < 8; ++round) {
    const auto problem = crowded_edge(vertices, faces);
    if (!problem) return total;
    const int cut = cut_round(faces);
    if (cut == 0) return *problem;
    total += cut;
  }
  if (const auto problem = crowded_edge(vertices, faces)) return *problem;
  return total;
}

PieceChoice keep_largest_piece(const Points3& vertices, Triangles& faces) {
  UnionFind pieces = joined_faces(faces, EdgeTable(faces));
  std::vector<double> area(faces.rows(), 0.0);
  PieceChoice choice{0, 0, 1.0, 0.0};
  double whole = 0.0;
  for (int f = 0; f < faces.rows(); ++f) {
    const Vec3 a = vertices.row(faces(f, 0)), b = vertices.row(faces(f, 1)), c = vertices.row(faces(f, 2));
    const double twice = (b - a).cross(c - a).norm();
    area[pieces.root(f)] += twice;
    whole += twice;
    choice.pieces += pieces.root(f) == f;
  }
  const int largest = static_cast<int>(std::max_element(area.begin(), area.end()) - area.begin());
  std::vector<char> keep(faces.rows());
  for (int f = 0; f < faces.rows(); ++f) keep[f] = pieces.root(f) == largest;
  choice.faces_left_out = static_cast<int>(std::count(keep.begin(), keep.end(), 0));
  choice.share_of_area = area[largest] / whole;
  for (int f = 0; f < faces.rows(); ++f)
    if (f != largest) choice.next_share = std::max(choice.next_share, area[f] / whole);
  keep_faces(faces, keep);
  return choice;
}

UnionFind vertex_fans(const Triangles& faces, const EdgeTable& edges) {
  UnionFind fans(static_cast<int>(faces.size()));
  for (std::size_t edge = 0; edge < edges.size(); ++edge) {
    const auto uses = edges.uses(edge);
    if (uses.size() != 2) continue;
    const int a0 = 3 * uses[0].face + uses[0].side, a1 = 3 * uses[0].face + (uses[0].side + 1) % 3;
    const int b0 = 3 * uses[1].face + uses[1].side, b1 = 3 * uses[1].face + (uses[1].side + 1) % 3;
    const bool same_way = faces.data()[a0] == faces.data()[b0];
    fans.join(a0, same_way ? b0 : b1);
    fans.join(a1, same_way ? b1 : b0);
  }
  return fans;
}

int split_touching_vertices(Points3& vertices, Triangles& faces) {
  UnionFind fans = vertex_fans(faces, EdgeTable(faces));
  std::vector<char> owned(vertices.rows(), 0);
  std::vector<int> vertex_of(faces.size()), copy_of;
  const int first_copy = static_cast<int>(vertices.rows());
  for (int corner = 0; corner < faces.size(); ++corner) {
    if (fans.root(corner) != corner) continue;
    const int v = faces.data()[corner];
    vertex_of[corner] = owned[v] ? first_copy + static_cast<int>(copy_of.size()) : v;
    if (owned[v]) copy_of.push_back(v);
    owned[v] = 1;
  }
  const int copies = static_cast<int>(copy_of.size());
  vertices.conservativeResize(first_copy + copies, 3);
  for (int i = 0; i < copies; ++i) vertices.row(first_copy + i) = vertices.row(copy_of[i]).eval();
  for (int corner = 0; corner < faces.size(); ++corner) faces.data()[corner] = vertex_of[fans.root(corner)];
  return copies;
}

std::optional<int> turn_outward(const Points3& vertices, Triangles& faces) {
  const auto turn = agreeing_turns(faces);
  if (!turn) return std::nullopt;
  int turned = 0;
  for (int f = 0; f < faces.rows(); ++f) {
    if ((*turn)[f] == 0) continue;
    turn_face(faces, f);
    ++turned;
  }
  if (closed_volume(vertices, faces) >= 0.0) return turned;
  for (int f = 0; f < faces.rows(); ++f) turn_face(faces, f);
  return static_cast<int>(faces.rows()) - turned;
}

}  // namespace wrapgauge
