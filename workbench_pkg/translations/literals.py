"""Finds every text that can be translated, by reading the source of both packages. Standard library only.

``translate("Context", "text")``              a text of the window
``QT_TRANSLATE_NOOP("Context", "text")``      one that the host translates itself, such as the name of a command
``explained("…")``                      what explains a property, which the host translates when it shows it
``say("…")``, ``tell("…")``, ``phrase("…")``, ``later("…")``  a sentence of the core, in the context ``SENTENCES``

What is said from the data stands in ``data_words``, or in the columns of tables that it names; the names of checks,
such as "wide-tenon", are found where the checks are.
"""

from __future__ import annotations

import ast
import csv
import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from workbench_pkg.translations.data_words import DATA_COLUMNS, DATA_WORDS

ROOT = Path(__file__).resolve().parents[2]
PACKAGES = ("movement_core", "workbench_pkg")
CHECKS = "movement_core/checks"
_CHECK_NAME = re.compile(r'"([a-z]+(?:-[a-z]+)+)"')
SENTENCES = "HeartsideCore"
_DAY = "{day}"  # of a date, which languages write with points and in orders of their own
_SAID = ("say", "tell", "phrase", "later")
_CALLS = ("translate", "QT_TRANSLATE_NOOP")
_EXPLAINED, _PROPERTIES = "explained", "App::Property"  # in the context that the host itself asks


@dataclass(frozen=True, order=True)
class Literal:
    """A text as it stands in the source."""

    context: str
    text: str


def literals(root: Path = ROOT) -> dict[Literal, str]:
    """Every text, and the first place where it stands. Raises ValueError where a text is no literal."""
    found = {Literal(SENTENCES, word): "a word of the data" for word in DATA_WORDS}
    found |= {Literal(SENTENCES, text): where for where, text in _in_tables(root)}
    for package in PACKAGES:
        for path in sorted((root / package).rglob("*.py")):
            for literal, line in _in_file(path):
                found.setdefault(literal, f"{path.relative_to(root)}:{line}")
    for path in sorted((root / CHECKS).glob("*.py")):
        for name in _CHECK_NAME.findall(path.read_text(encoding="utf-8")):
            found.setdefault(Literal(SENTENCES, name.replace("-", " ")), str(path.relative_to(root)))
    return dict(sorted(found.items()))


def _in_tables(root: Path) -> Iterator[tuple[str, str]]:
    """Where it stands, and each text in the columns of our tables that are shown."""
    for table, columns in DATA_COLUMNS.items():
        path = root / "movement_core" / "data" / f"{table}.csv"
        if not path.exists():
            continue
        lines = [line for line in path.read_text(encoding="utf-8").splitlines() if not line.startswith("#")]
        for row in csv.DictReader(lines):
            for column, parted in columns.items():
                texts = row[column].split(parted) if parted else [row[column]]
                yield from ((f"{path.name}, {column}", text.strip()) for text in texts if text.strip())


def _in_file(path: Path) -> Iterator[tuple[Literal, int]]:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call) or not node.args:
            continue
        name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        if name in _SAID or name == _EXPLAINED:
            wanted = 1
        elif name in _CALLS and len(node.args) >= 2:
            wanted = 2
        else:
            continue
        given = [each.value for each in node.args[:wanted] if isinstance(each, ast.Constant)]
        texts = [text for text in given if isinstance(text, str)]
        if len(texts) < wanted:
            if wanted == 2 and _is_ours(node.args[0]):
                raise ValueError(f"{path}:{node.lineno}: the text is no literal, so it cannot be translated")
            continue
        if (
            not any(letter.isalpha() for letter in re.sub(r"{[^}]*}", "", texts[-1]))
            and _DAY not in texts[-1]
        ):
            continue  # figures only
        context = _PROPERTIES if name == _EXPLAINED else SENTENCES
        yield Literal(*([context, *texts] if wanted == 1 else texts)), node.lineno


def _is_ours(context: ast.expr) -> bool:
    """Whether a call with this first argument translates: others have methods of that name too."""
    return isinstance(context, ast.Constant) and str(context.value).startswith("Heartside")
