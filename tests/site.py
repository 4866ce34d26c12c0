"""Looks at the built documentation, and at answers as notebooks show them, in a browser without a screen.

Each page is loaded once, from the file system, and looked at as wide as a phone and as a desk, light and dark; the pages of
headers, which are made alike by the hundred, as wide as a phone. It fails for a
message on the console, a link, picture or formula that does not show, text that runs over the edge, that is smaller than 12 px or
of a contrast below 4.5, a control that the keyboard does not reach, a link to a file that is not there, and a page without a title.
Usage: site.py FOLDER [--shots FOLDER] [--only WORD]. Ends with `N passed, M failed`.
"""
import argparse
import base64
import concurrent.futures
import gzip
import html
import itertools
import json
import math
import os
import pathlib
import random
import re
import shlex
import shutil
import statistics
import subprocess
import sys
import tempfile
import time
import urllib.parse

import tauten
from tauten import uncertainty
from selenium import webdriver
from selenium.webdriver.chrome.options import Options
from selenium.webdriver.chrome.service import Service
from selenium.webdriver.common.action_chains import ActionChains
from selenium.webdriver.common.keys import Keys

PROGRAM = pathlib.Path(os.environ.get("TAUTEN_PROGRAM", pathlib.Path(tauten.__file__).resolve().parents[2] / "bin" / "tauten"))
PHONE, DESK = (390, 844), (1280, 900)
SHOTS = ("index.html", "guides/clamp-load.html", "guides/first-answer.html", "guides/stop-torque.html", "guides/embedding.html",
         "reference/formulas/tightening_torque.html", "reference/formulas/nut_factor.html",
         "lessons/crowfoot.html", "lessons/scatter_budget.html", "reference/verification/index.html", "reference/verification/tools.html",
         "reference/cpp/question-clamp_answer.html", "reference/cpp/question-clamp_uncertainty.html", "reference/python/clamp.html",
         "reference/python/plots.html", "reference/python/index.html",
         "background/nomenclature.html", "install.html", "guides/charts.html", "lessons/crowfoot_handout.html", "lessons/index.html", "reference/formulas/index.html",
         "reference/formulas/of-tightening.html", "changelog.html", "genindex.html",
         *(f"bench/{name}.html" for name in ("index", "clamp", "curve", "crowfoot", "stuck", "ring")))
THEMES = ("light", "dark")

# What is wrong with the page that is loaded in a window of the width given; an empty list if nothing is. (A phone makes
# the window as wide as the page, so it must not be asked.)
LOOK = """
const wrong = [], width = arguments[0];
window.dispatchEvent(new Event('resize')); // comes by itself with the next frame only
const page = document.documentElement;
if (!document.title || !document.querySelector('h1')) wrong.push('no title');
// Wide things may scroll by themselves; anything else must end within the window.
const scrolls = e => e && e.getAttribute('role') !== 'main' &&
  (['auto', 'scroll'].includes(getComputedStyle(e).overflowX) || scrolls(e.parentElement));
const wide = [...document.querySelectorAll('[role=main] *')].filter(
  e => e.getBoundingClientRect().right > width + 1 && e.getBoundingClientRect().height > 0 && !scrolls(e));
if (page.scrollWidth > width + 1 || wide.length)
  wrong.push('runs over the edge: ' + wide.slice(0, 3).map(e => e.tagName + ' ' + e.textContent.trim().slice(0, 40)).join(' | '));
for (const image of document.images)
  if (!image.complete || image.naturalWidth === 0) wrong.push('picture does not show: ' + image.src);
for (const formula of document.querySelectorAll('math')) {
  const box = formula.getBoundingClientRect();
  if (formula.namespaceURI !== 'http://www.w3.org/1998/Math/MathML' || formula.children.length === 0)
    wrong.push('not a formula: ' + formula.textContent);
  else if (box.height < 6 || box.width < 3) wrong.push('formula does not show: ' + formula.textContent);
}
if (document.querySelector('merror')) wrong.push('broken formula');
const text = document.querySelector('[role=main]')?.innerText || '';
const bare = text.match(/\\$[^$\\n]{1,60}\\$|\\\\(frac|mathrm|mu)\\b/);
if (bare && ![...document.querySelectorAll('pre')].some(block => block.innerText.includes(bare[0]))) wrong.push('bare LaTeX: ' + bare[0]);
for (const sentence of document.querySelectorAll('[role=main] p, [role=main] li')) {
  const words = sentence.cloneNode(true);
  words.querySelectorAll('code, pre, math, ul, ol').forEach(e => e.remove());
  if (words.textContent.includes('$')) wrong.push('a bare $: ' + words.textContent.trim().slice(0, 40));
}
// Code and sentences wrap: only what is aligned in columns may be wider than its place, and then the edge throws a shadow.
for (const pre of document.querySelectorAll('[role=main] pre'))
  if (pre.scrollWidth > pre.clientWidth + 1)
    wrong.push('is cut off: ' + pre.innerText.trim().slice(0, 60));
for (const place of document.querySelectorAll('[role=main] .table-wrapper, [role=main] .aligned'))
  if (place.scrollWidth > place.clientWidth + 1 && !getComputedStyle(place).backgroundImage.includes('gradient'))
    wrong.push('goes on without a hint: ' + place.innerText.trim().slice(0, 40));
for (const drawing of document.querySelectorAll('[role=main] .answer svg'))
  if (drawing.parentElement.scrollWidth > drawing.parentElement.clientWidth + 1 && !getComputedStyle(drawing.parentElement).maskImage.includes('gradient'))
    wrong.push('a drawing is cut off without a hint: ' + drawing.textContent.trim().slice(0, 40));
for (const table of document.querySelectorAll('[role=main] table:has(thead)'))
  if (width < 600 && document.querySelector('link[href*="fold.css"]') && table.parentElement.scrollWidth > table.parentElement.clientWidth + 1
      && table.tBodies[0]?.rows.length <= 60 && !table.querySelector('[colspan], [rowspan]'))
    wrong.push('table does not fold: ' + table.innerText.trim().slice(0, 40));
// A fraction is higher than a line: so formulas are really laid out.
const fraction = document.querySelector('math mfrac');
if (fraction && fraction.getBoundingClientRect().height < 1.2 * parseFloat(getComputedStyle(fraction).fontSize))
  wrong.push('fractions are not laid out');
return [wrong, document.querySelectorAll('math').length];
"""


