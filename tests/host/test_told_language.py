"""What the command line tells in another language, and what does not depend on it."""

from __future__ import annotations

import json

import pytest

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
