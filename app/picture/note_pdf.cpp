#include "app/picture/note_pdf.hpp"

#include <QBuffer>
#include <QPdfWriter>

#include "app/picture/legend.hpp"
#include "app/picture/note_page.hpp"
#include "app/picture/pdf_date.hpp"
#include "app/picture/pdf_properties.hpp"

namespace wrapgauge {
namespace {

constexpr double kMargin_mm = 15.0, kFoot = 260.0;  // the foot of a page: a line and a row of words

void draw_foot(const Note& note, std::size_t page, std::size_t pages, const QSizeF& room, QPainter& painter) {
  const QFont font = page_font(kBodyType);
  const QRectF foot(0.0, room.height() - 0.6 * kFoot, room.width(), 0.6 * kFoot);
  const QString number = QStringLiteral("page %1 of %2").arg(page + 1).arg(pages);
  const double number_width = QFontMetricsF(font).horizontalAdvance(number) + 100.0;
  painter.setPen(QPen(kInk, 4.0));
  painter.drawLine(foot.topLeft(), foot.topRight());
  painter.setFont(font);
  const QString title = QString::fromStdString(note.title).simplified();
  painter.drawText(foot, Qt::AlignLeft | Qt::AlignBottom,
                   QFontMetricsF(font).elidedText(title, Qt::ElideRight, foot.width() - number_width));
  painter.drawText(foot, Qt::AlignRight | Qt::AlignBottom, number);
}

// Sections by page and by their height on it.
std::vector<PdfBookmark> bookmarks(const std::vector<NotePage>& pages, const QSizeF& room) {
  constexpr double kMargin_pt = kMargin_mm / 25.4 * 72.0;
  std::vector<PdfBookmark> all;
  for (std::size_t page = 0; page < pages.size(); ++page)
    for (const PlacedRow& placed : pages[page])
      if (placed.row.heading)
        all.push_back({placed.row.heading->toStdString(), page,
                       kMargin_pt + (room.height() - placed.top) * 72.0 / kPageDotsPerInch});
  return all;
}

void set_up(QPdfWriter& writer, const Note& note) {
  writer.setResolution(kPageDotsPerInch);
  writer.setPageSize(QPageSize(QPageSize::A4));
  writer.setPageMargins(QMarginsF(kMargin_mm, kMargin_mm, kMargin_mm, kMargin_mm), QPageLayout::Millimeter);
  writer.setTitle(QString::fromStdString(note.title));
  writer.setCreator("Wrapgauge");
}

}  // namespace

Result<std::string> note_pdf(const Note& note, const NotePictures& pictures) {
  const PdfDateFixed no_time_zone;
  QByteArray bytes;
  QBuffer buffer(&bytes);
  if (!buffer.open(QIODevice::WriteOnly))
    return bad_input(Phrase::worded("the note's PDF could not be written: no memory."));
  std::vector<PdfBookmark> sections;
  {
    QPdfWriter writer(&buffer);
    set_up(writer, note);
    const QSizeF room(writer.width(), writer.height());
    const auto pages = on_pages(note_rows(note, pictures, room.width()), room.height() - kFoot);
    sections = bookmarks(pages, room);
    QPainter painter;
    for (std::size_t page = 0; page < pages.size(); ++page) {
      if (page == 0 ? !painter.begin(&writer) : !writer.newPage())
        return bad_input(Phrase::worded("the note's PDF could not be drawn."));
      painter.setRenderHint(QPainter::LosslessImageRendering);
      for (const PlacedRow& placed : pages[page]) draw_row(placed, room.width(), painter);
      draw_foot(note, page, pages.size(), room, painter);
    }
  }
  buffer.close();
  return with_properties(without_date(bytes.toStdString()), {note.title, "en", note.date, sections});
}

}  // namespace wrapgauge
