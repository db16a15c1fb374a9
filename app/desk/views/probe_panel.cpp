#include "app/desk/views/probe_panel.hpp"

#include <QLabel>
#include <QVBoxLayout>
#include <cmath>
#include <utility>

#include "app/desk/views/flat_words.hpp"
#include "app/desk/views/pressure_words.hpp"
#include "app/desk/views/save_views.hpp"
#include "app/desk/views/skin_probe.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

using Rows = std::vector<std::pair<QString, QString>>;

Rows rows_of(const PlaceReading& reading, PressureUnit unit, double model_factor) {
  Rows rows;
  const QString site = QString::fromStdString(reading.site);
  const QString station = fixed_words(1e3 * reading.station_m, 0) + " mm";
  rows.emplace_back(
      QObject::tr("Place"),
      reading.angle_deg
          ? QObject::tr("%1 from the distal end, %2°").arg(station, fixed_words(*reading.angle_deg, 0))
          : QObject::tr("%1 from the distal end").arg(station));
  if (!site.isEmpty()) rows.emplace_back(QObject::tr("Bony site"), site);
  if (!reading.pressure) return rows;
  rows.emplace_back(QObject::tr("Under"),
                    reading.part.empty() ? QObject::tr("nothing") : QString::fromStdString(reading.part));
  rows.emplace_back(QObject::tr("Contact pressure"), pressure_words(*reading.pressure, unit));
  if (reading.mean_1cm2)
    rows.emplace_back(QObject::tr("Mean over 1 cm²"), pressure_words(*reading.mean_1cm2, unit));
  if (reading.limit && reading.limit->si() > 0.0 && std::isfinite(reading.limit->si())) {
    rows.emplace_back(QObject::tr("Limit there"), pressure_words(*reading.limit, unit));
    rows.emplace_back(QObject::tr("Share of limit"), QObject::tr("%1 % after the model factor %2")
                                                         .arg(fixed_words(100.0 * *reading.share, 0),
                                                              figures_text(number_text(model_factor, 3))));
  }
  if (reading.tissue_depth)
    rows.emplace_back(QObject::tr("Tissue depth"), millimetres(reading.tissue_depth->si()) + " mm");
  if (reading.indentation)
    rows.emplace_back(QObject::tr("Skin lowered by"), millimetres(reading.indentation->si()) + " mm");
  return rows;
}

Rows shown_rows(const ShownPlan& shown, const Selection& selection) {
  if (!selection.place_m()) return {};
  const auto reading = read_place(shown, selection.state(), *selection.place_m());
  if (!reading) return {};
  const double factor = shown.estimate() ? shown.estimate()->limits.model_factor : 1.0;
  return rows_of(*reading, selection.unit(), factor);
}

}  // namespace

ProbePanel::ProbePanel(const ShownPlan& shown, Selection& selection, QWidget* parent)
    : QWidget(parent), shown_(shown), selection_(selection), rows_(new QLabel(this)) {
  setAccessibleName(tr("What is known of the picked place"));
  rows_->setTextFormat(Qt::RichText);
  rows_->setWordWrap(true);
  rows_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  auto* box = new QVBoxLayout(this);
  box->addWidget(rows_);
  box->addStretch();
  offer_copy(this, [this] { return text(); });
  for (const auto signal : {&Selection::placeChanged, &Selection::stateChanged, &Selection::unitChanged})
    connect(&selection_, signal, this, &ProbePanel::refresh);
  connect(&shown_, &ShownPlan::estimateChanged, this, &ProbePanel::refresh);
  connect(&shown_, &ShownPlan::bodyChanged, this, &ProbePanel::refresh);
  connect(&shown_, &ShownPlan::stateRead, this, &ProbePanel::refresh);
  connect(&shown_, &ShownPlan::staleChanged, this, &ProbePanel::refresh);
  refresh();
}

QString ProbePanel::text() const {
  QString words;
  for (const auto& [name, value] : shown_rows(shown_, selection_)) words += name + '\t' + value + '\n';
  return words;
}

void ProbePanel::refresh() {
  QString rows;
  for (const auto& [name, value] : shown_rows(shown_, selection_))
    rows += "<tr><td style='padding-right:12px'>" + name.toHtmlEscaped() + "</td><td><b>" +
            value.toHtmlEscaped() + "</b></td></tr>";
  if (rows.isEmpty())
    rows_->setText(tr("Click a place on the body to read its pressure, limit and tissue depth."));
  else
    rows_->setText("<table>" + rows + "</table>" +
                   (shown_.stale().isEmpty() ? QString() : "<p>" + shown_.stale().toHtmlEscaped() + "</p>"));
  rows_->setAccessibleDescription(text());
}

}  // namespace wrapgauge
