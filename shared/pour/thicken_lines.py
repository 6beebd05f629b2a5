"""Thicken lines: what is said of a putty: the filler, how it goes in, what it makes, whether it stands."""
from ..catalogue.fillers import AIR_RANGE, DOSE_SPREAD, SPHERE_PACKING, STIFFNESSES, SURE
from ..equations.putty import putty_volume, relative_viscosity, solids_share, thickest_layer, yield_stress_needed
from ..forms.late import late
from ..mix.filler_dose import POSITIONS, components, dose_of, overpacked, own_ratios, place_of, used
from ..words.lines import ANSWER, ASK, MORE, WARN, line, words
from ..words.numbers import DOWN, UP, bare, shown, to_step
from ..words.units import told
from .by_scale import weighed
from .chosen_cup import cup_chosen

STANDS = place_of("stands")


def lines(values, batch):
    """batch: the mix that filler goes into."""
    dose, units = dose_of(values), values["units"]
    why = overpacked(dose, batch.density)
    if why:
        return [words("packed", "More than the liquid wets", why, part="filler", rank=WARN)]
    masses = [part * batch.mass for part, _ in dose.parts]
    said = []
    for place, mass in enumerate(masses):
        said.extend(_filler(values, dose, place, mass))
    said.append(_first(masses, values))
    said.extend(_putty(batch, masses, dose, units))
    said.extend(_room(values, dict([(one.name, one.value) for one in said])["putty"]))
    said.extend(_stands(values, batch, masses, dose))
    said.extend(_flags(values, dose))
    said.extend(_own_batches(values, dose))
    return said


def dose_mark(dose) -> str:
    """How far a dose may be off, and whose figure it is."""
    found = dose.calibration
    if not found.counted:
        return "±" + bare(DOSE_SPREAD * 100, 1) + "%, from memory"
    return "±{}%, from {} own {}".format(shown(found.spread * 100, 0, UP), len(found.counted),
                                         "batch" if len(found.counted) == 1 else "batches")


def _filler(values, dose, place, mass):
    filler, units = dose.fillers[place], values["units"]
    key = "filler" if place == 0 else "filler_" + str(place + 1)
    loose = mass / filler["loose"]
    scoops = to_step(loose / values["scoop"], 0.5)
    texts = told(scoops * 1.0, "", units, places=0 if scoops == int(scoops) else 1)
    name = filler["name"] or "Filler"
    return [
        line(key, name, mass, "kg", weighed(mass, values), part="filler", rank=ANSWER,
             rough=dose_mark(dose), caution="A particle filter on before the tub is opened; the lid back on at once."),
        line(key + "_scoops", name + ", level scoops", scoops, "", texts + " of " + told(values["scoop"], "mL", units),
             part="filler", rough="to half a scoop; loose powder differs by a third and more, the weight goes first"),
        line(key + "_loose", name + ", loose", loose, "m3", told(loose, "mL", units), part="filler", rank=MORE,
             rough="as it lies in the tub, not shaken down; from memory where the filler is ours"),
    ]


def _first(masses, values):
    part = 2 * sum(masses) / 3
    return line("first_filler", "Stir in first", part, "kg", weighed(part, values), part="filler",
                rough="two thirds; stir, scraping bottom and corners; the rest little by little until it is right")


def _putty(batch, masses, dose, units):
    fillers = [(mass, true) for mass, (_, true) in zip(masses, dose.parts)]
    volume = putty_volume(batch.mass, batch.density, fillers, dose.air)
    weight = batch.mass + sum(masses)
    lines = [
        line("putty", "Putty", volume, "m3", told(volume, "mL", units) + " · " + told(weight, "g", units),
             part="filler", rough="with {}% air, from memory ({} to {}%)".format(
                 shown(dose.air * 100, 0), *[bare(one * 100, 1) for one in AIR_RANGE])),
        line("putty_density", "Density of the putty", weight / volume, "kg/m3",
             told(weight / volume, "g/mL", units, places=2), part="filler", rank=MORE, rough="air included"),
        line("dose", "Filler for 100 of mix, by weight", sum(masses) / batch.mass, "kg/kg",
             shown(100 * sum(masses) / batch.mass, 1), part="filler", rank=MORE, rough=dose_mark(dose)),
    ]
    if all([filler["grain"] == "sphere" for filler in dose.fillers]):
        share = solids_share(batch.density, dose.parts)
        if share < SPHERE_PACKING[0] - 0.005:
            times = relative_viscosity(share, SPHERE_PACKING[0])
            lines.append(line("thicker", "Thicker than the liquid", times, "", "about {} times".format(
                shown(times, 0)), part="filler", rank=MORE, rough="spheres that do not stick to each other, "
                                  "Krieger & Dougherty (1959); packing from memory"))
    return lines


def _room(values, volume):
    """Whether the putty fits a cup that was chosen."""
    if not cup_chosen(values):
        return []
    usable = late("by_stick").usable_volume(values["cup"])
    if volume <= usable * (1 + 1e-9):
        return []
    return [line("cup_too_small", "The putty does not fit the cup", volume, "m3",
                 told(volume, "mL", values["units"], UP) + ", the cup takes "
                 + told(usable, "mL", values["units"], DOWN), part="filler", rank=WARN,
                 rough="with room to stir. Stir the liquids, then tip all of it into a tub for the filler.")]


def stiffness_for(stress: float):
    """The softest stiffness whose remembered yield stress reaches SURE times a needed one, as a row, or None.

    stress: [Pa]
    >>> stiffness_for(30)[0], stiffness_for(1000)
    ('clings', None)
    """
    for row in STIFFNESSES:
        if row[3] >= SURE * stress * (1 - 1e-9):
            return row
    return None


