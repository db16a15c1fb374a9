#include "model/plan/body_label.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <system_error>

#include "model/core/file.hpp"
#include "model/plan/site_json.hpp"

namespace wrapgauge {
namespace {

using nlohmann::ordered_json;

std::optional<BodyPart> part_from_json(JsonObject& object) {
  const auto name = object.optional_text("part");
  if (!name) return std::nullopt;
  const auto part = body_part_from_name(*name);
  if (!part)
    object.fail(Phrase::worded("the part '%1' is not known; it may be %2.",
                               {name_of(*name), name_of(body_part_names())}));
  return part;
}

std::vector<BonySite> sites_from_json(JsonObject& object) {
  std::vector<BonySite> sites;
  for (const nlohmann::json& value : object.list_or_empty("bony_sites")) {
    if (object.failed()) break;
    JsonObject item(value, object.place("bony_sites") + " " + std::to_string(sites.size() + 1));
    sites.push_back(site_from_json(item));
    if (auto problem = item.finish()) object.fail(std::move(*problem));
  }
  return sites;
}

Result<BodyLabel> label_from_json(const nlohmann::json& value, const std::string& where) {
  JsonObject object(value, where);
  object.format_one("wrapgauge-body-label");
  BodyLabel label;
  label.triangles = object.whole_number_or("triangles", 0, 1, 100000000);
  label.part = part_from_json(object);
  if (object.has("side")) label.side = side_from_name(object.choice("side", {"right", "left"}));
  if (object.has("axis"))
    label.axis_direction =
        direction_from_json(object, "axis", Phrase::worded("point it from hand or foot to trunk"));
  if (object.has("front"))
    label.front = direction_from_json(object, "front", Phrase::worded("point it to the person's front"));
  label.sites = sites_from_json(object);
  if (auto problem = object.finish()) return *problem;
  return label;
}

bool moves_the_body(const MendStep& step) {
  const MendKind kind = kind_of(step);
  return kind == MendKind::kPose || kind == MendKind::kCut || kind == MendKind::kMirror;
}

}  // namespace

std::filesystem::path label_file_of(const std::filesystem::path& mesh_file) {
  std::filesystem::path file = mesh_file;
  return file += ".label.json";
}

BodyLabel label_of(const Body& body) {
  return {body.part,  body.side,       body.axis.direction,
          body.front, body.bony_sites, static_cast<int>(body.surface.faces.rows())};
}

std::string label_bytes(const BodyLabel& label) {
  ordered_json out{{"wrapgauge-body-label", 1}, {"triangles", label.triangles}};
  if (label.part) out["part"] = body_part_name(*label.part);
  if (label.side) out["side"] = side_name(*label.side);
  if (label.axis_direction) out["axis"] = direction_to_json(*label.axis_direction);
  if (label.front) out["front"] = direction_to_json(*label.front);
  out["bony_sites"] = sites_to_json(label.sites);
  return out.dump(2, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

Result<std::monostate> write_label(const BodyLabel& label, const std::filesystem::path& file) {
  return write_file_atomically(file, label_bytes(label));
}

Result<std::optional<BodyLabel>> read_label(const std::filesystem::path& mesh_file, int triangles) {
  const std::filesystem::path file = label_file_of(mesh_file);
  std::error_code error;
  if (!std::filesystem::exists(file, error)) return std::optional<BodyLabel>();
  const auto json = read_json(file);
  if (!json) return json.problem();
  auto label = label_from_json(*json, file.filename().string());
  if (!label) return label.problem();
  if (label->triangles != triangles)
    return bad_input(Phrase::worded(
        "%1 was written for a mesh of %2 triangles, but %3 has %4: write mesh and label anew, or delete the "
        "label and say in the plan what it said.",
        {name_of(file.filename().string()), figures_of(std::to_string(label->triangles)),
         name_of(mesh_file.filename().string()), figures_of(std::to_string(triangles))}));
  return std::optional(std::move(label).value());
}

BodyLabel label_after(BodyLabel label, const std::vector<MendStep>& steps) {
  if (std::none_of(steps.begin(), steps.end(), moves_the_body)) return label;
  BodyLabel rest;
  rest.part = label.part;
  rest.side = label.side;
  for (const MendStep& step : steps)
    if (rest.side && kind_of(step) == MendKind::kMirror)
      rest.side = *rest.side == BodySide::kLeft ? BodySide::kRight : BodySide::kLeft;
  return rest;
}

void apply_label(const BodyLabel& label, Body& body) {
  body.part = label.part;
  body.side = label.side;
  body.front = label.front;
  body.bony_sites = label.sites;
}

}  // namespace wrapgauge
