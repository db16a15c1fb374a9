#include "model/io/readers/dxf_insert.hpp"

#include <cmath>
#include <numbers>

namespace wrapgauge {

std::optional<bool> dxf_turned_over(const DxfEntity& entity) {
  const double x = entity.real(210, 0.0), y = entity.real(220, 0.0), z = entity.real(230, 1.0);
  if (std::hypot(x, y) > 1e-6 * std::abs(z)) return std::nullopt;
  return z < 0.0;
}

std::optional<DxfInsert> dxf_insert(const DxfEntity& entity, const DxfBlock& block, std::string& fault) {
  for (const DxfEntity* one : {&entity, &block.head})
    if (auto found = dxf_number_fault(*one)) fault = std::move(*found);
  const auto behind = dxf_turned_over(entity);
  if (fault.empty() && !behind) fault = "does not lie in the plane of the drawing";
  const Vec2 scale(entity.real(41, 1.0), entity.real(42, 1.0));
  if (fault.empty() && (scale.array().abs() < 1e-9).any()) fault = "has a scale of 0";
  DxfInsert insert;
  insert.columns = entity.whole_number(70, 1);
  insert.rows = entity.whole_number(71, 1);
  if (fault.empty() && (insert.columns < 1 || insert.rows < 1))
    fault = "has " + std::to_string(insert.columns) + " columns and " + std::to_string(insert.rows) + " rows";
  if (!fault.empty()) return std::nullopt;
  const Eigen::Rotation2Dd turn(entity.real(50, 0.0) * std::numbers::pi / 180.0);
  const Eigen::DiagonalMatrix<double, 2> mirror(*behind ? -1.0 : 1.0, 1.0);
  const Vec2 at(entity.real(10, 0.0), entity.real(20, 0.0));
  const Vec2 base(block.head.real(10, 0.0), block.head.real(20, 0.0));
  insert.first.linear() = mirror * turn.toRotationMatrix() * scale.asDiagonal();
  insert.first.translation() = mirror * at - insert.first.linear() * base;
  insert.column_step = mirror * (turn * Vec2(entity.real(44, 0.0), 0.0));
  insert.row_step = mirror * (turn * Vec2(0.0, entity.real(45, 0.0)));
  return insert;
}

}  // namespace wrapgauge
