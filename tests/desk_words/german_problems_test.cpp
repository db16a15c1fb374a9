// What is refused is said in German too, whole sentences with all that they quote.
#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <fstream>
#include <regex>
#include <sstream>

#include "app/desk/words/phrase_text.hpp"
#include "bodyforms/form.hpp"
#include "model/io/readers/stl_reader.hpp"
#include "model/layout/forms/layout_form.hpp"
#include "model/layout/layout_check.hpp"
#include "model/layout/layout_json.hpp"
#include "model/material/silicone.hpp"
#include "model/wrap/anchor.hpp"
#include "model/wrap/station_angle.hpp"
#include "tests/bodyforms/made.hpp"
#include "tests/desk_words/in_german.hpp"

namespace wrapgauge {
namespace {

class GermanProblems : public test::InGerman {
 protected:
  static std::string said_of(const Problem& problem) { return text(problem).toStdString(); }
};

// A count of facets, and so many of them; each has 50 bytes.
std::string stl_of(unsigned char said, std::size_t there) {
  std::string bytes(84 + 50 * there, '\0');
  bytes[80] = static_cast<char>(said);
  return bytes;
}

Layout some_cuff() {
  auto made = make_layout("cuff", {});
  EXPECT_TRUE(made.ok());
  return std::move(made).value();
}

BodySurface some_limb() {
  const std::string name = forms().front().name;
  auto body = make_form(name, forms_in_tests::tape_values(name));
  EXPECT_TRUE(body.ok());
  return BodySurface(*body);
}

TEST_F(GermanProblems, TellOfALayoutWhoseEndsDoNotMeet) {
  Layout layout = some_cuff();
  layout.closure->stretch.reset();
  layout.closure->closing_length = 1000.0 * mm;
  const auto problems = check_layout(layout);
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_TRUE(std::regex_match(
      said_of(problems.front()),
      std::regex("Das Layout ist [0-9]+,[0-9] mm zu kurz, um bei x = 1000,0 mm zu schließen; es oder seinen "
                 "Gurt verlängern oder die Schließlänge kürzen\\.")))
      << said_of(problems.front());
}

TEST_F(GermanProblems, NameThePartsOfALayoutAndTheirPlaces) {
  Layout layout = some_cuff();
  layout.inlets.push_back({"Rand", {0.0005, 0.0005}});
  const auto problems = check_layout(layout);
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(
      said_of(problems.front()),
      "Einlass „Rand“ bei (0,5; 0,5) mm speist nichts: in eine Kammer oder einen Kanal verschieben oder bis "
      "auf 1 mm an einen heran.");
}

TEST_F(GermanProblems, TellOfAMeshThatIsCutShort) {
  const auto mesh = read_stl(stl_of(10, 3), "arm.stl");
  ASSERT_FALSE(mesh.ok());
  EXPECT_EQ(said_of(mesh.problem()),
            "arm.stl ist abgeschnitten: 3 seiner 10 Facetten sind da; neu kopieren oder exportieren.");
}

TEST_F(GermanProblems, TellOfAnAnchorOutsideTheBody) {
  const BodySurface limb = some_limb();
  const auto beyond = skin_point_at(limb, {9.0 * metre, 0.0});
  ASSERT_FALSE(beyond.ok());
  EXPECT_TRUE(
      said_of(beyond.problem())
          .starts_with("Die Ankerstation ist 9000,0 mm, aber der Körper reicht längs seiner Achse von 0 "
                       "bis "))
      << said_of(beyond.problem());
  const auto far = find_anchor(limb, {AnchorAtPoint{Vec3(5.0, 0.0, 0.0)}, std::nullopt, 0.0});
  ASSERT_FALSE(far.ok());
  EXPECT_TRUE(said_of(far.problem()).starts_with("Der Ankerpunkt liegt ")) << said_of(far.problem());
}

TEST_F(GermanProblems, SayWhatIsWrongInAFieldOfAFileAndWhereItStands) {
  const auto layout = layout_from_text(R"({"wrapgauge-layout": 1, "name": 3})", "plan.json, layout");
  ASSERT_FALSE(layout.ok());
  EXPECT_EQ(said_of(layout.problem()),
            "plan.json, layout: name muss ein Text in Anführungszeichen sein, nicht leer.");
}

TEST_F(GermanProblems, LoseNothingOfTheProblemThatTheyQuote) {
  const QTemporaryDir folder;
  const std::string file = folder.filePath(QStringLiteral("silicones.json")).toStdString();
  std::ofstream(file)
      << R"({"wrapgauge-silicones": 1, "grades": [{"hardness": "A1", "law": {"ogden": []}}]})";
  const auto grades = read_silicone_grades(file);
  ASSERT_FALSE(grades.ok());
  EXPECT_EQ(said_of(grades.problem()),
            "silicones.json, grade 1, law: Das Ogden-Gesetz hat keine Terme; mindestens einen angeben (mu, "
            "alpha).");
}

TEST_F(GermanProblems, AreTheSameSentenceInEnglish) {
  const auto mesh = read_stl(stl_of(10, 3), "arm.stl");
  ASSERT_FALSE(mesh.ok());
  ASSERT_TRUE(mesh.problem().phrase);
  EXPECT_EQ(mesh.problem().message, english(*mesh.problem().phrase));
  EXPECT_EQ(mesh.problem().message,
            "arm.stl is cut short: 3 of its 10 facets are there; copy or export it again.");
}

// What the window may show is a phrase: a sentence put together from pieces could not be said in German. Left
// out is what the terminal alone says: its options, and the studies of many runs.
TEST(ProblemsInTheSources, ThatTheWindowMayShowAreNotPutTogetherFromPieces) {
  const std::regex pieces("(bad_input\\(|ProblemKind::k[A-Za-z]+,)\\s*(\"|std::string\\(|[a-z_.]+ \\+)");
  const std::filesystem::path source(WRAPGAUGE_SOURCE_DIR);
  int files = 0;
  for (const char* folder :
       {"model/core", "model/geometry", "model/material", "model/body", "model/layout", "model/wrap",
        "model/inflation", "model/limits", "model/plan", "model/pipeline", "model/casting", "model/note",
        "model/io", "bodyforms", "app/desk", "app/picture"})
    for (const auto& entry : std::filesystem::recursive_directory_iterator(source / folder)) {
      if (entry.path().extension() != ".cpp" && entry.path().extension() != ".hpp") continue;
      std::ifstream in(entry.path());
      std::ostringstream all;
      all << in.rdbuf();
      const std::string words = all.str();
      std::smatch found;
      EXPECT_FALSE(std::regex_search(words, found, pieces)) << entry.path().filename() << ": " << found.str();
      ++files;
    }
  EXPECT_GT(files, 500);
}

}  // namespace
}  // namespace wrapgauge
