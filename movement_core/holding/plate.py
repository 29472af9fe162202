"""A panel held on its frame: an orthotropic thin plate with a free curvature, contact, anchors and beams.

The height of the panel is its free shape plus an elastic part. The free shape, with its kinks at the glue
lines, costs no energy; the elastic part is smooth and is expanded in Legendre polynomials. So a panel held
nowhere keeps exactly the shape its rings gave it, whatever the number of terms.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.errors import InputError
from movement_core.holding import basis
from movement_core.holding.contact_points import ContactPoints, contact_points
from movement_core.holding.free_surface import free_height
from movement_core.holding.held import BeamResult, Held, surface_result
from movement_core.holding.model import Anchor, Beam, Bearing, LoadCase, Plate, Point
from movement_core.holding.plate_energy import bending_inverse, bending_stiffness, plate_load
from movement_core.holding.springs import Body, Springs, equilibrium, push_only
from movement_core.wording import say

Array = NDArray[np.float64]

# A trace of stiffness against rigid motion, N/mm: a panel free to rock has no other. Far below any weight.
_TRACE_N_MM = 1e-3
_BEAM_TERMS = 12


@dataclass(frozen=True, eq=False)
class Trial:
    """A panel on its frame with its beams, ready to try anchors on: everything that anchors do not change.

    Built by ``prepare``. N unknowns: the plate's coefficients, then each beam's.
    """

    plate: Plate
    bearings: tuple[Bearing, ...]
    beams: tuple[Beam, ...]
    terms: tuple[int, int]
    rigid: NDArray[np.int64]  # (r,) which unknowns are rigid motions
    inverse: Array  # (N, N) of the stiffness, rigid motions left out
    contacts: ContactPoints
    rows: Array  # (m, N) contact points, then the joints of the beams
    springs: Springs  # m
    moved: Array  # (m, N) rows @ inverse
    compliance: Array  # (m, m) mm/N
    joint_points_mm: Array  # (j, 2) places of the beams' joints on the plate
    joint_beam: NDArray[np.int64]  # (j,)


def default_terms(plate: Plate) -> tuple[int, int]:
    """Numbers of Legendre terms along and across, by how long the panel is for its stiffnesses."""
    e = plate.elastic
    slenderness = plate.length_mm / plate.width_mm * (e.e_across_mpa / e.e_along_mpa) ** 0.25
    return (
        int(np.clip(math.ceil(22 * slenderness**0.5), 16, 32)),
        int(np.clip(math.ceil(23 / slenderness**0.25), 20, 26)),
    )


def prepare(
    plate: Plate,
    bearings: Sequence[Bearing] = (),
    beams: Sequence[Beam] = (),
    *,
    glue_lines_mm: Sequence[float] = (),
    terms: tuple[int, int] | None = None,
    spacing_mm: float | None = None,
) -> Trial:
    """Work out, once, everything about a panel and its frame that does not depend on the anchors.

    Parameters
    ----------
    plate, bearings, beams : the panel, what it rests on, what stiffens it.
    glue_lines_mm : positions across at which the surface may have kinks: contact is looked for there too.
    terms : Legendre terms along and across; default by ``default_terms``.
    spacing_mm : between sampled contact points; default see ``contact_points``.
    """
    for beam in beams:
        for end in (beam.start_mm, beam.end_mm):
            _on_the_plate(plate, end, f"beam {beam.name!r}")
    terms = terms or default_terms(plate)
    on_plate = terms[0] * terms[1]
    count = on_plate + _BEAM_TERMS * len(beams)
    stiffness = np.zeros((count, count))
    stiffness[:on_plate, :on_plate] = bending_stiffness(plate, terms)
    for k, beam in enumerate(beams):
        part = slice(on_plate + k * _BEAM_TERMS, on_plate + (k + 1) * _BEAM_TERMS)
        stiffness[part, part] = beam.bending_stiffness_n_mm2 * basis.overlap(
            beam.length_mm, _BEAM_TERMS, 2, 2
        )
    rigid = np.array(
        [0, 1, terms[1], *(on_plate + k * _BEAM_TERMS + i for k in range(len(beams)) for i in (0, 1))]
    )
    inverse = bending_inverse(stiffness, rigid, bool(plate.outline_mm))
    contacts = contact_points(plate, bearings, spacing_mm, glue_lines_mm)
    springs = push_only(contacts.stiffness_n_mm)
    joints = [_joints(beam) for beam in beams]
    points = np.vstack([contacts.points_mm, *(places for places, _, _ in joints)])
    rows = _plate_rows(plate, terms, count, points)
    row = len(contacts.points_mm)
    for k, (beam, (places, from_start, joint_springs)) in enumerate(zip(beams, joints)):
        columns = slice(on_plate + k * _BEAM_TERMS, on_plate + (k + 1) * _BEAM_TERMS)
        shape = basis.values(from_start - beam.length_mm / 2, beam.length_mm, _BEAM_TERMS)
        rows[row : row + len(places), columns] = -shape
        row += len(places)
        springs = springs.joined(joint_springs)
    moved = rows @ inverse
    return Trial(
        plate,
        tuple(bearings),
        tuple(beams),
        terms,
        rigid,
        inverse,
        contacts,
        rows,
        springs,
        moved,
        moved @ rows.T,
        points[len(contacts.points_mm) :],
        np.repeat(np.arange(len(beams)), [len(places) for places, _, _ in joints]),
    )


def hold(
    trial: Trial,
    anchors: Sequence[Anchor],
    cases: Sequence[LoadCase],
    *,
    start: Sequence[Held] | None = None,
) -> tuple[Held, ...]:
    """The held panel in every load case.

    Parameters
    ----------
    trial : from ``prepare``.
    anchors : the fasteners.
    cases : free shapes, for instance the driest and the wettest month.
    start : results of a similar trial with the same cases, to start the contact search from.

    Returns
    -------
    Held for each case.

    Raises
    ------
    InputError : an anchor lies beyond the panel.
    ConvergenceError : the contact search did not settle.
    """
    for anchor in anchors:
        _on_the_plate(trial.plate, (anchor.along_mm, anchor.across_mm), f"anchor {anchor.name!r}")
    anchor_points = np.array([(a.along_mm, a.across_mm) for a in anchors]).reshape(-1, 2)
    anchor_rows = _plate_rows(trial.plate, trial.terms, len(trial.inverse), anchor_points)
    side = trial.moved @ anchor_rows.T
    compliance = np.block([[trial.compliance, side], [side.T, anchor_rows @ trial.inverse @ anchor_rows.T]])
    rows = np.vstack([trial.rows, anchor_rows])
    springs = trial.springs.joined(_anchor_springs(anchors))
    contacts, joints = len(trial.contacts.points_mm), len(trial.joint_points_mm)
    points = np.vstack([trial.contacts.points_mm, trial.joint_points_mm, anchor_points])
    below = np.concatenate([trial.contacts.height_mm, np.zeros(joints), [a.seat_mm for a in anchors]])
    carried = bool(contacts or any(a.both_ways for a in anchors))
    results = []
    for number, case in enumerate(cases):
        rest = free_height(trial.plate, case, points) - below
        states = np.zeros(len(rest), dtype=np.int8)
        states[contacts:] = np.sign(springs.pull_n_mm[contacts:]).astype(np.int8)
        if start is not None:
            states[:contacts] = -(start[number].contact_force_n > 0).astype(np.int8)
        elif contacts:
            states[:contacts] = -(rest[:contacts] <= np.quantile(rest[:contacts], 0.1)).astype(np.int8)
        load = _load(trial, case, carried)
        unloaded = rows @ (trial.inverse @ load) + rest
        body = Body(compliance, unloaded, rows[:, trial.rigid], load[trial.rigid], _TRACE_N_MM)
        found = equilibrium(body, springs, states)
        force = found.force_n
        coefficients = trial.inverse @ (load - rows.T @ force)
        coefficients[trial.rigid] = found.rigid_mm
        beams = tuple(
            _beam_result(trial, k, coefficients, force[contacts : contacts + joints])
            for k in range(len(trial.beams))
        )
        results.append(
            surface_result(
                trial,
                case,
                coefficients,
                anchor_points_mm=anchor_points,
                anchor_force_n=force[contacts + joints :],
                anchor_lift_mm=found.extension_mm[contacts + joints :],
                contact_force_n=-force[:contacts],
                contact_gap_mm=np.maximum(found.extension_mm[:contacts], 0.0),
                beams=beams,
                steps=found.steps,
                carried=carried,
            )
        )
    return tuple(results)


def _on_the_plate(plate: Plate, point: Point, where: str) -> None:
    if not plate.holds(np.array([point]))[0]:
        raise InputError(
            say("({along:g}, {across:g}) mm lies beyond the panel", along=point[0], across=point[1]),
            where=where,
            allowed=say(
                "along ±{length:g} mm, across ±{width:g} mm, inside its outline",
                length=plate.length_mm / 2,
                width=plate.width_mm / 2,
            ),
        )


def _plate_rows(plate: Plate, terms: tuple[int, int], count: int, points_mm: Array) -> Array:
    """(K, N) values of the unknowns' shapes at points of the plate; zero for the beams."""
    points = np.asarray(points_mm, dtype=float).reshape(-1, 2)
    table = np.zeros((len(points), count))
    along = basis.values(points[:, 0], plate.length_mm, terms[0])
    across = basis.values(points[:, 1], plate.width_mm, terms[1])
    table[:, : terms[0] * terms[1]] = basis.products(along, across)
    return table


