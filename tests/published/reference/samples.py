#!/usr/bin/env python3
"""Computes the values that samples_reference_test.cpp holds our own against, with SciPy and NumPy.

For development only: python3-scipy is no package of the build. On Debian 12:
    python3 tests/published/reference/samples.py > tests/published/reference/samples.csv
"""
import numpy
import scipy
from scipy import stats


def row(name, value):
    print(f"{name},{float(value)!r}")


def drift():
    hours = [0.0, 1.4, 3.25, 4.8, 7.1]
    percent = [33.1, 33.8, 33.4, 35.0, 35.6]
    line = stats.linregress(hours, percent)
    half = stats.t.ppf(0.9, len(hours) - 2) * line.stderr
    row("drift_slope", line.slope)
    row("drift_low80", line.slope - half)
    row("drift_high80", line.slope + half)
    row("mean_half95", stats.t.ppf(0.975, 4) * stats.sem(percent))


def sieves():
    for name, openings, parts in (
        ("to4", [19, 8, 4], [0.05, 0.58, 0.27]),
        ("to118", [19, 8, 1.18], [0.06, 0.55, 0.35]),
        ("five", [26.9, 18.0, 8.98, 5.61, 1.65], [0.02, 0.09, 0.35, 0.24, 0.2]),
    ):
        line = stats.linregress(numpy.log(openings), stats.norm.ppf(1 - numpy.cumsum(parts)))
        row(f"fit_{name}_mean", numpy.exp(-line.intercept / line.slope))
        row(f"fit_{name}_spread", numpy.exp(1 / line.slope))


def dry_down():
    """The prior on the rate as one more observation, by least squares."""
    days = numpy.array([-9.0, -4.0, 0.0, 5.0])  # from 5 September
    percent = numpy.array([26.2, 29.6, 30.8, 34.9])
    design = numpy.vstack([numpy.column_stack([numpy.ones(4), days]) / 1.5, [0.0, 1.0 / 0.1]])
    seen = numpy.concatenate([percent / 1.5, [0.5 / 0.1]])
    mean, *_ = numpy.linalg.lstsq(design, seen, rcond=None)
    covariance = numpy.linalg.pinv(design.T @ design)
    row("dry_down_rate", mean[1])
    row("dry_down_rate_sd", numpy.sqrt(covariance[1, 1]))
    at = numpy.array([1.0, 12.0])
    row("dry_down_on_17th", at @ mean)
    row("dry_down_on_17th_sd", numpy.sqrt(at @ covariance @ at))


def carried():
    """The random walk as one joint normal distribution, its start all but unknown."""
    hours = numpy.array([0.0, 1.0, 2.5, 4.0, 5.5])  # four samples, then the load
    percent = numpy.array([33.0, 34.2, 33.6, 35.9])
    start = 1e7
    walk = start + numpy.minimum.outer(hours, hours)
    seen = walk[:4, :4] + 3.7**2 * numpy.eye(4)
    gain = numpy.linalg.solve(seen, walk[:4, 4])
    row("carried_mean", gain @ percent + (1 - gain.sum()) * percent.mean())
    row("carried_sd", numpy.sqrt(walk[4, 4] - gain @ walk[:4, 4]))


def kernels():
    for count, cups in ((0, 4), (1, 1), (7, 3), (40, 10)):
        row(f"cup_low_{count}_{cups}", stats.gamma.ppf(0.1, count + 0.5) / cups)
        row(f"cup_high_{count}_{cups}", stats.gamma.ppf(0.9, count + 0.5) / cups)


print(f"# SciPy {scipy.__version__} and NumPy {numpy.__version__} of Debian 12, by samples.py")
drift()
sieves()
dry_down()
carried()
kernels()
