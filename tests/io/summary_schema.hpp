#pragma once
// Whether a summary fits resources/summary.schema.json, keys both ways.

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <string>

namespace wrapgauge::test {

inline nlohmann::json summary_schema() {
  std::ifstream in(WRAPGAUGE_SOURCE_DIR "/resources/summary.schema.json");
  return nlohmann::json::parse(in);
}

inline bool is_of_type(const nlohmann::json& value, const std::string& type) {
  if (type == "null") return value.is_null();
  if (type == "object") return value.is_object();
  if (type == "array") return value.is_array();
  if (type == "string") return value.is_string();
  if (type == "boolean") return value.is_boolean();
  return type == "integer" ? value.is_number_integer() : value.is_number();
}

inline void expect_type(const nlohmann::json& schema, const nlohmann::json& value, const std::string& where) {
  if (schema.contains("const")) {
    EXPECT_EQ(schema["const"], value) << where;
  }
  if (schema.contains("enum")) {
    EXPECT_NE(std::find(schema["enum"].begin(), schema["enum"].end(), value), schema["enum"].end())
        << where << " is " << value;
  }
  if (!schema.contains("type")) return;
  const nlohmann::json types =
      schema["type"].is_array() ? schema["type"] : nlohmann::json::array({schema["type"]});
  EXPECT_TRUE(
      std::any_of(types.begin(), types.end(),
                  [&](const auto& type) { return is_of_type(value, type.template get<std::string>()); }))
      << where << " is " << value;
}

// What keyword of the schema this does not look at stops the test, so that none is thought to be checked.
inline void expect_known_keywords(const nlohmann::json& schema, const std::string& where) {
  static const std::set<std::string> known{"type",
                                           "description",
                                           "properties",
                                           "required",
                                           "const",
                                           "enum",
                                           "items",
                                           "minItems",
                                           "maxItems",
                                           "$schema",
                                           "$id",
                                           "title",
                                           "additionalProperties"};
  for (const auto& keyword : schema.items())
    EXPECT_TRUE(known.contains(keyword.key())) << where << ": " << keyword.key();
}

inline void expect_fits(const nlohmann::json& schema, const nlohmann::json& value, const std::string& where) {
  expect_known_keywords(schema, where);
  EXPECT_TRUE(schema.contains("description") || where.empty()) << where << " is not described";
  expect_type(schema, value, where);
  if (value.is_array()) {
    if (schema.contains("minItems")) {
      EXPECT_GE(value.size(), schema["minItems"].get<std::size_t>()) << where;
    }
    if (schema.contains("maxItems")) {
      EXPECT_LE(value.size(), schema["maxItems"].get<std::size_t>()) << where;
    }
    for (const auto& item : value) {
      const nlohmann::json& items = schema.at("items");
      items.contains("properties") ? expect_fits(items, item, where + " item")
                                   : expect_type(items, item, where);
    }
  }
  if (!value.is_object()) return;
  for (const auto& item : value.items()) {
    ASSERT_TRUE(schema.at("properties").contains(item.key()))
        << where << "/" << item.key() << " is not in the schema";
    expect_fits(schema["properties"][item.key()], item.value(), where + "/" + item.key());
  }
  for (const auto& key : schema.at("required"))
    EXPECT_TRUE(value.contains(key.get<std::string>())) << where << "/" << key << " is missing";
}

// Keys of the schema that no value of `value` has anywhere: a schema may not describe what is never written.
inline void gather_unwritten(const nlohmann::json& schema, const nlohmann::json& value,
                             const std::string& where, std::vector<std::string>& unwritten) {
  if (value.is_array() && schema.contains("items") && !value.empty())
    return gather_unwritten(schema["items"], value.front(), where + " item", unwritten);
  if (!schema.contains("properties")) return;
  for (const auto& property : schema["properties"].items()) {
    const std::string here = where + "/" + property.key();
    if (!value.is_object() || !value.contains(property.key()))
      unwritten.push_back(here);
    else
      gather_unwritten(property.value(), value[property.key()], here, unwritten);
  }
}

}  // namespace wrapgauge::test
