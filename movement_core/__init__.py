"""Heartside's physics and judgement: how solid-wood furniture moves with the seasons.

Python and numpy only; knows nothing of the CAD host.
"""

from movement_core.air.daily import DailyAir
from movement_core.air.emc import equilibrium_moisture
from movement_core.air.indoor import Rooms
from movement_core.air.places import find_place
from movement_core.air.presets import all_years, find_year
from movement_core.air.year import Year
from movement_core.moisture.response import WoodYear, wood_year
from movement_core.section.arrangement import arrangement_study
from movement_core.section.board import Board
from movement_core.section.field import free_shape
from movement_core.section.lays import Candidate, Wishes
from movement_core.section.movement import section_movement
from movement_core.section.panel import Panel
from movement_core.section.rings import Rings
from movement_core.wood import Species, all_species, dimension_change, find_species

__version__ = "0.1.0"
__all__ = [
    "Board",
    "Candidate",
    "DailyAir",
    "Panel",
    "Rings",
    "Rooms",
    "Species",
    "Wishes",
    "WoodYear",
    "Year",
    "all_species",
    "all_years",
    "arrangement_study",
    "dimension_change",
    "equilibrium_moisture",
    "find_place",
    "find_species",
    "find_year",
    "free_shape",
    "section_movement",
    "wood_year",
]