def _stands(values, batch, masses, dose):
    """Whether the putty stays where it is put, by its weight against its yield stress."""
    fillers = [(mass, true) for mass, (_, true) in zip(masses, dose.parts)]
    # air left out: the heavier putty is the safe side
    density = (batch.mass + sum(masses)) / putty_volume(batch.mass, batch.density, fillers, 0.0)
    units, slope = values["units"], dict([(row[0], row[2]) for row in POSITIONS])[values["position"]]
    needed = yield_stress_needed(density, values["layer"], slope)
    row, chosen = stiffness_for(needed), STIFFNESSES[place_of(values["stiffness"])]
    most = thickest_layer(chosen[3] / SURE, density, slope)
    pass_text = told(most, "mm", units, DOWN, digits=2)
    rough = "rho g h, {}: yield stresses are from memory, {}".format(*(
        ("doubled", "half to double") if SURE == 2 else
        ("times " + bare(SURE, 2), "1/{0} to {0} times".format(bare(SURE, 2)))))
    if values["position"] == "overhead":
        rough += "; overhead it must also stick: press it in, thin passes"
    holds = row is not None and place_of(row[0]) <= place_of(chosen[0])
    lines = [line("needed", "So that it does not sag", needed, "Pa",
                  row[1] if row else "none of the five stands so thick", part="filler", rough=rough,
                  rank=MORE if holds else WARN),
             line("pass", "At most in one pass", most, "m", pass_text, part="filler", rank=MORE,
                  rough="of this stiffness, in this position; rounded down")]
    if not holds:
        way_out = "Lay it in passes of at most " + pass_text + "."
        if row:
            way_out = "Make it stiffer: '" + row[1] + "'. Or lay it in passes of at most " + pass_text + "."
        lines.append(words("sags", "It would sag", "'{}' is too soft for {} here. {}".format(
            chosen[1], told(values["layer"], "mm", units), way_out), part="filler", rank=WARN))
    return lines


def _flags(values, dose):
    lines = []
    soft = [filler["name"] or "This filler" for filler in dose.fillers if filler["carries"] == "no"]
    if soft and values["purpose"] == "seam":
        lines.append(words("fairing_only", "Not for a structural seam", " and ".join(soft) + ": for fairing. It must "
                           "not carry load in a seam. Take wood flour, cotton fibre or silica.", part="filler",
                           rough="common practice; the maker's sheet decides", rank=WARN))
    unknown = [filler["name"] or "This filler" for filler in dose.fillers if not filler["carries"]]
    if unknown and values["purpose"] == "seam":
        lines.append(words("may_it_carry", "May it carry load?", " and ".join(unknown) + ": the kit does not say "
                           "whether it may carry load in a seam. Look at the maker's sheet and say it there.",
                           part="filler", rank=ASK))
    runny = [filler["name"] or "This filler" for filler in dose.fillers if filler["alone"] == "no"]
    if len(runny) == len(dose.fillers) and place_of(values["stiffness"]) >= STANDS:
        lines.append(words("not_alone", "It does not stand alone", runny[0] + " settles and flows. Blend it, silica "
                           "for a part of it.", part="filler", rough="from memory", rank=ASK))
    return lines


def _own_batches(values, dose):
    """The builder's own batches, each in sight, and what they did to the dose."""
    rows, found = values["batches"], dose.calibration
    if not rows:
        return []
    fillers, shares = components(values)
    ratios = own_ratios(values, fillers, shares)
    lines = [line("own", "Own batches move the dose by", found.factor - 1, "", _signed(found.factor - 1), part="filler",
                  rough="own figures weigh {}%, the table's the rest".format(shown(found.own * 100, 0)))]
    for place, row in enumerate(rows):
        state = "counts" if place in found.counted else "left out"
        dosed = used(row) / row["mixed"]
        lines.append(line("batch_" + str(row["place"] + 1), "Own batch " + str(row["place"] + 1), dosed, "kg/kg",
                          "{} for 100 of mix by weight, {} on the table".format(
                              shown(dosed * 100, 1), _signed(ratios[place] - 1)),
                          rough=state, part="filler", rank=MORE))
        if place in found.questioned:
            lines.append(words("odd_" + str(row["place"] + 1), "Batch {} stands out".format(row["place"] + 1),
                               "It took {} on the table, the others agree on another figure. Was the tub read right, "
                               "the stiffness tapped right? Left out until you say it counts; or remove it.".format(
                                   _signed(ratios[place] - 1)), part="filler", rank=ASK))
    lines.extend(_contradictions(ratios, found))
    return lines


def _contradictions(ratios, found):
    counted = [ratios[place] for place in found.counted]
    if len(counted) == 2 and max(counted) > 1.35 * min(counted):
        return [words("contradiction", "Two batches contradict", "One took {}% more filler than the other for the same "
                      "stiffness. A third will tell which.".format(shown((max(counted) / min(counted) - 1) * 100, 0)),
                      part="filler", rank=ASK)]
    if len(counted) == 1 and not 0.5 <= counted[0] <= 2:
        return [words("contradiction", "Far from the table", "This batch took {} on the table. Were the tub's weights "
                      "and the stiffness typed right?".format(_signed(counted[0] - 1)), part="filler", rank=ASK)]
    return []


def _signed(change):
    text = shown(change * 100, 0)
    return (text if text.startswith("-") else "+" + text if float(text) else "±0") + "%"
