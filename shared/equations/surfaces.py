"""Surfaces: areas, coats, films and cloth laid on them. Nothing evaporates from resin without solvent."""
from math import sin

from .laminate import thickness
from .putty import GRAVITY
from .rounding import ceiling

DAY = 86400.0  # s


def girth_area(length: float, girths: "tuple[float, ...]") -> float:
    """Area of a face from its widths or girths at equal distances, by the trapezoidal rule:
        A = L (g_0 / 2 + g_1 + ... + g_n / 2) / n

    length: L, along the face [m]; girths: across it [m]; one alone is a rectangle, two a trapezium
    returns: [m2]; exact where the width changes evenly between two stations
    >>> round(girth_area(2.0, (1.0, 0.5)), 6), girth_area(2.4, (1.2,))
    (1.5, 2.88)
    """
    if len(girths) == 1:
        return length * girths[0]
    return length * (sum(girths) - (girths[0] + girths[-1]) / 2) / (len(girths) - 1)


def widest(length: float, girths: "tuple[float, ...]", low: float, high: float) -> float:
    """The widest place of a face between two distances along it; the width changes evenly between two stations.

    length: along the face [m]; girths: across it at equal distances [m]; low, high: from the first of them on [m]
    returns: [m]; beyond both ends the widest of all
    >>> round(widest(2.0, (1.0, 0.5), 0.5, 1.5), 6), widest(3.0, (0.4, 1.2, 0.8), 1.0, 2.0), widest(2.0, (1.2,), 0, 1)
    (0.875, 1.2, 1.2)
    """
    found = []  # type: list
    for place, (one, other) in enumerate(zip(girths, girths[1:])):
        some, more = [min(max(at * (len(girths) - 1) / length - place, 0), 1) for at in (low, high)]
        if some < more:
            found += [one + (other - one) * some, one + (other - one) * more]
    return max(found or girths)


def coats_mass(face: float, edge: float, first: float, later: float, coats: int, soaks: float) -> float:
    """What stays on the wood:
        m = c_1 (A + f a) + (n - 1) c (A + a)

    face, edge: A, a [m2]; first, later: c_1, c [kg/m2]; coats: n, 1 or more; soaks: f, of an edge in the first coat [-]
    returns: [kg]
    >>> round(coats_mass(2.0, 0.1, 0.110, 0.080, 3, 2.5), 4)
    0.5835
    """
    return first * (face + soaks * edge) + (coats - 1) * later * (face + edge)


def film(areal: float, density: float) -> float:
    """Thickness of a film on a face that drinks nothing: areal / density [m].

    areal: [kg/m2]; density: [kg/m3]; no solvent evaporates
    >>> round(film(0.111, 1110) * 1e6, 6)
    100.0
    """
    return areal / density


def heaviest_coat(yield_stress: float, slope: float) -> float:
    """The heaviest coat that does not run off a face (Bingham):
        c = tau / (g sin(slope))

    yield_stress: tau [Pa]; slope: [rad] from the horizontal, above 0 and to pi/2
    returns: [kg/m2]; `putty.thickest_layer` times the density
    >>> round(heaviest_coat(2.0, 1.5707963267948966), 5)
    0.20394
    """
    return yield_stress / (GRAVITY * sin(slope))


def strips(span: float, width: float, lap: float, spare: float) -> int:
    """How many widths of cloth cover a span:
        n = ceil((s + 2 e - o) / (w - o))

    span: s, across the strips [m]; width: w, of the roll [m]; lap: o, below w [m]; spare: e, over each edge [m]
    >>> strips(1.2, 1.2, 0.05, 0.0), strips(1.2, 1.2, 0.05, 0.025)
    (1, 2)
    """
    return max(1, ceiling((span + 2 * spare - lap) / (width - lap)))


def fraction_by_volume(share: float, fibre_density: float, resin_density: float) -> float:
    """Glass by mass from glass by volume:
        psi = V rho_f / (V rho_f + (1 - V) rho_m)

    share: V [-]; densities [kg/m3]; no voids; the inverse of `laminate.fibre_volume`
    >>> round(fraction_by_volume(0.3020134, 2560, 1200), 6)
    0.48
    """
    glass, resin = share * fibre_density, (1 - share) * resin_density
    return glass / (glass + resin)


