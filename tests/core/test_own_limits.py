"""A maker's own limits: within their ranges, inside where they were asked for, and nowhere else."""

from __future__ import annotations

import threading

import pytest

from movement_core.errors import InputError, UnknownName
from movement_core.piece.limits import OwnLimits, judged_by, limit, limit_ranges, limits, own_limits


def test_every_range_is_that_of_a_limit_and_holds_its_value():
    assert set(limit_ranges()) <= set(limits())
    for name, (least, most) in limit_ranges().items():
        assert least < most and least <= limits()[name].value <= most, name


def test_own_limits_count_inside_and_only_there():
    usual = limit("glued across")
    with judged_by(own_limits({"glued across": 50})):
        assert limit("glued across") == 50.0 and limit("tenon") == limits()["tenon"].value
        with judged_by(None):
            assert limit("glued across") == usual
        seen = []
        thread = threading.Thread(target=lambda: seen.append(limit("glued across")))
        thread.start()
        thread.join()
        assert seen == [usual], "another thread judges by its own"
    assert limit("glued across") == usual
    with pytest.raises(ZeroDivisionError), judged_by(own_limits({"glued across": 50})):
        raise ZeroDivisionError
    assert limit("glued across") == usual


@pytest.mark.parametrize("value", [19.9, 151, float("nan"), float("inf"), True, "60", None])
def test_a_value_beyond_its_range(value):
    with pytest.raises(InputError) as error:
        own_limits({"glued across": value})
    assert "20 to 150 mm" in error.value.allowed


def test_an_unknown_limit_names_the_nearest():
    with pytest.raises(UnknownName) as error:
        own_limits({"glued acros": 60})
    assert error.value.nearest[0] == "glued across"
    assert own_limits({}) == OwnLimits()
