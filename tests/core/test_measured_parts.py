"""Measurements beside a model: read, turned into what a lot does, and put into its parts."""

from __future__ import annotations

import datetime
from dataclasses import replace

import pytest

from movement_core.air.presets import find_year
from movement_core.errors import InputError
from movement_core.piece.doubt import width_doubt
from movement_core.piece.measured import COLUMNS, Measurement, learn_from, measurements_from_table
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
