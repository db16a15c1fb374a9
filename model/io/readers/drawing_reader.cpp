#include "model/io/readers/drawing_reader.hpp"

#include "model/core/file.hpp"
#include "model/io/readers/dxf_reader.hpp"
#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/readers/svg_reader.hpp"
#include "model/layout/drawn_layout.hpp"

namespace wrapgauge {
namespace {

constexpr std::uintmax_t kMostBytes = 64u << 20;  // the readers say less

bool ends_with(const std::filesystem::path& file, std::string_view ending) {
  return same_word(file.extension().string(), ending);
}

}  // namespace

bool is_drawing_file(const std::filesystem::path& file) {
  return ends_with(file, ".svg") || ends_with(file, ".dxf");
}

Result<Drawing> read_drawing(const std::filesystem::path& file, const DrawingReading& reading) {
  const std::string name = file.filename().string();
  if (!is_drawing_file(file))
    return bad_input(Phrase::worded("%1 is not read as a drawing: save it as plain SVG or as ASCII DXF.",
                                    {name_of(name)}));
  const Result<std::string> bytes = read_file(file, kMostBytes);
  if (!bytes) return bytes.problem();
  if (bytes->empty())
    return bad_input(Phrase::worded("%1 is empty (0 bytes); save the drawing again.", {name_of(name)}));
  if (ends_with(file, ".svg")) return read_svg(*bytes, name, reading);
  return read_dxf(*bytes, name, reading);
}

Result<Layout> read_drawn_layout(const std::filesystem::path& file, const DrawingMap& map) {
  const auto drawing = read_drawing(file, map.reading);
  if (!drawing) return drawing.problem();
  return layout_from_drawing(*drawing, map);
}

}  // namespace wrapgauge
