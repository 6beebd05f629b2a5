"""Joint leads: where a seam goes next, as typed text: to Pour, into the boat, to a template for its spreader."""
from ..forms.types import Found, Said, Values
from ..words.messages import message, number
from ..words.numbers import UP, bare, shown
from ..words.units import from_si
from . import seam

LEAST_SPREADER, MOST_SPREADER = 0.0021, 0.09  # [m] what a sheet of paper takes


def leads(found: Found, values: Values) -> list:
    """Its pours, the boat as a row of it, a template for the spreader. found: a `joint.JointResult`"""
    led = to_pour(found.mix.volume, found.mix.liquid)
    pieces = _as_pieces(found, values)
    if pieces:
        led.append({"label": "joint-to-run", "screen": "plan", "pairs": pieces})
    led.append({"label": "joint-to-boat", "screen": "boat", "adds": "joints", "pairs": _as_row(found.spec, values)})
    radii = []  # type: list
    for one in found.coves:
        text = bare(one.radius * 1000, 1)
        if LEAST_SPREADER <= one.radius <= MOST_SPREADER and text not in radii:
            radii.append(text)
    if radii:
        led.append({"label": "joint-to-spreader", "screen": "spreader", "pairs": [
            ["radii", number(" : ".join(radii[:9]) + " mm")]]})
    return led


def to_pour(putty: float, liquid: float, which: Said = "") -> list:
    """Leads to Pour: putty [m3] as a volume to make, liquid [kg] as a mass to mix; nothing of either: no lead.

    which: of which joints, as it is said; empty: of this one
    """
    found, putty_label, liquid_label = [], "joint-to-pour.putty", "joint-to-pour.wet-out"  # type: list, Said, Said
    if which:
        putty_label = message("joint-to-pour.putty-of", joints=which)
        liquid_label = message("joint-to-pour.wet-out-of", joints=which)
    if putty:
        found.append({"label": putty_label, "screen": "pour", "pairs": [
            ["amount_is", "putty"], ["amount", shown(putty * 1e6, 0, UP) + " mL"], ["thicken", "yes"],
            ["stiffness", "stands"]]})
    if liquid:
        found.append({"label": liquid_label, "screen": "pour", "pairs": [
            ["amount_is", "total"], ["amount", shown(liquid * 1000, 0, UP) + " g"], ["thicken", "no"]]})
    return found


def _as_pieces(found: Found, values: Values) -> list:
    """The faces that are done before the panel is turned, as the pieces of a plan of which nothing is done. What stays
    in bag and cup the plan adds by itself."""
    faces, pairs, length = found.seam.faces, [], found.seam.length * int(values["copies"])  # type: tuple, list, float
    for face in [one for one in faces if one.name not in seam.LATE] or faces:
        putty = seam.placed(face.putty * values["putty_density"], values["tooling"]) / found.seam.length
        wet = seam.wet_out(face, found.spec, values["tray"]) / found.seam.length
        if putty or wet:
            own = "pieces.{}.".format(len(pairs) // 4)
            pairs += [[own + "length", number(shown(length, 2, UP) + " m")],
                      [own + "putty", shown(putty * 1000, 0, UP) + " g/m"],
                      [own + "wet", shown(wet * 1000, 0, UP) + " g/m"],
                      [own + "layers", str(max(1, len(face.layers)))]]
    return pairs + [["done", ""], ["running", "no"]] if pairs else []


def _as_row(spec: seam.Spec, values: Values) -> list:
    """This joint as typed text of a row of the boat."""
    stations, layers = spec.stations, spec.layers
    angles = [station.angle for station in stations]
    steady = max(angles) - min(angles) < 1e-12
    lengths = [there.at - here.at for here, there in zip(stations, stations[1:])]
    row = [("kind", values["kind"]), ("thickness", bare(spec.thickness * 1000, 6) + " mm")]
    if values["kind"] in seam.CORNERS:
        row.append(("angle", " : ".join([bare(from_si(angle, "deg"), 6) for angle in angles[:1 if steady else 99]])))
    row.append(("length", " : ".join([bare(one, 6) for one in ([sum(lengths)] if steady else lengths)]) + " m"))
    row.append(("gap", bare(spec.gap * 1000, 6) + " mm"))
    row.append(("copies", shown(values["copies"])))
    row.append(("layers", str(len(layers))))
    if layers:
        row.append(("width", " : ".join([bare(one.width * 1000, 4) for one in layers]) + " mm"))
        row.append(("weight", " : ".join([bare(one.weight * 1000, 4) for one in layers]) + " g/m2"))
    if [1 for one in layers if one.side != seam.EACH]:
        words = dict([(side, word) for word, side in seam.FACES])
        row.append(("faces", " : ".join([words[one.side] for one in layers])))
    own = ("radius",)  # type: tuple
    if spec.sized == seam.BY_RULE:
        own = ("throat", "cove_width")
    elif spec.sized == seam.BY_FLANK:
        own = ()
        if layers:  # wider than its flanks leave: the tape decides there too
            row.append(("cove_width", bare(max(seam.widths(spec)) * 1000, 4) + " mm"))
    for name in own + ("clear", "round_over"):
        if values.get(name) is not None:
            row.append((name, bare(values[name] * 1000, 6) + " mm"))
    if values.get("bevel"):
        row.append(("bevel", bare(from_si(values["bevel"], "deg"), 6)))
    for name in ("touch", "finish"):
        if name in values:
            row.append((name, values[name]))
    return [["joints.0." + name, number(text)] for name, text in row]
