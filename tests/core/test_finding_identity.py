"""Identities of findings stay with the check and its parts."""

from __future__ import annotations

import random

from hypothesis import given
from hypothesis import strategies as st

from movement_core.checks.finding import Finding
from movement_core.sheet.identity import finding_id, finding_ids


def finding(check="gap-closes", keys=("a", "b"), parts=("Door", "Post"), **more):
    return Finding(check, more.pop("severity", "seen"), parts, keys, more.pop("message", "m"), "r", **more)


def test_sentence_severity_and_figures_do_not_matter():
    (one,) = finding_ids([finding()], "a.FCStd")
    (other,) = finding_ids(
        [finding(severity="breaks", message="x", month=3, figures={"a_mm": 2.0})], "b.FCStd"
    )
    assert one == other and one.startswith("gap-closes-")


def test_another_check_or_part_is_another_finding():
    made = finding_ids([finding(), finding("gap-too-wide"), finding(keys=("a", "c")), finding(keys=("a",))])
    assert len(set(made)) == 4


def test_a_part_of_a_document_may_be_renamed():
    assert finding_ids([finding(parts=("Door", "Post"))], "a.FCStd") == finding_ids(
        [finding(parts=("Left door", "Post"))], "a.FCStd"
    )


def test_parts_of_files_read_anew_are_known_by_name():
    for path in ("a.step", "A.STP", "x.brep", "x.brp"):
        one, other = (
            finding_ids([finding(keys=keys)], path) for keys in (("a", "b"), ("Part001", "Part002"))
        )
        assert one == other != finding_ids([finding(parts=("Gate", "Post"))], path)


def test_two_findings_on_the_same_parts_are_numbered():
    one, two, three = finding_ids([finding(), finding(message="another"), finding("other")])
    assert two == f"{one}-2" and three != one


@given(st.lists(st.text(max_size=8), max_size=6), st.randoms())
def test_the_order_of_parts_does_not_matter(parts, some: random.Random):
    mixed = [*parts, *parts[:2]]
    some.shuffle(mixed)
    assert finding_id("c", parts) == finding_id("c", mixed)
