#include "app/desk/window/print_page.hpp"

#include <QProcess>

#include "app/picture/svg_picture.hpp"
#include "tests/desk_window/window_fixture.hpp"

namespace wrapgauge {
namespace {

QString printed_words(const QString& pdf) {
  QProcess reader;
  reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")});
  reader.waitForFinished();
  return QString::fromUtf8(reader.readAllStandardOutput()).simplified();
}

class PrintPage : public WindowTest {
 protected:
  QString print(const PrintedPage& page) {
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setPageSize(QPageSize(QPageSize::A4));
    const QString file = folder_.filePath(QStringLiteral("page.pdf"));
    printer.setOutputFileName(file);
    EXPECT_TRUE(print_page(printer, page).ok());
    return printed_words(file);
  }
};

TEST_F(PrintPage, HoldsTheVerdictTheFindingsAndTheCautionOfWhatIsShown) {
  window_.start({});
  ASSERT_TRUE(wait_for_views());
  const PrintedPage page = window_.page_to_print();
  const QString words = print(page);
  EXPECT_TRUE(words.contains(page.verdict.simplified())) << words.toStdString();
  EXPECT_TRUE(words.contains(page.findings.front().simplified().left(60)));
  EXPECT_TRUE(words.contains(QStringLiteral("Not a medical device")));
  EXPECT_EQ(page.pictures.size(), 2u);
}

TEST_F(PrintPage, CountsTheFindingsThatHaveNoRoomAndKeepsTheCaution) {
  PrintedPage page;
  page.title = QStringLiteral("many");
  page.caution = QStringLiteral("Caution at the foot.");
  constexpr int kMany = 200;
  for (int k = 0; k < kMany; ++k) page.findings.push_back(QStringLiteral("Finding number %1.").arg(k));
  const QString words = print(page);
  int there = 0;
  while (words.contains(QStringLiteral("Finding number %1.").arg(there))) ++there;
  EXPECT_GT(there, 20);
  EXPECT_TRUE(words.contains(QStringLiteral("And %1 more").arg(kMany - there))) << there;
  EXPECT_TRUE(words.endsWith(page.caution));
}

}  // namespace
}  // namespace wrapgauge
