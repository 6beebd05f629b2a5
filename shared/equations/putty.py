"""Putty: what filler does to the volume, the density and the flow of mixed epoxy."""
from math import sin

GRAVITY = 9.80665  # m/s2, standard


def putty_volume(mixed: float, density: float, fillers: "list | tuple", air: float) -> float:
    """Volume of a putty whose volumes add up:
        V = (m / rho + sum(f_i / rho_i)) / (1 - c)

    mixed: m [kg], resin and hardener; density: rho [kg/m3], of that mix; air: c [-], share of the putty's volume
    fillers: pairs of mass f_i [kg] and true, wetted density rho_i [kg/m3]
    returns: V [m3]; the definition of density, ISO 80000-4
    >>> round(putty_volume(0.11, 1100, ((0.026, 1300),), 0) * 1e6, 6)  # 100 mL and 20 mL
    120.0
    """
    return (mixed / density + sum([mass / true for mass, true in fillers])) / (1 - air)


def mass_for_putty(volume: float, density: float, doses: tuple, air: float) -> float:
    """Resin and hardener for a wanted volume of putty, the inverse of `putty_volume`:
        m = V (1 - c) / (1 / rho + sum(d_i / rho_i))

    volume: V [m3]; density: rho [kg/m3]; air: c [-]
    doses: pairs of filler per mass of mix d_i [-] and true density rho_i [kg/m3]
    returns: m [kg]
    >>> round(mass_for_putty(120e-6, 1100, ((26 / 110, 1300),), 0), 6)
    0.11
    """
    return volume * (1 - air) / (1 / density + sum([dose / true for dose, true in doses]))


def solids_share(density: float, doses: tuple) -> float:
    """Share by volume of the solids in the wetted putty, air left out:
        phi = sum(d_i / rho_i) / (1 / rho + sum(d_i / rho_i))

    density: rho [kg/m3], of the mix; doses: pairs of d_i [kg/kg of mix] and true density [kg/m3]
    returns: phi [-]
    >>> round(solids_share(1000, ((0.1, 200),)), 6)
    0.333333
    """
    solids = sum([dose / true for dose, true in doses])
    return solids / (1 / density + solids)


def packed_dose(share: float, density: float, true: float) -> float:
    """The dose at which solids fill a given share by volume, the inverse of `solids_share`:
        d = rho_f phi / (rho (1 - phi))

    share: phi [-], below 1; density: rho [kg/m3], of the mix; true: rho_f [kg/m3], of the solids together
    returns: d [kg/kg of mix]
    >>> round(packed_dose(1 / 3, 1000, 200), 6)
    0.1
    """
    return true * share / (density * (1 - share))


def yield_stress_needed(density: float, layer: float, slope: float) -> float:
    """Yield stress at which a layer does not run off a face (Bingham):
        tau = rho g h sin(slope)

    density: rho [kg/m3], of the putty; layer: h [m]; slope: [rad] from the horizontal, pi/2 is a wall
    returns: tau [Pa]; Mezger, The Rheology Handbook, 3.3.4.2.1, for the wall; the slope's sine from statics
    >>> round(yield_stress_needed(1100, 0.010, 1.5707963267948966), 4)
    107.8731
    """
    return density * GRAVITY * layer * sin(slope)


def thickest_layer(yield_stress: float, density: float, slope: float) -> float:
    """The thickest layer that does not run off, the inverse of `yield_stress_needed`: h = tau / (rho g sin(slope)) [m].

    >>> round(thickest_layer(80, 1100, 0.7853981633974483) * 1000, 5)
    10.48797
    """
    return yield_stress / (density * GRAVITY * sin(slope))


def relative_viscosity(share: float, packing: float, intrinsic: float = 2.5) -> float:
    """How many times thicker spheres make a liquid:
        eta_r = (1 - phi / phi_m)**(-[eta] phi_m)

    share: phi [-], below packing; packing: phi_m [-], 0.58 to 0.64 for spheres; intrinsic: [eta], 2.5 for spheres
    returns: eta_r [-]; Krieger & Dougherty, Trans. Soc. Rheol. 3 (1959) 137; neither for fibres nor for fumed silica
    >>> round(relative_viscosity(0.3, 0.64), 6)
    2.751197
    """
    return (1 - share / packing) ** (-intrinsic * packing)
