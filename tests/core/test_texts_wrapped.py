"""No text that people see escapes translation: read from the source of both packages, without importing them.

A literal given to one of our errors, or filled into a sentence, goes through ``say`` or one of its kin, unless it is
what is typed or read by a program. What is left as it stands is listed here with its reason.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
PACKAGES = ("movement_core", "workbench_pkg")
TRANSLATED = {"say", "tell", "phrase", "later", "word", "translate", "QT_TRANSLATE_NOOP"}
ARGPARSE = {"ArgumentTypeError", "NotAllowed"}
WORD = re.compile(r"[A-Za-z]{2,}")

# What stands in an error as it is: literal → why.
AS_IT_IS = {
    "diagnose": "name of a command",
    "measured": "name of a command",
    "--part": "an option",
    "date_order=": "an argument, which the command line tells as its option",
    "bare": "a word of a tag",
    "blocked": "a word of a tag",
    "wrapped": "a word of a tag",
    " mm": "a unit",
}


def trees() -> Iterator[tuple[str, ast.Module]]:
    for package in PACKAGES:
        for path in sorted((ROOT / package).rglob("*.py")):
            yield str(path.relative_to(ROOT)), ast.parse(path.read_text(encoding="utf-8"))


def errors_of(sources) -> set[str]:
    """Names of our errors: the two bases and all that inherit from them."""
    classes = {
        node.name: {getattr(base, "id", getattr(base, "attr", "")) for base in node.bases}
        for _, tree in sources
        for node in ast.walk(tree)
        if isinstance(node, ast.ClassDef)
    }
    found = {"HeartsideError", "PlainError"}
    while more := {name for name, bases in classes.items() if bases & found} - found:
        found |= more
    return found


def called(node: ast.Call) -> str:
    return node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")


def bare(node: ast.AST) -> Iterator[ast.Constant]:
    """Texts with words in them that nobody translates: not keys, nor what is compared with."""
    if isinstance(node, ast.Call) and called(node) in TRANSLATED:
        for keyword in node.keywords:
            if keyword.arg != "example":  # of what is to be typed
                yield from bare(keyword.value)
    elif isinstance(node, ast.Compare):
        pass
    elif isinstance(node, (ast.Subscript, ast.FormattedValue)):
        yield from bare(node.value)
    elif isinstance(node, ast.Call):  # what others are given are keys and names, but for what is joined
        yield from bare(node.func)
        if called(node) == "join":
            yield from (text for argument in node.args for text in bare(argument))
    elif isinstance(node, ast.Constant):
        if isinstance(node.value, str) and WORD.search(node.value):
            yield node
    else:
        for child in ast.iter_child_nodes(node):
            yield from bare(child)


def unwrapped(name: str, tree: ast.Module, errors: set[str]) -> Iterator[tuple[str, str]]:
    """(where, text) of every bare text that an error is given, or a sentence is filled with."""
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call):
            continue
        if called(node) in errors or called(node) in ARGPARSE:
            given = [*node.args, *(keyword.value for keyword in node.keywords)]
        elif called(node) in TRANSLATED:
            given = [node]
        elif called(node) in ("add_argument", "add_parser", "add_argument_group"):
            given = [k.value for k in node.keywords if k.arg in ("help", "description", "epilog", "title")]
        else:
            continue
        for text in (text for one in given for text in bare(one)):
            yield f"{name}:{text.lineno}", text.value


SOURCES = list(trees())
ERRORS = errors_of(SOURCES)


def test_our_errors_are_found():
    assert {"InputError", "FileError", "UnknownName", "SetupError", "UseError", "TypingError"} <= ERRORS


def test_every_text_of_an_error_and_in_a_sentence_can_be_translated():
    found = [one for name, tree in SOURCES for one in unwrapped(name, tree, ERRORS)]
    assert [(where, text) for where, text in found if text not in AS_IT_IS] == [], "put it into say(…)"
    gone = set(AS_IT_IS) - {text for _, text in found}
    assert not gone, "no longer needed in AS_IT_IS"


@pytest.mark.parametrize(
    "source",
    [
        'raise InputError("no such thing")',
        'raise InputError(f"no such {thing}")',
        'raise InputError(say("{a}", a=1), where="the rings")',
        'raise UseError(say("no"), todo="add it" if one else say("leave it out"))',
        'say("{way} than in use", way="damper" if mean > target else "drier")',
        'parser.add_argument("--part", help="the part")',
        'raise argparse.ArgumentTypeError("is no date")',
    ],
)
def test_a_text_that_is_forgotten_is_found(source):
    assert list(unwrapped("x.py", ast.parse(source), ERRORS))


@pytest.mark.parametrize(
    "source",
    [
        'raise InputError(say("no such {thing}", thing=job["part"]), where=name, allowed=", ".join(names))',
        'raise InputError(what, where=f"{name}, {line}", allowed="0 … 1")',
        'say("{n} boards", n=len(rows("species")))',
    ],
)
def test_what_is_translated_or_no_text_is_not_found(source):
    assert not list(unwrapped("x.py", ast.parse(source), ERRORS))
