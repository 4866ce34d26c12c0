"""The wording of what users read: phrases that were replaced by plain engineering English do not come back.

Looked at are the strings of the sources (messages, help, pages, docstrings), the documentation and the notebooks. Comments and
names of the code are not."""
import ast
import json
import pathlib
import re

import pytest

ROOT = pathlib.Path(__file__).resolve().parents[2]
# phrase: what to write
BANNED = {
    r"\busual(?:ly)?\b": "typical in prose, nominal in data",
    r"\bworst corners?\b": "worst case",
    r"(?<!\bat )\bleast\b(?! squares)": "minimum",
    r"\bgreatest\b": "maximum",
    r"\bin place of\b": "instead of",
    r"\bput up with\b": "accept a risk",
    r"\b(?:tell|tells|told|telling)\b": "report, show, note",
    r"\b(?:if|is|are|was|and|not|nothing|none) said\b": "give, state; a default is 'default: x'",
    r"(?<!\bthere )\b(?:is|are) no (?!longer\b|more\b|less\b|wider\b|further\b|other\b)[a-z]": "is not a",
    r"\b(?:is|are) to be\b": "must, should",
    r"\bshall\b": "should, must",
    r"\bremembered\b": "from memory, not checked against the standard",
    r"\bno matter of\b": "ignored",
    r"\bgo(?:es|ne)? on (?:with|at)\b": "resume",
    r"\b(?:wrong|right) torque\b": "suggested torque",
    r"\bdearer\b": "more expensive",
    r"\bchange no digit\b": "results do not depend on it",
    r"\b(?:take|be taken) for (?:the |a |an )?[0-9]": "treat as",
    r"\bgive or take\b": "plus or minus",
    r"\bhow (?:the joint|it|they|something) (?:is|are) called\b": "name of",
}
CPP = re.compile(r'//[^\n]*|/\*.*?\*/|"((?:\\.|[^"\\\n])*)"', re.S)


def strings_of_cpp(text):
    """The literals of a file, those that stand side by side as one."""
    found, end, adjoins = [], 0, False
    for match in CPP.finditer(text):
        adjoins = adjoins and not text[end:match.start()].strip()
        end = match.end()
        if match[1] is None:  # a comment between two literals does not part them
            continue
        if adjoins:
            found[-1] += match[1]
        else:
            found.append(match[1])
        adjoins = True
    return found


def strings_of_python(text):
    return [node.value for node in ast.walk(ast.parse(text)) if isinstance(node, ast.Constant) and isinstance(node.value, str)]


def text_of_notebook(text):
    for cell in json.loads(text)["cells"]:
        source = "".join(cell["source"])
        yield source if cell["cell_type"] == "markdown" else "\n".join(
            line for line in source.splitlines() if not line.startswith("%"))


def read_by_users():
    """Pairs of a file and the texts in it."""
    for folder in ("include", "src"):
        for path in sorted((ROOT / folder).rglob("*.[hc]pp")):
            yield path, strings_of_cpp(path.read_text(encoding="utf-8"))
    for path in sorted((ROOT / "python" / "bindings").glob("*.[hc]pp")):
        yield path, strings_of_cpp(path.read_text(encoding="utf-8"))
    for folder in ("python/tauten", "docs/pages"):
        for path in sorted((ROOT / folder).glob("*.py")):
            yield path, strings_of_python(path.read_text(encoding="utf-8"))
    for path in [ROOT / "README.md", ROOT / "DEVELOPERS.md", *sorted((ROOT / "docs").rglob("*.md")),
                 ROOT / "src" / "wasm" / "README.md"]:
        yield path, [path.read_text(encoding="utf-8")]
    for path in sorted((ROOT / "docs" / "notebooks").glob("*.ipynb")):
        yield path, list(text_of_notebook(path.read_text(encoding="utf-8")))


@pytest.mark.parametrize("phrase", BANNED)
def test_phrase_does_not_come_back(phrase):
    pattern = re.compile(phrase, re.I)
    found, files = [], 0
    for path, texts in read_by_users():
        files += 1
        for text in texts:
            text = " ".join(text.split())
            found += [f"{path.relative_to(ROOT)}: ...{text[max(0, m.start() - 40):m.end() + 30]}..." for m in pattern.finditer(text)]
    assert files > 300
    assert not found, f"write {BANNED[phrase]}:\n" + "\n".join(found)


def test_every_phrase_is_found_where_it_stands():
    for text, phrase in (("75 % if not said", "said"), ("is no whole number", "is not a"), ("the least of its class", "minimum"),
                         ("what is to be set", "must"), ("the worst corner of yield", "worst case")):
        assert any(phrase in better or phrase in pattern for pattern, better in BANNED.items() if re.search(pattern, text)), text
    assert not [p for p in BANNED if re.search(p, "must be at least 1; there is no file; it is no longer than 3 mm")]
    assert strings_of_cpp('f("a " // "b"\n  "c", "d")') == ["a c", "d"]
