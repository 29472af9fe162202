"""What the physics gives is frozen, and what holds arrays compares as itself: no answer changes behind a report."""

from __future__ import annotations

import dataclasses
import importlib
import pkgutil
from types import ModuleType

import numpy as np
import pytest

import movement_core.holding
import movement_core.moisture
import movement_core.section
from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.holding.anchor_plan import _aside
from movement_core.holding.capacity import choose_screw
from movement_core.holding.contact_points import contact_points
from movement_core.holding.elastic import elastic_ratios
from movement_core.holding.end_recipes import sliding_dovetail
from movement_core.holding.fasteners import find_kind, fits_travel
from movement_core.holding.fixed_anyway import if_fixed
from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.held import BeamResult, Held, _narrowest
from movement_core.holding.loose_recipes import gap_to_leave
from movement_core.holding.metal_base import metal_base
from movement_core.holding.model import Bearing, Elastic, Plate
from movement_core.holding.plan_model import Plan, Wish
from movement_core.holding.plate import default_terms
from movement_core.holding.plate_energy import strips
from movement_core.holding.rails import Rail
from movement_core.holding.springs import push_only
from movement_core.holding.travel import WidthStrain
from movement_core.moisture.acceptance import acceptance
from movement_core.moisture.block import block_year
from movement_core.moisture.compression import compression_set
from movement_core.moisture.events import BoardInAir, Event
from movement_core.moisture.exclusion import fit_film
from movement_core.moisture.finish import read_finish
from movement_core.moisture.glue import glue_wait
from movement_core.moisture.journey import built_moisture
from movement_core.moisture.learned import learn_lot
from movement_core.moisture.marching import Spell
from movement_core.moisture.meter import air_moisture
from movement_core.moisture.nonlinear import nonlinear_year
from movement_core.moisture.response import slab_transport
from movement_core.moisture.spread import between
from movement_core.moisture.transport import transport_methods
from movement_core.section.arrangement import way_of
from movement_core.section.board import Board
from movement_core.section.boxed_heart import _lines
from movement_core.section.chain import segment
from movement_core.section.elastic import CrossStiffness
from movement_core.section.laying import Judged, Laying
from movement_core.section.lays import Candidate, Wishes, check_candidates
from movement_core.section.movement import free_section
from movement_core.section.panel import Panel
from movement_core.section.rings import Rings
from movement_core.section.shapes import round_top
from movement_core.section.twist import board_twist


class Wood:
    radial_coefficient, tangential_coefficient = 0.0013, 0.0027


STEADY = Year("invented, steady", (20,) * 12, (50,) * 12, "invented for a test")
OAK = Elastic(13000.0, 1000.0, 900.0, 0.4)
PLATE = Plate(1200.0, 600.0, 20.0, OAK)
EVEN = WidthStrain.even(600, -0.01, 0.0, 0.01)
DRY = BoardInAir(20, 0.65, 20, 50, depends_on_moisture=False)


def board():
    return Board(Wood(), 100.0, 20.0, (0.0, 60.0), length_mm=900.0)


def refuse_nothing():
    with pytest.raises(InputError):
        nonlinear_year(STEADY, 0, 0.65)


