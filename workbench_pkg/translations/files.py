"""Reads and writes the files of translations: Qt's own form, which its tools compile and translators' tools edit."""

from __future__ import annotations

import xml.etree.ElementTree as ElementTree
from collections.abc import Iterable, Mapping
from functools import lru_cache
from pathlib import Path
from xml.sax.saxutils import escape

from workbench_pkg.translations.literals import SENTENCES, Literal

FOLDER = Path(__file__).resolve().parents[1] / "resources" / "translations"
NAME = "heartside"


def languages() -> list[str]:
    """Codes of the languages there are, besides English."""
    return sorted(path.stem.removeprefix(f"{NAME}_") for path in FOLDER.glob(f"{NAME}_*.ts"))


def file_of(language: str) -> Path:
    """The file of a language by its code, such as "de"."""
    return FOLDER / f"{NAME}_{language}.ts"


def read(path: Path) -> dict[Literal, str]:
    """Translations by their text; "" where one is still to be made."""
    found = {}
    for context in ElementTree.parse(path).getroot().iter("context"):
        name = context.findtext("name") or ""
        for message in context.iter("message"):
            translation = message.find("translation")
            done = translation is not None and translation.get("type") is None
            text = (translation.text or "") if done and translation is not None else ""
            found[Literal(name, message.findtext("source") or "")] = text
    return found


def write(path: Path, language: str, texts: Iterable[Literal], translations: Mapping[Literal, str]) -> None:
    """Write a file of all texts, sorted, with what is translated of them."""
    lines = [
        '<?xml version="1.0" encoding="utf-8"?>',
        "<!DOCTYPE TS>",
        f'<TS version="2.1" language="{language}" sourcelanguage="en">',
    ]
    context = None
    for each in sorted(texts):
        if each.context != context:
            lines += ["</context>"] if context is not None else []
            lines += ["<context>", f"    <name>{escape(each.context)}</name>"]
            context = each.context
        said = translations.get(each, "")
        state = "" if said else ' type="unfinished"'
        lines += [
            "    <message>",
            f"        <source>{escape(each.text)}</source>",
            f"        <translation{state}>{escape(said)}</translation>",
            "    </message>",
        ]
    lines += ["</context>"] if context is not None else []
    lines += ["</TS>", ""]
    path.write_text("\n".join(lines), encoding="utf-8")


@lru_cache
def catalogue(language: str) -> dict[str, str]:
    """The sentences of the core in a language, for ``movement_core.wording.speaking``; without Qt.

    Raises KeyError where there is no such language.
    """
    if language not in languages():
        raise KeyError(language)
    found = read(file_of(language))
    return {each.text: said for each, said in found.items() if each.context == SENTENCES and said}
