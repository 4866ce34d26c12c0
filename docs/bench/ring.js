// Bolts in a ring, tightened one after another.
"use strict";

(async () => {
  const questions = await library("group");
  let steps = 1;

  const draw = (state, coarse) => {
    const job = { pattern: `circle:${state.bolts}:${25 * state.bolts}mm`, method: state.method, interaction: String(state.interaction), load: "40kN", shortfall: "5%" };
    if (!coarse) linkWhole("sequence", job);
    asking(() => {
      const found = questions.ask("sequence", job);
      steps = found.history.length;
      controls.step.input.max = steps;
      const step = Math.min(state.step, steps);
      const turned = found.passes.flatMap(({ order }) => order)[step - 1];
      const needed = found.passes_needed == null ? "" : ` Within 5 % of one load after ${found.passes_needed} passes at the full torque.`;
      say(`Step ${step} of ${steps}: bolt ${turned} is tightened.${needed}`);
      picture(found.history[step - 1], turned, 40e3);
      if (coarse) return;
      const kilo = (load) => `${significant(load / 1e3)} kN`;
      place("passes").replaceChildren(table(["pass", "share of the torque", "order", "lowest load", "highest load"],
        found.passes.map(({ share, order, loads }, n) => [n + 1, `${significant(100 * share)} %`, order.join(" "), kilo(Math.min(...loads)), kilo(Math.max(...loads))])));
      foldTables(place("passes"));
    });
  };

  // The ring, and beside each bolt its load as a bar that points outward; the dashed circle is the wanted load.
  const picture = (loads, turned, wanted) => {
    const svg = place("picture");
    svg.replaceChildren();
    const size = Math.min(widthOf(svg), 440);
    svg.setAttribute("viewBox", `0 0 ${widthOf(svg)} ${size}`);
    const [x, y, ring, most] = [widthOf(svg) / 2, size / 2, 0.22 * size, 0.17 * size];
    const reach = (load) => ring + 18 + (most * load) / wanted;
    svg.append(drawn("circle", { cx: x, cy: y, r: ring, fill: "none", stroke: "var(--line)", "stroke-width": 22 }),
      drawn("circle", { cx: x, cy: y, r: reach(wanted), fill: "none", stroke: "var(--proof)", "stroke-width": 2, "stroke-dasharray": "6 5" }),
      drawn("text", { x, y: y + 6, "text-anchor": "middle" }, `wanted ${significant(wanted / 1e3)} kN`));
    loads.forEach((load, n) => {
      // Clockwise from the top, as the library numbers a circle.
      const turn = (2 * Math.PI * n) / loads.length;
      const at = (radius) => [x + radius * Math.sin(turn), y - radius * Math.cos(turn)];
      const [from, to, centre] = [at(ring + 18), at(reach(load)), at(ring)];
      svg.append(drawn("line", { x1: from[0], y1: from[1], x2: to[0], y2: to[1], stroke: n + 1 === turned ? "var(--high)" : "var(--low)", "stroke-width": 16 }),
        drawn("circle", { class: "bolt", cx: centre[0], cy: centre[1], r: 14, fill: "var(--ground)", stroke: n + 1 === turned ? "var(--high)" : "var(--text)", "stroke-width": n + 1 === turned ? 4 : 2 }),
        drawn("text", { x: centre[0], y: centre[1] + 5, "text-anchor": "middle" }, String(n + 1)));
      if (loads.length <= 12) {
        const label = at(Math.min(reach(load) + 20, size / 2 - 14));
        svg.append(drawn("text", { x: label[0], y: label[1] + 5, "text-anchor": "middle" }, significant(load / 1e3, 2)));
      }
    });
  };

  const list = [
    { key: "bolts", label: "Bolts", min: 4, max: 24, step: 2, value: 8, show: String },
    { key: "method", label: "Order", choices: ["crosswise", "circular"], value: "crosswise" },
    { key: "interaction", label: "What a neighbour loses, per load gained", min: 0, max: 0.45, step: 0.01, value: 0.2, show: (value) => value.toFixed(2) },
    { key: "step", label: "Step", min: 1, max: 32, step: 1, value: 9, show: String },
  ];
  const controls = Object.fromEntries(list.map((control) => [control.key, control]));
  const { state, moved } = await explorable(place("form"), list, draw);
  const go = (by) => {
    state.step = Math.max(1, Math.min(steps, state.step + by));
    controls.step.input.value = state.step;
    moved();
  };
  place("back").addEventListener("click", () => go(-1));
  place("on").addEventListener("click", () => go(1));
})();
