#include "app/desk/views/pump_scale.hpp"

#include <QPainter>
#include <QSlider>
#include <QStyle>
#include <algorithm>
#include <cmath>

#include "app/desk/views/pressure_words.hpp"
#include "app/desk/views/view_colours.hpp"

namespace wrapgauge {
namespace {

constexpr int kBand = 6;  // pixels

// That it goes no further is true of the whole filling, and met where it ends.
bool is_of_the_end(const Finding& finding) {
  return finding.source_key == "limit point";
}

std::optional<WorstOfState> worst_of(const ShownPlan& shown, int state) {
  const auto contact = shown.contact(state);
  if (!contact) return std::nullopt;
  WorstOfState worst;
  const bool last = state == shown.state_count() - 1;
  for (const Finding& finding : contact->findings) {
    if (is_of_the_end(finding) && !last) continue;
    worst.severity = std::max(worst.severity, finding.severity);
    worst.share = std::max(worst.share, finding.share_of_limit);
  }
  return worst;
}

void add_piece(TravelPiece piece, std::vector<TravelPiece>& pieces) {
  if (!pieces.empty() && pieces.back().severity == piece.severity)
    pieces.back().to = piece.to;
  else
    pieces.push_back(piece);
}

void add_between(int state, const std::optional<WorstOfState>& before,
                 const std::optional<WorstOfState>& after, std::vector<TravelPiece>& pieces) {
  const double from = state, to = state + 1;
  if (!before || !after) return add_piece({from, to, std::nullopt}, pieces);
  const bool passes = before->severity < Severity::kAboveLimit && after->severity >= Severity::kAboveLimit &&
                      before->share < 1.0 && after->share > 1.0;
  if (!passes) return add_piece({from, to, std::max(before->severity, after->severity)}, pieces);
  const double at = from + (1.0 - before->share) / (after->share - before->share);
  add_piece({from, at, Severity::kWarn}, pieces);
  add_piece({at, to, after->severity}, pieces);
}

QString severity_words(Severity severity) {
  const QString words[] = {PumpScale::tr("within the limits"), PumpScale::tr("warning"),
                           PumpScale::tr("above a limit"), PumpScale::tr("stop")};
  return words[static_cast<std::size_t>(severity)];
}

// Of the fullest chamber; between two states in a straight line.
std::optional<Pressure> inside_at(const ShownPlan& shown, double filling) {
  const int lower = std::clamp(static_cast<int>(filling), 0, std::max(0, shown.state_count() - 1));
  const auto before = shown.contact(lower),
             after = shown.contact(std::min(lower + 1, shown.state_count() - 1));
  if (!before || !after) return std::nullopt;
  return before->inside + (filling - lower) * (after->inside - before->inside);
}

}  // namespace

std::vector<TravelPiece> travel_pieces(const std::vector<std::optional<WorstOfState>>& states) {
  std::vector<TravelPiece> pieces;
  for (std::size_t state = 1; state < states.size(); ++state)
    add_between(static_cast<int>(state) - 1, states[state - 1], states[state], pieces);
  return pieces;
}

std::vector<TravelPiece> travel_pieces(const ShownPlan& shown) {
  std::vector<std::optional<WorstOfState>> states;
  for (int state = 0; state < shown.state_count(); ++state) states.push_back(worst_of(shown, state));
  return travel_pieces(states);
}

PumpScale::PumpScale(const ShownPlan& shown, const Selection& selection, const QSlider& slider,
                     QWidget* parent)
    : QWidget(parent), shown_(shown), selection_(selection), slider_(slider) {
  setFixedHeight(kBand + 3 + fontMetrics().height());
  setAccessibleName(tr("What each filling meets"));
  connect(&shown_, &ShownPlan::estimateChanged, this, &PumpScale::read);
  connect(&shown_, &ShownPlan::stateRead, this, &PumpScale::read);
  connect(&shown_, &ShownPlan::staleChanged, this, &PumpScale::read);
  connect(&selection_, &Selection::unitChanged, this, &PumpScale::read);
  read();
}

void PumpScale::read() {
  pieces_ = travel_pieces(shown_);
  QStringList words;
  for (const TravelPiece& piece : pieces_) words.push_back(words_of(piece));
  const QString all = words.join(QStringLiteral("; "));
  setAccessibleDescription(all);
  setToolTip(all.isEmpty()
                 ? all
                 : tr("While it fills: %1. What lasts over a session counts at the end alone.").arg(all));
  update();
}

QString PumpScale::brief_words_of(const TravelPiece& piece) const {
  return piece.severity ? severity_words(*piece.severity) : tr("being read");
}

QString PumpScale::words_of(const TravelPiece& piece) const {
  const auto from = inside_at(shown_, piece.from);
  if (!piece.severity || piece.from <= 0.0 || !from) return brief_words_of(piece);
  return tr("%1 from %2 inside").arg(brief_words_of(piece), pressure_words(*from, selection_.unit()));
}

// The middle of the handle travels from half its length to as far before the other end.
double PumpScale::x_of(double filling) const {
  const int handle = slider_.style()->pixelMetric(QStyle::PM_SliderLength, nullptr, &slider_);
  const double last = std::max(1, shown_.state_count() - 1);
  return slider_.x() - x() + 0.5 * handle + filling / last * (slider_.width() - handle);
}

void PumpScale::draw(QPainter& painter, const TravelPiece& piece) const {
  const QRectF band(QPointF(x_of(piece.from), 0.0), QPointF(x_of(piece.to), kBand));
  const bool faded = !shown_.stale().isEmpty();
  QColor mark = piece.severity ? severity_colour(*piece.severity) : palette().color(QPalette::Mid);
  if (faded) mark.setAlpha(110);
  // Told apart without its colour: thin, whole, hatched.
  const bool above = piece.severity && *piece.severity >= Severity::kAboveLimit;
  if (!piece.severity || *piece.severity == Severity::kNote)
    painter.fillRect(band.adjusted(0.0, kBand / 3.0, 0.0, -kBand / 3.0), mark);
  else
    painter.fillRect(band, above ? QBrush(mark, Qt::Dense3Pattern) : QBrush(mark));
  if (piece.from > 0.0) painter.fillRect(QRectF(band.left() - 0.5, 0.0, 1.5, height()), mark);
  painter.setPen(palette().color(faded ? QPalette::Disabled : QPalette::Active, QPalette::WindowText));
  const QRectF room = QRectF(band.left() + 4.0, kBand + 2.0, band.width() - 6.0, height() - kBand - 2.0);
  for (const QString& words : {words_of(piece), brief_words_of(piece)})
    if (fontMetrics().horizontalAdvance(words) <= room.width())
      return painter.drawText(room, Qt::AlignLeft | Qt::AlignTop, words);
}

void PumpScale::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  for (const TravelPiece& piece : pieces_) draw(painter, piece);
}

}  // namespace wrapgauge
