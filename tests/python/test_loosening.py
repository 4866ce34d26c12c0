"""Learning and risk of stuck fasteners against a general statistics library."""
import copy
import math

import numpy
import pytest

stats = pytest.importorskip("scipy.stats")
integrate = pytest.importorskip("scipy.integrate")
tauten = pytest.importorskip("tauten")

STUCK = dict(thread="M16", property_class="8.8", socket="24mm", rust="rusted", trials=20000)


def prior(job):
    """Median and deviation of ln T before any outcome. One that says nothing, a torque of next to nothing at which it did
    not move, leaves the prior, whose heavy tails are scaled so that nine of ten cases lie in the same band."""
    nothing = tauten.free_joint(**job, loosened=[("unmoved", 1e-6)]).learned.torque
    return nothing.nominal, math.log(nothing.high / nothing.low) / (2 * stats.norm.ppf(0.95))


SCALE = 0.714  # of the heavy-tailed parts over those of a normal distribution


class Posterior:
    """Posterior of a flange's mean and deviation of ln T on a plain grid, far wider and finer than it needs to be. Both the
    fasteners of a flange and the flanges scatter by Student's distribution with four degrees of freedom."""

    def __init__(self, median, deviation, loosened):
        means = numpy.linspace(math.log(median) - 12 * deviation, math.log(median) + 12 * deviation, 1001)
        logs = numpy.linspace(-2.6, 2.6, 261) + math.log(SCALE * 0.6 * deviation)
        self.mean, log_s = numpy.meshgrid(means, logs, indexing="ij")
        self.s = numpy.exp(log_s)
        weight = (stats.t.logpdf(self.mean, 4, math.log(median), SCALE * 0.8 * deviation) +
                  stats.norm.logpdf(log_s, math.log(SCALE * 0.6 * deviation), 0.4))
        for how, torque in loosened:
            at = stats.t(4, self.mean, self.s)
            # Of all that did not come free it is only known that they would have needed more.
            weight += at.logpdf(math.log(torque)) if how == "freed" else at.logsf(math.log(torque))
        weight = numpy.exp(weight - weight.max())
        self.weight = weight / weight.sum()

    def cut(self):
        """The same, with the mean within six deviations, as the library has it after it has narrowed its grid twice."""
        found = copy.copy(self)
        for _ in range(2):
            mean = (found.weight * self.mean).sum()
            deviation = math.sqrt((found.weight * (self.mean - mean) ** 2).sum())
            weight = numpy.where(abs(self.mean - mean) <= 6 * deviation, self.weight, 0)
            found.weight = weight / weight.sum()
        return found

    def next_below(self, torque):
        return float((self.weight * stats.t.cdf(math.log(torque), 4, self.mean, self.s)).sum())

    def median_quantile(self, chance):
        below = numpy.cumsum(self.weight.sum(axis=1))
        return float(numpy.interp(chance, below, self.mean[:, 0] + (self.mean[1, 0] - self.mean[0, 0]) / 2))


OUTCOMES = {
    "one freed": [("freed", 205)],
    "four of a flange": [("freed", 205), ("freed", 235), ("unmoved", 210), ("freed", 190)],
    "all sheared": [("sheared", 380), ("sheared", 420)],
    "nothing moves": [("unmoved", 150), ("unmoved", 250), ("rounded", 400)],
    "far from what was thought": [("freed", 30), ("freed", 34)],
    "at odds": [("freed", 60), ("freed", 600), ("sheared", 400), ("freed", 150)],
    "eleven alike": [("freed", 200 + place) for place in range(11)],
}


