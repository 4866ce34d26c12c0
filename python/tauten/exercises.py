"""Exercises with worked solutions, from any formula and from the steps of any answer.

>>> from tauten import exercises
>>> one = exercises.exercise("preload_from_torque", seed="student 7")
>>> one.is_right(one.answer)
True
>>> page = exercises.sheet(["wrench_setting", "preload_from_torque"], seed="student 7")
>>> page.markdown().startswith("# Exercises")
True

The same seed gives the same figures on every machine; give each student one. Figures come from real threads and from
ordinary ranges. They are invented: no exercise describes a joint that exists.
"""
import functools
import html
import io
import math
import random
import xml.etree.ElementTree as xml
import zipfile

import tauten
from tauten import _core
from tauten._formula import Formula
from tauten._text import _sentence

__all__ = ["Exercise", "Sheet", "exercise", "from_answer", "sheet"]

_PLACES = ("a pump foot", "a shaft coupling", "a flanged pipe", "the bonnet of a valve")
_CLASSES = ("8.8", "10.9")
_DIGITS = 3  # of what a student answers
_INVENTED = ("All figures are invented. An answer here does not approve a joint for service; the manufacturer's manual, local "
             "codes and licensed professionals take precedence.")


def _shown(arg, si, digits):
    """A value rounded to so many digits in the unit of a workshop, as text and in SI."""
    unit = _core.shop_unit(arg.unit)
    scale = _core.unit_in_si(unit, arg.unit)
    number = format(float(f"{si / scale:.{digits}g}"), ".12g")
    text = f"{number} {unit}".rstrip()
    return text, arg.read(text) if unit else float(number)


def _half_unit(x):
    """Half a unit of the last digit to which a number is worked out."""
    return 0.5 * 10.0 ** (math.floor(math.log10(abs(x))) + 1 - _DIGITS) if x else 0.0


@functools.cache
def everyday_threads():
    """Those of ISO 262 from M5 to M36."""
    threads = map(tauten.thread, tauten.threads)
    return [thread for thread in threads if thread.selected and 4.5e-3 < thread.diameter < 36.5e-3]


def _of_thread(chance):
    """Dimensions, strengths and loads that belong to one bolt, by the names of arguments of formulas, and what it is."""
    thread, mark = chance.choice(everyday_threads()), chance.choice(_CLASSES)
    steel = tauten.property_class(mark, thread.diameter)
    friction = chance.randrange(8, 17) / 100
    proof = steel.proof_stress * thread.stress_area
    preload, nut_factor = chance.uniform(0.4, 0.7) * proof, chance.uniform(0.14, 0.2)
    torque = nut_factor * preload * thread.diameter
    known = {member: getattr(thread, member) for member in ("diameter", "pitch", "pitch_diameter", "minor_diameter", "root_diameter",
                                                            "stress_diameter", "stress_area", "lead_angle")}
    known |= {"thread_friction": friction, "bearing_friction": friction, "nut_factor": nut_factor, "preload": preload, "load": preload,
              "torque": torque, "bearing_diameter": 1.25 * thread.diameter, "width_across_flats": thread.socket,
              "yield_strength": steel.yield_strength, "tensile_strength": steel.tensile_strength,
              "proof_stress": steel.proof_stress, "thread_torque": 0.5 * torque, "bearing_torque": 0.5 * torque,
              "snug_torque": 0.3 * torque, "working_load": 0.3 * preload, "grip_length": chance.uniform(2, 5) * thread.diameter}
    # Not every size has a head with a width in the tables.
    return {name: value for name, value in known.items() if value is not None}, f"{thread.designation}, class {mark}"


def _tolerance(formula, numbers):
    """What rounding each number to three digits can change, taken together as independent, beside that of the answer."""
    moved = (slope * _half_unit(x) for slope, x in zip(formula.gradient(*numbers).values(), numbers))
    return math.hypot(*moved) + _half_unit(formula(*numbers))


_BOLT = frozenset(("pitch", "diameter", "pitch_diameter", "stress_area", "stress_diameter", "root_diameter", "minor_diameter"))


