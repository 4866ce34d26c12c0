// Runs the published figures through the module of formulas, which are those of the whole one (see loader.test.js), by the
// same rule as the native runner: within half a unit of the last printed place, plus what half a unit of the source's own
// rounded inputs (marked ~) explains.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { formulasOnly as tauten } from "./module.js";

const folder = process.env.TAUTEN_PUBLISHED;

function halfLastPlace(printed) {
  const [mantissa, exponent = "0"] = printed.split(/e/i);
  return 0.5 * 10 ** (Number(exponent) - (mantissa.split(".")[1] ?? "").length);
}

/** Reads a quantity of a dimension through an input that has it. */
const readers = new Map();
for (const [formula, { inputs }] of Object.entries(tauten.catalogue.formulas))
  for (const [name, { unit }] of Object.entries(inputs)) if (!readers.has(unit)) readers.set(unit, { formula, name });
function readAs(unit, text) {
  const { formula, name } = readers.get(unit);
  return tauten.read(formula, name, text);
}

class Scope {
  constructor(given) {
    this.given = new Map();
    this.shifted = new Map();
    for (const part of given.split(";").map((text) => text.trim()).filter(Boolean)) {
      const at = part.indexOf("=");
      this.given.set(part.slice(0, at), part.slice(at + 1));
    }
    const thread = this.given.get("thread");
    if (thread === undefined) return;
    const [, diameter, pitch] = thread.match(/^M([\d.]+)x([\d.]+)$/);
    this.given.set("diameter", `${diameter}mm`).set("pitch", `${pitch}mm`);
  }
  get rounded() {
    return [...this.given].filter(([, value]) => value.startsWith("~")).map(([name]) => name);
  }
  value(name, unit) {
    const text = this.given.get(name);
    if (text === undefined) return this.evaluate(name);
    if (text in tauten.catalogue.formulas) return this.evaluate(text);
    const bare = text.replace("~", "");
    const exact = readAs(unit, bare);
    if (!this.shifted.has(name)) return exact;
    const digits = bare.match(/^[-+\d.eE]*\d/)[0];
    return exact * ((Number(digits) + this.shifted.get(name) * halfLastPlace(digits)) / Number(digits));
  }
  evaluate(formula) {
    const inputs = Object.entries(tauten.catalogue.formulas[formula].inputs);
    return tauten.evaluate(formula, Object.fromEntries(inputs.map(([name, { unit }]) => [name, this.value(name, unit)]))).value;
  }
}

const files = readdirSync(folder).filter((name) => name.endsWith(".csv") && !["left_out.csv", "no_figure.csv"].includes(name));
let rows = 0;

for (const file of files)
  test(`published figures: ${file}`, () => {
    const [header, ...lines] = readFileSync(join(folder, file), "utf8").split("\n");
    assert.equal(header, "id,formula,given,published,unit,allow,why,source,confidence");
    for (const line of lines.filter(Boolean)) {
      const [id, formula, given, published, unit, allow] = line.split(",").map((text) => text.trim());
      const { output } = tauten.catalogue.formulas[formula];
      const printed = Number(published);
      const inSi = readAs(output.unit, published + unit) / printed;
      const scope = new Scope(given);
      const ours = scope.evaluate(formula) / inSi;
      let tolerance = halfLastPlace(published);
      for (const name of scope.rounded) {
        scope.shifted = new Map([[name, 1]]);
        tolerance += Math.abs(scope.evaluate(formula) / inSi - ours);
      }
      const deviation = Math.abs(ours - printed);
      const bound = allow === "" ? tolerance : (parseFloat(allow) / 100) * Math.abs(printed);
      assert.ok(deviation <= bound * (1 + 1e-9), `${id}: printed ${printed}, here ${ours}`);
      ++rows;
    }
  });

test("all published figures were there", () => {
  console.log(`${rows} published figures checked in ${files.length} tables`);
  assert.ok(rows > 2000);
});
