"""A lesson on two pages of A4 for the class: goal, theory and picture on the first, exercises without solutions on the second."""
import html
import re

from docutils.utils.math.latex2mathml import tex2mathml
from markdown_it import MarkdownIt
from mdit_py_plugins.dollarmath import dollarmath_plugin

import tauten

_PAGE = """<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>{title}: handout</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="../_static/handout.css">
</head>
<body>
<main role="main">
<p class="no-print"><a href="{name}.html">Back to the lesson</a>. Print these two pages on A4.</p>
<section class="sheet">
<h1>{title}</h1>
<div>
{front}
</div>
<figure>{picture}</figure>
<footer>{caution}</footer>
</section>
<section class="sheet">
<p class="blanks"><span>Name</span><span>Date</span></p>
<h2>Exercises: {title}</h2>
<div class="exercises">
{exercises}
</div>
{care}
<footer>{caution}</footer>
</section>
</main>
</body>
</html>
"""


def _converter():
    """Markdown of lessons to HTML, with formulas as MathML."""
    convert = MarkdownIt("commonmark").enable("table")
    dollarmath_plugin(convert, renderer=lambda text, options: tex2mathml(text.strip(), inline=not options["display_mode"]))
    return convert


def _sections(notebook):
    """The headings of a lesson with what stands below each: cells of text in pieces, and cells of code."""
    found = {"": []}
    heading = ""
    for cell in notebook.cells:
        if cell.cell_type == "code":
            found[heading].append(cell)
            continue
        for piece in re.split(r"^(## .*)$", cell.source, flags=re.M):
            if piece.startswith("## "):
                heading = piece.removeprefix("## ")
                found[heading] = []
            elif piece.strip():
                found[heading].append(piece.strip())
    return found


def _bare(symbol):
    """A symbol as it may be written in a lesson or by the library: with braces or without, upright or slanted."""
    return re.sub(r"\\mathrm|[{} ]", "", symbol)


def _formulas(cell, above):
    """The formulas that a cell shows by themselves, as Markdown: no table, no picture, nothing printed. Below stands what its symbols
    mean, but for those that stand by themselves in the text above."""
    if not re.fullmatch(r"tauten\.\w+", cell.source):
        return
    for output in cell.outputs:
        yield from re.findall(r"\$\$.*?\$\$", output.get("data", {}).get("text/markdown", ""), re.S)
    if formula := tauten.formulas.get(cell.source.removeprefix("tauten.")):
        named = set(map(_bare, re.findall(r"\$([^$]+)\$", re.sub(r"\$\$.*?\$\$", "", above, flags=re.S))))
        names = [f"${one.latex}$: {one.name.replace('_', ' ')}" for one in (formula.output, *formula.inputs)
                 if _bare(one.latex) not in named]
        if names:
            yield "; ".join(names) + "."


def page(path, notebook, pictures, caution):
    """The handout of an executed lesson as HTML. ``pictures`` are the names of the files of its pictures, with their descriptions."""
    convert = _converter()
    sections = _sections(notebook)
    first, *goals = sections.pop("")[0].split("\n\n")
    theory = next(text for heading, text in sections.items() if heading.startswith("Theory"))
    texts = {heading: "\n\n".join(text for text in parts if isinstance(text, str)) for heading, parts in sections.items()}
    care = re.findall(r"^\*\*Take care:\*\*.*?(?=\n\n|\Z)", "\n\n".join(text for heading, text in texts.items() if heading != "Solutions"),
                      re.S | re.M)
    if texts.get("Take care"):
        care.append(f"**Take care:** {texts['Take care']}")
    front = [convert.render("\n\n".join(goals)), "<h2>Theory</h2>"]
    above = ""
    for part in theory:
        for text in [part] if isinstance(part, str) else _formulas(part, above):
            front.append(convert.render(text))
            above += "\n\n" + text
    name, told = pictures[0]
    return _PAGE.format(
        name=path.stem, title=html.escape(first.removeprefix("# ")), front="\n".join(front), caution=html.escape(caution),
        picture=f'<img src="../_images/{name}" alt="{html.escape(told)}">', exercises=convert.render(texts["Exercises"]),
        care="".join(convert.render(text) for text in care))
