#pragma once
// Keys of the menus that a text field would keep for itself: the field has them only while it is being typed
// in.

#include <QObject>

namespace wrapgauge {

class MenuKeys : public QObject {
 public:
  explicit MenuKeys(QObject* parent);  // for the whole application

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace wrapgauge
