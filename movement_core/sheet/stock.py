"""Is this stock ready for that home, and if not, how long till it is: the answer in words and as data."""

from __future__ import annotations

import textwrap
from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from movement_core.air.bounds import within
from movement_core.air.daily import Air
from movement_core.errors import InputError
from movement_core.moisture.acceptance import CORE_TO_SKIN_MC, WITHIN_MC, Acceptance, acceptance
from movement_core.moisture.events import BoardInAir
from movement_core.moisture.meter import MoistureReading, meter_moisture
from movement_core.sheet.text import WIDTH
from movement_core.wood import Species
from movement_core.wording import phrase, say, word

THICKNESS_MM = (1.0, 300.0)  # from veneer to beams (own)
ROOM_C = (-30.0, 45.0)  # sheds in winter, lofts in summer (own)
SPEEDS = (1 / 3, 1.0, 3.0)  # how fast wood answers, within a factor of three either way (own judgement)


def judge_stock(
    species: Species,
    thickness_mm: float,
    readings: Sequence[float],
    home: Air,
    room: tuple[float, float],
    *,
    skin_mc: float | None = None,
    meter: str = "pin",
    wood_temperature_c: float | None = None,
    species_correction: float | None = None,
    set_gravity: float | None = None,
) -> dict[str, Any]:
    """The verdict on stock as plain data.

    Parameters
    ----------
    species, thickness_mm : the boards. readings : percent as the meter shows them, of the core or of the whole.
    home : the air it is meant for. room : (°C, RH percent) of the room it lies in, stickered.
    skin_mc : reading at the surface, if one was taken. meter : "pin" or "pad".
    wood_temperature_c, species_correction : for pins; set_gravity : the density that a pad meter is set to.

    Raises
    ------
    InputError : what is no wood, no density, or a value that cannot be.
    """
    within(
        thickness_mm, phrase("thickness"), *THICKNESS_MM, "mm", todo=say("give the board's thickness in mm")
    )
    _check_room(*room)
    if species.kind != "wood" or species.specific_gravity_12 is None:
        raise InputError(
            say("{name} is no wood of known density", name=species.name),
            where=say("stock"),
            todo=say("name a near relative"),
        )
    found = meter_moisture(
        list(readings),
        kind=meter,
        wood_temperature_c=wood_temperature_c,
        species_correction=species_correction,
        set_gravity=set_gravity,
        specific_gravity=None if set_gravity is None else species.specific_gravity_12,
    )
    board = BoardInAir(thickness_mm, species.specific_gravity_12, *room)
    verdicts = [
        acceptance(replace(board, diffusivity_factor=speed), home, found.mc, skin_mc, reading_sd_mc=found.sd)
        for speed in SPEEDS
    ]
    return _entry(species, thickness_mm, found, home, room, verdicts)


def _check_room(temperature_c: float, rh_percent: float) -> None:
    """InputError for what no room is, with what it may have been meant as."""
    if 0 < rh_percent <= 1:
        raise InputError(
            say("a humidity of {rh:g} % looks like a fraction", rh=rh_percent),
            where=say("room"),
            allowed=say("°C and percent, such as 20/50"),
            todo=say("write {rh:g} if that is meant", rh=100 * rh_percent),
        )
    if 45 < temperature_c <= 110:
        raise InputError(
            say("{temperature:g} °C is no room; it looks like °F", temperature=temperature_c),
            where=say("room"),
            allowed=say("{room:g} to {room2:g} °C", room=ROOM_C[0], room2=ROOM_C[1]),
            todo=say("write {temperature:.0f} if °F were meant", temperature=(temperature_c - 32) / 1.8),
        )
    within(temperature_c, phrase("room temperature"), *ROOM_C, "°C")
    within(rh_percent, phrase("room humidity"), 1.0, 100.0, "%")


def _entry(
    species: Species,
    thickness_mm: float,
    found: MoistureReading,
    home: Air,
    room: tuple[float, float],
    verdicts: Sequence[Acceptance],
) -> dict[str, Any]:
    slow, usual, quick = verdicts
    return {
        "species": species.name,
        "thickness_mm": thickness_mm,
        "moisture_percent": round(found.mc, 2),
        "moisture_sd_percent": round(found.sd, 2),
        "corrections": list(found.steps),
        "home": home.name,
        "home_mean_percent": round(usual.target_mc, 2),
        "home_range_percent": [round(v, 2) for v in usual.home_range_mc],
        "room_temperature_c": room[0],
        "room_rh_percent": room[1],
        "room_percent": round(usual.room_mc, 2),
        "ready": usual.ready,
        "doubtful": usual.doubtful,
        "reasons": list(usual.reasons),
        "days_to_wait": {
            "usual": usual.days_to_wait,
            "quickest": quick.days_to_wait,
            "slowest": slow.days_to_wait,
        },
        "notes": [*found.notes, *usual.notes],
    }


def stock_text(entry: dict[str, Any]) -> str:
    """The verdict for a terminal."""
    low, high = entry["home_range_percent"]
    lines = [
        f"{entry['species']}, {entry['thickness_mm']:g} mm: {entry['moisture_percent']:.1f} % "
        f"± {entry['moisture_sd_percent']:.1f}",
        *(f"  {step}" for step in entry["corrections"]),
        say(
            "In use ({home}): {home_mean:.1f} % on average, {low:.1f} to {high:.1f} % over the year.",
            home=word(entry["home"]),
            home_mean=entry["home_mean_percent"],
            low=low,
            high=high,
        ),
    ]
    if entry["ready"]:
        lines.append(say("Ready to work."))
    else:
        lines.append(say("Not ready: ") + "; ".join(entry["reasons"]) + ".")
        lines.append(_wait(entry))
    if entry["doubtful"]:
        lines.append(
            say("The meter's own error could turn this: take more readings, or weigh and oven-dry an offcut.")
        )
    lines += [f"  {note}" for note in entry["notes"]]
    return "\n".join(textwrap.fill(line, WIDTH, subsequent_indent="  ") for line in lines)


SOON_DAYS = 2.0  # a count of days says nothing more


def _wait(entry: dict[str, Any]) -> str:
    room = say(
        "In stick in the room it lies in ({room_temperature:g} °C, {room_rh:g} %), which brings "
        "wood to {room:.1f} %,",
        room_temperature=entry["room_temperature_c"],
        room_rh=entry["room_rh_percent"],
        room=entry["room_percent"],
    )
    usual, quick, slow = (entry["days_to_wait"][name] for name in ("usual", "quickest", "slowest"))
    if usual is None:
        return say("{room} it does not come right within two years: find drier or damper air.", room=room)
    if slow is not None and slow < SOON_DAYS:
        return say("{room} it comes right within a day or two: measure again then.", room=room)
    longest = f"{slow:.0f}" if slow is not None else say("more than 700")
    return say(
        "{room} it takes about {usual:.0f} days ({quick:.0f} to {longest}: sources differ that much) until it is "
        "within {within:g} % of the {mean:.1f} % in use, and core and skin within {even:g} % of each other.",
        room=room,
        usual=usual,
        quick=quick,
        longest=longest,
        within=WITHIN_MC,
        mean=entry["home_mean_percent"],
        even=CORE_TO_SKIN_MC,
    )
