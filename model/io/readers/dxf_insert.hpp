#pragma once
// Where an INSERT puts the copies of its block (DXF reference, from memory).

#include <Eigen/Geometry>
#include <optional>
#include <string>

#include "model/geometry/polygon.hpp"
#include "model/io/readers/dxf_groups.hpp"

namespace wrapgauge {

// The plane of an entity seen from behind (extrusion along -z) has its x turned over. None: it stands up.
std::optional<bool> dxf_turned_over(const DxfEntity& entity);

struct DxfInsert {
  Eigen::Affine2d first;  // coordinates of the block -> of what holds the INSERT, for the first copy
  int columns = 1, rows = 1;
  Vec2 column_step, row_step;

  Eigen::Affine2d copy(int column, int row) const {
    return Eigen::Translation2d(column * column_step + row * row_step) * first;
  }
};

// Fills `fault` with half a sentence when there is none to give: a value that is no number, a scale of 0,
// fewer than one row or column, a plane that stands up.
std::optional<DxfInsert> dxf_insert(const DxfEntity& entity, const DxfBlock& block, std::string& fault);

}  // namespace wrapgauge
