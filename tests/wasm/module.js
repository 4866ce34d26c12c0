// The package under test.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

export const folder = process.env.TAUTEN_WASM_PACKAGE;
export const { load, TautenError } = await import(pathToFileURL(join(folder, "index.js")));
export const tauten = await load();
export const formulasOnly = await load(readFileSync(join(folder, "formulas.wasm")));
