#include "app/desk/views/filling_frames.hpp"

#include <QTemporaryDir>

#include "model/core/file.hpp"
#include "small_estimate.hpp"

namespace wrapgauge {
namespace {

struct Film {
  QTemporaryDir folder;
  std::filesystem::path to = std::filesystem::path(folder.path().toStdString()) / "film";
  Selection selection;
  std::vector<double> shown;

  Result<int> write(int count, int enough = 1000) {
    return write_filling_frames(
        to, selection, 4, count,
        [&] {
          shown.push_back(selection.filling());
          QImage image(8, 8, QImage::Format_RGB32);
          image.fill(Qt::white);
          return image;
        },
        [enough](int done) { return done < enough; });
  }
};

TEST(FillingFrames, RunFromTheFirstStateToTheLastInEvenSteps) {
  Film film;
  film.selection.show_filling(2.0);
  ASSERT_TRUE(film.write(7).ok());
  ASSERT_EQ(film.shown.size(), 7u);
  for (std::size_t k = 0; k < film.shown.size(); ++k) EXPECT_NEAR(film.shown[k], 0.5 * double(k), 1e-12);
  EXPECT_EQ(film.selection.filling(), 2.0) << "it is not shown where it was";
  EXPECT_FALSE(QImage(QString::fromStdString((film.to / "frame-006.png").string())).isNull());
}

TEST(FillingFrames, LeaveNothingWhenTheyAreGivenUp) {
  Film film;
  const auto written = film.write(7, 3);
  ASSERT_FALSE(written.ok());
  EXPECT_EQ(written.problem().kind, ProblemKind::kCancelled);
  EXPECT_FALSE(std::filesystem::exists(film.to));
}

TEST(FillingFrames, BecomeAFilmOfTheSamePicturesAndNothingIsLeftOfOneThatIsGivenUp) {
  Film film;
  const auto to = film.to.parent_path() / "filling.webp";
  const auto write = [&](int enough) {
    return write_filling_film(
        to, film.selection, 4, 7,
        [&] {
          film.shown.push_back(film.selection.filling());
          QImage image(8, 8, QImage::Format_RGB32);
          image.fill(QColor(int(30 * film.selection.filling()), 9, 9));
          return image;
        },
        [enough](int done) { return done < enough; });
  };
  const auto given_up = write(3);
  ASSERT_FALSE(given_up.ok());
  EXPECT_EQ(given_up.problem().kind, ProblemKind::kCancelled);
  EXPECT_FALSE(std::filesystem::exists(to));
  film.shown.clear();
  ASSERT_TRUE(write(1000).ok());
  EXPECT_EQ(film.shown, (std::vector{0.0, 0.5, 1.0, 1.5, 2.0, 2.5, 3.0}));
  const auto bytes = read_file(to);
  ASSERT_TRUE(bytes.ok());
  EXPECT_EQ(bytes->substr(0, 4) + bytes->substr(8, 4), "RIFFWEBP");
}

TEST(FillingFrames, NeverMixWithWhatIsThere) {
  Film film;
  ASSERT_TRUE(film.write(3).ok());
  const auto again = film.write(2);
  ASSERT_FALSE(again.ok());
  EXPECT_NE(again.problem().message.find("is there already"), std::string::npos);
  EXPECT_TRUE(std::filesystem::exists(film.to / "frame-002.png"));
}

}  // namespace
}  // namespace wrapgauge
