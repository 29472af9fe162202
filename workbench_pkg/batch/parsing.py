"""A parser that raises what it cannot understand, and speaks the language that is asked for. Standard library only."""

from __future__ import annotations

import argparse
import re
from typing import Any, NoReturn

from workbench_pkg.setup import UseError
from workbench_pkg.setup.speech import phrase, say

# What argparse says of what it does not understand; the first that fits is said in our language.
COMPLAINTS = (
    phrase("the following arguments are required: {names}"),
    phrase("unrecognized arguments: {words}"),
    phrase("one of the arguments {names} is required"),
    phrase("argument {name}: expected one argument"),
    phrase("argument {name}: expected at least one argument"),
    phrase("argument {name}: not allowed with argument {other}"),
    phrase("argument {name}: invalid choice: {value} (choose from {choices})"),
    phrase("argument {name}: invalid int value: {value}"),
    phrase("argument {name}: {what}"),
)


class TypingError(UseError):
    """What was typed cannot be understood; the text says why, ``usage`` what can be typed."""

    def __init__(self, usage: str, message: str) -> None:
        self.usage = usage
        super().__init__(message)


class Formatter(argparse.HelpFormatter):
    """The help, headed in our language."""

    def add_usage(self, usage: Any, actions: Any, groups: Any, prefix: str | None = None) -> None:
        super().add_usage(usage, actions, groups, say("usage: ") if prefix is None else prefix)


class Parser(argparse.ArgumentParser):
    """A parser whose errors are raised, so that they can be told in the form that was asked for.

    Options are not understood by their first letters: --date would be --date-order where there is no --date.
    """

    def __init__(self, **how: Any) -> None:
        super().__init__(**{"allow_abbrev": False, "formatter_class": Formatter, **how})

    def head_help(self) -> None:
        """Say what argparse itself puts into the help, once the words of all parents are in it."""
        self._positionals.title, self._optionals.title = say("positional arguments"), say("options")
        for action in self._actions:
            if action.dest == "help":
                action.help = say("show this help message and exit")

    def error(self, message: str) -> NoReturn:
        raise TypingError(self.format_usage(), complaint(message))


def complaint(message: str) -> str:
    """What argparse complains of, in our language; as it stands where it is none of those we know.

    >>> complaint("unrecognized arguments: --lenght 3")
    'unrecognized arguments: --lenght 3'
    """
    for template in COMPLAINTS:
        pattern = re.sub(r"\\{(\w+)\\}", r"(?P<\1>.+?)", re.escape(template))
        if fits := re.fullmatch(pattern, message, re.DOTALL):
            return say(template, **fits.groupdict())
    return message
