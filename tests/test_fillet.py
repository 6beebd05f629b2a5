"""The cove, the open V, bevels, round-overs and the bulkhead's foot against handbooks, plane geometry and shapely."""
from math import cos, degrees, pi, radians, sin, tan

import pytest
from covemix.shared.equations import bulkhead, changing_angle, fillet
from covemix.shared.equations import outer_edge as edges
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from shapely.geometry import Point, Polygon
from shapely.ops import unary_union

INCH = 0.0254
SHAPELY = "shapely (library): polygons cut and united, mm"

# interior angle: R, tangent length, arc, area, V to the chord, V to a round-over of r = t; throat = t = 1
CONSTRUCTION = (
    (60, 1.00000, 1.73205, 2.09440, 0.684853, 0.433013, 1.04720),
    (80, 1.79945, 2.14451, 3.14064, 1.03322, 0.492404, 0.872665),
    (90, 2.41421, 2.41421, 3.79224, 1.25079, 0.500000, 0.785398),
    (110, 4.52951, 3.17159, 5.53384, 1.83299, 0.469846, 0.610865),
    (130, 9.67325, 4.51071, 8.44150, 2.80484, 0.383022, 0.436332),
    (150, 28.3477, 7.59575, 14.8428, 4.94195, 0.250000, 0.261799),
    (170, 261.791, 22.9038, 45.6912, 15.2285, 0.0868241, 0.0872665),
)


@pytest.mark.parametrize(("angle", "radius", "tangent", "arc", "area", "to_chord", "to_round"), CONSTRUCTION)
def test_the_circle_between_two_lines(outside, angle, radius, tangent, arc, area, to_chord, to_round):
    """Plane geometry of a circle tangent to two lines, worked by hand to six digits: R = sin h / (1 - sin h)."""
    a = radians(angle)
    source = "plane geometry of a circle tangent to two lines, worked by hand to six digits, t = 1"
    got = (fillet.radius_for_throat(1.0, a), fillet.tangent_length(radius, a), fillet.arc(radius, a),
           fillet.area(fillet.radius_for_throat(1.0, a), a), edges.v_area(a, 1.0), edges.rounded_area(a, 1.0, 1.0))
    outside.worked(f"cove {angle} degrees: radius, leg, arc, area, V, round-over", source,
            (radius, tangent, arc, area, to_chord, to_round), got, rel=6e-6)
    assert fillet.throat(fillet.radius_for_throat(1.0, a), a) == pytest.approx(1.0, rel=1e-12)


def test_a_spandrel_of_the_handbook(outside):
    """Machinery's Handbook, 31st ed. (2020), p. 80, "Spandrel or Fillet": r 0.7 in gives 0.105 in2 (three digits)."""
    outside.printed("spandrel", "Machinery's Handbook, 31st ed. (2020), p. 80", 0.105,
            fillet.area(0.7 * INCH, pi / 2) / INCH**2, absolute=0.0005)


def test_a_spandrel_of_the_training_manual(outside):
    """US Navy training manual NAVEDTRA 14119, computing areas: 0.2146 R2, R = 3 in gives 1.9314 in2."""
    outside.printed("spandrel of 3 in", "US Navy training manual NAVEDTRA 14119, computing areas", 1.9314,
            fillet.area(3 * INCH, pi / 2) / INCH**2, absolute=5e-5)


@pytest.mark.parametrize(("radius", "angle", "area", "leg", "throat"), (
    (12, 90, 30.90266, 12, 4.970563), (12, 120, 7.740215, 6.928203, 1.856406), (10, 60, 68.48533, 17.32051, 10)))
def test_coves_by_the_handbook_construction(outside, radius, angle, area, leg, throat):
    """The construction of Machinery's Handbook, p. 80, at a general angle: kite less sector, in mm."""
    a = radians(angle)
    book = "Machinery's Handbook, p. 80, the construction at a general angle, in mm"
    outside.worked(f"joint cove R {radius} at {angle}: area", book, area, fillet.area(radius, a), rel=1e-6)
    outside.worked(f"joint cove R {radius} at {angle}: leg", book, leg, fillet.tangent_length(radius, a), rel=1e-6)
    outside.worked(f"joint cove R {radius} at {angle}: throat", book, throat, fillet.throat(radius, a), rel=1e-6)


