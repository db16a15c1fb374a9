#include "app/job/drawing_report.hpp"

#include <cmath>
#include <nlohmann/json.hpp>

#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

std::string point_text(const Vec2& p) {
  std::string text = "(";  // one piece after the other: a chain of + trips a false warning of the compiler
  text += fixed_text(p.x(), 2);
  text += ", ";
  text += fixed_text(p.y(), 2);
  return text += ")";
}

ShapeRow row_of(const DrawnShape& shape, const DrawnAs& as) {
  const Bounds2 box = bounds(shape);
  ShapeRow row{shape, as, std::nullopt, length_m(shape) / 1e-3, {box.low / 1e-3, box.high / 1e-3}, "", false};
  if (const auto area = area_m2(shape)) row.area_mm2 = *area / 1e-6;
  if (!shape.fault.empty()) {
    row.trouble = shape.fault;
    row.wrong = true;
  } else if (const auto place = crossing_of(shape)) {
    row.trouble = "crosses or touches itself at " + point_text(*place / 1e-3) + " mm";
    row.wrong = true;
  } else if (!all_closed(shape) && shape.paths[0].points_m.size() > 1) {
    row.trouble = "is open";
    row.wrong =
        as.part == DrawnPart::kOutline || as.part == DrawnPart::kChamber || as.part == DrawnPart::kStrap;
  } else if (!row.area_mm2 && all_closed(shape)) {
    row.trouble = "has paths that cross one another";
    row.wrong = true;
  }
  if (as.part == DrawnPart::kIgnore) row.wrong = false;
  return row;
}

std::string becomes(const ShapeRow& row) {
  if (!row.as.part) return "left out (" + row.as.why + ")";
  std::string text = *row.as.part == DrawnPart::kIgnore ? "left out" : part_name(*row.as.part);
  if (row.shape.paths.size() > 1) text += ", " + std::to_string(row.shape.paths.size()) + " paths";
  if (row.as.width) text += " " + number_text(*row.as.width / mm) + " mm wide";
  return text + " (" + row.as.why + ")";
}

std::string figures(const ShapeRow& row) {
  if (row.shape.paths.empty()) return "";
  std::string text;
  if (row.area_mm2)
    text =
        "; area " + fixed_text(*row.area_mm2, 2) + " mm2, perimeter " + fixed_text(row.length_mm, 2) + " mm";
  else if (row.length_mm > 0.0)
    text = "; length " + fixed_text(row.length_mm, 2) + " mm";
  return text + ", from " + point_text(row.box_mm.low) + " to " + point_text(row.box_mm.high) + " mm";
}

Json optional_json(const std::optional<double>& value) {
  return value ? Json(std::round(*value * 1e4) / 1e4) : Json(nullptr);
}

Json row_json(const ShapeRow& row) {
  const auto tidy = [](double value) { return std::round(value * 1e4) / 1e4; };
  Json json{{"line", row.shape.line}, {"kind", row.shape.kind}, {"name", row.shape.name}};
  json["groups"] = row.shape.groups;
  json["fill"] = row.shape.fill;
  json["stroke"] = row.shape.stroke;
  json["closed"] = all_closed(row.shape);
  json["paths"] = row.shape.paths.size();
  json["area_mm2"] = optional_json(row.area_mm2);
  json["length_mm"] = tidy(row.length_mm);
  json["bounds_mm"] = {tidy(row.box_mm.low.x()), tidy(row.box_mm.low.y()), tidy(row.box_mm.high.x()),
                       tidy(row.box_mm.high.y())};
  json["part"] = row.as.part ? Json(part_name(*row.as.part)) : Json(nullptr);
  json["why"] = row.as.why;
  json["width_mm"] = row.as.width ? optional_json(*row.as.width / mm) : Json(nullptr);
  json["trouble"] = row.trouble;
  return json;
}

}  // namespace

std::vector<ShapeRow> shape_rows(const Drawing& drawing, const std::vector<DrawnAs>& parts) {
  std::vector<ShapeRow> rows;
  for (std::size_t i = 0; i < drawing.shapes.size(); ++i) rows.push_back(row_of(drawing.shapes[i], parts[i]));
  return rows;
}

void say_drawing(const Drawing& drawing, const std::vector<ShapeRow>& rows, std::ostream& out) {
  out << drawing.file << ": " << rows.size() << (rows.size() == 1 ? " shape" : " shapes") << ", "
      << drawing.left_out.size() << " left out\n";
  for (const std::string& note : drawing.notes) out << "note: " << note << "\n";
  for (const ShapeRow& row : rows) {
    out << "  " << place_text(row.shape) << ": " << becomes(row) << figures(row);
    if (!row.trouble.empty()) out << "; " << row.trouble;
    out << "\n";
  }
  for (const DrawnRemark& remark : drawing.left_out)
    out << "  " << remark.kind << " at line " << remark.line << ": left out, it " << remark.why << "\n";
}

std::string drawing_json(const Drawing& drawing, const std::vector<ShapeRow>& rows,
                         const std::vector<std::string>& overlaps) {
  Json json{{"wrapgauge-drawing", 1}, {"file", drawing.file}, {"notes", drawing.notes}};
  json["shapes"] = Json::array();
  for (const ShapeRow& row : rows) json["shapes"].push_back(row_json(row));
  json["left_out"] = Json::array();
  for (const DrawnRemark& remark : drawing.left_out)
    json["left_out"].push_back({{"line", remark.line}, {"kind", remark.kind}, {"why", remark.why}});
  json["overlaps"] = overlaps;
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace wrapgauge
