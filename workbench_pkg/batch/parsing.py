"""A parser that raises what it cannot understand. Standard library only."""

from __future__ import annotations

import argparse
from typing import Any, NoReturn

from workbench_pkg.setup import UseError


class TypingError(UseError):
    """What was typed cannot be understood; the text says why, ``usage`` what can be typed."""

    def __init__(self, usage: str, message: str) -> None:
        self.usage = usage
        super().__init__(message)


class Parser(argparse.ArgumentParser):
    """A parser whose errors are raised, so that they can be told in the form that was asked for.

    Options are not understood by their first letters: --date would be --date-order where there is no --date.
    """

    def __init__(self, **how: Any) -> None:
        super().__init__(**{"allow_abbrev": False, **how})

    def error(self, message: str) -> NoReturn:
        raise TypingError(self.format_usage(), message)
