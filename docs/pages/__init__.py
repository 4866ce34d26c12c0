"""Pages of the documentation that are made from the library itself."""
import re


def escaped(text):
    """Plain text, so that Markdown takes nothing in it for a mark."""
    return re.sub(r"([\\`*_<>|$\[\]~])", r"\\\1", str(text))


def table(columns, rows):
    """A Markdown table of cells that are Markdown."""
    lines = ["| " + " | ".join(columns) + " |", "|" + "---|" * len(columns)]
    return "\n".join(lines + ["| " + " | ".join(str(cell) for cell in row) + " |" for row in rows])


def toctree(pages):
    """List of pages that belong below this one."""
    return "```{toctree}\n:maxdepth: 1\n\n" + "\n".join(pages) + "\n```"


def write(path, *parts, up=""):
    """A page of paragraphs. With ``up``, a link to the page above, it does not stand in the list at the side."""
    path.parent.mkdir(parents=True, exist_ok=True)
    head = ("---\norphan: true\n---", up) if up else ()
    path.write_text("\n\n".join(part for part in (*head, *parts) if part) + "\n", encoding="utf-8")