# Whether everything reads: sizes and contrast of every text that is seen, in the mode that is set; then whether the keyboard
# reaches every control.
READS = """
const wrong = new Map(), note = (reason, e) => wrong.has(reason) || wrong.set(reason, e.textContent.trim().slice(0, 40));
const parse = text => (text.match(/[\\d.]+/g) || []).map(Number);
const light = ([r, g, b]) => [r, g, b].map(c => c / 255).map(c => c <= 0.03928 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)
  .reduce((sum, c, i) => sum + c * [0.2126, 0.7152, 0.0722][i], 0);
const over = (top, ground) => top.length < 4 ? top : ground.map((c, i) => c + (top[i] - c) * top[3]);
const grounds = new Map();
const ground = e => {  // what lies behind a text; pictures that cover it are shadows at edges
  if (!e) return [255, 255, 255];
  if (!grounds.has(e)) {
    const own = parse(getComputedStyle(e).backgroundColor);
    grounds.set(e, own.length === 3 ? own : over(own, ground(e.parentElement)));
  }
  return grounds.get(e);
};
const hidden = e => e.closest('.visually-hidden') || !e.checkVisibility({opacityProperty: true, visibilityProperty: true});
const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT), seen = new Set();
while (walker.nextNode()) {
  const e = walker.currentNode.parentElement;
  if (seen.has(e) || !walker.currentNode.data.trim() || /^(SCRIPT|STYLE|NOSCRIPT|TITLE|OPTION)$/i.test(e.tagName)) continue;
  seen.add(e);
  if (hidden(e)) continue;
  const style = getComputedStyle(e), drawing = e.closest('svg');
  // A drawing that is made smaller makes its text smaller.
  const scale = drawing && drawing.viewBox.baseVal?.width ? drawing.getBoundingClientRect().width / drawing.viewBox.baseVal.width : 1;
  const size = parseFloat(style.fontSize) * scale;
  if (size < 11.99) note(`${size.toFixed(1)} px ${e.tagName}`, e);
  if (e.closest('svg')) continue;
  const back = ground(e), [a, b] = [light(over(parse(style.color), back)), light(back)].sort((a, b) => b - a);
  const contrast = (a + 0.05) / (b + 0.05);
  if (contrast < 4.5) note(`contrast ${contrast.toFixed(1)} of ${style.color} on ${back.map(Math.round)}, ${e.tagName} ${e.className}`, e);
}
for (const e of document.querySelectorAll('a[href], button, input, select, textarea, summary, label[for]')) {
  if (hidden(e) || e.type === 'hidden') continue;
  const control = e.tagName === 'LABEL' ? e.control : e;
  if (e.tabIndex < 0 && !(control && (control.tabIndex >= 0 && !hidden(control) ||
      [...(control.labels || [])].some(label => label.tabIndex >= 0)))) note('the keyboard does not reach ' + e.tagName, e);
}
return [[...wrong].map(([reason, text]) => `${reason}: ${text}`), [...document.links].map(a => a.href)];
"""


def browser():
    """Chromium without a screen; reaches nothing but this machine."""
    options = Options()
    for argument in ("--headless=new", "--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu", "--in-process-gpu", "--disable-gpu-compositing",
                     "--hide-scrollbars",
                     "--disable-ipc-flooding-protection",  # a thousand addresses within seconds
                     "--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1"):
        options.add_argument(argument)
    options.set_capability("goog:loggingPrefs", {"browser": "ALL"})
    driver = webdriver.Chrome(service=Service("/usr/bin/chromedriver"), options=options)
    driver.set_script_timeout(300)
    return driver


def sized(driver, width, height):
    """Makes the window as wide as a phone or a desk, which takes longer than to look at most pages."""
    if getattr(driver, "size", None) == (width, height):
        return
    driver.size = width, height
    driver.execute_cdp_cmd("Emulation.setDeviceMetricsOverride",
                           {"width": width, "height": height, "deviceScaleFactor": 1, "mobile": width < 600})


