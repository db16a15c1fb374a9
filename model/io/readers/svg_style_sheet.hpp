#pragma once
// The style sheets inside an SVG file: plain rules for elements, classes and ids.
//
// Read: selectors made of an element name or *, .class words and #id without blanks ("rect.cell#left"),
// several parted by commas. All others (descendants, attributes, pseudo-classes) and @-rules are left out,
// and a note says which. Of two rules that say the same the one with more ids, then classes, then element
// names holds, then the later one; !important goes before all (CSS 2.1, 6.4, W3C recommendation; from
// memory). Nothing is fetched.

#include <array>
#include <pugixml.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "model/io/readers/svg_text.hpp"
#include "model/layout/drawing.hpp"

namespace wrapgauge {

class SvgStyleSheet {
 public:
  static constexpr std::size_t kMostSelectors = 500;  // of a file (judgement)

  // Takes every style element below `root`.
  explicit SvgStyleSheet(pugi::xml_node root);

  bool too_long() const { return selectors_.size() > kMostSelectors; }
  // What was not read, in whole sentences.
  const std::vector<DrawnNote>& notes() const { return notes_; }
  // What the rules that fit the element say together.
  SvgDeclarations declarations_for(pugi::xml_node node) const;

 private:
  struct Selector {
    std::string element, id;  // empty: any
    std::vector<std::string> classes;
    std::array<std::size_t, 3> weight{};  // ids, classes, element names
    std::size_t block = 0;
  };

  void take_sheet(std::string_view text);
  void take_rule(std::string_view selectors, std::string_view block);
  static bool read_selector(std::string_view text, Selector& selector);

  std::vector<Selector> selectors_;      // the weightier later, else in the file's order
  std::vector<SvgDeclarations> blocks_;  // of the rules that have at least one selector
  std::vector<std::string> left_out_;
  std::vector<DrawnNote> notes_;
};

}  // namespace wrapgauge
