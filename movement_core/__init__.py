"""Heartside's physics and judgement: how solid-wood furniture moves with the seasons.

Python and numpy only; knows nothing of the CAD host. The examples in docstrings know every name listed here, and
numpy as ``np`` and ``datetime``.
"""

from movement_core.air.daily import DailyAir
from movement_core.air.emc import equilibrium_moisture
from movement_core.air.indoor import Rooms
from movement_core.air.places import find_place
from movement_core.air.presets import all_years, find_year
from movement_core.air.year import Year
from movement_core.moisture.learned import LearnedLot, Observed, learn_lot
from movement_core.moisture.meter import air_moisture
from movement_core.moisture.response import WoodYear, wood_year
from movement_core.piece.measured import Measurement, learn_from, measurements_from_table
from movement_core.piece.warp import Cause, Diagnosis, WarpCase, diagnose
from movement_core.section.arrangement import arrangement_study
from movement_core.section.board import Board
from movement_core.section.field import free_shape
from movement_core.section.lays import Candidate, Wishes
from movement_core.section.movement import section_movement
from movement_core.section.panel import Panel
from movement_core.section.rings import Rings
from movement_core.sheet.schemas import schema, schema_names
from movement_core.wood import Species, all_species, dimension_change, find_species

__version__ = "0.1.0"
__all__ = [
    "Board",
    "Candidate",
    "Cause",
    "DailyAir",
    "Diagnosis",
    "LearnedLot",
    "Measurement",
    "Observed",
    "Panel",
    "Rings",
    "Rooms",
    "Species",
    "WarpCase",
    "Wishes",
    "WoodYear",
    "Year",
    "air_moisture",
    "all_species",
    "all_years",
    "arrangement_study",
    "diagnose",
    "dimension_change",
    "equilibrium_moisture",
    "find_place",
    "find_species",
    "find_year",
    "free_shape",
    "learn_from",
    "learn_lot",
    "measurements_from_table",
    "schema",
    "schema_names",
    "section_movement",
    "wood_year",
]
