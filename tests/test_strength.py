"""The strength of a seam beside its panel: textbook models, each by a second way, and what is said of them."""
from math import cosh, pi, radians, sinh

import numpy as np
import pytest
from covemix.shared.catalogue import strength as facts
from covemix.shared.door import moves
from covemix.shared.equations import strength as carries
from covemix.shared.forms import links
from covemix.shared.forms.inputs import read
from covemix.shared.seam import joint, seam, strength
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import quad, solve_bvp
from scipy.optimize import brentq

KINDS = ("inside", "outside", "both", "butt")


def lines_of(*pairs):
    found = moves.answer("joint", links.tree(pairs))
    assert found["errors"] == []
    return {row["name"]: row for row in found["lines"]}


def read_values(*pairs):
    values, errors = read(joint.INPUTS, links.tree(pairs))
    assert not errors
    return values


def by_fibres(parts, limits, cracked, count=40001):
    """The first limit of a bent section, fibre by fibre: strips of it, the axis where their forces cancel out.

    parts: (E, from, to, takes pull); limits: (what, y, E, strength)"""
    edges = np.linspace(min(part[1] for part in parts), max(part[2] for part in parts), count)
    y, width = (edges[1:] + edges[:-1]) / 2, np.diff(edges)

    def stress(axis):
        total = np.zeros_like(y)
        for stiff, start, end, pulled in parts:
            here = (y >= start) & (y < end)
            bent = stiff * (y - axis)
            total[here] = bent[here] if pulled or not cracked else np.minimum(bent[here], 0.0)
        return total

    axis = brentq(lambda at: float((stress(at) * width).sum()), edges[0], edges[-1], xtol=1e-15)
    bending = float((stress(axis) * (y - axis) * width).sum())
    return min(bending * strong / (stiff * abs(at - axis)) for _, at, stiff, strong in limits(axis))


@pytest.mark.parametrize("cracked", (False, True))
@pytest.mark.parametrize(("depth", "below", "above"), ((12.0, 0.44, 0.44), (6.0, 0.44, 0.0), (9.0, 1.2, 0.3),
                                                       (3.0, 0.2, 0.9)))
def test_a_bent_section_fibre_by_fibre(outside, cracked, depth, below, above):
    """Own integration over 40,000 strips, with numpy: the axis where push and pull cancel out, then the first limit."""
    glass, core = 12.1e9, facts.PUTTY_STIFF
    stretched = strength.Skin(below / 1e3, glass, (80e6, strength.TEARS), (60e6, strength.CRUSHED), 0, 0, 0)
    pressed = strength.Skin(above / 1e3, glass, (80e6, strength.TEARS), (60e6, strength.CRUSHED), 0, 0, 0)
    h, low, high = depth / 1e3, below / 1e3, above / 1e3
    parts = [(core, 0.0, h, False), (glass, h, h + low, True)] + ([(glass, -high, 0.0, True)] if above else [])

    def limits(axis):
        found = [("tears", h + low, glass, 80e6)]
        if axis > 0:
            found.append(("pressed", 0.0, core, facts.PUTTY_PUSH * 0.5))
        if above:
            found.append(("crushed", -high, glass, 60e6))
        if not cracked:
            found.append(("cracks", h, core, facts.PUTTY_BENDS * 0.5))
        return found

    found, _ = strength._section(h, stretched, pressed if above else None, cracked, 0.5, {})
    outside.own(f"joint strength of a section {depth}, {below}, {above}, cracked {cracked}",
                "numpy (library), strip by strip", by_fibres(parts, limits, cracked), found, rel=2e-3)