# What a notebook lays around what it shows, as far as it matters here.
CELL = """<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>{0}</title><style>body {{ font: 14px/1.4 sans-serif; margin: 8px }} table {{ border-collapse: collapse; font-size: 12px }}
td, th {{ padding: 4px 8px }} tr:nth-child(even) {{ background: #f5f5f5 }}</style>
<div role="main"><h1>{0}</h1>{1}</div></html>"""


def cells():
    """Answers and how they come about, as a notebook shows them: name -> page."""
    foot = dict(thread="M16", property_class="8.8", condition="oiled")
    clamp = dict(socket="24mm", property_class="8.8", torque="130N.m", condition="oiled", name="<pump> & \"foot\"")
    question = uncertainty.clamp(**foot, torque="130N.m")
    answers = {
        "clamp": tauten.clamp(**clamp), "torque": tauten.torque_for(thread="M10"),
        "identify": tauten.identify(socket="24mm", property_class="8.8"),
        "reach": tauten.reach(torque="130N.m", wrench_length="400mm", extensions=[("100mm", "30deg")], multiplier_ratio=4),
        "free": tauten.free_joint(thread="M16", property_class="8.8", socket="24mm", rust="rusted", trials=5000),
        "turn": tauten.turn(**foot, grip="40mm", snug_torque="40N.m", angle="60deg"),
        "curve": tauten.curve(**foot, grip="40mm", snug_torque="40N.m"),
        "budget": uncertainty.budget(question), "monte_carlo": uncertainty.monte_carlo(question, trials=20_000),
        "sobol": uncertainty.sobol(question, trials=4096)}
    pages = {f"answer {name}": answer._repr_html_() for name, answer in answers.items()}
    pages |= {f"explanation {name}": answer.explain()._repr_html_() for name, answer in answers.items()
              if hasattr(answer, "explain")}
    return {name: CELL.format(name, page) for name, page in pages.items()}


def look(driver, page, parts, failed, links, shots):
    """Looks at the page that is loaded, in each width and mode; returns how many formulas it shows."""
    formulas = 0
    narrow = page.startswith("reference/cpp/") and page not in SHOTS  # looked at where there is least room
    sizes = (PHONE,) if narrow else (PHONE, DESK) if driver.size == PHONE else (DESK, PHONE)
    for size in sizes:
        sized(driver, *size)
        wrong, formulas = driver.execute_script(LOOK, size[0])
        # The many pages that are made alike are looked at in one mode for each width.
        themes = THEMES if narrow or page in SHOTS or not page.startswith("reference/") else THEMES[:1] if size == DESK else THEMES[1:]
        for theme in themes if parts == "site" else ("light",):
            driver.execute_script("document.body.dataset.theme = arguments[0]", theme)
            if parts == "site":
                reasons, found = driver.execute_script(READS)
                wrong += [f"{theme}: {reason}" for reason in reasons]
                for link in found:
                    links.setdefault(link.partition("#")[0].partition("?")[0], page)
            if shots and (parts != "site" or page in SHOTS):
                sized(driver, size[0], 3 * size[1])
                driver.save_screenshot(str(shots / f"{page.removesuffix('.html').replace('/', '-').replace(' ', '-')}-{size[0]}-{theme}.png"))
                sized(driver, *size)
        if wrong:
            failed.setdefault(page, []).extend(f"at {size[0]} px: {reason}" for reason in wrong)
    return formulas


# What is wrong with the sheets of a handout as they are printed.
SHEETS = """
return [...document.querySelectorAll('.sheet')].flatMap((sheet, n) => {
  const picture = sheet.querySelector('figure img'), wide = [...sheet.querySelectorAll('*')].some((e) => e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0);
  return [[sheet.scrollHeight > sheet.clientHeight + 1, 'is longer than its paper'], [wide, 'is wider than its paper'],
    [picture && picture.getBoundingClientRect().height < 150, 'has too small a picture'], [n === 0 && !picture, 'has no picture'],
    [n === 1 && sheet.querySelectorAll('.exercises li').length < 3, 'has too few exercises'],
    [n === 1 && sheet.querySelector('pre, details'), 'has code or a solution']]
    .filter(([found]) => found).map(([, reason]) => `sheet ${n + 1} ${reason}`);
})
"""


def printed(driver):
    """Prints the handout that is loaded; returns what is wrong with it."""
    driver.execute_cdp_cmd("Emulation.setEmulatedMedia", {"media": "print"})
    sized(driver, 794, 1123)  # A4 at 96 px for an inch
    wrong = driver.execute_script(SHEETS)
    paper = base64.b64decode(driver.execute_cdp_cmd("Page.printToPDF", {"preferCSSPageSize": True})["data"])
    driver.execute_cdp_cmd("Emulation.setEmulatedMedia", {"media": ""})
    pages, size = len(re.findall(rb"/Type\s*/Page\b", paper)), re.search(rb"/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]", paper)
    if pages != 2 or [round(float(side)) for side in size.groups()] != [595, 842]:
        wrong.append(f"prints {pages} pages of {size[0].decode()}")
    return wrong


