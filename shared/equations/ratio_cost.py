"""Ratio cost: what a wrong ratio does to the chains of a cured resin, each hardener molecule with four hydrogens that
bind and each resin molecule with two epoxides."""
from math import sqrt

HYDROGENS, EPOXIDES = 4, 2  # of a molecule: diamines on a diepoxide, which most room-temperature systems come close to


def gel_conversion(ratio: float, hydrogens: float = HYDROGENS, epoxides: float = EPOXIDES) -> float:
    """How much of the epoxide must have reacted before the mix gels:
        p = sqrt(r / ((fe - 1) (fa - 1)))

    ratio: r [-], hydrogens of the hardener to epoxides, above 0; hydrogens, epoxides: fa, fe [-] of a molecule, above 1
    returns: p [-]; above 1, or above r, it never gels; Flory and Stockmayer, as in Macosko & Miller, Macromolecules 9
        (1976) 199, from memory; equal reactivity, no rings
    >>> round(gel_conversion(1.0), 3), gel_conversion(0.3) > 0.3
    (0.577, True)
    """
    return sqrt(ratio / ((epoxides - 1) * (hydrogens - 1)))


def sol_fraction(ratio: float, hardener_share: float) -> float:
    """Share of a fully cured mix that is bound to nothing (sol), hardener A4 on resin B2:
        P = sqrt(1 / (r pA**2) - 3/4) - 1/2
        sol = wA P**4 + wB (pB P**3 + 1 - pB)**2,  pB = r pA, the scarcer of the two fully reacted

    ratio: r [-], hydrogens to epoxides, between 1/3 and 3 (beyond these nothing gels and all is sol)
    hardener_share: wA = 1 - wB [-], of the mix by weight
    returns: sol [-]; Macosko & Miller, Macromolecules 9 (1976) 199 and 206, from memory; equal reactivity, no rings
    >>> [round(100 * sol_fraction(ratio, 0.2), 2) for ratio in (1.0, 0.95, 0.8)]
    [0.0, 0.2, 3.47]
    """
    reacted = min(1.0, 1 / ratio)  # pA
    chain = ratio * reacted * reacted
    if chain * (HYDROGENS - 1) <= 1:
        return 1.0
    out = sqrt(1 / chain - 0.75) - 0.5
    both = ratio * reacted  # pB
    return hardener_share * out**4 + (1 - hardener_share) * (both * out**3 + 1 - both) ** 2
