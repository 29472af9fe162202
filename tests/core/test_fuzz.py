"""A seeded sample of the spoilt inputs, and every one that once broke; the whole sweep is a benchmark."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.piece.contact.bodies import Body, PlanarFace
from movement_core.piece.contact.contacts import contacts_of
from tests.fuzzing import sweep

BROKE = (
    ("contacts", 97),  # a first edge without length
    ("contacts", 396),  # an edge without length in a region
    ("months", 1170),  # a cell of thousands of characters, told whole
    ("contacts", 19598),  # a facet without area
    ("logger", 26056),  # a heading of thousands of characters among what is allowed
    ("exchange", 31788),  # two ways to read quotes, doubled with each pair of them
    ("exchange", 33887),  # an entity with a number of 5,001 digits
    ("settings", 42647),  # NUL in what is told
    ("properties", 84419),  # coats of a finish as a number of 5,002 digits
)


@pytest.mark.parametrize("part", range(4))
def test_no_spoilt_input_breaks_anything(part):
    assert sweep.sweep(range(200_000 + part, 203_000, 4)) == []


@pytest.mark.parametrize(("kind", "number"), BROKE)
def test_what_once_broke_holds(kind, number, tmp_path):
    assert sweep.one(kind, number, tmp_path) == ""


def test_the_sweep_sees_a_crash_a_hang_and_a_long_message(tmp_path, monkeypatch):
    def crash():
        raise KeyError("x")

    def hang():
        while True:
            pass

    class LongError(InputError):
        def __str__(self):
            return "y" * 6000

    def talk():
        raise LongError("x")

    monkeypatch.setattr(sweep, "LIMIT_S", 0.05)
    for broken, word in ((crash, "KeyError"), (hang, "more than"), (talk, "message")):
        monkeypatch.setitem(sweep.KINDS, "odd", (lambda rng, folder, broken=broken: broken, 1))
        assert word in sweep.one("odd", 1, tmp_path)


def test_a_face_that_is_but_a_point_touches_nothing():
    point = np.zeros((4, 3))
    bodies = [Body(str(i), str(i), (PlanarFace(np.array([0.0, 0.0, 1.0]), (point,)),)) for i in range(2)]
    assert contacts_of(bodies).contacts == ()


def test_what_is_told_is_cut_to_a_readable_length():
    assert len(str(InputError("x" * 10_000, where="here"))) < 1100