def walk(driver):
    """Presses Tab through the page; returns what is seen and was not reached."""
    steps = driver.execute_script("""
        window.reached = new Set();
        document.addEventListener('focusin', event => window.reached.add(event.target));
        return document.querySelectorAll('a[href], button, input, select, summary, [tabindex="0"]').length;""")
    for _ in range(0, steps + 10, 50):
        ActionChains(driver, duration=0).send_keys(Keys.TAB * 50).perform()
    return driver.execute_script("""
        // The theme's way back to the top shows only once the page has scrolled; the key Home does the same.
        return [...document.querySelectorAll('a[href]:not(.back-to-top), button, input:not([type=hidden]), select, summary, [tabindex="0"]')].filter(
          e => e.checkVisibility({opacityProperty: true, visibilityProperty: true}) && e.tabIndex >= 0 && !window.reached.has(e))
          .map(e => e.outerHTML.slice(0, 80));""")


def figures(low, high, *units):
    """Figures with a unit, from which states are drawn."""
    return [f"{figure}{unit}" for unit in units for figure in range(low, high)]


# Jobs from which states of the forms are drawn at random: each input with the values that it may have; none leaves it out.
SIZES = ("M6", "M8", "M10", "M12", "M14", "M16", "M16x1.5", "M20", "M20x1.5", "M24", "M30")
MARKS = ("4.6", "5.6", "8.8", "10.9", "12.9")
FILMS = ("dry", "oiled", "zinc", "waxed", "black_oiled", None)
JOBS = {
    "identify": {"socket": (*figures(7, 47, "mm"), "5/8in", "3/4in", "1in"), "class": (*MARKS, "A2-70", None)},
    "thread": {"thread": (*SIZES, "M16x1.5-6g", "M8-4h", "M24-6H"), "class": (*MARKS, "A4-70", None)},
    "clamp": {"thread": SIZES, "class": MARKS, "torque": figures(3, 500, "N.m", "lbf.ft"), "condition": FILMS, "more-face": ("26mm:oiled", None)},
    "torque": {"thread": SIZES, "class": MARKS, "condition": FILMS, "clamp-load": (*figures(2, 60, "kN"), None)},
    "turn": {"thread": SIZES, "class": MARKS, "condition": FILMS, "grip": figures(20, 150, "mm"),
             "snug-torque": figures(4, 40, "N.m", "lbf.ft"), "angle": figures(10, 120, "deg")},
    "curve": {"thread": SIZES, "class": MARKS, "condition": FILMS, "layer": [f"{grip}:grey_cast_iron" for grip in figures(12, 60, "mm")],
              "snug-torque": figures(3, 30, "N.m")},
    "reach": {"torque": figures(20, 400, "N.m", "lbf.ft"), "wrench-length": (*figures(200, 800, "mm"), *figures(8, 30, "in")),
              "extension": [f"{length}@{angle}deg" for length in figures(40, 190, "mm") for angle in range(0, 181, 15)]},
    "free": {"thread": SIZES[1:], "class": MARKS, "rust": ("light_rust", "rusted", "heavy_rust"), "aid": ("fluid:24h", "heat:150K", "brush", None),
             "trials": ("2000", "5000")},
    "pattern": {"pattern": [f"circle:{bolts}:{25 * bolts}mm" for bolts in range(3, 33)] + [f"grid:2x4:{size}:70mm" for size in figures(90, 200, "mm")],
                "hole": figures(12, 24, "mm")},
    "group": {"pattern": [f"rectangle:{width}:150mm" for width in figures(80, 300, "mm")] + ["circle:6:180mm"],
              "load": [f"{across}kN:-{down}kN" for across in range(6) for down in range(1, 30)], "at": ("425mm:0mm", "150mm:80mm", None)},
    "sequence": {"pattern": [f"circle:{bolts}:{25 * bolts}mm" for bolts in range(4, 26)], "torque": figures(30, 200, "N.m", "lbf.ft"),
                 "interaction": ("0", "0.05", "0.1", "0.2", "0.3")},
    "prying": {"effective-length": figures(90, 300, "mm"), "bolt-to-web": figures(25, 70, "mm"), "bolt-to-edge": figures(30, 60, "mm"),
               "thickness": (*figures(8, 40, "mm"), None), "plate-strength": ("235MPa", "355MPa"), "bolt-strength": figures(40, 200, "kN"),
               "pull": figures(20, 300, "kN")},
}
# The sliders, and the question whose first line is the sentence beside the picture.
SLIDERS = {
    "clamp": (dict(thread=("M8", "M10", "M12", "M16", "M20", "M24"), **{"class": MARKS}, torque=range(10, 400),
                   mu_thread=[n / 200 for n in range(8, 61)], mu_face=[n / 200 for n in range(8, 61)], spread=range(51)),
              lambda s: ("clamp", {"thread": s["thread"], "class": s["class"], "torque": f"{s['torque']}N.m",
                                   "thread-friction": spread(s["mu_thread"], s["spread"]),
                                   "bearing-friction": spread(s["mu_face"], s["spread"])})),
    "crowfoot": (dict(angle=range(0, 181), torque=range(20, 400), wrench=range(200, 800, 5), extension=range(25, 190, 5)),
                 lambda s: ("reach", {"torque": f"{s['torque']}N.m", "wrench-length": f"{s['wrench']}mm",
                                      "extension": f"{s['extension']}mm@{s['angle']}deg"})),
    "curve": (dict(thread=("M8", "M10", "M16", "M20"), **{"class": MARKS}, grip=range(20, 205, 5), snug=range(5, 30, 5),
                   mu=[n / 200 for n in range(12, 51)], spread=range(51)),
              lambda s: ("curve", {"thread": s["thread"], "class": s["class"], "grip": f"{s['grip']}mm", "snug-torque": f"{s['snug']}N.m",
                                   "thread-friction": spread(s["mu"], s["spread"]), "bearing-friction": spread(s["mu"], s["spread"]),
                                   "points": "150"})),
    "stuck": (dict(thread=("M8", "M10", "M12", "M16", "M20", "M24"), **{"class": (*MARKS, "A2-70")}, rust=("light_rust", "rusted", "heavy_rust"),
                   aid=("", "brush", "fluid:1h", "fluid:24h", "heat:150K", "tighten_first", "impact")),
              lambda s: ("free", {"thread": s["thread"], "class": s["class"], "rust": s["rust"], "trials": "40000",
                                  **({"aid": s["aid"]} if s["aid"] else {})})),
}
# How many states of each are compared: a stuck bolt is 40,000 trials in every one.
STATES = {"stuck": 15, "free": 30}
EACH = 68


