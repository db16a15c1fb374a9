#include "model/io/readers/dxf_groups.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdint>

#include "model/io/readers/mesh_reader_text.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kMostDxfBytes = 16u << 20;
constexpr int kLargestCode = 1071;
constexpr double kLargestNumber = 1e9;

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
  return text;
}

bool is_whole_number(int code) {
  return (code >= 60 && code <= 79) || (code >= 90 && code <= 99) || (code >= 170 && code <= 179) ||
         (code >= 270 && code <= 289) || (code >= 370 && code <= 389) || (code >= 420 && code <= 429);
}
bool is_real(int code) {
  return (code >= 10 && code <= 59) || (code >= 110 && code <= 149) || (code >= 210 && code <= 239) ||
         (code >= 460 && code <= 469);
}

class DxfParser {
 public:
  DxfParser(std::string_view bytes, const std::string& name) : rest_(bytes), name_(name) {}

  Result<DxfFile> parse() {
    while (!problem_ && !ended_) {
      if (rest_.empty()) {
        fail(Phrase::worded("%1 ends at line %2 without EOF, so it is cut short; save it again.",
                            {name_of(name_), figures_of(line_ - 1)}));
        break;
      }
      if (const auto group = next()) take(*group);
    }
    if (problem_) return *problem_;
    finish_entity();
    return std::move(file_);
  }

 private:
  void fail(Phrase sentence) {
    if (!problem_) problem_ = bad_input(std::move(sentence));
  }

  std::optional<DxfGroup> next() {
    const int line = line_;
    const std::string_view word = trimmed(take_line(rest_));
    const auto code = parse_integer(word);
    if (!code || *code < 0 || *code > kLargestCode) {
      fail(Phrase::worded(
          "%1 has %2 at line %3, where a group code from 0 to 1071 belongs; save it as ASCII DXF again.",
          {name_of(name_), name_of(in_quotes(word)), figures_of(line)}));
      return std::nullopt;
    }
    const std::string_view value = take_line(rest_);
    line_ += 2;
    return DxfGroup{static_cast<int>(*code), trimmed(value), line};
  }

  void take(const DxfGroup& group) {
    if (group.code == 0) return begin(group);
    if (section_.empty() && group.code == 2 && opening_) {
      section_ = group.value;
      opening_ = false;
    } else if (section_ == "HEADER") {
      file_.header.push_back(group);
    } else if (open_) {
      entity_.groups.push_back(group);
    } else if (section_.empty() && group.code != 999) {  // 999: a comment
      fail(Phrase::worded("%1 has something outside its sections at line %2; save it as ASCII DXF again.",
                          {name_of(name_), figures_of(group.line)}));
    }
  }

  void begin(const DxfGroup& group) {
    finish_entity();
    if (group.value == "SECTION") {
      section_ = {};
      opening_ = true;
    } else if (group.value == "ENDSEC") {
      section_ = {};
    } else if (group.value == "EOF") {
      ended_ = true;
    } else {
      file_.clips += section_ == "OBJECTS" && group.value == "SPATIAL_FILTER";
      open_ =
          section_ == "ENTITIES" || section_ == "BLOCKS" || (section_ == "TABLES" && group.value == "LAYER");
      entity_ = {group.value, group.line, {}};
    }
  }

  void finish_entity() {
    if (open_ && section_ == "BLOCKS")
      finish_in_block();
    else if (open_)
      (section_ == "TABLES" ? file_.layers : file_.entities).push_back(std::move(entity_));
    open_ = false;
  }

  void finish_in_block() {
    if (entity_.type == "BLOCK") {
      const std::string key = dxf_block_key(entity_.text(2));
      const auto [place, is_new] = file_.blocks.emplace(key, DxfBlock{std::move(entity_), {}});
      block_ = is_new ? &place->second : nullptr;
    } else if (entity_.type == "ENDBLK") {
      block_ = nullptr;
    } else if (block_) {
      block_->entities.push_back(std::move(entity_));
    }
  }

  std::string_view rest_;
  const std::string& name_;
  int line_ = 1;
  std::string_view section_;
  bool opening_ = false, open_ = false, ended_ = false;
  DxfEntity entity_;
  DxfFile file_;
  DxfBlock* block_ = nullptr;  // being read
  std::optional<Problem> problem_;
};

}  // namespace

const DxfGroup* DxfEntity::first(int code) const {
  const auto found =
      std::find_if(groups.begin(), groups.end(), [code](const DxfGroup& g) { return g.code == code; });
  return found == groups.end() ? nullptr : &*found;
}

std::size_t DxfEntity::count(int code) const {
  return static_cast<std::size_t>(
      std::count_if(groups.begin(), groups.end(), [code](const DxfGroup& g) { return g.code == code; }));
}

