"""Uncertainty of a figure, and the contribution of each input.

Budgets to first order (GUM, JCGM 100:2008), Monte Carlo trials (JCGM 101:2008) and Sobol indices, for one formula, for a
chain of formulas that feed each other, or for a whole answer.

>>> from tauten import uncertainty
>>> inputs = dict(torque=uncertainty.normal("48N.m", "2N.m"), diameter="10mm", nut_factor=(0.12, 0.16, 0.22))
>>> uncertainty.budget("preload_from_nut_factor", inputs).output
'preload'
>>> run = uncertainty.monte_carlo(uncertainty.clamp(thread="M16", property_class="8.8", torque="130N.m",
...                                                 condition="oiled"), jobs=2)
>>> run.symmetric.low < run.mean < run.symmetric.high
True

An input is a number in SI, text with its unit, a Pint quantity, three of these (a band whose ends are bounds), or one of
the distributions below. Results are in SI. The same seed gives the same result on any number of threads.
"""
import inspect
import sys

from tauten import _answers, _core
from tauten._errors import Error
from tauten._formula import Formula

__all__ = ["Distribution", "budget", "clamp", "free", "from_band", "from_samples", "lognormal", "monte_carlo", "normal",
           "question", "sobol", "triangular", "turn", "two_piece", "uniform"]


class Distribution:
    """Spread of the values of an input. Made by the functions of this module; it never changes.

    Values with units must be of one kind. They are read again when the distribution meets its input, so that those of
    another kind are refused there.
    """

    __slots__ = ("_shape", "_values", "_numbers")

    def __init__(self, shape, values):
        self._shape = shape
        self._values = tuple(values)
        self._numbers = _core.distribution_numbers(shape, self._values)  # refuses what cannot be

    @property
    def mean(self):
        """Mean in SI."""
        return _core.describe_distribution(self._shape, self._numbers, None)[0]

    @property
    def standard_deviation(self):
        """Standard deviation in SI."""
        return _core.describe_distribution(self._shape, self._numbers, None)[1]

    def quantile(self, chance):
        """The value in SI below which ``chance`` lies. Raises Error if that is not from 0 to 1."""
        return _core.describe_distribution(self._shape, self._numbers, chance)

    def __eq__(self, other):
        return isinstance(other, Distribution) and (self._shape, self._numbers) == (other._shape, other._numbers)

    def __hash__(self):
        return hash((self._shape, self._numbers))

    def __repr__(self):
        if self._shape == "from_samples":
            return f"from_samples({len(self._values)} values)"
        return f"{self._shape}({', '.join(map(repr, self._values))})"


def normal(mean, standard_deviation):
    """A normal distribution. Raises Error if the standard deviation is negative."""
    return Distribution("normal", (mean, standard_deviation))


def lognormal(median, variation):
    """A quantity that scatters by factors. variation: standard deviation over mean. Raises Error for a median not above 0."""
    return Distribution("lognormal", (median, variation))


def uniform(low, high):
    """Every value between two ends is as likely as any other: a tolerance, a wrench accuracy."""
    return Distribution("uniform", (low, high))


def triangular(low, mode, high):
    """Bounds and the most frequent value."""
    return Distribution("triangular", (low, mode, high))


def from_band(low, nominal=None, high=None):
    """A band whose ends are bounds, the nominal value being the most frequent: triangular. Takes a `tauten.Band` too."""
    if nominal is None and high is None:
        three = tuple(low) if hasattr(low, "__iter__") and not isinstance(low, str) else ()
        low, nominal, high = three if len(three) == 3 else (low, None, None)
    if nominal is None or high is None:
        raise Error("band takes low, typical and high: three values, or a Band", "band")
    return Distribution("from_band", (low, nominal, high))


def two_piece(low, nominal, high, coverage=0.95):
    """A band whose ends are exceeded now and then: half of a normal distribution on each side of the nominal value."""
    return Distribution("two_piece", (low, nominal, high, coverage))


def from_samples(values):
    """The spread of observed values; not the uncertainty of their mean."""
    if isinstance(values, str) or not hasattr(values, "__iter__"):
        raise TypeError(f"samples takes a list of values, not {type(values).__name__}")
    return Distribution("from_samples", values)