def _drawn(formula, chance):
    """Values for all inputs of a formula that fit together, and the bolt that they belong to, or ""."""
    for tries in range(400):
        known, bolt = _of_thread(chance)
        near = 0.35 * (1 - tries / 400)  # ever closer to the examples, which fit together
        values = {}
        for arg in formula.inputs:
            # The dimensions of a bolt as a table prints them; all else to three digits.
            example = arg.read(arg.example) if arg.unit else float(arg.example)
            si = known.get(arg.name, example * chance.uniform(1 - near, 1 + near))
            if tries >= 200:
                si = example * chance.uniform(1 - near, 1 + near)
            values[arg.name] = _shown(arg, si, 4 if arg.name in _BOLT else _DIGITS)
        numbers = [value for _, value in values.values()]
        # No answer that hangs on the last digit of what is given, as the small difference of large numbers does.
        if formula.check(*numbers).status == "ok" and _tolerance(formula, numbers) < 0.03 * abs(formula(*numbers)):
            return values, bolt if tries < 200 and any(arg.name in _BOLT for arg in formula.inputs) else ""
    raise ValueError(f"exercise: no figures found that fit {formula.name} together")


class Exercise:
    """One question about one formula, with its worked solution. Made by the functions of this module.

    formula; values, the given figures in SI by name; answer in SI, and tolerance: what rounding to three digits on the way
    can change, by the derivatives of the formula, beside half a unit of the third digit of the answer itself.
    """

    def __init__(self, formula, given, bolt="", place=""):
        self.formula = formula
        self._given = dict(given)
        self.values = {name: value for name, (_, value) in given.items()}
        self.answer = formula(**self.values)
        self.bolt, self.place = bolt, place
        self.tolerance = _tolerance(formula, self.values.values())
        self.unit = _core.shop_unit(formula.output.unit)
        self._scale = _core.unit_in_si(self.unit, formula.output.unit)

    def __repr__(self):
        return f"<exercise on {self.formula.name}>"

    def __str__(self):
        return self.question()

    def is_right(self, answer):
        """Whether an answer in SI, or as text with its unit, is right within the tolerance."""
        number = self.formula.output.read(answer) if isinstance(answer, str) else float(answer)
        return abs(number - self.answer) <= self.tolerance

    def _result(self):
        return f"{float(f'{self.answer / self._scale:.{_DIGITS + 1}g}'):.12g} {self.unit}".rstrip()

    def _allowed(self):
        return f"{float(f'{self.tolerance / self._scale:.2g}'):.12g} {self.unit}".rstrip()

    def _opening(self):
        bolt = f"A bolt {self.bolt}, of {self.place}. " if self.bolt else ""
        return f"{bolt}{_sentence(self.formula.summary)}."

    def question(self, notation="text"):
        """The question: text, markdown or latex."""
        mark = _MARKS[notation]
        rows = [mark.item(f"{arg.name.replace('_', ' ')} {mark.math(arg)} = {mark.words(self._given[arg.name][0])}")
                for arg in self.formula.inputs]
        output = self.formula.output
        find = f"Find: {output.name.replace('_', ' ')} {mark.math(output)}" + (f" in {mark.words(self.unit)}" if self.unit else "")
        return mark.block(mark.words(self._opening()), rows, f"{find}, to three digits.")

    def solution(self, notation="text"):
        """The worked solution: formula, values put in, result, and where the formula comes from."""
        mark = _MARKS[notation]
        output, written = self.formula.output, "latex" if notation != "text" else "text"
        symbol = output.latex if written == "latex" else output.symbol
        steps = [f"{symbol} = {self.formula.expression(written)}", f"{symbol} = {self.formula.expression(written, **self.values)}"]
        ends = (f"{output.name.replace('_', ' ')} {mark.math(output)} = {mark.words(self._result())}; right within "
                f"{mark.words(self._allowed())}.")
        sources = mark.words("Source: " + "; ".join(map(str, self.formula.sources)) + ".")
        return "\n\n".join([*(mark.equation(step) for step in steps), _sentence(ends), sources])

    def qti(self, identifier="exercise"):
        """The exercise as an item of IMS/1EdTech QTI 2.1, an XML text: a number is asked for, the solution comes as feedback."""
        item = xml.Element("assessmentItem", {"xmlns": _QTI, "identifier": identifier, "title": _sentence(self.formula.summary),
                                              "adaptive": "false", "timeDependent": "false"})
        response = xml.SubElement(item, "responseDeclaration", identifier="RESPONSE", cardinality="single", baseType="float")
        xml.SubElement(xml.SubElement(response, "correctResponse"), "value").text = repr(self.answer / self._scale)
        score = xml.SubElement(item, "outcomeDeclaration", identifier="SCORE", cardinality="single", baseType="float")
        xml.SubElement(xml.SubElement(score, "defaultValue"), "value").text = "0"
        xml.SubElement(item, "outcomeDeclaration", identifier="FEEDBACK", cardinality="single", baseType="identifier")
        body = xml.SubElement(item, "itemBody")
        xml.SubElement(body, "p").text = self._opening()
        rows = xml.SubElement(body, "ul")
        for arg in self.formula.inputs:
            xml.SubElement(rows, "li").text = f"{arg.name.replace('_', ' ')} {arg.symbol} = {self._given[arg.name][0]}"
        asked = xml.SubElement(body, "p")
        asked.text = f"Find: {self.formula.output.name.replace('_', ' ')} {self.formula.output.symbol}, to three digits: "
        xml.SubElement(asked, "textEntryInteraction", responseIdentifier="RESPONSE", expectedLength="12").tail = f" {self.unit}".rstrip()
        processing = xml.SubElement(item, "responseProcessing")
        right = xml.SubElement(xml.SubElement(processing, "responseCondition"), "responseIf")
        allowed = repr(self.tolerance / self._scale)
        equal = xml.SubElement(right, "equal", toleranceMode="absolute", tolerance=f"{allowed} {allowed}")
        xml.SubElement(equal, "variable", identifier="RESPONSE")
        xml.SubElement(equal, "correct", identifier="RESPONSE")
        xml.SubElement(xml.SubElement(right, "setOutcomeValue", identifier="SCORE"), "baseValue", baseType="float").text = "1"
        always = xml.SubElement(processing, "setOutcomeValue", identifier="FEEDBACK")
        xml.SubElement(always, "baseValue", baseType="identifier").text = "SOLUTION"
        feedback = xml.SubElement(item, "modalFeedback", outcomeIdentifier="FEEDBACK", identifier="SOLUTION", showHide="show")
        for line in self.solution().split("\n\n"):
            xml.SubElement(feedback, "p").text = line
        return '<?xml version="1.0" encoding="UTF-8"?>\n' + xml.tostring(item, encoding="unicode")


