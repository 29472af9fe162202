"""Measurements beside a model: read, turned into what a lot does, and put into its parts."""

from __future__ import annotations

import datetime
import re
from dataclasses import replace

import pytest

from movement_core.air.presets import find_year
from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.piece.doubt import width_doubt
from movement_core.piece.measured import (
    COLUMNS,
    Measurement,
    learn_from,
    measurements_from_table,
    refuse_slip,
)
from movement_core.piece.part import Part, Solid, parts_of
from movement_core.piece.solve import solve_piece
from movement_core.piece.tag_sources import tags_from_text
from tests.core.solids import box

YEAR = find_year("heated cold-winter home")
DAY = datetime.date(2026, 2, 1)


def part(name: str, tag: str = "lot 7") -> Part:
    tags = tags_from_text(
        name, f"x wood{{white oak; grain x; show z; heart show; pith 0 80; built 10; {tag}}}", "label"
    )
    return parts_of([Solid(name, name, box((1200, 400, 22)), tags)])[0]


def width_at(one: Part, factor: float, mc: float) -> float:
    species = one.species.value
    assert species is not None
    lively = species.with_coefficients(
        species.radial_coefficient * factor, species.tangential_coefficient * factor
    )
    width = (
        solve_piece([replace(one, species=replace(one.species, value=lively))], YEAR, DAY, mc).parts[0].width
    )
    assert width is not None and width.today.value is not None
    return width.today.value


def reading(one: Part, factor: float, mc: float, day: datetime.date = DAY) -> Measurement:
    return Measurement(one.name, "width", width_at(one, factor, mc), day, moisture_percent=mc, tool_mm=0.1)


@pytest.mark.parametrize("factor", [0.85, 1.0, 1.2])
def test_a_lot_is_learned_by_all_its_parts_and_no_others(factor: float) -> None:
    one, two, other = part("one"), part("two"), part("other", "lot 8")
    found = learn_from((one, two, other), [reading(one, factor, mc) for mc in (4.0, 16.0, 4.5, 15.5)], YEAR)
    lot = found.lots["lot 7"]
    assert lot.factor == pytest.approx(1 + (factor - 1) * (1 - (lot.sd / lot.prior_sd) ** 2), abs=0.01)
    assert lot.tells and lot.narrowed > 0.3
    learned, sister, foreign = (one.species.value for one in found.parts)
    assert learned is sister and learned is not None and foreign is other.species.value
    assert learned.tangential_coefficient == pytest.approx(
        one.species.value.tangential_coefficient * lot.factor
    )  # type: ignore[union-attr]
    assert "learned from 4 measurements" in found.parts[1].species.reason


def test_the_doubt_of_the_year_narrows() -> None:
    one = part("one")
    learned = learn_from((one,), [reading(one, 1.0, mc) for mc in (4.0, 16.0, 4.0)], YEAR).parts[0]
    before, after = (width_doubt(solve_piece([p], YEAR, DAY).parts[0], "driest") for p in (one, learned))
    assert before is not None and after is not None
    assert after.shares["coefficient"] < before.shares["coefficient"]
    assert after.likely_mm[1] - after.likely_mm[0] < before.likely_mm[1] - before.likely_mm[0]


def test_a_change_too_small_is_refused_with_how_large_it_must_be() -> None:
    one = part("one")
    found = learn_from((one,), [reading(one, 1.2, 10.5)], YEAR)
    assert found.parts == (one,) and not found.lots["lot 7"].tells
    assert "nothing learned yet" in found.told[0] and "it differs most in" in found.told[0]


def test_a_held_part_is_an_outlier() -> None:
    one = part("one")
    stuck = Measurement("one", "width", 400.0, DAY, moisture_percent=2.0, tool_mm=0.1)
    found = learn_from((one,), [replace(stuck, value_mm=412.0)], YEAR)
    assert found.lots["lot 7"].outliers == (0,) and "left out" in found.told[0]


def test_one_gap_tells_nothing_and_two_do() -> None:
    one = part("one", "fixed centre")
    gaps = [
        Measurement("one", "gap", 5.0 - (width_at(one, 1.2, mc) - 400), DAY, mc, tool_mm=0.1)
        for mc in (4.0, 16.0)
    ]
    assert not learn_from((one,), gaps[:1], YEAR).lots["one"].tells
    assert learn_from((one,), gaps, YEAR).lots["one"].factor > 1.05


