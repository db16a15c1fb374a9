#include "app/picture/pdf_properties.hpp"

#include <QString>
#include <charconv>
#include <map>
#include <optional>

#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

// The first whole number at or after `from`.
std::optional<std::size_t> number_after(const std::string& text, std::size_t from) {
  const std::size_t at = text.find_first_of("0123456789", from);
  if (from == std::string::npos || at == std::string::npos) return std::nullopt;
  std::size_t number = 0;
  std::from_chars(text.data() + at, text.data() + text.size(), number);
  return number;
}

// Number that follows `key`, looked for from `from` on.
std::optional<std::size_t> number_of(const std::string& text, const std::string& key, std::size_t from) {
  const std::size_t at = text.find(key, from);
  return at == std::string::npos ? std::nullopt : number_after(text, at + key.size());
}

// Where things are in a PDF with one table of offsets, as Qt writes it.
struct PdfPlaces {
  std::size_t table = 0, size = 0, catalogue = 0, information = 0;
};

std::optional<PdfPlaces> places_in(const std::string& pdf) {
  const std::size_t trailer = pdf.rfind("trailer");
  if (trailer == std::string::npos) return std::nullopt;
  const auto table = number_of(pdf, "startxref", trailer), size = number_of(pdf, "/Size", trailer),
             catalogue = number_of(pdf, "/Root", trailer), information = number_of(pdf, "/Info", trailer);
  if (!table || !size || !catalogue || !information) return std::nullopt;
  return PdfPlaces{*table, *size, *catalogue, *information};
}

// What stands between the outer << and >> of an object; none when it is no dictionary.
std::optional<std::string> dictionary_of(const std::string& pdf, std::size_t object) {
  std::string begin = "\n";
  begin.append(std::to_string(object)).append(" 0 obj");
  const std::size_t from = pdf.find(begin);
  if (from == std::string::npos) return std::nullopt;
  const std::size_t end = pdf.find("endobj", from), open = pdf.find("<<", from);
  if (end == std::string::npos || open > end) return std::nullopt;
  const std::size_t close = pdf.rfind(">>", end);
  return pdf.substr(open + 2, close - open - 2);
}

// Numbers of the page objects in their order.
std::vector<std::size_t> pages_in(const std::string& pdf, const std::string& catalogue) {
  std::vector<std::size_t> pages;
  const auto tree = number_of(catalogue, "/Pages", 0);
  const auto words = tree ? dictionary_of(pdf, *tree) : std::nullopt;
  if (!words) return pages;
  std::size_t at = words->find("/Kids");
  const std::size_t end = words->find(']', at);
  while (at != std::string::npos && (at = words->find_first_of("0123456789", at)) < end) {
    pages.push_back(number_after(*words, at).value_or(0));
    at = words->find('R', at);
  }
  return pages;
}

// A text in any script: UTF-16 as hexadecimal digits, with the mark of its byte order.
std::string text_string(const std::string& text) {
  static constexpr char kDigits[] = "0123456789ABCDEF";
  std::string out = "<FEFF";
  for (const QChar letter : QString::fromStdString(text))
    for (int shift = 12; shift >= 0; shift -= 4) out += kDigits[(letter.unicode() >> shift) & 15];
  return out + ">";
}

std::string reference(std::size_t object) {
  return std::to_string(object) + " 0 R";
}

using Objects = std::map<std::size_t, std::string>;  // number and dictionary

std::string information_of(const PdfProperties& properties) {
  std::string words = "<< /Title " + text_string(properties.title) + " /Creator (Wrapgauge) /Producer (Qt)";
  std::string day;
  for (const char digit : properties.date)
    if (digit != '-') day += digit;
  if (!day.empty()) words += " /CreationDate (D:" + day + "000000Z) /ModDate (D:" + day + "000000Z)";
  return words + " >>";
}

// A flat list below `root`; its items are numbered from root + 1 on.
void add_outline(const PdfProperties& properties, const std::vector<std::size_t>& pages, std::size_t root,
                 Objects& objects) {
  const std::size_t count = properties.bookmarks.size();
  objects[root] = "<< /Type /Outlines /First " + reference(root + 1) + " /Last " + reference(root + count) +
                  " /Count " + std::to_string(count) + " >>";
  for (std::size_t k = 0; k < count; ++k) {
    const PdfBookmark& mark = properties.bookmarks[k];
    std::string words = "<< /Title " + text_string(mark.title) + " /Parent " + reference(root) + " /Dest [" +
                        reference(pages[mark.page]) + " /XYZ null " + fixed_text(mark.from_bottom_pt, 1) +
                        " null]";
    if (k > 0) words += " /Prev " + reference(root + k);
    if (k + 1 < count) words += " /Next " + reference(root + k + 2);
    objects[root + 1 + k] = words + " >>";
  }
}

std::string offset_entry(std::size_t offset) {
  std::string digits = std::to_string(offset);
  return std::string(10 - std::min<std::size_t>(10, digits.size()), '0') + digits + " 00000 n \n";
}

std::string updated(std::string pdf, const Objects& objects, const PdfPlaces& places) {
  std::string table = "xref\n";
  if (pdf.back() != '\n') pdf += '\n';
  for (const auto& [number, words] : objects) {
    table += std::to_string(number) + " 1\n" + offset_entry(pdf.size());
    pdf += std::to_string(number) + " 0 obj\n" + words + "\nendobj\n";
  }
  const std::size_t size = std::max(places.size, objects.rbegin()->first + 1);
  return pdf + table + "trailer\n<< /Size " + std::to_string(size) + " /Root " + reference(places.catalogue) +
         " /Info " + reference(places.information) + " /Prev " + std::to_string(places.table) +
         " >>\nstartxref\n" + std::to_string(pdf.size()) + "\n%%EOF\n";
}

}  // namespace

Result<std::string> with_properties(std::string pdf, const PdfProperties& properties) {
  const auto places = places_in(pdf);
  const auto catalogue = places ? dictionary_of(pdf, places->catalogue) : std::nullopt;
  const auto pages = catalogue ? pages_in(pdf, *catalogue) : std::vector<std::size_t>();
  for (const PdfBookmark& mark : properties.bookmarks)
    if (mark.page >= pages.size())
      return bad_input(
          Phrase::worded("the note's PDF could not be given its properties: it is not as Qt writes it."));
  if (pages.empty())
    return bad_input(
        Phrase::worded("the note's PDF could not be given its properties: it has no pages that were found."));
  Objects objects{{places->information, information_of(properties)}};
  std::string root = "<<" + *catalogue + "/Lang (" + properties.language +
                     ") /ViewerPreferences << /DisplayDocTitle true >>";
  if (!properties.bookmarks.empty()) {
    add_outline(properties, pages, places->size, objects);
    root += " /Outlines " + reference(places->size);
  }
  objects[places->catalogue] = root + " >>";
  return updated(std::move(pdf), objects, *places);
}

}  // namespace wrapgauge
