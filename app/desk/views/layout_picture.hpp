#pragma once
// A layout that is being made, flat, with an arrow for each of its sizes. The one whose field is being
// changed stands out.

#include <QString>
#include <QWidget>
#include <optional>
#include <vector>

#include "model/layout/layout.hpp"

namespace wrapgauge {

// An arrow with what it measures; the layout's own frame.
struct PictureArrow {
  QString name, size;  // "Seam", "10.0 mm"
  Vec2 from_m, to_m;
  bool whole = false;  // over all of the layout: it stands beside it
};

class LayoutPicture : public QWidget {
  Q_OBJECT
 public:
  explicit LayoutPicture(QWidget* parent = nullptr);

  void show_layout(Layout layout, std::vector<PictureArrow> arrows);
  // What is shown is what could be made last.
  void show_outdated(bool outdated);
  void show_chosen(const QString& name);  // of an arrow; empty: none

  const Layout& layout() const { return layout_; }
  const std::vector<PictureArrow>& arrows() const { return arrows_; }
  // Where the words of the arrows stand, in the order of the arrows.
  std::vector<QRectF> label_places() const;
  QSize sizeHint() const override { return {520, 480}; }
  QSize minimumSizeHint() const override { return {280, 220}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  struct Placed {
    QPointF from, to;  // the arrow's ends
    QRectF label;
  };
  QRectF material() const;  // where the layout is drawn
  QPointF on_view(const Vec2& point_m) const;
  double scale() const;  // pixels a millimetre
  Bounds2 box_m() const;
  int label_rows() const;
  double row_height() const;
  std::vector<Placed> placed() const;
  void place_above(const std::vector<std::size_t>& order, double bottom, std::vector<Placed>& all) const;
  void draw_layout(QPainter& painter) const;
  void draw_arrow(QPainter& painter, const PictureArrow& arrow, const Placed& placed) const;
  void draw_label(QPainter& painter, const PictureArrow& arrow, const QRectF& place) const;
  QString words(const PictureArrow& arrow) const;
  QSizeF label_size(const PictureArrow& arrow) const;

  Layout layout_;
  std::vector<PictureArrow> arrows_;
  QString chosen_;
  bool outdated_ = false;
};

}  // namespace wrapgauge
