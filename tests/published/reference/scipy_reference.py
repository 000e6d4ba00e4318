#!/usr/bin/env python3
"""Values that tests/published/stats_reference_test.cpp and calibration_reference_test.cpp hold the statistics to.

For development only: no check runs this. On Debian 12, where python3-scipy and python3-numpy are packages:
    /usr/bin/python3 tests/published/reference/scipy_reference.py
writes student.csv, inverse_chi_square.csv, evidence.csv and posterior.csv beside itself. The posterior is found
the plain way, by one dense covariance matrix over every unknown of the model.
"""
import platform
from pathlib import Path

import numpy
import scipy
from scipy import linalg, optimize, stats

SEED = 20260915
HERE = Path(__file__).parent
PROVENANCE = (
    f"# SciPy {scipy.__version__}, NumPy {numpy.__version__}, Python {platform.python_version()} (Debian 12);"
    f" /usr/bin/python3 tests/published/reference/scipy_reference.py; random seed {SEED}\n"
)

# Variances of ln(measured / predicted).
SITE, SILO, FACE, LAYER, SPOT = 0.105**2, 0.105**2, 0.085**2, 0.10**2, 0.173**2
OFFSET, KEPT = 0.05**2, 0.05**2


def write(name, header, rows):
    lines = [",".join(f"{cell:.17g}" if isinstance(cell, float) else str(cell) for cell in row) for row in rows]
    (HERE / name).write_text(PROVENANCE + header + "\n" + "\n".join(lines) + "\n")


def t_quantile(chance, degrees):
    """stats.t.ppf stops at about 1e-9; this refines it on the distribution function's own tail."""
    lower = min(chance, 1 - chance)
    if lower == 0.5:
        return 0.0
    start = abs(stats.t.ppf(lower, degrees))
    size = optimize.brentq(lambda x: stats.t.sf(x, degrees) / lower - 1, start * 0.99, start * 1.01, xtol=1e-300, rtol=1e-15)
    return size if chance > 0.5 else -size


def distributions():
    degrees = [1.0, 2.0, 4.0, 5.5, 8.0, 11.0, 40.0, 1000.0, 1e6]
    chances = [1e-12, 0.001, 0.1, 0.49, 0.5, 0.75, 0.9, 0.975, 0.9999]
    write(
        "student.csv",
        "probability,degrees_of_freedom,quantile,cdf_of_1.5",
        [(p, nu, t_quantile(p, nu), float(stats.t.cdf(1.5, nu))) for nu in degrees for p in chances],
    )
    # nu * scale / variance is chi-square: an inverse gamma of nu/2 and nu * scale / 2.
    rows = []
    for nu in degrees[:7]:
        for scale in (0.105**2, 3.0):
            law = stats.invgamma(nu / 2, scale=nu * scale / 2)
            rows += [(p, nu, scale, float(law.ppf(p)), float(law.cdf(1.3 * scale))) for p in chances[1:]]
    write("inverse_chi_square.csv", "probability,degrees_of_freedom,scale,quantile,cdf_of_1.3_scale", rows)


def evidence(random):
    """Five silos: cores in faces and layers, face balances and surveys, not the same in any two."""
    rows = []
    for silo in range(1, 6):
        level = random.normal(0, 0.15)
        inputs = float(random.uniform(0.002, 0.02))
        for face in range(1, 1 + int(random.integers(0 if silo == 4 else 1, 4))):
            at_face = level + random.normal(0, FACE**0.5)
            for place in range(1, 1 + int(random.integers(1, 5))):
                at_place = at_face + random.normal(0, LAYER**0.5)
                for _ in range(int(random.integers(1, 6))):
                    seen = at_place + random.normal(0, SPOT**0.5)
                    rows.append(("core", silo, face, place, float(seen), inputs, 0.026**2, 1.0))
            if random.uniform() < 0.4:
                rows.append(("faceBalance", silo, face, 0, float(at_face + random.normal(0, 0.05)), inputs, 0.05**2, 1.0))
        for _ in range(int(random.integers(1 if silo == 4 else 0, 4))):
            error = float(random.uniform(0.001, 0.01))
            seen = level + random.normal(0, 0.08)
            rows.append(("survey", silo, 0, 0, float(seen), inputs, error, float(random.integers(2, 30))))
    return rows


def posterior(rows):
    """Joint normal of all unknowns, conditioned on every reading at once."""
    names, variances = ["site", "offset"], [SITE, OFFSET]
    place_of = {}

    def unknown(name, variance):
        if name not in place_of:
            place_of[name] = len(names)
            names.append(name)
            variances.append(variance)
        return place_of[name]

    design, noise, seen = [], [], []
    for kind, silo, face, place, ratio, inputs, error, layers in rows:
        parts = [0, unknown(("silo", silo), SILO), unknown(("inputs", silo), inputs)]
        if kind == "survey":
            parts += [1, unknown(("kept", silo), KEPT)]
            noise.append(error + LAYER / layers)
        else:
            parts.append(unknown(("face", silo, face), FACE))
            noise.append(error)
        if kind == "core":
            parts.append(unknown(("layer", silo, face, place), LAYER))
            noise[-1] += SPOT
        design.append(parts)
        seen.append(ratio)
    h = numpy.zeros((len(rows), len(names)))
    for row, parts in enumerate(design):
        h[row, parts] = 1.0
    prior = numpy.diag(variances)
    spread = h @ prior @ h.T + numpy.diag(noise)
    gain = linalg.solve(spread, h @ prior, assume_a="pos").T
    mean = gain @ numpy.array(seen)
    covariance = prior - gain @ h @ prior

    def told(what, silo, face, place, parts):
        w = numpy.zeros(len(names))
        w[parts] = 1.0
        return (what, silo, face, place, float(w @ mean), float(w @ covariance @ w))

    out = [told("site", 0, 0, 0, [0]), told("offset", 0, 0, 0, [1])]
    for name in names[2:]:
        if name[0] == "silo":
            out.append(told("silo", name[1], 0, 0, [0, place_of[name], place_of[("inputs", name[1])]]))
    for name in names[2:]:
        level = [0, place_of[("silo", name[1])], place_of[("inputs", name[1])]]
        if name[0] == "face":
            out.append(told("face", name[1], name[2], 0, level + [place_of[name]]))
        if name[0] == "layer":
            face = place_of[("face", name[1], name[2])]
            out.append(told("place", name[1], name[2], name[3], level + [face, place_of[name]]))
            out.append(told("layer", name[1], name[2], name[3], level + [place_of[name]]))
    return out


def main():
    distributions()
    rows = evidence(numpy.random.default_rng(SEED))
    write("evidence.csv", "kind,silo,face,place,log_ratio,inputs,error,layers", rows)
    write("posterior.csv", "what,silo,face,place,mean,variance", posterior(rows))


main()
