"""Library: the front door for programs in plain Python. Numbers in SI go in, named results in SI come out.

>>> label = System(by_weight=(100, 30), densities=(1120, 980))
>>> batch = mix(label, mass=0.130)
>>> round(batch.parts[1]["mass"], 9), round(batch.density, 3)
(0.03, 1084.255)

Names, units and meanings of results: `meaning("density")`. Figures are unrounded: at the bench round to the safe side.
An unknown keyword is a TypeError, a value that the engine refuses is `Refused`.
"""
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from math import degrees
from typing import Any

from covemix.server.data import data
from covemix.server.data_names import NAMES, Name
from covemix.server.thread_memo import thread_memo
from covemix.server.typed import Taken
from covemix.shared.door import moves
from covemix.shared.files import drawn
from covemix.shared.forms import inputs
from covemix.shared.words.texts import said
from covemix.shared.words.written import reader

__all__ = ("Refused", "Result", "Seam", "System", "Tape", "boat", "cure", "dew", "joint", "meaning", "measure", "mix",
           "pot")


class Refused(ValueError):
    """What the engine does not take. errors: {name: why}"""

    def __init__(self, errors: dict[str, str]):
        super().__init__("; ".join(f"{name}: {why}" for name, why in errors.items()))
        self.errors = errors


class Result(Mapping[str, Any]):
    """Named results in SI, as attributes or by name; a table is a list of rows by name.

    >>> dew(air=291.15, humidity=0.7).dew_danger
    False
    """

    def __init__(self, move: str, values: dict, found: dict[str, Any]):
        self._move, self._values, self._found = move, values, found

    def __getattr__(self, name: str) -> Any:
        try:
            return self.__dict__["_found"][name]
        except KeyError:
            raise AttributeError(f"there is no {name}; there are: {', '.join(self._found)}") from None

    def __getitem__(self, name: str) -> Any:
        return self._found[name]

    def __iter__(self) -> Iterator[str]:
        return iter(self._found)

    def __len__(self) -> int:
        return len(self._found)

    def __dir__(self) -> list[str]:
        return [*super().__dir__(), *self._found]

    def column(self, table: str, name: str) -> list[Any]:
        """One column of a table, as a curve is plotted."""
        return [row[name] for row in self._found[table]]

    def drawings(self) -> dict[str, str]:
        """Its drawings by name, as SVG."""
        figures = getattr(moves.module(self._move), "figures", None)
        found = moves.in_text(figures(self._values), reader()) if figures else []
        return {one["name"]: drawn.svg([one]) for one in found}


@dataclass(frozen=True, kw_only=True)
class System:
    """A resin with its hardener, as its label says; what is not said is not known.

    id: a built-in row to start from ("3-1"); by_weight, by_volume: parts [1]; densities [kg/m3], one for each part
    pot_time [s], pot_mass [kg], pot_temperature [K]: the label's pot life, its batch and its temperature
    film_time [s]; lowest: working temperature [K]; tolerance: ratio error to aim for [1]
    """

    id: str = ""
    by_weight: Sequence[float] = ()
    by_volume: Sequence[float] = ()
    densities: Sequence[float] = ()
    pot_time: float | None = None
    pot_mass: float | None = None
    pot_temperature: float | None = None
    film_time: float | None = None
    lowest: float | None = None
    tolerance: float | None = None

    def tree(self) -> dict[str, Any]:
        return _given(id=self.id or None, by_weight=list(self.by_weight), by_volume=list(self.by_volume),
                      densities_kg_per_m3=list(self.densities), pot_time_s=self.pot_time, pot_mass_kg=self.pot_mass,
                      pot_temperature_K=self.pot_temperature, film_time_s=self.film_time, lowest_K=self.lowest,
                      tolerance_percent=_percent(self.tolerance))


@dataclass(frozen=True, kw_only=True)
class Tape:
    """One layer of tape: width [m], areal_weight [kg/m2]"""

    width: float
    areal_weight: float


