"""The page of torques to stop at: over sizes, classes and states of rust, beside every limit."""
import tauten
from pages import table, write

# Hexagon heads of ISO 4014 on bolts of the pumping station, from the couplings to the pump feet.
_SIZES = ("M8", "M10", "M12", "M16", "M20", "M24")
_CLASSES = ("4.6", "8.8", "10.9", "A4-70")
_RUST = ("light_rust", "rusted", "heavy_rust")
_LIMITS = {"shear": "shear", "corners": "corners", "tool": "socket test torque", "balance": "balance", "gain": "gain"}


def _row(size, mark, rust):
    stuck = tauten.free_joint(thread=size, property_class=mark, rust=rust, trials=20000)
    bounds = {bound.limit: bound.torque for bound in stuck.stop_bounds}
    first = stuck.steps[0]
    return (size, mark, rust.replace("_", " "), f"**{first.stop_at:.0f}**", f"{100 * first.chances.free:.0f} %",
            f"{stuck.stop_at:.0f}", _LIMITS[stuck.stop_limit], *(f"{bounds[limit]:.0f}" for limit in _LIMITS),
            f"{stuck.breakaway.nominal:.0f}")


def pages(folder):
    """Writes the page; returns a line about it."""
    rows = [_row(size, mark, rust) for size in _SIZES for mark in _CLASSES for rust in _RUST]
    write(folder / "stop_torques.md", "# Torques to stop at",
          "Torques in N.m at a six-point socket on a new hexagon head of ISO 4014, with no aid used. *Stop at*: "
          "where a first pull stops that leaves some of the accepted chance for the aids after it; *most*: what a single pull "
          "may reach that spends all of it, the minimum of the limits that follow. *Shear* and *corners*: the torque up to which the bolt shears, or the corners round off, in 1 of "
          "20 cases. *Socket test torque*: ISO 1711-1. *Balance*: beyond it more torque breaks something more often than it frees "
          "the fastener. *Gain*: beyond it more torque hardly frees any more. A smaller square drive, worn corners or a fastener of "
          "the flange that has failed lower it further.",
          ":::{warning}\nThe effect of rust is judgement, and breaking torques are from memory, not checked against the standard. "
          "Ask `tauten free` about your own bolt, and read the [cautions](../background/cautions.md).\n:::",
          table(("thread", "class", "rust", "stop at", "free by then", "most", "limited by", *_LIMITS.values(), "typical breakaway"),
                rows))
    return f"{len(rows)} torques to stop at"
