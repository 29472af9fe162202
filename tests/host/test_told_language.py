"""What the command line tells in another language, and what does not depend on it."""

from __future__ import annotations

import json
import re

import pytest

from tests.core.test_german_whole import pairs
from tests.host.test_command_line import GOOD, heartside, save
from workbench_pkg.translations.files import catalogue

DAY = ("--date", "2026-03-15", "--year", "museum")


@pytest.fixture(scope="module")
def untold(tmp_path_factory):
    """A model of which something is left unsaid, and so found."""
    return save(tmp_path_factory.mktemp("language"), "untold.FCStd", GOOD, "Rail")


def report(model, *arguments):
    ran = heartside("check", model, *DAY, "--format", "json", "--no-cache", *arguments)
    return json.loads(ran.stdout)["files"][0]


def test_findings_are_told_in_german_and_keep_their_identity(untold):
    english, german = report(untold), report(untold, "--language", "de")
    assert english["findings"]
    assert [each["id"] for each in german["findings"]] == [each["id"] for each in english["findings"]]
    for ours, theirs in zip(english["findings"], german["findings"]):
        assert theirs["message"] != ours["message"]
        assert {**theirs, "message": "", "remedy": ""} == {**ours, "message": "", "remedy": ""}
    assert german["year"]["driest_month"] == english["year"]["driest_month"]
    assert any(each["message"].startswith(GERMAN_START) for each in german["findings"])


GERMAN_START = catalogue("de")["not said: {facts}"].partition("{")[0]


def test_a_report_kept_in_one_language_is_not_found_in_the_other(untold, tmp_path):
    def messages(*arguments):
        ran = heartside("check", untold, *DAY, "--format", "json", "--cache", tmp_path, *arguments)
        return [each["message"] for each in json.loads(ran.stdout)["files"][0]["findings"]]

    english = messages()
    assert messages("--language", "de") != english
    assert messages() == english


def test_a_language_that_there_is_not_is_refused(untold):
    ran = heartside("check", untold, "--language", "xx")
    assert ran.returncode == 2 and "invalid choice: 'xx'" in ran.stderr


def broken(folder, model):
    """Models that cannot be read, each for a reason of its own."""
    good = model.read_bytes()
    made = {
        "cut.FCStd": good[: len(good) // 2],
        "empty.FCStd": b"",
        "text.FCStd": b"no archive at all",
        "cut.step": b"ISO-10303-21;\nHEADER;",
        "other.brep": b"something else",
        "wrong.txt": b"x",
    }
    for name, content in made.items():
        (folder / name).write_bytes(content)
    (folder / "folder.FCStd").mkdir()
    return [folder / name for name in (*made, "folder.FCStd", "nothing.FCStd")]


def refused(model, *arguments):
    ran = heartside("check", model, "--no-cache", "--format", "json", *arguments)
    assert ran.returncode == 2
    return json.loads(ran.stdout)["files"][0]["errors"][0]["message"] if "files" in ran.stdout else ran.stdout


def test_what_cannot_be_read_is_told_in_german(untold, tmp_path):
    names = (
        "FreeCAD",
        "Document.xml",
        "ISO-10303-21",
        "END-ISO-10303-21",
        "DBRep_DrawableShape",
        str(tmp_path),
    )
    for model in broken(tmp_path, untold):
        english, german = refused(model), refused(model, "--language", "de")
        english, german = (
            re.sub(r"\(.*?\)", " . ", told) for told in (english, german)
        )  # what a library says
        assert pairs([english], names) and pairs([english], names) & pairs([german], names) == set()
        assert "Zu tun" in german or "To do" not in english


@pytest.mark.parametrize(
    "arguments",
    [
        ("--year", "Atlantis"),
        ("--year", "nowhere.csv"),
        ("--year", "Oslo", "--heating", "99"),
        ("--year", "museum", "--heating", "20"),
        ("--heating", "20"),
        ("--shop", "museum"),
        ("--columns", "date=1"),
    ],
    ids=" ".join,
)
def test_air_that_cannot_be_is_refused_in_german(untold, arguments):
    own = (str(untold), *(name for name in ("Atlantis", "nowhere.csv")))
    english, german = (refused(untold, *arguments, "--language", language) for language in ("en", "de"))
    listed = re.compile(r"(nearest|am nächsten): [^.]*\.|\w+_\w+|--[\w-]+( \w+)?")
    english, german = (pairs([listed.sub(" . ", told)], own) for told in (english, german))
    assert english and english & german == set()


def test_settings_that_cannot_be_used_are_told_in_german(untold, tmp_path):
    for text in ('{"yeer": "museum"}', '{"heating": "warm"}', "[]", '{"limits": 3}', '{"moisture": 99}'):
        settings = tmp_path / "own.json"
        settings.write_text(text, encoding="utf-8")
        english, german = (
            refused(untold, "--settings", settings, "--language", language) for language in ("en", "de")
        )
        plain = re.compile(r"\S*own\.json|\{.*\}|'[^']*'|Allowed: year.*|Zulässig: year.*")
        english, german = (
            pairs([plain.sub(" . ", told)], (str(untold), str(tmp_path))) for told in (english, german)
        )
        assert english and english & german == set()
