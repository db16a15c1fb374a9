#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/commands.hpp"
#include "app/job/drawing_report.hpp"
#include "model/core/counted.hpp"
#include "model/io/readers/drawing_reader.hpp"
#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/writers/dxf_writer.hpp"
#include "model/io/writers/svg_writer.hpp"
#include "model/layout/drawing_map_json.hpp"
#include "model/layout/drawn_layout.hpp"
#include "model/layout/layout_check.hpp"
#include "model/layout/layout_json.hpp"

namespace wrapgauge {
namespace {

namespace fs = std::filesystem;

constexpr const char* kLayoutReadExamples =
    "Examples:\n"
    "  wrapgauge layout read cuff.svg\n"
    "  wrapgauge layout read cuff.svg --map 'cells=chamber' \\\n"
    "      --map 'stroke:#0000ff=channel 4'\n"
    "  wrapgauge layout read cuff.dxf --map-file cuff-map.json --out cuff.json\n"
    "  wrapgauge layout read cuff.svg --skin 00-30 1.5 --outer A10 2.5 \\\n"
    "      --stretch 0.02 --out cuff.json\n"
    "  wrapgauge layout read cuff.json --out cuff.dxf\n"
    "Shapes in groups or layers called outline, chambers, inset-seams, channels,\n"
    "inlets and straps need no mapping. What nobody names is guessed and marked as\n"
    "a guess. Without --out nothing is written: every shape is listed with what it\n"
    "would become and the keys that --map knows it by. A layout written as .svg or\n"
    ".dxf carries its sheets, straps and closure: edit it and read it back.\n";

struct LayoutReadCommand {
  fs::path file, map_file, save_map, out;
  std::vector<std::string> rules;
  bool json = false, no_guess = false;
  std::string unit, name;
  std::optional<double> scale;
  std::optional<double> join, channel_width, inset_width, closing_length, stretch, from_x;
  std::vector<std::string> skin, outer;  // hardness, thickness
  std::vector<double> backing, strap;    // along and across; stiffness and thickness
  bool rim_bonded = false;
};

void take_closure(const LayoutReadCommand& command, LayoutDetails& details) {
  if (command.closing_length) details.closure = Closure{0.0, *command.closing_length * mm, std::nullopt};
  if (command.stretch) details.closure = Closure{0.0, std::nullopt, command.stretch};
  if (command.from_x && details.closure) details.closure->from_x_m = *command.from_x * 1e-3;
}

Result<Sheet> sheet_of(const std::vector<std::string>& words, const char* option) {
  const auto thickness = parse_number(words[1]);
  if (!thickness || !(*thickness > 0.0 && *thickness <= 50.0))
    return bad_input(std::string(option) + " has the thickness " + in_quotes(words[1]) +
                     "; give millimetres above 0 and at most 50.");
  return Sheet{words[0], *thickness * mm};
}

std::optional<Problem> take_sheet(const std::vector<std::string>& words, const char* option,
                                  std::optional<Sheet>& sheet) {
  if (words.empty()) return std::nullopt;
  const auto read = sheet_of(words, option);
  if (!read) return read.problem();
  sheet = *read;
  return std::nullopt;
}

std::optional<Problem> take_details(const LayoutReadCommand& command, LayoutDetails& details) {
  if (!command.name.empty()) details.name = command.name;
  if (auto problem = take_sheet(command.skin, "--skin", details.skin_sheet)) return problem;
  if (auto problem = take_sheet(command.outer, "--outer", details.outer_sheet)) return problem;
  if (!command.backing.empty())
    details.backing = {command.backing[0] * N_per_mm, command.backing[1] * N_per_mm};
  if (!command.strap.empty()) {
    details.strap_stiffness = command.strap[0] * N_per_mm;
    details.strap_thickness = command.strap[1] * mm;
  }
  take_closure(command, details);
  if (command.rim_bonded) details.rim_bonded = true;
  return std::nullopt;
}

// The mapping file, with what was said on the command line on top; rules said there come first.
Result<DrawingMap> map_of(const LayoutReadCommand& command) {
  DrawingMap map;
  if (!command.map_file.empty()) {
    auto read = read_drawing_map(command.map_file);
    if (!read) return read.problem();
    map = std::move(read).value();
  }
  std::vector<DrawingRule> rules;
  for (const std::string& text : command.rules) {
    auto rule = rule_from_text(text);
    if (!rule) return rule.problem();
    rules.push_back(std::move(rule).value());
  }
  map.rules.insert(map.rules.begin(), rules.begin(), rules.end());
  if (const auto unit = drawing_unit_from_name(command.unit)) map.reading.unit = unit;
  if (command.scale) map.reading.scale = *command.scale;
  if (command.no_guess) map.guess = false;
  if (command.join) map.reading.join = *command.join * mm;
  if (command.channel_width) map.channel_width = *command.channel_width * mm;
  if (command.inset_width) map.inset_width = *command.inset_width * mm;
  if (auto problem = take_details(command, map.details)) return *problem;
  if (command.from_x && !map.details.closure)
    return bad_input("--from-x goes with --closing-length or --stretch; give one of them.");
  return map;
}

// Lists what is there; bad input when a shape that is not to be ignored is drawn wrongly.
int list(const Drawing& drawing, const DrawingMap& map, bool json, Streams streams) {
  const std::vector<DrawnAs> parts = drawn_parts(drawing, map);
  const std::vector<ShapeRow> rows = shape_rows(drawing, parts);
  const std::vector<std::string> overlaps = overlap_sentences(drawing, parts);
  if (json) {
    streams.out << drawing_json(drawing, rows, overlaps);
  } else {
    say_drawing(drawing, rows, streams.out);
    for (const std::string& sentence : overlaps) streams.out << "note: " << sentence << "\n";
    for (const std::string& sentence : idle_rule_sentences(drawing, map))
      streams.out << "note: " << sentence << "\n";
  }
  const std::string faults = faults_sentence(drawing, rows);
  return faults.empty() ? kExitDone : say_problem(bad_input(faults), streams);
}

// What someone who looks at the layout alone would not know.
void say_how_it_was_read(const Drawing& drawing, const DrawingMap& map, Streams streams) {
  for (const DrawnNote& note : drawing.notes) streams.out << "note: " << note_text(note) << "\n";
  for (const std::string& sentence : idle_rule_sentences(drawing, map))
    streams.out << "note: " << sentence << "\n";
  const std::vector<DrawnAs> parts = drawn_parts(drawing, map);
  for (const std::string& sentence : {guess_sentence(parts), left_out_sentence(drawing, parts)})
    if (!sentence.empty()) streams.out << "note: " << sentence << "\n";
  for (std::size_t i = 0; i < parts.size(); ++i)
    if (parts[i].part && parts[i].part != DrawnPart::kIgnore && !drawing.shapes[i].remark.empty())
      streams.out << "note: The " << place_text(drawing.shapes[i]) << " " << drawing.shapes[i].remark
                  << ".\n";
}

bool ends_with(const fs::path& file, const char* ending) {
  return file.extension() == ending;
}

// Writes by the ending of the file's name, and says what is still to be corrected.
int write(const Layout& layout, const fs::path& file, Streams streams) {
  const auto written = ends_with(file, ".svg")   ? write_layout_svg(layout, file)
                       : ends_with(file, ".dxf") ? write_layout_dxf(layout, file)
                                                 : write_layout(layout, file);
  if (!written) return say_problem(written.problem(), streams);
  streams.out << file.string() << ": outline, " << counted(layout.chambers.size(), "chamber") << ", "
              << counted(layout.channels.size(), "channel") << ", " << counted(layout.inlets.size(), "inlet")
              << ", " << counted(layout.straps.size(), "strap") << "\n";
  const std::vector<Problem> problems = check_layout(layout);
  for (const Problem& problem : problems) streams.err << "wrapgauge: to correct: " << problem.message << "\n";
  return problems.empty() ? kExitDone : kExitBadInput;
}

int write_drawn(const LayoutReadCommand& command, const DrawingMap& map, Streams streams) {
  const auto drawing = read_drawing(command.file, map.reading);
  if (!drawing) return say_problem(drawing.problem(), streams);
  const auto layout = layout_from_drawing(*drawing, map);
  if (!layout) return say_problem(layout.problem(), streams);
  say_how_it_was_read(*drawing, map, streams);
  return write(*layout, command.out, streams);
}

int run_layout_read(const LayoutReadCommand& command, Streams streams) {
  const auto map = map_of(command);
  if (!map) return say_problem(map.problem(), streams);
  if (!command.out.empty() && !ends_with(command.out, ".json") && !ends_with(command.out, ".svg") &&
      !ends_with(command.out, ".dxf"))
    return say_problem(
        bad_input("--out " + command.out.string() + " is none of .json, .svg and .dxf; give one of them."),
        streams);
  if (!command.save_map.empty())
    if (const auto saved = write_drawing_map(*map, command.save_map); !saved)
      return say_problem(saved.problem(), streams);
  if (command.out.empty()) {
    const auto drawing = read_drawing(command.file, map->reading);
    if (!drawing) return say_problem(drawing.problem(), streams);
    return list(*drawing, *map, command.json, streams);
  }
  if (!ends_with(command.file, ".json")) return write_drawn(command, *map, streams);
  const auto layout = read_layout(command.file);
  if (!layout) return say_problem(layout.problem(), streams);
  return write(*layout, command.out, streams);
}

void add_mapping_options(CLI::App& command, LayoutReadCommand& wanted) {
  command
      .add_option("--map", wanted.rules,
                  "Name, fill:COLOUR, stroke:COLOUR or shape:SHAPE = part [width in mm]; may be repeated")
      ->allow_extra_args(false)
      ->type_name("KEY=PART");
  command.add_option("--map-file", wanted.map_file, "Mapping and details from a JSON file")
      ->type_name("FILE");
  command.add_option("--save-map", wanted.save_map, "Write mapping and details to a JSON file")
      ->type_name("FILE");
  command.add_option("--unit", wanted.unit, "Unit of the drawing; as the file says if not given")
      ->check(CLI::IsMember({"px", "pt", "mm", "cm", "m", "in"}));
  command.add_option("--scale", wanted.scale, "Everything is this many times as large as the file says")
      ->check(CLI::Range(1e-6, 1e6));
  command.add_flag("--no-guess", wanted.no_guess, "Leave out what neither a rule nor a name says");
  command
      .add_option("--join-mm", wanted.join,
                  "Line ends this close are one; if not given 0.1 in a DXF and none in an SVG")
      ->check(CLI::Range(0.0, 10.0));
  command.add_option("--channel-width", wanted.channel_width, "Width of channels drawn as lines, mm")
      ->check(CLI::Range(1e-3, 1e4));
  command.add_option("--inset-width", wanted.inset_width, "Width of inset seams drawn as lines, mm")
      ->check(CLI::Range(1e-3, 1e4));
}

void add_detail_options(CLI::App& command, LayoutReadCommand& wanted) {
  command.add_option("--name", wanted.name, "Name of the layout; the file's if not given");
  command.add_option("--skin", wanted.skin, "Skin sheet: hardness and thickness in mm")
      ->expected(2)
      ->type_name("MATERIAL MM");
  command.add_option("--outer", wanted.outer, "Outer sheet: hardness and thickness in mm")
      ->expected(2)
      ->type_name("MATERIAL MM");
  command.add_option("--backing", wanted.backing, "Cloth on the outer sheet, along and across, N/mm")
      ->expected(2)
      ->check(CLI::Range(0.0, 1e4));
  command.add_option("--strap", wanted.strap, "Cloth of straps: stiffness in N/mm and thickness in mm")
      ->expected(2)
      ->check(CLI::Range(0.0, 1e4));
  auto* length =
      command
          .add_option("--closing-length", wanted.closing_length, "How far the closing lines lie apart, mm")
          ->check(CLI::Range(1e-3, 1e4));
  command.add_option("--stretch", wanted.stretch, "Closing length by stretch on the girth instead")
      ->check(CLI::Range(-0.5, 2.0))
      ->excludes(length);
  command.add_option("--from-x", wanted.from_x, "First closing line, mm from the left edge; 0 if not given")
      ->check(CLI::Range(-1e4, 1e4));
  command.add_flag("--rim-bonded", wanted.rim_bonded, "The fused rim is glued or taped to the skin");
}

}  // namespace

void add_layout_read(CLI::App& layout, Action& action) {
  auto wanted = std::make_shared<LayoutReadCommand>();
  CLI::App* command =
      layout.add_subcommand("read", "Turn an SVG or DXF drawing into a layout, or list what it holds");
  command->add_option("file", wanted->file, "Drawing (.svg, .dxf) or layout (.json)")
      ->required()
      ->type_name("FILE");
  command->add_option("--out", wanted->out, "Layout to write: .json, or .svg or .dxf for a drawing of it")
      ->type_name("FILE");
  command->add_flag("--json", wanted->json, "List as JSON");
  add_mapping_options(*command, *wanted);
  add_detail_options(*command, *wanted);
  command->footer(kLayoutReadExamples);
  command->callback([&action, wanted] {
    action = [wanted](Streams streams) { return run_layout_read(*wanted, streams); };
  });
}

}  // namespace wrapgauge
