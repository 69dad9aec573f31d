"""Reference figures for the negative binomial, censored likelihood and its maximum, and the belief
after a sold-out show. Run in this directory: python3 negative_binomial.py
Made with scipy 1.17.1 (scipy.stats.nbinom, scipy.optimize.minimize, scipy.integrate.quad)."""

import csv
import random

import scipy
from numpy import exp, log
from scipy.integrate import quad
from scipy.optimize import minimize
from scipy.stats import gamma, nbinom, poisson

HEAD = "# python3 negative_binomial.py, scipy %s, " % scipy.__version__


def write(name, about, columns, rows):
    with open(name, "w", newline="") as file:
        file.write(HEAD + about + "\n")
        table = csv.writer(file, lineterminator="\n")
        table.writerow(columns)
        table.writerows(rows)


def distribution(shape, mean):
    return nbinom(shape, shape / (shape + mean))


def probabilities():
    for shape in (0.3, 1, 2.5, 17.2, 400):
        for mean in (0.4, 6, 43.7, 310):
            for pieces in (0, 1, 5, 40, 60, 350):
                d = distribution(shape, mean)
                yield shape, mean, pieces, d.logpmf(pieces), d.cdf(pieces), d.sf(pieces - 1)


def shows(seed, number, mean, shape, taken):
    """Invented shows: exposure, pieces sold, whether it sold out, weight."""
    dice = random.Random(seed)
    for _ in range(number):
        exposure = round(dice.uniform(0.5, 6), 2)
        rate = dice.gammavariate(shape, mean / shape)
        wanted = int(poisson.ppf(dice.random(), rate * exposure))
        most = int(taken * exposure)
        yield exposure, min(wanted, most), wanted >= most, round(dice.uniform(0.2, 1), 2)


def log_likelihood(counts, mean, shape):
    total = 0
    for exposure, pieces, sold_out, weight in counts:
        d = distribution(shape, mean * exposure)
        total += weight * (d.logsf(pieces - 1) if sold_out else d.logpmf(pieces))
    return total


def samples():
    for name, seed, number, mean, shape, taken in (
        ("few", 1, 12, 8, 3, 14),
        ("many", 2, 200, 8, 3, 12),
        ("mostly-sold-out", 3, 60, 20, 2, 12),
        ("rare", 4, 40, 0.4, 1, 5),
    ):
        yield name, list(shows(seed, number, mean, shape, taken))


def likelihoods():
    for name, counts in samples():
        for mean in (0.5, 7, 25):
            for shape in (0.4, 3, 60):
                yield name, mean, shape, log_likelihood(counts, mean, shape)


def maxima():
    for name, counts in samples():
        best = minimize(
            lambda at: -log_likelihood(counts, exp(at[0]), exp(at[1])),
            [log(5), log(2)],
            method="Nelder-Mead",
            options={"xatol": 1e-9, "fatol": 1e-12, "maxiter": 5000},
        )
        yield name, exp(best.x[0]), exp(best.x[1]), -best.fun


def beliefs():
    for shape, rate, pieces, exposure in (
        (2, 0.5, 6, 1),
        (0.7, 0.1, 12, 2),
        (9, 3, 20, 4),
        (40, 2, 25, 1.5),
        (3, 0.2, 60, 2),
        (5, 1, 3, 3),
    ):
        prior = gamma(shape, scale=1 / rate)
        top = prior.ppf(1 - 1e-15) * 3

        def moment(power):
            return quad(
                lambda x: x**power * prior.pdf(x) * poisson.sf(pieces - 1, x * exposure),
                0,
                top,
                epsabs=0,
                epsrel=1e-11,
                limit=500,
                points=[pieces / exposure, shape / rate],
            )[0]

        none, one, two = moment(0), moment(1), moment(2)
        yield shape, rate, pieces, exposure, none, one / none, two / none - (one / none) ** 2


if __name__ == "__main__":
    write(
        "negative_binomial.csv",
        "scipy.stats.nbinom(shape, shape / (shape + mean)): logpmf, cdf, sf(pieces - 1)",
        ("shape", "mean", "pieces", "log_probability", "at_most", "at_least"),
        probabilities(),
    )
    write(
        "sold_out_shows.csv",
        "invented shows by seeded random.Random",
        ("sample", "exposure", "pieces", "sold_out", "weight"),
        ((name, *count) for name, counts in samples() for count in counts),
    )
    write(
        "sold_out_likelihood.csv",
        "log-likelihood of sold_out_shows.csv: weight times logpmf or logsf(pieces - 1)",
        ("sample", "mean", "shape", "log_likelihood"),
        likelihoods(),
    )
    write(
        "sold_out_maximum.csv",
        "its maximum by scipy.optimize.minimize, method Nelder-Mead",
        ("sample", "mean", "shape", "log_likelihood"),
        maxima(),
    )
    write(
        "sold_out_belief.csv",
        "moments of a gamma rate after at least so many, by scipy.integrate.quad over the mixture",
        ("shape", "rate", "pieces", "exposure", "probability", "mean", "variance"),
        beliefs(),
    )
