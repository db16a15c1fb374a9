#include "model/io/readers/svg_style_sheet.hpp"

#include <algorithm>

#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/readers/svg_document.hpp"

namespace wrapgauge {
namespace {

std::string without_comments(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    const std::size_t open = text.find("/*");
    out += text.substr(0, open);
    if (open == text.npos) break;
    out += ' ';
    const std::size_t shut = text.find("*/", open + 2);
    text.remove_prefix(shut == text.npos ? text.size() : shut + 2);
  }
  return out;
}

// Where the first of `ends` stands outside quotes, from `at` on; the text's size when there is none.
std::size_t find_unquoted(std::string_view text, std::string_view ends, std::size_t at = 0) {
  for (char quote = 0; at < text.size(); ++at) {
    const char c = text[at];
    if (quote != 0)
      quote = c == quote ? '\0' : quote;
    else if (c == '"' || c == '\'')
      quote = c;
    else if (ends.find(c) != ends.npos)
      return at;
  }
  return text.size();
}

// Behind the brace that ends the block opened at `open`; a block may hold others.
std::size_t behind_block(std::string_view text, std::size_t open) {
  int depth = 0;
  for (std::size_t at = open; (at = find_unquoted(text, "{}", at)) < text.size(); ++at)
    if ((depth += text[at] == '{' ? 1 : -1) == 0) return at + 1;
  return text.size();
}

bool is_name_byte(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_' ||
         static_cast<unsigned char>(c) >= 0x80;
}

std::string take_name(std::string_view& text) {
  const auto end = std::find_if_not(text.begin(), text.end(), is_name_byte);
  std::string name(text.begin(), end);
  text.remove_prefix(name.size());
  return name;
}

std::string text_of(pugi::xml_node node) {
  std::string text;
  for (const pugi::xml_node child : node.children())
    if (child.type() == pugi::node_pcdata || child.type() == pugi::node_cdata) text += child.value();
  return text;
}

bool is_for_screens(pugi::xml_node style) {
  const std::string media = svg_trimmed(style.attribute("media").value());
  const std::string type = svg_trimmed(style.attribute("type").value());
  return (media.empty() || media == "all" || media == "screen") && (type.empty() || type == "text/css");
}

// What svg_style_of asks for; nothing else is kept.
bool is_asked_for(std::string_view property) {
  constexpr std::string_view kAsked[] = {"fill",
                                         "stroke",
                                         "stroke-width",
                                         "fill-rule",
                                         "visibility",
                                         "display",
                                         "transform",
                                         "transform-origin",
                                         "transform-box",
                                         "translate",
                                         "rotate",
                                         "scale",
                                         "offset-path",
                                         "clip-path",
                                         "mask",
                                         "vector-effect",
                                         "x",
                                         "y",
                                         "width",
                                         "height",
                                         "cx",
                                         "cy",
                                         "r",
                                         "rx",
                                         "ry",
                                         "d"};
  return std::find(std::begin(kAsked), std::end(kAsked), property) != std::end(kAsked);
}

struct StyleWalker : pugi::xml_tree_walker {
  std::vector<pugi::xml_node> styles;
  bool for_each(pugi::xml_node& node) override {
    if (svg_local_name(node.name()) == "style" && is_svg_name(node.name())) styles.push_back(node);
    return true;
  }
};

}  // namespace

SvgStyleSheet::SvgStyleSheet(pugi::xml_node root) {
  StyleWalker walker;
  root.traverse(walker);
  for (const pugi::xml_node style : walker.styles)
    if (is_for_screens(style))
      take_sheet(without_comments(text_of(style)));
    else
      left_out_.push_back("a sheet that is not plain CSS for the screen");
  std::stable_sort(selectors_.begin(), selectors_.end(),
                   [](const Selector& a, const Selector& b) { return a.weight < b.weight; });
  if (left_out_.empty()) return;
  const std::vector<Phrase> values{figures_of(static_cast<int>(left_out_.size())),
                                   name_of(left_out_.front())};
  notes_.push_back(
      {left_out_.size() == 1
           ? Phrase::worded(
                 "Of the file's style sheet %1 rule is not read (%2), only element, .class and #id "
                 "are: fill and stroke may be missing.",
                 values)
           : Phrase::worded("Of the file's style sheet %1 rules are not read (%2, ...), only element, .class "
                            "and #id are: fill and stroke may be missing.",
                            values)});
}

void SvgStyleSheet::take_sheet(std::string_view text) {
  while (!text.empty() && !too_long()) {
    const std::size_t end = find_unquoted(text, "{;");
    const std::string head = svg_trimmed(text.substr(0, end));
    const bool at_rule = head.starts_with('@'), open = end < text.size() && text[end] == '{';
    if (!open && !at_rule) {  // a lone semicolon, or text that is cut off
      if (!head.empty()) left_out_.push_back(in_quotes(head));
      text.remove_prefix(std::min(text.size(), end + 1));
      continue;
    }
    const std::size_t behind = open ? behind_block(text, end) : std::min(text.size(), end + 1);
    if (at_rule)
      left_out_.push_back(in_quotes(head));
    else
      take_rule(head, text.substr(end + 1, behind - end - 1));
    text.remove_prefix(behind);
  }
}

void SvgStyleSheet::take_rule(std::string_view selectors, std::string_view block) {
  if (block.ends_with('}')) block.remove_suffix(1);
  SvgDeclarations said = svg_declarations(block);
  std::erase_if(said, [](const auto& one) { return !is_asked_for(one.first); });
  if (said.empty()) return;
  const std::size_t before = selectors_.size();
  while (!selectors.empty() && !too_long()) {
    const std::size_t comma = find_unquoted(selectors, ",");
    const std::string one = svg_trimmed(selectors.substr(0, comma));
    selectors.remove_prefix(std::min(selectors.size(), comma + 1));
    Selector selector;
    selector.block = blocks_.size();
    if (read_selector(one, selector))
      selectors_.push_back(std::move(selector));
    else
      left_out_.push_back(in_quotes(one));
  }
  if (selectors_.size() > before) blocks_.push_back(std::move(said));
}

bool SvgStyleSheet::read_selector(std::string_view text, Selector& selector) {
  if (text.empty()) return false;
  if (text.front() == '*')
    text.remove_prefix(1);
  else
    selector.element = take_name(text);
  while (!text.empty()) {
    const char sign = text.front();
    text.remove_prefix(1);
    std::string name = take_name(text);
    if (name.empty() || (sign != '.' && sign != '#') || (sign == '#' && !selector.id.empty())) return false;
    if (sign == '.')
      selector.classes.push_back(std::move(name));
    else
      selector.id = std::move(name);
  }
  selector.weight = {selector.id.empty() ? 0u : 1u, selector.classes.size(),
                     selector.element.empty() ? 0u : 1u};
  return true;
}

SvgDeclarations SvgStyleSheet::declarations_for(pugi::xml_node node) const {
  SvgDeclarations total;
  if (selectors_.empty()) return total;
  const std::string_view element = svg_local_name(node.name()), id = node.attribute("id").value();
  std::vector<std::string> words = svg_words(node.attribute("class").value());
  std::sort(words.begin(), words.end());
  for (const Selector& selector : selectors_) {
    const bool fits = (selector.element.empty() || selector.element == element) &&
                      (selector.id.empty() || selector.id == id) &&
                      std::all_of(selector.classes.begin(), selector.classes.end(), [&](const auto& name) {
                        return std::binary_search(words.begin(), words.end(), name);
                      });
    if (fits) lay_over(total, blocks_[selector.block]);
  }
  return total;
}

}  // namespace wrapgauge
