#include "model/io/readers/gltf_reader.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <limits>

#include "model/core/json_object.hpp"
#include "model/core/number_text.hpp"
#include "model/core/said_problem.hpp"
#include "model/io/readers/gltf_buffers.hpp"
#include "model/io/readers/growing_rows.hpp"
#include "model/io/readers/mesh_reader_text.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;
using Transform = Eigen::Matrix4d;

constexpr int kDeepest = 64;
constexpr std::uint32_t kJsonChunk = 0x4E4F534A, kBinaryChunk = 0x004E4942;

// Numbers under `key`, exactly as many as `values` holds, all finite; true when left as they are.
template <std::size_t N>
bool read_numbers(const json& node, const char* key, std::array<double, N>& values) {
  const auto found = node.find(key);
  if (found == node.end()) return true;
  if (!found->is_array() || found->size() != N) return false;
  for (std::size_t i = 0; i < N; ++i) {
    if (!(*found)[i].is_number()) return false;
    values[i] = (*found)[i].get<double>();
    if (!std::isfinite(values[i])) return false;
  }
  return true;
}

std::optional<Transform> transform_of(const json& node) {
  std::array<double, 16> matrix{1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1};
  std::array<double, 3> shift{0, 0, 0}, scale{1, 1, 1};
  std::array<double, 4> turn{0, 0, 0, 1};  // x, y, z, w
  if (!read_numbers(node, "matrix", matrix) || !read_numbers(node, "translation", shift) ||
      !read_numbers(node, "scale", scale) || !read_numbers(node, "rotation", turn))
    return std::nullopt;
  if (node.contains("matrix")) return Eigen::Map<const Transform>(matrix.data());
  const Eigen::Quaterniond rotation(turn[3], turn[0], turn[1], turn[2]);
  if (!(rotation.norm() > 1e-6)) return std::nullopt;
  Transform out = Transform::Identity();
  out.topLeftCorner<3, 3>() =
      rotation.normalized().toRotationMatrix() * Vec3(scale[0], scale[1], scale[2]).asDiagonal();
  out.topRightCorner<3, 1>() = Vec3(shift[0], shift[1], shift[2]);
  return out;
}

// What a scene requires changes its shape, unless it is about how it looks.
std::optional<Problem> unread_extension(const json& root) {
  const auto required = root.find("extensionsRequired");
  if (required == root.end() || !required->is_array()) return std::nullopt;
  for (const json& item : *required) {
    const std::string name = item.is_string() ? item.get<std::string>() : "";
    if (const auto compressed = gltf_compression_fault(name)) return *compressed;
    const bool looks = name.find("_materials_") != name.npos || name.find("_texture_") != name.npos ||
                       name.find("_lights_") != name.npos;
    if (!looks)
      return bad_input(
          Phrase::worded("The scene cannot be read without its extension %1; switch that off in the export.",
                         {name_of(in_quotes(name, 60))}));
  }
  return std::nullopt;
}

// The scene's triangles, gathered node by node. Keeps the first problem it meets.
class Gatherer {
 public:
  Gatherer(const json& root, const GltfBuffers& buffers) : root_(root), buffers_(buffers) {
    const auto nodes = root.find("nodes");
    visited_.resize(nodes != root.end() && nodes->is_array() ? nodes->size() : 0, 0);
  }

  void take_scene() {
    problem_ = unread_extension(root_);
    if (problem_) return;
    const auto shown = gltf_whole(root_, "scene", 0);
    const json* scene = shown ? gltf_item(root_, "scenes", *shown) : nullptr;
    if (scene) return take_nodes(*scene, "nodes", Transform::Identity(), 0);
    for (std::size_t m = 0; gltf_item(root_, "meshes", m); ++m) take_mesh(m, Transform::Identity());
  }

  Result<RawMesh> gathered() {
    if (problem_) return *problem_;
    if (faces_.count() == 0)
      return bad_input(Phrase::worded("The scene shows no triangles; it is not a body surface."));
    RawMesh mesh;
    mesh.vertices = points_.take();
    mesh.faces = faces_.take();
    mesh.coordinate_step = largest_ * static_cast<double>(std::numeric_limits<float>::epsilon());
    mesh.unit = LengthUnit::kMetre;
    if (other_ > 0)
      mesh.notes.push_back(Phrase::worded("Left out %1 parts that are lines or points.",
                                          {figures_of(std::to_string(other_))}));
    return mesh;
  }

