"""Why a top warped: cases told by makers (trade discussion) must be put down to what those makers found."""

from __future__ import annotations

from dataclasses import replace

import pytest

from movement_core.errors import InputError
from movement_core.piece.warp import Cause, WarpCase, diagnose
from movement_core.section.board import Board
from movement_core.sources import OWN, READ
from movement_core.wood import find_species
from tests.validation.record import compared

TOLD = "trade discussion"

POPLAR, MAPLE, OAK = (find_species(name) for name in ("yellow poplar", "sugar maple", "white oak"))


def _middle(cause: Cause) -> tuple[float, float]:
    """Middle of a cause's range of cups, and half its width."""
    return (cause.least_mm + cause.most_mm) / 2, (cause.most_mm - cause.least_mm) / 2


def test_a_poplar_top_varnished_on_one_face() -> None:
    """1070 mm wide, 19 mm thick, finished on one face, 32 mm hollow (trade discussion, read)."""
    case = WarpCase(
        POPLAR, 1070, 19, -32, boards=8, flat_mc=10, rh_percent=30, finish="show bare, back varnish 3"
    )
    first = diagnose(case).causes[0]
    assert "finish" in first.name and first.share > 0.5
    name, ours, room = "hollow of a poplar top told in a trade discussion", *_middle(first)
    compared(name, TOLD, READ, -32, ours, "mm", within=room, note="ours is the middle of its range")
    ours, source = first.face_difference_mc, "own arithmetic from the same case"
    compared("difference between its faces", source, OWN, -1.5, ours, "% MC", within=0.15)
    other = diagnose(replace(case, cup_mm=32.0)).causes[0]
    assert "finish" not in other.name  # the wrong way for it


def test_a_maple_top_in_damp_air_on_one_face() -> None:
    """600 mm wide, 19 mm thick, about 25 mm after days of 90 % RH (trade discussion, read)."""
    first = diagnose(
        WarpCase(MAPLE, 600, 19, 25, boards=5, flat_mc=8, rh_percent=90, lying="bench", days=4)
    ).causes[0]
    assert "only one face" in first.name
    name, ours, room = "crown of a maple top told in a trade discussion", *_middle(first)
    compared(name, TOLD, READ, 25, ours, "mm", within=room, note="ours is the middle of its range")


def test_a_top_with_cleats_that_was_crushed() -> None:
    """Fixed cleats, crushed in the damp season, dished ever after (trade discussion, read; figures our own)."""
    held = WarpCase(
        OAK, 900, 22, -12, boards=8, heart="mixed", flat_mc=7, most_mc=14, now_mc=7, lying="cleats"
    )
    assert "compression set" in diagnose(held).causes[0].name
    never_damp = diagnose(replace(held, most_mc=8.0)).causes
    assert "compression set" not in never_damp[0].name


@pytest.mark.parametrize(("heart", "sign"), [("show", 1.0), ("back", -1.0)])
def test_rings_alone_are_found_by_the_exact_shape(heart: str, sign: float) -> None:
    board = Board(OAK, 200, 25, (0.0, sign * 60.0))
    line = board.profile(-4.0)[:, 1]
    cup = float(line[len(line) // 2])
    assert cup * sign > 0  # drying lifts the heart face's middle
    case = WarpCase(OAK, 200, 25, cup, heart=heart, pith_mm=60, flat_mc=12, now_mc=8)
    first = diagnose(case).causes[0]
    assert "rings" in first.name and first.share > 0.5
    assert first.least_mm == pytest.approx(cup, rel=0.03)


def test_equal_meter_readings_speak_against_uneven_moisture() -> None:
    case = WarpCase(
        POPLAR, 1070, 19, -32, boards=8, flat_mc=10, rh_percent=30, finish="show bare, back varnish 3"
    )
    share = {metered: next(c.share for c in diagnose(one).causes if "finish" in c.name) for metered, one in
             ((False, case), (True, replace(case, show_mc=9.5, back_mc=6.5)))}  # fmt: skip
    assert share[True] < share[False] / 3


def test_shares_add_to_one_and_fasteners_are_asked_about() -> None:
    found = diagnose(WarpCase(OAK, 500, 20, 3.0, flat_mc=8, now_mc=11, lying="steel"))
    assert sum(cause.share for cause in found.causes) == pytest.approx(1.0)
    assert "loosen the fasteners" in found.measure
    assert any("by force" in line for line in found.not_to) and any(
        "kick back" in line for line in found.not_to
    )


@pytest.mark.parametrize(
    "wrong", [{"lying": "roof"}, {"heart": "left"}, {"width_mm": float("nan")}, {"cup_mm": 900.0}]
)
def test_what_cannot_be_is_refused(wrong: dict[str, object]) -> None:
    with pytest.raises(InputError):
        replace(WarpCase(OAK, 500, 20, 3.0), **wrong)  # type: ignore[arg-type]
