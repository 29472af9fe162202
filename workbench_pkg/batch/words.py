"""What can be typed on the command line, put together from the commands. Standard library only."""

from __future__ import annotations

import argparse
import re
from collections.abc import Sequence

from workbench_pkg.batch.commands import COMMANDS
from workbench_pkg.batch.parsing import Parser, TypingError
from workbench_pkg.batch.shared_words import shared_words
from workbench_pkg.setup import project_root


def parse(arguments: Sequence[str]) -> argparse.Namespace:
    """The options typed; ``carry_out`` is the function of the command. Raises TypingError.

    Options may stand between the files; after "--" there are only files.
    """
    parser, commands = _parsers()
    for word in arguments:
        if word.startswith("--") and word.endswith("=--"):  # which argparse takes for no value at all
            raise TypingError(parser.format_usage(), f"argument {word[:-3]}: expected one argument")
    if arguments and arguments[0] in commands and "--" not in arguments:
        return commands[arguments[0]].parse_intermixed_args(list(arguments[1:]))
    return parser.parse_args(arguments)


def help_text() -> str:
    """The commands and what they are for."""
    return _parsers()[0].format_help()


def version() -> str:
    """Our own version, read rather than imported: numpy need not be there yet."""
    text = (project_root() / "movement_core" / "__init__.py").read_text(encoding="utf-8")
    found = re.search(r'^__version__ = "([^"]+)"', text, re.MULTILINE)
    return found[1] if found else "unknown"


def _parsers() -> tuple[Parser, dict[str, argparse.ArgumentParser]]:
    """The parser of all commands, and each command's own."""
    parser = Parser(
        prog="heartside",
        description="How solid-wood furniture moves through the year, read from its CAD model.",
        epilog="Figures are estimates from averages, for movement only: loads, overhead, children and stairs "
        "belong to local codes and licensed practice.",
    )
    parser.add_argument("--version", action="version", version=f"heartside {version()}")
    commands = parser.add_subparsers(title="commands", metavar="COMMAND", required=True)
    shared = shared_words()
    for command in COMMANDS:
        command.add_words(commands, shared)
    for one in commands.choices.values():
        one.usage = _usage(one)
    return parser, dict(commands.choices)


def _usage(parser: argparse.ArgumentParser) -> str:
    """What a command cannot do without; the rest stands in its help."""
    words = []
    for action in parser._actions:
        metavar = str(action.metavar or action.dest.upper())
        if not action.option_strings:
            words.append({"+": f"{metavar} …", "*": f"[{metavar} …]"}.get(str(action.nargs), metavar))
        elif action.required:
            words.append(f"{action.option_strings[-1]} {metavar}")
    return " ".join([parser.prog, *words, "[options]"])
