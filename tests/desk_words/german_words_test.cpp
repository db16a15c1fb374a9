// Whatever the model says has German words: a new sentence without them fails here.
#include <gtest/gtest.h>

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <set>

#include "app/desk/words/phrase_text.hpp"
#include "bodyforms/form.hpp"
#include "model/limits/comparison.hpp"
#include "model/limits/limit_set.hpp"
#include "tests/bodyforms/made.hpp"
#include "tests/desk_words/in_german.hpp"

namespace wrapgauge {
namespace {

using test::Message;

std::vector<Message> phrases() {
  std::vector<Message> found;
  for (const Message& message : test::messages_of(test::german_file()))
    if (message.context == QStringLiteral("wrapgauge::Phrase")) found.push_back(message);
  return found;
}

std::multiset<QString> places_in(const QString& pattern) {
  std::multiset<QString> places;
  auto found = QRegularExpression(QStringLiteral("%[1-9]")).globalMatch(pattern);
  while (found.hasNext()) places.insert(found.next().captured());
  return places;
}

// The list is gathered anew from the sources and must bring nothing that it does not have already.
TEST(GermanWords, NoPatternInTheSourcesIsWithoutThem) {
  QTemporaryDir folder;
  const QString gathered = folder.filePath(QStringLiteral("gathered.ts"));
  ASSERT_TRUE(QFile::copy(test::german_file(), gathered));
  QProcess lupdate;
  lupdate.setWorkingDirectory(QStringLiteral(WRAPGAUGE_SOURCE_DIR));
  lupdate.start(QStringLiteral(WRAPGAUGE_LUPDATE),
                {"-I", ".", "app", "bodyforms", "model", "-tr-function-alias", "tr+=worded", "-silent",
                 "-disable-heuristic", "sametext", "-disable-heuristic", "similartext", "-ts", gathered});
  ASSERT_TRUE(lupdate.waitForFinished(120000));
  ASSERT_EQ(lupdate.exitCode(), 0) << lupdate.readAllStandardError().toStdString();
  const auto messages = test::messages_of(gathered);
  EXPECT_GT(messages.size(), 1000u);
  for (const Message& message : messages)
    EXPECT_TRUE(message.finished && !message.translation.isEmpty())
        << message.context.toStdString() << ": " << message.source.toStdString()
        << (message.translation.isEmpty() ? " has no German" : " is said nowhere any more");
}

TEST(GermanWords, HoldTheSameValuesAsTheEnglish) {
  const auto all = phrases();
  EXPECT_GT(all.size(), 200u);
  for (const Message& phrase : all)
    EXPECT_EQ(places_in(phrase.source), places_in(phrase.translation)) << phrase.source.toStdString();
}

class InGerman : public test::InGerman {
 protected:
  void expect_german(const std::string& words) const {
    EXPECT_FALSE(german_.translate("wrapgauge::Phrase", words.c_str(), nullptr, -1).isEmpty()) << words;
  }
};

TEST_F(InGerman, PatternsValuesAndFiguresAreSaid) {
  const Phrase row =
      Phrase::worded("%1 %2, %3 (%4, %5)",
                     {figures_of(4.0 * kPa), site_words(SiteClass::kSoft), use_words(UsePattern::kSustained),
                      table_words("judgement"), table_words("a page of our own, 2.5 years old")});
  EXPECT_EQ(text(row).toStdString(),
            "4,0 kPa (30 mmHg) für ein Kissen auf einer weichen Stelle, eine Sitzung lang gehalten "
            "(Einschätzung, a "
            "page of our own, 2.5 years old)");
}

// A finding quotes where its limit comes from.
TEST_F(InGerman, SoAreTheSourcesOfTheProgramsOwnLimits) {
  const std::filesystem::path resources(WRAPGAUGE_SOURCE_DIR "/resources");
  const auto limits = read_limit_set(resources / "limits.json");
  ASSERT_TRUE(limits.ok());
  for (const LimitRow& row : limits->rows) {
    expect_german(row.source);
    expect_german(row.status);
    expect_german(std::string(site_name(row.site)));
    expect_german(std::string(use_name(row.use)));
  }
  for (const std::string& source :
       {limits->model_factor_source, limits->strain_source, limits->tourniquet_source, limits->stretch_source,
        limits->rest.source, limits->relief.source, limits->release.source, limits->heat.source,
        limits->heat.burn_source})
    expect_german(source);
  const auto comparisons = read_comparisons(resources / "comparisons.json");
  ASSERT_TRUE(comparisons.ok());
  for (const CompressionClass& one : comparisons->classes) {
    expect_german(one.place);
    expect_german(one.status);
  }
}

TEST_F(InGerman, SoAreTheWordsOfTheBonySitesThatFormsBring) {
  int said = 0;
  for (const Form& form : forms()) {
    const auto body = make_form(form.name, forms_in_tests::tape_values(form.name));
    ASSERT_TRUE(body.ok()) << form.name << ": " << body.problem().message;
    for (const BonySite& site : body->bony_sites)
      if (!site.words.empty()) {
        expect_german(site.words);
        ++said;
      }
  }
  EXPECT_GT(said, 15);
}

}  // namespace
}  // namespace wrapgauge
