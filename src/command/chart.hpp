// Charts to print: tables of answers over sizes, angles or torques, with their sources and cautions.
#pragma once

#include <string>
#include <vector>

#include "command/json.hpp"
#include "sheet/sheet.hpp"

namespace tauten::command {

using sheet::Sheet;
using sheet::sheet_as;
using sheet::SheetBlock;
using sheet::SheetSection;

/// A line of a diagram.
struct ChartLine {
  std::string name;
  std::vector<std::pair<double, double>> points;
};

/// A diagram with its axes from zero.
struct ChartDiagram {
  std::string across, up;  ///< what the axes show, with unit
  std::vector<ChartLine> lines;
};

/// \return the diagram as SVG; lines differ in colour and in dashes, and are named at their ends
std::string diagram_svg(const ChartDiagram& diagram);

/// \return all of the sheet on one page of A4, as SVG in the size of the paper; what is too long for it is made smaller
std::string sheet_svg(const Sheet& sheet);

/// A chart: the sheet, and the figures behind it, one record for each, in SI.
struct Chart {
  Sheet sheet;
  Json figures = Json::array();
};

}  // namespace tauten::command