def spread(friction, percent):
    """A coefficient with its band, as the sliders give it."""
    return "..".join(f"{friction * part:.4f}" for part in (1 - percent / 100, 1, 1 + percent / 100))


def words(question, job):
    """A job as the words of a command."""
    return [PROGRAM, question, *(word for key, text in job.items() for word in (f"--{key}", text))]


def command(question, job, *more):
    """The answer of the command line to a job: output, or the error."""
    run = subprocess.run([*words(question, job), *more], text=True, capture_output=True)
    return run.stdout if run.returncode == 0 else run.stderr


def commands(jobs):
    """The answers of the command line to many jobs, or the errors, begun now; call the result for them. One shell starts them all, which
    costs little."""
    written, script, errors = tempfile.TemporaryFile(), tempfile.TemporaryFile(), tempfile.NamedTemporaryFile()
    for job in jobs:
        script.write(f"{shlex.join(map(str, job))} 2>{errors.name} || cat {errors.name}; printf '\\0'\n".encode())
    script.seek(0)
    shell = subprocess.Popen(["sh"], stdin=script, stdout=written)

    def answers():
        shell.wait()
        written.seek(0)
        errors.close()
        return [answer.removeprefix("tauten: ") for answer in written.read().decode().split("\0")[:-1]]
    return answers


def drawn(chance, inputs, count):
    """Random states, none twice where there are as many."""
    states = {}
    for _ in range(3 * count):
        state = {key: chance.choice(values) for key, values in inputs.items()}
        state = {key: value for key, value in state.items() if value is not None}
        states.setdefault(json.dumps(state), state)
    return list(states.values())[:count]


def plain(text):
    """Text of a page without its marks. What is zero but for rounding differs between processors."""
    return re.sub(r"-?[\d.]+e-1\d", "0", " ".join(html.unescape(re.sub(r"<[^>]*>", "", text)).split()))


# Goes through states of the page that is loaded, as links to them do, and returns what stands in an element after each.
STATES_OF = """
const [states, from, done] = arguments;
(async () => {
  const found = [];
  for (const state of states) {
    history.replaceState(null, "", "#" + state);
    dispatchEvent(new HashChangeEvent("hashchange"));
    while (!document.body.dataset.ready) await scheduler.postTask(() => {});
    const place = document.getElementById(from);
    found.push(place.hidden ? [...document.querySelectorAll(".error")].map((e) => e.textContent).join("") : place.textContent);
  }
  return found;
})().then(done, (error) => done([error.message]));
"""


def shown(driver, page, state):
    """Loads a page that computes, in a state, and waits for its answer."""
    if driver.current_url.partition("#")[0] == page and driver.current_url != f"{page}#{state}" and "index.html" in page:
        driver.execute_script("document.body.dataset.ready = ''; location.hash = arguments[0]", state)  # as a link on it does
    else:
        driver.get("about:blank")
        driver.get(f"{page}#{state}")
    for _ in range(300):
        if driver.execute_script("return document.body.dataset.ready"):
            return
        time.sleep(0.05)
    raise TimeoutError(f"{page}#{state} does not get ready")


