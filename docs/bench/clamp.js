// Clamp load of one bolt while torque, friction and class move.
"use strict";

(async () => {
  const [questions, formulas] = await Promise.all([library("clamp"), library("formulas")]);
  const two = (value) => value.toFixed(2);

  /** The step that gave the typical load: the library names its formula and inputs. */
  const typical = ({ formula, note }) => formula.startsWith("preload_from_torque") && note === "at nominal friction";

  const draw = (state, coarse) => {
    const job = { thread: state.thread, class: state.class, torque: `${state.torque}N.m`,
      "thread-friction": band(state.mu_thread, state.spread), "bearing-friction": band(state.mu_face, state.spread) };
    if (!coarse) linkWhole("clamp", job);
    asking(() => {
      const [bolt] = questions.ask("clamp", job).candidates;
      const given = Object.fromEntries(bolt.given.map(({ name, value }) => [name, value.nominal]));
      const area = formulas.evaluate("stress_area", { diameter: given.diameter, pitch: given.pitch }).value;
      const tensile = formulas.evaluate("load_at_stress", { stress_area: area, stress: given.tensile_strength }).value;
      say(bolt.summary);
      picture(bolt, tensile);
      if (!coarse) {
        const step = bolt.steps.find(typical); // none where even the typical bolt breaks
        place("filled").innerHTML = step ? filledIn(formulas, step) : "";
      }
      // The torque goes as far as the library's range of torques for this bolt.
      controls.torque.input.max = Math.ceil(bolt.typical_torque.high / 10) * 10;
    });
  };

  const picture = ({ clamp_load: load, proof_load: proof }, tensile) => {
    const svg = place("picture");
    const kilo = (newtons) => newtons / 1e3;
    const maximum = 1.15 * kilo(tensile);
    const { across, up } = axes(svg, { height: 230, x: { maximum, title: "Clamp load of one bolt in kN" }, y: { maximum: 0, title: "" }, left: 24, top: 60 });
    const line = (value, colour, text, level) => svg.append(
      drawn("line", { x1: across(kilo(value)), x2: across(kilo(value)), y1: level + 6, y2: up(0), stroke: colour, "stroke-width": 3 }),
      drawn("text", { x: across(kilo(value)), y: level, "text-anchor": across(kilo(value)) > 170 ? "end" : "start" }, `${text} ${significant(kilo(value))} kN`));
    const shown = (value) => Math.min(kilo(value), maximum); // a load beyond the axis ends at its edge
    if (load.high != null) {
      svg.append(drawn("rect", { x: across(shown(load.low)), y: 84, width: across(shown(load.high)) - across(shown(load.low)), height: 56, fill: "var(--band)", stroke: "var(--line)" }),
        drawn("line", { x1: across(shown(load.nominal)), x2: across(shown(load.nominal)), y1: 76, y2: 148, stroke: "var(--text)", "stroke-width": 3 }),
        drawn("text", { x: across(shown(load.nominal)), y: 168, "text-anchor": "middle" }, `${significant(kilo(load.nominal))} kN`));
    }
    line(proof, "var(--proof)", "proof load", 46);
    line(tensile, "var(--tensile)", "tensile strength", 22);
  };

  const list = [
    { key: "thread", label: "Thread", choices: SIZES, value: "M16" },
    { key: "class", label: "Property class", choices: MARKS, value: "8.8" },
    { key: "torque", label: "Torque at the wrench", min: 5, max: 1500, step: 1, value: 150, show: (value) => `${value} N·m` },
    { key: "mu_thread", label: "Friction in the thread", min: 0.04, max: 0.3, step: 0.005, value: 0.12, show: two },
    { key: "mu_face", label: "Friction under the head", min: 0.04, max: 0.3, step: 0.005, value: 0.12, show: two },
    { key: "spread", label: "How far friction may be off", min: 0, max: 50, step: 1, value: 33, show: (value) => `±${value} %` },
  ];
  const controls = Object.fromEntries(list.map((control) => [control.key, control]));
  explorable(place("form"), list, draw);
})();
