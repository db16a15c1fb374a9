#include "app/job/drawing_report.hpp"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t kMostRows = 200, kMostLeftOut = 50;  // of a list (judgement)
constexpr std::size_t kMostKeys = 8;                       // of a shape

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

std::size_t shapes_left_out(const std::vector<ShapeRow>& rows) {
  return static_cast<std::size_t>(std::count_if(rows.begin(), rows.end(), [](const ShapeRow& row) {
    return !row.as.part || row.as.part == DrawnPart::kIgnore;
  }));
}

std::string becomes(const ShapeRow& row) {
  if (!row.as.part) return "left out (" + english(row.as.why) + ")";
  const std::string why = (row.as.guessed ? "guess: " : "") + english(row.as.why);
  std::string text = *row.as.part == DrawnPart::kIgnore ? "left out" : part_name(*row.as.part);
  if (row.shape.paths.size() > 1) text += ", " + std::to_string(row.shape.paths.size()) + " paths";
  if (row.as.width) text += " " + number_text(*row.as.width / mm) + " mm wide";
  return text + " (" + why + ")";
}

std::string shown_keys(const DrawnShape& shape) {
  const std::vector<std::string> all = keys_of(shape);
  std::string text;
  for (std::size_t i = 0; i < std::min(all.size(), kMostKeys); ++i)
    text += (i == 0 ? "; keys: " : ", ") + shown_name(all[i]);
  return all.size() > kMostKeys ? text + ", ..." : text;
}

// Shapes among them and what is no shape.
std::string left_out_words(std::size_t shapes, std::size_t others) {
  const std::string of_them = std::to_string(shapes) + " of them";
  if (others == 0) return (shapes == 0 ? "0" : of_them) + " left out";
  return (shapes == 0 ? "" : of_them + " and ") + std::to_string(others) +
         (others == 1 ? " other thing left out" : " other things left out");
}

std::string rest_words(std::size_t all, std::size_t most, const char* what) {
  return "... and " + std::to_string(all - most) + " more " + what + "; " + std::to_string(most) +
         " are listed.";
}

std::string figures(const ShapeRow& row) {
  if (row.shape.paths.empty()) return "";
  std::string text;
  if (row.area_mm2) text = "; area " + fixed_text(*row.area_mm2, 2) + " mm2";
  if (row.length_mm > 0.0)
    text += (row.area_mm2 ? ", " : "; ") + std::string(all_closed(row.shape) ? "perimeter " : "length ") +
            fixed_text(row.length_mm, 2) + " mm";
  if (row.shape.cut) text += ", uncut";
  return text + ", from " + point_text(row.box_mm.low) + " to " + point_text(row.box_mm.high) + " mm";
}

Json optional_json(const std::optional<double>& value) {
  return value ? Json(std::round(*value * 1e4) / 1e4) : Json(nullptr);
}

Json row_json(const ShapeRow& row) {
  const auto tidy = [](double value) { return std::round(value * 1e4) / 1e4; };
  Json json{{"line", row.shape.line}, {"kind", row.shape.kind}, {"name", shown_name(row.shape.name)}};
  json["groups"] = Json::array();
  for (std::size_t i = 0; i < std::min(row.shape.groups.size(), kMostKeys); ++i)
    json["groups"].push_back(shown_name(row.shape.groups[i]));
  json["keys"] = Json::array();
  const std::vector<std::string> all = keys_of(row.shape);
  for (std::size_t i = 0; i < std::min(all.size(), kMostKeys); ++i)
    json["keys"].push_back(shown_name(all[i]));
  json["fill"] = row.shape.fill;
  json["stroke"] = row.shape.stroke;
  json["closed"] = all_closed(row.shape);
  json["paths"] = row.shape.paths.size();
  json["area_mm2"] = optional_json(row.area_mm2);
  json["length_mm"] = tidy(row.length_mm);
  json["bounds_mm"] = {tidy(row.box_mm.low.x()), tidy(row.box_mm.low.y()), tidy(row.box_mm.high.x()),
                       tidy(row.box_mm.high.y())};
  json["part"] = row.as.part ? Json(part_name(*row.as.part)) : Json(nullptr);
  json["guessed"] = row.as.guessed;
  json["why"] = english(row.as.why);
  json["width_mm"] = row.as.width ? optional_json(*row.as.width / mm) : Json(nullptr);
  json["trouble"] = row.trouble;
  json["remark"] = row.shape.remark;
  return json;
}

}  // namespace

std::vector<ShapeRow> shape_rows(const Drawing& drawing, const std::vector<DrawnAs>& parts) {
  std::vector<ShapeRow> rows;
  for (std::size_t i = 0; i < drawing.shapes.size(); ++i) rows.push_back(row_of(drawing.shapes[i], parts[i]));
  return rows;
}

