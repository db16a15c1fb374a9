#pragma once
// Variants of a plan side by side: their maps at one scale with one colour bar, and the curves of their
// chambers.

#include <QPainter>
#include <QStringList>
#include <functional>
#include <optional>
#include <vector>

#include "model/core/result.hpp"
#include "model/layout/flat_mesh.hpp"
#include "model/study/variant_run.hpp"

namespace wrapgauge {

struct VariantTile {
  QString name, verdict;                        // what is changed; what it came to
  std::optional<FlatMesh> flat;                 // none: there are no figures
  Eigen::VectorXd pressure_pa, share_of_limit;  // a flat vertex each
  std::vector<int> limits_pa;
  QString reason;  // why there are no figures
};

struct VariantsPage {
  QString title, subtitle;
  std::vector<VariantTile> tiles;
  int columns = 2;
  double model_factor = 1.5;
  QStringList caption;
};

inline constexpr std::size_t kMostTiles = 24, kMostCurves = 12;

QSize size_of(const VariantsPage& page);
void draw_variants(const VariantsPage& page, QPainter& painter);

struct VariantCurves {
  QString name;
  std::vector<ChamberCurve> chambers;
};

struct CurvesPage {
  QString title, subtitle;
  std::vector<VariantCurves> variants;
  QStringList caption;
};

QSize size_of(const CurvesPage& page);
void draw_curves(const CurvesPage& page, QPainter& painter);

// A page of that size as the bytes of a file.
using DrawPage = std::function<void(QPainter&)>;
Result<std::string> page_png(const QSize& size, const DrawPage& draw);
std::string page_svg(const QSize& size, const DrawPage& draw);

}  // namespace wrapgauge
