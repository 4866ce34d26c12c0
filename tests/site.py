"""Looks at the built documentation, and at answers as notebooks show them, in a browser without a screen.

Each page is loaded once, from the file system, and looked at as wide as a phone and as a desk, light and dark. It fails for a
message on the console, a link, picture or formula that does not show, text that runs over the edge, that is smaller than 12 px or
of a contrast below 4.5, a control that the keyboard does not reach, a link to a file that is not there, and a page without a title.
Usage: site.py FOLDER [--shots FOLDER] [--only WORD]. Ends with `N passed, M failed`.
"""
import argparse
import concurrent.futures
import gzip
import json
import os
import pathlib
import random
import re
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
         "background/nomenclature.html", "install.html", "lessons/index.html", "reference/formulas/index.html",
         "reference/formulas/of-tightening.html", "changelog.html", "genindex.html",
         *(f"bench/{name}.html" for name in ("index", "clamp", "curve", "crowfoot", "stuck", "ring")))
THEMES = ("light", "dark")

# What is wrong with the page that is loaded in a window of the width given; an empty list if nothing is. (A phone makes
# the window as wide as the page, so it must not be asked.)
LOOK = """
const wrong = [], width = arguments[0];
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
// Code and sentences wrap: only what is aligned in columns may be wider than its place, and then the edge throws a shadow.
for (const pre of document.querySelectorAll('[role=main] pre'))
  if (pre.scrollWidth > pre.clientWidth + 1)
    wrong.push('is cut off: ' + pre.innerText.trim().slice(0, 60));
for (const place of document.querySelectorAll('[role=main] .table-wrapper, [role=main] .aligned'))
  if (place.scrollWidth > place.clientWidth + 1 && !getComputedStyle(place).backgroundImage.includes('gradient'))
    wrong.push('goes on without a hint: ' + place.innerText.trim().slice(0, 40));
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
  const style = getComputedStyle(e), size = parseFloat(style.fontSize);
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
    for argument in ("--headless=new", "--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu", "--hide-scrollbars",
                     "--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1"):
        options.add_argument(argument)
    options.set_capability("goog:loggingPrefs", {"browser": "ALL"})
    return webdriver.Chrome(service=Service("/usr/bin/chromedriver"), options=options)


def sized(driver, width, height):
    """Makes the window as wide as a phone or a desk."""
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
    for size in (DESK, PHONE):
        sized(driver, *size)
        wrong, formulas = driver.execute_script(LOOK, size[0])
        # The many pages that are made alike are looked at in one mode for each width.
        themes = THEMES if page in SHOTS or not page.startswith("reference/") else THEMES[:1] if size == DESK else THEMES[1:]
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


# Jobs from which states of the forms are drawn at random: each input with the values that it may have.
JOBS = {
    "identify": {"socket": ("16mm", "24mm", "5/8in"), "class": ("8.8", "10.9")},
    "thread": {"thread": ("M8", "M16x1.5-6g", "M24"), "class": ("8.8", "A4-70")},
    "clamp": {"thread": ("M8", "M12", "M20x1.5"), "class": ("8.8", "10.9"), "torque": ("20N.m", "95lbf.ft", "400N.m"),
              "condition": ("dry", "oiled", "zinc"), "more-face": ("26mm:oiled",)},
    "torque": {"thread": ("M8", "M16"), "class": ("5.6", "10.9"), "condition": ("dry", "waxed"), "clamp-load": ("9kN", "30kN")},
    "turn": {"thread": ("M12", "M16"), "class": ("8.8", "10.9"), "condition": ("oiled", "dry"), "grip": ("40mm", "120mm"),
             "snug-torque": ("20N.m", "30lbf.ft"), "angle": ("30deg", "75deg")},
    "curve": {"thread": ("M12", "M16"), "class": ("8.8", "10.9"), "condition": ("oiled", "dry"), "layer": ("20mm:grey_cast_iron",),
              "snug-torque": ("20N.m",)},
    "reach": {"torque": ("40lbf.ft", "130N.m"), "wrench-length": ("12in", "400mm"), "extension": ("3in", "100mm@30deg", "60mm@120deg")},
    "free": {"thread": ("M12", "M16"), "class": ("4.6", "8.8"), "rust": ("light_rust", "rusted"), "aid": ("fluid:24h", "heat:150K"),
             "trials": ("20000",)},
    "pattern": {"pattern": ("circle:8:160mm", "grid:2x4:140mm:70mm"), "hole": ("18mm", "22mm")},
    "group": {"pattern": ("rectangle:200mm:150mm", "circle:6:180mm"), "load": ("0kN:-16kN", "5kN:2kN"), "at": ("425mm:0mm",)},
    "sequence": {"pattern": ("circle:8:180mm", "circle:12:300mm"), "torque": ("120N.m", "80lbf.ft"), "interaction": ("0.2", "0.1")},
}
# The sliders, and the question whose first line is the sentence beside the picture.
SLIDERS = {
    "clamp": (dict(thread=("M8", "M12", "M20"), **{"class": ("8.8", "10.9")}, torque=range(10, 60), mu_thread=(0.08, 0.135, 0.2),
                   mu_face=(0.1, 0.16), spread=(0, 20, 33)),
              lambda s: ("clamp", {"thread": s["thread"], "class": s["class"], "torque": f"{s['torque']}N.m",
                                   "thread-friction": spread(s["mu_thread"], s["spread"]),
                                   "bearing-friction": spread(s["mu_face"], s["spread"])})),
    "crowfoot": (dict(angle=range(0, 181), torque=range(20, 400), wrench=range(200, 800, 5), extension=range(25, 190, 5)),
                 lambda s: ("reach", {"torque": f"{s['torque']}N.m", "wrench-length": f"{s['wrench']}mm",
                                      "extension": f"{s['extension']}mm@{s['angle']}deg"})),
    "curve": (dict(thread=("M10", "M16"), **{"class": ("8.8", "12.9")}, grip=range(30, 150, 5), snug=(10, 25), mu=(0.1, 0.14), spread=(0, 25)),
              lambda s: ("curve", {"thread": s["thread"], "class": s["class"], "grip": f"{s['grip']}mm", "snug-torque": f"{s['snug']}N.m",
                                   "thread-friction": spread(s["mu"], s["spread"]), "bearing-friction": spread(s["mu"], s["spread"]),
                                   "points": "150"})),
    "stuck": (dict(thread=("M10", "M16"), **{"class": ("4.6", "8.8")}, rust=("light_rust", "heavy_rust"), aid=("brush", "fluid:24h")),
              lambda s: ("free", {"thread": s["thread"], "class": s["class"], "rust": s["rust"], "aid": s["aid"], "trials": "40000"})),
}


def spread(friction, percent):
    """A coefficient with its band, as the sliders give it."""
    return "..".join(f"{friction * part:.4f}" for part in (1 - percent / 100, 1, 1 + percent / 100))


def command(question, job, *more):
    """What the command line says to a job: output, or the error."""
    given = [word for key, text in job.items() for word in (f"--{key}", text)]
    run = subprocess.run([PROGRAM, question, *given, *more], text=True, capture_output=True)
    return run.stdout if run.returncode == 0 else run.stderr


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


TEXT_OF = "const t = document.createElement('template'); t.innerHTML = arguments[0]; return t.content.textContent.replace(/\\s+/g, ' ').trim()"


def computes(driver, folder, seed, count):
    """Pages that compute: random states beside the command line; bad input at its field; size, speed, targets and weight."""
    wrong, chance, compared = [], random.Random(seed), 0
    bench = (folder / "bench" / "index.html").as_uri()
    sized(driver, *PHONE)
    for question, inputs in JOBS.items():
        for _ in range(count):
            job = {key: chance.choice(values) for key, values in inputs.items()}
            shown(driver, bench, f"{question}?{urllib.parse.urlencode(job)}")
            ours = driver.execute_script("return document.getElementById('answer').textContent.replace(/\\s+/g, ' ').trim()")
            theirs = driver.execute_script(TEXT_OF, command(question, job, "--format", "html"))
            # What is zero but for rounding differs between processors.
            ours, theirs = (re.sub(r"-?[\d.]+e-1\d", "0", text) for text in (ours, theirs))
            compared += 1
            if not ours or ours != theirs:
                at = max(0, len(os.path.commonprefix([ours, theirs])) - 40)
                wrong.append(f"{question} {job}: {ours[at:at + 120]!r} here, {theirs[at:at + 120]!r} on the command line")
        missing = driver.execute_script("return FIRST[arguments[0]].filter(key => !(key in fields))", question)
        units = driver.execute_script("""return Object.entries(tauten.catalogue.questions[question].keys).flatMap(([key, input]) =>
            unitsOf(input).filter(unit => { try { tauten.ask(question, { [key]: '1' + unit }); }
              catch (error) { return /unit/.test(error.message) } return false }).map(unit => key + ' in ' + unit))""")
        example = driver.execute_script("document.getElementById('example').click(); return document.getElementById('answer').innerText")
        wrong += [f"{question} has no input {key}" for key in missing] + [f"{question} does not take {unit}" for unit in units]
        if not example:
            wrong.append(f"the example of {question} gives no answer")
    # A bare figure takes the unit beside it; what is wrong is explained at its field, in the words of the library.
    state = "const e = document.getElementById('input-torque'); return [e.getAttribute('aria-invalid'), e.closest('.field').innerText]"
    for typed, refused in (("150", False), ("150parsec", True)):
        shown(driver, bench, f"clamp?thread=M16&torque={typed}")
        invalid, text = driver.execute_script(state)
        message = command("clamp", {"thread": "M16", "torque": typed}).strip().rpartition("tauten: ")[2]
        if refused != (invalid == "true") or refused and message not in text:
            wrong.append(f"torque {typed}: {invalid}, {text!r}; the command line: {message!r}")
    small = driver.execute_script("""return [...document.querySelectorAll('button, select, nav a, input:not([type=checkbox]), summary')].filter(
        e => e.checkVisibility() && e.getBoundingClientRect().height < 48).map(e => e.outerHTML.slice(0, 60))""")
    wrong += [f"smaller than 48 px: {one}" for one in small]
    for page, (controls, job_of) in SLIDERS.items():
        for _ in range(count):
            state = {key: chance.choice(values) for key, values in controls.items()}
            shown(driver, (folder / "bench" / f"{page}.html").as_uri(), "?" + urllib.parse.urlencode(state))
            ours = driver.execute_script("return document.getElementById('says').textContent")
            theirs = " ".join(command(*job_of(state), "--short").split())
            compared += 1
            if not ours or ours != theirs:
                wrong.append(f"{page} {state}: {ours!r} here, {theirs!r} on the command line")
    # The ring has the loads of all bolts after each step: the last ones are those of the last pass.
    shown(driver, (folder / "bench" / "ring.html").as_uri(), "?bolts=8&interaction=0.2&step=32")
    loads = json.loads(command("sequence", {"pattern": "circle:8:200mm", "interaction": "0.2", "load": "40kN", "shortfall": "5%"}, "--json"))
    bars = driver.execute_script("return [...document.querySelectorAll('#picture text')].map(e => e.textContent)")
    if missed := [load for load in loads["history"][-1] if f"{load / 1e3:.2g}" not in bars]:
        wrong.append(f"ring: no bar for {missed}")
    # A phone's processor is about four times slower.
    for page, key in (("clamp", "torque"), ("crowfoot", "angle")):
        shown(driver, (folder / "bench" / f"{page}.html").as_uri(), "")
        driver.execute_cdp_cmd("Emulation.setCPUThrottlingRate", {"rate": 4})
        took = []
        for value in range(60, 75):
            driver.execute_script("const e = document.getElementById('control-' + arguments[0]);"
                                  "e.value = arguments[1]; e.dispatchEvent(new Event('input'))", key, value)
            time.sleep(0.1)
            took.append(float(driver.execute_script("return document.body.dataset.took")))
        middle = statistics.median(took)
        print(f"{page}: {middle:.0f} ms from a slider's move to the answer on a phone's processor")
        driver.execute_cdp_cmd("Emulation.setCPUThrottlingRate", {"rate": 1})
    first = ("index.html", "bench.css", "tauten.js", "questions.js", "bench.js", "ask.js", "math.woff2", "modules/clamp.js")
    weight = sum(len(gzip.compress((folder / "bench" / name).read_bytes())) for name in first)
    if weight > 300e3:
        wrong.append(f"the first page weighs {weight / 1e3:.0f} kB")
    print(f"{compared} states of forms and sliders compared with the command line; the first page weighs {weight / 1e3:.0f} kB with its font")
    return wrong


# What is looked for, and what comes first.
SEARCHES = {"clamp load": "guides/clamp-load", "preload": "guides/clamp-load", "mu": "guides/clamp-load",
            "torque wrench": "guides/wrench-setting", "crowfoot": "guides/wrench-setting", "rusted bolt": "guides/stop-torque"}
FIRST = "return document.querySelector('#search-results li a')?.getAttribute('href') || ''"
WALKED = ("bench/clamp.html", "bench/index.html", "index.html", "guides/clamp-load.html", "reference/formulas/nut_factor.html")


def some(folder, pages, answers, shots):
    """Looks at some of the pages in a browser of its own."""
    failed, links, formulas = {}, {}, 0
    notebook = pathlib.Path(tempfile.mkdtemp())
    driver = browser()
    try:
        for page in pages:
            sized(driver, *DESK)
            if page.startswith("bench/"):
                shown(driver, (folder / page).as_uri(), "")
            else:
                driver.get((folder / page).as_uri())
            formulas += look(driver, page, "site", failed, links, shots)
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
                failed.setdefault(page, []).extend(computes(driver, folder, 15, 70 if os.environ.get("TAUTEN_WHOLE") else 2))
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
