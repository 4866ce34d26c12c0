"""Settings of the documentation site. The version comes from the program, with `-D`."""
import pathlib
import re

from docutils import nodes
from docutils.utils.math.latex2mathml import tex2mathml

project = "tauten"
author = "the tauten contributors"
extensions = ["myst_parser", "sphinx.ext.autodoc", "sphinx.ext.napoleon", "sphinx_copybutton"]
myst_enable_extensions = ["dollarmath", "colon_fence"]
myst_heading_anchors = 3
myst_dmath_double_inline = False
html_theme = "furo"
html_theme_options = {
    # Text that reads in both modes: a contrast of 4.5 and more, which tests/site.py measures.
    "light_css_variables": {
        "color-brand-primary": "#0b5a8a", "color-brand-content": "#0b5a8a", "color-foreground-muted": "#5b6169",
        "color-foreground-secondary": "#4c5159", "color-problematic": "#a52a1c", "color-sidebar-caption-text": "#5b6169",
    },
    "dark_css_variables": {
        "color-brand-primary": "#7cc0ee", "color-brand-content": "#7cc0ee", "color-foreground-muted": "#a0a4aa",
        "color-foreground-secondary": "#b4b8be", "color-problematic": "#f0988c", "color-sidebar-caption-text": "#a0a4aa",
    },
    "top_of_page_button": None,
}
pygments_style = "xcode"
pygments_dark_style = "native"
html_static_path = ["_static"]
html_css_files = ["site.css", "fold.css"]
html_js_files = ["fold.js", "site.js"]
html_search_scorer = str(pathlib.Path(__file__).with_name("scorer.js"))
html_domain_indices = False
html_copy_source = False
html_show_sourcelink = False
html_show_sphinx = False
html_show_copyright = False
html_math_renderer = "mathml"
copybutton_prompt_text = "$ "
copybutton_selector = "div.highlight pre"
default_role = "code"
highlight_language = "none"
nitpicky = True
nitpick_ignore = [("py:exc", "ValueError")]
# Types in docstrings are words such as "length in m", not classes.
napoleon_google_docstring = False
napoleon_use_param = False
napoleon_use_rtype = False
napoleon_custom_sections = ["Sources"]
autodoc_typehints = "none"


def _inline(self, node):
    self.body.append(tex2mathml(node.astext(), inline=True))
    raise nodes.SkipNode


def _display(self, node):
    # A wide formula scrolls by itself, so that the page does not.
    self.body.append(f'<div class="formula">{tex2mathml(node.astext(), inline=False)}</div>')
    raise nodes.SkipNode


def _sidebar(app, pagename, templatename, context, doctree):
    """The list at the side opens where the reader is: with every page in it, each page would weigh as much as all others. The pages that
    compute are no documents, so they get their place in it here."""
    whole = context.get("toctree")
    if not whole:
        return
    door = f'<li class="toctree-l1"><a class="reference internal" href="{context["pathto"]("bench/index.html", 1)}">At the bench</a></li>'

    def toctree(**options):
        listed, found = re.subn(r">Do</span></p>\s*<ul[^>]*>", lambda place: place[0] + door, whole(**{**options, "collapse": True}))
        if found != 1:
            raise ValueError("the list at the side has no group 'Do' for the pages that compute")
        return listed

    context["toctree"] = toctree


def setup(app):
    """Formulas become MathML, which browsers show without a script and without a network."""
    app.add_html_math_renderer("mathml", (_inline, None), (_display, None))
    app.connect("html-page-context", _sidebar, priority=400)  # before the theme makes its list
