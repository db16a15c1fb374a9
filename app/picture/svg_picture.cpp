#include "app/picture/svg_picture.hpp"

#include <QBuffer>
#include <QImage>
#include <QPaintEngine>
#include <QPainter>
#include <QPainterPath>
#include <QPixmap>

#include "model/core/number_text.hpp"
#include "model/core/xml_text.hpp"

namespace wrapgauge {
namespace {

std::string coordinate(double value) {
  return number_text(value, 7);
}

std::string opacity_of(const char* of, const QColor& colour) {
  return colour.alpha() == 255 ? ""
                               : std::string(" ") + of + "-opacity=\"" + coordinate(colour.alphaF()) + "\"";
}

std::string fill_of(const QBrush& brush) {
  if (brush.style() == Qt::NoBrush) return " fill=\"none\"";
  return " fill=\"" + brush.color().name().toStdString() + "\"" + opacity_of("fill", brush.color());
}

std::string stroke_of(const QPen& pen) {
  if (pen.style() == Qt::NoPen) return "";
  const double width = pen.widthF() > 0.0 ? pen.widthF() : 1.0;
  std::string out = " stroke=\"" + pen.color().name().toStdString() + "\" stroke-width=\"" +
                    coordinate(width) + "\"" + opacity_of("stroke", pen.color());
  if (pen.style() == Qt::SolidLine) return out;
  out += " stroke-dasharray=\"";
  const auto dashes = pen.dashPattern();
  for (qsizetype d = 0; d < dashes.size(); ++d)
    out.append(d ? " " : "").append(coordinate(dashes[d] * width));
  return out + "\"";
}

std::string path_data(const QPainterPath& path) {
  std::string data;
  for (int i = 0; i < path.elementCount(); ++i) {
    const QPainterPath::Element element = path.elementAt(i);
    if (element.type == QPainterPath::MoveToElement) data += "M";
    if (element.type == QPainterPath::LineToElement) data += "L";
    if (element.type == QPainterPath::CurveToElement) data += "C";
    if (element.type == QPainterPath::CurveToDataElement) data += " ";
    data += coordinate(element.x) + " " + coordinate(element.y);
  }
  return data;
}

std::string picture_data(const QImage& image) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  return bytes.toBase64().toStdString();
}

}  // namespace

class SvgPaintEngine : public QPaintEngine {
 public:
  SvgPaintEngine() : QPaintEngine(AllFeatures) {}

  bool begin(QPaintDevice*) override { return true; }
  bool end() override { return true; }
  void updateState(const QPaintEngineState&) override {}  // read from the painter where it is needed
  Type type() const override { return User; }

  void drawPath(const QPainterPath& path) override {
    add("<path d=\"" + path_data(path) + "\"" + fill_of(painter()->brush()) + stroke_of(painter()->pen()));
  }
  void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override {
    std::string data;
    for (int i = 0; i < count; ++i)
      data.append(i ? " " : "")
          .append(coordinate(points[i].x()))
          .append(",")
          .append(coordinate(points[i].y()));
    const bool open = mode == PolylineMode;
    add(std::string(open ? "<polyline" : "<polygon") + " points=\"" + data + "\"" +
        (open ? " fill=\"none\"" : fill_of(painter()->brush())) + stroke_of(painter()->pen()));
  }
  void drawTextItem(const QPointF& at, const QTextItem& item) override {
    const QFont font = item.font();
    const std::string words = xml_text(item.text().toStdString());
    if (words.find_first_not_of(' ') == std::string::npos) return;
    body += "<text x=\"" + coordinate(at.x()) + "\" y=\"" + coordinate(at.y()) + "\" font-size=\"" +
            std::to_string(font.pixelSize()) + "\"" + (font.bold() ? " font-weight=\"bold\"" : "") +
            " textLength=\"" + coordinate(item.width()) + "\" lengthAdjust=\"spacingAndGlyphs\" fill=\"" +
            painter()->pen().color().name().toStdString() + "\"" + moved() + ">" + words + "</text>\n";
  }
  void drawPixmap(const QRectF& to, const QPixmap& pixmap, const QRectF& from) override {
    drawImage(to, pixmap.toImage(), from, Qt::AutoColor);
  }
  void drawImage(const QRectF& to, const QImage& image, const QRectF& from,
                 Qt::ImageConversionFlags) override {
    add("<image x=\"" + coordinate(to.x()) + "\" y=\"" + coordinate(to.y()) + "\" width=\"" +
        coordinate(to.width()) + "\" height=\"" + coordinate(to.height()) +
        "\" xlink:href=\"data:image/png;base64," + picture_data(image.copy(from.toRect())) + "\"");
  }

  std::string body;

 private:
  std::string moved() const {
    const QTransform& t = painter()->transform();
    if (t.isIdentity()) return "";
    return " transform=\"matrix(" + coordinate(t.m11()) + " " + coordinate(t.m12()) + " " +
           coordinate(t.m21()) + " " + coordinate(t.m22()) + " " + coordinate(t.dx()) + " " +
           coordinate(t.dy()) + ")\"";
  }
  void add(const std::string& element) { body += element + moved() + "/>\n"; }
};

SvgPicture::SvgPicture(const QSize& pixels) : size_(pixels), engine_(std::make_unique<SvgPaintEngine>()) {}
SvgPicture::~SvgPicture() = default;

QPaintEngine* SvgPicture::paintEngine() const {
  return engine_.get();
}

int SvgPicture::metric(PaintDeviceMetric metric) const {
  constexpr int kDotsPerInch = 96;
  switch (metric) {
    case PdmWidth:
      return size_.width();
    case PdmHeight:
      return size_.height();
    case PdmWidthMM:
      return size_.width() * 254 / (10 * kDotsPerInch);
    case PdmHeightMM:
      return size_.height() * 254 / (10 * kDotsPerInch);
    case PdmDpiX:
    case PdmDpiY:
    case PdmPhysicalDpiX:
    case PdmPhysicalDpiY:
      return kDotsPerInch;
    case PdmDepth:
      return 32;
    case PdmNumColors:
      return 1 << 24;
    default:
      return QPaintDevice::metric(metric);
  }
}

std::string SvgPicture::bytes() const {
  const std::string width = std::to_string(size_.width()), height = std::to_string(size_.height());
  return "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"" +
         width + "\" height=\"" + height + "\" viewBox=\"0 0 " + width + " " + height +
         "\" font-family=\"DejaVu Sans, sans-serif\">\n<rect width=\"" + width + "\" height=\"" + height +
         "\" fill=\"#fcfcfd\"/>\n" + engine_->body + "</svg>\n";
}

}  // namespace wrapgauge
