"""Findings, what rules each figure, what the sheet rests on, cautions and the signature."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from movement_core.holding import cautions
from movement_core.sheet.lines import capital
from movement_core.sheet.pages.lengths import Lengths, plain
from movement_core.sheet.pages.material import Material
from movement_core.sheet.pages.model import (
    CAUTION,
    GRAVE,
    MILD,
    NOTE,
    RIGHT,
    Block,
    Column,
    Field,
    Form,
    Heading,
    Listing,
    Paragraph,
    Row,
    Table,
    Text,
    joined,
    tell,
)
from movement_core.sheet.pages.names import clean, isolated, sentence
from movement_core.sheet.pages.part_table import GRAVE_FINDINGS
from movement_core.sheet.text import without_sizes
from movement_core.wording import phrase, say, word

MOST_NUMBERS = 24
MOST_NOTED = 40

# Cause of doubt → what it means, and what measurement narrows it.
CAUSES = {
    "coefficient": (
        phrase("how far this board differs from the average of its species"),
        phrase(
            "measure the width and moisture of an offcut of the lot in two seasons, and enter its own "
            "coefficient"
        ),
    ),
    "moisture": (
        phrase("the moisture it had when it was fitted, or has today"),
        phrase(
            "meter every board when it is fitted, with the meter's species setting and the wood's "
            "temperature noted"
        ),
    ),
    "climate": (
        phrase("the air of the place, which no year repeats"),
        phrase(
            "hang a logger of temperature and humidity where the piece will stand, for a year, and "
            "give its file"
        ),
    ),
    "rings": (
        phrase("where the rings lie in the board"),
        phrase("pick three points along one ring on the end of the board, or measure where the pith was"),
    ),
}


def finding_blocks(material: Material) -> list[Block]:
    """Every finding with its remedy, the gravest first."""
    report = material.data["report"]
    heading = Heading(say("What was found"))
    blocks: list[Block] = [heading]
    rows = []
    for place, finding in enumerate(report["findings"]):
        numbers = [str(material.number[k]) for k in dict.fromkeys(finding["keys"]) if k in material.number]
        names = list(dict.fromkeys(finding["parts"]))
        parts = ", ".join(numbers) if len(names) > 3 else "; ".join(_numbered(numbers, names))
        mark = GRAVE if finding["severity"] in GRAVE_FINDINGS else MILD
        rows.append(
            Row(
                (
                    Text(f"F{place + 1}"),
                    Text(say(finding["severity"])),
                    Text(parts),
                    Text(capital(sentence(finding["message"], material.names)) + "."),
                    Text(capital(sentence(finding["remedy"], material.names)) + "."),
                    Text(say(finding["month"]) if finding["month"] else ""),
                    Text("□"),
                ),
                mark,
            )
        )
    if rows:
        columns = (
            Column(say("No"), 4),
            Column(say("Weight"), 7),
            Column(say("Parts"), 17),
            Column(say("Finding"), 33),
            Column(say("What to do"), 33),
            Column(say("Worst in"), 9),
            Column(say("Done"), 5, "centre"),
        )
        blocks.append(Table(say("The gravest first; tick what is done"), columns, tuple(rows)))
    else:
        blocks.append(Paragraph(tell("Nothing was found that would break, jam or show.")))
    if report["errors"]:
        blocks.append(Heading(say("Could not be checked"), 3))
        messages = [clean(error["message"]) for error in report["errors"]]
        blocks.append(
            Listing(tuple(Text(sentence(m, material.names)) for m in messages[:MOST_NOTED]), CAUTION)
        )
    return blocks


def _numbered(numbers: Sequence[str], names: Sequence[str]) -> list[str]:
    if len(numbers) != len(names):
        return [isolated(name) for name in names]
    return [f"{number} {isolated(name)}" for number, name in zip(numbers, names)]


def doubt_blocks(material: Material, lengths: Lengths) -> list[Block]:
    """For each cause: the parts whose figures it rules, and how far its measurement would narrow the worst of them."""
    ruled: dict[str, list[dict[str, Any]]] = {}
    for ours in material.data["parts"]:
        if ours["rules"] and ours["likely_error_mm"]:
            ruled.setdefault(ours["rules"], []).append(ours)
    if not ruled:
        return []
    rows = []
    for cause, members in sorted(
        ruled.items(), key=lambda item: -max(one["likely_error_mm"] for one in item[1])
    ):
        worst = max(members, key=lambda one: one["likely_error_mm"])
        at = ("parts", worst["number"] - 1)
        means, measure = CAUSES.get(cause, (cause, ""))
        rows.append(
            Row(
                (
                    Text(f"{capital(say(cause))}: {say(means)}"),
                    Text(_some([one["number"] for one in members])),
                    tell(
                        "{error} ({number})",
                        error=lengths.up(worst["likely_error_mm"], (*at, "likely_error_mm")),
                        number=worst["number"],
                    ),
                    tell(
                        "{error}",
                        error=lengths.up(worst["error_if_measured_mm"], (*at, "error_if_measured_mm")),
                    ),
                    Text(capital(say(measure))),
                )
            )
        )
    columns = (
        Column(say("What rules the error"), 30),
        Column(say("of parts"), 20),
        Column(say("largest ± (part), {unit}", unit=lengths.unit), 12, RIGHT),
        Column(say("± once it is known, {unit}", unit=lengths.unit), 12, RIGHT),
        Column(say("The one measurement that narrows it most"), 34),
    )
    caption = say("The cause that makes most of the likely error of each part's driest or wettest width")
    return [Heading(say("How sure the figures are")), Table(caption, columns, tuple(rows))]


def _some(numbers: Sequence[int]) -> str:
    """Numbers, runs of them as first–last."""
    runs: list[list[int]] = []
    for number in sorted(numbers):
        if runs and number == runs[-1][1] + 1:
            runs[-1][1] = number
        else:
            runs.append([number, number])
    shown = [str(a) if a == b else f"{a}–{b}" if b > a + 1 else f"{a}, {b}" for a, b in runs]
    more = say(" and {count} more runs", count=len(shown) - MOST_NUMBERS) if len(shown) > MOST_NUMBERS else ""
    return ", ".join(shown[:MOST_NUMBERS]) + more


def basis_blocks(material: Material) -> list[Block]:
    """Woods with their sources, the air, what was inferred, what is missing."""
    data, report = material.data, material.data["report"]
    rows = []
    for place, wood in enumerate(data["woods"]):
        at = ("woods", place)
        moves = wood["kind"] != "inert"
        rows.append(
            Row(
                (
                    Text(joined([wood["name"], wood["botanical"]], ", ").words),
                    tell("{c}", c=plain(wood["radial_percent_per_percent"], (*at, "radial_percent_per_percent"), 3))
                    if moves else Text(),
                    tell("{c}", c=plain(wood["tangential_percent_per_percent"],
                                        (*at, "tangential_percent_per_percent"), 3)) if moves else Text(),
                    tell("{v}", v=plain(wood["variation_percent"], (*at, "variation_percent"))) if moves else Text(),
                    Text("; ".join(wood["sources"])),
                )
            )
        )  # fmt: skip
    columns = (
        Column(say("Material"), 20),
        Column(say("radial"), 8, RIGHT, say("% of width per 1 % MC")),
        Column(say("tangential"), 8, RIGHT, say("% of width per 1 % MC")),
        Column(say("a board differs by, %"), 9, RIGHT),
        Column(say("Source"), 55),
    )
    year = report["year"]
    told = [
        tell("Air: {name}; {basis}.", name=isolated(word(year["name"])), basis=clean(year["basis"])),
        tell(
            "Moisture that air brings wood to: Wood Handbook FPL-GTR-190 (2010), equation 4-5 (read). Boards follow it "
            "late and less, by their thickness, density and finish."
        ),
        tell("The model is taken as drawn at the sizes the parts had when they were fitted."),
        *(Text(clean(note)) for note in year["notes"][:MOST_NOTED]),
        *_noted(material),
    ]
    if report["hidden"]:
        names = ", ".join(isolated(name) for name in report["hidden"][:MOST_NOTED])
        told.append(tell("Hidden in the model, and left out: {names}.", names=names))
    blocks: list[Block] = [Heading(say("What it rests on"))]
    if rows:
        blocks.append(Table(say("Materials"), columns, tuple(rows)))
    return [*blocks, Listing(tuple(told), NOTE)]


def _noted(material: Material) -> list[Text]:
    """What was inferred, and what is noted, each once with the parts it is true of."""
    told: dict[str, list[int]] = {}
    for number, entry in enumerate(material.data["report"]["parts"], 1):
        for about, fact in entry["facts"].items():
            if fact["origin"] == "inferred" and about in ("grain", "show", "rings", "fitted"):
                reason = without_sizes(fact["reason"])
                told.setdefault(say("{word} inferred: {reason}", word=word(about), reason=reason), []).append(
                    number
                )
        for about in entry["missing"]:
            told.setdefault(say("not said: {word}", word=word(about)), []).append(number)
        for note in entry["notes"]:
            told.setdefault(note, []).append(number)
    return [
        Text(f"{capital(sentence(text, material.names))}: {_some(numbers)}.")
        for text, numbers in list(told.items())[:MOST_NOTED]
    ]


def caution_blocks(material: Material) -> list[Block]:
    """What can hurt someone or a piece."""
    said: list[str] = [cautions.ESTIMATE, cautions.NOT_FOR_LOAD]
    for top in material.tops:
        said += top.entry.get("cautions", [])
    if material.data["gaps"]:
        said += cautions.FOR_A_GAP
    said += [cautions.NEVER_BY_FORCE, cautions.OUTSIDE, DUST]
    return [Heading(say("Mind")), Listing(tuple(Text(say(text)) for text in dict.fromkeys(said)), CAUTION)]


DUST = phrase(
    "Wood dust harms the lungs and some of it sensitises; oily rags can ignite by themselves; "
    "finishes have their own safety sheets."
)


def signature_blocks() -> list[Block]:
    fields = (
        Field(say("Worked by, date"), None),
        Field(say("Checked by, date"), None),
        Field(say("Moisture at delivery, %"), None),
        Field(say("Widths measured at delivery"), None),
    )
    return [Heading(say("Signed")), Form(fields, columns=2)]
