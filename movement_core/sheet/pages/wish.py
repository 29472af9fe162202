"""What is asked of a sheet."""

from __future__ import annotations

from dataclasses import dataclass, replace

from movement_core.errors import UnknownName
from movement_core.sheet.pages.lengths import MM, Lengths
from movement_core.sheet.pages.model import Paper
from movement_core.wording import say

# Sizes of ISO 216 A4 and of US Letter (ANSI A, 8½ × 11 in), upright.
PAPERS = {"a4": Paper("A4", 210.0, 297.0), "letter": Paper("Letter", 215.9, 279.4)}


@dataclass(frozen=True)
class SheetWish:
    """What is asked of a sheet.

    Attributes
    ----------
    job, place, shop : as the user wrote them; empty leaves a line to write on.
    client : the page for the client in place of the bench's sheet.
    paper : "a4" or "letter". units : "mm" or "inch".

    Raises
    ------
    UnknownName : a paper or unit that is not known.
    """

    job: str = ""
    place: str = ""
    shop: str = ""
    client: bool = False
    paper: str = "a4"
    units: str = MM

    def __post_init__(self) -> None:
        if self.paper not in PAPERS:
            raise UnknownName(
                say("no paper is called {paper!r}", paper=self.paper),
                where=say("paper"),
                allowed=", ".join(PAPERS),
            )
        Lengths(self.units)

    @property
    def sheet_of_paper(self) -> Paper:
        """The client's page stands upright, the bench's lies."""
        upright = PAPERS[self.paper]
        if self.client:
            return replace(upright, margin_mm=18.0)
        return Paper(upright.name, upright.height_mm, upright.width_mm)
