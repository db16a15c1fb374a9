#pragma once
// The two sheets, how they were stretched when fused, the backing cloth and the rim.

#include <QCheckBox>

#include "app/desk/window/choice.hpp"
#include "app/desk/window/number_field.hpp"
#include "model/layout/layout.hpp"

class QFormLayout;

namespace wrapgauge {

// Hardness and thickness of one sheet; each hardness says its source on hover.
class SheetField : public QWidget {
  Q_OBJECT
 public:
  explicit SheetField(const QString& name, QWidget* parent = nullptr);
  void show_sheet(const Sheet& sheet);
  Sheet sheet() const;

 signals:
  void edited();

 private:
  Sheet shown_;
  Choice* material_;
  NumberField* thickness_;
};

class SheetFields : public QObject {
  Q_OBJECT
 public:
  // Adds its rows to a form that has a widget, so that all fields of it begin at one edge.
  explicit SheetFields(QFormLayout& form);
  void show_layout(const Layout& layout);
  void apply(Layout& layout) const;

 signals:
  void edited();

 private:
  void connect_fields();

  SheetField *skin_, *outer_;
  NumberField *along_, *across_, *skin_stretch_, *outer_stretch_;
  QCheckBox* rim_;
};

}  // namespace wrapgauge
