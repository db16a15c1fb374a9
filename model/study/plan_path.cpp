#include "model/study/plan_path.hpp"

#include <algorithm>
#include <charconv>
#include <nlohmann/json.hpp>
#include <numeric>

namespace wrapgauge {
namespace {

using AnyJson = nlohmann::json;

std::string stripped(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t");
  if (first == std::string_view::npos) return {};
  return std::string(text.substr(first, text.find_last_not_of(" \t") - first + 1));
}

// At commas that stand in no quotes, brackets or braces.
std::vector<std::string> split_values(std::string_view text) {
  std::vector<std::string> values(1);
  int depth = 0;
  bool quoted = false;
  for (const char c : text) {
    if (c == '"') quoted = !quoted;
    if (!quoted && (c == '[' || c == '{')) ++depth;
    if (!quoted && (c == ']' || c == '}')) --depth;
    if (c == ',' && !quoted && depth == 0)
      values.emplace_back();
    else
      values.back() += c;
  }
  for (std::string& value : values) value = stripped(value);
  return values;
}

// A number, true, false, a list, an object or a text in quotes as it stands; "null" and the rest are texts.
std::string as_json(const std::string& value) {
  const AnyJson parsed = AnyJson::parse(value, nullptr, false);
  return (parsed.is_discarded() || parsed.is_null() ? AnyJson(value) : parsed).dump();
}

bool leads(std::string_view path, std::string_view name) {
  return !name.empty() && path.starts_with(name) && (path.size() == name.size() || path[name.size()] == '.');
}

std::string name_of_item(const AnyJson& item) {
  if (!item.is_object()) return {};
  for (const char* key : {"name", "inlet", "part"})
    if (const auto found = item.find(key); found != item.end() && found->is_string()) return *found;
  return {};
}

struct Step {
  std::string pointer;  // "/friction"
  std::size_t used = 0;
};

std::string pointer_part(const std::string& key) {
  return (AnyJson::json_pointer() / key).to_string();
}

// The longest name wins, so that names may hold dots.
std::optional<Step> step_into_list(const AnyJson& list, std::string_view path) {
  std::optional<Step> best;
  for (std::size_t i = 0; i < list.size(); ++i) {
    const std::string name = name_of_item(list[i]);
    if (leads(path, name) && (!best || name.size() > best->used))
      best = Step{"/" + std::to_string(i), name.size()};
  }
  if (best) return best;
  std::size_t number = 0;
  const auto read = std::from_chars(path.data(), path.data() + path.size(), number);
  const auto used = static_cast<std::size_t>(read.ptr - path.data());
  const bool whole = read.ec == std::errc() && (used == path.size() || path[used] == '.');
  if (!whole || number < 1 || number > list.size()) return std::nullopt;
  return Step{"/" + std::to_string(number - 1), used};
}

std::string names_in(const AnyJson& list) {
  std::string names;
  for (std::size_t i = 0; i < list.size(); ++i) {
    const std::string name = name_of_item(list[i]);
    names += (i ? ", " : "") + (name.empty() ? std::to_string(i + 1) : "'" + name + "'");
  }
  return names.empty() ? "none" : names;
}

// Keys of which a plan holds one alone; the first list that holds `key` names the others.
const std::vector<std::vector<std::string>>& alternatives() {
  static const std::vector<std::vector<std::string>> lists = {
      {"pressure_kpa", "pressure_mmhg", "volume_ml", "pushed_air_ml"},
      {"stretch", "closing_length"},
      {"station_mm", "point_mm"}};
  return lists;
}

// What only makes sense beside the key that goes.
const char* companion_of(const std::string& key) {
  if (key == "pushed_air_ml") return "dead_ml";
  if (key == "station_mm") return "angle_deg";
  return "";
}

void drop_alternatives(AnyJson& object, const std::string& key) {
  for (const auto& list : alternatives()) {
    if (std::find(list.begin(), list.end(), key) == list.end()) continue;
    for (const std::string& other : list) {
      if (other == key || !object.contains(other)) continue;
      object.erase(other);
      object.erase(companion_of(other));
    }
  }
}

// Adds the key where the object lacks it.
Step step_into_object(AnyJson& object, std::string_view path, bool& added) {
  std::string best;
  for (const auto& item : object.items())
    if (leads(path, item.key()) && item.key().size() > best.size()) best = item.key();
  if (best.empty()) {
    best = std::string(path.substr(0, path.find('.')));
    drop_alternatives(object, best);
    object[best] = AnyJson();
    added = true;
  }
  return {pointer_part(best), best.size()};
}

void leaves(const AnyJson& value, const std::string& before, std::vector<std::string>& out) {
  const auto under = [&](const std::string& name) { return before.empty() ? name : before + "." + name; };
  if (value.is_object()) {
    for (const auto& item : value.items()) leaves(item.value(), under(item.key()), out);
  } else if (value.is_array() && !value.empty() && value[0].is_object()) {
    for (std::size_t i = 0; i < value.size(); ++i) {
      const std::string name = name_of_item(value[i]);
      leaves(value[i], under(name.empty() ? std::to_string(i + 1) : name), out);
    }
  } else {
    out.push_back(before);
  }
}

// Letters to put in, take out or change.
std::size_t edit_distance(const std::string& a, const std::string& b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t corner = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t changed = corner + (a[i - 1] == b[j - 1] ? 0 : 1);
      corner = row[j];
      row[j] = std::min({row[j] + 1, row[j - 1] + 1, changed});
    }
  }
  return row.back();
}

