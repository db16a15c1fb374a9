#pragma once
// A label lies beside a mesh file and says what the mesh itself cannot: which part of the person it is, which
// side, where axis and front point, where bones and nerves lie. Described in docs/01-body.md.

#include <filesystem>
#include <optional>
#include <vector>

#include "model/body/body.hpp"
#include "model/body/mend_step.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

struct BodyLabel {
  std::optional<BodyPart> part;
  std::optional<BodySide> side;
  std::optional<Vec3> axis_direction, front;  // unit, in the mesh's frame
  std::vector<BonySite> sites;                // metres, in the mesh's frame
  int triangles = 0;                          // of the mesh that it was written for
};

std::filesystem::path label_file_of(const std::filesystem::path& mesh_file);  // "arm.obj.label.json"

BodyLabel label_of(const Body& body);
std::string label_bytes(const BodyLabel& label);
Result<std::monostate> write_label(const BodyLabel& label, const std::filesystem::path& file);

// None: there is no label beside the mesh. Problems: those of its JSON; it was written for a mesh of another
// number of triangles than `triangles`, so what it says may be about another body.
Result<std::optional<BodyLabel>> read_label(const std::filesystem::path& mesh_file, int triangles);

// What of the label still holds after `steps`: those that move the body leave its part alone, and its side
// unless they mirror it.
BodyLabel label_after(BodyLabel label, const std::vector<MendStep>& steps);

// Takes over all but the axis, which stations are measured from and which is stated when the mesh is checked.
void apply_label(const BodyLabel& label, Body& body);

}  // namespace wrapgauge
