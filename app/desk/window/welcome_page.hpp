#pragma once
// Where to begin: what one has, or a plan that was open before.

#include <QDialog>
#include <QStringList>
#include <filesystem>

namespace wrapgauge {

enum class Door { kScan, kGirths, kDrawing, kExample };

class WelcomePage : public QDialog {
  Q_OBJECT
 public:
  // `recent`: plan files, newest first. `thumbnails`: the folder that thumbnail_file names files in.
  WelcomePage(const QStringList& recent, const std::filesystem::path& thumbnails, QWidget* parent = nullptr);

 signals:
  void doorChosen(Door door);
  void planChosen(const QString& file);

 private:
  QWidget* doors();
  QWidget* plans(const QStringList& recent, const std::filesystem::path& thumbnails);
};

// A name for each plan file, whatever its path.
std::filesystem::path thumbnail_file(const std::filesystem::path& thumbnails,
                                     const std::filesystem::path& plan_file);
// Small, as the page shows it. One that cannot be written is left out: the plan is none the worse for it.
void keep_thumbnail(const QImage& picture, const std::filesystem::path& file);

}  // namespace wrapgauge
