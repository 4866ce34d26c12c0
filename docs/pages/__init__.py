"""Pages of the documentation that are made from the library itself."""
import html
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


def output(text, unbroken=False):
    """What a program prints, in one block. Sentences wrap on a narrow page, so that no caution is cut off; what is aligned scrolls.
    With ``unbroken``, sentences that the command line broke at its last column are put together again."""
    lines = text.rstrip().splitlines()
    parts, kind = [], None
    for line in _unbroken(lines) if unbroken else lines:
        now = "aligned" if _ALIGNED.search(line) and not (unbroken and len(line) > _COLUMNS) else "wraps"
        if not line.strip():
            now = kind or "wraps"
        if now != kind:
            parts.append((now, []))
        kind = now
        parts[-1][1].append(line)
    spans = "".join(f'<span class="{kind}">' + "\n".join(map(html.escape, lines)) + "</span>" for kind, lines in parts)
    return ('```{raw} html\n<div class="highlight-text notranslate output"><div class="highlight"><pre>'
            f"{spans}</pre></div></div>\n```")


def toctree(pages, *options):
    """List of pages that belong below this one."""
    return "```{toctree}\n:maxdepth: 1\n" + "".join(f":{option}:\n" for option in options) + "\n" + "\n".join(pages) + "\n```"


def human(name):
    """The code name of something, as a title for people."""
    words = name.replace("_", " ").strip()
    return words[:1].upper() + words[1:]


def write(path, *parts):
    """A page of paragraphs."""
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text("\n\n".join(part for part in parts if part) + "\n", encoding="utf-8")
