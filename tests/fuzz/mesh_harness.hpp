#pragma once
// What every mesh file goes through, whatever its bytes: reading, and the checks that make it a body.

#include <cstdlib>

#include "model/body/check_body.hpp"

namespace wrapgauge::fuzz {

inline void require(bool holds) {
  if (!holds) std::abort();
}

inline void take_mesh(const Result<RawMesh>& mesh) {
  if (!mesh) return require(mesh.problem().message.ends_with('.'));
  require(mesh->faces.rows() > 0 && mesh->faces.minCoeff() >= 0);
  require(mesh->faces.maxCoeff() < mesh->vertices.rows() && mesh->vertices.allFinite());
  const auto body = check_body(*mesh, {});
  require(body.ok() || body.problem().message.ends_with('.'));
}

}  // namespace wrapgauge::fuzz
