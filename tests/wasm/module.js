// The package under test.
import { join } from "node:path";
import { pathToFileURL } from "node:url";

export const folder = process.env.TAUTEN_WASM_PACKAGE;
export const { load, TautenError } = await import(pathToFileURL(join(folder, "index.js")));
export const tauten = await load();
export const formulasOnly = await load("formulas");

/** The modules with the questions of one topic, and a job for each question. */
export const topics = {
  clamp: {
    clamp: { name: "pump foot", thread: "M16", class: "8.8", torque: "130N.m", condition: "oiled" },
    torque: { thread: "M16", class: "8.8", "clamp-load": "45kN", condition: "oiled" },
    identify: { socket: "24mm" },
  },
  thread: { thread: { thread: "M16x1.5-6g", class: "10.9" } },
  turn: {
    turn: { thread: "M16", class: "8.8", condition: "oiled", grip: "55mm", "snug-torque": "60N.m", angle: "90deg" },
  },
  curve: {
    curve: { thread: "M16", class: "8.8", condition: "oiled", layer: ["20mm:grey_cast_iron", "35mm"], points: "20" },
  },
  reach: { reach: { torque: "40lbf.ft", "wrench-length": "12in", extension: ["1in", "3in"] } },
  pattern: { pattern: { pattern: "circle:8:180mm", hole: "18mm" } },
  group: {
    group: { pattern: "grid:2x4:100mm:70mm", load: "0kN:-16kN", at: "425mm:0mm", moment: "0kN.m:2kN.m", preload: "40kN" },
    sequence: { pattern: "circle:8:180mm", torque: "120N.m", interaction: "0.2", shortfall: "5%" },
    prying: { "effective-length": "200mm", "bolt-to-web": "40mm", "bolt-to-edge": "45mm", thickness: "16mm", "plate-strength": "235MPa",
              "bolt-strength": "90kN", pull: "100kN" },
  },
  free: { free: { thread: "M16", class: "8.8", rust: "rusted", trials: "20000" } },
};
