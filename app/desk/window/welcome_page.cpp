#include "app/desk/window/welcome_page.hpp"

#include <QCommandLinkButton>
#include <QCryptographicHash>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPixmap>
#include <QVBoxLayout>

#include "app/desk/window/step_form.hpp"
#include "app/picture/png.hpp"
#include "app/picture/thumbnail.hpp"
#include "model/core/file.hpp"

namespace wrapgauge {
namespace {

constexpr QSize kThumbnail(176, 120);

QIcon thumbnail_of(const std::filesystem::path& file) {
  const QPixmap picture(QString::fromStdString(file.string()));
  if (!picture.isNull()) return picture;
  QPixmap none(kThumbnail);
  none.fill(Qt::transparent);
  return none;
}

}  // namespace

WelcomePage::WelcomePage(const QStringList& recent, const std::filesystem::path& thumbnails, QWidget* parent)
    : QDialog(parent) {
  setWindowTitle(tr("Where to begin"));
  auto* page = new QVBoxLayout(this);
  auto* row = new QHBoxLayout;
  row->setSpacing(18);
  row->addWidget(doors());
  if (!recent.isEmpty()) row->addWidget(plans(recent, thumbnails), 1);
  page->addLayout(row, 1);
  page->addWidget(words_label(
      tr("Predicts how hard an inflatable silicone wearable presses. Predictions only: not a medical device; "
         "ask a clinician before anyone wears it."),
      this));
}

QWidget* WelcomePage::doors() {
  auto* side = new QWidget(this);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins({});
  column->addWidget(heading_label(tr("What do you have?"), side));
  const auto add = [&](Door door, const QString& words, const QString& more) {
    auto* button = new QCommandLinkButton(words, more, side);
    button->setAccessibleName(words);
    column->addWidget(button);
    connect(button, &QAbstractButton::clicked, this, [this, door] {
      accept();
      emit doorChosen(door);
    });
  };
  add(Door::kScan, tr("A scan of the limb"), tr("A mesh: OBJ, STL, PLY or glTF"));
  add(Door::kGirths, tr("Girths from a tape"), tr("Makes a limb of them, or of a survey's percentiles"));
  add(Door::kDrawing, tr("A drawing of the layout"), tr("SVG or DXF; the limb comes after"));
  add(Door::kExample, tr("Nothing yet"), tr("Opens a worked example: a cuff on a forearm"));
  column->addStretch(1);
  return side;
}

QWidget* WelcomePage::plans(const QStringList& recent, const std::filesystem::path& thumbnails) {
  auto* side = new QWidget(this);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins({});
  column->addWidget(heading_label(tr("Recent plans"), side));
  auto* list = new QListWidget(side);
  list->setAccessibleName(tr("Recent plans"));
  list->setViewMode(QListView::IconMode);
  list->setIconSize(kThumbnail);
  list->setResizeMode(QListView::Adjust);
  list->setMovement(QListView::Static);
  list->setSpacing(8);
  list->setMinimumSize(2 * (kThumbnail.width() + 40), 2 * (kThumbnail.height() + 60));
  for (const QString& file : recent) {
    auto* item = new QListWidgetItem(thumbnail_of(thumbnail_file(thumbnails, file.toStdString())),
                                     QFileInfo(file).completeBaseName(), list);
    item->setToolTip(file);
    item->setData(Qt::UserRole, file);
  }
  const auto open = [this](QListWidgetItem* item) {
    accept();
    emit planChosen(item->data(Qt::UserRole).toString());
  };
  connect(list, &QListWidget::itemActivated, this, open);
  connect(list, &QListWidget::itemClicked, this, open);
  column->addWidget(list, 1);
  return side;
}

std::filesystem::path thumbnail_file(const std::filesystem::path& thumbnails,
                                     const std::filesystem::path& plan_file) {
  const QByteArray path =
      QByteArray::fromStdString(std::filesystem::absolute(plan_file).lexically_normal().string());
  const QByteArray name = QCryptographicHash::hash(path, QCryptographicHash::Sha256).toHex().left(24);
  return thumbnails / (name.toStdString() + ".png");
}

void keep_thumbnail(const QImage& picture, const std::filesystem::path& file) {
  const auto bytes = png_bytes(thumbnail(picture, kThumbnail));
  std::error_code none;
  std::filesystem::create_directories(file.parent_path(), none);
  if (bytes) [[maybe_unused]]
    const auto kept = write_file_atomically(file, *bytes);
}

}  // namespace wrapgauge
