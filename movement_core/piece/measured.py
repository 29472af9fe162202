"""Measurements that the maker took later, and what they teach of the lots the parts were cut from.

Parts with the same ``lot`` word and the same wood learn together; a part without that word learns for itself alone.
A lot's radial and tangential coefficient are taken to differ from its species' by one factor.
"""

from __future__ import annotations

import datetime
from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace

import numpy as np

from movement_core.air.daily import DailyAir, daily_moisture, month_of_day
from movement_core.air.emc import equilibrium_moisture
from movement_core.air.year import MONTHS, Year
from movement_core.errors import HeartsideError, InputError
from movement_core.moisture.learned import LearnedLot, Observed, change_worth_measuring, learn_lot
from movement_core.piece.facts import tagged
from movement_core.piece.moistures import glued_edges
from movement_core.piece.part import Part
from movement_core.piece.solve import solve_piece
from movement_core.sources import OWN, Source
from movement_core.tables import read_headed
from movement_core.wood import board_variation
from movement_core.wording import say, word

KINDS = ("width", "thickness", "cup", "gap")
COLUMNS = ("part", "what", "value_mm", "date", "moisture_percent", "temperature_c", "rh_percent", "tool_mm")
NEEDED = COLUMNS[:4]
USUAL_TOOL_MM = 0.5  # of a rule or tape (own judgement)
# Standard deviations, own judgement but for the first: a reading of a meter, wood in step with a day's air, with none.
METER_SD, AIR_SD, COURSE_SD = 1.0, 1.5, 1.0
START_MC_SD = 0.5
START_MM = {
    "width": 0.5,
    "thickness": 0.2,
    "cup": 0.3,
    "gap": 1e3,
}  # drawn to cut; what a gap was is not known
RADIUS_CV = 0.1
FINER_TOOLS_MM = (0.2, 0.1, 0.05, 0.02)  # steel rule with a lens, calipers, micrometer (own judgement)
MOST_READINGS = 12  # more of them nobody takes (own judgement)
SLIPS = ("width", "thickness")  # whose size when it was made is known
# A reading is a slip where it is off by SLIP times what SWING_MC, more than a year's half swing indoors, the making
# and the tool explain (own judgement).
SLIP, SWING_MC = 3.0, 6.0


@dataclass(frozen=True)
class Measurement:
    """One reading of a part on a day. Its moisture is known by meter, else by the air, else from the year.

    Parameters
    ----------
    part : its name. what : one of ``KINDS``. date : the day of the reading.
    value_mm : what was read, mm; a cup is above 0 where it is a crown; a gap stands beside the part's edge in an
        opening that keeps its size.
    moisture_percent : of a meter, 0 to 30. temperature_c, rh_percent : of the air, °C and percent.
    tool_mm : doubt of the tool, a standard deviation, mm.

    Raises
    ------
    InputError : an unknown ``what``, or a value out of its range, naming it.

    >>> Measurement("panel", "width", 401.5, datetime.date(2026, 2, 1), moisture_percent=7.0).tool_mm
    0.5
    """

    part: str
    what: str
    value_mm: float
    date: datetime.date
    moisture_percent: float | None = None
    temperature_c: float | None = None
    rh_percent: float | None = None
    tool_mm: float = USUAL_TOOL_MM

    def __post_init__(self) -> None:
        where = say("measurement of {part!r}", part=self.part)
        if self.what not in KINDS:
            raise InputError(
                say("{what!r} is nothing to measure", what=self.what), where=where, allowed=", ".join(KINDS)
            )
        ranges = (("value_mm", -1e4, 1e5), ("moisture_percent", 0, 30), ("rh_percent", 0, 100),
                  ("temperature_c", -20, 60), ("tool_mm", 0.01, 20))  # fmt: skip
        for name, low, high in ranges:
            value = getattr(self, name)
            if value is not None and not low <= value <= high:
                raise InputError(
                    say("{name} is {value:g}", name=name, value=value),
                    where=where,
                    allowed=say("{low:g} to {high:g}", low=low, high=high),
                )


@dataclass(frozen=True)
class LearnedParts:
    """Parts with what was learned in their wood; ``lots``: name → what was learned; ``told``: for the maker."""

    parts: tuple[Part, ...]
    lots: dict[str, LearnedLot]
    told: tuple[str, ...]
    problems: tuple[str, ...]


