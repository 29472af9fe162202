"""The table of parts: what each is, how wide through the year, where it is held and where it is free."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from movement_core.piece.contact.joints import FREE, HOLDS, NEAR, POINT, UNTOLD
from movement_core.piece.solve import SolvedPart
from movement_core.sheet.pages.lengths import Lengths, percent, plain
from movement_core.sheet.pages.material import Material
from movement_core.sheet.pages.model import (
    GRAVE,
    MILD,
    NOTE,
    RIGHT,
    Block,
    Column,
    Figure,
    Heading,
    Paragraph,
    Pointer,
    Row,
    Table,
    Text,
    joined,
    tell,
    without_empty,
)
from movement_core.sheet.pages.names import clean, isolated
from movement_core.wording import say

MOST_NUMBERS = 5  # of other parts in one cell
MOST_FLAGS = 3
NAME_EM = 60.0  # some four lines of a cell
GRAVE_FINDINGS = ("breaks", "jams")


def part_blocks(material: Material, lengths: Lengths) -> list[Block]:
    """The table of all parts, and what its words mean."""
    told = _Told(material)
    rows = tuple(_row(material, place, told, lengths) for place in range(len(material.parts)))
    width = say("width across the grain, {unit}", unit=lengths.unit)
    columns = (
        Column(say("No"), 3.6, RIGHT),
        Column(say("Part"), 16),
        Column(say("Wood, rings, face"), 17),
        Column(say("MC now, %"), 5.4, RIGHT),
        Column(say("drawn"), 7.5, RIGHT, width),
        Column(say("today"), 8.5, RIGHT, width),
        Column(say("driest"), 9, RIGHT, width),
        Column(say("wettest"), 9, RIGHT, width),
        Column(say("total"), 6, RIGHT, width),
        Column(say("±"), 5, RIGHT, width),
        Column(say("Fixed to"), 11),
        Column(say("Free on"), 11),
        Column(say("Gap today, becomes"), 12.5),
        Column(say("Flags"), 15),
    )
    caption = say(
        "Numbers are those of the pictures. G and F name lines of the tables of gaps and findings. ? is not known."
    )
    note = tell(
        "Today, driest and wettest: two figures are the ends of what is possible where rings or moisture are not said "
        "exactly. Total: from driest to wettest. ±: likely error of the driest or wettest, right two times in three; "
        "twice that is nearly certain. Fixed to, free on: other parts by number, as far as shape and tags tell; "
        "(?) where it is not known whether a joint is glued."
    )
    return [Heading(say("Parts")), without_empty(Table(caption, columns, rows)), Paragraph(note, NOTE)]


class _Told:
    """What is told of each part elsewhere on the sheet, by its key."""

    def __init__(self, material: Material) -> None:
        report = material.data["report"]
        self.joints: dict[str, list[tuple[str, str]]] = {}
        for joint in report["joints"]:
            one, other = joint["keys"]
            if joint["kind"] != NEAR:
                self.joints.setdefault(one, []).append((joint["kind"], other))
                self.joints.setdefault(other, []).append((joint["kind"], one))
        self.gaps: dict[
            str, list[tuple[int, int]]
        ] = {}  # key → (line of the table of gaps, place in the report)
        for line, place in enumerate(material.data["gaps"], 1):
            for key in report["gaps"][place]["keys"]:
                self.gaps.setdefault(key, []).append((line, place))
        self.findings: dict[str, list[int]] = {}
        for place, finding in enumerate(report["findings"]):
            for key in dict.fromkeys(finding["keys"]):
                self.findings.setdefault(key, []).append(place)


def marks(material: Material) -> dict[str, str]:
    """Key of a part → grave or mild, of those about which something was found."""
    found: dict[str, str] = {}
    for finding in material.data["report"]["findings"]:
        for key in finding["keys"]:
            grave = finding["severity"] in GRAVE_FINDINGS
            found[key] = GRAVE if grave or found.get(key) == GRAVE else MILD
    return found


def _row(material: Material, place: int, told: _Told, lengths: Lengths) -> Row:
    data = material.data
    solved, entry, at = material.parts[place], data["report"]["parts"][place], ("report", "parts", place)
    ours, extra = data["parts"][place], ("parts", place)
    severities = [data["report"]["findings"][i]["severity"] for i in told.findings.get(entry["key"], [])]
    mark = GRAVE if any(s in GRAVE_FINDINGS for s in severities) else MILD if severities else ""
    error = ours["likely_error_mm"]
    cells = (
        Text(str(ours["number"]), (Figure(str(ours["number"]), (*extra, "number")),)),
        Text(isolated(entry["name"], NAME_EM)),
        _wood(entry, solved, at),
        tell("{mc}", mc=percent(entry["moisture"]["today_percent"], (*at, "moisture", "today_percent"))),
        _drawn(entry, at, lengths),
        size(entry, at, "today", lengths),
        joined([size(entry, at, "driest", lengths), _month(entry, "driest")]),
        joined([size(entry, at, "wettest", lengths), _month(entry, "wettest")]),
        tell("{total}", total=lengths.near(ours["total_mm"], (*extra, "total_mm"))),
        tell("{error}", error=lengths.up(error, (*extra, "likely_error_mm")))
        if error is not None
        else Text(),
        _fixed(material, entry["key"], told),
        _free(material, entry["key"], told),
        _gap(data["report"], told.gaps.get(entry["key"], []), lengths),
        _flags(data["report"], told.findings.get(entry["key"], []), entry),
    )
    return Row(cells, mark)


def size(entry: Mapping[str, Any], at: Pointer, when: str, lengths: Lengths) -> Text:
    """A figure of one day: one number, or the ends of its range where they differ on paper."""
    value, spread = entry[f"{when}_mm"], entry.get(f"{when}_range_mm")
    if not spread:
        return tell("{value}", value=lengths.near(value, (*at, f"{when}_mm")))
    low, high = (lengths.near(v, (*at, f"{when}_range_mm", i)) for i, v in enumerate(spread))
    return tell("{low}", low=low) if low.shown == high.shown else tell("{low}–{high}", low=low, high=high)


def _drawn(entry: Mapping[str, Any], at: Pointer, lengths: Lengths) -> Text:
    if entry["width_mm"] is None:
        return Text("?")
    return tell("{drawn}", drawn=lengths.near(entry["width_mm"], (*at, "width_mm")))


def _month(entry: Mapping[str, Any], when: str) -> Text:
    month = entry[f"{when}_month"]
    return Text(say(month)[:3]) if month else Text()


def _wood(entry: Mapping[str, Any], solved: SolvedPart, at: Pointer) -> Text:
    cut = entry["cut"]
    angle = entry["ring_angle_deg"]
    told: list[Text | str] = [clean(entry["species"]) if entry["species"] else say("wood?")]
    if cut and angle is not None:
        word = say(cut)
        told.append(tell("{cut} {angle}°", cut=word, angle=plain(angle, (*at, "ring_angle_deg"))))
    elif entry["kind"] == "wood":
        told.append(say("rings?"))
    face = face_up(solved)
    return joined([*told, face] if face else told, ", ")


def face_up(solved: SolvedPart) -> str:
    """Which side of the tree shows; empty where rings do not tell."""
    rings = solved.part.rings.value
    if rings is None or not solved.part.moves or (rings.pith_mm is None and rings.heart is None):
        return ""
    toward = rings.pith_mm[1] > 0 if rings.pith_mm is not None else rings.heart == "show"
    return say("heart side shows") if toward else say("bark side shows")


# ---- joints ------------------------------------------------------------------------------------------------


def _fixed(material: Material, key: str, told: _Told) -> Text:
    held = [(kind, other) for kind, other in told.joints.get(key, []) if HOLDS[kind] not in (FREE, UNTOLD)]
    unsure = [(say("(?)"), other) for kind, other in told.joints.get(key, []) if HOLDS[kind] == UNTOLD]
    named = [(say("{kind} (one point)", kind=say(k)) if HOLDS[k] == POINT else say(k), o) for k, o in held]
    return _listed(material, [*named, *unsure])


def _free(material: Material, key: str, told: _Told) -> Text:
    free = [(say(kind), other) for kind, other in told.joints.get(key, []) if HOLDS[kind] == FREE]
    return _listed(material, free)


def _listed(material: Material, joints: Sequence[tuple[str, str]]) -> Text:
    """Other parts by number, by the kind of joint."""
    kinds: dict[str, list[int]] = {}
    for kind, other in joints:
        if other in material.number:
            kinds.setdefault(kind, []).append(material.number[other])
    lines = []
    for kind, numbers in kinds.items():
        numbers = sorted(set(numbers))
        shown = ", ".join(str(n) for n in numbers[:MOST_NUMBERS])
        more = f" +{len(numbers) - MOST_NUMBERS}" if len(numbers) > MOST_NUMBERS else ""
        lines.append(f"{kind} {shown}{more}")
    return Text("; ".join(lines))


def _gap(report: Mapping[str, Any], gaps: Sequence[tuple[int, int]], lengths: Lengths) -> Text:
    """The tightest of a part's working gaps."""
    if not gaps:
        return Text()
    line, place = min(gaps, key=lambda one: report["gaps"][one[1]]["becomes_least_mm"])
    gap, at = report["gaps"][place], ("report", "gaps", place)
    return tell(
        "G{line}: {leave}, becomes {least} to {most}",
        line=line,
        leave=lengths.up(gap["leave_today_mm"], (*at, "leave_today_mm")),
        least=lengths.down(gap["becomes_least_mm"], (*at, "becomes_least_mm")),
        most=lengths.up(gap["becomes_most_mm"], (*at, "becomes_most_mm")),
    )


def _flags(report: Mapping[str, Any], findings: Sequence[int], entry: Mapping[str, Any]) -> Text:
    told = [
        f"F{i + 1} {say(report['findings'][i]['check'].replace('-', ' '))}" for i in findings[:MOST_FLAGS]
    ]
    if len(findings) > MOST_FLAGS:
        told.append(say("and {count} more", count=len(findings) - MOST_FLAGS))
    figure = entry["facts"]["figure"]
    if figure["origin"] == "tagged":
        told.append(say("figured grain"))
    return Text("; ".join(told))
