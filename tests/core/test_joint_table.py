"""Joints that the maker confirmed in a table beside the model: read, refused row by row, matched to parts."""

from __future__ import annotations

from types import SimpleNamespace

import pytest

from movement_core.errors import InputError
from movement_core.piece.contact.joints import KINDS
from movement_core.piece.joint_table import NamedJoint, by_keys, joints_from_table, no_such_kind

KIND = sorted(KINDS)[0]
OTHER_KIND = sorted(KINDS)[1]
PARTS = [SimpleNamespace(name=name, key=f"key of {name}") for name in ("Apron", "Leg", "Top")]


def joint(part, other, kind=KIND, line=2):
    return NamedJoint(part, other, kind, f"joints.csv, line {line}")


@pytest.mark.parametrize("sign", [",", ";"])
@pytest.mark.parametrize("start", ["", "\ufeff"], ids=["plain", "marked as Unicode"])
def test_rows_are_read_with_their_lines(sign, start):
    rows = [["Kind", " part", "other "], [KIND, "Apron", " Leg "], ["", "", ""], [OTHER_KIND, "Top", "Leg"]]
    found, problems = joints_from_table(start + "\n".join(sign.join(row) for row in rows), "joints.csv")
    assert found == (joint("Apron", "Leg"), joint("Top", "Leg", OTHER_KIND, line=4))
    assert problems == ()


def test_a_bad_row_is_told_and_the_others_count():
    text = f"part,other,kind\nApron,Leg\nApron,Leg,{KIND}x\nTop,Leg,{KIND}\n"
    found, (short, unknown) = joints_from_table(text, "joints.csv")
    assert found == (joint("Top", "Leg", line=4),)
    assert short == "joints.csv, line 2: part, other and kind are all needed."
    assert unknown.startswith("joints.csv, line 3: no joint is called")
    assert unknown.endswith(f"Did you mean {KIND!r}?")


@pytest.mark.parametrize("text", ["", "part;other\nApron;Leg\n", f"Apron,Leg,{KIND}\n"])
def test_a_table_without_its_heading_is_refused(text):
    with pytest.raises(InputError, match="lacks a column"):
        joints_from_table(text, "joints.csv")


def test_a_kind_like_none_is_answered_with_all():
    said = no_such_kind("§§§")
    assert all(kind in said for kind in KINDS)
    assert "Did you mean" not in said


def test_names_become_keys():
    found, problems = by_keys([joint("Apron", "Leg"), joint("Top", "Apron", OTHER_KIND)], PARTS)
    assert found == {
        ("key of Apron", "key of Leg"): KIND,
        ("key of Top", "key of Apron"): OTHER_KIND,
    }
    assert problems == ()


def test_the_first_row_of_a_pair_counts_whichever_way_round():
    found, (problem,) = by_keys([joint("Apron", "Leg"), joint("Leg", "Apron", OTHER_KIND, line=3)], PARTS)
    assert found == {("key of Apron", "key of Leg"): KIND}
    assert problem == "joints.csv, line 3: 'Leg' and 'Apron' stand here twice; the first counts."


@pytest.mark.parametrize(("name", "near"), [("Legg", " Did you mean 'Leg'?"), ("§§§", "")])
def test_a_part_that_is_not_there_is_told_with_the_nearest(name, near):
    found, (problem,) = by_keys([joint("Apron", name)], PARTS)
    assert found == {}
    assert problem == f"joints.csv, line 2: there is no part {name!r}.{near}"