def wedge(a, far=1000.0):
    """The space between the two faces, the inside up."""
    return Polygon([(0, 0), (far * sin(a / 2), far * cos(a / 2)), (0, 4 * far), (-far * sin(a / 2), far * cos(a / 2))])


def panels(a, t, gap, bevel, far=1000.0):
    """Two panels as solids, moved apart along their own faces until they are `gap` apart where they are nearest."""
    h = a / 2
    u, n = (sin(h), cos(h)), (cos(h), -sin(h))

    def right(s):
        inner = (s * u[0], s * u[1])
        outer = (inner[0] + t * n[0] - t * tan(bevel) * u[0], inner[1] + t * n[1] - t * tan(bevel) * u[1])
        return Polygon([inner, (far * u[0], far * u[1]), (far * u[0] + t * n[0], far * u[1] + t * n[1]), outer])

    # how far they must stand off so that neither crosses the middle by less than half the gap
    lowest = min(x for x, _ in right(0.0).exterior.coords)
    solid = right((gap / 2 - lowest) / u[0])
    return solid, Polygon([(-x, y) for x, y in solid.exterior.coords])


def between(a, t, gap, bevel):
    """The space between the panels' edges, from the line of the inner to that of the outer corners."""
    right, left = panels(a, t, gap, bevel)
    corners = [right.exterior.coords[0], right.exterior.coords[3], left.exterior.coords[3], left.exterior.coords[0]]
    return Polygon(corners).convex_hull if gap or bevel else Polygon(corners).buffer(0)


def cove_solid(a, radius):
    """The wedge below the circle: everything nearer to the corner than the circle of that radius."""
    h = a / 2
    leg = radius / tan(h)
    kite = Polygon([(0, 0), (leg * sin(h), leg * cos(h)), (0, radius / sin(h)), (-leg * sin(h), leg * cos(h))])
    return kite.difference(Point(0, radius / sin(h)).buffer(radius, quad_segs=4000))


ANGLES = (45, 70, 90, 110, 130, 150)


@pytest.mark.parametrize("angle", ANGLES)
def test_the_cove_as_shapely_cuts_it(outside, angle):
    """shapely: the kite to the tangent points less the disc."""
    a = radians(angle)
    outside.library(f"cove area, {angle} degrees", SHAPELY, cove_solid(a, 14.0).area, fillet.area(14.0, a), rel=2e-5)


@pytest.mark.parametrize("angle", ANGLES)
@pytest.mark.parametrize(("gap", "bevel"), ((0, 0), (2, 0), (4, 0), (0, 10), (3, 10), (0, 60), (2, 60)))
def test_cove_and_gap_as_shapely_fills_them(outside, angle, gap, bevel):
    """shapely: cove and opening united, wood taken away; square and bevelled edges, touching and apart."""
    a, t, b, radius = radians(angle), 6.0, radians(bevel), 60.0
    right, left = panels(a, t, gap, b)
    space = between(a, t, gap, b)
    filled = unary_union([cove_solid(a, radius), space]).difference(right).difference(left)
    filled = filled.difference(Point(0, radius / sin(a / 2)).buffer(radius, quad_segs=4000))
    low = min(y for _, y in space.exterior.coords)  # the tape behind the gap, from outer corner to outer corner
    filled = filled.intersection(Polygon([(-500, low), (500, low), (500, 500), (-500, 500)]))
    computed = fillet.area(radius, a) + edges.filled_from_inside(a, t, gap, b)
    assert fillet.tangent_length(radius, a) > edges.bare_corner(a, t, gap, b)
    outside.library(f"cove with gap {gap} and bevel {bevel}, {angle} degrees", SHAPELY, filled.area, computed, rel=1e-4)


def test_cove_and_gap_worked_by_hand():
    """Plane geometry worked by hand, mm: cove + g t sin h + 1/2 t2 sin a - 1/4 g2 cot h, throat = t = 6."""
    for angle, gap, expected in ((110, 2, 92.0316), (90, 4, 75.9990)):
        a = radians(angle)
        found = fillet.area(fillet.radius_for_throat(6, a), a) + edges.filled_from_inside(a, 6, gap)
        assert found == pytest.approx(expected, rel=1e-6)


