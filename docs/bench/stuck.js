// How a stuck bolt ends against the torque, and what each aid changes.
"use strict";

(async () => {
  const questions = await library("free");
  const { rust } = questions.catalogue.questions.free.keys;
  const percent = (share) => `${significant(100 * share, 2)} %`;
  // What comes free is cut off, as on the library's page: none reads as certain.
  const freed = (share) => share < 0.1 ? percent(share) : `${Math.floor(100 * share)} %`;

  const draw = (state, coarse) => {
    const job = { thread: state.thread, class: state.class, rust: state.rust, trials: coarse ? "1000" : "40000" };
    if (state.aid) job.aid = state.aid;
    if (!coarse) linkWhole("free", job);
    asking(() => {
      const found = questions.ask("free", job);
      say(coarse ? `Stop at ${settable(found.steps[0].stop_at)} N·m` : headline(questions, "free", job));
      picture(found);
      if (coarse) return;
      place("aids").replaceChildren(table(["aids, one after another", "stop at", "freed by then, all lines", "shears on this line", "rounds off"],
        found.steps.map(({ aids, stop_at, freed_by, chances }) => [aids.map(words).join(", then ") || "torque alone",
          stop_at ? `${settable(stop_at)} N·m` : "-", freed(freed_by), percent(chances.shear), percent(chances.round)])));
      foldTables(place("aids"));
    });
  };
  const words = ({ aid, soak_hours: hours }) => aid.replaceAll("_", " ") + (hours ? ` ${hours} h` : "");

  // Shares piled up at each torque: what comes free at the bottom, what does not move at the top.
  const picture = ({ curve, steps: [{ stop_at: stop }] }) => {
    const svg = place("picture");
    const { across, up } = axes(svg, { height: 340, x: { maximum: curve.at(-1).limit, title: "Torque that is not exceeded, in N·m" }, y: { maximum: 1, percent: true, title: "Share of such bolts" } });
    const ends = ["free", "shear", "round", "tool", "not_moving"];
    const colours = ["var(--free)", "var(--shear)", "var(--round)", "var(--tool)", "var(--still)"];
    const below = curve.map(() => 0);
    ends.forEach((end, n) => {
      const bottom = curve.map((point, i) => [across(point.limit), up(Math.min(1, below[i]))]);
      curve.forEach((point, i) => (below[i] += point[end]));
      const top = curve.map((point, i) => [across(point.limit), up(Math.min(1, below[i]))]);
      svg.append(drawn("path", { d: path([...bottom, ...top.reverse()]) + "Z", fill: colours[n] }));
    });
    svg.append(drawn("line", { x1: across(stop), x2: across(stop), y1: 16, y2: up(0), stroke: "var(--text)", "stroke-width": 3 }),
      drawn("text", { x: across(stop) - 8, y: 34, "text-anchor": "end" }, `stop at ${settable(stop)} N·m`));
  };

  explorable(place("form"), [
    { key: "thread", label: "Thread", choices: SIZES, value: "M16" },
    { key: "class", label: "Property class", choices: [...MARKS, "A2-70", "A4-70"], value: "8.8" },
    { key: "rust", label: "State", choices: rust.words, value: "rusted" },
    { key: "aid", label: "Aid already used", choices: [["", "none"], "brush", ["fluid:1h", "fluid, one hour"], ["fluid:24h", "fluid, one day"],
      ["heat:150K", "heat, by 150 K"], ["tighten_first", "tightened first"], ["impact", "impact wrench"]], value: "" },
  ], draw);
})();