def measurements_from_table(text: str, name: str) -> tuple[tuple[Measurement, ...], tuple[str, ...]]:
    """Measurements from CSV text with the columns ``COLUMNS`` (the last four may be empty or absent).

    Parameters
    ----------
    text : the table with its heading. name : what it is called in messages.

    Returns
    -------
    The measurements, and the problems of single rows.

    Raises
    ------
    InputError : the heading lacks a column.

    >>> found, problems = measurements_from_table("part,what,value_mm,date\\npanel,width,401.5,2026-02-01", "panel.csv")
    >>> found[0].value_mm, problems
    (401.5, ())
    """
    columns, rows = read_headed(text, name, NEEDED, COLUMNS)
    found, problems = [], []
    for line, cells in rows:
        row = dict(zip(columns, (cell.strip() for cell in cells)))
        if any(row.values()):
            try:
                found.append(_from_row(row))
            except InputError as error:
                problems.append(say("{name}, line {line}: {error}", name=name, line=line, error=error))
    return tuple(found), tuple(problems)


def _from_row(row: dict[str, str]) -> Measurement:
    def number(name: str) -> float | None:
        try:
            return float(row[name].replace(",", ".")) if row.get(name) else None
        except ValueError:
            raise InputError(
                say("{cell!r} is not a number", cell=row[name]), where=say("column {name}", name=name)
            ) from None

    value, tool = number("value_mm"), number("tool_mm")
    if value is None:
        raise InputError(say("value_mm is empty"), todo=say("write what was read, in mm"))
    optional = {name: number(name) for name in COLUMNS[4:7]}
    return Measurement(
        row.get("part", ""),
        row.get("what", "").lower(),
        value,
        _date(row.get("date", ""), "date"),
        tool_mm=USUAL_TOOL_MM if tool is None else tool,
        **optional,
    )


def _date(cell: str, column: str) -> datetime.date:
    try:
        return datetime.date.fromisoformat(cell)
    except ValueError:
        raise InputError(
            say("{text!r} is no date", text=cell),
            where=say("column {name}", name=column),
            allowed=say("YYYY-MM-DD"),
        ) from None


def learn_from(parts: Sequence[Part], measured: Sequence[Measurement], air: Year | DailyAir) -> LearnedParts:
    """What the measurements say of the parts' lots: their woods replaced where enough was learned.

    Parameters
    ----------
    parts : of one piece, as ``movement_core.piece.part.parts_of`` makes them of its solids.
    measured : readings of these parts. air : around the piece; it gives the moisture where nobody measured it.

    Returns
    -------
    ``LearnedParts``; what cannot be used is no error but a text in ``problems``.

    Raises
    ------
    InputError : a reading whose doubt cannot be, see ``learn_lot``.

    >>> shelf = Measurement("shelf", "width", 250, datetime.date(2026, 2, 1))
    >>> learn_from([], [shelf], Year("shop", (20,) * 12, (50,) * 12, "own assumption")).problems[0][:52]
    "measurement of 'shelf' on 2026-02-01: there is no su"
    """
    problems: list[str] = []
    covered = glued_edges(parts)
    groups: dict[tuple[str, str], list[Observed]] = {}
    for one in measured:
        alike = [part for part in parts if part.name == one.part]
        try:
            if len(alike) != 1:
                why = (
                    say("there is no such part")
                    if not alike
                    else say("{count} parts have that name", count=len(alike))
                )
                raise InputError(why, todo=say("name one part of the model"))
            observed = _observed(alike[0], one, air, covered)
            groups.setdefault(_lot_of(alike[0]), []).append(observed)
        except HeartsideError as error:
            problems.append(
                say("measurement of {part!r} on {date}: {error}", part=one.part, date=one.date, error=error)
            )
    told: list[str] = []
    lots: dict[str, LearnedLot] = {}
    result = list(parts)
    for key, seen in groups.items():
        members = [i for i, part in enumerate(parts) if _lot_of(part) == key]
        first = parts[members[0]]
        species = first.species.value
        assert species is not None  # _observed has looked
        lot = learn_lot(seen, board_variation(species, first.figure.value or "plain"))
        lots[key[0]] = lot
        told += _told(key[0], lot, seen, air, first)
        if not lot.tells:
            continue
        count = len(lot.used)
        basis = (
            say("learned from one measurement")
            if count == 1
            else say("learned from {n} measurements", n=count)
        )
        wood = species.with_coefficients(
            species.radial_coefficient * lot.factor, species.tangential_coefficient * lot.factor
        )
        own = {
            **wood.sources,
            **{f"{way}_coefficient": Source(basis, "", OWN) for way in ("radial", "tangential")},
        }
        wood = replace(wood, variation=lot.sd / lot.factor, sources=own, basis=basis)
        for i in members:
            known = say(
                "{basis}: {factor:.2f} x the table's, likely within {sd:.0f} %",
                basis=basis,
                factor=lot.factor,
                sd=100 * lot.sd / lot.factor,
            )
            reason = f"{parts[i].species.reason}; {known}"
            result[i] = replace(parts[i], species=tagged(wood, reason))
    return LearnedParts(tuple(result), lots, tuple(told), tuple(problems))


