#pragma once
// The plainest possible readers of trusted test limbs: binary STL and OBJ with triangles, millimetres, axis
// +z.

#include <array>
#include <cstdint>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <sstream>
#include <string>
#include <vector>

#include "model/body/body.hpp"

namespace wrapgauge::limbs {

inline TriangleMesh mesh_of(const std::vector<Vec3>& vertices_mm,
                            const std::vector<std::array<int, 3>>& faces) {
  TriangleMesh mesh;
  mesh.vertices_m.resize(static_cast<long>(vertices_mm.size()), 3);
  mesh.faces.resize(static_cast<long>(faces.size()), 3);
  for (std::size_t i = 0; i < vertices_mm.size(); ++i) mesh.vertices_m.row(i) = 1e-3 * vertices_mm[i];
  for (std::size_t i = 0; i < faces.size(); ++i) mesh.faces.row(i) << faces[i][0], faces[i][1], faces[i][2];
  return mesh;
}

inline TriangleMesh read_stl(const std::string& bytes) {
  std::map<std::array<float, 3>, int> index;
  std::vector<Vec3> vertices;
  std::vector<std::array<int, 3>> faces;
  for (std::size_t at = 84; at + 50 <= bytes.size(); at += 50) {
    std::array<int, 3> face;
    for (int corner = 0; corner < 3; ++corner) {
      std::array<float, 3> point;
      std::memcpy(point.data(), bytes.data() + at + 12 + 12 * corner, 12);
      const auto [found, added] = index.emplace(point, static_cast<int>(vertices.size()));
      if (added) vertices.emplace_back(point[0], point[1], point[2]);
      face[corner] = found->second;
    }
    if (face[0] != face[1] && face[1] != face[2] && face[2] != face[0]) faces.push_back(face);
  }
  return mesh_of(vertices, faces);
}

inline TriangleMesh read_obj(const std::string& bytes) {
  std::vector<Vec3> vertices;
  std::vector<std::array<int, 3>> faces;
  std::istringstream lines(bytes);
  for (std::string line; std::getline(lines, line);) {
    std::istringstream words(line);
    std::string key;
    words >> key;
    if (key == "v") {
      Vec3 point;
      words >> point.x() >> point.y() >> point.z();
      vertices.push_back(point);
    } else if (key == "f") {
      std::vector<int> corners;
      for (std::string word; words >> word;) corners.push_back(std::stoi(word) - 1);
      for (std::size_t i = 2; i < corners.size(); ++i)
        faces.push_back({corners[0], corners[i - 1], corners[i]});
    }
  }
  return mesh_of(vertices, faces);
}

inline Body read_limb(const std::filesystem::path& file) {
  std::ifstream stream(file, std::ios::binary);
  const std::string bytes{std::istreambuf_iterator<char>(stream), {}};
  Body body;
  body.name = file.stem().string();
  body.surface = file.extension() == ".stl" ? read_stl(bytes) : read_obj(bytes);
  body.axis.origin_m = Vec3(0, 0, body.surface.vertices_m.col(2).minCoeff());
  return body;
}

}  // namespace wrapgauge::limbs
