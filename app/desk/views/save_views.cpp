#include "app/desk/views/save_views.hpp"

#include <QAction>
#include <QClipboard>
#include <QCoreApplication>
#include <QFileDialog>
#include <QGuiApplication>
#include <QMessageBox>
#include <QPainter>

#include "app/desk/words/phrase_text.hpp"
#include "app/picture/png.hpp"
#include "app/picture/svg_picture.hpp"
#include "model/core/file.hpp"

namespace wrapgauge {
namespace {

QString words(const char* text) {
  return QCoreApplication::translate("SaveViews", text);
}

QAction* action(QWidget* widget, const QString& text, std::function<void()> act) {
  auto* made = new QAction(text, widget);
  made->setShortcutContext(Qt::WidgetWithChildrenShortcut);
  QObject::connect(made, &QAction::triggered, widget, std::move(act));
  widget->addAction(made);
  widget->setContextMenuPolicy(Qt::ActionsContextMenu);
  return made;
}

void save(QWidget* widget, const QString& title, const QString& name, const QString& filter,
          const Result<std::string>& bytes) {
  const auto refuse = [&](const Problem& problem) { QMessageBox::warning(widget, title, text(problem)); };
  if (!bytes) return refuse(bytes.problem());
  const QString file = QFileDialog::getSaveFileName(widget, title, name, filter);
  if (file.isEmpty()) return;
  const auto written = write_file_atomically(file.toStdString(), *bytes);
  if (!written) refuse(written.problem());
}

}  // namespace

void offer_picture(QWidget* widget, const QString& name, std::function<QImage()> picture) {
  action(widget, words(QT_TRANSLATE_NOOP("SaveViews", "Copy picture")), [picture] {
    QGuiApplication::clipboard()->setImage(picture());
  })->setShortcut(QKeySequence::Copy);
  action(widget, words(QT_TRANSLATE_NOOP("SaveViews", "Save picture…")), [widget, name, picture] {
    save(widget, words(QT_TRANSLATE_NOOP("SaveViews", "Save picture")), name + ".png",
         words(QT_TRANSLATE_NOOP("SaveViews", "PNG pictures (*.png)")), png_bytes(picture()));
  });
}

void offer_drawing(QWidget* widget, const QString& name, const QSize& size,
                   std::function<void(QPainter&)> draw) {
  action(widget, words(QT_TRANSLATE_NOOP("SaveViews", "Save drawing…")), [widget, name, size, draw] {
    SvgPicture drawing(size);
    QPainter painter(&drawing);
    draw(painter);
    painter.end();
    save(widget, words(QT_TRANSLATE_NOOP("SaveViews", "Save drawing")), name + ".svg",
         words(QT_TRANSLATE_NOOP("SaveViews", "SVG drawings (*.svg)")), drawing.bytes());
  });
}

void offer_copy(QWidget* widget, std::function<QString()> text) {
  action(widget, words(QT_TRANSLATE_NOOP("SaveViews", "Copy")), [text] {
    QGuiApplication::clipboard()->setText(text());
  })->setShortcut(QKeySequence::Copy);
}

void offer_table(QWidget* widget, const QString& name, std::function<QString()> text,
                 std::function<QString()> csv) {
  action(widget, words(QT_TRANSLATE_NOOP("SaveViews", "Copy table")), [text] {
    QGuiApplication::clipboard()->setText(text());
  })->setShortcut(QKeySequence::Copy);
  action(widget, words(QT_TRANSLATE_NOOP("SaveViews", "Save table as CSV…")), [widget, name, csv] {
    save(widget, words(QT_TRANSLATE_NOOP("SaveViews", "Save table")), name + ".csv",
         words(QT_TRANSLATE_NOOP("SaveViews", "CSV tables (*.csv)")), csv().toStdString());
  });
}

}  // namespace wrapgauge