def question(what):
    """A question about uncertainty, ready for `budget`, `monte_carlo` and `sobol`.

    what : text, Formula, list or UncertaintyQuestion
        A formula or its name; or a list of these, of which each takes the results of those before it by name. A pair
        (formula, name) gives a result the name of a later input: ("shank_torsion", "thread_torque").

    Raises Error if a formula is unknown, or a result is not taken by a later one.
    """
    if isinstance(what, _core.UncertaintyQuestion):
        return what
    links = [what] if isinstance(what, (str, Formula)) else what
    if not isinstance(links, (list, tuple)):
        raise TypeError(f"a question is of a formula or its name, a list of these, or an UncertaintyQuestion, not {type(what).__name__}")
    chain = []
    for link in links:
        pair = (link, "") if isinstance(link, (str, Formula)) else link
        if not (isinstance(pair, (list, tuple)) and len(pair) == 2 and isinstance(pair[1], str)
                and isinstance(pair[0], (str, Formula))):
            raise TypeError(f"a link of a chain is a formula or its name, or a pair (formula, name of its result), not {link!r}")
        formula, name = pair
        chain.append((formula.name if isinstance(formula, Formula) else formula, name))
    return _core.formula_question(chain)


def _of_answer(answer, ask, said):
    """The question of a whole answer. A word that the answer does not take is refused, as the answer does."""
    known = [name for name, parameter in inspect.signature(answer).parameters.items()
             if parameter.kind is parameter.KEYWORD_ONLY and name not in ("columns", "jobs")]
    for word in said:
        if word not in known:
            raise TypeError(f"{answer.__name__}() got an unexpected keyword argument '{word}'; it takes {', '.join(known)}")
    return _answers._one(ask, _answers._given(said))


def clamp(**joint):
    """The clamp load of a torque as a question for the most common fastener. Takes what `tauten.clamp` takes.

    Inputs: torque, thread_friction, bearing_friction, bearing_diameter, strength (a factor on the minimum of the class).
    Outputs: clamp_load, yield_utilisation (above 1 the bolt yields). The title names the fastener, ``others`` those that fit
    too: give thread and head to ask about one of them. Raises Error like `tauten.clamp`.
    """
    if joint.get("torque") is None:
        raise TypeError("clamp() needs a torque")
    return _of_answer(_answers.clamp, _core.clamp_question, joint)


def turn(**joint):
    """A tightening by angle as a question. Takes what `tauten.turn` takes.

    Every trial turns a bolt through its curve: ten thousand take a second or two, two certain digits a minute; ``digits=1``
    asks for less. Inputs: snug_torque, angle_of_turn, thread_friction, bearing_friction, resilience and strength (factors).
    Outputs: clamp_load, torque, yield_utilisation; a trial in which the bolt necks has none. Raises Error like
    `tauten.turn`, and where the typical bolt necks.
    """
    return _of_answer(_answers.turn, _core.turn_question, joint)


def free(**fastener):
    """A stuck fastener as a question. Takes what `tauten.free_joint` takes.

    Inputs: preload, thread_growth, bearing_growth, bond_torque, rust_torque, prevailing_torque, torsion_capacity,
    section_loss. Outputs: breakaway_torque, shear_torque, torque_ratio (above 1 the bolt shears first). Raises Error like
    `tauten.free_joint`.
    """
    return _of_answer(_answers.free_joint, _core.free_question, fastener)


def _inputs(inputs):
    if inputs is not None and not hasattr(inputs, "items"):
        raise TypeError(f"inputs takes a dict from the name of an input to what is known of it, not {type(inputs).__name__}")
    return dict(inputs or {})


def _pairs(correlations):
    pairs = list(correlations) if hasattr(correlations, "__iter__") else [correlations]
    if isinstance(correlations, (str, dict)) or not all(isinstance(p, (list, tuple)) and len(p) == 3 for p in pairs):
        raise Error("correlations takes a list of two inputs and a coefficient each: [('torque', 'diameter', 0.5)]",
                    "correlations")
    return pairs


def _name(output):
    if not isinstance(output, str):
        raise TypeError(f"output takes the name of a result, not {type(output).__name__}")
    return output


