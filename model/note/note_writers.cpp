#include "model/core/markdown_text.hpp"
#include "model/core/xml_text.hpp"
#include "model/note/note.hpp"

namespace wrapgauge {
namespace {

struct Markdown {
  std::string operator()(const NoteHeading& heading) const {
    return "## " + markdown_text(heading.text) + "\n\n";
  }
  std::string operator()(const NoteText& text) const { return markdown_text(text.text) + "\n\n"; }
  std::string operator()(const NoteBox& box) const {
    std::string out;
    for (const std::string& line : box.lines)
      out += out.empty() ? "> **" + markdown_text(line) + "**\n" : ">\n> " + markdown_text(line) + "\n";
    return out + "\n";
  }
  std::string operator()(const NoteList& list) const {
    std::string out;
    for (const std::string& item : list.items) out += "- " + markdown_text(item) + "\n";
    return out + "\n";
  }
  std::string operator()(const NoteTable& table) const {
    std::string out = line(table.header, table.header.size()) + "|";
    for (std::size_t c = 0; c < table.header.size(); ++c) out += "---|";
    out += "\n";
    for (const auto& row : table.rows) out += line(row, table.header.size());
    return out + "\n";
  }
  std::string operator()(const NotePicture& picture) const {
    return "![" + markdown_text(picture.caption) + "](" + picture.file + ")\n\n" +
           markdown_text(picture.caption) + "\n\n";
  }
  // Markdown has no cell that reaches over others: those it would cover hold a dash, for they are not to
  // fill.
  static std::string line(const std::vector<std::string>& cells, std::size_t columns) {
    std::string out = "|";
    for (const std::string& cell : cells) (out += ' ') += markdown_text(cell) + " |";
    for (std::size_t c = cells.size(); c < columns; ++c) out += " – |";
    return out + "\n";
  }
};

// Paper-yellow, and as high as the lines that have to fit.
std::string html_cell(const std::string& text, std::size_t columns, int room_lines) {
  const std::string span = columns > 1 ? " colspan=\"" + std::to_string(columns) + "\"" : "";
  if (!text.empty()) return "<td" + span + ">" + xml_text(text) + "</td>";
  std::string room = "&nbsp;";
  for (int line = 1; line < room_lines; ++line) room += "<br>&nbsp;";
  return "<td" + span + " class=\"fill\" bgcolor=\"#fff6d6\">" + room + "</td>";
}

struct Html {
  std::string operator()(const NoteHeading& heading) const {
    return "<h2>" + xml_text(heading.text) + "</h2>\n";
  }
  std::string operator()(const NoteText& text) const { return "<p>" + xml_text(text.text) + "</p>\n"; }
  std::string operator()(const NoteBox& box) const {
    std::string out =
        "<table width=\"100%\" border=\"2\" cellspacing=\"0\" cellpadding=\"4\" class=\"verdict\"><tr><td>\n";
    for (const std::string& line : box.lines)
      out += &line == &box.lines.front() ? "<p><b>" + xml_text(line) + "</b></p>\n"
                                         : "<p>" + xml_text(line) + "</p>\n";
    return out + "</td></tr></table>\n";
  }
  std::string operator()(const NoteList& list) const {
    std::string out = "<ul>\n";
    for (const std::string& item : list.items) out += "<li>" + xml_text(item) + "</li>\n";
    return out + "</ul>\n";
  }
  std::string operator()(const NoteTable& table) const {
    std::string out = "<table width=\"100%\" border=\"1\" cellspacing=\"0\" cellpadding=\"2\">\n<thead><tr>";
    for (std::size_t c = 0; c < table.header.size(); ++c)
      out += "<th scope=\"col\" width=\"" + std::to_string(table.widths_percent[c]) + "%\" align=\"left\">" +
             xml_text(table.header[c]) + "</th>";
    out += "</tr></thead>\n";
    for (const auto& row : table.rows) {
      out += "<tr>";
      for (std::size_t c = 0; c < row.size(); ++c)
        out += html_cell(row[c], c + 1 < row.size() ? 1 : table.header.size() - c, table.room_lines);
      out += "</tr>\n";
    }
    return out + "</table>\n";
  }
  std::string operator()(const NotePicture& picture) const {
    return "<p><img src=\"" + picture.file + "\" width=\"" + std::to_string(kNotePictureWidth) + "\" alt=\"" +
           xml_text(picture.caption) + "\"></p>\n<p>" + xml_text(picture.caption) + "</p>\n";
  }
};

constexpr const char* kStyle =
    "body { font-family: sans-serif; font-size: 11pt; width: 700px; margin: 1em auto; color: #1c1a22; }\n"
    "h1 { font-size: 17pt; margin: 0.3em 0; } h2 { font-size: 13pt; margin: 1em 0 0.3em; }\n"
    "p { margin: 0.4em 0; } ul { margin: 0.3em 0; } img { max-width: 100%; height: auto; }\n"
    "table { border-collapse: collapse; margin: 0.4em 0; } th, td { vertical-align: top; padding: 3px 5px; "
    "}\n"
    "th { background: #eceaf0; } .verdict { border: 2px solid #1c1a22; }\n"
    "@media print { body { width: auto; } thead { display: table-header-group; }\n"
    "  h2 { break-after: avoid; } tr, img { break-inside: avoid; } }\n";

}  // namespace

std::string note_markdown(const Note& note) {
  std::string out = "# " + markdown_text(note.title) + "\n\n";
  for (const NoteBlock& block : note.blocks) out += std::visit(Markdown{}, block);
  out.pop_back();
  return out;
}

std::string note_body_html(const Note& note) {
  std::string out = "<h1>" + xml_text(note.title) + "</h1>\n";
  for (const NoteBlock& block : note.blocks) out += std::visit(Html{}, block);
  return out;
}

std::string note_html(const Note& note) {
  std::string date;
  if (!note.date.empty()) date = "<meta name=\"date\" content=\"" + xml_text(note.date) + "\">\n";
  return "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">\n<title>" + xml_text(note.title) +
         "</title>\n" + date + "<style>\n" + kStyle + "</style></head><body>\n" + note_body_html(note) +
         "</body></html>\n";
}

std::string note_prose(const Note& note) {
  std::string out;
  const auto add = [&](const std::string& text) {
    if (text.empty()) return;
    out += text;
    out += std::string(".;:").find(text.back()) == std::string::npos ? ". " : " ";
  };
  for (const NoteBlock& block : note.blocks) {
    if (const auto* text = std::get_if<NoteText>(&block)) add(text->text);
    if (const auto* box = std::get_if<NoteBox>(&block))
      for (const std::string& line : box->lines) add(line);
    if (const auto* list = std::get_if<NoteList>(&block))
      for (const std::string& item : list->items) add(item);
    if (const auto* table = std::get_if<NoteTable>(&block))
      for (const auto& row : table->rows)
        for (const std::string& cell : row)
          if (cell.find(' ') != std::string::npos) add(cell);
  }
  return out;
}

}  // namespace wrapgauge
