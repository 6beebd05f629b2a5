"""Laminate: glass and the resin it takes up, and how thick the two become."""


def thickness(areal: float, fraction: float, fibre_density: float, resin_density: float) -> float:
    """Thickness of a laminate without voids:
        t = w / (rho_f rho_m) (rho_f / psi - (rho_f - rho_m))

    areal: w, dry glass [kg/m2]; fraction: psi, glass by mass [-], 0 < psi <= 1
    fibre_density, resin_density: rho_f, rho_m [kg/m3]
    returns: t [m]; the shape of ISO 12215-5, Annex C, for any two densities; hand lay-up holds some air: a lower bound
    >>> round(thickness(0.45, 0.3, 2560, 1200) * 1000, 6)
    1.050781
    """
    return areal / (fibre_density * resin_density) * (fibre_density / fraction - (fibre_density - resin_density))


def resin_taken_up(areal: float, fraction: float) -> float:
    """Resin in a laminate:
        w (1 - psi) / psi

    areal: w, dry glass [kg/m2, or kg]; fraction: psi, glass by mass [-], 0 < psi <= 1
    returns: in the unit of w; the definition of the fraction
    >>> round(resin_taken_up(0.3, 0.5), 6)
    0.3
    """
    return areal * (1 - fraction) / fraction


def fraction_of(resin_to_glass: float) -> float:
    """Glass by mass from resin to glass by weight:
        psi = 1 / (1 + q)

    >>> round(fraction_of(2.5), 7)
    0.2857143
    """
    return 1 / (1 + resin_to_glass)


def fibre_volume(fraction: float, fibre_density: float, resin_density: float) -> float:
    """Glass by volume:
        (psi / rho_f) / (psi / rho_f + (1 - psi) / rho_m)

    returns: [-]; no voids
    >>> round(fibre_volume(0.48, 2560, 1200), 7)
    0.3020134
    """
    glass, resin = fraction / fibre_density, (1 - fraction) / resin_density
    return glass / (glass + resin)
