#include "app/picture/note_pdf.hpp"

#include <QAbstractTextDocumentLayout>
#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <QTextDocument>
#include <QUrl>
#include <memory>

#include "app/picture/legend.hpp"
#include "app/picture/note_picture.hpp"
#include "app/picture/pdf_date.hpp"

namespace wrapgauge {
namespace {

// Laid out at 96 dots an inch, the measure of HTML; text stays vectors.
constexpr int kDotsPerInch = 96;
constexpr double kMargin_mm = 12.0;
constexpr double kLargest_pt = 9.0, kSmallest_pt = 6.0, kStep_pt = 0.1;

QString style(double points) {
  return QString(
             "h1 { font-size: %1pt; margin: 0px 0px 3px 0px; } h2 { font-size: %2pt; margin: 5px 0px 1px "
             "0px; }"
             "p { margin: 2px 0px 2px 0px; } ul { margin: 1px 0px 1px 0px; -qt-list-indent: 0; }"
             "li { margin: 0px 0px 0px 12px; }")
      .arg(1.5 * points)
      .arg(1.15 * points);
}

std::unique_ptr<QTextDocument> laid_out(const Note& note, std::size_t page, const QImage& picture,
                                        double points, double width) {
  auto document = std::make_unique<QTextDocument>();
  document->setUseDesignMetrics(true);
  document->setDocumentMargin(0.0);
  QFont font;
  font.setPointSizeF(points);
  document->setDefaultFont(font);
  document->setDefaultStyleSheet(style(points));
  document->addResource(QTextDocument::ImageResource, QUrl(kNotePicture), picture);
  document->setHtml(with_picture_size(note_page_html(note, page), picture));
  document->setTextWidth(width);
  return document;
}

// The largest type with which a page holds its words.
std::unique_ptr<QTextDocument> fitted(const Note& note, std::size_t page, const QImage& picture,
                                      const QSizeF& room) {
  for (double points = kLargest_pt; points >= kSmallest_pt - 1e-9; points -= kStep_pt) {
    auto document = laid_out(note, page, picture, points, room.width());
    if (document->size().height() <= room.height()) return document;
  }
  return nullptr;
}

}  // namespace

Result<std::string> note_pdf(const Note& note, const QImage& picture) {
  const PdfDateFixed no_time_zone;
  QByteArray bytes;
  QBuffer buffer(&bytes);
  if (!buffer.open(QIODevice::WriteOnly)) return bad_input("the note's PDF could not be written: no memory.");
  QPdfWriter writer(&buffer);
  writer.setResolution(kDotsPerInch);
  writer.setPageSize(QPageSize(QPageSize::A4));
  writer.setPageMargins(QMarginsF(kMargin_mm, kMargin_mm, kMargin_mm, kMargin_mm), QPageLayout::Millimeter);
  writer.setTitle(QString::fromStdString(note.title));
  writer.setCreator("Wrapgauge");
  const QSizeF room(writer.width(), writer.height());
  QPainter painter;
  for (std::size_t page = 0; page < note.pages.size(); ++page) {
    const auto document = fitted(note, page, picture, room);
    if (!document)
      return bad_input(
          "page " + std::to_string(page + 1) +
          " of the note holds more words than fit on A4; shorten names of chambers, inlets and sites.");
    if (page == 0 ? !painter.begin(&writer) : !writer.newPage())
      return bad_input("the note's PDF could not be drawn.");
    document->drawContents(&painter);
  }
  painter.end();
  buffer.close();
  return without_date(bytes.toStdString());
}

}  // namespace wrapgauge
