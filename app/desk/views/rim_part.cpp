#include "app/desk/views/rim_part.hpp"

#include <QCoreApplication>

#include "app/desk/views/flat_items.hpp"
#include "app/desk/words/phrase_text.hpp"

namespace wrapgauge {
namespace {

struct RimWords {
  Q_DECLARE_TR_FUNCTIONS(wrapgauge::RimWords)
};

constexpr double kRimLift_m = 1.5e-3;  // towards the eye

SceneLines halo_of(const Points3& ends_m, double width) {
  return {ends_m, width + 2.5, QColor(255, 255, 255), kRimLift_m - 0.2e-3};
}

// From point to point as pieces.
Points3 pieces_of(const Points3& along_m) {
  Points3 ends(2 * std::max<Eigen::Index>(along_m.rows() - 1, 0), 3);
  for (Eigen::Index k = 0; k + 1 < along_m.rows(); ++k) {
    ends.row(2 * k) = along_m.row(k);
    ends.row(2 * k + 1) = along_m.row(k + 1);
  }
  return ends;
}

}  // namespace

std::optional<Vec3> gap_place(const ShownPlan& shown) {
  if (!shown.rim() || !shown.rim()->gap) return std::nullopt;
  const Points3& along_m = shown.rim()->gap->along_m;
  return Vec3(along_m.row(along_m.rows() / 2));
}

ScenePart rim_part(const ShownPlan& shown) {
  ScenePart part;
  if (!shown.rim() || !shown.skin()) return part;
  const LaidRim& rim = *shown.rim();
  constexpr double kLine = 2.2, kGap = 4.5;  // pixels
  if (rim.ends_m.rows() > 0) {
    part.lines.push_back(halo_of(rim.ends_m, kLine));
    part.lines.push_back({rim.ends_m, kLine, kChosenBlue, kRimLift_m});
  }
  if (!rim.gap) return part;
  const Points3 gap = pieces_of(rim.gap->along_m);
  part.lines.push_back(halo_of(gap, kGap));
  part.lines.push_back({gap, kGap, QColor(200, 30, 30), kRimLift_m});
  const Vec3 middle = *gap_place(shown);
  part.labels.push_back({middle, shown.skin()->at(middle).normal,
                         RimWords::tr("gap: %1 mm").arg(fixed_words(rim.gap->missing / mm, 1))});
  return part;
}

QString rim_words(const ShownPlan& shown) {
  if (!shown.rim()) return {};
  QStringList words;
  if (shown.rim()->gap)
    words += RimWords::tr("The ends do not meet: the layout is %1 mm too short.")
                 .arg(fixed_words(shown.rim()->gap->missing / mm, 1));
  if (shown.rim()->cut) words += RimWords::tr("Part of the layout lies beyond the end of the body.");
  return words.join(u' ');
}

}  // namespace wrapgauge
