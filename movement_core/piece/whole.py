"""The piece as a whole: what touches what, which joints that makes, what is captured, and all of it through the year.

Built once for a solved piece and the faces of its solids; every check reads it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

from movement_core.piece.captive_room import CaptiveRoom, captive_rooms
from movement_core.piece.contact.across import GapYear, JointMovement, gap_year, joint_movement
from movement_core.piece.contact.bodies import Body
from movement_core.piece.contact.captives import Captive, captives_of
from movement_core.piece.contact.carried import Positions, carried_positions
from movement_core.piece.contact.contacts import contacts_of
from movement_core.piece.contact.found import REACH_MM, Touching
from movement_core.piece.contact.joints import CONFIRMED, SLIDES, Joint, joints_of
from movement_core.piece.contact.meetings import NEAR, meetings_of
from movement_core.piece.contact.rays import Kernel
from movement_core.piece.crossing import Crossing, crossings_of
from movement_core.piece.loose_groups import LooseGroup, is_most, loose_groups, settled, wood_mm3
from movement_core.piece.panels import GluedPanel, glued_panels
from movement_core.piece.restrained import Restrained, gap_years, restrained
from movement_core.piece.solve import SolvedPart, SolvedPiece
from movement_core.piece.tops import FoundTop, find_tops
from movement_core.wording import say

NOTHING = Touching((), (), ())
MOST_CARRIED = (
    10_000  # parts: beyond this the network is not solved, and gaps count from each part's own middle
)


@dataclass(frozen=True, eq=False)
class WholePiece:
    """A solved piece and everything between its parts.

    Attributes
    ----------
    solved : the parts through the year.
    parts : those of them whose faces are known, in the order in which all indices below count.
    touching : contacts, gaps and overlaps. joints : one for each pair that meets.
    movements : what the seasons do across each joint, in the same order.
    captives : parts held by their edges on two sides or more. loose : doors, drawers and the like.
    positions : where the joints carry the parts; None where it was not worked out.
    """

    solved: SolvedPiece
    parts: tuple[SolvedPart, ...] = ()
    touching: Touching = NOTHING
    joints: tuple[Joint, ...] = ()
    movements: tuple[JointMovement, ...] = ()
    captives: tuple[Captive, ...] = ()
    loose: tuple[LooseGroup, ...] = ()
    positions: Positions | None = None

    @cached_property
    def gaps(self) -> tuple[GapYear, ...]:
        """Every gap through the year of which both parts are known."""
        years = (
            gap_year(
                gap,
                self.parts[gap.first],
                self.parts[gap.second],
                self.parts[gap.first].part.fixed_mm or 0.0,
                self.parts[gap.second].part.fixed_mm or 0.0,
                self.positions,
            )
            for gap in self.touching.gaps
        )
        return tuple(year for year in years if year is not None)

    @cached_property
    def forces(self) -> Restrained | None:
        """What each joint bears through the year; None where there is nothing between parts, or too many of them."""
        if not (self.joints and len(self.parts) <= MOST_CARRIED):
            return None
        return restrained(self.parts, self.joints, ground=largest(self.parts))

    @cached_property
    def held_gaps(self) -> tuple[GapYear, ...]:
        """The same gaps with parts that their joints keep from moving; those of ``gaps`` where forces are not known."""
        return self.gaps if self.forces is None else gap_years(self.parts, self.touching.gaps, self.forces)

    @cached_property
    def crossings(self) -> tuple[Crossing, ...]:
        """Every joint across the grain, judged."""
        return crossings_of(self.parts, self.movements, self._panel_of(), self._pairs_of_tops())

    @cached_property
    def rooms(self) -> tuple[CaptiveRoom, ...]:
        """The room of every solid panel that is held by both its edges."""
        return captive_rooms(self.parts, self.captives)

    @cached_property
    def panels(self) -> tuple[GluedPanel, ...]:
        return glued_panels(self.solved)

    @cached_property
    def tops(self) -> tuple[FoundTop, ...]:
        return find_tops(self.solved, self.panels)

    @cached_property
    def boxes(self) -> tuple[LooseGroup, ...]:
        """The loose groups that are in the piece, as drawers are: none that is most of it, as a chest under its lid."""
        wood = wood_mm3([solved.part for solved in self.parts])
        return tuple(group for group in self.loose if not is_most(wood, group.parts))

    @cached_property
    def index(self) -> Mapping[str, int]:
        """Key of a part → its index."""
        return {solved.part.key: index for index, solved in enumerate(self.parts)}

    def name(self, index: int) -> str:
        return self.parts[index].part.name

    def is_between_groups(self, one: int, other: int) -> bool:
        """Whether a door, drawer or the like ends between two parts: only one of them belongs to it.

        So it does too where the maker said that the one slides past the other, and there is nothing but a gap.
        """
        return frozenset((one, other)) in self._said_to_slide or any(
            (one in group.parts) != (other in group.parts) for group in self.loose
        )

    @cached_property
    def _said_to_slide(self) -> frozenset[frozenset[int]]:
        return frozenset(
            frozenset(joint.parts)
            for joint in self.joints
            if joint.kind == SLIDES and joint.origin == CONFIRMED and joint.meeting.shape == NEAR
        )

    def _panel_of(self) -> dict[int, int]:
        """Index of a board → number of the glued panel that it is part of."""
        return {
            self.index[board.part.key]: number
            for number, panel in enumerate(self.panels)
            for board in panel.boards
            if board.part.key in self.index
        }

    def _pairs_of_tops(self) -> set[frozenset[int]]:
        """Pairs of a top's board and something that touches the top, which the top as a whole is judged with."""
        pairs = set()
        for top in self.tops:
            place = top.place
            if top.top is None and not place.tied:
                continue  # nothing judges it as a whole, and nothing shows that it slides
            beside = [*place.under, *place.let_in, *place.battens, *place.ends, *place.fasteners]
            for board in place.boards:
                for near in beside:
                    keys = board.part.key, near.solved.part.key
                    if all(key in self.index for key in keys):
                        pairs.add(frozenset(self.index[key] for key in keys))
        return pairs


