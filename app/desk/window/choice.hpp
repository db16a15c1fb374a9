#pragma once
// A list to choose one value from; each entry says its source on hover.

#include <QComboBox>
#include <QWheelEvent>
#include <vector>

namespace wrapgauge {

struct ChoiceEntry {
  QString words;
  QVariant value;
  QString source = {};  // on hover
};

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
  void add(const std::vector<ChoiceEntry>& entries) {
    for (const ChoiceEntry& entry : entries) add(entry.words, entry.value, entry.source);
  }
  // From now on a value that is not in the list comes into it when it is shown.
  void takes_unknown() { takes_unknown_ = true; }
  void show_value(const QVariant& value) {
    if (takes_unknown_ && findData(value) < 0) add(value.toString(), value);
    setCurrentIndex(findData(value));
    show_source();
  }

 signals:
  void chosen(const QVariant& value);

 protected:
  void wheelEvent(QWheelEvent* event) override { event->ignore(); }

 private:
  bool takes_unknown_ = false;
  void show_source() { setToolTip(currentData(Qt::ToolTipRole).toString()); }
};

}  // namespace wrapgauge