int DxfEntity::whole_number(int code, int fallback) const {
  const DxfGroup* group = first(code);
  const auto value = group ? parse_integer(group->value) : std::nullopt;
  return value && std::abs(*value) < 1'000'000'000 ? static_cast<int>(*value) : fallback;
}

double DxfEntity::real(int code, double fallback) const {
  const DxfGroup* group = first(code);
  return group ? parse_number(group->value).value_or(fallback) : fallback;
}

std::string DxfEntity::text(int code) const {
  const DxfGroup* group = first(code);
  return group ? std::string(group->value) : "";
}

namespace {

// Takes "\\U+00FC" off the front; none when it is not such a code.
std::optional<std::uint32_t> take_coded_letter(std::string_view& text) {
  constexpr std::string_view kStart = "\\U+";
  std::uint32_t code = 0;
  if (!text.starts_with(kStart) || text.size() < 7) return std::nullopt;
  const auto [end, error] = std::from_chars(text.data() + 3, text.data() + 7, code, 16);
  if (error != std::errc{} || end != text.data() + 7) return std::nullopt;
  text.remove_prefix(7);
  return code;
}

void add_utf8(std::string& out, std::uint32_t code) {
  if (code < 0x80) {
    out += static_cast<char>(code);
  } else if (code < 0x800) {
    out += static_cast<char>(0xC0 | (code >> 6));
    out += static_cast<char>(0x80 | (code & 0x3F));
  } else if (code < 0x10000) {
    out += static_cast<char>(0xE0 | (code >> 12));
    out += static_cast<char>(0x80 | ((code >> 6) & 0x3F));
    out += static_cast<char>(0x80 | (code & 0x3F));
  } else {
    out += static_cast<char>(0xF0 | (code >> 18));
    out += static_cast<char>(0x80 | ((code >> 12) & 0x3F));
    out += static_cast<char>(0x80 | ((code >> 6) & 0x3F));
    out += static_cast<char>(0x80 | (code & 0x3F));
  }
}

// Letters beyond 0xFFFF are two codes, as in UTF-16.
void add_letter(std::string& out, std::uint32_t code, std::string_view& text) {
  std::string_view rest = text;
  if (code >= 0xD800 && code < 0xDC00)
    if (const auto low = take_coded_letter(rest); low && *low >= 0xDC00 && *low < 0xE000) {
      text = rest;
      code = 0x10000 + ((code - 0xD800) << 10) + (*low - 0xDC00);
    }
  add_utf8(out, code >= 0xD800 && code < 0xE000 ? 0xFFFD : code);
}

}  // namespace

std::string dxf_text(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    if (const auto code = take_coded_letter(text)) {
      add_letter(out, *code, text);
    } else {
      out += text[0];
      text.remove_prefix(1);
    }
  }
  return out;
}

std::string dxf_plain_text(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    if (const auto code = take_coded_letter(text)) {
      add_letter(out, *code, text);
    } else if (text.size() > 1 && text[0] == '\\') {
      const char c = text[1];
      text.remove_prefix(2);
      if (c == '\\' || c == '{' || c == '}') out += c;
      if (c == 'P' || c == '~') out += ' ';
      // Codes with a value run to a semicolon: \fArial|b0; \H2.5; \C1;
      if (std::string_view("ACFHQTWfp").find(c) != std::string_view::npos)
        text.remove_prefix(std::min(text.size(), text.find(';') == text.npos ? 0 : text.find(';') + 1));
    } else {
      if (text[0] != '{' && text[0] != '}') out += text[0];
      text.remove_prefix(1);
    }
  }
  return out;
}

std::string dxf_block_key(std::string_view name) {
  std::string key(name);
  for (char& c : key)
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  return key;
}

Result<DxfFile> dxf_groups(std::string_view bytes, const std::string& name) {
  if (bytes.size() > kMostDxfBytes)
    return bad_input(
        Phrase::worded("%1 is larger than 16 MiB; save only the layout, without pictures.", {name_of(name)}));
  if (bytes.find('\0') != bytes.npos)
    return bad_input(Phrase::worded("%1 holds zero bytes, so it is not an ASCII DXF; save it as ASCII DXF.",
                                    {name_of(name)}));
  return DxfParser(bytes, name).parse();
}

std::optional<std::string> dxf_number_fault(const DxfEntity& entity) {
  for (const DxfGroup& group : entity.groups) {
    bool fine = true;
    if (is_whole_number(group.code)) {
      const auto value = parse_integer(group.value);
      fine = value && std::abs(*value) <= static_cast<long long>(kLargestNumber);
    } else if (is_real(group.code)) {
      const auto value = parse_number(group.value);
      fine = value && std::abs(*value) <= kLargestNumber;  // false for nan
    }
    if (!fine)
      return "has " + in_quotes(group.value) + " at line " + std::to_string(group.line + 1) +
             " where a number belongs";
  }
  return std::nullopt;
}

}  // namespace wrapgauge