def test_a_bevel_worked_by_hand():
    """Plane geometry worked by hand, mm: 1/2 (t / cos b)2 |sin(d - 2 b)|, t = 6, 110 degrees, 10 degrees off square."""
    a, b = radians(110), radians(10)
    assert edges.v_area(a, 6, 0, b) == pytest.approx(14.2175, rel=1e-5)
    found = edges.opening(a, 6, 0, b)
    assert found.inner == 0 and found.outer > 0  # open to the outside


def test_a_mitre_leaves_nothing_open():
    a = radians(110)
    assert edges.v_area(a, 6, 0, (pi - a) / 2) == pytest.approx(0, abs=1e-12)


@pytest.mark.parametrize("angle", ANGLES)
@pytest.mark.parametrize(("gap", "bevel"), ((0, 0), (3, 0), (0, 10), (2, 10), (0, 60)))
@pytest.mark.parametrize("radius", (1.0, 3.0, 6.0, 9.0))
def test_the_round_over_as_shapely_turns_it(outside, angle, gap, bevel, radius):
    """shapely: the space between the edges and out to the outer faces' corner, the round-over's outside cut away."""
    a, t, b = radians(angle), 6.0, radians(bevel)
    if edges.cover(a, t, radius) <= 0:
        return
    h = a / 2
    right, left = panels(a, t, gap, b)
    sharp = Polygon([(0, -t / sin(h)), *[(s * 400 * sin(h), -t / sin(h) + 400 * cos(h)) for s in (1, -1)]])
    space = sharp.difference(right).difference(left)
    top = right.exterior.coords[0][1]
    below = Polygon([(-500, top), (500, top), (500, -500), (-500, -500)])
    centre = (radius - t) / sin(h)
    reach = radius / tan(h)
    corner = Polygon([(0, -t / sin(h)), (reach * sin(h), -t / sin(h) + reach * cos(h)), (0, centre),
                      (-reach * sin(h), -t / sin(h) + reach * cos(h))])
    planed = corner.difference(Point(0, centre).buffer(radius, quad_segs=4000))
    left_over = space.intersection(below).difference(planed)
    near_axis = [piece for piece in getattr(left_over, "geoms", [left_over]) if piece.area > 1e-9]
    computed = edges.rounded_area(a, t, radius, gap, b)
    area = sum(piece.area for piece in near_axis)
    outside.library(f"round-over {radius}, gap {gap}, bevel {bevel}, {angle} degrees", SHAPELY, area, computed,
            absolute=2e-4 * max(1.0, area))


@given(st.floats(25, 170), st.floats(3, 20))
def test_the_cover_is_the_thickness_at_a_round_over_of_the_thickness(angle, t):
    """A round-over of r = t is centred on the inner corner: it stands t away from it everywhere."""
    a = radians(angle)
    assert edges.cover(a, t, t) == t
    assert edges.cover(a, t, t * (1 + 1e-12)) == pytest.approx(t, rel=1e-9)
    assert edges.cover(a, t, 1.2 * t) < t < edges.cover(a, t, 0.5 * t)
    assert edges.largest_round(a, t) == pytest.approx(t, rel=1e-9)


@pytest.mark.parametrize(("angle", "gap"), ((90, 0), (90, 3), (75, 0), (75, 2), (110, 0), (120, 3)))
def test_the_foot_of_a_bulkhead_as_shapely_sees_it(outside, angle, gap):
    """shapely: a leaning strip with a square end, its nearest corner `gap` above the hull; what is left beneath it."""
    a, t = radians(angle), 9.0
    u = (cos(a), sin(a))  # up the bulkhead; the side of `a` is the side of +x
    n = (sin(a), -cos(a))  # from its other face to this one
    ends = [(-n[0] * t / 2, -n[1] * t / 2), (n[0] * t / 2, n[1] * t / 2)]
    lift = gap - min(y for _, y in ends)
    ends = [(x, y + lift) for x, y in ends]
    beam = Polygon([ends[0], ends[1], (ends[1][0] + 200 * u[0], ends[1][1] + 200 * u[1]),
                    (ends[0][0] + 200 * u[0], ends[0][1] + 200 * u[1])])
    feet = [(x - y / u[1] * u[0], 0.0) for x, y in ends]
    under = Polygon([feet[0], feet[1], ends[1], ends[0]]).buffer(0).difference(beam)
    outside.library(f"foot of a bulkhead, gap {gap}, {angle} degrees", SHAPELY, under.area,
            bulkhead.foot_area(a, t, gap),
            absolute=1e-6)
    bare = ((ends[1][0] - feet[1][0])**2 + ends[1][1]**2) ** 0.5
    assert bulkhead.bare_foot(a, t, gap) == pytest.approx(bare, abs=1e-9)


