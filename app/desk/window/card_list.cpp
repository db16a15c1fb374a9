#include "app/desk/window/card_list.hpp"

#include <algorithm>

namespace wrapgauge {

CardList::CardList(const QString& name, QWidget* parent) : QListWidget(parent) {
  setAccessibleName(name);
  setWordWrap(true);
  setItemDelegate(new FindingCardDelegate(this));
  setAlternatingRowColors(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setSizeAdjustPolicy(QAbstractScrollArea::AdjustIgnored);
}

void CardList::add(const QString& words, const std::optional<FindingCard>& card, const QString& hint) {
  addItem(words);
  QListWidgetItem& added = *item(count() - 1);
  if (card) added.setData(kCardRole, QVariant::fromValue(*card));
  added.setToolTip(hint);
}

void CardList::resizeEvent(QResizeEvent* event) {
  QListWidget::resizeEvent(event);
  fit();
}

int CardList::height_of(int row, int width) const {
  QStyleOptionViewItem option;
  option.font = font();
  option.rect = QRect(0, 0, std::max(width, 80), 10000);
  if (item(row)->data(kCardRole).isValid())
    return itemDelegate()->sizeHint(option, indexFromItem(item(row))).height();
  return fontMetrics().boundingRect(option.rect, Qt::TextWordWrap, item(row)->text()).height() + 8;
}

void CardList::fit() {
  const int width = viewport()->width() - 8;
  int height = 4;
  for (int i = 0; i < count(); ++i) {
    const int tall = height_of(i, width);
    item(i)->setSizeHint(QSize(0, tall));
    height += tall;
  }
  setFixedHeight(height + 2 * frameWidth());
}

}  // namespace wrapgauge
