// What all pages that compute share: modules, state in the address, sliders, drawings. No formula stands in these files: every
// figure comes from the library, whose modules are the scripts in modules/.
"use strict";

const SITE_THEME = () => { try { return localStorage.getItem("theme"); } catch { return null; } };
{
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const set = () => {
    const chosen = SITE_THEME();
    document.body.dataset.theme = chosen === "light" || chosen === "dark" ? chosen : dark.matches ? "dark" : "light";
  };
  set();
  dark.addEventListener("change", set);
}

// --- modules: a page from the file system may not fetch, so each module is a script with its bytes (gzip, base64) ---
const waiting = {};
const loaded = {};

/** Called by the scripts in modules/. */
function tautenModule(name, text) {
  waiting[name](text);
}

async function unpacked(text) {
  const packed = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
  return new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"))).arrayBuffer();
}

/** \return the library with what this module has; loaded once */
function library(name) {
  loaded[name] ??= new Promise((resolve, reject) => {
    waiting[name] = resolve;
    const script = document.createElement("script");
    script.src = `modules/${name}.js`;
    script.onerror = () => reject(new Error(`modules/${name}.js is missing: copy the whole folder`));
    document.head.append(script);
  }).then(unpacked).then((bytes) => tautenLoader.load(bytes));
  return loaded[name];
}

// What no page expects, such as a browser that is too old, is not kept to the console.
window.addEventListener("unhandledrejection", ({ reason }) => {
  place("asking")?.removeAttribute("hidden");
  tell(place("says") ?? place("complaint"), new Error(`This page does not work here: ${reason.message}. It needs a browser of 2023 or later.`));
});

// --- small helpers ---
const place = (id) => document.getElementById(id);

/** An element with attributes and children; `class`, `for` and the like as they are written in HTML. */
function element(name, attributes = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) if (value !== false && value != null) made.setAttribute(key, value === true ? "" : value);
  made.append(...children);
  return made;
}

/** A table of texts. */
const table = (columns, rows) => element("table", {},
  element("thead", {}, element("tr", {}, ...columns.map((text) => element("th", { scope: "col" }, text)))),
  element("tbody", {}, ...rows.map((row) => element("tr", {}, ...row.map((text) => element("td", {}, String(text)))))));
window.addEventListener("resize", () => foldTables(document));

/** An element within a drawing. */
function drawn(name, attributes = {}, text = "") {
  const made = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (text) made.textContent = text;
  return made;
}

const significant = (value, digits = 3) => value == null ? "-" : Number(value.toPrecision(digits)).toString();

/** A torque to set or to stop at: three figures, never rounded up past what was found to be safe. */
function settable(torque) {
  if (!(torque > 0)) return significant(torque);
  const step = 10 ** (Math.floor(Math.log10(torque)) - 2);
  return significant(Math.floor((torque / step) * (1 + 1e-9)) * step);
}

/** Width of a drawing in px: what is drawn has the size of the window, so that figures read on a phone as well. */
const widthOf = (picture) => Math.max(300, Math.round(picture.clientWidth || 640));

/** Round figures for an axis from 0 to a maximum. */
function ticks(maximum, count = 5) {
  const rough = maximum / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((n) => n * power).find((size) => size >= rough);
  return Array.from({ length: Math.floor(maximum / step + 1e-9) + 1 }, (_, n) => n * step);
}

