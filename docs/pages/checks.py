"""What was compared with print: read from the report of the published checks and from the lists beside them."""
import csv
import os
import pathlib
import re
import subprocess
from collections import Counter, defaultdict
from typing import NamedTuple

ROOT = pathlib.Path(__file__).resolve().parents[2]
PUBLISHED = ROOT / "tests" / "published"

# The kind of document by how its name begins. A new document must be put in here.
_KINDS = (
    ("standard", r"ISO |VDI |table after VDI |ASME |EN |JIS |AISC |DIN |nominal stress area|limits of bolt thread"),
    ("handbook", r"Machine Design|manual of a machine|(?:J\. H\. )?Bickford|Shigley|Speck|Ugural|Brown|Timoshenko|Textbook|"
                 r"US Army|US Navy|NASA"),
    ("paper", r"W\. Eccles|Materials|R\. V\. Kukta"),
    ("lecture notes", r"Course lesson notes"),
    ("common practice", r"Trade tables"),
)
_SEEN = {"seen": "seen in print", "reprint": "seen reprinted", "memory": "from memory"}


class Comparison(NamedTuple):
    """One printed figure beside ours. Numbers are texts in the printed unit."""

    table: str
    id: str
    formula: str
    through: str
    given: str
    published: str
    unit: str
    ours: str
    deviation: str
    tolerance: str
    why: str
    source: str
    confidence: str

    @property
    def kind(self):
        """Kind of the document."""
        found = [kind for kind, pattern in _KINDS if re.match(pattern, self.source)]
        if not found:
            raise ValueError(f"{self.id}: name the kind of this document in docs/pages/checks.py: {self.source}")
        return found[0]

    @property
    def seen(self):
        """How the figure was come by."""
        return _SEEN[self.confidence]

    @property
    def percent(self):
        """Deviation in percent of the printed figure."""
        return 100 * float(self.deviation) / abs(float(self.published))


def _rows(name):
    with open(PUBLISHED / name, encoding="utf-8") as file:
        return list(csv.reader(file))[1:]


class Checks:
    """All comparisons, and what stands in for them."""

    def __init__(self, program, folder):
        """Runs the published checks; raises if one fails."""
        report = folder / "published.csv"
        run = subprocess.run([program], env={**os.environ, "TAUTEN_PUBLISHED_REPORT": str(report)}, capture_output=True,
                             text=True)
        if run.returncode:
            raise RuntimeError(f"the published checks fail:\n{run.stdout[-2000:]}")
        with open(report, encoding="utf-8") as file:
            self.all = [Comparison(*row) for row in list(csv.reader(file))[1:]]
        self.of = defaultdict(list)
        for row in self.all:
            for name in (row.formula, *row.through.split()):
                self.of[name].append(row)
        self.no_figure = {name: (reason, held_by) for name, reason, held_by in _rows("no_figure.csv")}
        self.left_out = _rows("left_out.csv")
        self.kinds = Counter(row.kind for row in self.all)
        self.seen = Counter(row.seen for row in self.all)

    @property
    def tables(self):
        """Comparisons by table."""
        found = defaultdict(list)
        for row in self.all:
            found[row.table].append(row)
        return dict(sorted(found.items()))
