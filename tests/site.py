"""Looks at the built documentation, and at answers as notebooks show them, in a browser without a screen.

Each page is loaded at a phone's width and at a desk's. It fails for a message on the console, a link, picture or formula that
does not show, text that runs over the edge, and a page without a title. Usage: site.py FOLDER [--shots FOLDER]
Ends with `N passed, M failed`.
"""
import argparse
import functools
import http.server
import pathlib
import shutil
import sys
import tempfile
import threading
import time

import tauten
from tauten import uncertainty
from selenium import webdriver
from selenium.webdriver.chrome.options import Options
from selenium.webdriver.chrome.service import Service

PHONE, DESK = (390, 844), (1280, 900)
SHOTS = ("index.html", "guides/clamp-load.html", "guides/first-answer.html", "guides/stop-torque.html", "guides/embedding.html",
         "reference/formulas/tightening_torque.html", "reference/formulas/nut_factor.html",
         "lessons/crowfoot.html", "lessons/scatter_budget.html", "reference/verification/index.html", "reference/verification/tools.html",
         "reference/cpp/question-clamp_answer.html", "reference/cpp/question-clamp_uncertainty.html", "reference/python/clamp.html",
         "reference/python/plots.html", "reference/python/index.html",
         "background/nomenclature.html")

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
// A fraction is higher than a line: so formulas are really laid out.
// Code and sentences wrap: only what is aligned in columns may be wider than its place, and then the edge throws a shadow.
for (const pre of document.querySelectorAll('[role=main] pre'))
  if (!pre.closest('.aligned') && pre.scrollWidth > pre.clientWidth + 1)
    wrong.push('is cut off: ' + pre.innerText.trim().slice(0, 60));
for (const place of document.querySelectorAll('[role=main] .wy-table-responsive, [role=main] .aligned'))
  if (place.scrollWidth > place.clientWidth + 1 && !getComputedStyle(place).backgroundImage.includes('gradient'))
    wrong.push('goes on without a hint: ' + place.innerText.trim().slice(0, 40));
const fraction = document.querySelector('math mfrac');
if (fraction && fraction.getBoundingClientRect().height < 1.2 * parseFloat(getComputedStyle(fraction).fontSize))
  wrong.push('fractions are not laid out');
return [wrong, document.querySelectorAll('math').length];
"""


class Quiet(http.server.SimpleHTTPRequestHandler):
    """Serves the files and counts what is missing."""

    missing = []

    def log_message(self, *_):
        pass

    def send_error(self, code, *rest):
        if not self.path.endswith("favicon.ico"):
            self.missing.append(self.path)
        super().send_error(code, *rest)


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


def main():
    """Looks at every page."""
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("folder", type=pathlib.Path, help="built site")
    parser.add_argument("--shots", type=pathlib.Path, help="write screenshots of some pages into this folder")
    arguments = parser.parse_args()
    server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(Quiet, directory=arguments.folder))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    root = f"http://127.0.0.1:{server.server_port}/"
    pages = sorted(path.relative_to(arguments.folder).as_posix() for path in arguments.folder.rglob("*.html")
                   if "_static" not in path.parts)
    failed, formulas, start = {}, 0, time.monotonic()
    shown_cells, notebook = cells(), pathlib.Path(tempfile.mkdtemp())
    driver = browser()
    try:
        for size in (PHONE, DESK):
            sized(driver, *size)
            for page in pages:
                driver.get(root + page)
                wrong, shown = driver.execute_script(LOOK, size[0])
                formulas += shown
                wrong += [f"console: {entry['message']}" for entry in driver.get_log("browser")
                          if "favicon.ico" not in entry["message"]]
                if page in ("search.html", "genindex.html", "404.html"):
                    wrong = [reason for reason in wrong if reason != "no title"]
                if wrong:
                    failed.setdefault(page, []).extend(f"at {size[0]} px: {reason}" for reason in wrong)
                if arguments.shots and page in SHOTS:
                    arguments.shots.mkdir(parents=True, exist_ok=True)
                    name = f"{page.removesuffix('.html').replace('/', '-')}-{size[0]}.png"
                    sized(driver, size[0], 3 * size[1])
                    driver.save_screenshot(str(arguments.shots / name))
                    sized(driver, *size)
            for name, page in shown_cells.items():
                (notebook / "page.html").write_text(page, encoding="utf-8")
                driver.get((notebook / "page.html").as_uri())
                wrong, shown = driver.execute_script(LOOK, size[0])
                if name.startswith("explanation") and not shown:
                    wrong.append("no formula")
                if "&lt;" in (text := driver.execute_script("return document.body.innerText")) or "&amp;" in text:
                    wrong.append("a mark is escaped twice")
                if wrong:
                    failed.setdefault(name, []).extend(f"at {size[0]} px: {reason}" for reason in wrong)
                if arguments.shots:
                    arguments.shots.mkdir(parents=True, exist_ok=True)
                    driver.save_screenshot(str(arguments.shots / f"{name.replace(' ', '-')}-{size[0]}.png"))
        driver.get(root + "search.html?q=crowfoot")
        time.sleep(1.5)
        if "crowfoot" not in driver.execute_script("return document.querySelector('#search-results')?.innerHTML || ''"):
            failed["search.html?q=crowfoot"] = ["the search finds nothing"]
    finally:
        driver.quit()
        shutil.rmtree(notebook)
    for path in sorted(set(Quiet.missing)):
        failed.setdefault(path, []).append("a page asks for this file, which is not there")
    if not formulas:
        failed["formulas"] = ["no page shows any"]
    for page, reasons in failed.items():
        print(f"{page}: " + "; ".join(reasons))
    print(f"{len(pages)} pages and {len(shown_cells)} answers at {PHONE[0]} and {DESK[0]} px, {formulas // 2} formulas, in {time.monotonic() - start:.0f} s")
    print(f"{max(0, len(pages) + len(shown_cells) - len(failed))} passed, {len(failed)} failed")
    return bool(failed)


if __name__ == "__main__":
    sys.exit(main())
