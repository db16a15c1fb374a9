#pragma once
// Places in a plan by the names of its JSON, "layout.skin_sheet.thickness", and what is to stand there.

#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

struct PathChange {
  std::string path;                 // as written
  std::vector<std::string> values;  // JSON texts, in the order given
};

// "PATH=V1,V2,...": numbers, true, false, lists and objects as in JSON; anything else is a text, in double
// quotes where it holds a comma. Problems: no path, no value, a value that is empty or stands twice.
Result<PathChange> path_change_of(const std::string& text);

// "layout.skin_sheet.thickness" is "skin_sheet.thickness", a JSON text "\"A10\"" is "A10": as tables and
// pictures name them.
std::string short_path(const std::string& path);
std::string value_words(const std::string& json_text);

struct SetPlace {
  std::string pointer;  // the place, whatever it was called by
  bool added = false;   // the plan did not have it
};

// Puts a value where `path` leads. An item of a list is called by its name, inlet or number (from 1); names
// may hold dots. What the plan lacks is added: whether it may be there is for the plan's reader. A key that
// stands in the place of others (stretch for closing_length, volume_ml for pressure_kpa, point_mm for
// station_mm; file for a layout that is written out) takes their place. Problems: an item that the list does
// not have, a place inside a number or text.
Result<SetPlace> set_in_plan(nlohmann::json& plan, const std::string& path, const std::string& value);

// The path of a number, text, true or false in the plan that is written most like `path`.
std::string nearest_path(const nlohmann::json& plan, const std::string& path);

}  // namespace wrapgauge