@pytest.mark.parametrize("name", OUTCOMES)
@pytest.mark.parametrize("rust", ["rusted", "heavy_rust"])
def test_update_against_a_grid_posterior(name, rust):
    job = dict(STUCK, rust=rust)
    learned = tauten.free_joint(**job, loosened=OUTCOMES[name]).learned
    exact = Posterior(*prior(job), OUTCOMES[name])
    # Where outcomes are censored or far from the prior a heavy tail is left. The library cuts it off at six deviations of the
    # mean: to the same cut it is right within the width of its grid, and the cut itself moves the median of the flange by no
    # more than 1.5 % and the chance that the next fastener comes free by no more than 0.005.
    for posterior, log_median, chance_next in ((exact.cut(), 4e-3, 1e-3), (exact, 1.5e-2, 5e-3)):
        assert [math.log(x) for x in learned.median] == pytest.approx(
            [posterior.median_quantile(chance) for chance in (0.05, 0.5, 0.95)], abs=log_median)
        for torque, chance in zip(learned.torque, (0.05, 0.5, 0.95)):
            assert posterior.next_below(torque) == pytest.approx(chance, abs=chance_next)
    for torque, chance in zip(learned.torque, (0.05, 0.5, 0.95)):  # the quantile lies within 0.4 % of it
        assert exact.cut().next_below(torque * (1 - 4e-3)) <= chance <= exact.cut().next_below(torque * (1 + 4e-3))
    assert learned.count == len(OUTCOMES[name])


def test_prior_is_the_breakaway_torque_before():
    before = tauten.free_joint(**STUCK).breakaway
    median, deviation = prior(STUCK)
    # The breakaway torque is nearly lognormal, so that its quantiles lie near those of the prior.
    assert median == pytest.approx(before.nominal, rel=0.03)
    assert deviation == pytest.approx(math.log(before.high / before.low) / (2 * stats.norm.ppf(0.95)), rel=0.05)


@pytest.mark.parametrize("breaks, frees", [((380, 0.1), (200, 0.3)), ((380, 0.1), (380, 0.3)), ((300, 0.2), (420, 0.5)),
                                           ((380, 0.02), (260, 0.04))])
def test_risk_of_shearing_against_the_integral(breaks, frees):
    """Chance that one lognormal torque lies below another: index in closed form against an integral by quadrature."""
    def torque(median, variation):
        return stats.lognorm(math.sqrt(math.log1p(variation ** 2)), scale=median)
    index = tauten.shear_before_free_index(break_median=breaks[0], break_variation=breaks[1], free_median=frees[0],
                                           free_variation=frees[1])
    broken, freed = torque(*breaks), torque(*frees)
    chance = integrate.quad(lambda x: broken.pdf(x) * freed.sf(x), broken.ppf(1e-12), broken.ppf(1 - 1e-12), limit=400,
                            epsabs=1e-13, points=[breaks[0]])[0]
    assert stats.norm.sf(index) == pytest.approx(chance, rel=1e-6)


def test_arm_is_a_lognormal_pull_on_the_handle():
    arm = tauten.free_joint(**STUCK, handle_length="0.6m", hand_force=350, hand_variation=0.35).arm
    pull = stats.lognorm(math.sqrt(math.log1p(0.35 ** 2)), scale=0.6 * 350)
    assert list(arm) == pytest.approx(list(pull.ppf([0.05, 0.5, 0.95])), rel=0.02)  # a sample of some thousands


def test_simulated_risk_against_independent_draws():
    """The whole set of torques drawn a second time, with NumPy, as lognormals through the answer's bands. What free and
    shear share, the friction of the face, is left out here, and so are the fine shapes: hence the tolerance."""
    answer = tauten.free_joint(**dict(STUCK, trials=200000), corner_loss="1.2mm", handle_length="0.9m", limit="900N.m")
    rng = numpy.random.default_rng(5)
    z = stats.norm.ppf(0.95)

    def drawn(band):
        return band.nominal * numpy.exp(math.log(band.high / band.low) / (2 * z) * rng.standard_normal(400000))
    free, shear, corners, tool, arm = map(drawn, (answer.breakaway, answer.shear, answer.round, answer.tool, answer.arm))
    first = numpy.argmin([free, shear, corners, tool, arm], axis=0)
    got = answer.chances
    for mode, chance in enumerate((got.free, got.shear, got.round, got.tool, got.not_moving)):
        assert (first == mode).mean() == pytest.approx(chance, abs=0.01), mode
