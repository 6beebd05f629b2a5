"""The chemistry of a pot against what others measured in a calorimeter: heat, activation energy, order, first glass.

No published trace of a cup of such a mix, with its mass, cup, air and minutes, was found: only these figures, of
abstracts that were read (docs/TRUST.md).
"""
from math import log

import pytest
from covemix.shared.catalogue.containers import CURE
from covemix.shared.catalogue.cure_times import ENERGY
from covemix.shared.catalogue.softening import GLASS
from covemix.shared.clock.pot_heat import mix_heat
from covemix.shared.equations.kinetics import cure_rate, rate_factor

UNCATALYSED = next(row[1:4] for row in CURE if row[0] == "uncatalysed")
CALORIE = 4184.0  # J/kcal, exact
TETA = ("Polímeros, DGEBA of 187 g/eq and a technical triethylenetetramine, 14.7 phr: enthalpy of reaction 486 J/g "
        "(abstract)")
EDA = "Riccardi, Adabbo and Williams, J. Appl. Polym. Sci. 29 (1984) 2481, DGEBA and ethylenediamine (abstract)"
BAC = "Barral and others, J. Appl. Polym. Sci. 56 (1995) 1029, DGEBA and 1,3-bisaminomethylcyclohexane (abstract)"
CHD = ("J. Appl. Polym. Sci. 92 (2004) 1190, DGEBA, 1,2-diaminocyclohexane and a reactive diluent, from gel times "
       "(abstract)")
DENDRIMER = ("Journal of South China Normal University (Natural Science), an epoxy and a polyamidoamine dendrimer, 60 "
             "to 75 degC (abstract)")
PAZ = ("Paz-Abuin and others, Polymer 38 (1997) 3795, DGEBA and 1,3-bisaminomethylcyclohexane: the path that needs no "
       "hydroxyl of the cure is the larger one up to a conversion of 20 % (abstract)")
PDA = "Thermochim. Acta 447 (2006) 167, DGEBA and 1,3-phenylene diamine (abstract)"


def test_the_heat_of_a_mix_is_what_a_calorimeter_found(outside):
    """From equivalents and 106.6 kJ/eq, which the same paper gives: at most 2.5 % off, to the side of more heat."""
    counted = mix_heat(0.187, 14.7)
    outside.printed("heat of a mix with triethylenetetramine", TETA, 486e3, counted, rel=0.025,
                    why="the app counts it from equivalents")
    assert counted >= 486e3


@pytest.mark.parametrize(("source", "kilojoules"), [
    (EDA, 14 * CALORIE / 1000), (BAC, 44.0), (BAC, 57.0), (PDA, 55.0), (PDA, 60.0),
    (CHD, 58.5), (DENDRIMER, 52.65), (DENDRIMER, 65.47)])
def test_the_range_of_activation_energies_holds_the_published_ones(outside, source, kilojoules):
    """The path that speeds itself up; nearest energy of the range, within 1 kJ/mol."""
    nearest = min(max(kilojoules * 1000, ENERGY[1]), ENERGY[2])
    outside.printed(f"heat activation energy {kilojoules:.1f} kJ/mol", source, kilojoules * 1000, nearest,
                    absolute=1000, why="a range is held, not one value")


def test_the_one_below_the_range_ends_a_cold_pot_hardly_sooner():
    """44 for 45 kJ/mol: a label of 25 degC, told at 6 degC."""
    assert rate_factor(44e3, 279.15, 298.15) / rate_factor(45e3, 279.15, 298.15) < 1.03


def test_the_order_of_the_cure_is_a_published_one(outside):
    """Orders m and n of da/dt = k a**m (1 - a)**n, read off the rate by two logarithmic slopes."""
    def rate(conversion):
        return cure_rate(conversion, 0.0, 3e-4)

    early = log(rate(2e-6) / rate(1e-6)) / log(2)
    late = log(rate(1 - 2e-6) / rate(1 - 1e-6)) / log(2)
    outside.printed("heat order of the cure", BAC + ": m + n 2.5 to 3", 2.75, early + late, absolute=0.25 + 1e-4,
                    why="the source gives a range")


@pytest.mark.parametrize(("read_as", "share"), [("as fast as each other there", 0.20), ("half of what reacted", 0.080)])
def test_how_a_cure_starts_by_itself_is_within_the_range(outside, read_as, share):
    """Of the rate that speeds itself up; the abstract can be read in two ways. The second by hand: half of the cure
    went by the first path where (r / a) ln(1 + a / r) = 1/2."""
    part = share / 0.20
    assert part == 1 or part * log(1 + 1 / part) == pytest.approx(0.5, abs=0.002)
    assert cure_rate(0.20, share, 1.0) == pytest.approx((1 + part) * cure_rate(0.20, 0.0, 1.0))
    _, least, most = UNCATALYSED
    outside.worked(f"heat uncatalysed share, {read_as}", PAZ, share, min(max(share, least), most), absolute=1e-9)


def test_the_first_glass_is_that_of_the_resin(outside):
    """Undiluted resin is the stiff end of what a fresh mix can be: its hardener is thinner."""
    outside.printed("cure glass of the fresh mix", "DGEBA, purified, glass transition about -22 degC, by calorimetry "
                    "(abstract of a study of its cure with an imidazole)", 251.15, GLASS[0][2], absolute=2.0,
                    why="a mix is not the bare resin")
