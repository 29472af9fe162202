"""Heartside's physics and judgement: how solid-wood furniture moves with the seasons.

Python and numpy only; knows nothing of the CAD host.
"""

from movement_core.air.emc import equilibrium_moisture
from movement_core.air.year import Year

__version__ = "0.1.0"
__all__ = ["Year", "equilibrium_moisture"]
