// Loads a module and speaks its C interface (tauten.h). No dependencies.

/** The modules beside this file: with everything, with all formulas, with the questions of one topic. */
const modules = ["tauten", "formulas", "clamp", "thread", "turn", "curve", "reach", "free", "pattern", "group"];
const status = { ok: 0, unusual: 1 };
const notations = ["text", "latex", "algebra", "mathml"];
const argumentSize = 64;
const errorSize = argumentSize + 512;
const encoder = new TextEncoder();
const decoder = new TextDecoder();

/** Wrong input. `argument` names what is at fault, "" where no single one is. */
export class TautenError extends Error {
  constructor(message, argument = "") {
    super(message);
    this.name = "TautenError";
    this.argument = argument;
  }
}

/** What the C library behind the module asks of a system: nothing but a way to end and a place for last words. */
function system(memory) {
  const badFile = 8;
  return {
    proc_exit: (code) => {
      throw new Error(`the module ended with code ${code}`);
    },
    fd_write: (file, list, count, written) => {
      const view = new DataView(memory().buffer);
      let text = "";
      let size = 0;
      for (let at = list; at < list + 8 * count; at += 8) {
        const length = view.getUint32(at + 4, true);
        text += decoder.decode(new Uint8Array(memory().buffer, view.getUint32(at, true), length));
        size += length;
      }
      if (text.trim() !== "") console.error(text.trimEnd());
      view.setUint32(written, size, true);
      return 0;
    },
    fd_close: () => badFile,
    fd_seek: () => badFile,
    fd_fdstat_get: () => badFile,
  };
}

/** Memory of the module that is lent for one call. */
class Loan {
  #module;
  #pointers = [];

