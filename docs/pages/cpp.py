"""The C++ reference: one page per header, from its own comments as Doxygen reads them."""
import itertools
import pathlib
import re
import subprocess
import textwrap
import xml.etree.ElementTree as ET
from collections import defaultdict

import tauten

from pages import escaped, table, toctree, write

ROOT = pathlib.Path(__file__).resolve().parents[2]
INCLUDE = ROOT / "include"
ROOMS = {
    "": "Everything", "base": "Base: formulas, units, errors", "thread": "Threads", "part": "Parts",
    "friction": "Friction", "tightening": "Tightening", "turning": "Turning, past yield as well",
    "method": "Methods of tightening", "tool": "Tools", "drawing": "Drawings", "joint": "Joints",
    "group": "Groups of bolts", "loosening": "Loosening", "uncertainty": "Uncertainty", "explain": "Explanation",
    "question": "Questions, one page for each",
}


def _settings(folder):
    return f"""
INPUT = {INCLUDE}
RECURSIVE = YES
STRIP_FROM_PATH = {INCLUDE}
INPUT_FILTER = "sed s/::TAUTEN_ABI//"
OUTPUT_DIRECTORY = {folder}
GENERATE_HTML = NO
GENERATE_LATEX = NO
GENERATE_XML = YES
XML_PROGRAMLISTING = NO
EXCLUDE_SYMBOLS = tauten::detail*
QUIET = YES
WARNINGS = NO
WARN_IF_UNDOCUMENTED = NO
WARN_IF_DOC_ERROR = NO
"""


def _plain(node):
    return "".join(node.itertext()) if node is not None else ""


def _struct(formula):
    """Name of the struct that a formula is written in."""
    return "".join(part.capitalize() for part in formula.split("_"))


def _page(header):
    return header.removeprefix("tauten/").removesuffix(".hpp").replace("/", "-")


def _target(label, text):
    """Something that can be linked to."""
    return f"({label})=\n{text}" if label else text


def _formatted(markup):
    """Doxygen puts blanks within angle brackets."""
    return re.sub(r"\s*<\s*|\s+(?=>)", lambda found: found[0].strip(), markup)


