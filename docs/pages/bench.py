"""The pages that compute: what is written by hand in docs/bench/, with the WebAssembly modules as scripts beside it."""
import base64
import gzip
import html
import json
import pathlib
import re
import subprocess

from tauten import _core

ROOT = pathlib.Path(__file__).resolve().parents[2]
BENCH = ROOT / "docs" / "bench"

# The pages in the order of their navigation.
_PAGES = {"index": "All questions", "clamp": "Torque and clamp load", "curve": "Snug to yield", "crowfoot": "Extension", "stuck": "Stuck bolt",
          "ring": "Bolts in a ring"}

def _questions(package):
    """Each question with its summary and the smallest module that answers it, as the modules say it themselves."""
    script = f"""
import {{ load }} from {json.dumps((package / "index.js").as_uri())};
const found = {{}};
for (const module of process.argv.slice(1))
  for (const [name, {{ summary }}] of Object.entries((await load(module)).catalogue.questions)) found[name] ??= {{ summary, module }};
const whole = Object.keys((await load("tauten")).catalogue.questions);
console.log(JSON.stringify(Object.fromEntries(whole.map((name) => [name, found[name]]))));
"""
    modules = sorted(path.stem for path in package.glob("*.wasm") if path.stem not in ("tauten", "formulas"))
    return subprocess.run(["node", "--input-type=module", "-e", script, *modules], check=True, text=True, capture_output=True).stdout


def _classic(loader):
    """The loader as a script that a page from the file system may run: such a page may not import."""
    text = re.sub(r"^export ", "", loader, flags=re.M).replace("import.meta.url", "document.baseURI")
    return f"const tautenLoader = (() => {{\n{text}\nreturn {{ load, TautenError }};\n}})();\n"


def _navigation(here, site):
    """The links at the top of a page."""
    links = [("../index.html", "Documentation")] if site else []
    links += [(f"{name}.html", title) for name, title in _PAGES.items()]
    return "<nav>" + "".join(f'<a href="{link}"{" aria-current=page" if link == f"{here}.html" else ""}>{html.escape(title)}</a>'
                             for link, title in links) + "</nav>"


def cautions(program):
    """The cautions that hold for every job, and all cautions, as the command line prints them."""
    printed = subprocess.run([program, "cautions", "--json"], check=True, text=True, capture_output=True).stdout
    given = json.loads(printed)["cautions"]
    return [one["text"] for one in given if _core.notice_kind(one["code"]) == "standing"], [one["text"] for one in given]


def _cautions(program):
    """What holds for every job, and below it every caution."""
    standing, every = cautions(program)
    return (f'<aside class="cautions"><p>{html.escape(" ".join(standing))}</p><details><summary>All cautions</summary><ul>'
            + "".join(f"<li>{html.escape(text)}</li>" for text in every) + "</ul></details></aside>")


def pages(package, program, static, folder, site):
    """Writes the folder. With ``site``, its pages link to the documentation above them; without, the folder stands alone."""
    (folder / "modules").mkdir(parents=True)
    for module in package.glob("*.wasm"):
        packed = base64.b64encode(gzip.compress(module.read_bytes(), 9, mtime=0)).decode()
        (folder / "modules" / f"{module.stem}.js").write_text(f'tautenModule("{module.stem}", "{packed}");\n', encoding="utf-8")
    (folder / "tauten.js").write_text(_classic((package / "index.js").read_text(encoding="utf-8")), encoding="utf-8")
    (folder / "questions.js").write_text(f"const tautenQuestions = {_questions(package)};\n", encoding="utf-8")
    for shared in ("math.woff2", "fold.css", "fold.js"):
        (folder / shared).write_bytes((static / shared).read_bytes())
    cautions = _cautions(program)
    for path in BENCH.iterdir():
        text = path.read_text(encoding="utf-8")
        if path.suffix == ".html":
            text = text.replace("<!-- navigation -->", _navigation(path.stem, site)).replace("<!-- cautions -->", cautions)
        (folder / path.name).write_text(text, encoding="utf-8")