def whole_piece(
    solved: SolvedPiece,
    bodies: Sequence[Body] = (),
    kernel: Kernel | None = None,
    confirmed: Mapping[tuple[str, str], str] | None = None,
    reach_mm: float = REACH_MM,
) -> WholePiece:
    """Find out everything between the parts of a solved piece.

    Parameters
    ----------
    solved : the parts through the year.
    bodies : faces of its solids, by the keys of the parts; parts without one are left out of contacts and gaps.
    kernel : the host's exact geometry for curved faces.
    confirmed : kinds of joints that the maker gave, by the keys of the two parts in either order.
    reach_mm : gaps wider than this are not looked for.

    Raises
    ------
    UnknownName : a confirmed kind is no kind of joint.
    """
    known = {part.part.key: part for part in solved.parts}
    placed = [body for body in bodies if body.key in known]
    parts = tuple(known[body.key] for body in placed)
    plain = [one.part for one in parts]
    touching = contacts_of(placed, reach_mm, kernel)
    joints = joints_of(plain, meetings_of(touching), confirmed)
    loose = loose_groups(plain, joints)
    joints = settled(joints, loose)
    movements = tuple(joint_movement(joint, parts[joint.parts[0]], parts[joint.parts[1]]) for joint in joints)
    captives = captives_of([part.frame for part in plain], [joint.meeting for joint in joints])
    positions = None
    if 2 <= len(parts) <= MOST_CARRIED:
        positions = carried_positions(parts, joints, ground=largest(parts))
    elif len(parts) > MOST_CARRIED:
        touching = replace(touching, notes=(*touching.notes, _not_carried(len(parts))))
    return WholePiece(solved, parts, touching, joints, movements, captives, loose, positions)


def _not_carried(count: int) -> str:
    return say(
        "where the parts carry each other was not worked out for {count} parts (up to {most} it is): gaps count "
        "from the middle of each part, and parts held at two lines and the lines of hinges and locks are not "
        "looked for",
        count=count,
        most=MOST_CARRIED,
    )


def largest(parts: Sequence[SolvedPart]) -> int:
    """Index of the part of the largest volume, which is taken to stay where it is."""
    return max(range(len(parts)), key=lambda index: parts[index].part.volume_mm3)
