"""What the command line and the lists tell in German: no words of the English run stand in it.

Held against the English run as in ``test_german_whole``, without names and what is typed as it stands.
"""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest

from movement_core.air.presets import all_years, find_year
from movement_core.errors import HeartsideError
from movement_core.piece.arrange import arrange_panel
from movement_core.piece.warp import WarpCase, diagnose
from movement_core.section.board import Board
from movement_core.section.movement import section_movement
from movement_core.section.rings import Rings
from movement_core.sheet.arrangements import study_entry, study_text
from movement_core.sheet.listing import list_places, list_species, list_years
from movement_core.sheet.pages.head import day
from movement_core.sheet.stock import judge_stock, stock_text
from movement_core.sheet.warp_text import warp_text
from movement_core.wood import all_species, find_species
from movement_core.wood.size_change import moistures
from movement_core.wording import speaking
from tests.core.test_german_whole import NAMES, pairs
from tests.core.test_piece_arrange import panel_of
from workbench_pkg.batch import cli, words
from workbench_pkg.batch.forms import FORMS
from workbench_pkg.batch.tally import Tally
from workbench_pkg.setup.speech import speak
from workbench_pkg.translations.files import catalogue

# Titles of publications, files, words of the data that are names, and options.
TYPED = re.compile(
    r"findings-csv|--[\w-]+|\{[\w,-]+\}|'[^']*'|\b[A-Z]{2,}\b|heartside \w+|\.?\w+\.\w+(?:\.\w+)*"
)


@pytest.fixture(autouse=True)
def english_again():
    yield
    speak({})


def study():
    panel = panel_of((0, 60), (0, 60), (0, 60), looks=(3, 1, 2))
    return study_text(study_entry("Top", ["A", "B", "C"], arrange_panel(panel)))


def stock():
    home, oak = find_year("heated cold-winter home"), find_species("white oak")
    wet = judge_stock(oak, 27.0, [13.0], home, (20.0, 42.0), skin_mc=9.0)
    return "\n".join(stock_text(one) for one in (wet, judge_stock(oak, 27.0, [8.0], home, (12.0, 80.0))))


def warped():
    case = WarpCase(
        find_species("yellow poplar"), 1070.0, 19.0, -32.0, boards=8, flat_mc=10.0, rh_percent=30.0
    )
    return warp_text(case, diagnose(case))


def refusals():
    """Names in range errors, places and unknown names."""
    oak, told = find_species("white oak"), []
    for wrong in (
        lambda: moistures([400.0]),
        lambda: find_species("mahogny"),
        lambda: find_species("oak"),
        lambda: Board(oak, 0.001, 20.0, (0.0, 60.0), "x"),
        lambda: Board(oak, 100.0, 20.0, (0.0, float("nan")), "x"),
        lambda: Rings(angle_degrees=120.0),
        lambda: Rings(heart="up"),
        lambda: section_movement(-1.0, 20.0, Rings(angle_degrees=20.0), -0.01, -0.01),
        lambda: judge_stock(oak, 27.0, [130.0], find_year("museum"), (20.0, 42.0)),
        lambda: judge_stock(oak, 27.0, [13.0], find_year("museum"), (20.0, 420.0)),
    ):
        with pytest.raises(HeartsideError) as caught:
            wrong()
        told.append(str(caught.value))
    return "\n".join(told)


@pytest.mark.parametrize("tell", [study, stock, warped, refusals, list_years, list_places, lambda: list_species("oak")],
                         ids=["arrange", "stock", "diagnose", "errors", "years", "places", "woods"])  # fmt: skip
def test_no_english_words_are_left(tell):
    own = [species.name for species in all_species()] + [year.name for year in all_years()]
    own += [line.partition("  ")[0] for line in list_places().splitlines()]  # names of places and years
    own += [
        one.strip(" .…") for species in all_species() for one in re.split("[,;(]", species.botanical or "")
    ]
    own += [
        "US National Renewable Energy Laboratory",
        "radial tang.",
        "angle_degrees",
        "--moisture-now",
        *NAMES,
    ]
    english = tell()
    with speaking(catalogue("de")):
        german = tell()
    assert pairs([english], own) & pairs([german], own) == set()
    assert len(pairs([english], own)) > 10


def test_a_date_is_written_as_germans_write_it():
    assert day("2026-03-15") == "15 March 2026"
    with speaking(catalogue("de")):
        assert day("2026-03-15") == "15. März 2026"


def test_where_the_weather_comes_from_is_told_in_german():
    with speaking(catalogue("de")):
        told = list_places()
    assert "Klimamittelwerte" in told and "uncertain" not in told and "(recalled)" not in told


def typed(capsys, *arguments):
    try:
        cli.run(list(arguments))
    except SystemExit:  # --help
        pass
    told = capsys.readouterr()
    return TYPED.sub(" . ", told.out + told.err)


