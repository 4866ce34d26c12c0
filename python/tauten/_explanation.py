"""How a result came about, as text that also shows itself in a notebook."""


class Explanation(str):
    """The text of a derivation. In a notebook it shows as a page with formulas; printed it is the plain text."""

    __module__ = "tauten"
    __slots__ = ("_derivation", "_style")

    def __new__(cls, text, derivation, style):
        self = super().__new__(cls, text)
        self._derivation = derivation
        self._style = style
        return self

    def _repr_html_(self):
        return str(self._derivation.explain("html", self._style))

    def _repr_markdown_(self):
        return str(self._derivation.explain("markdown", self._style))

    def _repr_latex_(self):
        return str(self._derivation.explain("latex", self._style))
