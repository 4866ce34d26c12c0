"""Looks at the built documentation in a browser without a screen.

Each page is loaded at a phone's width and at a desk's. It fails for a message on the console, a link, picture or formula that
does not show, text that runs over the edge, and a page without a title. Usage: site.py FOLDER [--shots FOLDER]
Ends with `N passed, M failed`.
"""
import argparse
import functools
import http.server
import pathlib
import sys
import threading
import time

from selenium import webdriver
from selenium.webdriver.chrome.options import Options
from selenium.webdriver.chrome.service import Service

PHONE, DESK = (390, 844), (1280, 900)
SHOTS = ("index.html", "guides/clamp-load.html", "guides/first-answer.html", "guides/stop-torque.html", "guides/embedding.html",
         "reference/formulas/nut_factor.html", "reference/python/plots.html", "reference/python/index.html", "reference/formulas/tightening_torque.html",
         "lessons/crowfoot.html", "reference/verification/index.html", "reference/verification/tools.html",
         "reference/cpp/tightening-clamp.html", "reference/python/clamp.html",
         "background/nomenclature.html")

# What is wrong with the page that is loaded; an empty list if nothing is.
LOOK = """
const wrong = [];
const page = document.documentElement;
if (!document.title || !document.querySelector('h1')) wrong.push('no title');
// Wide things may scroll by themselves; anything else must end within the window.
const scrolls = e => e && e.getAttribute('role') !== 'main' &&
  (['auto', 'scroll'].includes(getComputedStyle(e).overflowX) || scrolls(e.parentElement));
const wide = [...document.querySelectorAll('[role=main] *')].filter(
  e => e.getBoundingClientRect().right > window.innerWidth + 1 && e.getBoundingClientRect().height > 0 && !scrolls(e));
if (page.scrollWidth > window.innerWidth + 1 || wide.length)
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
if (bare && !document.querySelector('pre')?.innerText.includes(bare[0])) wrong.push('bare LaTeX: ' + bare[0]);
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
    driver = browser()
    try:
        for size in (PHONE, DESK):
            sized(driver, *size)
            for page in pages:
                driver.get(root + page)
                wrong, shown = driver.execute_script(LOOK)
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
        driver.get(root + "search.html?q=crowfoot")
        time.sleep(1.5)
        if "crowfoot" not in driver.execute_script("return document.querySelector('#search-results')?.innerHTML || ''"):
            failed["search.html?q=crowfoot"] = ["the search finds nothing"]
    finally:
        driver.quit()
    for path in sorted(set(Quiet.missing)):
        failed.setdefault(path, []).append("a page asks for this file, which is not there")
    if not formulas:
        failed["formulas"] = ["no page shows any"]
    for page, reasons in failed.items():
        print(f"{page}: " + "; ".join(reasons))
    print(f"{len(pages)} pages at {PHONE[0]} and {DESK[0]} px, {formulas // 2} formulas, in {time.monotonic() - start:.0f} s")
    print(f"{max(0, len(pages) - len(failed))} passed, {len(failed)} failed")
    return bool(failed)


if __name__ == "__main__":
    sys.exit(main())
