"""Glass and resin against the small-craft standard's law and worked cases."""
import pytest
from covemix.shared.equations import laminate
from hypothesis import given
from hypothesis import strategies as st


@pytest.mark.parametrize(("w", "psi", "thickness_mm", "resin", "volume"), (
    (0.45, 0.30, 1.050781, 1.050, 0.1672862), (0.6, 0.48, 0.7760417, 0.650, 0.3020134)))
def test_glass_and_polyester_of_the_standard(outside, w, psi, thickness_mm, resin, volume):
    """ISO 12215-5, Annex C, glass with polyester (from memory): t = w / 3.072 (2.56 / psi - 1.36), t in mm."""
    iso = "ISO 12215-5, Annex C, glass with polyester (from memory)"
    outside.worked(f"joint laminate {w} kg/m2: thickness", iso, thickness_mm,
            laminate.thickness(w, psi, 2560, 1200) * 1000,
            rel=1e-6)
    assert laminate.thickness(w, psi, 2560, 1200) * 1000 == pytest.approx(w / 3.072 * (2.56 / psi - 1.36), rel=1e-12)
    outside.worked(f"joint laminate {w} kg/m2: resin", iso, resin, laminate.resin_taken_up(w, psi))
    outside.worked(f"joint laminate {w} kg/m2: fibre by volume", iso, volume, laminate.fibre_volume(psi, 2560, 1200),
            rel=1e-6)


@pytest.mark.parametrize(("w", "psi", "fibre", "matrix", "thickness_mm", "resin", "volume"), (
    (0.2, 0.45, 2560, 1150, 0.2906854, 0.2444444, 0.2687614), (0.3, 0.50, 2540, 1120, 0.3859674, 0.300, 0.3060109)))
def test_any_glass_and_any_resin(w, psi, fibre, matrix, thickness_mm, resin, volume):
    """The law of no voids, t = w (1 / rho_f + (1 - psi) / (psi rho_m)), and ASTM D3171 (from memory)."""
    assert laminate.thickness(w, psi, fibre, matrix) * 1000 == pytest.approx(thickness_mm, rel=1e-6)
    assert laminate.resin_taken_up(w, psi) == pytest.approx(resin, rel=1e-6)
    assert laminate.fibre_volume(psi, fibre, matrix) == pytest.approx(volume, rel=1e-6)


def test_resin_to_glass_of_a_boatbuilding_brief(outside):
    """Practical Action, technical brief on fibreglass boats: mat at 2.5 : 1 resin to glass."""
    outside.worked("joint mat at 2.5 : 1", "Practical Action, technical brief on fibreglass boats", 0.2857143,
            laminate.fraction_of(2.5), rel=1e-6)


@given(st.floats(0.1, 1.0), st.floats(0.2, 0.7), st.floats(2000, 2700), st.floats(1000, 1300))
def test_thickness_is_the_volume_of_glass_and_resin(w, psi, fibre, matrix):
    """Mass over density, both parts, on one square metre."""
    volume = w / fibre + laminate.resin_taken_up(w, psi) / matrix
    assert laminate.thickness(w, psi, fibre, matrix) == pytest.approx(volume, rel=1e-12)
