#include "model/core/xml_text.hpp"
#include "model/note/note.hpp"

namespace wrapgauge {
namespace {

// No line breaks, cell borders or markup of its own.
std::string for_markdown(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '\n' || c == '\r')
      out += ' ';
    else if (c == '|' || c == '*' || c == '_' || c == '`' || c == '#' || c == '<' || c == '[')
      (out += '\\') += c;
    else
      out += c;
  }
  return out;
}

struct Markdown {
  std::string operator()(const NoteHeading& heading) const {
    return "## " + for_markdown(heading.text) + "\n\n";
  }
  std::string operator()(const NoteText& text) const {
    return text.alert ? "> **" + for_markdown(text.text) + "**\n\n" : for_markdown(text.text) + "\n\n";
  }
  std::string operator()(const NoteList& list) const {
    std::string out;
    for (const std::string& item : list.items) out += "- " + for_markdown(item) + "\n";
    return out + "\n";
  }
  std::string operator()(const NoteTable& table) const {
    std::string out = line(table.header) + "|";
    for (std::size_t c = 0; c < table.header.size(); ++c) out += "---|";
    out += "\n";
    for (const auto& row : table.rows) out += line(row);
    return out + "\n";
  }
  std::string operator()(const NotePicture& picture) const {
    return "![" + for_markdown(picture.caption) + "](" + picture.file + ")\n\n" +
           for_markdown(picture.caption) + "\n\n";
  }
  static std::string line(const std::vector<std::string>& cells) {
    std::string out = "|";
    for (const std::string& cell : cells) {
      out += ' ';
      out += for_markdown(cell);
      out += " |";
    }
    return out + "\n";
  }
};

struct Html {
  std::string operator()(const NoteHeading& heading) const {
    return "<h2>" + xml_text(heading.text) + "</h2>\n";
  }
  std::string operator()(const NoteText& text) const {
    if (!text.alert) return "<p>" + xml_text(text.text) + "</p>\n";
    return "<table width=\"100%\" border=\"2\" cellspacing=\"0\" cellpadding=\"4\" "
           "class=\"alert\"><tr><td><b>" +
           xml_text(text.text) + "</b></td></tr></table>\n";
  }
  std::string operator()(const NoteList& list) const {
    std::string out = "<ul>\n";
    for (const std::string& item : list.items) out += "<li>" + xml_text(item) + "</li>\n";
    return out + "</ul>\n";
  }
  std::string operator()(const NoteTable& table) const {
    std::string out = "<table width=\"100%\" border=\"1\" cellspacing=\"0\" cellpadding=\"2\"><tr>";
    for (std::size_t c = 0; c < table.header.size(); ++c)
      out += "<th width=\"" + std::to_string(table.widths_percent[c]) + "%\" align=\"left\">" +
             xml_text(table.header[c]) + "</th>";
    out += "</tr>\n";
    for (const auto& row : table.rows) {
      out += "<tr>";
      for (const std::string& cell : row)
        out += "<td>" + (cell.empty() ? "&nbsp;" : xml_text(cell)) + "</td>";
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
    "body { font-family: sans-serif; font-size: 9pt; width: 690px; margin: 1em auto; color: #1c1a22; }\n"
    "h1 { font-size: 14pt; margin: 0.3em 0; } h2 { font-size: 10pt; margin: 0.6em 0 0.2em; }\n"
    "p { margin: 0.3em 0; } ul { margin: 0.2em 0; } table { border-collapse: collapse; }\n"
    "@media print { .page + .page { break-before: page; } }\n";

}  // namespace

std::string note_markdown(const Note& note) {
  std::string out = "# " + for_markdown(note.title) + "\n\n";
  for (const NotePage& page : note.pages)
    for (const NoteBlock& block : page.blocks) out += std::visit(Markdown{}, block);
  out.pop_back();
  return out;
}

std::string note_page_html(const Note& note, std::size_t page) {
  std::string out;
  if (page == 0) out += "<h1>" + xml_text(note.title) + "</h1>\n";
  for (const NoteBlock& block : note.pages[page].blocks) out += std::visit(Html{}, block);
  return out;
}

std::string note_html(const Note& note) {
  std::string out = "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>" +
                    xml_text(note.title) + "</title>\n<style>\n" + kStyle + "</style></head><body>\n";
  for (std::size_t page = 0; page < note.pages.size(); ++page)
    out += "<div class=\"page\">\n" + note_page_html(note, page) + "</div>\n";
  return out + "</body></html>\n";
}

std::string note_prose(const Note& note) {
  std::string out;
  const auto add = [&](const std::string& text) {
    if (text.empty()) return;
    out += text;
    out += std::string(".;:").find(text.back()) == std::string::npos ? ". " : " ";
  };
  for (const NotePage& page : note.pages)
    for (const NoteBlock& block : page.blocks) {
      if (const auto* text = std::get_if<NoteText>(&block)) add(text->text);
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
