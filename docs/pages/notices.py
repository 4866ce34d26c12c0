"""The page of the notices: code, meaning, what to do, and which questions give it."""
import csv
import pathlib

from pages import table, write
from tauten import _core

LIST = pathlib.Path(__file__).resolve().parents[1] / "notices.csv"
KINDS = {"hazard": "**hazard**", "standing": "hazard, always", "finding": "", "trust": ""}


def notices():
    """The rows of the list: code, questions, meaning and action, and the kind that decides where a page shows it."""
    with open(LIST, encoding="utf-8", newline="") as file:
        return [{**row, "kind": _core.notice_kind(row["code"])} for row in csv.DictReader(file)]


def pages(folder):
    """Writes the page; returns a line about it."""
    rows = notices()
    write(folder / "notices.md", "# Notices",
          "An answer has `notices`: each with a `code` that stays the same from version to version, a `text` with the figures of this "
          "joint, and `is_estimate` if it rests on judgement or memory. Programs compare the code, people read the text. A hazard leads "
          "the page of the answer; what holds for every job is always a hazard and stands in one line. "
          "[Cautions](../background/cautions.md) has those in full. *uncertainty* is what `tauten uncertainty` and "
          "`tauten.uncertainty` give, *cautions* what `tauten cautions` prints only.",
          table(("code", "kind", "meaning", "what to do", "given by"),
                [(f"`{row['code']}`", KINDS[row["kind"]], row["meaning"], row["action"], row["questions"].replace(" ", ", "))
                 for row in rows]))
    return f"{len(rows)} notices"
