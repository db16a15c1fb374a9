#include <algorithm>

#include "model/bench/bench_sheet.hpp"
#include "model/bench/reading_columns.hpp"
#include "model/core/csv_text.hpp"
#include "model/core/number_text.hpp"
#include "model/pipeline/prepare.hpp"

namespace wrapgauge {
namespace {

using F = ReadingField;

constexpr std::array kColumns = {
    "gauge_kpa",           "filled_ml",  "width_mm",    "thickness_mm", "length_mm",
    "stretched_mm",        "mass_g",     "height_mm",   "gap_mm",       "sensor_area_cm2",
    "sensor_thickness_mm", "sensor_kpa", "fastened_mm", "pull_n",       "after_min"};

// The order of work: off the body first.
constexpr std::array kSheetOrder = {ReadingKind::kStrip,  ReadingKind::kFill,    ReadingKind::kBulge,
                                    ReadingKind::kPlate,  ReadingKind::kClosure, ReadingKind::kPeel,
                                    ReadingKind::kContact};

std::string cell_of(const Reading& row, const ReadingColumn& column) {
  return row.has(column.field) ? number_text(row.value(column.field) / column.si, 6) : "";
}

std::string template_row(const BenchSheet& sheet, std::size_t k) {
  const Reading& row = sheet.rows[k];
  std::string text = csv_field(row.id) + "," + std::string(kind_name(row.kind)) + ",";
  if (row.sheet) text += *row.sheet == SheetSide::kSkin ? "skin" : "outer";
  text += ",";
  if (!row.where.empty()) text += csv_field(row.where);
  text += row.all_inlets ? ",all," : ",,";
  if (row.kind == ReadingKind::kContact) text += "dummy";
  for (const char* name : kColumns) text.append(1, ',').append(cell_of(row, *column_named(name)));
  return text + "," + (sheet.predicted[k] ? csv_field(read_text(row, *sheet.predicted[k])) : "") + "\n";
}

}  // namespace

Phrase kind_title(ReadingKind kind) {
  switch (kind) {
    case ReadingKind::kStrip:
      return Phrase::worded("Strips");
    case ReadingKind::kFill:
      return Phrase::worded("Fills");
    case ReadingKind::kBulge:
      return Phrase::worded("Bulges");
    case ReadingKind::kPlate:
      return Phrase::worded("Plate");
    case ReadingKind::kContact:
      return Phrase::worded("Contact");
    case ReadingKind::kClosure:
      return Phrase::worded("Closure");
    case ReadingKind::kPeel:
      return Phrase::worded("Peeled seams");
    case ReadingKind::kMap:
      break;
  }
  return Phrase::worded("Sensor map");
}

Phrase kind_steps(ReadingKind kind) {
  switch (kind) {
    case ReadingKind::kStrip:
      return Phrase::worded(
          "Cut a strip 10 mm wide from a sheet of the same pour. Measure its width and thickness at three "
          "places. Mark two lines 50 mm apart. Hang it up, hang on masses until the marks stand at the "
          "length given, wait a minute, read the mass. Count half the strip's own mass in.");
    case ReadingKind::kFill:
      return Phrase::worded(
          "Lay the device unfastened on a table, outer sheet down. Vent every inlet. Push the volume given "
          "into one inlet with a syringe, wait a minute, read the gauge.");
    case ReadingKind::kBulge:
      return Phrase::worded(
          "The device lies as for the fills. Set the gauge, wait a minute, read the height of the chamber's "
          "middle over the table with a height gauge or a ruler and a square.");
    case ReadingKind::kPlate:
      return Phrase::worded(
          "Lay the device on a kitchen scale and tare it. Fix a stiff plate at the height given over the "
          "scale's face, larger than the device. Set the gauge of one chamber, wait a minute, read the "
          "scale.");
    case ReadingKind::kContact:
      return Phrase::worded(
          "Put the device on a dummy limb of the plan's girths. Lay a thin sensor under the middle of each "
          "chamber and zero it in place. Set every inlet to the gauge given, read after the minutes you "
          "note. State the sensor's own standard error: it sets how far the model factor can fall.");
    case ReadingKind::kClosure:
      return Phrase::worded(
          "Put the empty device on the dummy limb. Pull its closure with a spring scale until the two lines "
          "meet at the length given, read the pull.");
    case ReadingKind::kPeel:
      return Phrase::worded(
          "Cut samples 10 mm wide across a seam of the same pour. Hold one sheet, hang masses on the other "
          "until the seam starts to open, read the mass.");
    case ReadingKind::kMap:
      break;
  }
  return Phrase::worded("A map is held against the prediction by `wrapgauge bench compare`.");
}

Phrase conditions_of(const Reading& row) {
  const auto set = [&](ReadingField field) { return figures_of(field_text(field, row.value(field))); };
  const auto bare = [&](ReadingField field) {
    return figures_of(number_text(field_value(field, row.value(field)), 4));
  };
  const Phrase where = name_of(row.where.empty() ? "all" : row.where);
  switch (row.kind) {
    case ReadingKind::kStrip: {
      const std::vector<Phrase> sizes = {bare(F::kWidth), bare(F::kThickness), bare(F::kLength),
                                         bare(F::kStretched)};
      return row.sheet == SheetSide::kOuter
                 ? Phrase::worded("outer sheet, %1 × %2 mm, from %3 to %4 mm", sizes)
                 : Phrase::worded("skin sheet, %1 × %2 mm, from %3 to %4 mm", sizes);
    }
    case ReadingKind::kFill:
      return Phrase::worded("%1, %2", {where, set(F::kFilled)});
    case ReadingKind::kBulge:
      return row.clamped ? Phrase::worded("%1, %2, seams clamped", {where, set(F::kGauge)})
                         : Phrase::worded("%1, %2", {where, set(F::kGauge)});
    case ReadingKind::kPlate:
      return Phrase::worded("%1, %2, plate %3 over the table", {where, set(F::kGauge), set(F::kGap)});
    case ReadingKind::kContact: {
      const Phrase place = row.where.empty() && row.has(F::kX)
                               ? Phrase::worded("x %1 mm, y %2 mm", {bare(F::kX), bare(F::kY)})
                               : where;
      return row.all_inlets ? Phrase::worded("%1, every inlet %2, sensor %3",
                                             {place, set(F::kGauge), set(F::kSensorArea)})
                            : Phrase::worded("%1, its inlet alone %2, sensor %3",
                                             {place, set(F::kGauge), set(F::kSensorArea)});
    }
    case ReadingKind::kClosure:
      return Phrase::worded("fastened at %1", {set(F::kFastened)});
    case ReadingKind::kPeel:
      return Phrase::worded("%1 wide", {set(F::kWidth)});
    case ReadingKind::kMap:
      break;
  }
  return Phrase::worded("%1, %2", {where, set(F::kGauge)});
}

std::string readings_template(const BenchSheet& sheet, const Plan& plan, const Body& body) {
  std::string text = "plan," + csv_field(plan.name) + "\nlayout," + csv_field(plan.layout.name) +
                     "\nlayout_hash," + layout_hash(plan.layout) + "\npredicted_for," + sheet.materials_hash +
                     "\ndate,\n";
  const auto own = body_of_plan(plan, body);
  text += "part," + std::string(own && own->part ? body_part_name(*own->part) : "") + "\n";
  if (plan.posture) text += "posture," + std::string(posture_name(*plan.posture)) + "\n";
  text += "remark,\n";
  for (int k = 0; k + 1 < kReadingKinds; ++k) {
    const std::string kind(kind_name(static_cast<ReadingKind>(k)));
    text += "instrument " + kind + ",\nerror_percent " + kind + ",\n";
  }
  text += "id,kind,sheet,where,inlets,on";
  for (const char* name : kColumns) text.append(1, ',').append(name);
  text += ",predicted\n";
  for (std::size_t k = 0; k < sheet.rows.size(); ++k) text += template_row(sheet, k);
  return text;
}

Note sheet_note(const BenchSheet& sheet, const Plan& plan) {
  Note note{plan.name + ": bench sheet", "", {}};
  note.blocks.push_back(
      NoteBox{{"Off the body first.",
               "Read strips, fills, bulges, plate, closure and peel on the bench, contact on a dummy limb. "
               "Readings on a "
               "person come only after these, within the limits, and under the study's own rules.",
               "Stop if a bulge keeps growing at one gauge, a seam whitens or a sheet thins to see through. "
               "Wear glasses.",
               "Not a medical device. What is predicted here comes from the plan, not from your device."}});
  for (const ReadingKind kind : kSheetOrder) {
    NoteTable table{{"Reading", "Set", "Predicted", "Read"}, {}, {18, 42, 22, 18}};
    for (std::size_t k = 0; k < sheet.rows.size(); ++k)
      if (sheet.rows[k].kind == kind)
        table.rows.push_back({sheet.rows[k].id, english(conditions_of(sheet.rows[k])),
                              sheet.predicted[k] ? read_text(sheet.rows[k], *sheet.predicted[k]) : "-", ""});
    if (table.rows.empty()) continue;
    note.blocks.push_back(NoteHeading{english(kind_title(kind))});
    note.blocks.push_back(NoteText{english(kind_steps(kind))});
    note.blocks.push_back(std::move(table));
  }
  if (!sheet.left_out.empty()) note.blocks.push_back(NoteList{sheet.left_out});
  note.blocks.push_back(
      NoteText{"Type what you read into readings.csv, which lies beside this sheet, and say each "
               "instrument's standard error. Delete rows that you did not read."});
  return note;
}

}  // namespace wrapgauge