# From a slider's move until the picture is painted; the frames of a second are those of the screen.
MOVES = """
const [key, values, done] = arguments, input = document.getElementById("control-" + key);
(async () => {
  const found = [];
  for (const value of values) {
    await new Promise((next) => setTimeout(next, 20));
    const start = performance.now();
    input.value = value;
    input.dispatchEvent(new Event("input"));
    await new Promise((next) => requestAnimationFrame(() => scheduler.postTask(next)));
    found.push(performance.now() - start);
  }
  return found;
})().then(done);
"""
RESTS = "setTimeout(() => arguments[0](Number(document.body.dataset.took)), 150 + 200)"
PAINTED = """
new PerformanceObserver((list) => arguments[0](list.getEntriesByName('first-contentful-paint')[0].startTime)).observe({type: 'paint', buffered: true})"""
# The slider that is moved on each page, through which values, and the ms within which the answer is there.
LIMITS = {"clamp": ("torque", range(60, 160, 4), 50), "crowfoot": ("angle", range(20, 120, 4), 50), "curve": ("mu", [n / 200 for n in range(16, 41)], 100),
          "stuck": ("rust", ["light_rust", "rusted", "heavy_rust"] * 8, 100), "ring": ("interaction", [n / 100 for n in range(5, 30)], 100)}


# A loop of plain arithmetic, and the ms that it takes on a phone's processor: what pages take is judged beside it, because the
# machine of a test is as fast as it happens to be.
LOOP = "let x = 0.5; for (let i = 0; i < 1e7; ++i) x = 3.7 * x * (1 - x); return x"
LOOP_ON_PHONE = 75  # four times what a desk takes


def worked(driver, work):
    """Milliseconds of its processor that the page uses for some work, and what the work returns."""
    def busy():
        metrics = driver.execute_cdp_cmd("Performance.getMetrics", {})["metrics"]
        return 1e3 * next(one["value"] for one in metrics if one["name"] == "TaskDuration")
    driver.execute_cdp_cmd("Performance.enable", {"timeDomain": "threadTicks"})
    before = busy()
    found = work()
    return busy() - before, found


def speed(driver, folder):
    """What a phone's processor has to do until each page shows, and from a slider's move to the picture."""
    wrong, loops = [], []

    def cost_of(page, what, limit, work, pieces=1):
        """Milliseconds on a phone. Repeats work that takes longer than the limit, as others use this machine too."""
        costs = []
        while not costs or len(costs) < 5 and min(costs) * LOOP_ON_PHONE > limit * min(loops):
            cost, _ = worked(driver, work)
            costs.append(cost / pieces)
            loops.append(worked(driver, lambda: driver.execute_script(LOOP))[0])
        cost = min(costs) * LOOP_ON_PHONE / min(loops)
        if cost > limit:
            wrong.append(f"{page}: {what} takes {cost:.0f} ms on a phone, more than {limit} ms")
        return cost

    for page, state in (("../index", ""), ("index", "clamp?thread=M16&class=8.8&torque=150N.m"), ("clamp", "")):
        def load():
            driver.get("about:blank")  # or a second look would only go to another place of the same page
            driver.get(f"{(folder / 'bench').as_uri()}/{page}.html#{state}")
            driver.execute_async_script(PAINTED)
        print(f"{page}: {cost_of(page, 'the first paint', 1000, load):.0f} ms of work until the first paint on a phone")
    for page, (key, values, limit) in LIMITS.items():
        shown(driver, (folder / "bench" / f"{page}.html").as_uri(), "")
        took = []
        cost = cost_of(page, "a move of the slider", limit,
                       lambda: took.extend(driver.execute_async_script(MOVES, key, list(values))), len(values))
        rested = driver.execute_async_script(RESTS)
        print(f"{page}: {cost:.0f} ms of work for a slider's move on a phone; here {statistics.median(took):.0f} ms until the picture, and "
              f"{rested:.0f} ms for the whole answer once it rests")
    print(f"a loop that takes {LOOP_ON_PHONE} ms on a phone took {min(loops):.0f} to {max(loops):.0f} ms here")
    return wrong


