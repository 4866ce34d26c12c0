"""Pages of the documentation that are made from the library itself."""
import re


def escaped(text):
    """Plain text, so that Markdown takes nothing in it for a mark."""
    return re.sub(r"([\\`*_<>|$\[\]~])", r"\\\1", str(text))


def table(columns, rows):
    """A Markdown table of cells that are Markdown."""
    lines = ["| " + " | ".join(columns) + " |", "|" + "---|" * len(columns)]
    return "\n".join(lines + ["| " + " | ".join(str(cell) for cell in row) + " |" for row in rows])


_COLUMNS = 100  # the command line breaks sentences there
_ALIGNED = re.compile(r"\S {2,}\S|^ {3,}\S")


def _unbroken(lines):
    """Lines with the sentences put together again that were broken at the last column."""
    whole = []
    for line in lines:
        before = whole[-1][1] if whole else ""
        word = line.lstrip().partition(" ")[0]
        broken = len(before) + 1 + len(word) > _COLUMNS and not re.search(r"\S {2,}\S", before)
        if word and broken and not line.startswith("- "):
            whole[-1] = (f"{whole[-1][0]} {line.lstrip()}", line)
        else:
            whole.append((line, line))
    return [text for text, _ in whole]


def output(text):
    """What a program prints. Sentences wrap on a narrow page, so that no caution is cut off; what is aligned scrolls."""
    parts, kind = [], None
    for line in _unbroken(text.rstrip().splitlines()):
        if not line:
            kind = None
            continue
        now = "aligned" if _ALIGNED.search(line) and len(line) <= _COLUMNS else "wraps"
        if now != kind:
            parts.append((now, []))
        kind = now
        parts[-1][1].append(line)
    blocks = ["```{code-block} text\n:class: " + kind + "\n\n" + "\n".join(lines) + "\n```" for kind, lines in parts]
    return "::::{container} output\n" + "\n".join(blocks) + "\n::::"


def toctree(pages):
    """List of pages that belong below this one."""
    return "```{toctree}\n:maxdepth: 1\n\n" + "\n".join(pages) + "\n```"


def write(path, *parts, up=""):
    """A page of paragraphs. With ``up``, a link to the page above, it does not stand in the list at the side."""
    path.parent.mkdir(parents=True, exist_ok=True)
    head = ("---\norphan: true\n---", up) if up else ()
    path.write_text("\n\n".join(part for part in (*head, *parts) if part) + "\n", encoding="utf-8")