  constructor(module) {
    this.#module = module;
  }
  view() {
    return new DataView(this.#module.memory.buffer);
  }
  bytes(size) {
    const pointer = this.#module.malloc(Math.max(size, 1));
    if (pointer === 0) throw new TautenError("there is not enough memory");
    this.#pointers.push(pointer);
    return pointer;
  }
  text(words) {
    const encoded = encoder.encode(String(words).replaceAll("\0", "\ufffd"));
    const pointer = this.bytes(encoded.length + 1);
    const memory = new Uint8Array(this.#module.memory.buffer, pointer, encoded.length + 1);
    memory.set(encoded);
    memory[encoded.length] = 0;
    return pointer;
  }
  numbers(values) {
    const pointer = this.bytes(8 * values.length);
    new Float64Array(this.#module.memory.buffer, pointer, values.length).set(values);
    return pointer;
  }
  integers(values) {
    const pointer = this.bytes(4 * values.length);
    new Int32Array(this.#module.memory.buffer, pointer, values.length).set(values);
    return pointer;
  }
  read(pointer, count) {
    return new Float64Array(this.#module.memory.buffer, pointer, count).slice();
  }
  words(pointer) {
    const memory = new Uint8Array(this.#module.memory.buffer);
    return decoder.decode(memory.subarray(pointer, memory.indexOf(0, pointer)));
  }
  /** Calls a function that writes text into a buffer and returns the size of the whole. */
  written(write) {
    const size = write(0, 0) + 1;
    const buffer = this.bytes(size);
    write(buffer, size);
    return this.words(buffer);
  }
  giveBack() {
    for (const pointer of this.#pointers) this.#module.free(pointer);
  }
}

class Tauten {
  #module;
  #catalogue;

  constructor(module) {
    this.#module = module;
  }

  #borrow(use) {
    const loan = new Loan(this.#module);
    try {
      return use(loan, this.#module);
    } finally {
      loan.giveBack();
    }
  }

  /** \return the warning, if there is a result; throws if there is none */
  #judge(loan, found, error) {
    if (found === status.ok) return null;
    const message = loan.words(error + argumentSize);
    if (found === status.unusual) return message;
    throw new TautenError(message, loan.words(error));
  }

  #formula(loan, name) {
    if (this.#module.tauten_formula_named === undefined)
      throw new TautenError('this module has no formulas; load("formulas") has them, and load("tauten")', "formula");
    const formula = this.#module.tauten_formula_named(loan.text(name));
    if (formula === 0) throw new TautenError(`there is no formula '${name}'`, "formula");
    return formula;
  }

  #notation(notation, offered = notations) {
    if (!offered.includes(notation))
      throw new TautenError(`there is no notation '${notation}' here; take ${offered.join(", ")}`, "notation");
    return notations.indexOf(notation);
  }

  /** One item per input, in the order of the formula. */
  #inputs(name, given) {
    const known = Object.keys(this.catalogue.formulas[name].inputs);
    for (const key of Object.keys(given))
      if (!known.includes(key))
        throw new TautenError(`${name} has no input '${key}'; its inputs are ${known.join(", ")}`, key);
    return known.map((key) => {
      if (given[key] === undefined) throw new TautenError(`${name} also needs ${key}`, key);
      return given[key];
    });
  }

  #si(loan, formula, place, value) {
    if (typeof value !== "string") return Number(value);
    const error = loan.bytes(errorSize);
    const number = loan.bytes(8);
    const argument = this.#module.tauten_formula_input(formula, place);
    this.#judge(loan, this.#module.tauten_argument_read(argument, loan.text(value), number, error), error);
    return loan.read(number, 1)[0];
  }

  #answer(ask) {
    return this.#borrow((loan, module) => {
      const error = loan.bytes(errorSize);
      const place = loan.integers([0]);
      this.#judge(loan, ask(loan, module, place, error), error);
      const answer = loan.view().getUint32(place, true);
      try {
        const root = loan.text("");
        return JSON.parse(loan.written((buffer, size) => module.tauten_answer_json(answer, root, buffer, size)));
      } finally {
        module.tauten_answer_free(answer);
      }
    });
  }

  get version() {
    return this.catalogue.version;
  }

  get catalogue() {
    this.#catalogue ??= this.#answer((loan, module, place, error) => module.tauten_catalogue(place, error));
    return this.#catalogue;
  }

  get formulas() {
    return Object.keys(this.catalogue.formulas);
  }

  read(name, input, text) {
    return this.#borrow((loan) => {
      const formula = this.#formula(loan, name);
      const place = Object.keys(this.catalogue.formulas[name].inputs).indexOf(input);
      if (place < 0) throw new TautenError(`${name} has no input '${input}'`, input);
      return this.#si(loan, formula, place, String(text));
    });
  }

  #evaluate(name, given, use) {
    return this.#borrow((loan, module) => {
      const formula = this.#formula(loan, name);
      const inputs = this.#inputs(name, given).map((value, place) => this.#si(loan, formula, place, value));
      return use(loan, module, formula, loan.numbers(inputs), inputs.length);
    });
  }

  evaluate(name, given) {
    return this.#evaluate(name, given, (loan, module, formula, inputs) => {
      const value = loan.bytes(8);
      const error = loan.bytes(errorSize);
      const warning = this.#judge(loan, module.tauten_evaluate(formula, inputs, value, error), error);
      return { value: loan.read(value, 1)[0], unit: this.catalogue.formulas[name].output.unit, warning };
    });
  }

  gradient(name, given) {
    return this.#evaluate(name, given, (loan, module, formula, inputs, arity) => {
      const value = loan.bytes(8);
      const slopes = loan.bytes(8 * arity);
      const error = loan.bytes(errorSize);
      const warning = this.#judge(loan, module.tauten_gradient(formula, inputs, value, slopes, error), error);
      const names = Object.keys(this.catalogue.formulas[name].inputs);
      const all = loan.read(slopes, arity);
      return { value: loan.read(value, 1)[0], slopes: Object.fromEntries(names.map((key, i) => [key, all[i]])), warning };
    });
  }

  columns(name, given) {
    return this.#borrow((loan, module) => {
      const formula = this.#formula(loan, name);
      const inputs = this.#inputs(name, given);
      const isColumn = (value) => typeof value === "object";
      const rows = inputs.find(isColumn)?.length ?? 1;
      if (inputs.some((value) => isColumn(value) && value.length !== rows))
        throw new TautenError(`${name}: the columns have different numbers of rows`);
      const pointers = inputs.map((value, place) =>
        loan.numbers(isColumn(value) ? value : [this.#si(loan, formula, place, value)]));
      const out = loan.bytes(8 * rows);
      const steps = loan.integers(inputs.map((value) => (isColumn(value) ? 8 : 0)));
      module.tauten_evaluate_columns(formula, loan.integers(pointers), steps, out, 8, rows);
      return loan.read(out, rows);
    });
  }

  text(name, notation = "text") {
    return this.#borrow((loan, module) => {
      const formula = this.#formula(loan, name);
      const how = this.#notation(notation);
      return loan.written((buffer, size) => module.tauten_formula_text(formula, how, buffer, size));
    });
  }

  explain(name, given, notation = "text") {
    if (Object.hasOwn(this.catalogue.questions, name)) return this.#explainAnswer(name, given, notation);
    return this.#evaluate(name, given, (loan, module, formula, inputs) => {
      const how = this.#notation(notation, notations.filter((one) => one !== "algebra"));
      return loan.written((buffer, size) => module.tauten_explain(formula, inputs, how, buffer, size));
    });
  }

  #explainAnswer(question, job, format) {
    if (!this.#module.tauten_explain_answer)
      throw new TautenError(`this module does not explain ${question}; load("tauten") does`, "question");
    return this.#answer((loan, module, place, error) => module.tauten_explain_answer(
      loan.text(question), ...this.#said(loan, job), loan.text(format), place, error));
  }

  /** \return the words of a job in the module, and how many pairs they are */
  #said(loan, job) {
    const given = Object.entries(job).filter(([, texts]) => texts !== undefined);
    const said = given.flatMap(([key, texts]) => [texts].flat().map((text) => [key, text]));
    return [loan.integers(said.flat().map((word) => loan.text(word))), said.length];
  }

  ask(question, job) {
    return this.#answer((loan, module, place, error) =>
      module.tauten_ask(loan.text(question), ...this.#said(loan, job), place, error));
  }

  page(question, job, format = "text") {
    if (!this.#module.tauten_page) return this.ask(question, job); // there are no questions here, which it says
    return this.#answer((loan, module, place, error) =>
      module.tauten_page(loan.text(question), ...this.#said(loan, job), loan.text(format), place, error));
  }
}

/** \return the address of a module that is named, and of any other source the source itself */
function placeOf(source) {
  if (!/^\w+$/.test(source)) return source;
  if (!modules.includes(source))
    throw new TautenError(`there is no module '${source}'; take ${modules.join(", ")}`, "source");
  return `${source}.wasm`;
}

async function compiled(source) {
  if (source instanceof WebAssembly.Module) return source;
  if (ArrayBuffer.isView(source) || source instanceof ArrayBuffer) return WebAssembly.compile(source);
  const url = new URL(placeOf(source), import.meta.url);
  if (url.protocol === "file:") {
    const { readFile } = await import("node:fs/promises");
    return WebAssembly.compile(await readFile(url));
  }
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url}: ${response.status} ${response.statusText}`);
  return WebAssembly.compile(await response.arrayBuffer());
}

/** \param source  name of a module beside this file, an address, bytes or a compiled module; without it, "tauten" */
export async function load(source) {
  const imports = { wasi_snapshot_preview1: system(() => instance.exports.memory) };
  const instance = await WebAssembly.instantiate(await compiled(source ?? "tauten"), imports);
  instance.exports._initialize();
  return new Tauten(instance.exports);
}