def in_both(capsys, *arguments):
    return [pairs([typed(capsys, *arguments, "--language", language)], NAMES) for language in ("en", "de")]


@pytest.mark.parametrize("command", [None, *words._parsers()[1]])
def test_help_is_german(command, capsys):
    before = [command] if command else []
    english, german = (
        pairs([typed(capsys, *before, "--language", language, "--help")], NAMES) for language in ("en", "de")
    )
    assert len(english) > 5 and english & german == set()


WRONG = (
    ("check",),
    ("check", "x", "--moisture", "77"),
    ("check", "x", "--heating", "warm"),
    ("check", "x", "--format", "rtf"),
    ("check", "x", "--columns", "depth=3"),
    ("check", "x", "--cache", "d", "--no-cache"),
    ("check", "x", "--settings", "nowhere"),
    ("check", "x", "--known", "nowhere"),
    ("check", "x", "--output", "nowhere/out"),
    ("check", "x", "--jobs", "0"),
    ("check", "x", "--language="),
    ("check", "x", "--lenght"),
    ("check", "x", "--year"),
    ("nothing",),
    ("compare", "nowhere", "nowhere"),
    ("diagnose", "--species", "oak"),
    ("stock", "oak", "--thickness", "thick", "--reading", "9"),
    ("stock", "oak", "--thickness", "27", "--reading", "9", "--room", "hot"),
    ("hold", "x", "--flatness", "99"),
    ("measured", "x", "--value", "much"),
)


@pytest.mark.parametrize("arguments", WRONG, ids=" ".join)
def test_what_was_typed_wrongly_is_told_in_german(arguments, capsys, monkeypatch, tmp_path):
    monkeypatch.setenv("FREECADCMD", "/no/such/host")
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr(cli, "ensure_host", lambda **_: "")
    english, german = in_both(capsys, *arguments)
    assert english and english & german == set()


FINDING = {
    "id": "a", "check": "gap-closes", "severity": "seen", "parts": ["Door"], "keys": ["a"], "message": "-",
    "remedy": "-", "month": "March", "figures": {"least_mm": 0.1},
}  # fmt: skip


def report(path, findings, parts=(), year="museum"):
    file = {
        "path": "a.FCStd", "year": {"name": year}, "today": {"date": "2026-01-01"}, "errors": [],
        "parts": [{"name": name, "today_mm": mm} for name, mm in parts], "findings": findings,
    }  # fmt: skip
    path.write_text(json.dumps({"schema": "heartside-check-1", "files": [file]}), encoding="utf-8")
    return str(path)


def test_a_comparison_is_german_and_its_data_stay(capsys, tmp_path):
    old = report(tmp_path / "old", [FINDING, {**FINDING, "id": "b"}], [("Leg", 10.0), ("Rail", 5.0)])
    changed = {**FINDING, "severity": "jams", "figures": {"least_mm": 5.0}}
    new = report(tmp_path / "new", [changed, {**FINDING, "id": "c"}], [("Leg", 12.0), ("Stile", 5.0)])
    cli.run(["compare", old, new, "--language", "de"])
    told = capsys.readouterr().out
    for word in ("neu", "weg", "geändert", "klemmt", "Teil", "hinzugekommen", "1 Modell, 0 unverändert"):
        assert word in told
    for word in ("new", "gone", "changed", "jams", "part", "came", "same"):
        assert not re.search(rf"\b{word}\b", told)
    cli.run(["compare", old, new, "--language", "de", "--format", "json"])
    data = json.loads(capsys.readouterr().out)["models"][0]
    assert data["state"] == "both" and data["changed"][0]["changes"]["severity"] == ["seen", "jams"]


def test_the_page_of_many_models_is_german(tmp_path):
    def page():
        with (tmp_path / "page").open("w+", encoding="utf-8") as out:
            form = FORMS["html"](out)
            tally = Tally("unknown")
            for entry in (
                {"path": "a", "parts": [], "findings": [FINDING], "errors": [],
                 "year": {"name": "museum"}, "today": {"date": "2026-01-01"}},
                {"path": "b", "parts": [], "findings": [], "errors": [{"message": "-", "part": ""}]},
            ):  # fmt: skip
                form.add(entry, {})
                tally.add(entry, {})
            form.end(tally.summary())
            out.seek(0)
            return re.sub(r"<style>.*?</style>|<[^>]*>", " . ", out.read(), flags=re.DOTALL), out.name

    english, path = page()
    speak(catalogue("de"))
    german, _ = page()
    assert '<html lang="de">' in Path(path).read_text(encoding="utf-8")
    assert pairs([english], ()) & pairs([german], ()) == set() and len(pairs([english], ())) > 20
