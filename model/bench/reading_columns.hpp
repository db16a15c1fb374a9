#pragma once
// The columns of a readings file: each says its unit in its name, pressures and forces have two.

#include <string>
#include <vector>

#include "model/bench/reading.hpp"

namespace wrapgauge {

struct ReadingColumn {
  const char* name;
  ReadingField field;
  const char* unit;
  double si;         // of one of its unit
  bool may_be_zero;  // a place on the layout may also be negative
};
// In the order in which a sheet has them; of two for one field, the first is the one that texts use.
const std::vector<ReadingColumn>& reading_columns();
const ReadingColumn* column_named(const std::string& name);
// The names of a field, "gauge_kpa or gauge_mmhg".
std::string columns_of_field(ReadingField field);

// Words of a row beside its numbers.
inline constexpr std::array kReadingWords = {"id", "kind", "sheet",     "where",     "inlets", "hold",
                                             "on", "file", "confirmed", "predicted", "remark"};

}  // namespace wrapgauge
