#pragma once
// What was read on a bench, one value a row. SI inside.

#include <array>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/body/body_part.hpp"
#include "model/core/array.hpp"
#include "model/core/quantity.hpp"
#include "model/material/posture.hpp"

namespace wrapgauge {

enum class ReadingKind {
  kStrip,    // a strip of one sheet's silicone, stretched by a mass
  kFill,     // one inlet filled, device free on a table: its gauge
  kBulge,    // height of a chamber's middle at a gauge pressure
  kPlate,    // force on a rigid plate at a fixed height over the table
  kContact,  // pressure on a limb, by a thin sensor
  kClosure,  // pull at which the empty device fastens to a length
  kPeel,     // mass at which a seam of a given width starts to open
  kMap,      // a grid of sensors; compared, not fitted
};
inline constexpr int kReadingKinds = 8;
std::string_view kind_name(ReadingKind kind);  // as readings write it: "strip"
std::optional<ReadingKind> kind_from_name(std::string_view name);

// A number of a row; which of them a kind needs is in needed_fields().
enum class ReadingField {
  kGauge,            // Pa
  kFilled,           // m3 pushed into the inlet
  kWidth,            // m, of a strip or a peeled seam
  kThickness,        // m, of a strip
  kLength,           // m, of a strip between its marks, unloaded
  kStretched,        // m, the same, loaded
  kMass,             // N: what is hung on it, or what the scale shows
  kHeight,           // m, from the table (or from where the seams are held) to the top
  kGap,              // m, from the table to the plate
  kSensor,           // Pa
  kSensorArea,       // m2
  kSensorThickness,  // m
  kFastened,         // m, from line to line as the layout's closing length
  kPull,             // N
  kAfter,            // s since it was inflated
  kX,                // m, on the layout
  kY,
};
inline constexpr int kReadingFields = 17;

enum class SheetSide { kSkin, kOuter };

struct Reading {
  std::string id;
  int line = 0;  // of the file
  ReadingKind kind = ReadingKind::kFill;
  std::array<std::optional<double>, kReadingFields> si{};
  std::optional<SheetSide> sheet;   // of a strip
  std::string where;                // inlet or chamber; empty: all of them, or a place by x and y
  bool all_inlets = false;          // every inlet is at this gauge; else the others are vented
  bool clamped = false;             // a bulge with all seams held flat
  bool on_person = false;           // a contact reading; else on a dummy
  bool confirmed = false;           // the value was looked at again: not asked about
  std::filesystem::path file;       // of a map
  double error = 0.0;               // standard error, relative
  std::optional<double> predicted;  // SI, as the sheet to fill in has it

  bool is_read() const;  // else its value is still to be typed in
  bool has(ReadingField field) const { return si[static_cast<std::size_t>(field)].has_value(); }
  double value(ReadingField field) const { return si[static_cast<std::size_t>(field)].value_or(0.0); }
};

// The value of a row that is read; the others say under which conditions.
ReadingField read_field(ReadingKind kind);
const std::vector<ReadingField>& needed_fields(ReadingKind kind);  // the read one last
double read_si(const Reading& reading);
std::string field_text(ReadingField field, double si);  // "3.0 kPa (23 mmHg)", "12.5 mm", "51 g"
std::string read_text(const Reading& reading, double si);
// In the unit that columns and texts begin with: kPa, mm, g, N, mL; and that unit.
double field_value(ReadingField field, double si);
const char* field_unit(ReadingField field);

struct Instrument {
  std::string words;           // empty: not said
  double error = 0.0;          // standard error, relative
  bool error_is_said = false;  // else the default of its kind
};

// A file of readings.
struct Readings {
  std::string file, hash;  // name without folders; of the bytes
  std::string layout_hash;
  std::string predicted_for;     // materials_hash that the sheet's predictions were made for; empty: not said
  std::string date, remark;      // remark: invented readings say so
  std::optional<BodyPart> part;  // of the limb or dummy that contact was read on
  std::optional<Posture> posture;  // the same
  std::array<Instrument, kReadingKinds> instruments{};
  std::vector<Reading> rows;

  const Instrument& instrument(ReadingKind kind) const { return instruments[static_cast<std::size_t>(kind)]; }
};

// Standard errors that hold where a file gives none: common practice and judgement, no source; of thin
// sensors under a cuff errors of 10 to 65 mmHg are told, zeroed in air, so 15 % is none too much.
double default_error(ReadingKind kind);

}  // namespace wrapgauge