def test_a_cup_teaches_too() -> None:
    one = part("one")
    cup = solve_piece([one], YEAR, DAY, 4.0).parts[0].cup
    assert cup is not None and cup.today.value is not None
    lively = Measurement("one", "cup", cup.today.value * 1.2, DAY, 4.0, tool_mm=0.1)
    assert learn_from((one,), [lively], YEAR).lots["lot 7"].factor > 1.03


def test_the_table_reads_both_ways_of_writing_and_tells_bad_rows() -> None:
    text = "part;what;value_mm;date;moisture_percent\none;width;398,5;2026-02-01;6,5\n"
    text += "one;girth;3;2026-02-01;\none;width;;2026-02-01;\n"
    rows, problems = measurements_from_table(text, "a.measured.csv")
    assert rows == (Measurement("one", "width", 398.5, DAY, 6.5),)
    assert [problem.split(":")[0] for problem in problems] == [
        "a.measured.csv, line 3",
        "a.measured.csv, line 4",
    ]
    with pytest.raises(InputError, match="lacks a column"):
        measurements_from_table("part,width\n", "a.measured.csv")
    assert set(Measurement.__dataclass_fields__) == set(COLUMNS)


def test_a_part_that_is_not_there_is_told() -> None:
    one = part("one")
    found = learn_from((one,), [replace(reading(one, 1.0, 6.0), part="oen")], YEAR)
    assert found.parts == (one,) and "there is no such part" in found.problems[0]


def figures(told: str) -> tuple[float, float]:
    needed, most = (float(figure) for figure in re.findall(r"by ([\d.]+) %", told))
    return needed, most


def dry(rh_percent: float) -> Year:
    return Year("kiln", (40.0,) * 12, (rh_percent,) * 12, "own assumption")


def test_a_change_that_the_year_never_brings_is_not_asked_for() -> None:
    """It tells how many readings, with which tool, would do; and with these the lot is learned."""
    one = part("one")
    (told,) = learn_from((one,), [replace(reading(one, 1.0, 9.0), tool_mm=3.0)], dry(10)).told
    needed, most = figures(told)
    assert needed > most and "Measure when" not in told
    count, tool = re.search(r"(\d+) readings then .*--tool ([\d.]+)", told).groups()  # type: ignore[union-attr]
    then = replace(reading(one, 1.0, 10.0 - most), tool_mm=float(tool))
    assert learn_from((one,), [then] * int(count), dry(10)).lots["lot 7"].tells
    assert not learn_from((one,), [replace(then, tool_mm=3.0)], dry(10)).lots["lot 7"].tells


def test_a_finer_tool_that_would_do_is_named() -> None:
    """Where the moisture swings enough for one reading with calipers, and not for one with a coarse tape."""
    one = part("one")
    seen = replace(reading(one, 1.0, 9.0), tool_mm=3.0)
    (told,) = learn_from((one,), [seen], dry(5)).told
    needed, most = figures(told)
    assert needed > most and "with this tool" in told
    tool = float(re.search(r"--tool ([\d.]+)", told)[1])  # type: ignore[index]
    (finer,) = learn_from((one,), [replace(seen, tool_mm=tool)], dry(5)).told
    needed, most = figures(finer)
    assert needed <= most and "Measure when" in finer


def test_where_no_tool_would_do_it_says_so() -> None:
    one = part("one")
    seen = Measurement("one", "thickness", 22.0, DAY, moisture_percent=10.2, tool_mm=0.5)
    (told,) = learn_from((one,), [seen], YEAR).told
    assert "no tool would" in told and "Measure when" not in told


@pytest.mark.parametrize("value", [40.0, 4000.0])
def test_a_slip_of_the_decimal_point_is_refused_with_what_is_expected(value: float) -> None:
    one = part("one")
    slip = Measurement("one", "width", value, DAY, moisture_percent=8.0)
    with pytest.raises(InputError, match=r"about 39\d\.\d mm is expected.*Allowed: 3\d\d"):
        refuse_slip((one,), slip, YEAR)
    refuse_slip((one,), replace(slip, what="cup"), YEAR)
    refuse_slip((one,), replace(slip, part="another"), YEAR)
    for lively in (0.5, 1.0, 2.0):
        refuse_slip((one,), reading(one, lively, 4.0), YEAR)


def test_a_slip_is_seen_where_only_a_range_is_known() -> None:
    cut = parts_of(
        [Solid("cut", "cut", box((1200, 400, 22)),
               tags_from_text("cut", "x wood{white oak; grain x; show z; cut flat; built 10}", "label"))]
    )[0]  # fmt: skip
    with pytest.raises(InputError, match="is expected"):
        refuse_slip((cut,), Measurement("cut", "width", 40.0, DAY, moisture_percent=8.0), YEAR)