def same_states(driver, folder, seed):
    """Compares random states of forms and sliders with the command line; returns what differs."""
    chance, wrong, compared, start = random.Random(seed), [], 0, time.monotonic()
    bench = folder / "bench"
    forms = [(question, job) for question, inputs in JOBS.items() for job in drawn(chance, inputs, STATES.get(question, EACH))]
    sliders = [(page, state) for page, (controls, _) in SLIDERS.items() for state in drawn(chance, controls, STATES.get(page, EACH))]
    printed = commands([words(question, job) + ["--format", "html"] for question, job in forms])
    said = commands([words(*SLIDERS[page][1](state)) + ["--short"] for page, state in sliders])

    shown(driver, (bench / "index.html").as_uri(), "")
    ours = driver.execute_async_script(STATES_OF, [f"{question}?{urllib.parse.urlencode(job)}" for question, job in forms], "answer")
    for page in SLIDERS:
        shown(driver, (bench / f"{page}.html").as_uri(), "")
        ours += driver.execute_async_script(STATES_OF, ["?" + urllib.parse.urlencode(state) for of, state in sliders if of == page], "says")
    for (name, state), here, there in itertools.zip_longest(forms + sliders, ours, printed() + said(), fillvalue=""):
        here, there = plain(html.escape(here)), plain(there)
        compared += 1
        if not here or here != there:
            at = max(0, len(os.path.commonprefix([here, there])) - 40)
            wrong.append(f"{name} {state}: {here[at:at + 120]!r} here, {there[at:at + 120]!r} on the command line")

    # The ring draws the loads of all bolts after a step.
    shown(driver, (bench / "ring.html").as_uri(), "")
    rings = drawn(chance, dict(bolts=range(4, 13, 2), method=("crosswise", "circular"), interaction=[n / 100 for n in range(46)], step=range(1, 13)), EACH)
    asked = commands([words("sequence", {"pattern": f"circle:{ring['bolts']}:{25 * ring['bolts']}mm", "method": ring["method"],
                                         "interaction": str(ring["interaction"]), "load": "40kN", "shortfall": "5%"}) + ["--json"] for ring in rings])
    pictures = driver.execute_async_script(STATES_OF, ["?" + urllib.parse.urlencode(ring) for ring in rings], "picture")
    for ring, picture, answer in zip(rings, pictures, asked(), strict=True):
        loads = json.loads(answer)["history"][ring["step"] - 1]
        bars = "".join(f"{bolt}{float(f'{load / 1e3:.2g}'):g}" for bolt, load in enumerate(loads, 1))
        compared += 1
        if bars not in picture:
            wrong.append(f"ring {ring}: {picture} here, {bars} on the command line")
    # Each bolt stands where the library puts it: x to the right and y up there, y down here.
    shown(driver, (bench / "ring.html").as_uri(), "?bolts=6")
    drawn_at = driver.execute_script("return [...document.querySelectorAll('#picture .bolt')].map(e => [e.cx, e.cy].map(a => a.baseVal.value))")
    placed = json.loads(command("pattern", {"pattern": "circle:6:150mm"}, "--json"))["positions"]
    middle = [statistics.mean(axis) for axis in zip(*drawn_at)]
    scale = math.dist(drawn_at[0], middle) / 75e-3
    compared += 1
    if any(math.dist(at, (middle[0] + scale * x, middle[1] - scale * y)) > 1 for at, (x, y) in zip(drawn_at, placed, strict=True)):
        wrong.append(f"ring: bolts at {drawn_at} here, {placed} on the command line")
    print(f"{compared} states of forms and sliders compared with the command line in {time.monotonic() - start:.0f} s")
    return wrong


def computes(driver, folder, seed):
    """Pages that compute: random states beside the command line; bad input at its field; size, speed, targets and weight."""
    bench = (folder / "bench" / "index.html").as_uri()
    sized(driver, *DESK)
    wrong = same_states(driver, folder, seed)
    sized(driver, *PHONE)
    shown(driver, bench, "")
    listed = driver.execute_script("return Object.keys(tautenQuestions)")
    wrong += [f"{question} has no states to compare" for question in listed if question not in JOBS]
    for question in listed:
        shown(driver, bench, question)
        missing = driver.execute_script("return FIRST[arguments[0]].filter(key => !(key in fields))", question)
        units = driver.execute_script("""return Object.entries(tauten.catalogue.questions[question].keys).flatMap(([key, input]) =>
            unitsOf(input).filter(unit => { try { tauten.ask(question, { [key]: '1' + unit }); }
              catch (error) { return /unit/.test(error.message) } return false }).map(unit => key + ' in ' + unit))""")
        example = driver.execute_async_script("""document.body.dataset.ready = ''; document.getElementById('example').click();
            const wait = () => document.body.dataset.ready ? arguments[0](document.getElementById('answer').innerText) : setTimeout(wait); wait()""")
        wrong += [f"{question} has no input {key}" for key in missing] + [f"{question} does not take {unit}" for unit in units]
        if not example:
            wrong.append(f"the example of {question} gives no answer")
    # A bare figure takes the unit beside it; what is wrong is explained at its field, in the words of the library.
    state = "const e = document.getElementById('input-torque'); return [e.getAttribute('aria-invalid'), e.closest('.field').innerText]"
    shown(driver, bench, "identify?socket=5/8in")
    fraction = driver.execute_script("""const text = document.getElementById('input-socket');
        return [text.value, text.nextElementSibling?.value, document.getElementById('first-line').getBoundingClientRect().bottom <= innerHeight]""")
    if fraction != ["5/8", "in", True]:
        wrong.append(f"a socket of 5/8 in, and the first line of its answer in sight: {fraction}")
    for typed, refused in (("150", False), ("150parsec", True)):
        shown(driver, bench, f"clamp?thread=M16&torque={typed}")
        invalid, text = driver.execute_script(state)
        message = command("clamp", {"thread": "M16", "torque": typed}).strip().rpartition("tauten: ")[2]
        if refused != (invalid == "true") or refused and message not in text:
            wrong.append(f"torque {typed}: {invalid}, {text!r}; the command line: {message!r}")
    small = driver.execute_script("""return [...document.querySelectorAll('button, select, nav a, input:not([type=checkbox]), summary')].filter(
        e => e.checkVisibility() && e.getBoundingClientRect().height < 48).map(e => e.outerHTML.slice(0, 60))""")
    wrong += [f"smaller than 48 px: {one}" for one in small]
    wrong += speed(driver, folder)
    first = ("index.html", "bench.css", "fold.css", "fold.js", "tauten.js", "questions.js", "bench.js", "ask.js", "math.woff2", "modules/clamp.js")
    weight = sum(len(gzip.compress((folder / "bench" / name).read_bytes())) for name in first)
    if weight > 300e3:
        wrong.append(f"the first page weighs {weight / 1e3:.0f} kB")
    print(f"the first page weighs {weight / 1e3:.0f} kB with its font")
    return wrong


