/** Torque and tension of threaded fasteners. Numbers are SI; text carries its unit: 25e3 or "25kN". */

/** Wrong input: one sentence for the user. */
export class TautenError extends Error {
  /** What is at fault, "" where no single argument is. */
  readonly argument: string;
}

/** A number in SI, or text with its unit: "48N.m", "35lbf.ft", "5/8in". */
export type Input = number | string;
export type Inputs = Readonly<Record<string, Input>>;
export type Notation = "text" | "latex" | "algebra" | "mathml";

/** What is said, by key; a list where a key may be said again. */
export type Job = Readonly<Record<string, string | readonly string[]>>;

/** What JSON can hold. */
export type Answer = null | boolean | number | string | Answer[] | { [name: string]: Answer };

export interface Range {
  /** null: no bound */
  low: number | null;
  high: number | null;
  excludes_low: boolean;
}

export interface Argument {
  symbol: string;
  /** SI; "" for a plain number */
  unit: string;
  shop_unit: string;
  shop_unit_in_si: number;
  /** how to write a value */
  example: string;
  /** outside it there is no value */
  domain: Range;
  /** outside it the value carries a warning */
  validity: Range;
}

export interface Formula {
  summary: string;
  inputs: Record<string, Argument>;
  output: Argument & { name: string };
  sources: { document: string; place: string; seen: "in_print" | "once" | "memory" | "judgement" }[];
}

export interface Question {
  summary: string;
  /** words: all that it takes, if it takes words only; repeats: it may be said again */
  keys: Record<string, { example: string; help: string; words: string[]; repeats: boolean }>;
}

/** What the module has; a smaller one has no formulas or fewer questions. */
export interface Catalogue {
  version: string;
  formulas: Record<string, Formula>;
  questions: Record<string, Question>;
}

/** Low, nominal and high value of what rests on friction. */
export interface Band {
  low: number;
  nominal: number;
  high: number;
}

export interface Value {
  value: number;
  unit: string;
  /** an input outside the range that the source states, or null */
  warning: string | null;
}

export interface Gradient {
  value: number;
  slopes: Record<string, number>;
  warning: string | null;
}

export interface Tauten {
  readonly version: string;
  readonly catalogue: Catalogue;
  /** names of all formulas */
  readonly formulas: string[];
  /** Reads text with its unit for an input of a formula, "48N.m". @throws TautenError for another dimension */
  read(formula: string, input: string, text: string): number;
  /** @throws TautenError where the formula has no value */
  evaluate(formula: string, inputs: Inputs): Value;
  /** The value and its derivatives by each input. @throws TautenError where the formula has no value */
  gradient(formula: string, inputs: Inputs): Gradient;
  /** Row by row; an input is a column of numbers or one for all rows. NaN where there is no value. */
  columns(formula: string, inputs: Readonly<Record<string, Input | ArrayLike<number>>>): Float64Array;
  /** The formula itself. */
  text(formula: string, notation?: Notation): string;
  /** The derivation: formula, values put in, result, source. As "mathml" it is HTML for a page. */
  explain(formula: string, inputs: Inputs, notation?: Exclude<Notation, "algebra">): string;
  /**
   * Asks a whole question: ask("clamp", { thread: "M10", torque: "48N.m", condition: "oiled" }).
   * The catalogue lists the keys.
   * All estimates: no answer is a release for service.
   * @throws TautenError for words that are not understood, and for a question that the module does not have
   */
  ask(question: "clamp" | "torque" | "identify" | "turn" | "curve" | "reach" | "free", job: Job): { [name: string]: Answer };
}

/**
 * With everything; with all formulas and no questions; with the questions of one topic and no formulas:
 * clamp has clamp, torque and identify, turn has turn and curve, reach has reach, free has free.
 */
export type ModuleName = "tauten" | "formulas" | "clamp" | "turn" | "reach" | "free";

/** @param source the name of a module beside the loader, an address, bytes or a compiled module; without it, "tauten" */
export function load(source?: ModuleName | string | URL | BufferSource | WebAssembly.Module): Promise<Tauten>;