def _load(trial: Trial, case: LoadCase, carried: bool) -> Array:
    """(N,) weight, the boards' bow along the grain, and the beams' own curvature."""
    on_plate = trial.terms[0] * trial.terms[1]
    load = np.zeros(len(trial.inverse))
    load[:on_plate] = plate_load(trial.plate, trial.terms, case, carried)
    for k, beam in enumerate(trial.beams):
        part = slice(on_plate + k * _BEAM_TERMS, on_plate + (k + 1) * _BEAM_TERMS)
        bent = basis.overlap(beam.length_mm, _BEAM_TERMS, 2, 0)[:, 0]
        load[part] -= beam.bending_stiffness_n_mm2 * beam.crown_per_mm * bent
    return load


def _joints(beam: Beam) -> tuple[Array, Array, Springs]:
    """Places of a beam's joints on the plate, their distances from its start, and their springs."""
    along_beam = np.linspace(0.0, beam.length_mm, max(9, math.ceil(beam.length_mm / 25) + 1))
    reach = np.full(len(along_beam), along_beam[1])
    reach[[0, -1]] /= 2
    push = beam.bearing_n_mm2 * reach
    none = np.zeros(len(along_beam))
    if beam.screws_mm:  # the panel bears on the beam all along and is held to it at the screws
        screws = np.array(beam.screws_mm, dtype=float)
        grip = np.full(len(screws), beam.joint_stiffness_n_mm)
        springs = push_only(push).joined(
            Springs(
                0 * grip, 0 * grip, grip, np.full(len(screws), beam.play_mm), np.full(len(screws), np.inf)
            )
        )
        along_beam = np.concatenate([along_beam, screws])
    else:
        half = np.full(len(along_beam), beam.play_mm / 2)
        springs = Springs(push, -half, push, half, none + np.inf)
    start, end = np.array(beam.start_mm), np.array(beam.end_mm)
    return start + along_beam[:, None] / beam.length_mm * (end - start), along_beam, springs


