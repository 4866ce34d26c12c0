// The loader: whole answers, errors, columns, memory, and what the package weighs.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { pathToFileURL } from "node:url";
import { brotliCompressSync } from "node:zlib";
import { folder, formulasOnly, load, tauten, TautenError, topics } from "./module.js";

const pumpFoot = topics.clamp.clamp;

test("a whole answer", () => {
  const answer = tauten.ask("clamp", pumpFoot);
  assert.equal(answer.name, "pump foot");
  const [candidate] = answer.candidates;
  assert.equal(candidate.verdict, "may be slack");
  assert.ok(candidate.clamp_load.low < candidate.clamp_load.nominal);
  assert.equal(candidate.proof_load, 91000); // ISO 898-1, M16 class 8.8
  const torque = tauten.ask("torque", topics.clamp.torque);
  assert.ok(Math.abs(torque.candidates[0].clamp_load.nominal - 45e3) < 1e-6);
  assert.equal(tauten.ask("identify", topics.clamp.identify).candidates[0].thread, "M16"); // ISO 4014: s = 24 mm
  // 40 lbf.ft with a wrench of 12 in and 4 in of extension: set 30 lbf.ft (US Army TM 9-2350-277-40&P).
  const reach = tauten.ask("reach", topics.reach.reach);
  assert.ok(Math.abs(reach.setting / 1.3558179483314004 - 30) < 1e-9);
  const { chances } = tauten.ask("free", topics.free.free);
  const sum = Object.entries(chances).reduce((all, [way, chance]) => all + (way === "limit" ? 0 : chance), 0);
  assert.ok(Math.abs(sum - 1) < 1e-9);
});

test("undefined is absent, and names are spelled as in the library", () => {
  const job = { thread: "M16", class: 8.8, condition: "oiled", clamp_load: "45kN", socket: undefined, face: undefined };
  assert.deepEqual(tauten.ask("torque", job), tauten.ask("torque", topics.clamp.torque));
});

test("errors name the argument and say what to do", () => {
  const refused = (act, argument) =>
    assert.throws(act, (error) => {
      assert.ok(error instanceof TautenError);
      assert.equal(error.argument, argument);
      assert.ok(error.message.length > 20, error.message);
      return true;
    });
  refused(() => tauten.ask("clamp", { ...pumpFoot, torque: "130" }), "torque");
  refused(() => tauten.ask("clamp", { ...pumpFoot, colour: "red" }), "colour");
  refused(() => tauten.ask("weigh", {}), "question");
  refused(() => tauten.evaluate("bearing_torque", { preload: -1, bearing_friction: 0.1, bearing_diameter: 0.02 }), "preload");
  refused(() => tauten.evaluate("bearing_torque", { preload: 1, bearing_friction: 0.1 }), "bearing_diameter");
  refused(() => tauten.evaluate("bearing_torque", { preload: 1, bearing_friction: 0.1, bearing_diameter: "20N" }), "bearing_diameter");
  refused(() => tauten.evaluate("no_such_formula", {}), "formula");
  refused(() => tauten.text("bearing_torque", "runes"), "notation");
  refused(() => tauten.explain("bearing_torque", { preload: 1, bearing_friction: 0.1, bearing_diameter: 0.02 }, "algebra"), "notation");
});

test("formulas: value, warning, derivatives, columns, text", () => {
  const inputs = { preload: "25kN", bearing_friction: 0.12, bearing_diameter: "20mm" };
  const found = tauten.evaluate("bearing_torque", inputs); // 25 kN x 0.12 x 10 mm
  assert.ok(Math.abs(found.value - 30) < 1e-12);
  assert.deepEqual([found.unit, found.warning], ["N.m", null]);
  assert.match(tauten.evaluate("bearing_torque", { ...inputs, bearing_friction: 1.9 }).warning, /outside the stated range/);
  assert.ok(Math.abs(tauten.gradient("bearing_torque", inputs).slopes.bearing_friction - 250) < 1e-9);
  const rows = tauten.columns("bearing_torque", { ...inputs, preload: [-1, 25e3, 50e3] });
  assert.ok(Number.isNaN(rows[0]) && Math.abs(rows[1] - 30) < 1e-12 && Math.abs(rows[2] - 60) < 1e-12);
  assert.match(tauten.text("bearing_torque", "latex"), /\\mu_\{K\}/);
  assert.match(tauten.explain("bearing_torque", inputs), /30 N\.m/);
  assert.match(tauten.text("bearing_torque", "mathml"), /^<m/);
  assert.match(tauten.explain("bearing_torque", inputs, "mathml"), /^<div[^]*<math[^]*30/);
});

test("memory is given back and may grow", () => {
  const preload = new Float64Array(1e6).fill(25e3);
  for (let i = 0; i < 20; ++i)
    assert.equal(tauten.columns("bearing_torque", { preload, bearing_friction: 0.12, bearing_diameter: 0.02 }).length, 1e6);
  for (let i = 0; i < 300; ++i) tauten.ask("clamp", pumpFoot);
});

test("text of any language passes through", () => {
  assert.equal(tauten.ask("clamp", { ...pumpFoot, name: "Pumpenfu\u00df \u30dd\u30f3\u30d7 \"1\"\n" }).name, "Pumpenfu\u00df \u30dd\u30f3\u30d7 \"1\"\n");
});

