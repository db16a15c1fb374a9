#include "app/desk/session/drawing_memory.hpp"

#include <QCryptographicHash>

#include "model/layout/drawing_map_json.hpp"

namespace wrapgauge {

std::filesystem::path DrawingMemory::place_of(const std::filesystem::path& drawing) const {
  std::error_code error;
  std::filesystem::path whole = std::filesystem::weakly_canonical(drawing, error);
  if (error) whole = std::filesystem::absolute(drawing, error);
  const QByteArray name = QByteArray::fromStdString(whole.string());
  const QByteArray mark = QCryptographicHash::hash(name, QCryptographicHash::Sha256).toHex().left(32);
  return folder_ / (mark.toStdString() + ".json");
}

std::optional<DrawingMap> DrawingMemory::of(const std::filesystem::path& drawing) const {
  std::error_code error;
  const auto place = place_of(drawing);
  if (!std::filesystem::exists(place, error)) return std::nullopt;
  auto map = read_drawing_map(place);
  return map ? std::optional(std::move(map).value()) : std::nullopt;
}

void DrawingMemory::keep(const std::filesystem::path& drawing, const DrawingMap& map) const {
  std::error_code error;
  std::filesystem::create_directories(folder_, error);
  if (!error) (void)write_drawing_map(map, place_of(drawing));
}

}  // namespace wrapgauge
