#include "app/picture/pdf_date.hpp"

#include <QByteArray>
#include <ctime>

namespace wrapgauge {
namespace {

constexpr const char* kZone = "TZ";
constexpr const char kFixed[] = "20000101000000";  // YYYYMMDDhhmmss

}  // namespace

PdfDateFixed::PdfDateFixed()
    : had_zone_(qEnvironmentVariableIsSet(kZone)), zone_(qgetenv(kZone).toStdString()) {
  qputenv(kZone, "UTC");
  tzset();
}

PdfDateFixed::~PdfDateFixed() {
  if (had_zone_)
    qputenv(kZone, QByteArray::fromStdString(zone_));
  else
    qunsetenv(kZone);
  tzset();
}

std::string without_date(std::string pdf) {
  for (const std::string key : {"/CreationDate (D:", "/ModDate (D:"})
    for (std::size_t at = pdf.find(key); at != std::string::npos; at = pdf.find(key, at + key.size()))
      for (std::size_t k = 0; k + 1 < sizeof kFixed; ++k) {
        char& digit = pdf[at + key.size() + k];
        if (digit < '0' || digit > '9') break;
        digit = kFixed[k];
      }
  return pdf;
}

}  // namespace wrapgauge
