"""What is counted of resin and hardener where no label says it: against handbook tables of what they are made of."""
import chemicals
from chemicals.heat_capacity import zabransky_dict_iso_s
from chemicals.miscdata import CRC_organic_data
from covemix.shared.catalogue.containers import MATTER
from covemix.shared.catalogue.losses import BY_KEY
from covemix.shared.catalogue.ratios import HARDENER_DENSITY, RESIN_DENSITY
from covemix.shared.catalogue.systems import DENSITIES, SYSTEMS

CRC = "CRC Handbook, Physical Constants of Organic Compounds, as the library chemicals has it"
ZABRANSKY = "Zábranský, Heat Capacity of Liquids, as the library chemicals has it; amine 11 and 30 to 100 of resin"
ROWS = {row[0]: row[1:4] for row in MATTER}
DETA, TETA, AEP, IPDA, MXDA = "111-40-0", "112-24-3", "140-31-8", "2855-13-2", "1477-55-0"
PHENYL, CRESYL, BUTANEDIOL = "122-60-1", "2210-79-9", "2425-79-8"  # glycidyl ethers
UNDILUTED = 1160.0  # kg/m3 at 25 degC: public data sheet of an undiluted DGEBA resin of 185 to 192 g/eq


def density(cas):
    return float(CRC_organic_data.at[cas, "rho"])


def test_hardeners_weigh_what_their_amines_weigh(outside):
    """The middle is that of the amines, to the two decimals that it is told with; the ends span them."""
    amines = sorted(density(cas) for cas in (DETA, AEP, MXDA))
    least, most = HARDENER_DENSITY
    outside.worked("density of amines, middle one", CRC, amines[1], (least + most) / 2, absolute=10)
    outside.worked("density of amines, heaviest", CRC, amines[-1], most, absolute=5)
    assert least <= amines[0]


def test_resins_weigh_between_undiluted_and_thinned(outside):
    """A tenth to a quarter of a glycidyl ether, ideal mixing, thins the undiluted resin."""
    ethers = [density(cas) for cas in (PHENYL, CRESYL, BUTANEDIOL)]
    assert [round(one / 1000, 2) for one in sorted(ethers)] == [1.09, 1.11, 1.12]  # as the source's name has it
    thinned = [1 / ((1 - share) / UNDILUTED + share / one) for one in ethers for share in (0, 0.1, 0.25)]
    least, most = RESIN_DENSITY
    outside.worked("density of a resin", "public data sheet, undiluted; " + CRC + ", thinners; ideal mixing",
            (min(thinned) + max(thinned)) / 2, (least + most) / 2, rel=0.02)
    assert least <= min(thinned) and max(thinned) <= most


def test_the_mix_weighs_what_its_parts_make():
    """No outside source but the densities above: every built-in ratio, of the parts' ends, lies within the range."""
    for name in ("1-1", "2-1", "3-1", "4-1", "5-1"):
        parts = int(name[0])
        made = [(parts * resin + hardener) / (parts + 1) for resin, hardener in zip(RESIN_DENSITY, HARDENER_DENSITY,
                                                                                    strict=True)]
        value, least, most = ROWS["density"]
        assert least <= made[0] and made[1] <= most
        if parts > 1:
            assert made[0] <= BY_KEY["resin_density"].value <= made[1]
            assert made[0] <= value <= made[1]
    resin, hardener = (float(one) * 1000 for one in DENSITIES.removesuffix(" g/mL").split(" : "))
    assert RESIN_DENSITY[0] <= resin <= RESIN_DENSITY[1] and HARDENER_DENSITY[0] <= hardener <= HARDENER_DENSITY[1]
    assert len(SYSTEMS) == 5


def test_the_heat_that_warms_the_mix(outside):
    """Phenyl glycidyl ether is half of the resin's molecule; an undiluted resin's data sheet gives 2.09 kJ/(kg K)."""
    def held(cas, kelvin=298.15):
        return zabransky_dict_iso_s[cas].calculate(kelvin) / chemicals.MW(cas) * 1000

    assert [round(held(cas), -2) for cas in (PHENYL, DETA)] == [1800, 2700]  # as the source's name has it
    mixes = [(100 * resin + phr * held(DETA)) / (100 + phr) for resin in (held(PHENYL), 2093) for phr in (11, 30)]
    value, least, _ = ROWS["specific_heat"]
    outside.worked("heat of warming a mix", ZABRANSKY, sum(mixes) / 4, value, rel=0.05)
    assert least <= min(mixes)  # the hot end of a peak takes the least: no more than the parts hold
    assert held(PHENYL, 333.15) > held(PHENYL)  # it grows as it warms, which the least leaves out: the safe side


def test_hardener_to_resin_where_no_label_says_it(outside):
    """One active hydrogen to one epoxide: 100 x molar mass / hydrogens / 180 to 210 g; half of it may be thinner."""
    amines = {DETA: 5, TETA: 6, AEP: 3, IPDA: 4, MXDA: 4}
    _, light, heavy = (1000 * one for one in ROWS["epoxide_weight"])
    phr = sorted(100 * chemicals.MW(cas) / active / weight for cas, active in amines.items() for weight in (light,
                                                                                                           heavy))
    value, least, most = ROWS["phr"]
    outside.worked("hardener to 100 of resin, least", "IUPAC atomic weights by the library chemicals; 210 g/eq", phr[0],
            least, absolute=0.5)
    assert 2 * phr[-1] <= most  # a half of benzyl alcohol in it
    assert phr[-1] <= value <= 2 * phr[-1]