def _anchor_springs(anchors: Sequence[Anchor]) -> Springs:
    pull = np.array([a.stiffness_n_mm for a in anchors], dtype=float)
    push = np.array([a.stiffness_n_mm if a.both_ways else 0.0 for a in anchors], dtype=float)
    slack = np.array([a.slack_mm for a in anchors], dtype=float)
    limit = np.array([np.inf if a.limit_n is None else a.limit_n for a in anchors], dtype=float)
    return Springs(push, np.zeros(len(anchors)), pull, slack, limit)


def _beam_result(trial: Trial, number: int, coefficients: Array, joint_force_n: Array) -> BeamResult:
    beam = trial.beams[number]
    first = trial.terms[0] * trial.terms[1] + number * _BEAM_TERMS
    own = coefficients[first : first + _BEAM_TERMS]
    place = np.linspace(-beam.length_mm / 2, beam.length_mm / 2, 41)
    curvature = basis.values(place, beam.length_mm, _BEAM_TERMS, 2) @ own + beam.crown_per_mm
    mine = joint_force_n[trial.joint_beam == number]
    return BeamResult(
        beam.name,
        float(np.ptp(basis.values(place, beam.length_mm, _BEAM_TERMS) @ own)),
        float(beam.bending_stiffness_n_mm2 * np.max(np.abs(curvature))),
        mine,
        trial.joint_points_mm[trial.joint_beam == number],
    )