def weave_depth(areal: float, fraction: float, fibre_density: float, resin_density: float, share: float) -> float:
    """How deep a weave is, as a share of one laid cloth's thickness [m].

    areal: dry glass of the cloth [kg/m2]; fraction: glass by mass [-]; share: [-], own judgement
    >>> round(weave_depth(0.2, 0.45, 2560, 1150, 0.5) * 1000, 7)
    0.1453427
    """
    return share * thickness(areal, fraction, fibre_density, resin_density)


def weave_fill(depth: float, empty: float, sanded: float, density: float) -> float:
    """Resin that levels a weave and leaves enough to sand:
        c = (d e + s) rho

    depth: d, of the weave [m]; empty: e, share of it without glass [-]; sanded: s, above the glass [m]
    density: rho [kg/m3]; returns: [kg/m2]
    >>> round(weave_fill(0.00015, 0.5, 0.00004, 1110), 6)
    0.12765
    """
    return (depth * empty + sanded) * density


def reach(window: float, mixing: float, pace: float) -> float:
    """How far one batch reaches while it can be worked:
        A = (t - m) / p

    window: t, from the first drop [s]; mixing: m, until it lies on the face [s]; pace: p, of all hands' work [s/m2]
    returns: [m2], 0 where nothing is left
    >>> reach(3600.0, 300.0, 330.0)
    10.0
    """
    return max(0.0, (window - mixing) / pace)


def coat_starts(count: int, day: "tuple[float, float]", lasts: float, opens: "float | None",
                closes: "float | None", sands: "float | None") -> list:
    """When each coat may start, none ending after the working day.

    count: of coats; day: from when to when somebody works [s after midnight]; lasts: one coat [s]
    opens, closes: after a coat it takes the next one [s]; sands: when it may be sanded [s]; None: never, or not known
    returns: [(earliest, latest or None where it has to be sanded first)], [s after the first midnight]; fewer than
    count where the next is never reached

    The last drop of a coat decides when the next may start, its first drop when the next must be on.
    >>> hour, day = 3600.0, (8 * 3600.0, 18 * 3600.0)
    >>> [one / hour for pair in coat_starts(2, day, hour, 4 * hour, 12 * hour, None) for one in pair]
    [8.0, 17.0, 13.0, 17.0]
    >>> coat_starts(2, day, hour, 10 * hour, 14 * hour, 24 * hour)[1]
    (118800.0, None)
    >>> coat_starts(2, day, hour, 10 * hour, 26 * hour, 24 * hour)[1]
    (115200.0, 118800.0)
    """
    found = [(day[0], day[1] - lasts)]  # type: list
    while len(found) < count and opens is not None:
        begun = found[-1][0]
        after = follows(begun + lasts + opens, None if closes is None else begun + closes,
                        None if sands is None else begun + lasts + max(opens, sands), lasts, day)
        if after is None:
            break
        found.append(after)
    return found


def follows(opens: float, closes: "float | None", sands: "float | None", lasts: float,
            day: "tuple[float, float]") -> "tuple[float, float | None] | None":
    """When a coat may start: (earliest, latest or None where it is sanded first); None where it never may.

    opens: when it may begin, closes: when it must be on, sands: when it may be sanded instead [s]; lasts, day: as there
    >>> follows(3600.0 * 13, 3600.0 * 20, None, 3600.0, (8 * 3600.0, 18 * 3600.0))
    (46800.0, 61200.0)
    """
    earliest, later = in_day(opens, lasts, day)
    latest = day[1] + later if closes is None else min(day[1] + later, closes)
    if latest - lasts >= earliest - 1e-6:
        return earliest, latest - lasts
    return None if sands is None else (in_day(sands, lasts, day)[0], None)


def in_day(earliest: float, lasts: float, day: "tuple[float, float]") -> "tuple[float, float]":
    """(the first time in a working day from which something is done within it, that day's midnight) [s].

    >>> in_day(19 * 3600.0, 3600.0, (8 * 3600.0, 18 * 3600.0))
    (115200.0, 86400.0)
    """
    midnight = max(0, ceiling((earliest + lasts - day[1]) / DAY)) * DAY
    return max(earliest, day[0] + midnight), midnight
