"""What can be typed on the command line, put together from the commands. Standard library only."""

from __future__ import annotations

import argparse
import re
from collections.abc import Sequence

from workbench_pkg.batch.commands import COMMANDS
from workbench_pkg.batch.parsing import Parser, TypingError
from workbench_pkg.batch.shared_words import add_language, shared_words
from workbench_pkg.setup import project_root
from workbench_pkg.setup.speech import say


def parse(arguments: Sequence[str], language: str = "en") -> argparse.Namespace:
    """The options typed, ``language`` among them; ``carry_out`` is the function of the command. Raises TypingError.

    Options may stand between the files; after "--" there are only files.
    """
    parser, commands = _parsers(language)
    for word in arguments:
        if word.startswith("--") and word.endswith("=--"):  # which argparse takes for no value at all
            raise TypingError(
                parser.format_usage(), say("argument {name}: expected one argument", name=word[:-3])
            )
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


def _parsers(language: str = "en") -> tuple[Parser, dict[str, argparse.ArgumentParser]]:
    """The parser of all commands, and each command's own."""
    parser = Parser(
        prog="heartside",
        description=say("How solid-wood furniture moves through the year, read from its CAD model."),
        epilog=say(
            "Figures are estimates from averages, for movement only: loads, overhead, children and stairs belong to"
            " local codes and licensed practice."
        ),
    )
    parser.add_argument(
        "--version",
        action="version",
        version=f"heartside {version()}",
        help=say("show program's version number and exit"),
    )
    add_language(parser, language)
    commands = parser.add_subparsers(title=say("commands"), metavar="COMMAND", required=True)
    shared = shared_words(language)
    for command in COMMANDS:
        command.add_words(commands, shared)
    parser.head_help()
    for one in commands.choices.values():
        one.usage = _usage(one)
        one.head_help()
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
    return " ".join([parser.prog, *words, say("[options]")])
