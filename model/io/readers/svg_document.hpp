#pragma once
// An SVG file as a checked XML tree: bounded, no entities, ids and line numbers at hand.

#include <map>
#include <optional>
#include <pugixml.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

inline constexpr int kDeepestNesting = 60;

std::string_view svg_local_name(std::string_view name);  // "rect" of "svg:rect"
// Ours to read: no prefix, or the prefix svg.
bool is_svg_name(std::string_view name);

class SvgDocument {
 public:
  // `name` is the file's, for messages. Problems: see svg_reader.hpp.
  std::optional<Problem> load(std::string_view bytes, const std::string& name);

  pugi::xml_node root() const { return root_; }
  pugi::xml_node find(const std::string& id) const;  // an empty node when there is none
  int line_of(pugi::xml_node node) const;

 private:
  std::optional<Problem> index(const std::string& name);
  int line_at(std::ptrdiff_t offset) const;

  pugi::xml_document document_;
  pugi::xml_node root_;
  std::map<std::string, pugi::xml_node> by_id_;
  std::vector<std::ptrdiff_t> line_ends_;
};

}  // namespace wrapgauge