_QTI = "http://www.imsglobal.org/xsd/imsqti_v2p1"


class _Text:
    """How an exercise is written as plain text."""

    words = staticmethod(str)

    @staticmethod
    def math(arg):
        return arg.symbol

    @staticmethod
    def item(text):
        return f"  {text}"

    @staticmethod
    def equation(text):
        return f"  {text}"

    @staticmethod
    def block(opening, rows, find):
        return "\n".join([opening, "", *rows, "", find])


class _Markdown(_Text):
    words = staticmethod(html.escape)

    @staticmethod
    def math(arg):
        return f"${arg.latex}$"

    @staticmethod
    def item(text):
        return f"- {text}"

    @staticmethod
    def equation(text):
        return f"$${text}$$"


class _Latex(_Markdown):
    @staticmethod
    def words(text):
        return text.translate({ord(sign): "\\" + sign for sign in "&%$#_{}"} | {ord("\\"): r"\textbackslash{}"})

    @staticmethod
    def item(text):
        return rf"  \item {text}"

    @staticmethod
    def equation(text):
        return rf"\[ {text} \]"

    @staticmethod
    def block(opening, rows, find):
        return "\n".join([opening, r"\begin{itemize}", *rows, r"\end{itemize}", find])


_MARKS = {"text": _Text, "markdown": _Markdown, "latex": _Latex}


def _formula(what):
    return what if isinstance(what, Formula) else tauten.formulas[what]


def exercise(formula, seed=0):
    """An exercise on a formula.

    Parameters
    ----------
    formula : Formula or text
        Any of ``tauten.formulas``, or its name.
    seed : text or number
        The same gives the same figures, whatever else is asked.

    Returns
    -------
    Exercise

    Examples
    --------
    >>> from tauten import exercises
    >>> exercises.exercise("wrench_setting", seed=1).values == exercises.exercise("wrench_setting", seed=1).values
    True
    """
    formula = _formula(formula)
    chance = random.Random(f"{formula.name}/{seed}")
    given, bolt = _drawn(formula, chance)
    return Exercise(formula, given, bolt, chance.choice(_PLACES))


def from_answer(answer):
    """The steps of an answer as exercises, one for each formula that was used, with the figures of the answer.

    Parameters
    ----------
    answer : answer with ``derivation()``, or a candidate of `Clamp`

    Returns
    -------
    list of Exercise

    Examples
    --------
    >>> import tauten
    >>> from tauten import exercises
    >>> way = tauten.reach(torque="130N.m", wrench_length="400mm", extensions=[("100mm", "30deg")])
    >>> [one.formula.name for one in exercises.from_answer(way)][:1]
    ['wrench_setting']
    """
    found = {}
    for step in answer.derivation().steps:
        formula = tauten.formulas.get(step.formula) if step.formula in tauten.formulas else None
        if formula is None or formula.name in found:
            continue
        given = {arg.name: _shown(arg, si, 4) for arg, si in zip(formula.inputs, step.inputs)}
        if formula.check(*(value for _, value in given.values())).status in ("ok", "unusual"):
            found[formula.name] = Exercise(formula, given)
    return list(found.values())


