"""Files, folders and patterns as they are typed."""

from __future__ import annotations

import os

import pytest

from workbench_pkg.batch.selecting import select


@pytest.fixture
def shop(tmp_path, monkeypatch):
    for name in (
        "a.FCStd", "b.step", "b.wood.csv", "notes.txt", "deep/c.STP", "deep/er/d.brep", "deep/er/e.BRP",
        "deep/a.FCStd1", ".hidden/x.FCStd", "deep/.y.FCStd", "empty/readme.txt", "old [1]/z.fcstd", "a-annotated.FCStd",
    ):  # fmt: skip
        path = tmp_path / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.touch()
    monkeypatch.chdir(tmp_path)
    return tmp_path


def shown(*typed, leave_out=()):
    return [one.shown for one in select(typed, leave_out) if not one.problem]


def test_a_folder_stands_for_all_models_below_it(shop):
    assert shown("deep") == ["deep/c.STP", "deep/er/d.brep", "deep/er/e.BRP"]
    assert shown(".")[:3] == ["a-annotated.FCStd", "a.FCStd", "b.step"]
    assert not [path for path in shown(".") if "hidden" in path or ".y" in path or path.endswith("FCStd1")]


def test_patterns_reach_as_deep_as_they_say(shop):
    assert shown("*.FCStd") == ["a-annotated.FCStd", "a.FCStd"]
    assert shown("**/*.st*p", "**/*.ST*P") == ["b.step", "deep/c.STP"]
    assert shown("de*") == ["deep/c.STP", "deep/er/d.brep", "deep/er/e.BRP"], (
        "a folder that fits stands for its models"
    )
    assert shown("old [1]") == ["old [1]/z.fcstd"], "a name that is there is no pattern"


def test_files_are_taken_at_their_word_and_found_ones_once(shop):
    assert shown("a.FCStd", "a.FCStd", "gone.FCStd", "notes.txt") == [
        "a.FCStd",
        "a.FCStd",
        "gone.FCStd",
        "notes.txt",
    ]
    assert shown("deep/c.STP", "deep", "./deep/*", str(shop / "deep")).count("deep/c.STP") == 1
    assert len(shown("deep", str(shop / "deep"))) == 3


def test_what_is_left_out(shop):
    assert shown(".", leave_out=["*-annotated.FCStd"])[:2] == ["a.FCStd", "b.step"]
    assert shown("deep", leave_out=["deep/er/*"]) == ["deep/c.STP"]
    assert shown("a.FCStd", leave_out=["*"]) == ["a.FCStd"], "what is named is wanted"


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("empty", "no model in this folder"),
        ("*.dwg", "no file fits"),
        ("*.txt", "none of the 1 it fits is a model"),
        ("**/*.zzz", "no file fits"),
    ],
)
def test_what_gives_no_model_says_why(shop, typed, said):
    (one,) = select([typed])
    assert one.shown == typed and one.problem.startswith(f"{typed}: ") and said in one.problem


def test_everything_left_out_is_said(shop):
    (one,) = select(["deep"], ["*"])
    assert "--leave-out" in one.problem


def test_links_in_a_circle_end(shop):
    os.symlink("..", shop / "deep" / "round", target_is_directory=True)
    assert len(shown("deep")) == 3
