#include "model/io/readers/svg_document.hpp"

#include <algorithm>

namespace wrapgauge {
namespace {

std::optional<Problem> refused_bytes(std::string_view bytes, const std::string& name) {
  constexpr std::size_t kMostSvgBytes = 16u << 20;
  if (bytes.size() > kMostSvgBytes)
    return bad_input(
        Phrase::worded("%1 is larger than 16 MiB; simplify the drawing or split it.", {name_of(name)}));
  if (bytes.starts_with("\x1F\x8B"))
    return bad_input(
        Phrase::worded("%1 is compressed; save it as plain SVG, without compression.", {name_of(name)}));
  if (bytes.find('\0') != bytes.npos)
    return bad_input(Phrase::worded(
        "%1 holds zero bytes, so it is not UTF-8 text; save it as plain SVG in UTF-8.", {name_of(name)}));
  // Declared before the drawing starts; nothing is ever expanded, but a drawing that relies on them is not
  // whole.
  if (bytes.substr(0, bytes.find("<svg")).find("<!ENTITY") != bytes.npos)
    return bad_input(Phrase::worded(
        "%1 declares entities, which are not expanded; save it as plain SVG without them.", {name_of(name)}));
  return std::nullopt;
}

// Deepest element, counted from the root at 1.
struct DepthWalker : pugi::xml_tree_walker {
  int deepest = 0;
  bool for_each(pugi::xml_node& node) override {
    if (node.type() == pugi::node_element) deepest = std::max(deepest, depth() + 1);
    return true;
  }
};

struct IdWalker : pugi::xml_tree_walker {
  std::map<std::string, pugi::xml_node>& by_id;
  explicit IdWalker(std::map<std::string, pugi::xml_node>& map) : by_id(map) {}
  bool for_each(pugi::xml_node& node) override {
    if (const pugi::xml_attribute id = node.attribute("id")) by_id.emplace(id.value(), node);
    return true;
  }
};

}  // namespace

std::string_view svg_local_name(std::string_view name) {
  const std::size_t colon = name.rfind(':');
  return colon == name.npos ? name : name.substr(colon + 1);
}

bool is_svg_name(std::string_view name) {
  return name.find(':') == name.npos || name.starts_with("svg:");
}

int SvgDocument::line_at(std::ptrdiff_t offset) const {
  return 1 + static_cast<int>(std::lower_bound(line_ends_.begin(), line_ends_.end(), offset) -
                              line_ends_.begin());
}

int SvgDocument::line_of(pugi::xml_node node) const {
  return line_at(node.offset_debug());
}

pugi::xml_node SvgDocument::find(const std::string& id) const {
  const auto found = by_id_.find(id);
  return found == by_id_.end() ? pugi::xml_node() : found->second;
}

std::optional<Problem> SvgDocument::index(const std::string& name) {
  for (const pugi::xml_node node : document_.children())
    if (node.type() == pugi::node_element && !root_) root_ = node;
  if (!root_ || svg_local_name(root_.name()) != "svg" || !is_svg_name(root_.name()))
    return bad_input(
        Phrase::worded("%1 is not an SVG drawing: its first element is not svg.", {name_of(name)}));
  DepthWalker depth;
  document_.traverse(depth);
  if (depth.deepest > kDeepestNesting)
    return bad_input(Phrase::worded(
        "%1 nests its elements %2 deep; at most %3 are read, so ungroup some.",
        {name_of(name), figures_of(depth.deepest), figures_of(std::to_string(kDeepestNesting))}));
  IdWalker ids(by_id_);
  document_.traverse(ids);
  return std::nullopt;
}

std::optional<Problem> SvgDocument::load(std::string_view bytes, const std::string& name) {
  if (auto problem = refused_bytes(bytes, name)) return problem;
  for (std::size_t i = 0; i < bytes.size(); ++i)
    if (bytes[i] == '\n') line_ends_.push_back(static_cast<std::ptrdiff_t>(i));
  const pugi::xml_parse_result parsed =
      document_.load_buffer(bytes.data(), bytes.size(), pugi::parse_default, pugi::encoding_utf8);
  if (!parsed)
    return bad_input(Phrase::worded(
        "%1 is not whole XML at line %2 (%3); it may be cut short, so save it again.",
        {name_of(name), figures_of(std::to_string(line_at(parsed.offset))), name_of(parsed.description())}));
  return index(name);
}

}  // namespace wrapgauge
