#include "app/picture/template_pdf.hpp"

#include <QBuffer>
#include <QFontInfo>
#include <QPainter>
#include <QPdfWriter>

#include "app/picture/pdf_date.hpp"
#include "app/picture/template_page.hpp"
#include "model/core/version.hpp"

namespace wrapgauge {
namespace {

constexpr int kDotsPerInch = 1200;  // 0.02 mm

// Everything is drawn in millimetres of the page, y downwards.
void use_millimetres(QPainter& painter) {
  painter.scale(kDotsPerInch / 25.4, kDotsPerInch / 25.4);
}

bool begin_pages(QPdfWriter& writer, const TemplatePages& pages, const std::string& name) {
  writer.setResolution(kDotsPerInch);
  writer.setTitle(QString::fromStdString(name + ", template 1:1"));
  writer.setCreator(QString::fromStdString("wrapgauge " + std::string(program_version())));
  const QPageSize size(QSizeF(pages.paper.width / mm, pages.paper.height / mm), QPageSize::Millimeter,
                       QString::fromStdString(pages.paper.name), QPageSize::ExactMatch);
  return writer.setPageLayout(
      QPageLayout(size, pages.lying ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)));
}

}  // namespace

Result<std::string> template_pdf(const TemplateDrawing& drawing, const TemplatePages& pages) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  {
    const PdfDateFixed no_time_zone;
    QPdfWriter writer(&buffer);
    QPainter painter;
    if (!begin_pages(writer, pages, drawing.name) || !painter.begin(&writer))
      return bad_input(Phrase::worded("the template's pages could not be laid out as PDF."));
    const auto draw = [&](const auto& page) {
      painter.save();
      use_millimetres(painter);
      page();
      painter.restore();
    };
    draw([&] { draw_template_overview(painter, drawing, pages); });
    for (std::size_t i = 0; i < pages.pages.size(); ++i) {
      writer.newPage();
      draw([&] { draw_template_page(painter, drawing, pages, i); });
    }
    painter.end();
  }
  return without_date(bytes.toStdString());
}

}  // namespace wrapgauge
