"""The schedule's tables as data."""

from __future__ import annotations

from movement_core.sheet.schedule import Block, Length, without_empty


def test_columns_in_which_nothing_stands_are_left_out_and_a_nought_is_something():
    block = Block("t", ("a", "b", "c"), (("x", None, 0), ("y", None, None)))
    assert without_empty(block) == Block("t", ("a", "c"), (("x", 0), ("y", None)))
    full = Block("t", ("a",), ((Length(1.0),),))
    assert without_empty(full) == full
