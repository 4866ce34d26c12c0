// At the bench: one form for each question, made from the library's own list of inputs. The address holds the job, so a link is one.
"use strict";

// What is asked first, in the order of a person at the bench; all other inputs follow under "More". A name that the library does
// not know is left out, and tests/site.py complains.
const FIRST = {
  identify: ["socket", "key", "bit", "class"],
  thread: ["thread", "class"],
  clamp: ["thread", "socket", "class", "torque", "condition", "face"],
  torque: ["thread", "socket", "class", "condition", "face", "clamp-load"],
  turn: ["thread", "class", "condition", "grip", "layer", "snug-torque", "angle", "clamp-load"],
  curve: ["thread", "class", "condition", "grip", "layer", "snug-torque"],
  reach: ["torque", "setting", "wrench-length", "extension"],
  free: ["thread", "socket", "class", "rust", "aid", "held", "loosened", "surroundings", "instructions"],
  pattern: ["pattern", "chords", "hole", "on"],
  group: ["pattern", "load", "at", "torque", "force", "moment", "preload"],
  sequence: ["pattern", "torque", "method", "interaction", "load", "shortfall"],
  prying: ["effective-length", "tributary", "bolt-to-web", "bolt-to-edge", "thickness", "plate-strength", "bolt-strength", "pull"],
};

// A job from the pumping station (invented) to begin with.
const EXAMPLES = {
  identify: { socket: "24mm", class: "8.8" },
  thread: { thread: "M16", class: "8.8" },
  clamp: { thread: "M16", class: "8.8", torque: "150N.m", condition: "oiled" },
  torque: { thread: "M16", class: "8.8", condition: "oiled" },
  turn: { thread: "M16", class: "8.8", condition: "oiled", grip: "55mm", "snug-torque": "60N.m", angle: "60deg" },
  curve: { thread: "M16", class: "8.8", condition: "oiled", grip: "55mm", "snug-torque": "60N.m" },
  reach: { torque: "130N.m", "wrench-length": "400mm", extension: "100mm@45deg" },
  free: { thread: "M16", socket: "24mm", class: "8.8", rust: "rusted", instructions: "yes" },
  pattern: { pattern: "circle:8:180mm", hole: "18mm" },
  group: { pattern: "rectangle:150mm:120mm", load: "0kN:-16kN", at: "425mm:0mm" },
  sequence: { pattern: "circle:8:180mm", torque: "120N.m", method: "crosswise" },
  prying: { "effective-length": "200mm", "bolt-to-web": "40mm", "bolt-to-edge": "45mm", thickness: "16mm", "plate-strength": "235MPa",
    "bolt-strength": "90kN", pull: "100kN" },
};

// Units that are offered beside a figure, by the unit of the input's example. The library reads more, and reads them in the figure.
const UNITS = [["N.m", "lbf.ft", "lbf.in", "kgf.m"], ["mm", "cm", "m", "in"], ["kN", "N", "lbf", "kgf"], ["deg", "rad"], ["MPa", "psi"], ["mm2", "in2"], ["K"]];

const words = (key) => key.replaceAll("-", " ").replace(/^./, (letter) => letter.toUpperCase());
let question = "";
let tauten = null;
let fields = {}; // key -> { values(): texts, set(texts), mark(message) }

/** Units that go with an input, or none: only a bare figure with a unit has them. */
function unitsOf(input) {
  const found = input.example.match(/^-?[\d.]+([a-zA-Z].*)$/);
  return (found && UNITS.find((family) => family.includes(found[1]))) || [];
}