Problem no_such_item(const std::string& path, std::string_view rest, const AnyJson& list) {
  return bad_input("--set " + path + ": the list has no '" + std::string(rest.substr(0, rest.find('.'))) +
                   "'; it has " + names_in(list) + ".");
}

}  // namespace

Result<PathChange> path_change_of(const std::string& text) {
  const std::size_t equals = text.find('=');
  PathChange change{stripped(std::string_view(text).substr(0, equals)), {}};
  if (equals == std::string::npos || change.path.empty())
    return bad_input("--set is '" + text +
                     "': write a path of the plan and its values, e.g. layout.skin_sheet.thickness=1,1.5,2.");
  for (const std::string& value : split_values(std::string_view(text).substr(equals + 1))) {
    if (value.empty())
      return bad_input("--set " + change.path +
                       " has an empty value: give each a number or word, divided by commas.");
    const std::string written = as_json(value);
    if (std::find(change.values.begin(), change.values.end(), written) != change.values.end())
      return bad_input("--set " + change.path + " has the value " + value + " twice: keep one.");
    change.values.push_back(written);
  }
  return change;
}

std::string short_path(const std::string& path) {
  const std::size_t last = path.rfind('.');
  if (last == std::string::npos || last == 0) return path;
  const std::size_t before = path.rfind('.', last - 1);
  return before == std::string::npos ? path : path.substr(before + 1);
}

std::string value_words(const std::string& json_text) {
  const AnyJson value = AnyJson::parse(json_text, nullptr, false);
  return value.is_string() ? value.get<std::string>() : json_text;
}

Result<SetPlace> set_in_plan(AnyJson& plan, const std::string& path, const std::string& value) {
  SetPlace place;
  if (path == "layout.file" || path == "layout.drawing") plan["layout"] = AnyJson::object();
  AnyJson* at = &plan;
  std::string_view rest = path;
  while (!rest.empty()) {
    std::optional<Step> step;
    if (at->is_array()) {
      step = step_into_list(*at, rest);
      if (!step) return no_such_item(path, rest, *at);
    } else if (at->is_object() || at->is_null()) {
      if (at->is_null()) *at = AnyJson::object();
      step = step_into_object(*at, rest, place.added);
    } else {
      return bad_input("--set " + path + ": '" + std::string(rest) + "' lies inside a value, " + at->dump() +
                       "; end the path before it.");
    }
    at = &(*at)[AnyJson::json_pointer(step->pointer)];
    place.pointer += step->pointer;
    rest.remove_prefix(std::min(rest.size(), step->used + 1));
  }
  *at = AnyJson::parse(value);
  return place;
}

std::string nearest_path(const AnyJson& plan, const std::string& path) {
  std::vector<std::string> all;
  leaves(plan, "", all);
  std::string nearest;
  std::size_t least = std::string::npos;
  for (const std::string& candidate : all)
    if (const std::size_t distance = edit_distance(path, candidate); distance < least)
      least = distance, nearest = candidate;
  return nearest;
}

}  // namespace wrapgauge
