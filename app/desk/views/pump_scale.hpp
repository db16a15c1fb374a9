#pragma once
// Under the handle that fills the device: up to where of its travel nothing is above a limit, where warnings
// begin and where a limit is passed.

#include <QWidget>
#include <optional>
#include <vector>

#include "app/desk/views/shown_plan.hpp"

class QSlider;

namespace wrapgauge {

// A stretch of the filling, counted in recorded states.
struct TravelPiece {
  double from = 0.0, to = 0.0;
  std::optional<Severity> severity;  // the worst there; none: its contact is still being read
  bool operator==(const TravelPiece&) const = default;
};

struct WorstOfState {
  Severity severity = Severity::kNote;
  double share = 0.0;  // the largest of a limit, after the model factor
};

// From the first recorded state to the last, in order, no two neighbours alike. A state without its worst is
// not read yet. Between two states the graver one counts, but that a limit is passed where the share of it,
// in a straight line, comes to 1: a warning up to there.
std::vector<TravelPiece> travel_pieces(const std::vector<std::optional<WorstOfState>>& states);
std::vector<TravelPiece> travel_pieces(const ShownPlan& shown);

class PumpScale : public QWidget {
  Q_OBJECT
 public:
  // `slider`: lies above, and its travel is what is marked.
  PumpScale(const ShownPlan& shown, const Selection& selection, const QSlider& slider,
            QWidget* parent = nullptr);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void read();
  QString words_of(const TravelPiece& piece) const;
  QString brief_words_of(const TravelPiece& piece) const;
  double x_of(double filling) const;
  void draw(QPainter& painter, const TravelPiece& piece) const;

  const ShownPlan& shown_;
  const Selection& selection_;
  const QSlider& slider_;
  std::vector<TravelPiece> pieces_;
};

}  // namespace wrapgauge