/** One field of the form. */
function field(key, input) {
  const id = `input-${key}`;
  const error = element("div", { class: "error", id: `${id}-error` });
  const help = element("div", { class: "help", id: `${id}-help` }, `${input.help}. Example: ${input.example}`);
  const described = { "aria-describedby": `${id}-help ${id}-error` };
  const made = element("div", { class: "field" });
  const units = unitsOf(input);
  const isFlag = input.example === "yes" && input.words.length === 0;
  const controls = []; // one for each value

  const one = (number) => {
    const name = number ? `${id}-${number + 1}` : id;
    if (isFlag) {
      const box = element("input", { type: "checkbox", id: name, ...described });
      return { input: box, read: () => (box.checked ? "yes" : ""), write: (text) => (box.checked = text === "yes"), node: element("label", { class: "box", for: name }, box, words(key)) };
    }
    const label = number ? { "aria-label": `${words(key)} ${number + 1}` } : {};
    if (input.words.length && !input.example.includes(":")) {
      const select = element("select", { id: name, ...label, ...described }, element("option", { value: "" }, "not given"),
        ...input.words.map((word) => element("option", { value: word }, word)));
      const write = (text) => {
        if (![...select.options].some((option) => option.value === text)) select.append(element("option", { value: text }, text));
        select.value = text;
      };
      return { input: select, read: () => select.value, write, node: select };
    }
    const text = element("input", { id: name, type: "text", autocomplete: "off", autocapitalize: "off", spellcheck: "false",
      placeholder: `like ${input.example}`, list: input.words.length ? `${id}-words` : null, ...label, ...described });
    if (!units.length) return { input: text, read: () => text.value.trim(), write: (value) => (text.value = value), node: text };
    // A bare figure takes the unit beside it; a figure that was typed with its unit keeps that.
    const unit = element("select", { "aria-label": `Unit of ${words(key).toLowerCase()}` }, ...units.map((one) => element("option", {}, one)));
    unit.value = units.find((one) => input.example.endsWith(one) && /\d$/.test(input.example.slice(0, -one.length)));
    const read = () => {
      const value = text.value.trim();
      return /^[-+]?[\d.,]+(\/\d+)?$/.test(value) ? value + unit.value : value;
    };
    const write = (value) => {
      const known = value.match(/^([-+]?[\d.,]+(?:\/\d+)?)(.+)$/);
      if (known && units.includes(known[2])) [text.value, unit.value] = [known[1], known[2]];
      else text.value = value;
    };
    unit.addEventListener("input", changed);
    return { input: text, read, write, node: element("div", { class: "pair" }, text, unit) };
  };
  const more = () => {
    const control = one(controls.length);
    controls.push(control);
    made.insertBefore(control.node, help);
    control.input.addEventListener("input", () => {
      // What may be said again gets a place for it.
      if (input.repeats && controls.at(-1).read()) more();
      changed();
    });
  };

  made.append(isFlag ? "" : element("label", { for: id }, words(key)), help, error);
  if (input.words.length && input.example.includes(":"))
    made.append(element("datalist", { id: `${id}-words` }, ...input.words.map((word) => element("option", { value: word }))));
  more();
  return {
    node: made,
    values: () => controls.map((control) => control.read()).filter((text) => text),
    set: (texts) => texts.forEach((text, n) => {
      if (n >= controls.length) more();
      controls[n].write(text);
      if (input.repeats && n === texts.length - 1) more();
    }),
    mark: (message) => {
      error.textContent = message;
      for (const { input: control } of controls) message ? control.setAttribute("aria-invalid", "true") : control.removeAttribute("aria-invalid");
    },
  };
}

/** The job as it stands in the form: key and text of each value. */
function job() {
  return Object.entries(fields).flatMap(([key, one]) => one.values().map((text) => [key, text]));
}

/** A job as the library takes it: a text, or a list of them. */
function asJob(pairs) {
  const taken = {};
  for (const [key, text] of pairs) taken[key] = key in taken ? [taken[key], text].flat() : text;
  return taken;
}

const quoted = (text) => (/^[\w.,:@%=+-]+$/.test(text) ? text : `'${text.replaceAll("'", "'\\''")}'`);

