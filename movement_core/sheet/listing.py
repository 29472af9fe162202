"""Lists of what is known, for the terminal: woods and materials, years of air."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NoReturn

from movement_core.air.indoor import Rooms
from movement_core.air.places import all_places
from movement_core.air.presets import all_years
from movement_core.air.year import MONTHS, Year
from movement_core.errors import UnknownName
from movement_core.names import NameIndex, listed, spellings, words
from movement_core.sheet.text import shortened
from movement_core.sources import told_basis
from movement_core.wood import all_species
from movement_core.wording import phrase, say


def list_species(word: str = "") -> str:
    """One line a species: name, botanical name, movement per 1 % of moisture, and how well that is known.

    Raises
    ------
    UnknownName : no species or material has the word in its name.
    """
    wanted = " ".join(words(word))
    lines = []
    for species in all_species():
        names = (species.name, species.botanical or "", *species.trade_names)
        spelt = (" ".join(words(each)) for name in names for each in spellings(name))
        if word.strip() and not any(wanted and wanted in name for name in spelt):
            continue
        source = species.sources.get("tangential_coefficient")
        lines.append(
            f"{species.name:34} {shortened(species.botanical or '', 34):34} {100 * species.radial_coefficient:6.3f} "
            f"{100 * species.tangential_coefficient:6.3f}  {say(source.provenance) if source else ''}"
        )
    if not lines:
        _raise_unknown(
            phrase("wood or material"), word, [(one.name, *one.trade_names) for one in all_species()]
        )
    heads = f"{say('name'):34} {say('botanical'):34} {say('radial'):>6} {say('tang.'):>6}  {say('coefficients are')}"
    note = say("Radial and tangential: percent of size for each 1 % of moisture content.")
    return "\n".join([heads, *lines, note])


def list_places(word: str = "") -> str:
    """One line a place: what rooms heated to 20 °C there would bring wood to, and what its weather rests on."""
    lines = []
    for place in all_places():
        if word.strip().lower() not in f"{place.name} {place.country}".lower():
            continue
        year = place.indoors(Rooms())
        name = f"{place.name}, {place.country}"
        lines.append(
            f"{shortened(name, 28):28} {_dry_and_wet(year)}\n    "
            + say("weather: {source}", source=place.temperature_source.told())
        )
    if not lines:
        _raise_unknown(phrase("place"), word, [(one.name, one.country) for one in all_places()])
    return "\n".join(
        [*lines, say("Indoors, heated to 20 °C, not cooled; --heating, --cooling, --humidify change that.")]
    )


def list_years(word: str = "") -> str:
    """One block a year of air: name, driest and wettest month with moisture, and what it rests on."""
    lines = []
    for year in all_years():
        if word.strip().lower() not in year.name.lower():
            continue
        lines.append(f"{year.name:32} {_dry_and_wet(year)}\n    {_also_called(year)}{told_basis(year.basis)}")
    if not lines:
        _raise_unknown(phrase("year of air"), word, [(one.name,) for one in all_years()])
    return "\n".join(lines)


def _also_called(year: Year) -> str:
    """What reports call a year, where that is not the name that is typed."""
    called = say(year.name)
    return "" if called == year.name else f"{called}: "


def _dry_and_wet(year: Year) -> str:
    """The moisture that a year brings wood to in its driest and its wettest month."""
    dry, wet = year.driest_month, year.wettest_month
    return say(
        "{low:5.1f} % in {dry}, {high:.1f} % in {wet}",
        low=year.moisture[dry],
        dry=say(MONTHS[dry]),
        high=year.moisture[wet],
        wet=say(MONTHS[wet]),
    )


def _raise_unknown(noun: str, asked: str, named: Sequence[tuple[str, ...]]) -> NoReturn:
    """``UnknownName`` with the names most like a word that is in none of them."""
    near = NameIndex([(names[0], names) for names in named], noun).nearest(asked)
    raise UnknownName(
        say("no {noun} has {word!r} in its name", noun=say(noun), word=asked),
        nearest=near,
        allowed=say("nearest: {listed}", listed=listed(near)) if near else "",
        todo=say("name one of them, or try a shorter word") if near else say("try a shorter word"),
    )
