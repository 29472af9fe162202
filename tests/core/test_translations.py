"""Translations: every text of the source is in each language's file, translated, with the same fields."""

from __future__ import annotations

import ast
import re

import pytest

from movement_core.air.presets import all_years
from movement_core.air.year import MONTHS
from movement_core.checks.finding import SEVERITIES
from movement_core.piece.contact.joints import KINDS
from movement_core.wording import fields, say, speaking
from workbench_pkg.translations import collect
from workbench_pkg.translations.data_words import DATA_WORDS
from workbench_pkg.translations.files import catalogue, file_of, languages, read, write
from workbench_pkg.translations.literals import CHECKS, ROOT, SENTENCES, Literal, literals

TEXTS = literals()
HOW = "run 'python3 -m workbench_pkg.translations.collect', translate what it lists, and run it again"


def test_there_is_another_language():
    assert "de" in languages()


@pytest.mark.parametrize("word", ["--help", "German", "pt-br", "x"])
def test_only_a_code_of_a_language_begins_one(word, capsys):
    before = languages()
    assert collect.main([word]) == 2 and "no code of a language" in capsys.readouterr().err
    assert languages() == before


def test_a_code_may_name_its_region(monkeypatch, tmp_path):
    (tmp_path / "heartside_pt_BR.ts").touch()
    monkeypatch.setattr("workbench_pkg.translations.files.FOLDER", tmp_path)
    assert languages() == ["pt_BR"]


@pytest.mark.parametrize("language", languages())
class TestLanguage:
    def test_has_every_text_and_no_other(self, language):
        known = read(file_of(language))
        missing = [f"{where}: {each.text!r}" for each, where in TEXTS.items() if each not in known]
        gone = [each.text for each in known if each not in TEXTS]
        assert not missing and not gone, HOW

    def test_has_them_translated(self, language):
        known = read(file_of(language))
        assert [each.text for each in TEXTS if each in known and not known[each]] == [], HOW

    def test_keeps_fields_and_formats(self, language):
        for each, said in read(file_of(language)).items():
            if said:
                assert fields(each.text) == fields(said), each.text
                assert said.format_map(_Anything())  # formats are whole

    def test_keeps_the_ends(self, language):
        """An ellipsis, a colon or a blank at the end means something to the eye, or to what is put together."""
        for each, said in read(file_of(language)).items():
            for end in ("…", ":", " "):
                assert not said or each.text.endswith(end) == said.endswith(end), each.text
            assert not said or each.text.startswith(" ") == said.startswith(" "), each.text

    def test_is_compiled(self, language):
        compiled = file_of(language).with_suffix(".qm")
        assert compiled.read_bytes()[:4] == b"\x3c\xb8\x64\x18", "not what Qt compiles"


class _Anything(dict):
    """A value for every field, for any format."""

    def __missing__(self, key):
        return _Value()


class _Value(float):
    def __new__(cls):
        return super().__new__(cls, 1.5)

    def __format__(self, spec):
        return format(2 if spec.endswith("d") else 1.5, spec)


def test_words_of_the_data_are_all_named():
    years = {year.name for year in all_years()}
    read_from_tables = {each.text for each in literals()}
    assert set(MONTHS) | set(SEVERITIES) | set(KINDS) <= set(DATA_WORDS)
    assert years <= read_from_tables


def figures():
    """Names of all figures that the checks give, without their units."""
    for path in sorted((ROOT / CHECKS).glob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            for key in node.keys if isinstance(node, ast.Dict) else ():
                name = getattr(key, "value", None)
                if isinstance(name, str) and re.fullmatch(r"[a-z_]+_(mm3?|n|mpa|percent|deg|days)", name):
                    yield name.rpartition("_")[0].replace("_", " ")


def test_figures_of_findings_are_all_named():
    names = set(figures())
    assert len(names) > 40
    assert names <= set(DATA_WORDS), "add it to DATA_WORDS in workbench_pkg/translations/data_words.py"


def test_sentences_of_the_core_are_said_in_german():
    with speaking(catalogue("de")):
        assert say("January") == "Januar"
        assert say("width today {size}", size="12 mm") == "Breite heute 12 mm"
        assert say("no such sentence {n}", n=1) == "no such sentence 1"
    with pytest.raises(KeyError):
        catalogue("xx")


@pytest.fixture
def source(tmp_path):
    def make(text, name="workbench_pkg/panels/one.py"):
        for package in ("movement_core", "workbench_pkg"):
            (tmp_path / package).mkdir(exist_ok=True)
        path = tmp_path / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
        return {each for each, where in literals(tmp_path).items() if "data" not in where}

    return make


def test_texts_are_found_wherever_they_are_written(source):
    found = source(
        "translate('Heartside', 'one ' 'text')\nApp.Qt.translate('Heartside', 'two')\n"
        "QT_TRANSLATE_NOOP('Heartside_Tag', 'three')\nsay('four {n}', n=1)\ntell('five')\nsay('{n} %', n=1)\n"
        "text.translate(table)\nsay(word)\n"
    )
    assert found == {
        Literal("Heartside", "one text"),
        Literal("Heartside", "two"),
        Literal("Heartside_Tag", "three"),
        Literal(SENTENCES, "four {n}"),
        Literal(SENTENCES, "five"),
    }


def test_names_of_checks_are_found(source):
    assert Literal(SENTENCES, "loose leg") in source('check="loose-leg"', "movement_core/checks/loose_leg.py")


@pytest.mark.parametrize("text", ["translate('Heartside', f'{n} boards')", "translate('Heartside', words)"])
def test_a_text_that_is_no_literal_is_refused(source, text):
    with pytest.raises(ValueError, match=r"one\.py:1: the text is no literal"):
        source(text)


def test_a_file_comes_back_as_it_was_written(tmp_path):
    path = tmp_path / "heartside_xx.ts"
    texts = {Literal("A", 'less < more & "so"'): "weniger < mehr & „so“", Literal("B", "open"): ""}
    write(path, "xx", texts, texts)
    assert read(path) == texts
    before = path.read_bytes()
    write(path, "xx", reversed(list(texts)), read(path))
    assert path.read_bytes() == before
