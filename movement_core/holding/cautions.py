"""What every answer about holding a panel says beside its figures."""

from __future__ import annotations

from movement_core.wording import phrase

ESTIMATE = phrase(
    "Estimates from averages, not guarantees: a board differs from its species by some 15 %. Elastic forces are "
    "upper bounds: wood creeps and frames give."
)
NOT_FOR_LOAD = phrase(
    "Fastener figures are for movement, not for load: not for lifting, people or overhead loads. Those, stairs, "
    "wall-hung and child-safety parts belong to local codes and licensed practice."
)
NOT_LIFTING_POINTS = phrase("Tables get lifted by their tops: movement anchors are not lifting points.")
NEVER_BY_FORCE = phrase(
    "Never bolt a cupped top flat by force; a board released from being forced flat springs. Rip cupped boards "
    "hollow face down: a warped or case-hardened board can pinch the blade and kick back."
)
PLANE_LATER = phrase("Never plane a part that sticks in the damp season until it has dried.")
HOLD_AT_BOTH_EXTREMES = phrase("Wall anchors and anti-tip straps must hold at both extremes of the year.")
OUTSIDE = phrase(
    "Outdoors, bathrooms, underfloor heating, fireplaces and sea freight lie outside the usual years of air."
)

FOR_A_PLAN = (ESTIMATE, NOT_FOR_LOAD, NOT_LIFTING_POINTS, NEVER_BY_FORCE, HOLD_AT_BOTH_EXTREMES, OUTSIDE)
FOR_A_GAP = (ESTIMATE, PLANE_LATER, OUTSIDE)
