"""An arrangement study as plain data and as text."""

from __future__ import annotations

import textwrap
from collections.abc import Mapping, Sequence
from typing import Any

from movement_core.section.arrangement import Arrangement, Season, Study
from movement_core.sheet.text import WIDTH, printable

MOST_SHOWN = 12
MESSAGE = (
    "Choose by looks. What a layout goes further from flat is what joinery has to hold, while letting the top move; "
    "'hold' works that out."
)


def study_entry(name: str, boards: Sequence[str], study: Study, keys: Sequence[str] = ()) -> dict[str, Any]:
    """The study of one panel as plain data: the layouts from best looks to flattest, and the maker's own.

    Boards are numbered from 1 in the order in which they are drawn; ``keys`` name them for good in the document.
    """
    listed = [*study.front]
    own = _layout(study.own, boards)
    entries = [_layout(layout, boards) for layout in listed]
    return {
        "panel": name,
        "boards": [
            {"board": i + 1, "name": name, "key": keys[i] if keys else None} for i, name in enumerate(boards)
        ],
        "moisture_change_driest_percent": round(study.own.driest.mc_change, 2),
        "moisture_change_wettest_percent": round(study.own.wettest.mc_change, 2),
        "as_drawn": own,
        "layouts": entries,
        "tried": study.tried,
        "certainty": study.guarantee,
    }


def _layout(layout: Arrangement, boards: Sequence[str]) -> dict[str, Any]:
    return {
        "boards": [
            {"board": i + 1, "name": boards[i], "over": over, "turned": turned}
            for i, over, turned in zip(layout.order, layout.over, layout.turned)
        ],
        "looks": round(layout.looks, 3),
        "departure_mm": round(layout.departure_mm, 3),
        "price_mm": round(layout.price_mm, 3),
        "driest": _season(layout.driest),
        "wettest": _season(layout.wettest),
    }


def _season(season: Season) -> dict[str, Any]:
    return {"way": season.way, "departure_mm": round(season.departure_mm, 3)}


def study_text(entry: Mapping[str, Any]) -> str:
    """The study for a terminal: one line a layout."""
    lines = [
        f"{printable(entry['panel'])}: {len(entry['boards'])} boards, "
        f"{entry['moisture_change_driest_percent']:+.1f} % at the driest and "
        f"{entry['moisture_change_wettest_percent']:+.1f} % at the wettest since they were made flat.",
        f"Boards are numbered as drawn: 1 is {printable(entry['boards'][0]['name'])}, {len(entry['boards'])} is "
        f"{printable(entry['boards'][-1]['name'])}. ^ lies as drawn, v is turned over, t is turned end for end.",
        "",
        f"  {'layout':{_room(entry)}}  looks  from flat  extra  driest         wettest",
    ]
    lines.append(_line("as drawn  ", entry["as_drawn"], entry))
    shown = entry["layouts"][:MOST_SHOWN]
    for place, layout in enumerate(shown):
        rank = _RANKS["flattest" if place == len(shown) - 1 else "best" if place == 0 else "between"]
        lines.append(_line(rank, layout, entry))
    if len(entry["layouts"]) > MOST_SHOWN:
        lines.append(f"  … and {len(entry['layouts']) - MOST_SHOWN} more between")
    lines.append("")
    certain = (
        f"{entry['certainty'][:1].upper()}{entry['certainty'][1:]}. mm; + is a crown (centre high), - a hollow. Extra: "
        "how much further from flat than the flattest one."
    )
    lines.append(textwrap.fill(certain, WIDTH))
    if not any(layout["looks"] for layout in (entry["as_drawn"], *entry["layouts"])):
        lines.append("No board says which of its faces looks better; tag it with 'looks'.")
    lines.append(textwrap.fill(MESSAGE, WIDTH))
    return "\n".join(lines)


_RANKS = {"best": "best looks", "flattest": "flattest  ", "between": "          "}


def _room(entry: Mapping[str, Any]) -> int:
    return max(len(_letters(layout, entry)) for layout in (entry["as_drawn"], *entry["layouts"])) + 11


def _letters(layout: Mapping[str, Any], entry: Mapping[str, Any]) -> str:
    return " ".join(
        f"{board['board']}{'v' if board['over'] else '^'}{'t' if board['turned'] else ''}"
        for board in layout["boards"]
    )


def _signed(value: float) -> str:
    text = f"{value:+.2f}"
    return text[1:] if float(text) == 0 else text


def _line(rank: str, layout: Mapping[str, Any], entry: Mapping[str, Any]) -> str:
    seasons = "  ".join(
        f"{layout[name]['way']:6} {_signed(layout[name]['departure_mm']):>6}"
        for name in ("driest", "wettest")
    )
    return (
        f"  {rank + ' ' + _letters(layout, entry):{_room(entry)}}  {layout['looks']:5.1f}  "
        f"{layout['departure_mm']:9.2f}  {layout['price_mm']:5.2f}  {seasons}"
    )