/** Asks the library and shows its page, or its complaint beside the field that is at fault. */
function answer() {
  const pairs = job();
  writeAddress(question, pairs);
  for (const one of Object.values(fields)) one.mark("");
  place("complaint").textContent = "";
  const given = element("dl");
  for (const [key, text] of pairs) given.append(element("dt", {}, words(key)), element("dd", {}, text));
  place("given").replaceChildren(element("h2", {}, "Given"), given);
  place("command").textContent = ["tauten", question, ...pairs.flatMap(([key, text]) => text === "yes" && fields[key].isFlag ? [`--${key}`] : [`--${key}`, quoted(text)])].join(" ");
  const start = performance.now();
  try {
    place("answer").innerHTML = tauten.page(question, asJob(pairs), "html");
    place("answer").hidden = false;
    foldTables(place("answer"));
  } catch (error) {
    if (error.name !== "TautenError") throw error;
    place("answer").hidden = true;
    const at = fields[error.argument];
    if (at) at.mark(error.message);
    else place("complaint").textContent = error.message;
    if (pairs.length === 0) place("complaint").textContent = "Fill in what you know, or take the example.";
  }
  const first = place("answer").hidden ? place("complaint").textContent : place("answer").querySelector("strong").textContent;
  place("first-line").textContent = first;
  place("first-line").hidden = first === "";
  document.body.dataset.took = (performance.now() - start).toFixed(1);
}

let typing;
function changed() {
  clearTimeout(typing);
  typing = setTimeout(answer, 200);
}

/** Shows the form of the question that the address names. */
async function open() {
  const { name, given } = readAddress();
  const known = Object.hasOwn(tautenQuestions, name);
  document.body.dataset.ready = "";
  place("list").hidden = known;
  place("asking").hidden = !known;
  if (!known) {
    question = "";
    document.title = "At the bench";
    place("title").textContent = "At the bench";
    document.body.dataset.ready = "yes";
    return;
  }
  question = name;
  const { summary, module } = tautenQuestions[name];
  document.title = `${summary} - at the bench`;
  place("title").textContent = summary;
  const lib = await library(module);
  if (question !== name) return; // another was asked meanwhile
  tauten = lib;
  const inputs = tauten.catalogue.questions[name].keys;
  const first = FIRST[name].filter((key) => key in inputs);
  fields = Object.fromEntries([...first, ...Object.keys(inputs).filter((key) => !first.includes(key))].map((key) => [key, field(key, inputs[key])]));
  for (const [key, one] of Object.entries(fields)) one.isFlag = inputs[key].example === "yes" && !inputs[key].words.length;
  const rest = Object.keys(inputs).filter((key) => !first.includes(key));
  const unknown = [];
  for (const key of new Set(given.keys())) {
    if (key in fields) fields[key].set(given.getAll(key));
    else unknown.push(key);
  }
  // What a picture asks with is set for it, not by its reader.
  const details = element("details", { open: rest.some((key) => given.has(key) && key !== "trials") }, element("summary", {}, `More inputs (${rest.length})`),
    ...rest.map((key) => fields[key].node));
  place("fields").replaceChildren(...first.map((key) => fields[key].node), ...(rest.length ? [details] : []));
  answer();
  if (unknown.length) place("complaint").textContent = `The link names what this question does not take: ${unknown.join(", ")}.`;
  document.body.dataset.ready = "yes";
}

function begin() {
  for (const [name, { summary }] of Object.entries(tautenQuestions))
    place("list").append(element("li", {}, element("a", { href: `#${name}` }, element("b", {}, summary), `tauten ${name}`)));
  place("form").addEventListener("submit", (event) => event.preventDefault());
  place("example").addEventListener("click", () => {
    writeAddress(question, Object.entries(EXAMPLES[question]));
    open();
  });
  place("clear").addEventListener("click", () => {
    writeAddress(question, []);
    open();
  });
  place("first-line").addEventListener("click", () => place("answer").scrollIntoView());
  place("print").addEventListener("click", () => window.print());
  const offer = place("copy").textContent;
  place("copy").addEventListener("click", async () => {
    try {
      await navigator.clipboard.writeText(location.href);
      place("copy").textContent = "Copied";
      setTimeout(() => (place("copy").textContent = offer), 3000);
    } catch {
      window.prompt("The link of this job:", location.href); // an old browser, or a page from the file system
    }
  });
  place("derive").addEventListener("click", async () => {
    place("derivation").textContent = "Loading ...";
    const whole = await library("tauten");
    try {
      place("derivation").innerHTML = whole.explain(question, asJob(job()), "html");
      foldTables(place("derivation"));
    } catch (error) {
      place("derivation").textContent = error.message;
    }
  });
  window.addEventListener("hashchange", open);
  open();
}
begin();
