"""Woods and other materials: their figures with sources, and how their sizes follow their moisture."""

from movement_core.wood.figure import FigureEffect, all_figures, board_variation, figure_effect
from movement_core.wood.record import SizeChange, Species
from movement_core.wood.size_change import (
    coefficient_from_shrinkage,
    dimension_change,
    green_dimension_change,
    shrinkage_from_coefficient,
    strain_at_ring_angle,
    strain_between,
)
from movement_core.wood.species import all_species, find_species

__all__ = [
    "FigureEffect",
    "SizeChange",
    "Species",
    "all_figures",
    "all_species",
    "board_variation",
    "coefficient_from_shrinkage",
    "dimension_change",
    "figure_effect",
    "find_species",
    "green_dimension_change",
    "shrinkage_from_coefficient",
    "strain_at_ring_angle",
    "strain_between",
]
