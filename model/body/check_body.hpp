#pragma once
// From a mesh as read to a checked body in metres, with every repair counted and said.
//
// Coordinates stay in the file's frame (only scaled to metres), so that points named in a plan stay where
// they are.

#include <optional>
#include <string>
#include <vector>

#include "model/body/body.hpp"
#include "model/body/girth.hpp"
#include "model/body/length_unit.hpp"
#include "model/body/open_end.hpp"
#include "model/body/raw_mesh.hpp"
#include "model/body/stray_vertex.hpp"
#include "model/body/surface_repair.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

struct BodyOptions {
  std::string name;
  std::optional<LengthUnit> unit;  // none: the format's own, else guessed from size, and said
  std::optional<Vec3>
      axis_direction;  // distal -> proximal; none: found, positive along its largest component
};

// Everything there is to say about a body file.
struct BodyReport {
  UnitChoice unit;
  Length length;                   // along the axis
  Length width_least, width_most;  // extents across the axis
  bool axis_found = false;         // false: as stated
  std::vector<Repair> repairs;
  std::vector<OpenEnd> open_ends;  // distal end, proximal end, then holes, longest first
  int self_crossings = 0;          // pairs of faces that pass through each other
  std::vector<Girth> girths;       // at 5, 10, 20, ... 90, 95 % of the length
  std::vector<Phrase> notes;       // one sentence each: reading, unit, axis, ends, crossings, sections
};

struct CheckedBody {
  Body body;
  BodyReport report;
};

// Welds doubled vertices, drops faces without area and doubled faces, cuts off fins, keeps the largest piece,
// turns all faces outward, splits vertices where the surface only touches itself. Open ends stay open.
// Problems: nothing left, flat, one-sided, edges of more than two faces that cutting fins does not mend, a
// size no limb has (the likely unit is named), an axis direction that is not one.
Result<CheckedBody> check_body(RawMesh raw, const BodyOptions& options);

// The unit asked for, else that of the file's format, else guessed.
Result<UnitChoice> unit_of_mesh(const RawMesh& raw, const FileExtent& extent, const BodyOptions& options);

// A size or shape that is no limb's may come from a stray vertex: the problem with that said, if there is
// one.
Problem with_stray_named(Problem problem, const std::optional<StrayVertices>& stray);

}  // namespace wrapgauge
