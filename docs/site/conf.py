"""Settings of the documentation site."""

from docutils import nodes
from docutils.utils.math.latex2mathml import tex2mathml


project = "tauten"
author = "the tauten contributors"
html_title = "tauten"
extensions = ["myst_parser", "sphinx.ext.autodoc", "sphinx.ext.napoleon"]
myst_enable_extensions = ["dollarmath", "colon_fence"]
myst_heading_anchors = 3
myst_dmath_double_inline = False
html_theme = "sphinx_rtd_theme"
html_theme_options = {"navigation_depth": 2, "prev_next_buttons_location": None}
html_static_path = ["_static"]
html_css_files = ["site.css"]
html_copy_source = False
html_show_sourcelink = False
html_show_sphinx = False
html_show_copyright = False
html_math_renderer = "mathml"
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


def setup(app):
    """Formulas become MathML, which browsers show without a script and without a network."""
    app.add_html_math_renderer("mathml", (_inline, None), (_display, None))