test("types, version and size of the package", async () => {
  const { version, files } = JSON.parse(readFileSync(join(folder, "package.json")));
  assert.equal(version, tauten.version);
  assert.ok(files.includes("*.wasm"));
  const modules = readdirSync(folder).filter((name) => name.endsWith(".wasm"));
  assert.deepEqual(modules.sort(), ["tauten", "formulas", ...Object.keys(topics)].map((name) => `${name}.wasm`).sort());
  for (const name of modules) {
    const module = readFileSync(join(folder, name));
    assert.equal((await load(module)).version, version);
    const zipped = execFileSync("gzip", ["-9c"], { input: module, maxBuffer: 10_000_000 }).length; // as a server stores it
    console.log(`${name}: ${module.length} bytes, ${zipped} with gzip, ${brotliCompressSync(module).length} with brotli`);
    // A page that loads the module of a question is promised at most 130 kB.
    // The one with everything has the pages of all questions, too.
    const most = { "tauten.wasm": 420_000, "formulas.wasm": 80_000 }[name] ?? 130_000;
    assert.ok(zipped < most, `${name} reaches ${most} bytes with gzip: look for what was pulled in`);
  }
  const declared = readFileSync(join(folder, "index.d.ts"), "utf8");
  for (const name of Object.getOwnPropertyNames(Object.getPrototypeOf(tauten)))
    if (name !== "constructor") assert.match(declared, new RegExp(`\\b${name}[(:]`), `${name} is not declared`);
});

test("the module of formulas has the same formulas and no questions", () => {
  assert.deepEqual(formulasOnly.catalogue.formulas, tauten.catalogue.formulas);
  assert.deepEqual(formulasOnly.catalogue.questions, {});
  for (const name of tauten.formulas) assert.equal(formulasOnly.text(name), tauten.text(name));
  assert.throws(() => formulasOnly.page("clamp", pumpFoot), { argument: "question" });
  assert.throws(() => formulasOnly.ask("clamp", pumpFoot), {
    argument: "question",
    message: "there is no question 'clamp' here, but in clamp.wasm and tauten.wasm; here are formulas only",
  });
});

for (const [topic, jobs] of Object.entries(topics))
  test(`the module of ${topic} has the same questions and no formulas`, async () => {
    const part = await load(topic);
    const { questions } = tauten.catalogue;
    assert.deepEqual(part.catalogue.questions, Object.fromEntries(Object.keys(jobs).map((name) => [name, questions[name]])));
    for (const [question, job] of Object.entries(jobs)) {
      assert.deepEqual(part.ask(question, job), tauten.ask(question, job));
      assert.match(part.page(question, job), /^[^\n]{20,}/);
      assert.equal(part.page(question, job, "html"), tauten.page(question, job, "html"));
      assert.throws(() => part.page(question, job, "braille"), { argument: "format" });
      assert.throws(() => part.explain(question, job), { argument: "question", message: /load\("tauten"\)/ });
    }
    // Angles of many turns never reach the arithmetic: the reduction of such angles is left out.
    for (const question of Object.keys(jobs))
      for (const [key, { example }] of Object.entries(questions[question].keys))
        if (example.endsWith("deg"))
          assert.throws(() => part.ask(question, { ...jobs[question], [key]: "1e12deg" }), TautenError, `${question} ${key}`);
    assert.deepEqual(part.formulas, []);
    for (const act of ["evaluate", "gradient", "columns", "explain", "text", "read"])
      assert.throws(() => part[act]("bearing_torque", {}), { argument: "formula", message: /has no formulas; load\("formulas"\)/ });
    const elsewhere = Object.keys(questions).find((name) => !(name in jobs));
    const asked = Object.keys(part.catalogue.questions);
    assert.deepEqual([...asked].sort(), Object.keys(jobs).sort());
    const known = asked.join(", ");
    assert.throws(() => part.ask(elsewhere, {}), {
      argument: "question",
      message: new RegExp(`^there is no question '${elsewhere}' here, but in [a-z]+\\.wasm and tauten\\.wasm; ask ${known}$`),
    });
    assert.throws(() => part.ask("weigh", {}), { message: `there is no question 'weigh'; ask ${known}` });
  });

test("a whole answer is explained", () => {
  const jobs = Object.assign({}, ...Object.values(topics));
  for (const question of ["clamp", "torque", "turn", "reach", "free"]) {
    const page = tauten.explain(question, jobs[question]);
    for (const part of ["Given", "Steps", "1. ", "Result", "Verdict: "]) assert.ok(page.includes(`\n${part}`), `${question} ${part}`);
    assert.match(tauten.explain(question, jobs[question], "html"), /<math/);
    assert.match(tauten.explain(question, jobs[question], "latex"), /\\begin{align\*}/);
  }
  assert.throws(() => tauten.explain("thread", jobs.thread), { argument: "question", message: /explain clamp, torque, turn, reach, free/ });
  assert.throws(() => tauten.explain("clamp", jobs.clamp, "braille"), { argument: "format" });
  assert.throws(() => tauten.explain("clamp", { thread: "M16" }), { argument: "torque" });
  assert.ok(!tauten.formulas.some((name) => name in jobs)); // one name, one meaning
});

test("every question is in one of the parts", () => {
  const inParts = Object.values(topics).flatMap((jobs) => Object.keys(jobs));
  assert.deepEqual(inParts.sort(), Object.keys(tauten.catalogue.questions).sort());
});

test("a module is loaded by its name, its address or its bytes", async () => {
  const address = pathToFileURL(join(folder, "reach.wasm"));
  for (const source of ["reach", "reach.wasm", address, address.href, readFileSync(address)])
    assert.deepEqual(Object.keys((await load(source)).catalogue.questions), ["reach"]);
  await assert.rejects(load("torque"), { argument: "source", message: /^there is no module 'torque'; take tauten, formulas, clamp,/ });
});