/** State of an address: #name?key=value&key=value */
function readAddress() {
  const [name, query = ""] = location.hash.replace(/^#/, "").split("?");
  return { name: decodeURIComponent(name), given: new URLSearchParams(query) };
}

function writeAddress(name, pairs) {
  const query = new URLSearchParams(pairs).toString();
  history.replaceState(null, "", `#${name}${query ? "?" + query : ""}`);
}

/**
 * A page with sliders and choices. `controls` are { key, label, min, max, step, value, show } or { key, label, choices, value };
 * `draw(state, coarse)` is called when something moves, and again with coarse = false once it rests.
 */
async function explorable(form, controls, draw) {
  const state = {};
  const shown = {};
  let resting;
  let pending = false;

  const show = (control) => {
    if (shown[control.key]) shown[control.key].textContent = control.show ? control.show(state[control.key]) : state[control.key];
  };
  const redraw = (coarse) => {
    const start = performance.now();
    draw(state, coarse);
    document.body.dataset.took = (performance.now() - start).toFixed(1);
  };
  const moved = () => {
    for (const control of controls) show(control);
    if (!pending) {
      pending = true;
      requestAnimationFrame(() => {
        pending = false;
        redraw(true);
        rest(); // from here on, so that a slow phone does not draw it all between two moves
      });
    }
    clearTimeout(resting);
  };
  const rest = () => {
    clearTimeout(resting);
    resting = setTimeout(() => {
      // Browsers take few changes of the address in a second, so not each move is one.
      writeAddress("", Object.entries(state).filter(([, value]) => value !== ""));
      redraw(false);
    }, 150);
  };

  for (const control of controls) {
    const id = `control-${control.key}`;
    const input = control.choices
      ? element("select", { id }, ...control.choices.map((choice) => {
        const [value, text] = Array.isArray(choice) ? choice : [choice, choice];
        return element("option", { value }, text);
      }))
      : element("input", { id, type: "range", min: control.min, max: control.max, step: control.step });
    input.addEventListener("input", () => {
      state[control.key] = control.choices ? input.value : Number(input.value);
      moved();
    });
    control.input = input;
    const label = element("label", { for: id }, control.label);
    if (!control.choices) label.append(shown[control.key] = element("span", { class: "value" }));
    form.append(element("div", { class: "field" }, label, input));
  }
  // Takes the state of the address; what it does not name begins as the page does.
  const take = () => {
    const { given } = readAddress();
    for (const control of controls) {
      const { input } = control;
      if (!control.choices) input.max = control.max; // an answer may have narrowed it
      input.value = given.get(control.key) ?? control.value;
      if (control.choices && input.selectedIndex < 0) input.value = control.value;
      state[control.key] = control.choices ? input.value : Number(input.value);
      show(control);
    }
    clearTimeout(resting);
    redraw(false);
  };
  form.addEventListener("submit", (event) => event.preventDefault());
  window.addEventListener("resize", () => redraw(false));
  window.addEventListener("hashchange", take);
  take();
  document.body.dataset.ready = "yes";
  return { state, moved };
}

/** What went wrong, in the library's own words, where the sentence of the answer stands. */
function tell(where, error) {
  where.textContent = error.message;
  where.classList.add("error");
}

function say(text) {
  place("says").textContent = text;
  place("says").classList.remove("error");
}

// --- what the explorables say to the library and take from it ---
const SIZES = ["M8", "M10", "M12", "M16", "M20", "M24"];
const MARKS = ["4.6", "5.6", "6.8", "8.8", "10.9", "12.9"];

/** A coefficient of friction with its band, as the library reads it. */
const band = (typical, percent) => [1 - percent / 100, 1, 1 + percent / 100].map((part) => (typical * part).toFixed(4)).join("..");

/** The first line of the page of an answer. */
const headline = (questions, question, job) => questions.page(question, job, "text").split("\n\n")[0].replaceAll("\n", " ");

/** A link below the sentence to the whole answer, which has its cautions, as the form of its question shows it. */
function linkWhole(question, job) {
  if (!place("whole")) place("says").after(element("p", { class: "whole" }, element("a", { id: "whole" }, "The whole answer, with its cautions")));
  place("whole").href = `index.html#${question}?${new URLSearchParams(job)}`;
}

/** A formula with the values of a step of an answer, as the library writes it. */
function filledIn(formulas, { formula, inputs }) {
  const names = Object.keys(formulas.catalogue.formulas[formula].inputs);
  return formulas.explain(formula, Object.fromEntries(names.map((name, n) => [name, inputs[n]])), "mathml");
}

/** Asks, and shows what the library has to object. */
function asking(ask) {
  try {
    ask();
  } catch (error) {
    if (error.name !== "TautenError") throw error;
    tell(place("says"), error);
  }
}

/** Axes of a drawing: x and y from 0 to a maximum, with grid, figures and titles; returns the two scales. */
function axes(picture, { height, x, y, left = y.percent ? 76 : 62, bottom = 52, top = 16, right = 18 }) {
  const width = widthOf(picture);
  if (width < 450) height = Math.min(height, 260); // a phone shows the sliders below it as well
  picture.replaceChildren();
  picture.setAttribute("viewBox", `0 0 ${width} ${height}`);
  const across = (value) => left + (value / x.maximum) * (width - left - right);
  const up = (value) => height - bottom - (value / (y.maximum || 1)) * (height - bottom - top);
  for (const value of ticks(x.maximum, width < 450 ? 4 : 6)) {
    picture.append(drawn("line", { x1: across(value), x2: across(value), y1: up(0), y2: up(y.maximum), stroke: "var(--grid)" }),
      drawn("text", { x: across(value), y: up(0) + 20, "text-anchor": "middle" }, significant(value)));
  }
  for (const value of y.maximum ? ticks(y.maximum, 5) : []) {
    picture.append(drawn("line", { x1: across(0), x2: across(x.maximum), y1: up(value), y2: up(value), stroke: "var(--grid)" }),
      drawn("text", { x: left - 8, y: up(value) + 5, "text-anchor": "end" }, y.percent ? `${significant(100 * value)} %` : significant(value)));
  }
  picture.append(drawn("text", { x: (left + width - right) / 2, y: height - 10, "text-anchor": "middle" }, x.title),
    drawn("text", { x: 18, y: (up(0) + top) / 2, "text-anchor": "middle", transform: `rotate(-90 18 ${(up(0) + top) / 2})` }, y.title));
  return { across, up };
}

const path = (points) => points.map(([x, y], n) => `${n ? "L" : "M"}${x.toFixed(1)} ${y.toFixed(1)}`).join("");