void say_drawing(const Drawing& drawing, const std::vector<ShapeRow>& rows, std::ostream& out) {
  out << drawing.file << ": " << rows.size() << (rows.size() == 1 ? " shape, " : " shapes, ")
      << left_out_words(shapes_left_out(rows), drawing.left_out.size()) << "\n";
  for (const DrawnNote& note : drawing.notes) out << "note: " << note_text(note) << "\n";
  for (std::size_t i = 0; i < std::min(rows.size(), kMostRows); ++i) {
    const ShapeRow& row = rows[i];
    out << "  " << place_text(row.shape) << ": " << becomes(row) << figures(row);
    if (!row.trouble.empty()) out << "; " << row.trouble;
    if (!row.shape.remark.empty()) out << "; it " << row.shape.remark;
    out << shown_keys(row.shape) << "\n";
  }
  if (rows.size() > kMostRows) out << "  " << rest_words(rows.size(), kMostRows, "shapes") << "\n";
  for (std::size_t i = 0; i < std::min(drawing.left_out.size(), kMostLeftOut); ++i) {
    const DrawnRemark& remark = drawing.left_out[i];
    out << "  " << remark.kind << " at line " << remark.line << ": left out, it " << remark.why << "\n";
  }
  if (drawing.left_out.size() > kMostLeftOut)
    out << "  " << rest_words(drawing.left_out.size(), kMostLeftOut, "things left out") << "\n";
}

std::string faults_sentence(const Drawing& drawing, const std::vector<ShapeRow>& rows) {
  std::vector<std::string> faults;
  for (const ShapeRow& row : rows)
    if (row.wrong)
      faults.push_back("the " + place_text(row.shape) + " " + row.trouble +
                       "; correct it, or map it to ignore.");
  return faults_sentence(drawing.file, faults);
}

std::string guess_sentence(const std::vector<DrawnAs>& parts) {
  std::string text;
  for (const DrawnPart part : {DrawnPart::kOutline, DrawnPart::kChamber, DrawnPart::kInsetSeam,
                               DrawnPart::kChannel, DrawnPart::kInlet}) {
    const auto count = std::count_if(parts.begin(), parts.end(),
                                     [&](const DrawnAs& as) { return as.guessed && as.part == part; });
    if (count == 0) continue;
    text +=
        (text.empty() ? "" : ", ") + std::to_string(count) + " " + part_name(part) + (count > 1 ? "s" : "");
  }
  if (text.empty()) return text;
  return "Guessed, since nothing in the drawing says it: " + text +
         ". Check them (the list without --out shows each), and say them with --map or by names.";
}

std::string left_out_sentence(const Drawing& drawing, const std::vector<DrawnAs>& parts) {
  const auto unsaid = std::count_if(parts.begin(), parts.end(), [](const DrawnAs& as) { return !as.part; });
  const std::size_t all = static_cast<std::size_t>(unsaid) + drawing.left_out.size();
  if (all == 0 || drawing.layout) return "";
  std::string text = std::to_string(unsaid);
  text += unsaid == 1 ? " shape that is no part and " : " shapes that are no part and ";
  text += std::to_string(drawing.left_out.size());
  text += drawing.left_out.size() == 1 ? " other thing are left out" : " other things are left out";
  if (!drawing.left_out.empty()) {
    const DrawnRemark& first = drawing.left_out.front();
    text += " (first: " + first.kind + " at line " + std::to_string(first.line) + ", it " + first.why + ")";
  }
  return text + "; the list without --out shows them.";
}

std::string drawing_json(const Drawing& drawing, const std::vector<ShapeRow>& rows,
                         const std::vector<std::string>& overlaps) {
  Json json{{"wrapgauge-drawing", 1}, {"file", drawing.file}, {"notes", Json::array()}};
  for (const DrawnNote& note : drawing.notes) json["notes"].push_back(note_text(note));
  json["shapes"] = Json::array();
  for (std::size_t i = 0; i < std::min(rows.size(), kMostRows); ++i)
    json["shapes"].push_back(row_json(rows[i]));
  json["left_out"] = Json::array();
  for (std::size_t i = 0; i < std::min(drawing.left_out.size(), kMostLeftOut); ++i) {
    const DrawnRemark& remark = drawing.left_out[i];
    json["left_out"].push_back({{"line", remark.line}, {"kind", remark.kind}, {"why", remark.why}});
  }
  json["counts"] = {{"shapes", rows.size()},
                    {"shapes_left_out", shapes_left_out(rows)},
                    {"left_out", drawing.left_out.size()}};
  json["overlaps"] = overlaps;
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace wrapgauge
