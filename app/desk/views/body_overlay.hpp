#pragma once
#include <QWidget>

#include "app/desk/views/body_inset.hpp"
#include "app/desk/views/body_scene.hpp"
#include "app/desk/views/name_places.hpp"
#include "app/desk/views/skin_probe.hpp"
#include "app/desk/views/view_legend.hpp"

namespace wrapgauge {

// Where things stand over the drawn body.
struct OverlayPlaces {
  std::vector<QRectF> names;
  std::optional<QRectF> whole_body;  // none: the view shows all of it, or it would cover something
};

// Legend, scale, names and a small picture of the whole body over the drawn part of it; lets the mouse
// through.
class BodyOverlay : public QWidget {
  Q_OBJECT
 public:
  BodyOverlay(const ShownPlan& shown, const Selection& selection, QWidget* parent);

  // `hint`: one line at the top, empty for none. Drawn afresh only when
  // words or view change, or a name would come to stand on hatching: names that drift by a pixel while states
  // are scrubbed are not worth a frame.
  void show_over(std::shared_ptr<const BodyScene> scene, const LimbView& view, const QString& hint);
  OverlayPlaces draw(QPainter& painter) const;
  // Most of what the label names faces the eye and lies within the view.
  bool is_in_sight(const SceneLabel& label) const;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  std::vector<FlatLabel> draw_names(QPainter& painter, const LegendLook& look,
                                    std::vector<QRectF> taken) const;
  std::optional<QRectF> draw_whole(QPainter& painter, const LegendLook& look, InsetRoom room) const;
  std::optional<WornSurface> laid_in_scene() const;  // none: nothing lies on the body
  bool all_of_body_seen() const;
  std::vector<QRectF> drawn_on_skin() const;
  std::vector<QRectF> buttons() const;
  std::vector<NamedPlace> named_places() const;
  std::vector<QPointF> seen_points(const SkinPoints& area) const;
  std::vector<QPointF> seen_hatching() const;
  QRectF draw_words_above(QPainter& painter, const LegendLook& look) const;
  std::optional<QRectF> draw_words_below(QPainter& painter, const LegendLook& look,
                                         const QRectF& scale) const;
  std::optional<QRectF> hottest_spot() const;
  QString side_words() const;

  const ShownPlan& shown_;
  const Selection& selection_;
  std::shared_ptr<const BodyScene> scene_;
  LimbView view_;
  bool pressed_ = false;
  QString hint_, no_body_;
  std::vector<QRectF> names_at_;  // as last drawn
};

}  // namespace wrapgauge
