#include "model/io/readers/template_layout.hpp"

#include <cstdint>
#include <nlohmann/json.hpp>

#include "model/core/json_object.hpp"
#include "model/core/xml_text.hpp"
#include "model/layout/layout_json.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kMark = "wrapgauge-template";
constexpr std::string_view kOpen = "<desc>", kShut = "</desc>\n";

// FNV-1a, 64 bits.
std::string check_sum(std::string_view bytes) {
  std::uint64_t sum = 0xcbf29ce484222325u;
  for (const char c : bytes) sum = (sum ^ static_cast<unsigned char>(c)) * 0x100000001b3u;
  return std::to_string(sum);
}

std::string without_description(std::string_view bytes) {
  const std::size_t from = bytes.find(kOpen), to = bytes.find(kShut);
  std::string rest(bytes.substr(0, from));
  if (from != bytes.npos && to != bytes.npos && to > from) rest += bytes.substr(to + kShut.size());
  return rest;
}

}  // namespace

std::string with_layout(std::string svg, const Layout& layout) {
  nlohmann::json description{{kMark, 1}, {"lines", check_sum(svg)}, {"layout", layout_to_json(layout)}};
  constexpr std::string_view kTitleEnd = "</title>\n";
  const std::string text = description.dump(-1, ' ', true, nlohmann::json::error_handler_t::replace);
  svg.insert(svg.find(kTitleEnd) + kTitleEnd.size(),
             std::string(kOpen) + xml_text(text) + std::string(kShut));
  return svg;
}

void take_template(std::string_view bytes, const std::string& description, Drawing& drawing) {
  if (description.find(kMark) == description.npos) return;
  const auto json = parse_json(description, "the description of " + drawing.file);
  if (!json || !json->is_object() || !json->contains(kMark)) return;
  const auto lines = json->find("lines");
  const auto held = json->find("layout");
  auto layout = held == json->end() ? Result<Layout>(bad_input(Phrase::worded("it carries no layout")))
                                    : layout_from_json(*held, "the layout that " + drawing.file + " carries");
  std::string plain(bytes);  // ends of lines may be one byte or two
  std::erase(plain, '\r');
  const bool as_written =
      lines != json->end() && lines->is_string() && *lines == check_sum(without_description(plain));
  DrawingMap quiet;
  quiet.guess = false;
  drawing.carried = quiet;
  if (layout && as_written) {
    drawing.layout = std::move(layout).value();
    drawing.notes.push_back(
        {Phrase::worded("A template: the layout that it carries is read, not its lines.")});
  } else {
    drawing.changed_template = true;
    drawing.notes.push_back({Phrase::worded("A template that another program saved since it was written.")});
  }
}

}  // namespace wrapgauge
