"""The C++ reference: one page per header, from its own comments as Doxygen reads them."""
import pathlib
import re
import subprocess
import xml.etree.ElementTree as ET
from collections import defaultdict

from pages import escaped, table, write

ROOT = pathlib.Path(__file__).resolve().parents[2]
INCLUDE = ROOT / "include"
ROOMS = {
    "": "Everything", "base": "Base: formulas, units, errors", "thread": "Threads", "part": "Parts",
    "friction": "Friction", "tightening": "Tightening", "tool": "Tools", "joint": "Joints", "group": "Groups of bolts",
    "loosening": "Loosening", "uncertainty": "Uncertainty", "explain": "Explanation",
}


def _settings(folder):
    return f"""
INPUT = {INCLUDE}
RECURSIVE = YES
STRIP_FROM_PATH = {INCLUDE}
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


class Reference:
    """What the headers say."""

    def __init__(self, folder):
        """Runs Doxygen into a folder."""
        subprocess.run(["doxygen", "-"], input=_settings(folder), text=True, check=True, stderr=subprocess.DEVNULL)
        self.functions, self.types, self.values = defaultdict(list), defaultdict(list), {}
        self._names = set()
        for file in sorted((pathlib.Path(folder) / "xml").glob("namespacetauten*.xml")):
            for member in ET.parse(file).iter("memberdef"):
                self._take(member)
        for pattern in ("struct*.xml", "class*.xml"):
            for file in sorted((pathlib.Path(folder) / "xml").glob(pattern)):
                self._take_type(ET.parse(file).find("compounddef"))

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

    def _take_type(self, compound):
        name = compound.findtext("compoundname")
        if "detail" in name or "<" in name or compound.find("location") is None:
            return
        self.types[compound.find("location").get("file")].append(compound)

    # -- text --

    def _inline(self, node):
        """A paragraph and its lists, as Markdown."""
        out, after = escaped(node.text or ""), []
        for child in node:
            if child.tag == "computeroutput":
                out += f"`{_plain(child)}`"
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
        """The comment of something."""
        parts = [self._inline(para) for tag in ("briefdescription", "detaileddescription")
                 for para in node.find(tag).findall("para")]
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
        lines.append(re.sub(r"\s*([<>])\s*", r"\1", definition) + (member.findtext("argsstring") or "") + ";")
        return "\n".join(lines)

    def _function(self, member):
        name = member.findtext("name")
        told = self.description(member)
        if f"try_{name}" in self._names and "- throws" in told and told.count("- ") < 2:
            told = f"As `try_{name}`, but throws `Error` in place of returning one."
        rows = [f"- `{value.findtext('name')}`: {text}" for value in member.findall("enumvalue")
                if (text := self.description(value))]
        return "\n\n".join(filter(None, (f"```cpp\n{self._signature(member)}\n```", told, "\n".join(rows))))

    def _type(self, compound):
        name = compound.findtext("compoundname").removeprefix("tauten::")
        fields, functions = [], []
        for member in compound.iter("memberdef"):
            if member.get("prot") != "public" or member.findtext("name") == "fields":
                continue
            if member.get("kind") == "variable":
                start = member.findtext("initializer") or ""
                fields.append((f"`{member.findtext('name')}`", f"`{_plain(member.find('type'))}`",
                               f"`{start.removeprefix('=').strip()}`" if start.strip(" ={}") else "",
                               " ".join(self.description(member).split())))
            elif member.get("kind") == "function" and self.description(member):
                functions.append(self._function(member))
        return "\n\n".join(filter(None, (f"### {escaped(name)}", self.description(compound),
                                          table(("member", "type", "if not given", "meaning"), fields) if fields else "",
                                          *functions)))

    def pages(self, formulas, folder):
        """Writes a page for each header and one of all."""
        by_header = defaultdict(list)
        for name in formulas:
            if name not in self.values:
                raise ValueError(f"{name}: its header does not say what it is")
            by_header[self.values[name][0]].append(name)
        rooms = defaultdict(list)
        for path in sorted(INCLUDE.rglob("*.hpp")):
            header = path.relative_to(INCLUDE).as_posix()
            if header.endswith("_table.hpp"):
                continue  # figures of tables, no reference
            first = path.read_text(encoding="utf-8").split("#pragma once")[0]
            intro = " ".join(line.removeprefix("//").strip() for line in first.splitlines() if line.startswith("//"))
            page = header.removeprefix("tauten/").removesuffix(".hpp").replace("/", "-")
            types = [t for t in self.types[header] if self.description(t) and not self._is_formula(t)]
            parts = [f"# {escaped(header.removeprefix('tauten/'))}", escaped(intro), f"```cpp\n#include <{header}>\n```"]
            if by_header[header]:
                parts += ["## Formulas", "\n".join(f"- [{escaped(name)}](../formulas/{name}.md): "
                                                   f"{escaped(formulas[name].summary)}" for name in by_header[header])]
            if functions := [f for f in self.functions[header] if self.description(f)]:
                parts += ["## Functions", *(self._function(member) for member in functions)]
            if types:
                parts += ["## Types", *(self._type(compound) for compound in types)]
            write(folder / f"{page}.md", *parts, up="[C++ reference](index.md)")
            inner = header.split("/")
            rooms[inner[1] if len(inner) > 2 else ""].append((page, header, intro))
        sections = []
        for room, title in ROOMS.items():
            if rooms[room]:
                sections += [f"## {title}", table(("header", "what is in it"), [
                    (f"[{escaped(header.removeprefix('tauten/'))}]({page}.md)", escaped(intro.partition(". ")[0].rstrip(".")))
                    for page, header, intro in rooms[room]])]
        if unknown := set(rooms) - set(ROOMS):
            raise ValueError(f"name these rooms in docs/pages/cpp.py: {sorted(unknown)}")
        write(folder / "index.md", "# C++ reference",
              "One concept, one header. `tauten/tauten.hpp` is everything; each header can be taken alone. All functions are "
              "in the namespace `tauten`. Functions named `try_...` return an `Outcome` and never throw; their twins throw.",
              *sections)

    def header_of(self, formula):
        """Header in which a formula is defined."""
        return self.values[formula][0]

    @staticmethod
    def _is_formula(compound):
        return any(member.findtext("name") == "eval" for member in compound.iter("memberdef"))