def _lot_of(part: Part) -> tuple[str, str]:
    wood = part.species.value.name if part.species.value else ""
    return (say("lot {lot}", lot=part.lot), wood) if part.lot else (part.name, part.key)


def _observed(part: Part, one: Measurement, air: Year | DailyAir, covered: Collection[str]) -> Observed:
    if part.species.value is None or part.species.value.kind != "wood" or part.missing:
        lacks = ", ".join(part.missing) or "solid wood"
        raise InputError(
            say("nothing can be learned: not known or not so: {lacks}", lacks=lacks), todo=say("tag the part")
        )
    here = replace(part, kept=None)
    moisture, sd = _moisture(here, one, air, covered)

    def figure(mc: float) -> tuple[float, float]:
        solved = solve_piece([here], air, one.date, mc, covered).parts[0]
        course = {
            "width": solved.width,
            "gap": solved.width,
            "thickness": solved.thickness,
            "cup": solved.cup,
        }[one.what]
        value = None if course is None else course.today.single
        if course is None or value is None:
            raise InputError(
                say("its {what} is known as a range only", what=one.what),
                todo=say("say rings, heart side and moisture"),
            )
        return value - course.as_drawn_mm, course.as_drawn_mm

    (predicted, drawn), (above, _), (below, _) = (figure(moisture + step) for step in (0.0, 0.5, -0.5))
    sign, drawn = (-1.0, 0.0) if one.what == "gap" else (1.0, drawn)
    ringed = RADIUS_CV * predicted if one.what == "cup" else 0.0
    tool = float(np.hypot(one.tool_mm, ringed))
    return Observed(sign * predicted, one.value_mm - drawn, sign * (above - below), sd, tool,
                    START_MC_SD, START_MM[one.what], f"{part.key} {one.what}")  # fmt: skip


def _moisture(
    part: Part, one: Measurement, air: Year | DailyAir, covered: Collection[str]
) -> tuple[float, float]:
    if one.moisture_percent is not None:
        return one.moisture_percent, METER_SD
    if one.temperature_c is not None and one.rh_percent is not None:
        return float(equilibrium_moisture(one.temperature_c, one.rh_percent)), AIR_SD
    course = solve_piece([part], air, one.date, None, covered).parts[0].today_mc
    if course is None:
        raise InputError(say("its moisture is not known"), todo=say("give a reading of a meter"))
    return course, COURSE_SD


def _told(
    name: str, lot: LearnedLot, observed: Sequence[Observed], air: Year | DailyAir, part: Part
) -> list[str]:
    lines = [
        say("{lot}: measurement {n} fits no lot of its wood ({read:+.1f} mm against {expected:+.1f}): left out. "
            "Suspect the reading, the species, or something that holds the part",
            lot=name, n=i + 1, read=observed[i].measured_mm, expected=observed[i].predicted_mm)
        for i in lot.outliers
    ]  # fmt: skip
    if lot.tells:
        low, high = lot.nearly_certain
        lines.append(
            say("{lot}: learned from {n} measurements: moves {factor:.2f} x the table's figure, likely "
                "{least:.2f} to {most:.2f}, nearly certain {low:.2f} to {high:.2f}; doubt {narrowed:.0f} % narrower",
                lot=name, n=len(lot.used), factor=lot.factor,
                least=lot.likely[0], most=lot.likely[1], low=low, high=high,
                narrowed=100 * lot.narrowed)
        )  # fmt: skip
    elif lot.used:
        probes = [replace(observed[i], start_sd_mm=min(observed[i].start_sd_mm, 1.0)) for i in lot.used]
        worth = min(change_worth_measuring(probe, lot.prior_sd) for probe in probes)
        days = daily_moisture(air)
        away = np.abs(days - (part.fitted_mc.value or 0.0))
        most, month = float(away.max()), say(MONTHS[int(month_of_day(int(away.argmax())))])
        lines.append(
            say("{lot}: nothing learned yet: the moisture has changed too little for its {n} measurements. "
                "Measure when it differs by {change:.1f} % from when it was fitted; "
                "it differs most in {month}, by {most:.1f} %",
                lot=name, n=len(lot.used), change=worth, month=month, most=most)
            if worth <= most
            else _out_of_reach(name, probes, lot, worth, month, most)
        )  # fmt: skip
    return lines


