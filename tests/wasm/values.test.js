// The module gives the numbers of the native library: bit for bit where a formula uses only + - * / and square root.
// Elsewhere within two units in the last place: the C libraries round sines, logarithms and their like differently. Where
// two near terms are subtracted that may be magnified, to no more than two units in each of those make of the value.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import test from "node:test";
import { tauten, TautenError } from "./module.js";

const program = process.env.TAUTEN_VALUES;
const view = new DataView(new ArrayBuffer(8));

const fromBits = (word) => (view.setBigUint64(0, BigInt(`0x${word}`)), view.getFloat64(0));
const linesOf = (...words) => execFileSync(program, words, { encoding: "utf8", maxBuffer: 1 << 28 }).trim().split("\n");

/** The inputs of a formula by name. */
function named(name, numbers) {
  return Object.fromEntries(Object.keys(tauten.catalogue.formulas[name].inputs).map((key, i) => [key, numbers[i]]));
}

/** How many doubles lie between two, and one more; infinity if they differ in sign. */
function places(a, b) {
  if (Object.is(a, b) || a === b) return 0;
  const bits = (x) => (view.setFloat64(0, Math.abs(x)), view.getBigUint64(0));
  return Math.sign(a) === Math.sign(b) ? Number(bits(a) < bits(b) ? bits(b) - bits(a) : bits(a) - bits(b)) : Infinity;
}

test("values and derivatives of all formulas", { skip: program === undefined && "the native library is not built" }, () => {
  const lines = linesOf("80");
  const seen = new Set();
  const worst = { slope: 0 };
  const within = { 0: 0, 1: 0, 2: 0, Infinity: 0 };
  for (const line of lines) {
    const [name, ...words] = line.split(" ");
    const [value, slack, ...rest] = words.map(fromBits);
    const inputs = named(name, rest.slice(rest.length / 2));
    const names = Object.keys(inputs);
    const here = tauten.gradient(name, inputs);
    assert.equal(here.value, tauten.evaluate(name, inputs).value);
    assert.equal(here.value, tauten.columns(name, inputs)[0]);
    const isArithmetic = slack === 0;
    const apart = places(here.value, value);
    const slopesApart = Math.max(...names.map((key, i) => places(here.slopes[key], rest[i])));
    if (isArithmetic) {
      assert.equal(apart, 0, `${name}: ${here.value} and ${value}`);
      assert.equal(slopesApart, 0, `${name}: slopes at ${JSON.stringify(inputs)}`);
    } else {
      assert.ok(Math.abs(here.value - value) <= slack, `${name}: ${here.value} and ${value}`);
      for (const limit of [0, 1, 2, Infinity])
        if (apart <= limit) {
          within[limit] += 1;
          break;
        }
      // A slope may be a small difference of large terms; what counts is how far the value would move.
      for (const [i, key] of names.entries()) {
        const scale = Math.abs(rest[i]) + Math.abs(value / inputs[key]);
        const error = Math.abs(here.slopes[key] - rest[i]) / scale;
        worst.slope = Math.max(worst.slope, error);
        assert.ok(error < 1e-13, `${name}: slope by ${key}: ${here.slopes[key]} and ${rest[i]}`);
      }
    }
    seen.add(name);
  }
  console.log(`${lines.length} cases, ${seen.size} formulas; all of + - * / and square root the same bits`);
  console.log("others by units in the last place:", within, "slopes, relative:", worst.slope);
  assert.equal(seen.size, tauten.formulas.length);
  // Each case is within the rounding that its terms allow; where near terms are subtracted that may be some places.
  assert.ok(within.Infinity <= lines.length / 1000, `${within.Infinity} of ${lines.length} cases are beyond two places`);
});

test("inputs that fit no value together give none", { skip: program === undefined && "the native library is not built" }, () => {
  const seen = new Set();
  for (const line of linesOf("20", "impossible")) {
    const [name, ...words] = line.split(" ");
    const inputs = named(name, words.map(fromBits));
    assert.throws(() => tauten.evaluate(name, inputs), TautenError, line);
    assert.throws(() => tauten.gradient(name, inputs), TautenError, line);
    assert.ok(Number.isNaN(tauten.columns(name, inputs)[0]), line);
    seen.add(name);
  }
  console.log(`${seen.size} formulas refuse what does not fit together`);
  assert.ok(seen.size > 20);
});