 private:
  void fail(Problem problem) {
    if (!problem_) problem_ = std::move(problem);
  }
  void fail(Phrase words) { fail(bad_input(std::move(words))); }

  void take_nodes(const json& owner, const char* key, const Transform& outer, int depth) {
    const auto list = owner.find(key);
    if (list == owner.end() || problem_) return;
    if (!list->is_array()) return fail(Phrase::worded("%1 is not a list.", {name_of(key)}));
    for (const json& item : *list) {
      if (!item.is_number_unsigned() || item.get<std::size_t>() >= visited_.size())
        return fail(Phrase::worded("A node is named that is not there; export the scan again."));
      take_node(item.get<std::size_t>(), outer, depth);
      if (problem_) return;
    }
  }

  void take_node(std::size_t index, const Transform& outer, int depth) {
    const json* node = gltf_item(root_, "nodes", index);
    if (!node || depth > kDeepest || visited_[index])
      return fail(Phrase::worded(
          "Node %1 is missing, stands in a ring or belongs to two others; export the scan again.",
          {count_of(index + 1)}));
    visited_[index] = 1;
    const auto own = transform_of(*node);
    if (!own)
      return fail(Phrase::worded("Node %1 has a transform that is not one; export the scan again.",
                                 {count_of(index + 1)}));
    const Transform all = outer * *own;
    if (node->contains("mesh")) {
      const auto mesh = gltf_whole(*node, "mesh", 0);
      if (!mesh)
        return fail(Phrase::worded("Node %1 names no mesh; export the scan again.", {count_of(index + 1)}));
      take_mesh(*mesh, all);
    }
    take_nodes(*node, "children", all, depth + 1);
  }

  void take_mesh(std::size_t index, const Transform& transform) {
    const json* mesh = gltf_item(root_, "meshes", index);
    if (!mesh || !gltf_item(*mesh, "primitives", 0))
      return fail(Phrase::worded("Mesh %1 is not there or has no parts; export the scan again.",
                                 {count_of(index + 1)}));
    for (std::size_t p = 0; const json* part = gltf_item(*mesh, "primitives", p); ++p)
      take_part(*part, transform);
  }

  void take_part(const json& part, const Transform& transform) {
    if (problem_) return;
    const auto mode = gltf_whole(part, "mode", 4);
    if (!mode || *mode > 6)
      return fail(
          Phrase::worded("A part of a mesh is drawn in a way that is not known; export the scan again."));
    if (*mode < 4) {
      ++other_;
      return;
    }
    if (const auto compressed = gltf_compression_of(part)) return fail(*compressed);
    const json attributes = part.contains("attributes") ? part["attributes"] : json::object();
    const auto accessor = gltf_whole(attributes, "POSITION", ~0u);
    if (!accessor) return fail(Phrase::worded("A part of a mesh has no positions; export the scan again."));
    const auto points = buffers_.positions(root_, *accessor);
    if (!points) return fail(points.problem());
    std::vector<int> corners;
    if (!part.contains("indices")) {
      corners.resize(static_cast<std::size_t>(points->rows()));
      for (std::size_t i = 0; i < corners.size(); ++i) corners[i] = static_cast<int>(i);
    } else {
      const auto which = gltf_whole(part, "indices", ~0u);
      auto read = buffers_.indices(root_, which.value_or(~0u), static_cast<std::size_t>(points->rows()));
      if (!read) return fail(read.problem());
      corners = std::move(read).value();
    }
    add(*points, corners, *mode, transform);
  }

  void add(const Points3& points, const std::vector<int>& corners, std::size_t mode,
           const Transform& transform) {
    const auto first = static_cast<int>(points_.count());
    const auto face_count = static_cast<std::size_t>(faces_.count());
    if (static_cast<std::size_t>(first + points.rows()) > kMostElements ||
        face_count + corners.size() > 3 * kMostElements)
      return fail(Phrase::worded("The scene has more than %1 vertices; decimate it first.",
                                 {count_of(kMostElements)}));
    for (Eigen::Index v = 0; v < points.rows(); ++v) {
      const Eigen::Vector4d moved = transform * points.row(v).transpose().homogeneous();
      for (int k = 0; k < 3; ++k) {
        if (!is_usable(moved[k]))
          return fail(Phrase::worded("Vertex %1 %2; export the scan again.",
                                     {count_of(static_cast<std::size_t>(v) + 1),
                                      *coordinate_fault(number_word(moved[k]), moved[k])}));
        largest_ = std::max(largest_, std::abs(moved[k]));
      }
      points_.add(moved[0], moved[1], moved[2]);
    }
    const bool mirrored = transform.topLeftCorner<3, 3>().determinant() < 0.0;
    const auto face = [&](int a, int b, int c) {
      if (mirrored) std::swap(b, c);
      faces_.add(first + a, first + b, first + c);
    };
    if (mode == 4)
      for (std::size_t i = 2; i < corners.size(); i += 3) face(corners[i - 2], corners[i - 1], corners[i]);
    if (mode == 5)  // a strip: every second triangle runs the other way
      for (std::size_t i = 2; i < corners.size(); ++i)
        face(corners[i - 2 + i % 2], corners[i - 1 - i % 2], corners[i]);
    if (mode == 6)  // a fan
      for (std::size_t i = 2; i < corners.size(); ++i) face(corners[0], corners[i - 1], corners[i]);
  }

