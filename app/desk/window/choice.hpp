#pragma once
// A list to choose one value from; each entry says its source on hover.

#include <QComboBox>
#include <QWheelEvent>

namespace wrapgauge {

class Choice : public QComboBox {
  Q_OBJECT
 public:
  explicit Choice(const QString& name, QWidget* parent = nullptr) : QComboBox(parent) {
    setAccessibleName(name);
    setFocusPolicy(Qt::StrongFocus);
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(8);
    connect(this, &QComboBox::activated, this, [this](int index) {
      show_source();
      emit chosen(itemData(index));
    });
  }
  void add(const QString& text, const QVariant& value, const QString& source = {}) {
    addItem(text, value);
    setItemData(count() - 1, source, Qt::ToolTipRole);
  }
  void show_value(const QVariant& value) {
    setCurrentIndex(findData(value));
    show_source();
  }

 signals:
  void chosen(const QVariant& value);

 protected:
  void wheelEvent(QWheelEvent* event) override { event->ignore(); }

 private:
  void show_source() { setToolTip(currentData(Qt::ToolTipRole).toString()); }
};

}  // namespace wrapgauge
