#include "app/picture/note_page.hpp"

#include <algorithm>

#include "app/picture/legend.hpp"

namespace wrapgauge {
namespace {

constexpr double kPadding = 30.0;  // between a border and its text
const QColor kToFill(255, 246, 214), kHeaderShade(236, 234, 240), kBorder(120, 116, 128);

double padding_of(const PageRow& row) {
  return row.frame == RowFrame::kNone ? 0.0 : row.frame == RowFrame::kBox ? 2.0 * kPadding : kPadding;
}

int lines_within(const PageText& text, double height) {
  int last = text.first;
  while (last < text.last && PageText{text.layout, text.first, last + 1}.height() <= height) ++last;
  return last;
}

// What fits into `height` goes into the first, the rest into the second. None: not a line fits everywhere.
std::optional<std::pair<PageRow, PageRow>> split(const PageRow& row, double height) {
  PageRow above = row, below = row;
  for (std::size_t c = 0; c < row.cells.size(); ++c) {
    const PageText& text = row.cells[c].text;
    const int last = lines_within(text, height - 2.0 * padding_of(row));
    if (last == text.first && text.last > text.first) return std::nullopt;
    above.cells[c].text.last = last;
    below.cells[c].text.first = last;
    above.cells[c].least_height = below.cells[c].least_height = 0.0;
  }
  above.with_next = false;
  below.heading.reset();
  return std::pair(above, below);
}

class PageFiller {
 public:
  PageFiller(const std::vector<PageRow>& rows, double height) : rows_(rows), height_(height) {
    pages_.emplace_back();
  }

  std::vector<NotePage> filled() {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      if (!is_empty() && end_ + rows_[i].gap + height_with_followers(i) > height_) turn_page(rows_[i]);
      put(rows_[i]);
    }
    return pages_;
  }

 private:
  bool is_empty() const { return pages_.back().empty(); }

  // Up to the first row that may end a page; what follows a heading is longer than a page only when it is cut
  // anyway.
  double height_with_followers(std::size_t i) const {
    double height = rows_[i].height();
    for (; rows_[i].with_next && i + 1 < rows_.size(); ++i)
      height += rows_[i + 1].gap + rows_[i + 1].height();
    return std::min(height, height_);
  }

  void turn_page(const PageRow& next) {
    pages_.emplace_back();
    end_ = 0.0;
    if (next.header) place(rows_[*next.header]);
  }

  void put(PageRow row) {
    while (end_ + gap_of(row) + row.height() > height_) {
      auto parts = split(row, height_ - end_ - gap_of(row));
      if (!parts) break;  // a picture, or a header that leaves no room: better over the edge than lost
      place(parts->first);
      row = std::move(parts->second);
      turn_page(row);
    }
    place(row);
  }

  double gap_of(const PageRow& row) const { return is_empty() ? 0.0 : row.gap; }

  void place(const PageRow& row) {
    const double top = end_ + gap_of(row);
    pages_.back().push_back({row, top});
    end_ = top + row.height();
  }

  const std::vector<PageRow>& rows_;
  double height_, end_ = 0.0;
  std::vector<NotePage> pages_;
};

void draw_frame(const PlacedRow& placed, double width, QPainter& painter) {
  const PageRow& row = placed.row;
  if (row.frame == RowFrame::kNone) return;
  const double height = row.height();
  if (row.frame == RowFrame::kBox) {
    painter.setPen(QPen(kInk, 15.0));
    painter.drawRect(QRectF(0.0, placed.top, width, height));
    return;
  }
  for (const PageCell& cell : row.cells) {
    const QRectF area(cell.left - kPadding, placed.top, cell.width + 2.0 * kPadding, height);
    if (cell.fill) painter.fillRect(area, kToFill);
    if (row.frame == RowFrame::kHeader) painter.fillRect(area, kHeaderShade);
    painter.setPen(QPen(kBorder, 5.0));
    painter.drawRect(area);
  }
}

}  // namespace

double PageText::height() const {
  if (last <= first) return 0.0;
  const QTextLine end = layout->lineAt(last - 1);
  return end.y() + end.height() - layout->lineAt(first).y();
}

double PageRow::height() const {
  double inside = picture.isNull() ? 0.0 : picture_height;
  for (const PageCell& cell : cells) inside = std::max({inside, cell.text.height(), cell.least_height});
  return inside + 2.0 * padding_of(*this);
}

std::vector<NotePage> on_pages(const std::vector<PageRow>& rows, double page_height) {
  return PageFiller(rows, page_height).filled();
}

void draw_row(const PlacedRow& placed, double width, QPainter& painter) {
  draw_frame(placed, width, painter);
  if (!placed.row.picture.isNull())
    painter.drawImage(QRectF(0.0, placed.top, width, placed.row.picture_height), placed.row.picture);
  painter.setPen(kInk);
  for (const PageCell& cell : placed.row.cells)
    for (int k = cell.text.first; k < cell.text.last; ++k)
      cell.text.layout->lineAt(k).draw(
          &painter,
          {cell.left, placed.top + padding_of(placed.row) - cell.text.layout->lineAt(cell.text.first).y()});
}

QFont page_font(int type, bool bold) {
  QFont font = picture_font(type, bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

}  // namespace wrapgauge
