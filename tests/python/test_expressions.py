"""The printed form of every formula, worked out to fifty digits by a computer-algebra system, is what the kernel gives.

The algebra text is read by Python's own parser and by SymPy; values come from mpmath, derivatives from SymPy. Neither
knows anything of the library.
"""
import ast
import random
import sys
import zlib

import mpmath
import pytest
import sympy

import tauten

POINTS = 8
EPSILON = sys.float_info.epsilon
FUNCTIONS = ("sqrt", "sin", "cos", "tan", "asin", "acos", "atan", "exp", "log")
# Where a source states no range: what a pumping station is bolted with, M2 to M64; SI.
TRADE = {"plain number": (0.05, 0.95), "length": (2e-3, 64e-3), "area": (2e-6, 3e-3), "angle": (0.02, 1.0),
         "force": (1e2, 1e6), "torque": (1e-1, 3e3), "stress": (1e8, 1.2e9), "compliance": (1e-10, 1e-8),
         "stiffness": (1e7, 1e10), "temperature difference": (1, 200), "energy": (0.1, 100), "thermal expansion coefficient": (5e-6, 3e-5)}
names = sorted(tauten.formulas)


def draw(arg, generator):
    low, high = TRADE[arg.dimension] if arg.validity is None else (arg.validity.low, arg.validity.high)
    low = max(low, high * 1e-3 if low <= 0 else low, arg.domain.low)
    return generator.uniform(low, min(high, arg.domain.high))


def points(formula):
    """Inputs at which the formula has a value; the same in every run."""
    generator = random.Random(zlib.crc32(formula.name.encode()))
    found = []
    for _ in range(10_000):
        x = [draw(arg, generator) for arg in formula.inputs]
        if formula.check(*x).status in ("ok", "unusual"):
            found.append(x)
        if len(found) == POINTS:
            return found
    raise AssertionError(f"no inputs found that fit {formula.name}")


class Rounded:
    """A number of fifty digits, and the most by which doubles may miss it: every operation rounds by half a last digit
    at most, here counted as a whole one."""

    def __init__(self, value, miss=0):
        self.value = mpmath.mpf(value)
        self.miss = miss

    def __neg__(self):
        return Rounded(-self.value, self.miss)

    def __add__(self, other):
        value = self.value + other.value
        return Rounded(value, self.miss + other.miss + EPSILON * abs(value))

    def __sub__(self, other):
        return self + -other

    def __mul__(self, other):
        value = self.value * other.value
        return Rounded(value, abs(self.value) * other.miss + abs(other.value) * self.miss + EPSILON * abs(value))

    def __truediv__(self, other):
        value = self.value / other.value
        return Rounded(value, (self.miss + abs(value) * other.miss) / abs(other.value) + EPSILON * abs(value))

    def __pow__(self, other):
        assert other.miss == 0  # exponents are figures
        value = self.value ** other.value
        steps = abs(other.value)
        return Rounded(value, abs(value) * (steps * self.miss / abs(self.value) + EPSILON * max(steps, 1)))

    def through(self, function):
        value = function(self.value)
        slope = mpmath.diff(function, self.value) if self.miss else 0
        return Rounded(value, abs(slope) * self.miss + EPSILON * abs(value))


class Numbers(ast.NodeTransformer):
    """Wraps every number of an expression, so that 2/3 is not rounded to a double."""

    def visit_Constant(self, node):
        return ast.Call(ast.Name("number", ast.Load()), [node], [])


def reader(text):
    """The expression as a function of values by name, on fifty digits."""
    code = compile(ast.fix_missing_locations(Numbers().visit(ast.parse(text, mode="eval"))), text, "eval")
    known = {name: lambda x, function=getattr(mpmath, name): x.through(function) for name in FUNCTIONS}
    known |= {"number": Rounded, "__builtins__": {}}
    return lambda values: eval(code, known | {"pi": Rounded(mpmath.pi, EPSILON * mpmath.pi)} | values)


def derivatives(formula, text):
    symbols = {arg.name: sympy.Symbol(arg.name, positive=True) for arg in formula.inputs}
    expression = sympy.sympify(text, locals=symbols, rational=True)
    assert expression.free_symbols <= set(symbols.values())
    return [sympy.lambdify(list(symbols.values()), sympy.diff(expression, symbol), "mpmath")
            for symbol in symbols.values()]


@pytest.mark.filterwarnings("ignore::tauten.ValidityWarning")
@pytest.mark.parametrize("name", names)
def test_printed_form_is_what_is_computed(name):
    formula = tauten.formulas[name]
    text = formula.expression("algebra")
    value_of = reader(text)
    slopes_of = derivatives(formula, text)
    with mpmath.workdps(50):
        for x in points(formula):
            exact = [mpmath.mpf(number) for number in x]
            value = value_of({arg.name: Rounded(number) for arg, number in zip(formula.inputs, x)})
            found = formula(*x)
            assert abs(found - value.value) <= 2 * value.miss, (x, found, value.value)
            # Forming a derivative magnifies what the value may miss by the reciprocal of the input.
            for arg, number, slope_of, slope in zip(formula.inputs, exact, slopes_of, formula.gradient(*x).values()):
                wanted = slope_of(*exact)
                assert abs(slope - wanted) <= 32 * (EPSILON * abs(wanted) + value.miss / number), (arg.name, x)


@pytest.mark.filterwarnings("ignore::tauten.ValidityWarning")
@pytest.mark.parametrize("name", names)
def test_values_put_into_the_printed_form_give_the_value(name):
    formula = tauten.formulas[name]
    x = points(formula)[0]
    figures = formula.expression("algebra", **{arg.name: number for arg, number in zip(formula.inputs, x)})
    with mpmath.workdps(50):
        assert float(reader(figures)({}).value) == pytest.approx(formula(*x), rel=1e-11)


def test_brackets_of_the_text_form_are_those_of_the_algebra():
    for formula in tauten.formulas.values():
        text, algebra = formula.expression("text").replace("(1 mm)", "0.001"), formula.expression("algebra")
        keep = str.maketrans("", "", "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ_0123456789.'")
        assert text.replace("^", "**").translate(keep) == algebra.translate(keep), formula.name