def budget(what, inputs=None, *, output="", correlations=(), coverage_factor=2):
    """First-order propagation: the contribution of each input to the uncertainty.

    Parameters
    ----------
    what : text, Formula, list or UncertaintyQuestion
        See `question`.
    inputs : dict
        Distribution or fixed value of each input; of a whole answer only what is not the default.
    output : text
        Name of the result, if there are several; default: the first.
    correlations : list of (input, input, coefficient)
    coverage_factor : number
        k of the expanded uncertainty.

    Returns
    -------
    Budget
        value, standard_uncertainty, expanded_uncertainty and contributions (name, unit, estimate, standard_uncertainty,
        sensitivity, contribution, share), in SI, and ``explain()``. Exact for linear models. Raises Error for inputs that
        are missing, unknown, or without a value at their means.
    """
    return question(what).budget(_inputs(inputs), _pairs(correlations), _name(output), coverage_factor)


class _Bar:
    """Progress of a run, on standard error."""

    def __init__(self):
        try:
            from tqdm import tqdm
        except ImportError:
            tqdm = None
        self._bar = tqdm(unit=" trials", leave=False) if tqdm else None
        self._shown = False

    def __call__(self, done, expected):
        if self._bar is not None:
            self._bar.total = expected
            self._bar.update(done - self._bar.n)
        elif sys.stderr.isatty():
            self._shown = True
            print(f"\r{done} of about {expected} trials", end="", file=sys.stderr, flush=True)

    def close(self):
        if self._bar is not None:
            self._bar.close()
        elif self._shown:
            print("\r\x1b[K", end="", file=sys.stderr, flush=True)


def _run(start, progress):
    if progress is not True:
        return start(progress or None)
    bar = _Bar()
    try:
        return start(bar)
    finally:
        bar.close()


def monte_carlo(what, inputs=None, *, output="", correlations=(), coverage=0.95, interval="symmetric", digits=2,
                trials=None, most_trials=None, seed=1, jobs=1, progress=None):
    """Propagation of whole distributions by random trials, after JCGM 101:2008.

    Runs until the requested digits are certain, and gives the numerical tolerance.

    Parameters
    ----------
    what, inputs, output, correlations
        As for `budget`. A correlation is that of the normal copula.
    coverage : number
        Share that a coverage interval holds.
    interval : "symmetric" or "shortest"
        The one whose ends must be certain; both are given.
    digits : int
        Significant digits of the standard uncertainty that must be certain.
    trials : int
        Exactly this number of trials.
    most_trials : int
        Largest number of trials; default: 10 million.
    seed, jobs : int
    progress : True or a function
        True shows a bar (of tqdm if it is installed). A function takes the trials done and those expected; if it returns
        False, the run stops and gives what it has. The interrupt key raises KeyboardInterrupt.

    Returns
    -------
    MonteCarlo
        mean, standard_uncertainty, symmetric and shortest (low, high), trials, outside, tolerance, converged, stopped, the
        errors of the figures, values, and quantile, chance_below, chance_above and ``explain()``. In SI. Raises Error like
        `budget`.
    """
    options = {"coverage": coverage, "interval": interval, "digits": digits, "trials": trials, "most_trials": most_trials,
               "seed": seed, "jobs": jobs}
    asked = question(what)
    known, pairs, output = _inputs(inputs), _pairs(correlations), _name(output)
    return _run(lambda call: asked.monte_carlo(known, pairs, output, _answers._given(options), call), progress)


def sobol(what, inputs=None, *, output="", trials=65536, batches=32, seed=1, jobs=1, progress=None):
    """Contribution of each input to the variance of a result, also of non-linear models: Sobol indices.

    what, inputs, output, seed, jobs, progress: as for `monte_carlo`; the inputs are independent. trials: pairs of
    input sets. batches: their scatter gives the standard errors.

    Returns a Sobol: mean, variance, trials, outside, stopped, inputs (name, first, first_error, total, total_error), and
    ``explain()``.
    Raises Error like `monte_carlo`.
    """
    options = {"trials": trials, "batches": batches, "seed": seed, "jobs": jobs}
    asked, known, output = question(what), _inputs(inputs), _name(output)
    return _run(lambda call: asked.sobol(known, output, options, call), progress)