  const json& root_;
  const GltfBuffers& buffers_;
  std::vector<char> visited_;
  GrowingRows<Points3> points_;
  GrowingRows<Triangles> faces_;
  int other_ = 0;
  double largest_ = 0.0;
  std::optional<Problem> problem_;
};

Problem named(const std::string& name, Problem problem) {
  return problem.message.starts_with(name) ? problem : told_of(name, problem);
}

Result<RawMesh> read_scene(std::string_view text, std::string_view binary, const std::string& name,
                           const std::filesystem::path& folder) {
  const auto root = parse_json(text, name);
  if (!root) return root.problem();
  const json* asset = root->is_object() && root->contains("asset") ? &(*root)["asset"] : nullptr;
  if (!asset || !asset->is_object() || !asset->contains("version") || !(*asset)["version"].is_string() ||
      !(*asset)["version"].get<std::string>().starts_with("2."))
    return bad_input(
        Phrase::worded("%1: this is not glTF of version 2; export the scan as glTF 2.0.", {name_of(name)}));
  const auto buffers = GltfBuffers::read(*root, binary, folder);
  if (!buffers) return named(name, buffers.problem());
  Gatherer gatherer(*root, *buffers);
  gatherer.take_scene();
  auto mesh = gatherer.gathered();
  if (!mesh) return named(name, mesh.problem());
  return mesh;
}

std::uint32_t word_at(std::string_view bytes, std::size_t at) {
  std::uint32_t word = 0;
  std::memcpy(&word, bytes.data() + at, sizeof word);
  return word;
}

}  // namespace

Result<RawMesh> read_gltf(std::string_view bytes, const std::string& name,
                          const std::filesystem::path& folder) {
  return read_scene(bytes, {}, name, folder);
}

Result<RawMesh> read_glb(std::string_view bytes, const std::string& name) {
  constexpr std::size_t kHeader = 12, kChunkHeader = 8;
  if (bytes.size() < kHeader + kChunkHeader || !bytes.starts_with("glTF"))
    return bad_input(Phrase::worded(
        "%1: this is no binary glTF file or it is cut short; export the scan again.", {name_of(name)}));
  if (word_at(bytes, 4) != 2)
    return bad_input(Phrase::worded("%1: this is binary glTF of version %2; only version 2 is read.",
                                    {name_of(name), count_of(word_at(bytes, 4))}));
  const std::size_t total = word_at(bytes, 8), text = word_at(bytes, 12);
  if (total > bytes.size() || total < kHeader + kChunkHeader || text > total - kHeader - kChunkHeader)
    return bad_input(
        Phrase::worded("%1: cut short: the file is to hold %2 bytes but has %3; copy or export it again.",
                       {name_of(name), count_of(std::max(total, text)), count_of(bytes.size())}));
  if (word_at(bytes, 16) != kJsonChunk)
    return bad_input(Phrase::worded(
        "%1: the first part of the file is not its description; export the scan again.", {name_of(name)}));
  std::string_view binary;
  if (const std::size_t next = kHeader + kChunkHeader + text; next + kChunkHeader <= total) {
    const std::size_t size = word_at(bytes, next);
    if (size > total - next - kChunkHeader)
      return bad_input(
          Phrase::worded("%1: cut short: its data is to hold %2 bytes but has %3; copy or export it again.",
                         {name_of(name), count_of(size), count_of(total - next - kChunkHeader)}));
    if (word_at(bytes, next + 4) == kBinaryChunk) binary = bytes.substr(next + kChunkHeader, size);
  }
  return read_scene(bytes.substr(kHeader + kChunkHeader, text), binary, name, {});
}

}  // namespace wrapgauge
