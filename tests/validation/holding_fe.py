"""Finite elements to compare the held plate with: Morley triangles of scikit-fem, written apart from the core.

Differences on purpose: the unknown is the whole height, not the part beside the free shape; the free
curvature enters as a load, each kink smeared over one narrow strip of elements; contact is found by a plain
active set on springs at the mesh's own spacing.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.model import Anchor, Plate

STRIP_MM = 1.0


@dataclass
class Solved:
    """Heights at the probes, pulls of the anchors, number of unknowns."""

    probe_mm: np.ndarray
    anchor_n: np.ndarray
    unknowns: int


class MorleyPlate:
    """One plate and its push-only lines."""

    def __init__(self, plate: Plate, lines, lines_across, counts=(40, 24), stiffness_n_mm2=200.0):
        from skfem import Basis, BilinearForm, ElementTriMorley, MeshTri, asm
        from skfem.helpers import dd, ddot

        self.plate = plate
        half = np.array([plate.length_mm, plate.width_mm]) / 2
        xs = np.linspace(-half[0], half[0], counts[0] + 1)
        ys = np.linspace(-half[1], half[1], counts[1] + 1)
        for (a, b), (c, d) in lines:
            xs, ys = np.append(xs, [a, c]), np.append(ys, [b, d])
        self.kinks = np.asarray(lines_across, dtype=float)
        for line in self.kinks:
            ys = ys[np.abs(ys - line) > 2 * STRIP_MM]
            ys = np.append(ys, [line - STRIP_MM / 2, line + STRIP_MM / 2])
        mesh = MeshTri.init_tensor(np.unique(np.round(xs, 6)), np.unique(np.round(ys, 6)))
        self.basis = Basis(mesh, ElementTriMorley(), intorder=4)
        d_l, d_t, d_1, d_k = plate.bending

        @BilinearForm
        def bending(u, v, w):
            k, m = dd(u), dd(v)
            moment = np.array(
                [
                    [d_l * k[0][0] + d_1 * k[1][1], 2 * d_k * k[0][1]],
                    [2 * d_k * k[1][0], d_1 * k[0][0] + d_t * k[1][1]],
                ]
            )
            return ddot(moment, m)

        self.stiffness = asm(bending, self.basis).tocsr()
        self.contact = self._line_points(lines)
        points = np.array([p for p, _ in self.contact]).reshape(-1, 2)
        self.contact_rows = self._rows(points)
        self.contact_k = stiffness_n_mm2 * np.array([reach for _, reach in self.contact])

    def _line_points(self, lines):
        found = []
        for start, end in lines:
            start, end = np.array(start, float), np.array(end, float)
            length = np.linalg.norm(end - start)
            count = int(np.ceil(length / 12.5)) + 1
            shares = np.linspace(0, 1, count)
            if abs(end[1] - start[1]) > 1e-6:
                crossings = (self.kinks - start[1]) / (end[1] - start[1])
                shares = np.unique(np.append(shares, crossings[(crossings > 0) & (crossings < 1)]))
            steps = np.diff(shares) * length / 2
            for share, reach in zip(shares, np.append(steps, 0) + np.append(0, steps)):
                found.append((start + share * (end - start), reach))
        return found

    def _rows(self, points):
        from scipy.sparse import csr_matrix

        if not len(points):
            return csr_matrix((0, self.basis.N))
        inside = np.clip(
            points.T, self.basis.mesh.p.min(axis=1)[:, None], self.basis.mesh.p.max(axis=1)[:, None]
        )
        return self.basis.probes(inside).tocsr()

    def load(self, free: FreeCurvature, carried=True):
        from skfem import LinearForm, asm
        from skfem.helpers import dd

        d_l, d_t, d_1, _ = self.plate.bending
        weight = self.plate.weight_n / (self.plate.length_mm * self.plate.width_mm) * carried
        lines = np.array(free.lines_mm)

        @LinearForm
        def form(v, w):
            y = w.x[1]
            board = np.clip(np.searchsorted(lines, y, side="right") - 1, 0, len(lines) - 2)
            crown, bow = np.array(free.crown_per_mm)[board], np.array(free.bow_per_mm)[board]
            for line, kink in zip(lines[1:-1], free.kinks_rad):
                crown = crown + np.where(np.abs(y - line) <= STRIP_MM / 2, kink / STRIP_MM, 0.0)
            k = dd(v)
            moment_l, moment_t = d_l * bow + d_1 * crown, d_1 * bow + d_t * crown
            return -moment_l * k[0][0] - moment_t * k[1][1] - weight * v

        return asm(form, self.basis)

    def solve(self, free: FreeCurvature, anchors: list[Anchor], probes) -> Solved:
        from scipy.sparse import diags, vstack
        from scipy.sparse.linalg import spsolve

        places = np.array([(a.along_mm, a.across_mm) for a in anchors]).reshape(-1, 2)
        rows = vstack([self.contact_rows, self._rows(places)]).tocsr()
        contacts = len(self.contact_k)
        grip = np.array([a.stiffness_n_mm for a in anchors])
        slack = np.array([a.slack_mm for a in anchors])
        both = np.array([a.both_ways for a in anchors], dtype=bool)
        k = np.concatenate([self.contact_k, grip])
        offset = np.concatenate([np.zeros(contacts), slack])
        load = self.load(free, carried=bool(contacts or both.any()))
        pins = self._rows(np.array([(0, 0), (100, 0), (0, 100)]))  # a trace of stiffness against rigid motion
        trace = pins.T @ pins * 1e-4
        active = np.ones(len(k), dtype=bool)
        settled = False
        spring = k
        for turn in range(60):
            spring = np.where(active, k, 0.0)
            matrix = self.stiffness + rows.T @ diags(spring) @ rows + trace
            height = spsolve(matrix.tocsc(), load + rows.T @ (spring * offset))
            stretch = rows @ height
            now = np.concatenate([stretch[:contacts] < 0, (stretch[contacts:] > slack) | both])
            if np.array_equal(now, active):
                settled = True
                break
            wrong = np.nonzero(now != active)[0]
            if turn > 15:  # plain switching may cycle: then change one at a time, the worst first
                wrong = wrong[[np.argmax(np.abs(stretch[wrong] - offset[wrong]))]]
            active = active.copy()
            active[wrong] = now[wrong]
        assert settled, "the finite-element contact did not settle"
        pull = spring[contacts:] * (stretch[contacts:] - slack)
        return Solved(self._rows(np.asarray(probes, float)) @ height, pull, self.basis.N)
