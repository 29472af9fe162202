"""The baseline, and two reports held against each other. The reports are made up."""

from __future__ import annotations

import copy
import json
import random

import pytest

from workbench_pkg.batch import cli
from workbench_pkg.batch.comparing import Tolerance, compare
from workbench_pkg.batch.known import Known, read_known
from workbench_pkg.setup import UseError


def finding(one, severity="seen", **figures):
    return {"id": one, "check": "gap", "severity": severity, "parts": ["Door"], "keys": ["Door"], "message": "m",
            "remedy": "r", "month": None, "figures": figures}  # fmt: skip


def part(name, **sizes):
    return {"name": name, "key": name, "today_mm": 100.0, "driest_mm": 99.0, "wettest_mm": 101.0, **sizes}


def entry(path="a.FCStd", findings=(), parts=(), errors=(), year="museum"):
    return {"path": path, "year": {"name": year}, "today": {"date": "2026-01-01"}, "parts": list(parts),
            "findings": list(findings), "errors": [{"message": one, "part": ""} for one in errors]}  # fmt: skip


def report(*entries):
    return {"schema": "heartside-check-1", "files": list(entries), "errors": []}


def only(old, new, percent=1.0):
    (model,) = compare(report(old), report(new), Tolerance(percent))
    return model


# ---- known findings -----------------------------------------------------------------------------------------


def test_known_findings_are_named_from_where_their_file_lies(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "shop" / "old").mkdir(parents=True)
    known = Known(tmp_path / "shop" / "known.json")
    known.note("shop/old/a.FCStd", [finding("x", "jams"), finding("y")])
    known.note("shop/b.FCStd", [])
    known.write(replace=False)
    assert json.loads(known.path.read_text(encoding="utf-8"))["models"] == {
        "old/a.FCStd": {"x": "jams", "y": "seen"}
    }
    (tmp_path / "shop").rename(tmp_path / "moved")
    again = read_known(tmp_path / "moved" / "known.json")
    assert again.of("moved/old/a.FCStd") == {"x": "jams", "y": "seen"} and again.of("moved/b.FCStd") == {}
    assert again.gone("moved/old/a.FCStd", [finding("y")]) == 1
    with pytest.raises(FileExistsError):
        again.write(replace=False)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "not JSON"),
        ('{"schema":\n"x",}', "line 2"),
        ("[]", "no known findings"),
        ('{"schema": "heartside-known-1", "models": {"a": 3}}', "no known findings"),
        ('{"schema": "heartside-known-1", "models": {"a": {"b": 3}}}', "no known findings"),
        ("[" * 100_000, "not JSON"),
    ],
)
def test_what_is_no_baseline(tmp_path, text, said):
    path = tmp_path / "known.json"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(UseError, match=said) as error:
        read_known(path)
    assert error.value.todo
    with pytest.raises(UseError, match="cannot be read"):
        read_known(tmp_path / "gone.json")


# ---- compare ------------------------------------------------------------------------------------------------


def test_findings_are_new_gone_or_changed():
    old = entry(
        findings=[finding("stays", least_mm=1.0), finding("goes"), finding("grows", "seen", least_mm=1.0)]
    )
    new = entry(
        findings=[
            finding("grows", "breaks", least_mm=2.0),
            finding("stays", least_mm=1.004),
            finding("comes"),
        ]
    )
    model = only(old, new)
    assert [one["id"] for one in model["new"]] == ["comes"] and [one["id"] for one in model["gone"]] == [
        "goes"
    ]
    (change,) = model["changed"]
    assert change["id"] == "grows" and change["changes"] == {
        "severity": ["seen", "breaks"],
        "least_mm": [1.0, 2.0],
    }


@pytest.mark.parametrize(
    ("one", "other", "percent", "same"),
    [
        (100.0, 100.9, 1.0, True),
        (100.0, 101.2, 1.0, False),
        (0.0, 0.05, 0.0, True),
        (0.0, 0.06, 0.0, False),
        (-10.0, 10.0, 50.0, False),
        (None, None, 1.0, True),
        (None, 0.0, 1.0, False),
    ],
)
def test_how_far_figures_may_lie_apart(one, other, percent, same):
    assert Tolerance(percent).is_same(one, other) is Tolerance(percent).is_same(other, one) is same


def test_parts_are_compared_too():
    old = entry(parts=[part("Shelf"), part("Rail"), part("Leg", today_mm=None)])
    new = entry(
        parts=[part("Shelf", wettest_mm=104.0), part("Leg", today_mm=None), part("Door")], year="Oslo"
    )
    model = only(old, new)
    assert {one["name"]: one["state"] for one in model["parts"]} == {
        "Door": "new",
        "Rail": "gone",
        "Shelf": "both",
    }
    assert model["settings"] == {"year": ["museum", "Oslo"]}