@pytest.mark.parametrize("plies", (3, 5, 7, 9, 13))
def test_plywood_across_its_face_grain(outside, plies):
    """scipy.integrate.quad of E y2 over the plies one by one, as USDA FPL-059 (1964) lays them out."""
    def modulus(first):
        whole = sum(quad(lambda y, e=(1.0 if (place % 2 == 0) == first else 0.067): e * y * y, place - plies / 2,
                         place + 1 - plies / 2)[0] for place in range(plies))
        return whole / (plies / 2 if first else plies / 2 - 1)

    outside.solved(f"plywood of {plies} plies across its grain", "scipy.integrate.quad (library)",
                   modulus(False) / modulus(True), carries.across_bends(plies, 0.067), rel=1e-9)
    assert 0.1 < carries.across_bends(plies, 0.067) < 1
    assert carries.across_pulls(plies, 0.0) == pytest.approx((plies // 2) / (plies // 2 + 1))


def test_all_but_a_twentieth_of_the_force_is_handed_over(outside):
    """scipy.integrate.solve_bvp of Volkersen's lap: N1' = -(G/eta)(u1 - u2), u' = N/(E t); the force at 3 / lambda."""
    first, second, shear, layer, lap = 5.28e6, 21e6, 60e6, 0.0012, 0.3
    lag = carries.shear_lag(shear, layer, first, second)

    def slope(_, state):
        force, slip = state
        return np.vstack((shear / layer * slip, force / first - (1 - force) / second))

    solved = solve_bvp(slope, lambda a, b: np.array([a[0] - 1, b[0] - first / (first + second)]),
                       np.linspace(0, lap, 400), np.zeros((2, 400)), tol=1e-8, max_nodes=200000)
    rest = first / (first + second)
    assert solved.success
    handed = (1 - solved.sol(3 / lag)[0]) / (1 - rest)
    outside.solved("useful flank, force handed over", "scipy.integrate.solve_bvp (library)", handed,
                   1 - cosh(3) + sinh(3), rel=1e-4)


def test_the_laminate_beside_what_many_rules_print(outside):
    """From memory: the basic mat laminate of many rules, 30 % glass: 85, 117 and 6400 MPa."""
    for what, found, printed in (("pull", carries.laminate_pull(0.3), 85), ("push", carries.laminate_push(0.3), 117),
                                 ("stiffness", carries.laminate_stiffness(0.3), 6400)):
        outside.worked(f"laminate of 30 % glass, {what}", "basic laminate of many rules, from memory", printed,
                       found / 1e6, rel=1e-9)


def test_a_taped_corner_worked_by_hand(outside):
    """By hand, N and mm: 6 mm, 90 degrees, 300 g/m2 on both faces at 45 % glass, half its strength. Pull: 2 x 163/2 x
    the laminate's thickness, of 0.65 x 42.6 x 6. Bending: between the levers of a sandwich and of a bare core."""
    found = lines_of(("kind", "both"))
    thick = 0.3 / (2540 * 1110) * (2540 / 0.45 - (2540 - 1110)) * 1000
    pull = (800 * 0.45**2 - 80 * 0.45 + 37) / 2
    outside.worked("joint strength, straight pull", "by hand", 2 * pull * thick / (0.65 * 42.6 * 6),
                   found["strength_pull"]["value"], rel=1e-6)
    most = pull * thick * (12 + thick) / (42.6 * 36 / 6)  # a sandwich whose core is not pressed at all
    least = pull * thick * (12 + thick / 2 - 12 / 3) / (42.6 * 36 / 6)  # one whose core alone is pressed, all of it
    assert least < found["strength_inner"]["value"] < most
    assert found["strength_flank"]["value"] * 1000 == pytest.approx((75 - 0.006e3 * 2.41421 * pi / 2) / 2, rel=1e-5)


def test_the_worst_comes_first_and_is_named():
    for kind in KINDS:
        found = [row for row in moves.answer("joint", links.tree([("kind", kind)]))["lines"]
                 if row["name"] in ("strength_inner", "strength_outer", "strength_pull")]
        shares = [row["value"] for row in found]
        assert len(shares) == 3 and shares == sorted(shares)
        assert found[0]["rank"] == "beside"
        lines = lines_of(("kind", kind))
        said = lines["strength"]
        assert said["value"] == shares[0] and said["text"].startswith("the seam: ")
        assert "An estimate, not an approval: plans and class rules come first." in said["rough"]
        assert "count with 50%" in said["rough"]
        assert ("would_carry" in lines) == (shares[0] < 1 and kind != "bulkhead")


def test_the_panel_may_be_the_weaker():
    strong = [("kind", "both"), ("grain", "along"), ("thickness", "4")]
    for place in range(3):
        strong += [(f"layers.{place}.width", "150"), (f"layers.{place}.weight", "300")]
    found = lines_of(*strong)
    assert found["strength"]["text"].startswith("the panel: ") and found["strength"]["value"] >= 1
    assert "would_carry" not in found


def test_an_unknown_grain_counts_as_the_stronger_panel():
    share = {grain: lines_of(("kind", "both"), ("grain", grain))["strength_inner"]["value"]
             for grain in ("unknown", "along", "across")}
    assert share["unknown"] == share["across"] < share["along"]
    assert share["along"] == pytest.approx(share["across"] / carries.across_bends(5, 0.067), rel=1e-3)


def test_the_knock_down_is_applied():
    whole = lines_of(("kind", "both"), ("knock", "100"), ("layers.0.width", "150"))["strength_pull"]
    half = lines_of(("kind", "both"), ("layers.0.width", "150"))["strength_pull"]
    assert half["rough"] == "the glass tears first" and whole["rough"] == "the wood under the tape shears first"
    third = lines_of(("kind", "both"), ("layers.0.width", "150"), ("knock", "25"))["strength_pull"]
    assert half["value"] == pytest.approx(2 * third["value"])


def test_a_bare_face_is_the_weak_one():
    found = lines_of(("kind", "inside"))
    assert found["strength_outer"]["rough"] == "the putty cracks first"
    assert found["strength_outer"]["value"] < found["strength_inner"]["value"]
    both = lines_of(("kind", "both"))
    assert both["strength_outer"]["value"] > 3 * found["strength_outer"]["value"]


def test_a_short_flank_is_said():
    found = lines_of(("kind", "both"), ("sized", "spreader"), ("radius", "35"))
    assert found["strength_pull"]["rough"] == "the wood under the tape shears first"
    assert found["strength_flank"]["rough"].startswith("too short: from ")
    assert lines_of(("kind", "both"))["strength_flank"]["rough"].startswith("long enough")


@pytest.mark.parametrize("given", ((("kind", "both"), ("grain", "along")), (("kind", "butt"),), (("kind", "inside"),),
                                   (("kind", "both"), ("thickness", "4"), ("layers.0.weight", "200")),
                                   (("kind", "outside"), ("grain", "along"), ("thickness", "4"))))
def test_what_would_carry_does(given):
    """The proposal is asked as a joint of its own, both faces taped."""
    values = read_values(*given)
    found = joint.reckon(values).strength.would
    again = dict(given, kind="butt" if dict(given)["kind"] == "butt" else "both")
    for place in range(found.layers):
        again[f"layers.{place}.width"] = str(found.width * 1000)
        again[f"layers.{place}.weight"] = str(found.areal * 1000)
    shares = {case.key: case.share for case in joint.reckon(read_values(*again.items())).strength.cases}
    if not found.pulls:
        assert shares.pop("pull") < 1
    assert min(shares.values()) >= 1


def test_a_bulkhead_stands_on_the_face_veneer():
    """By hand: the foot is 6 mm and two legs of 14.485 mm; 2 MPa over it, against 42.6 MPa in the panel."""
    found = lines_of(("kind", "bulkhead"))
    foot = 6 + 2 * 14.485281
    assert found["strength_sideways"]["value"] == pytest.approx(2 * foot**2 / (42.6 * 36), rel=1e-5)
    assert found["strength_off"]["value"] == pytest.approx(2 * foot / (0.65 * 42.6 * 6), rel=1e-5)
    assert "strength_flank" not in found


def test_a_strip_is_no_seam():
    assert not [name for name in lines_of(("kind", "strip")) if name.startswith("strength")]


@given(st.sampled_from(KINDS), st.floats(3, 20), st.floats(50, 175), st.integers(1, 3), st.floats(60, 200))
@settings(max_examples=60, deadline=None)
def test_more_glass_is_never_weaker(kind, thickness, angle, layers, width):
    """Along whatever seam: one more layer, or a wider one, lowers no share by more than its own thickness moves the
    axis."""
    values = read_values(("kind", kind), ("thickness", f"{thickness:.3f}"), ("angle", f"{angle:.3f}"),
                         ("sized", "spreader"), ("radius", "10"))
    spec, panel = joint.spec_of(values), strength._panel(joint.spec_of(values), values)

    def shares(count, wide):
        rows = (seam.Tape(wide / 1000, 0.3, seam.EACH),) * count
        return {case.key: case.share for case in strength._worst(seam.taped(spec, kind, rows), panel, 0.5, {})[0]}

    few, more, wider = shares(layers, width), shares(layers + 1, width), shares(layers, width + 20)
    for key, share in few.items():
        assert share > 0 or kind in ("inside", "outside")
        assert wider[key] >= share * (1 - 1e-9)
        if key == "pull":
            assert more[key] >= share * (1 - 1e-9)


def test_the_angle_that_is_worst_counts():
    each = [lines_of(("kind", "inside"), ("angle", str(angle)))["strength_outer"]["value"] for angle in (95, 150)]
    both = lines_of(("kind", "inside"), ("angle_is", "stations"), ("stations.0.at", "0"), ("stations.0.angle", "95"),
                    ("stations.1.at", "1"), ("stations.1.angle", "150"))["strength_outer"]["value"]
    assert both == min(each) and radians(95) < radians(150)