@dataclass(frozen=True, kw_only=True)
class Seam:
    """A seam of a boat. thickness of its panels, length [m]; angle between them [rad], several where it changes;
    kind: inside, outside, both, bulkhead, butt or strip; copies: how many of them
    """

    name: str
    thickness: float
    length: float
    angle: float | Sequence[float] = 1.5707963267948966
    kind: str = "inside"
    gap: float = 0.0
    copies: int = 1
    layers: Sequence[Tape] = field(default_factory=tuple)

    def tree(self) -> dict[str, Any]:
        angles = self.angle if isinstance(self.angle, Sequence) else [self.angle]
        tapes = list(self.layers)
        return _given(name=self.name, kind=self.kind, thickness_m=self.thickness, length_m=[self.length],
                      angle_deg=[degrees(one) for one in angles], gap_m=self.gap, copies=self.copies,
                      layers=len(tapes) or None, width_m=[one.width for one in tapes],
                      weight_g_per_m2=[one.areal_weight * 1000 for one in tapes])


def mix(system: System, *, mass: float | None = None, volume: float | None = None) -> Result:
    """Every part of a mix of that mass [kg] or volume [m3], and the label's ratio in both bases."""
    return _ask("ratio", system=system.tree(), **_given(amount_kg=mass, amount_m3=volume))


def measure(system: System, *, way: str, mass: float | None = None, volume: float | None = None) -> Result:
    """What the tool must show for each part. way: scale, pumps, syringes, graduated or stick"""
    return _ask("measure", system=system.tree(), way=way, **_given(amount_kg=mass, amount_m3=volume))


def pot(system: System, *, mass: float, air: float, container: str = "cup") -> Result:
    """How long a batch of that mass [kg] can be used in air of that temperature [K], and how hot it may get.

    container: cup, bag, tray, bead, roll or film; its curve is rows of time and temperature
    """
    return _ask("heat", system=system.tree(), batch_kg=mass, air_K=air, container=container)


def cure(system: System, *, air: float) -> Result:
    """When a seam may be coated, peeled, sanded and loaded, in air of that temperature [K]."""
    return _ask("cure", system=system.tree(), air_K=air)


def dew(*, air: float, humidity: float, surface: float | None = None) -> Result:
    """How far a surface is above the dew point. air, surface [K]; humidity [1]"""
    return _ask("dew", **_given(air_K=air, humidity_percent=_percent(humidity), surface_K=surface))


def joint(*, thickness: float, angle: float, length: float, kind: str = "inside", gap: float = 0.0, copies: int = 1,
          layers: Sequence[Tape] | None = None) -> Result:
    """The cove, the tape and the resin of one seam. thickness, length, gap [m]; angle [rad]; layers: as the form has
    where none are given
    """
    tapes = None if layers is None else [{"width_m": one.width, "weight_g_per_m2": one.areal_weight * 1000}
                                         for one in layers] or "none"
    return _ask("joint", kind=kind, thickness_m=thickness, angle_deg=degrees(angle), length_m=length,
                **_given(gap_m=gap if kind != "strip" else None, copies=copies, layers=tapes))


def boat(seams: Sequence[Seam], *, system: System | None = None, people: int = 1) -> Result:
    """What all seams together take: to mix, to buy, to cut."""
    return _ask("boat", joints=[one.tree() for one in seams], people=people,
                **_given(system=system and system.tree()))


def meaning(name: str) -> Name:
    """Unit and meaning of a name of a result.

    >>> meaning("dew_point").unit
    'K'
    """
    return NAMES[name]


def _given(**named: Any) -> dict[str, Any]:
    return {name: value for name, value in named.items()
            if not (value is None or (isinstance(value, list) and not value))}


def _percent(share: float | None) -> float | None:
    return None if share is None else share * 100


def _ask(move: str, **typed: Any) -> Result:
    asked = moves.module(move)
    taken = Taken(asked.INPUTS, typed)
    if taken.errors:
        raise Refused({error["field"]: error["message"] for error in taken.errors})
    values, errors = inputs.read(asked.INPUTS, taken.tree, thread_memo())
    errors = errors or inputs.checked(asked.CHECKS, values)
    if errors:
        raise Refused({taken.sent.get(error.field, error.field): said(error.message, reader()) for error in errors})
    return Result(move, values, data(move, values, reader()))
