"""Numbers on the command line: with a point or a comma, with their unit or without it."""

from __future__ import annotations

import argparse

import pytest

from workbench_pkg.batch import words
from workbench_pkg.batch.parsing import TypingError

COMMANDS = words._parsers()[1]
UNITS = {"MM": "mm", "C": "°C", "RH": "%", "PERCENT": "%", "DAYS": "days", "HOURS": "h", "DEGREES": "°"}


def numbers():
    """Options that take a number that need not be whole: what they make of 2.5 is one."""
    for name, parser in COMMANDS.items():
        for action in parser._actions:
            if action.option_strings and action.type is not None:
                try:
                    value = action.type("0.5")
                except (argparse.ArgumentTypeError, ValueError):
                    continue
                if isinstance(value, float):
                    yield pytest.param(action, id=f"{name} {action.option_strings[0]}")


def test_such_options_are_found():
    assert len(list(numbers())) > 30


@pytest.mark.parametrize("action", list(numbers()))
def test_a_decimal_comma_and_the_unit_are_taken(action):
    assert action.type("0,5") == action.type(" 0.5") == 0.5
    unit = UNITS.get(action.metavar)
    if unit:
        assert action.type(f"0,5{unit}") == action.type(f"0.5 {unit}") == 0.5
    with pytest.raises(argparse.ArgumentTypeError):
        action.type("0,5 ells")


def test_a_room_too():
    (room,) = [action for action in COMMANDS["stock"]._actions if action.dest == "room"]
    assert room.type("19,5/52") == room.type("19.5 °C/52 %") == (19.5, 52.0)
    for wrong in ("20", "20/50/3", "warm/50", "/"):
        with pytest.raises(argparse.ArgumentTypeError):
            room.type(wrong)


def test_what_is_no_number_is_told_with_its_option():
    with pytest.raises(TypingError, match=r"--heating.*'warm' is no number"):
        COMMANDS["check"].parse_args(["a.FCStd", "--heating", "warm"])
