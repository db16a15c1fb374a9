#include "app/desk/window/print_page.hpp"

#include <QCoreApplication>
#include <algorithm>

namespace wrapgauge {
namespace {

struct PrintWords {
  Q_DECLARE_TR_FUNCTIONS(PrintPage)
};

QFont font_of(const QPainter& painter, double points, bool bold = false) {
  QFont font(painter.font().family());
  font.setPointSizeF(points);
  font.setBold(bold);
  return font;
}

// Writes down the page; what is asked for after the foot is reached is left out.
class Column {
 public:
  Column(QPainter& painter, const QRectF& room) : painter_(painter), room_(room), y_(room.top()) {
    gap_ = QFontMetricsF(font_of(painter, 5.0), painter.device()).height();
  }

  double left() const { return room_.bottom() - y_; }
  double height_of(const QFont& font, const QString& words) const {
    return QFontMetricsF(font, painter_.device())
        .boundingRect(QRectF(0.0, 0.0, room_.width(), 1e6), Qt::TextWordWrap, words)
        .height();
  }

  void write(const QFont& font, const QString& words) {
    if (words.isEmpty()) return;
    painter_.setFont(font);
    const double height = height_of(font, words);
    painter_.drawText(QRectF(room_.left(), y_, room_.width(), height + gap_), Qt::TextWordWrap, words);
    y_ += height + 0.5 * gap_;
  }

  // Side by side, all as high, at most `most` of the page's height.
  void place(const std::vector<QImage>& pictures, double most) {
    double wide = 0.0;
    for (const QImage& picture : pictures)
      if (!picture.isNull()) wide += double(picture.width()) / picture.height();
    if (wide <= 0.0) return;
    const double height = std::min(most * room_.height(), (room_.width() - gap_) / wide);
    double x = room_.left();
    for (const QImage& picture : pictures) {
      if (picture.isNull()) continue;
      const double width = height * picture.width() / picture.height();
      painter_.drawImage(QRectF(x, y_, width, height), picture);
      x += width + gap_ / double(std::max<std::size_t>(1, pictures.size() - 1));
    }
    y_ += height + gap_;
  }

 private:
  QPainter& painter_;
  QRectF room_;
  double y_, gap_ = 0.0;
};

// As many as there is room for; the last line says how many are not here.
void write_findings(Column& column, const QFont& font, const QStringList& findings) {
  const auto rest = [](qsizetype count) {
    return PrintWords::tr("And %1 more: see the window or the note.").arg(count);
  };
  const double line = column.height_of(font, rest(findings.size()));
  for (qsizetype k = 0; k < findings.size(); ++k) {
    const bool last = k + 1 == findings.size();
    if (column.left() < column.height_of(font, findings[k]) + (last ? line : 3.0 * line))
      return column.write(font, rest(findings.size() - k));
    column.write(font, findings[k]);
  }
}

}  // namespace

void draw_page(QPainter& painter, const QRectF& room, const PrintedPage& page) {
  constexpr double kTitle = 15.0, kVerdict = 12.0, kWords = 9.0, kPictures = 0.42;
  painter.setPen(Qt::black);
  const QFont small = font_of(painter, kWords);
  Column foot(painter, room);
  const double foot_height = 1.5 * foot.height_of(font_of(painter, kWords, true), page.caution);
  Column column(painter, room.adjusted(0.0, 0.0, 0.0, -foot_height));
  column.write(font_of(painter, kTitle, true), page.title);
  column.write(font_of(painter, kVerdict, true), page.verdict);
  column.write(small, page.made_of);
  column.place(page.pictures, kPictures);
  write_findings(column, small, page.findings);
  painter.setFont(font_of(painter, kWords, true));
  painter.drawText(QRectF(room.left(), room.bottom() - foot_height, room.width(), foot_height),
                   Qt::TextWordWrap | Qt::AlignBottom, page.caution);
}

Result<std::monostate> print_page(QPrinter& printer, const PrintedPage& page) {
  QPainter painter;
  if (!painter.begin(&printer))
    return bad_input(Phrase::worded("the page could not be printed: choose another printer or file."));
  draw_page(painter,
            printer.pageLayout()
                .paintRectPixels(printer.resolution())
                .translated(-printer.pageLayout().paintRectPixels(printer.resolution()).topLeft()),
            page);
  return std::monostate{};
}

}  // namespace wrapgauge
