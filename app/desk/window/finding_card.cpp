#include "app/desk/window/finding_card.hpp"

#include <QPainter>
#include <algorithm>

#include "app/desk/window/share_bar.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/core/beside_limit.hpp"
#include "model/note/verdict.hpp"

namespace wrapgauge {
namespace {

// Where the parts of a card lie; drawn and measured by the same walk down.
class CardLayout {
 public:
  CardLayout(const FindingCard& card, const QFont& font, const QRect& room)
      : card_(card), font_(font), bold_(font), room_(room.adjusted(kStripe + kGap, kGap, -kGap, -kGap)) {
    bold_.setBold(true);
    head_ = lines_of(bold_, head(), room_.top());
    int bottom = head_.bottom();
    if (!card_.figures.isEmpty()) bottom = (figures_ = lines_of(font_, card_.figures, bottom + 1)).bottom();
    if (card_.share) {
      bar_ = QRect(room_.left(), bottom + 4, room_.width() - share_width(), kBar);
      bottom = std::max(bar_.bottom(), bottom + QFontMetrics(font_).height());
    }
    if (!card_.words.isEmpty()) bottom = (words_ = lines_of(font_, card_.words, bottom + 2)).bottom();
    height_ = bottom + kGap - room.top() + 1;
  }

  int height() const { return height_; }

  void draw(QPainter& painter, const QPalette& palette, const QRect& whole, bool enabled) const {
    const auto group = enabled ? QPalette::Active : QPalette::Disabled;
    const QColor ink = palette.color(group, QPalette::Text);
    QColor mark = severity_colour(card_.severity);
    if (!enabled) mark.setAlpha(110);
    painter.fillRect(QRect(whole.left(), whole.top() + 1, kStripe, whole.height() - 2), mark);
    write(painter, bold_, ink, head_, head());
    write(painter, font_, ink, figures_, card_.figures);
    if (card_.share) draw_bar(painter, palette, mark, ink);
    write(painter, font_, ink, words_, card_.words);
  }

 private:
  static constexpr int kStripe = 5, kGap = 6, kBar = 8;

  QString head() const { return card_.label + QStringLiteral(": ") + card_.place; }
  int share_width() const { return QFontMetrics(font_).horizontalAdvance(card_.share_words) + 2 * kGap; }

  QRect lines_of(const QFont& font, const QString& words, int top) const {
    return QFontMetrics(font).boundingRect(QRect(room_.left(), top, std::max(room_.width(), 60), 10000),
                                           Qt::TextWordWrap, words);
  }

  static void write(QPainter& painter, const QFont& font, const QColor& ink, const QRect& at,
                    const QString& words) {
    if (words.isEmpty()) return;
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(at.adjusted(0, 0, 4, 4), Qt::TextWordWrap, words);
  }

  void draw_bar(QPainter& painter, const QPalette& palette, const QColor& mark, const QColor& ink) const {
    draw_share_bar(painter, bar_, *card_.share, mark, ink, palette);
    painter.setFont(font_);
    painter.setPen(ink);
    const int line = QFontMetrics(font_).height();
    painter.drawText(QRect(bar_.right() + kGap, bar_.center().y() - line / 2, share_width(), line),
                     Qt::AlignVCenter, card_.share_words);
  }

  const FindingCard& card_;
  QFont font_, bold_;
  QRect room_, head_, figures_, bar_, words_;
  int height_ = 0;
};

std::optional<FindingCard> card_at(const QModelIndex& index) {
  const QVariant held = index.data(kCardRole);
  return held.canConvert<FindingCard>() ? std::optional(held.value<FindingCard>()) : std::nullopt;
}

}  // namespace

void FindingCardDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                                const QModelIndex& index) const {
  const auto card = card_at(index);
  if (!card) return QStyledItemDelegate::paint(painter, option, index);
  QStyleOptionViewItem ground = option;
  initStyleOption(&ground, index);
  ground.text.clear();
  const QStyle* style = option.widget->style();
  style->drawPrimitive(QStyle::PE_PanelItemViewItem, &ground, painter, option.widget);
  painter->save();
  QPalette palette = option.palette;
  if (option.state & QStyle::State_Selected)
    palette.setColor(QPalette::Text, palette.color(QPalette::HighlightedText));
  CardLayout(*card, option.font, option.rect)
      .draw(*painter, palette, option.rect, option.state & QStyle::State_Enabled);
  painter->restore();
}

QSize FindingCardDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const auto card = card_at(index);
  if (!card) return QStyledItemDelegate::sizeHint(option, index);
  return {option.rect.width(), CardLayout(*card, option.font, option.rect).height()};
}

FindingCard card_of(const Finding& finding, const QString& label) {
  FindingCard card{.severity = finding.severity,
                   .label = label,
                   .place = text(place_of(finding)),
                   .figures = {},
                   .share_words = {},
                   .share = {},
                   .words = {}};
  if (!finding.measured) {
    card.words = text(finding.sentence);
    return card;
  }
  const double share = said_share(finding);
  card.figures = text(measured_words(*finding.measured));
  card.share = share;
  card.share_words = text(percent_beside(share));
  card.words = text(cause_and_action(finding));
  return card;
}

}  // namespace wrapgauge
