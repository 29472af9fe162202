"""Curved faces of near bodies: pegs in holes exactly, all else by rays from a mesh."""

from __future__ import annotations

from collections import defaultdict

from movement_core.piece.contact.found import Contact, Gap, Overlap
from movement_core.piece.contact.pegs import peg_in_hole
from movement_core.piece.contact.rays import Kernel, by_rays
from movement_core.piece.contact.scene import Ints, Scene


def curved_finds(
    scene: Scene, first: Ints, second: Ints, reach: float, kernel: Kernel | None
) -> tuple[list[Contact], list[Gap], list[Overlap]]:
    """Contacts, gaps and tight pegs in which a curved face takes part, of near pairs of bodies."""
    near: dict[int, list[int]] = defaultdict(list)
    for one, other in zip(first.tolist(), second.tolist()):
        near[one].append(other)
        near[other].append(one)
    contacts: list[Contact] = []
    gaps: list[Gap] = []
    tight: list[Overlap] = []
    for body in sorted(near):
        for index, face in enumerate(scene.bodies[body].curved):
            done: set[tuple[int, int]] = set()
            for other in near[body]:
                for number, met in enumerate(scene.bodies[other].curved):
                    found = peg_in_hole(body, index, face, other, number, met, scene, reach)
                    if found is None:
                        continue
                    done.add((other, number))
                    if isinstance(found, Contact):
                        contacts.append(found)
                    elif isinstance(found, Gap):
                        gaps.append(found)
                    elif isinstance(found, Overlap):
                        tight.append(found)
            for find in by_rays(scene, body, index, face, near[body], done, reach, kernel):
                if isinstance(find, Contact):
                    contacts.append(find)
                else:
                    gaps.append(find)
    return contacts, gaps, tight
