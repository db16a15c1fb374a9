#pragma once
// One finding drawn as a card: how grave, where, what was predicted against which limit with a bar of the
// share, what it comes from, one thing to do.

#include <QStyledItemDelegate>
#include <optional>

#include "model/limits/finding.hpp"

namespace wrapgauge {

struct FindingCard {
  Severity severity = Severity::kNote;
  QString label;                // "Above limit"
  QString place;                // "left over the ulna"
  QString figures;              // "2.2 kPa (17 mmHg), with the factor ...": empty: nothing was measured
  QString share_words;          // "112 %"
  std::optional<double> share;  // of the limit, for the bar
  QString words;                // cause and action; the whole sentence where nothing was measured
};

// Cards in a list whose items hold them under this role; items without one are drawn as text.
inline constexpr int kCardRole = Qt::UserRole + 1;

class FindingCardDelegate : public QStyledItemDelegate {
  Q_OBJECT
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

// Of a finding: what the window's language says of it.
FindingCard card_of(const Finding& finding, const QString& label);

}  // namespace wrapgauge

Q_DECLARE_METATYPE(wrapgauge::FindingCard)