# One plain use of every module, so that what is looked at has been at work.
USES = {
    "section.arrangement": lambda: way_of(np.zeros(3)),
    "section.board": board,
    "section.boxed_heart": lambda: _lines(80.0, 0.0, 1),
    "section.chain": lambda: segment(board(), -3.0, 5),
    "section.elastic": CrossStiffness,
    "section.laying": lambda: Laying.as_drawn(2),
    "section.lays": lambda: check_candidates([Candidate(board())], Wishes()),
    "section.movement": lambda: free_section(90.0, 20.0, (0.0, 60.0), -0.01, -0.02),
    "section.panel": lambda: Panel([board()]),
    "section.rings": lambda: Rings.at(0, 60),
    "section.shapes": lambda: round_top(900.0, -0.01),
    "section.twist": lambda: board_twist(board(), -3.0),
    "moisture.acceptance": lambda: acceptance(DRY, STEADY, 9.0, 9.0),
    "moisture.block": lambda: block_year(STEADY, 60, 60, 0.65),
    "moisture.compression": lambda: compression_set(0.003, 2.0),
    "moisture.events": lambda: DRY.air_mc,
    "moisture.exclusion": lambda: fit_film([50, None, None]),
    "moisture.finish": lambda: read_finish("bare"),
    "moisture.glue": lambda: glue_wait(20, 0.65, 0.0018, 20, 50),
    "moisture.journey": built_moisture,
    "moisture.learned": lambda: learn_lot([]),
    "moisture.marching": lambda: Spell(1.0, 8.0, 8.0, 1.0, 1.0),
    "moisture.meter": lambda: air_moisture(20, 50),
    "moisture.nonlinear": refuse_nothing,
    "moisture.response": lambda: slab_transport(STEADY, 20, 0.65),
    "moisture.spread": lambda: between(1, 2),
    "moisture.transport": lambda: transport_methods("emission"),
    "holding.anchor_plan": lambda: _aside(Rail("r", (0, 0), (9, 0), 2), find_kind("button")),
    "holding.capacity": lambda: choose_screw(find_kind("button"), 20.0),
    "holding.contact_points": lambda: contact_points(PLATE, [Bearing(((0, 0), (90, 0)))]),
    "holding.elastic": lambda: elastic_ratios("Oak, red"),
    "holding.end_recipes": lambda: sliding_dovetail(EVEN, 20.0),
    "holding.fasteners": lambda: fits_travel(find_kind("button"), "across", -1, 1),
    "holding.fixed_anyway": lambda: if_fixed(EVEN, 1000.0, None),
    "holding.free_curvature": lambda: FreeCurvature.even(600, 1e-4),
    "holding.held": lambda: _narrowest([(0, 0)]),
    "holding.loose_recipes": lambda: gap_to_leave(1.0, 1.0),
    "holding.metal_base": lambda: metal_base(EVEN, (0.0,), 20.0),
    "holding.model": lambda: PLATE.area_mm2,
    "holding.plan_model": lambda: Wish(1.0),
    "holding.plate": lambda: default_terms(PLATE),
    "holding.plate_energy": lambda: strips(PLATE, 4),
    "holding.rails": lambda: Rail("r", (0, 0), (9, 0), 2),
    "holding.springs": lambda: push_only(np.ones(2)),
    "holding.travel": lambda: EVEN.mean("driest"),
}


def forms(module: ModuleType):
    """The data classes that a module makes."""
    made = vars(module).values()
    return [
        one
        for one in made
        if isinstance(one, type) and dataclasses.is_dataclass(one) and one.__module__ == module.__name__
    ]


def modules_with_forms():
    for room in (movement_core.section, movement_core.moisture, movement_core.holding):
        for found in pkgutil.iter_modules(room.__path__):
            module = importlib.import_module(f"{room.__name__}.{found.name}")
            if forms(module):
                yield module.__name__.removeprefix("movement_core.")


def test_every_module_with_data_is_used_here():
    assert set(modules_with_forms()) == set(USES)


@pytest.mark.parametrize("name", list(USES))
def test_data_is_frozen_and_arrays_compare_as_themselves(name):
    """An answer does not change after it was given; two that hold arrays are not compared number by number."""
    USES[name]()
    for form in forms(importlib.import_module(f"movement_core.{name}")):
        one, other = object.__new__(form), object.__new__(form)
        with pytest.raises(dataclasses.FrozenInstanceError):
            setattr(one, dataclasses.fields(form)[0].name, None)
        if any("Array" in str(field.type) for field in dataclasses.fields(form)) or form in (
            Judged, Event, Plan, Held, BeamResult,
        ):  # fmt: skip
            assert one == one and one != other
