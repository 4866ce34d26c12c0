// Torque and preload against the angle, from snug to yield and beyond.
"use strict";

(async () => {
  const questions = await library("curve");
  const place = (id) => document.getElementById(id);
  const marks = questions.catalogue.questions.curve.keys.class.words.filter((mark) => /^\d+\.\d$/.test(mark));
  const degrees = (radians) => (radians * 180) / Math.PI;

  const draw = (state, coarse) => {
    const friction = [1 - state.spread / 100, 1, 1 + state.spread / 100].map((part) => (state.mu * part).toFixed(4)).join("..");
    const job = { thread: state.thread, class: state.class, grip: `${state.grip}mm`, "snug-torque": `${state.snug}N.m`,
      "thread-friction": friction, "bearing-friction": friction, points: coarse ? "30" : "150" };
    try {
      const found = questions.ask("curve", job);
      say(place("says"), coarse ? "..." : questions.page("curve", job, "text").split("\n\n")[0].replaceAll("\n", " "));
      picture(found, state.shows);
    } catch (error) {
      if (error.name !== "TautenError") throw error;
      tell(place("says"), error);
    }
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
      svg.append(drawn("line", { x1: x, x2: x, y1: 16, y2: up(0), stroke: "var(--line)", "stroke-dasharray": "3 4" }), drawn("text", { x: x + 5, y: 30 + 20 * (found.zones.findIndex((zone) => zone.name === name) % 2) }, name.replaceAll("_", " ")));
    }
    for (const [name, colour, dashes] of lines)
      svg.append(drawn("path", { d: path(found[name].points.map((point) => [across(degrees(point.angle)), up(point[shows] / size)])), fill: "none", stroke: colour, "stroke-width": 3, "stroke-dasharray": dashes }));
  };

  explorable(place("form"), [
    { key: "shows", label: "Show", choices: [["preload", "preload"], ["torque", "torque"]], value: "preload" },
    { key: "thread", label: "Thread", choices: ["M8", "M10", "M12", "M16", "M20", "M24"], value: "M16" },
    { key: "class", label: "Property class", choices: marks, value: "8.8" },
    { key: "grip", label: "Steel that is clamped", min: 20, max: 200, step: 5, value: 55, show: (value) => `${value} mm` },
    { key: "snug", label: "Snug torque", min: 5, max: 150, step: 5, value: 40, show: (value) => `${value} N·m` },
    { key: "mu", label: "Friction in thread and face", min: 0.06, max: 0.25, step: 0.005, value: 0.12, show: (value) => value.toFixed(2) },
    { key: "spread", label: "How far friction may be off", min: 0, max: 50, step: 1, value: 33, show: (value) => `±${value} %` },
  ], draw);
})();