def test_nothing_changes_between_a_report_and_itself_in_another_order():
    some = random.Random(4)
    findings = [finding(f"f{i}", some.choice(["seen", "jams"]), least_mm=some.random()) for i in range(30)]
    whole = report(*(entry(f"{i}.FCStd", findings, [part(f"p{i}")]) for i in range(9)))
    mixed = copy.deepcopy(whole)
    some.shuffle(mixed["files"])
    for one in mixed["files"]:
        some.shuffle(one["findings"])
    for model in compare(whole, mixed, Tolerance(0)):
        assert not any(model[name] for name in ("new", "gone", "changed", "parts", "errors", "settings"))


def test_models_that_moved_are_found_by_their_names():
    old = report(entry("x/a.FCStd", [finding("f")]), entry("x/b.FCStd"), entry("x/c.FCStd"))
    new = report(entry("y/a.FCStd", [finding("f")]), entry("x/b.FCStd"), entry("y/d.FCStd"))
    states = {model["path"]: (model["state"], model["old_path"]) for model in compare(old, new, Tolerance(1))}
    assert states == {
        "y/a.FCStd": ("both", "x/a.FCStd"), "x/b.FCStd": ("both", "x/b.FCStd"),
        "y/d.FCStd": ("new", None), "x/c.FCStd": ("gone", "x/c.FCStd"),
    }  # fmt: skip
    assert only(entry("one.FCStd"), entry("two.FCStd"))["state"] == "both"


def run(capsys, *arguments):
    code = cli.run(["compare", *map(str, arguments)])
    return code, capsys.readouterr()


def test_the_command(tmp_path, capsys):
    old, new, lines = tmp_path / "old.json", tmp_path / "new.json", tmp_path / "new.jsonl"
    before, after = (
        entry(findings=[finding("goes")]),
        entry(findings=[finding("comes\x1b", "jams", least_mm=0.5)]),
    )
    old.write_text(json.dumps(report(before)), encoding="utf-8")
    new.write_text(json.dumps(report(after)), encoding="utf-8")
    lines.write_text(json.dumps({"schema": "heartside-check-line-1", **after}) + "\n", encoding="utf-8")
    code, told = run(capsys, old, new)
    assert code == 1 and "new      [jams] Door" in told.out and "1 new, 1 gone" in told.out
    assert run(capsys, old, lines)[0] == 1 and run(capsys, new, new)[0] == 0 and run(capsys, new, old)[0] == 1
    code, told = run(capsys, old, new, "--format", "json")
    shown = json.loads(told.out)
    assert shown["schema"] == "heartside-compare-1" and shown["models"][0]["new"][0]["severity"] == "jams"
    new.write_text(json.dumps(report(entry(errors=["a.FCStd: it is empty"]))), encoding="utf-8")
    code, told = run(capsys, old, new)
    assert code == 2 and "it is empty" in told.out and "gone  " not in told.out, (
        "what was not checked is not gone"
    )


def test_a_graver_finding_counts_as_new(tmp_path, capsys):
    paths = []
    for severity in ("seen", "breaks"):
        paths.append(tmp_path / f"{severity}.json")
        paths[-1].write_text(json.dumps(report(entry(findings=[finding("f", severity)]))), encoding="utf-8")
    assert run(capsys, *paths)[0] == 1 and run(capsys, *reversed(paths))[0] == 0


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "line 1"),
        ('{"schema": "heartside-check-1",\n "files": [}', "line 2"),
        ("{}", "no report"),
        ("3", "no report"),
        ('{"schema": "heartside-check-1", "files": [3]}', "no report"),
        ('{"schema": "heartside-hold-1", "files": []}', "no report"),
        (json.dumps(report(entry(findings=[{**finding("x"), "figures": {"a": "b"}}]))), "no report"),
        (json.dumps(report(entry(findings=[{k: v for k, v in finding("x").items() if k != "id"}]))), "older"),
        ("[" * 100_000, "JSON"),
        ("\xff", "UTF-8"),
    ],
)
def test_what_is_no_report(tmp_path, capsys, text, said):
    good, bad = tmp_path / "good.json", tmp_path / "bad.json"
    good.write_text(json.dumps(report(entry())), encoding="utf-8")
    bad.write_bytes(text.encode("latin-1"))
    code, told = run(capsys, good, bad)
    assert code == 2 and said in told.err and "Traceback" not in told.err and told.err.count("\n") == 1
    code, told = run(capsys, tmp_path / "gone.json", good, "--format", "json")
    assert code == 2 and "gone.json" in json.loads(told.out)["errors"][0]["message"]


def test_two_different_models_are_taken_for_that(tmp_path, capsys):
    """Two reports of one model each are paired whatever they are called: most names differing, it asks."""
    table, chest = [part(f"Top {i}") for i in range(4)], [part(f"Lid {i}") for i in range(5)]
    paths = []
    for name, parts in (
        ("old", table),
        ("new", [*chest, part("Top 0")]),
        ("near", [*table[:3], part("New")]),
    ):
        paths.append(tmp_path / f"{name}.json")
        paths[-1].write_text(json.dumps(report(entry(parts=parts))), encoding="utf-8")
    cli.run(["compare", str(paths[0]), str(paths[1])])
    assert "1 of 4 part names are in both reports: are these two different models?" in capsys.readouterr().out
    cli.run(["compare", str(paths[0]), str(paths[2])])
    assert "different models" not in capsys.readouterr().out
