#include "model/core/json_object.hpp"

#include <gtest/gtest.h>

#include <string>

#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

std::string parse_message(std::string_view bytes) {
  const auto parsed = parse_json(bytes, "a.json");
  return parsed ? "" : parsed.problem().message;
}

TEST(ParseJson, SaysTheLineAndColumnOfASyntaxError) {
  EXPECT_NE(parse_message("{\n  \"a\": 1,,\n}").find("line 2, column 10"), std::string::npos)
      << parse_message("{\n  \"a\": 1,,\n}");
}

TEST(ParseJson, RefusesEmptyTruncatedBinaryHugeAndDeepInput) {
  EXPECT_NE(parse_message("").find("is empty"), std::string::npos);
  EXPECT_NE(parse_message("{\"a\": [1, 2").find("not valid JSON"), std::string::npos);
  EXPECT_NE(parse_message(std::string("\x89PNG\r\n\x1a\n\0\0", 10)).find("not valid JSON"),
            std::string::npos);
  EXPECT_NE(parse_message("{\"a\": \"\xff\xfe\"}").find("not valid JSON"), std::string::npos);
  EXPECT_NE(parse_message("{\"a\": 1e999}").find("too large"), std::string::npos);
  EXPECT_FALSE(parse_message(std::string(200000, '[')).empty());
  EXPECT_NE(parse_message(std::string(100, '[') + std::string(100, ']')).find("nested deeper"),
            std::string::npos);
}

TEST(ParseJson, RefusesAKeyThatStandsTwiceInOneObjectButNotInTwo) {
  EXPECT_NE(parse_message("{\"a\": 1, \"a\": 2}").find("\"a\" stands twice"), std::string::npos);
  EXPECT_EQ(parse_message("{\"a\": {\"a\": 1}, \"b\": {\"a\": 2}}"), "");
}

TEST(JsonObject, NamesThePlaceTheNumberAndTheRange) {
  const auto json = nlohmann::json::parse(R"({"edge_mm": 90})");
  JsonObject object(json, "a.json, mesh");
  object.number("edge_mm", {0.5, 20.0, "mm"});
  const auto problem = object.finish();
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem->message, "a.json, mesh: edge_mm is 90 mm; it must lie between 0.5 and 20 mm.");
}

TEST(JsonObject, RefusesUnknownKeysByNameAndListsTheKnownOnes) {
  const auto json = nlohmann::json::parse(R"({"egde_mm": 4})");
  JsonObject object(json, "a.json, mesh");
  EXPECT_EQ(object.number_or("edge_mm", 4.0, {0.5, 20.0, "mm"}), 4.0);
  const auto problem = object.finish();
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem->message, "a.json, mesh: the key \"egde_mm\" is not known; known here: edge_mm.");
}

TEST(JsonObject, SaysWhichKeyIsMissingOrOfTheWrongKind) {
  const auto json = nlohmann::json::parse(R"({"a": "x", "b": 1, "c": [1, 2], "d": 2.5})");
  const auto message = [&](auto ask) {
    JsonObject object(json, "f");
    ask(object);
    return object.finish().value_or(Problem{}).message;
  };
  EXPECT_EQ(message([](JsonObject& o) { o.number("z", {0, 1, ""}); }), "f: \"z\" is missing.");
  EXPECT_EQ(message([](JsonObject& o) { o.number("a", {0, 1, ""}); }), "f: a must be a number and is text.");
  EXPECT_EQ(message([](JsonObject& o) { o.text("b"); }), "f: b must be text in quotes, not empty.");
  EXPECT_EQ(message([](JsonObject& o) {
              o.numbers("c", 3, {0, 9, ""});
            }),
            "f: c must be a list of 3 numbers.");
  EXPECT_EQ(message([](JsonObject& o) { o.flag_or("b", true); }), "f: b must be true or false.");
  EXPECT_EQ(message([](JsonObject& o) { o.whole_number_or("d", 1, 0, 9); }),
            "f: d is 2.5; give a whole number.");
  EXPECT_EQ(message([](JsonObject& o) { o.list("b"); }), "f: b must be a list [ ... ].");
}

TEST(JsonObject, RefusesAWordOutsideTheChoice) {
  const auto json = nlohmann::json::parse(R"({"status": "proven"})");
  JsonObject object(json, "f");
  object.status("status");
  EXPECT_EQ(object.finish()->message,
            "f: status is \"proven\"; it must be one of: confirmed, from memory, judgement, derived, common "
            "practice.");
}

TEST(JsonObject, KeepsTheFirstOfSeveralProblems) {
  const auto json = nlohmann::json::parse(R"({"a": 5, "b": 7})");
  JsonObject object(json, "f");
  object.number("a", {0, 1, ""});
  object.number("b", {0, 1, ""});
  EXPECT_EQ(object.finish()->message, "f: a is 5; it must lie between 0 and 1.");
}

TEST(JsonObject, AnObjectIsCalledOneInGoodEnglish) {
  const auto json = nlohmann::json::parse(R"({"a": {}})");
  JsonObject object(json, "f");
  object.number("a", {0, 1, ""});
  EXPECT_EQ(object.finish()->message, "f: a must be a number and is an object.");
}

TEST(JsonObject, OfSomethingElseThanAnObjectIsAProblem) {
  const auto json = nlohmann::json::parse("[1]");
  JsonObject object(json, "f");
  EXPECT_EQ(object.text("name"), "");
  EXPECT_EQ(object.finish()->message, "f: must be a JSON object { ... } and is a list.");
}

TEST(JsonObject, RefusesAFileOfAnotherKindOrFormat) {
  const auto json = nlohmann::json::parse(R"({"wrapgauge-plan": 2})");
  JsonObject other_kind(json, "f"), other_format(json, "f");
  other_kind.format_one("wrapgauge-tissues");
  other_format.format_one("wrapgauge-plan");
  EXPECT_EQ(other_kind.finish()->message,
            "f: \"wrapgauge-tissues\": 1 is missing, so this is not the kind of file asked for.");
  EXPECT_EQ(other_format.finish()->message,
            "f: wrapgauge-plan must be 1, the only format number this program reads.");
}

TEST(NumberText, NeverWritesMinusZeroAndKeepsThePoint) {
  EXPECT_EQ(fixed_text(-0.04, 1), "0.0");
  EXPECT_EQ(fixed_text(-0.06, 1), "-0.1");
  EXPECT_EQ(fixed_text(4.25, 1), "4.2");
  EXPECT_EQ(number_text(0.25), "0.25");
  EXPECT_EQ(number_text(1e-9), "1e-09");
  EXPECT_EQ(fixed_text(1e300, 0).size(), 301u);
}

}  // namespace
}  // namespace wrapgauge
