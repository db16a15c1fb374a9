#include "app/desk/window/fine_settings.hpp"

#include <QVBoxLayout>

namespace wrapgauge {

FineSettings::FineSettings(QWidget* inside, const QString& of_what, QWidget* parent, const QString& title)
    : QWidget(parent), handle_(new QToolButton(this)) {
  handle_->setText(title.isEmpty() ? tr("Fine settings") : title);
  handle_->setAccessibleName(title.isEmpty() ? tr("Fine settings: %1").arg(of_what)
                                             : tr("%1: %2").arg(title, of_what));
  handle_->setToolTip(of_what);
  handle_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  handle_->setArrowType(Qt::RightArrow);
  handle_->setAutoRaise(true);
  handle_->setCheckable(true);
  handle_->setFocusPolicy(Qt::StrongFocus);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins({});
  column->addWidget(handle_);
  column->addWidget(inside);
  inside->setVisible(false);
  connect(handle_, &QToolButton::toggled, this, [this, inside](bool open) {
    handle_->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
    inside->setVisible(open);
  });
}

void FineSettings::say_title(const QString& title) {
  handle_->setText(title);
}

}  // namespace wrapgauge