class Reference:
    """What the headers say."""

    def __init__(self, folder):
        """Runs Doxygen into a folder."""
        subprocess.run(["doxygen", "-"], input=_settings(folder), text=True, check=True, stderr=subprocess.DEVNULL)
        self.functions, self.types, self.values = defaultdict(list), defaultdict(list), {}
        self.aliases = defaultdict(list)
        self._names = set()
        self._labels, self._own = {}, set()
        for file in sorted((pathlib.Path(folder) / "xml").glob("namespacetauten*.xml")):
            for member in ET.parse(file).iter("memberdef"):
                self._take(member)
        for pattern in ("struct*.xml", "class*.xml"):
            for file in sorted((pathlib.Path(folder) / "xml").glob(pattern)):
                self._take_type(ET.parse(file).find("compounddef"))
        self._labels = self._find_labels()

    def _find_labels(self):
        """What can be linked to: name -> label. Of overloads the first; a formula goes before what it is written in."""
        found = {}
        for path in sorted(INCLUDE.rglob("*.hpp")):
            header = path.relative_to(INCLUDE).as_posix()
            if self._has_page(header):
                label = f"cpp-header-{_page(header)}"
                found[header] = found[header.removeprefix("tauten/")] = label
                # A name without its folder is clear only if there is no other.
                found[path.name] = None if path.name in found else label
        for header, members in self.functions.items():
            for member in members:
                if self._has_page(header) and self.description(member):
                    name = member.findtext("name")
                    kind = "type" if member.get("kind") == "enum" else "function"
                    found.setdefault(name, f"cpp-{kind}-{name.replace('_', '-').lower()}")
        for header, names in self.aliases.items():
            for name, _ in names if self._has_page(header) else ():
                found.setdefault(name, f"cpp-aliases-{_page(header)}")
        for header, compounds in self.types.items():
            for compound in compounds if self._has_page(header) else ():
                name = compound.findtext("compoundname").removeprefix("tauten::")
                if self.description(compound) and not self._is_formula(compound):
                    found[name] = f"cpp-type-{name.replace('::', '-').lower()}"
        for name in tauten.formulas:
            found[name] = found[_struct(name)] = f"formula-{name.replace('_', '-')}"
        return {name: label for name, label in found.items() if label}

    @staticmethod
    def _has_page(header):
        return not header.endswith("_table.hpp")  # figures of tables, no reference

    def _first(self, name, seen):
        """The label of something on the page where it stands first; "" where it stands again."""
        label = self._labels.get(name, "")
        if label in seen:
            return ""
        seen.add(label)
        return label

    def _take(self, member):
        header = member.find("location").get("file")
        name = member.findtext("name")
        if member.findtext("qualifiedname", "").startswith("tauten::detail"):
            return
        if member.get("kind") == "variable":
            self.values[name] = (header, member)
        elif member.get("kind") in ("function", "enum"):
            self._names.add(name)
            self.functions[header].append(member)
        elif member.get("kind") == "typedef" and member.find("templateparamlist") is None:
            self.aliases[header].append((name, _formatted(_plain(member.find("type")))))

    def _take_type(self, compound):
        name = compound.findtext("compoundname")
        if "detail" in name or "<" in name or compound.find("location") is None:
            return
        self.types[compound.find("location").get("file")].append(compound)

    # -- text --

    def code(self, text):
        """Code, as a link if it is the name of something that is described elsewhere."""
        named = re.fullmatch(r"(?:tauten::)?([\w:]+)(?:\(.*\))?|([\w/]+\.hpp)", text)
        name = named and (named[1] or named[2])
        label = None if name in self._own else self._labels.get(name)
        return f"[`{text}`]({label})" if label else f"`{text}`"

    def linked(self, text):
        """Code of which every type that is described elsewhere is a link."""
        known = [name for name in re.findall(r"[A-Za-z_]\w*", text) if self._is_type(name)]
        if not known:
            return f"`{text}`"
        pieces = re.split(rf"(?<![\w:])({'|'.join(sorted(set(known), key=len, reverse=True))})(?!\w)", text)
        return "".join(self.code(piece) if self._is_type(piece) else f"`{piece}`" if piece.strip() else " " * bool(piece)
                       for piece in pieces)

    def _is_type(self, name):
        return self._labels.get(name, "").startswith(("cpp-type-", "cpp-aliases-"))

    def intro(self, header):
        """What a header says about itself at its top: paragraphs, and code that is set in."""
        first = (INCLUDE / header).read_text(encoding="utf-8").split("#pragma once")[0]
        lines = [line.removeprefix("//").removeprefix(" ") for line in first.splitlines() if line.startswith("//")]
        parts = []
        for is_code, block in itertools.groupby(lines, lambda line: line.startswith("  ")):
            block = list(block)
            if is_code:
                parts.append("```cpp\n" + textwrap.dedent("\n".join(block)) + "\n```")
            elif text := " ".join(block).strip():
                parts.append("".join(self.code(piece) if n % 2 else escaped(piece) for n, piece in enumerate(text.split("`"))))
        return parts

    def _inline(self, node):
        """A paragraph and its lists, as Markdown."""
        out, after = escaped(node.text or ""), []
        for child in node:
            if child.tag == "computeroutput":
                out += self.code(_plain(child))
            elif child.tag == "ref" and self._labels.get(_plain(child)):
                out += self.code(_plain(child))
            elif child.tag == "parameterlist":
                after += self._parameters(child)
            elif child.tag == "simplesect":
                after.append(f"- *{child.get('kind')}s*: {self._joined(child)}")
            elif child.tag in ("itemizedlist", "orderedlist"):
                after += [f"- {self._joined(item)}" for item in child.iter("listitem")]
            elif child.tag == "linebreak":
                out += " "
            else:
                out += escaped(_plain(child))
            out += escaped(child.tail or "")
        text = " ".join(out.split())
        return text + ("\n\n" + "\n".join(after) if after else "")

    def _joined(self, node):
        return " ".join(self._inline(para) for para in node.iter("para")).strip()

    def _parameters(self, node):
        for item in node.iter("parameteritem"):
            names = ", ".join(f"`{_plain(name)}`" for name in item.iter("parametername"))
            what = "throws " if node.get("kind") == "exception" else ""
            yield f"- {what}{names}: {self._joined(item.find('parameterdescription'))}"

    def description(self, node):
        """The comment of something. Its own parameters and members are not links."""
        before = self._own
        self._own = before | {_plain(name) for tag in ("declname", "name", "parametername") for name in node.iter(tag)}
        parts = [self._inline(para) for tag in ("briefdescription", "detaileddescription")
                 for para in node.find(tag).findall("para")]
        self._own = before
        return "\n\n".join(part for part in parts if part.strip())

    def comment_of(self, name):
        """The comment of a value, for example of a formula; "" if there is none."""
        return self.description(self.values[name][1]) if name in self.values else ""

    # -- pages --

    def _signature(self, member):
        if member.get("kind") == "enum":
            values = ", ".join(value.findtext("name") for value in member.findall("enumvalue"))
            return f"enum class {member.findtext('name')} {{ {values} }};"
        template = member.find("templateparamlist")
        lines = [] if template is None else [
            "template <" + ", ".join(" ".join(filter(None, (_plain(p.find("type")), p.findtext("declname"))))
                                     for p in template) + ">"]
        definition = member.findtext("definition").replace("tauten::", "")
        lines.append(_formatted(definition) + (member.findtext("argsstring") or "") + ";")
        return "\n".join(lines)

    def _function(self, member, seen):
        name = member.findtext("name")
        told = self.description(member)
        if f"try_{name}" in self._names and "- throws" in told and told.count("- ") < 2:
            told = f"As {self.code(f'try_{name}')}, but throws {self.code('Error')} instead of returning one."
        rows = [f"- `{value.findtext('name')}`: {text}" for value in member.findall("enumvalue")
                if (text := self.description(value))]
        signature = self._signature(member)
        types = dict.fromkeys(word for word in re.findall(r"\w+", signature) if self._is_type(word) and word != name)
        return "\n\n".join(filter(None, (_target(self._first(name, seen), f"```cpp\n{signature}\n```"),
                                         "Types: " + ", ".join(map(self.code, types)) if types else "", told,
                                         "\n".join(rows))))

    def _type(self, compound, seen):
        name = compound.findtext("compoundname").removeprefix("tauten::")
        fields, functions = [], []
        for member in compound.iter("memberdef"):
            if member.get("prot") != "public" or member.findtext("name") == "fields":
                continue
            if member.get("kind") == "variable":
                start = member.findtext("initializer") or ""
                fields.append((f"`{member.findtext('name')}`", self.linked(_formatted(_plain(member.find("type")))),
                               f"`{start.removeprefix('=').strip()}`" if start.strip(" ={}") else "",
                               " ".join(self.description(member).split())))
            elif member.get("kind") == "function" and self.description(member):
                functions.append(self._function(member, {self._labels.get(member.findtext("name"), "")}))
        return "\n\n".join(filter(None, (_target(self._first(name, seen), f"### {escaped(name)}"), self.description(compound),
                                          table(("member", "type", "if not given", "meaning"), fields) if fields else "",
                                          *functions)))

    def pages(self, formulas, folder):
        """Writes a page for each header and one of all."""
        by_header = defaultdict(list)
        for name in formulas:
            if name not in self.values:
                raise ValueError(f"{name}: its header does not say what it is")
            by_header[self.values[name][0]].append(name)
        rooms, seen = defaultdict(list), set()
        for path in sorted(INCLUDE.rglob("*.hpp")):
            header = path.relative_to(INCLUDE).as_posix()
            if not self._has_page(header):
                continue
            page, intro = _page(header), self.intro(header)
            types = [t for t in self.types[header] if self.description(t) and not self._is_formula(t)]
            title = f"# {intro[0].partition('. ')[0].rstrip('.')}: {escaped(header.removeprefix('tauten/'))}"
            parts = [_target(f"cpp-header-{page}", title), *intro, f"```cpp\n#include <{header}>\n```"]
            if by_header[header]:
                parts += ["## Formulas", "\n".join(f"- {self.code(name)}: {escaped(formulas[name].summary)}"
                                                   for name in by_header[header])]
            told = [member for member in self.functions[header] if self.description(member)]
            if functions := [member for member in told if member.get("kind") == "function"]:
                parts += ["## Functions", *(self._function(member, seen) for member in functions)]
            enums = [member for member in told if member.get("kind") == "enum"]
            aliases = [(f"`{name}`", self.linked(what)) for name, what in self.aliases[header]]
            if types or enums or aliases:
                parts += ["## Types", *(self._type(compound, seen) for compound in types),
                          *(self._function(member, seen) for member in enums)]
            if aliases:
                parts += [_target(f"cpp-aliases-{page}", table(("alias", "of"), aliases))]
            write(folder / f"{page}.md", *parts)
            inner = header.split("/")
            rooms[inner[1] if len(inner) > 2 else ""].append((page, header, intro[0]))
        overview = []
        for room, title in ROOMS.items():
            if found := rooms[room]:
                write(folder / f"of-{room or 'all'}.md", f"# {title}", table(("header", "what is in it"), [
                    (f"[{escaped(header.removeprefix('tauten/'))}]({page}.md)", intro.partition(". ")[0].rstrip("."))
                    for page, header, intro in found]), toctree([page for page, *_ in found], "hidden"))
                overview.append((f"of-{room or 'all'}", f"[{title}](of-{room or 'all'}.md)",
                                 ", ".join(f"[{header.rpartition('/')[2].removesuffix('.hpp').replace('_', ' ')}]({page}.md)"
                                           for page, header, _ in found)))
        if unknown := set(rooms) - set(ROOMS):
            raise ValueError(f"name these rooms in docs/pages/cpp.py: {sorted(unknown)}")
        write(folder / "index.md", "# C++ reference",
              "One concept, one header. `tauten/tauten.hpp` is everything; each header can be taken alone. All functions are "
              "in the namespace `tauten`. Functions named `try_...` return an `Outcome` and never throw; their twins throw.",
              table(("group", "headers"), [row[1:] for row in overview]), toctree([row[0] for row in overview], "hidden"))

    def header_of(self, formula):
        """Header in which a formula is defined."""
        return self.values[formula][0]

    @staticmethod
    def _is_formula(compound):
        return any(member.findtext("name") == "eval" for member in compound.iter("memberdef"))