# What is looked for, and what comes first.
SEARCHES = {"clamp load": "guides/clamp-load", "preload": "guides/clamp-load", "mu": "guides/clamp-load",
            "torque wrench": "guides/wrench-setting", "crowfoot": "guides/wrench-setting", "rusted bolt": "guides/stop-torque",
            "torque chart": "guides/charts", "handout": "guides/teaching", "pcd": "guides/bolt-groups"}
FIRST = "return document.querySelector('#search-results li a')?.getAttribute('href') || ''"
WALKED = ("bench/clamp.html", "bench/index.html", "index.html", "guides/clamp-load.html", "reference/formulas/nut_factor.html")


def some(folder, pages, answers, shots):
    """Looks at some of the pages in a browser of its own."""
    failed, links, formulas = {}, {}, 0
    notebook = pathlib.Path(tempfile.mkdtemp())
    driver = browser()
    sized(driver, *DESK)
    try:
        for page in pages:
            if page.startswith("bench/"):
                shown(driver, (folder / page).as_uri(), "")
            else:
                driver.get((folder / page).as_uri())
            formulas += look(driver, page, "site", failed, links, shots)
            if page.endswith("_handout.html"):
                failed.setdefault(page, []).extend(printed(driver))
            if page in WALKED and (missed := walk(driver)):
                failed.setdefault(page, []).append(f"Tab does not reach {len(missed)}: {missed[:3]}")
            # Headings and the like of pages that the builder adds.
            if page in ("search.html", "genindex.html", "404.html"):
                failed[page] = [reason for reason in failed.get(page, []) if "no title" not in reason]
            if page == "search.html":
                for words, first in SEARCHES.items():
                    driver.get((folder / page).as_uri() + "?q=" + urllib.parse.quote(words))
                    for _ in range(50):
                        if found := driver.execute_script(FIRST):
                            break
                        time.sleep(0.1)
                    if not found.startswith(first):
                        failed.setdefault(f"search for {words}", []).append(f"{found or 'nothing'} comes first")
            if page == "bench/index.html":
                failed.setdefault(page, []).extend(computes(driver, folder, 15))
            failed.setdefault(page, []).extend(f"console: {entry['message']}" for entry in driver.get_log("browser")[:5])
        for name, text in answers:
            (notebook / "page.html").write_text(text, encoding="utf-8")
            driver.get((notebook / "page.html").as_uri())
            found = look(driver, name, "cell", failed, links, shots)
            if name.startswith("explanation") and not found:
                failed.setdefault(name, []).append("no formula")
            if "&lt;" in (text := driver.execute_script("return document.body.innerText")) or "&amp;" in text:
                failed.setdefault(name, []).append("a mark is escaped twice")
    finally:
        driver.quit()
        shutil.rmtree(notebook)
    return {page: reasons for page, reasons in failed.items() if reasons}, links, formulas


def main():
    """Looks at every page, with two browsers beside each other."""
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("folder", type=pathlib.Path, help="built site")
    parser.add_argument("--shots", type=pathlib.Path, help="write screenshots of some pages into this folder")
    parser.add_argument("--only", default="", help="pages whose name has this word")
    arguments = parser.parse_args()
    folder = arguments.folder.resolve()
    if arguments.shots:
        arguments.shots.mkdir(parents=True, exist_ok=True)
    pages = sorted(path.relative_to(folder).as_posix() for path in folder.rglob("*.html") if "_static" not in path.parts)
    pages = [page for page in pages if arguments.only in page]
    answers, start = [*cells().items()], time.monotonic()
    failed, links, formulas = {}, {}, 0
    with concurrent.futures.ThreadPoolExecutor(2) as pool:
        for wrong, found, count in pool.map(lambda n: some(folder, pages[n::2], answers[n::2], arguments.shots), range(2)):
            failed |= wrong
            links |= found
            formulas += count
    for link, page in links.items():
        place = pathlib.Path(urllib.parse.unquote(urllib.parse.urlsplit(link).path))
        if link.startswith("file:") and not place.is_file():
            failed.setdefault(page, []).append(f"links to {link}, which is not there")
    if not formulas and not arguments.only:
        failed["formulas"] = ["no page shows any"]
    for page, reasons in failed.items():
        print(f"{page}: " + "; ".join(reasons[:12]))
    print(f"{len(pages)} pages and {len(answers)} answers at {PHONE[0]} and {DESK[0]} px, light and dark, {len(links)} links, "
          f"{formulas} formulas, in {time.monotonic() - start:.0f} s")
    print(f"{max(0, len(pages) + len(answers) - len(failed))} passed, {len(failed)} failed")
    return bool(failed)


if __name__ == "__main__":
    sys.exit(main())
