#include <QRegularExpression>
#include <algorithm>

#include "app/picture/note_page.hpp"

namespace wrapgauge {
namespace {

constexpr double kPaddingInCell = 30.0, kBoxPadding = 60.0, kBetween = 60.0, kBeforeHeading = 150.0,
                 kIndent = 160.0, kLineSpacing = 1.08;

PageText laid_text(const QString& words, const QFont& font, double width, qsizetype bold_until = 0) {
  auto layout = std::make_shared<QTextLayout>(words, font);
  QTextOption option;
  option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
  option.setUseDesignMetrics(true);
  layout->setTextOption(option);
  if (bold_until > 0) {
    QTextCharFormat bold;
    bold.setFontWeight(QFont::Bold);
    layout->setFormats({{0, static_cast<int>(bold_until), bold}});
  }
  double bottom = 0.0;
  layout->beginLayout();
  for (QTextLine line = layout->createLine(); line.isValid(); line = layout->createLine()) {
    line.setLineWidth(width);
    line.setPosition({0.0, bottom});
    bottom += kLineSpacing * line.height();
  }
  layout->endLayout();
  return {layout, 0, layout->lineCount()};
}

// A number stays on the line of its unit: "(23 mmHg)" is not broken. "kPa·min" is too long for that in a
// narrow column, and would be broken within.
QString printed_words(const std::string& words) {
  static const QRegularExpression kUnit(
      QStringLiteral("(\\d) (kPa|mmHg|mm|cm|mL|min|s|h|N|°C|%)(?![A-Za-z·])"));
  return QString::fromStdString(words).simplified().replace(kUnit, QStringLiteral("\\1\u00A0\\2"));
}

PageText laid_text(const std::string& words, double width, int type = kBodyType, bool bold = false) {
  return laid_text(printed_words(words), page_font(type, bold), width);
}

PageRow plain_row(PageText text, double width, double gap) {
  PageRow row;
  row.cells.push_back({0.0, width, std::move(text)});
  row.gap = gap;
  return row;
}

struct RowMaker {
  const NotePictures& pictures;
  double width;
  std::vector<PageRow> rows = {};

  void operator()(const NoteHeading& heading) {
    PageRow row = plain_row(laid_text(heading.text, width, kHeadingType, true), width, kBeforeHeading);
    row.with_next = true;
    row.heading = QString::fromStdString(heading.text);
    rows.push_back(std::move(row));
  }

  void operator()(const NoteText& text) {
    rows.push_back(plain_row(laid_text(text.text, width), width, kBetween));
  }

  // One text, so that its lines stand under one another in one frame.
  void operator()(const NoteBox& box) {
    QString words;
    qsizetype first = 0;
    for (const std::string& line : box.lines) {
      if (!words.isEmpty()) words += QChar::LineSeparator;
      words += printed_words(line);
      if (first == 0) first = words.size();
    }
    const double inside = width - 2.0 * kBoxPadding;
    PageRow row;
    row.cells.push_back({kBoxPadding, inside, laid_text(words, page_font(kBodyType), inside, first)});
    row.frame = RowFrame::kBox;
    row.gap = kBetween;
    rows.push_back(std::move(row));
  }

  void operator()(const NoteList& list) {
    for (const std::string& item : list.items) {
      PageRow row;
      row.cells.push_back({kIndent / 3.0, kIndent / 2.0, laid_text("•", kIndent / 2.0)});
      row.cells.push_back({kIndent, width - kIndent, laid_text(item, width - kIndent)});
      row.gap = kBetween / 3.0;
      rows.push_back(std::move(row));
    }
  }

  void operator()(const NoteTable& table) {
    const std::size_t header = rows.size();
    rows.push_back(table_row(table, table.header));
    rows.back().frame = RowFrame::kHeader;
    rows.back().gap = kBetween;
    rows.back().with_next = true;
    for (const auto& cells : table.rows) {
      rows.push_back(table_row(table, cells));
      rows.back().frame = RowFrame::kGrid;
      rows.back().header = header;
    }
  }

  void operator()(const NotePicture& picture) {
    PageRow row;
    row.picture = picture.file == kPictureOfPlace ? pictures.place : pictures.pressure;
    row.picture_height = width * row.picture.height() / std::max(1, row.picture.width());
    row.gap = kBetween;
    row.with_next = true;
    rows.push_back(std::move(row));
    (*this)(NoteText{picture.caption});
  }

 private:
  double column_edge(const NoteTable& table, std::size_t column) const {
    double percent = 0.0;
    for (std::size_t c = 0; c < column; ++c) percent += table.widths_percent[c];
    return 0.01 * percent * width;
  }

  PageRow table_row(const NoteTable& table, const std::vector<std::string>& cells) const {
    const bool is_header = &cells == &table.header;
    const double line = QFontMetricsF(page_font(kBodyType)).height();
    PageRow row;
    for (std::size_t c = 0; c < cells.size(); ++c) {
      const std::size_t end = c + 1 < cells.size() ? c + 1 : table.header.size();
      const double left = column_edge(table, c) + kPaddingInCell,
                   inside = column_edge(table, end) - kPaddingInCell - left;
      PageCell cell{left, inside, laid_text(cells[c], inside, kBodyType, is_header)};
      cell.fill = cells[c].empty() && !is_header;
      if (cell.fill) cell.least_height = line * (table.room_lines + 0.5);
      row.cells.push_back(std::move(cell));
    }
    return row;
  }
};

}  // namespace

std::vector<PageRow> note_rows(const Note& note, const NotePictures& pictures, double width) {
  RowMaker maker{pictures, width};
  maker.rows.push_back(plain_row(laid_text(note.title, width, kTitleType, true), width, 0.0));
  maker.rows.back().with_next = true;
  for (const NoteBlock& block : note.blocks) std::visit(maker, block);
  return maker.rows;
}

}  // namespace wrapgauge
