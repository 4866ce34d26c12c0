// Square drives and hexagon keys: the figures of the standards.
#pragma once

#include <cstddef>

#include "tauten/base/quantity.hpp"
#include "tauten/base/source.hpp"

namespace tauten::TAUTEN_ABI {

/// A square drive. The torques are from memory: a hint.
struct SquareDrive {
  const char* inch;
  Length nominal;             ///< the metric name of the size
  Length male;                ///< maximum width of the male square
  Torque socket_test_torque;  ///< maximum test torque of a hand-operated socket with this drive
  Torque driver_test_torque;  ///< test torque of bars, ratchets and adaptors
};

inline constexpr SquareDrive square_drives[] = {
    {"1/4", Length(6.3e-3), Length(6.35e-3), Torque(68.6), Torque(62.0)},
    {"3/8", Length(10e-3), Length(9.53e-3), Torque(225.0), Torque(202.0)},
    {"1/2", Length(12.5e-3), Length(12.7e-3), Torque(569.0), Torque(512.0)},
    {"3/4", Length(20e-3), Length(19.05e-3), Torque(1569.0), Torque(1412.0)},
    {"1", Length(25e-3), Length(25.4e-3), Torque(2745.0), Torque(2471.0)},
};
inline constexpr Source square_drive_sources[] = {{"ISO 1174-1", "widths of driving squares", Seen::memory},
                                                  {"ISO 1711-1", "maximum test torque per drive", Seen::memory},
                                                  {"ISO 3315", "test torques of driving parts", Seen::memory}};

/// \param width  metric name or width of the square; 12.5 mm and 12.7 mm both mean 1/2 inch
/// \return the drive, or nullptr if the width is more than 0.6 mm off every size
constexpr const SquareDrive* find_square_drive(Length width) noexcept {
  for (const SquareDrive& drive : square_drives) {
    const double off = width.si - drive.male.si;
    const double off_name = width.si - drive.nominal.si;
    if ((off > -0.6e-3 && off < 0.6e-3) || (off_name > -0.6e-3 && off_name < 0.6e-3)) return &drive;
  }
  return nullptr;
}

/// A hexagon key: minimum hardness and test torque.
struct HexagonKey {
  Length width;  ///< across the flats
  Torque test_torque;
  double hardness;  ///< HRC, at least
  Seen seen;
};

inline constexpr HexagonKey hexagon_keys[] = {
    {Length(0.7e-3), Torque(0.08), 52, Seen::once},   {Length(0.9e-3), Torque(0.18), 52, Seen::once},
    {Length(1.3e-3), Torque(0.53), 52, Seen::once},   {Length(1.5e-3), Torque(0.82), 52, Seen::once},
    {Length(2e-3), Torque(1.9), 52, Seen::once},      {Length(2.5e-3), Torque(3.8), 52, Seen::once},
    {Length(3e-3), Torque(6.6), 52, Seen::once},      {Length(3.5e-3), Torque(10.3), 52, Seen::memory},
    {Length(4e-3), Torque(16.0), 52, Seen::once},     {Length(4.5e-3), Torque(22.0), 52, Seen::memory},
    {Length(5e-3), Torque(30.0), 52, Seen::once},     {Length(6e-3), Torque(52.0), 52, Seen::once},
    {Length(7e-3), Torque(80.0), 52, Seen::memory},   {Length(8e-3), Torque(120.0), 52, Seen::once},
    {Length(9e-3), Torque(165.0), 48, Seen::memory},  {Length(10e-3), Torque(220.0), 48, Seen::once},
    {Length(11e-3), Torque(282.0), 48, Seen::memory}, {Length(12e-3), Torque(370.0), 48, Seen::once},
    {Length(13e-3), Torque(470.0), 48, Seen::memory}, {Length(14e-3), Torque(590.0), 48, Seen::once},
    {Length(15e-3), Torque(725.0), 48, Seen::memory}, {Length(16e-3), Torque(880.0), 48, Seen::memory},
    {Length(17e-3), Torque(980.0), 45, Seen::once},   {Length(18e-3), Torque(1158.0), 45, Seen::memory},
    {Length(19e-3), Torque(1360.0), 45, Seen::once},  {Length(21e-3), Torque(1840.0), 45, Seen::memory},
    {Length(22e-3), Torque(2110.0), 45, Seen::once},  {Length(23e-3), Torque(2414.0), 45, Seen::memory},
    {Length(24e-3), Torque(2750.0), 45, Seen::once},  {Length(27e-3), Torque(3910.0), 45, Seen::memory},
};
inline constexpr Source hexagon_key_sources[] = {{"JIS B 4648:2008", "Table 1 (matches ISO 2936)", Seen::once},
                                                 {"ISO 2936:2014", "test torques", Seen::memory}};

/// \param width  across the flats
/// \return the key of this size, or nullptr
constexpr const HexagonKey* find_hexagon_key(Length width) noexcept {
  for (const HexagonKey& key : hexagon_keys) {
    const double off = width.si - key.width.si;
    if (off > -1e-5 && off < 1e-5) return &key;
  }
  return nullptr;
}

}  // namespace tauten::TAUTEN_ABI