class Sheet:
    """Exercises on one sheet, with or without their solutions."""

    def __init__(self, exercises, title="Exercises"):
        self.exercises = tuple(exercises)
        self.title = title

    def __iter__(self):
        return iter(self.exercises)

    def __len__(self):
        return len(self.exercises)

    def __str__(self):
        return self.text()

    def _repr_markdown_(self):
        return self.markdown()

    def text(self, solutions=False):
        """The sheet as plain text."""
        parts = [self.title, "=" * len(self.title), "", _INVENTED]
        for number, one in enumerate(self, 1):
            parts += ["", f"{number}. {one.question()}"]
            if solutions:
                parts += ["", one.solution()]
        return "\n".join(parts) + "\n"

    def markdown(self, solutions="folded"):
        """The sheet in Markdown, for a notebook or a page. solutions: "folded", "shown" or "none"."""
        if solutions not in ("folded", "shown", "none"):
            raise ValueError(f"solutions takes folded, shown or none, not {solutions!r}")
        parts = [f"# {self.title}", _INVENTED]
        for number, one in enumerate(self, 1):
            parts += [f"## Exercise {number}", one.question("markdown")]
            if solutions == "folded":
                parts += ["<details><summary>Solution</summary>", one.solution("markdown"), "</details>"]
            elif solutions == "shown":
                parts += ["**Solution**", one.solution("markdown")]
        return "\n\n".join(parts) + "\n"

    def latex(self, solutions=True):
        """The sheet as a LaTeX document, the solutions on pages of their own at its end."""
        parts = [r"\documentclass{article}", r"\usepackage{amsmath}", r"\begin{document}", rf"\section*{{{_Latex.words(self.title)}}}",
                 _Latex.words(_INVENTED), r"\begin{enumerate}", *(rf"\item {one.question('latex')}" for one in self), r"\end{enumerate}"]
        if solutions:
            parts += [r"\clearpage", r"\section*{Solutions}", r"\begin{enumerate}", *(rf"\item {one.solution('latex')}" for one in self),
                      r"\end{enumerate}"]
        return "\n".join([*parts, r"\end{document}"]) + "\n"

    def qti(self):
        """The sheet as a package of IMS/1EdTech QTI 2.1: the bytes of a zip file with a manifest and an item for each exercise."""
        space = "http://www.imsglobal.org/xsd/imscp_v1p1"
        manifest = xml.Element("manifest", {"xmlns": space, "identifier": "sheet"})
        about = xml.SubElement(manifest, "metadata")
        xml.SubElement(about, "schema").text = "QTIv2.1 Package"
        xml.SubElement(about, "schemaversion").text = "1.0.0"
        xml.SubElement(manifest, "organizations")
        resources = xml.SubElement(manifest, "resources")
        written = io.BytesIO()
        with zipfile.ZipFile(written, "w", zipfile.ZIP_DEFLATED) as package:
            def put(name, text):  # with one date, so that the same sheet has the same bytes
                package.writestr(zipfile.ZipInfo(name, (2000, 1, 1, 0, 0, 0)), text)
            for number, one in enumerate(self, 1):
                name = f"exercise-{number}.xml"
                put(name, one.qti(f"exercise-{number}"))
                resource = xml.SubElement(resources, "resource", identifier=f"exercise-{number}", type="imsqti_item_xmlv2p1", href=name)
                xml.SubElement(resource, "file", href=name)
            put("imsmanifest.xml", '<?xml version="1.0" encoding="UTF-8"?>\n' + xml.tostring(manifest, encoding="unicode"))
        return written.getvalue()


def sheet(formulas, seed=0, title="Exercises"):
    """A sheet with an exercise on each formula.

    Parameters
    ----------
    formulas : list of Formula or text
        A formula that stands there twice comes with two sets of figures.
    seed : text or number
        One for each student.
    title : text

    Returns
    -------
    Sheet
        ``text()``, ``markdown()``, ``latex()``, and ``qti()`` for a learning platform; in a notebook it shows itself.

    Examples
    --------
    >>> from tauten import exercises
    >>> len(exercises.sheet(["wrench_setting", "nut_factor"], seed="student 7"))
    2
    """
    return Sheet([exercise(formula, f"{seed}/{number}") for number, formula in enumerate(map(_formula, formulas))], title)
