"""Legendre polynomials on a rectangle: the shapes a held plate or beam may take."""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from numpy.polynomial import legendre
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]


@lru_cache(maxsize=64)
def _derivative_coefficients(terms: int, order: int) -> Array:
    """(terms, terms) column i: Legendre coefficients of the ``order``-th derivative of P_i."""
    columns = np.zeros((terms, terms))
    for i in range(terms):
        unit = np.zeros(i + 1)
        unit[i] = 1.0
        derived = legendre.legder(unit, order) if order else unit
        columns[: len(derived), i] = derived
    return columns


def values(position_mm: ArrayLike, span_mm: float, terms: int, order: int = 0) -> Array:
    """(N, terms) ``order``-th derivatives of P_0 … P_(terms−1) on −span/2 … span/2, in mm^−order."""
    argument = 2 * np.asarray(position_mm, dtype=float) / span_mm
    vandermonde = legendre.legvander(argument, terms - 1)
    result: Array = vandermonde @ _derivative_coefficients(terms, order) * (2 / span_mm) ** order
    return result


def gauss(start_mm: float, end_mm: float, points: int) -> tuple[Array, Array]:
    """Gauss points and weights on an interval, mm."""
    nodes, weights = legendre.leggauss(points)
    half = (end_mm - start_mm) / 2
    return (start_mm + end_mm) / 2 + half * nodes, half * weights


def overlap(span_mm: float, terms: int, order_a: int, order_b: int) -> Array:
    """(terms, terms) ∫ P_i^(a) P_j^(b) over the span, exact, in mm^(1−a−b)."""
    nodes, weights = gauss(-span_mm / 2, span_mm / 2, terms)
    a, b = values(nodes, span_mm, terms, order_a), values(nodes, span_mm, terms, order_b)
    result: Array = a.T @ (weights[:, None] * b)
    return result


def products(first: Array, second: Array) -> Array:
    """(N, p·q) row-wise products of an (N, p) and an (N, q) table: the tensor basis at N points."""
    return (first[:, :, None] * second[:, None, :]).reshape(len(first), first.shape[1] * second.shape[1])