@given(st.floats(0.001, 1.2), st.floats(0.002, 0.05))
def test_a_wider_angle_needs_a_larger_radius_and_more_putty(half_opening, depth):
    """By the throat rule both grow as the corner opens."""
    a = pi - 2 * half_opening
    wider = pi - 1.9 * half_opening
    assert fillet.radius_for_throat(depth, wider) > fillet.radius_for_throat(depth, a)
    assert (fillet.area(fillet.radius_for_throat(depth, wider), wider)
            > fillet.area(fillet.radius_for_throat(depth, a), a))


def test_the_series_meets_the_tangent():
    """Abramowitz & Stegun (1964), 4.3.67: tan x - x = x3/3 + 2 x5/15 + 17 x7/315 + ...; both sides of the change."""
    assert fillet.excess(0.1) == pytest.approx(tan(0.1) - 0.1, rel=1e-11)
    assert fillet.excess(0.1 + 1e-12) == pytest.approx(fillet.excess(0.1), rel=1e-9)


@pytest.mark.parametrize("ends", ((60, 160), (80, 100), (110, 150), (159, 160), (25, 162)))
def test_a_changing_angle_as_scipy_integrates_it(outside, ends):
    """scipy.integrate.quad of the throat-rule area over an angle that changes evenly along 2.4 m."""
    low, high = (radians(end) for end in ends)

    def section(a):
        return fillet.area(fillet.radius_for_throat(0.006, a), a)

    exact, _ = quad(lambda x: section(low + (high - low) * x / 2.4), 0, 2.4, epsabs=0, epsrel=1e-11)
    stations = (changing_angle.Station(0.0, low), changing_angle.Station(2.4, high))
    outside.solved(f"putty from {ends[0]} to {ends[1]} degrees", "scipy.integrate.quad (library)", exact,
            changing_angle.summed(section, stations), rel=1e-6)
    assert changing_angle.summed(section, stations[::-1]) == pytest.approx(-exact, rel=1e-6)  # walked backwards


def test_the_mean_angle_would_be_wrong():
    """The area is convex in the angle: by Jensen's inequality the mean angle gives too little."""
    def section(a):
        return fillet.area(fillet.radius_for_throat(0.006, a), a)

    stations = (changing_angle.Station(0.0, radians(90)), changing_angle.Station(2.0, radians(150)))
    assert changing_angle.summed(section, stations) > 1.1 * 2.0 * section(radians(120))


@pytest.mark.parametrize("kink", (1.9, 2.0001, 2.6))
def test_a_kink_is_found(kink):
    """scipy.integrate.quad told where the kink is; here it is looked for."""
    def section(a):
        return min(a * a, kink * kink + (a - kink))

    exact = (quad(section, 1.5, kink, epsrel=1e-12)[0] + quad(section, kink, 2.8, epsrel=1e-12)[0]) / 1.3
    found = changing_angle.summed(section, (changing_angle.Station(0.0, 1.5), changing_angle.Station(1.0, 2.8)), regime=lambda a: a > kink)  # noqa: E501
    assert found == pytest.approx(exact, rel=1e-10)


def test_a_jump_at_a_given_angle_is_kept_apart():
    found = changing_angle.summed(lambda a: 1.0 if a < 2.0 else 0.0, (changing_angle.Station(0.0, 1.5), changing_angle.Station(1.0, 2.5)), (2.0,))  # noqa: E501
    assert found == pytest.approx(0.5, rel=1e-12)


def test_stations_from_angles_and_stretches():
    found = changing_angle.spread((1.0, 1.5, 2.0), (0.4, 1.1))
    assert [station.at for station in found] == [0.0, 0.4, 1.5]
    assert degrees(changing_angle.spread((pi / 2,), (3.0,))[1].angle) == pytest.approx(90)
