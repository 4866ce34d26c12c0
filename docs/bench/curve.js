// Torque and preload against the angle, from snug to yield and beyond.
"use strict";

(async () => {
  const questions = await library("curve");
  const degrees = (radians) => (radians * 180) / Math.PI;

  const draw = (state, coarse) => {
    const friction = band(state.mu, state.spread);
    const job = { thread: state.thread, class: state.class, grip: `${state.grip}mm`, "snug-torque": `${state.snug}N.m`,
      "thread-friction": friction, "bearing-friction": friction, points: coarse ? "30" : "150" };
    if (!coarse) linkWhole("curve", job);
    asking(() => {
      const found = questions.ask("curve", job);
      say(coarse ? "..." : headline(questions, "curve", job));
      picture(found, state.shows);
    });
  };

  const picture = (found, shows) => {
    const svg = place("picture");
    const lines = [["low_friction", "var(--low)", ""], ["nominal", "var(--text)", ""], ["high_friction", "var(--high)", "10 5"]];
    const size = shows === "torque" ? 1 : 1e3;
    const all = lines.flatMap(([name]) => found[name].points);
    const maximum = (of) => 1.05 * Math.max(...all.map(of));
    const { across, up } = axes(svg, { height: 340,
      x: { maximum: maximum((point) => degrees(point.angle)), title: "Angle from snug in degrees" },
      y: { maximum: maximum((point) => point[shows] / size), title: shows === "torque" ? "Torque in N·m" : "Preload in kN" } });
    for (const { name, start } of found.zones.slice(1)) {
      const x = across(degrees(start));
      svg.append(drawn("line", { x1: x, x2: x, y1: 16, y2: up(0), stroke: "var(--line)", "stroke-dasharray": "3 4" }), drawn("text", { x: x + 5, y: up(0) - 10 - 20 * (found.zones.findIndex((zone) => zone.name === name) % 2) }, name.replaceAll("_", " ")));
    }
    for (const [name, colour, dashes] of lines)
      svg.append(drawn("path", { d: path(found[name].points.map((point) => [across(degrees(point.angle)), up(point[shows] / size)])), fill: "none", stroke: colour, "stroke-width": 3, "stroke-dasharray": dashes }));
  };

  explorable(place("form"), [
    { key: "shows", label: "Show", choices: [["preload", "preload"], ["torque", "torque"]], value: "preload" },
    { key: "thread", label: "Thread", choices: SIZES, value: "M16" },
    { key: "class", label: "Property class", choices: MARKS, value: "8.8" },
    { key: "grip", label: "Steel that is clamped", min: 20, max: 200, step: 5, value: 55, show: (value) => `${value} mm` },
    { key: "snug", label: "Snug torque", min: 5, max: 150, step: 5, value: 40, show: (value) => `${value} N·m` },
    { key: "mu", label: "Friction in thread and face", min: 0.06, max: 0.25, step: 0.005, value: 0.12, show: (value) => value.toFixed(2) },
    { key: "spread", label: "How far friction may be off", min: 0, max: 50, step: 1, value: 33, show: (value) => `±${value} %` },
  ], draw);
})();