def _out_of_reach(
    name: str, probes: Sequence[Observed], lot: LearnedLot, worth: float, month: str, most: float
) -> str:
    """That the year's own swing is too small for such a reading, and with which tool, or how often read, it is not."""
    used = max(probe.tool_sd_mm for probe in probes)
    told = {"lot": name, "change": worth, "month": month, "most": most}
    tools = (used, *(tool for tool in FINER_TOOLS_MM if tool < used))
    for count in range(1, MOST_READINGS + 1):
        for tool in tools:
            # readings of a meter and of a tool err each by itself; what it was at the start they have in common
            often = [
                replace(probe, tool_sd_mm=tool / count**0.5, moisture_sd=probe.moisture_sd / count**0.5)
                for probe in probes
            ]
            if min(change_worth_measuring(probe, lot.prior_sd) for probe in often) <= most:
                if count == 1:
                    return say(
                        "{lot}: nothing learned yet, and with this tool it cannot be learned this year: the moisture "
                        "would have to differ by {change:.1f} % from when it was fitted; it differs most in {month}, "
                        "by {most:.1f} %. A tool exact to {tool:g} mm would do (--tool {tool:g})",
                        tool=tool, **told,
                    )  # fmt: skip
                return say(
                    "{lot}: nothing learned yet, and one such reading cannot teach it this year: the moisture would "
                    "have to differ by {change:.1f} % from when it was fitted; it differs most in {month}, by "
                    "{most:.1f} %. {count} readings then would do, each with the moisture metered anew and a tool "
                    "exact to {tool:g} mm (--tool {tool:g})",
                    tool=tool, count=count, **told,
                )  # fmt: skip
    return say(
        "{lot}: nothing learned yet, and no tool would learn it this year: the moisture would have to differ by "
        "{change:.1f} % from when it was fitted; it differs most in {month}, by {most:.1f} %",
        **told,
    )


def refuse_slip(parts: Sequence[Part], one: Measurement, air: Year | DailyAir) -> None:
    """InputError where a reading of one of the parts is so far off that no wood moves so much: a slip of the pen.

    What cannot be worked out is left to ``learn_from``, which tells it.

    >>> air = Year("shop", (20,) * 12, (50,) * 12, "own assumption")
    >>> refuse_slip([], Measurement("shelf", "width", 25, datetime.date(2026, 2, 1)), air)
    """
    if one.what not in SLIPS:
        return
    covered = glued_edges(parts)
    for part in parts:
        if part.name == one.part and part.species.value is not None and part.species.value.kind == "wood":
            try:
                here = replace(part, kept=None)
                moisture, _ = _moisture(here, one, air, covered)
                solved = solve_piece([here], air, one.date, moisture, covered).parts[0]
            except HeartsideError:
                continue
            course = solved.width if one.what == "width" else solved.thickness
            if course is not None:
                slope = part.species.value.tangential_coefficient * course.as_drawn_mm
                _check_slip(one, course.today.least, course.today.most, slope)


def _check_slip(one: Measurement, least: float, most: float, per_percent: float) -> None:
    room = SLIP * (SWING_MC * per_percent + START_MM[one.what] + one.tool_mm)
    if not least - room <= one.value_mm <= most + room:
        raise InputError(
            say("{what} {value:g} mm is not to be believed: wood does not move so far, and about {expected:.1f} mm is "
                "expected", what=word(one.what), value=one.value_mm, expected=(least + most) / 2),
            where=say("measurement of {part!r}", part=one.part),
            allowed=say("{low:.1f} to {high:.1f} mm", low=least - room, high=most + room),
            todo=say("look for a slip of the decimal point, or of the part; or draw the part as it was built"),
        )  # fmt: skip
