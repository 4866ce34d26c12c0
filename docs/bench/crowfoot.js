// What to set on a wrench while its offset extension turns.
"use strict";

(async () => {
  const [questions, formulas] = await Promise.all([library("reach"), library("formulas")]);
  const millimetres = (value) => `${value} mm`;

  const draw = (state, coarse) => {
    const job = { torque: `${state.torque}N.m`, "wrench-length": `${state.wrench}mm`, extension: `${state.extension}mm@${state.angle}deg` };
    if (!coarse) linkWhole("reach", job);
    asking(() => {
      const found = questions.ask("reach", job);
      say(headline(questions, "reach", job));
      picture(found, state);
      if (!coarse) place("filled").innerHTML = filledIn(formulas, found.steps.find(({ formula }) => formula === "wrench_setting"));
    });
  };

  // Seen from above, tightening clockwise: the hand at the left, the drive of the wrench at the middle, the fastener at the end of
  // the extension. The library says where that is, along the wrench and across it.
  const picture = ({ extension, setting, arrives }, state) => {
    const svg = place("picture");
    svg.replaceChildren();
    const width = widthOf(svg);
    const height = 280;
    svg.setAttribute("viewBox", `0 0 ${width} ${height}`);
    const scale = (width - 60) / 1030; // px for a millimetre: the longest wrench with the longest extension straight on
    const drive = [30 + 800 * scale, height / 2 + 10];
    const hand = [drive[0] - state.wrench * scale, drive[1]];
    const bolt = [drive[0] + extension.along * 1e3 * scale, drive[1] - extension.across * 1e3 * scale];
    const bar = (from, to, width, colour) => drawn("line", { x1: from[0], y1: from[1], x2: to[0], y2: to[1], stroke: colour, "stroke-width": width, "stroke-linecap": "round" });
    svg.append(bar(hand, drive, 10, "var(--line)"), bar([hand[0] - 8, hand[1]], [hand[0] + 50, hand[1]], 18, "var(--accent)"), bar(drive, bolt, 14, "var(--band)"),
      drawn("rect", { x: drive[0] - 7, y: drive[1] - 7, width: 14, height: 14, fill: "var(--text)" }),
      drawn("circle", { cx: bolt[0], cy: bolt[1], r: 13, fill: "var(--panel)", stroke: "var(--high)", "stroke-width": 4 }),
      drawn("path", { d: `M${hand[0]} ${hand[1] - 14}v-42m-7 12l7 -12l7 12`, fill: "none", stroke: "var(--text)", "stroke-width": 3 }),
      drawn("text", { x: Math.max(hand[0], 30), y: hand[1] - 64, "text-anchor": "middle" }, "pull"),
      drawn("text", { x: (hand[0] + drive[0]) / 2, y: drive[1] - 18, "text-anchor": "middle" }, `set ${significant(setting)} N·m`),
      drawn("text", { x: Math.min(bolt[0], width - 90), y: bolt[1] < drive[1] - 10 ? bolt[1] - 24 : bolt[1] + 40, "text-anchor": "middle" },
        `${significant(arrives.low)} to ${significant(arrives.high)} N·m arrive`),
      drawn("path", { d: `M20 ${height - 30}h${200 * scale}m0 -5v10m-${200 * scale} -10v10`, stroke: "var(--text)", fill: "none" }),
      drawn("text", { x: 20 + 100 * scale, y: height - 8, "text-anchor": "middle" }, "200 mm"));
  };

  explorable(place("form"), [
    { key: "angle", label: "Angle of the extension", min: 0, max: 180, step: 1, value: 45, show: (value) => `${value}°` },
    { key: "torque", label: "Torque wanted at the fastener", min: 20, max: 400, step: 1, value: 130, show: (value) => `${value} N·m` },
    { key: "wrench", label: "Drive to middle of the hand", min: 200, max: 800, step: 5, value: 400, show: millimetres },
    { key: "extension", label: "Length of the extension", min: 25, max: 190, step: 5, value: 100, show: millimetres },
  ], draw);
})();
