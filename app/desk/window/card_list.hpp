#pragma once
// A list of cards, as tall as they are, so that the column scrolls and not the list in it.

#include <QListWidget>

#include "app/desk/window/finding_card.hpp"

namespace wrapgauge {

class CardList : public QListWidget {
  Q_OBJECT
 public:
  // `name`: for a screen reader.
  explicit CardList(const QString& name, QWidget* parent = nullptr);

 protected:
  // `words`: the whole of it, which a screen reader says; shown where there is no card.
  void add(const QString& words, const std::optional<FindingCard>& card, const QString& hint);
  void fit();  // after the last one was added
  void resizeEvent(QResizeEvent* event) override;

 private:
  int height_of(int row, int width) const;
};

}  // namespace wrapgauge
