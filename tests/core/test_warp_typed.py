"""What can be typed of a warped top and of measurements, rightly and wrongly."""

from __future__ import annotations

import pytest

from movement_core.piece.warp import HEARTS, LYING
from workbench_pkg.batch.commands import diagnose, measured
from workbench_pkg.batch.parsing import TypingError
from workbench_pkg.batch.words import parse


@pytest.mark.parametrize(
    "wrong",
    [
        [],
        ["--crown", "3", "--hollow", "3"],
        ["--crown", "much"],
        ["--crown", "-3"],
        ["--crown", "3", "--lying", "roof"],
        ["--crown", "3", "--heart", "left"],
        ["--crown", "3", "--grain-slope", "3"],
        ["--crown", "3", "--twist", "-2"],
        ["--crown", "3", "--ring-turn", "200"],
    ],
)
def test_what_cannot_be_typed_is_refused(wrong):
    with pytest.raises(TypingError):
        parse(["diagnose", *wrong])


def test_a_turn_of_rings_may_have_its_sign():
    assert parse(["diagnose", "--crown", "3", "--ring-turn", "12°"]).ring_turn_deg == 12.0


def test_the_words_of_both_sides_agree():
    assert diagnose.LYING == LYING
    assert diagnose.HEARTS == HEARTS
    assert parse(["measured", "a.step"]).carry_out is measured.carry_out
