#pragma once
// A DXF file as checked group codes and values (the pairs of lines it consists of), parted into entities.
//
// This is the guard before dxflib, which takes counts and numbers of a file on trust: what is handed to it
// has been checked here and is written anew.

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

struct DxfGroup {
  int code;
  std::string_view value;  // into the bytes of the file
  int line;                // of the code, from 1
};

// The groups from one code 0 to the next, without it.
struct DxfEntity {
  std::string_view type;  // "LINE"
  int line;
  std::vector<DxfGroup> groups;

  const DxfGroup* first(int code) const;
  std::size_t count(int code) const;
  int whole_number(int code, int fallback) const;
  double real(int code, double fallback) const;
  std::string text(int code) const;
};

// Entities drawn once and put in by INSERT.
struct DxfBlock {
  DxfEntity head;  // with its base point
  std::vector<DxfEntity> entities;
};

struct DxfFile {
  std::vector<DxfGroup> header;  // variables: a 9 with the name, then its values
  std::vector<DxfEntity> layers;
  std::vector<DxfEntity> entities;         // of the section ENTITIES
  std::map<std::string, DxfBlock> blocks;  // by dxf_block_key of their names; of two alike the first
  int clips = 0;                           // objects that clip a block
};

// Text of a file as UTF-8: "\\U+00FC" is the letter it stands for.
std::string dxf_text(std::string_view text);
// The same of an MTEXT, whose codes for fonts, lines and the like go.
std::string dxf_plain_text(std::string_view text);

std::string dxf_block_key(std::string_view name);  // names are alike in small and capital letters

// Problems: more than 16 MiB, binary, a group code that is no whole number from 0 to 1071, a section outside
// others, no end of file.
Result<DxfFile> dxf_groups(std::string_view bytes, const std::string& name);

// The first number of the entity that is not one, as half a sentence; none when all are finite. Which codes
// are numbers: DXF reference, group code value types (from memory).
std::optional<std::string> dxf_number_fault(const DxfEntity& entity);

}  // namespace wrapgauge
