"""A fact about a part, and how we came to know it: tagged by the user, inferred from something, or missing."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, TypeVar

T = TypeVar("T")

TAGGED = "tagged"
INFERRED = "inferred"
MISSING = "missing"


@dataclass(frozen=True)
class Fact(Generic[T]):
    """A value with its origin. ``value`` is None exactly when the origin is *missing*.

    Attributes
    ----------
    value : the value, or None.
    origin : ``tagged``, ``inferred`` or ``missing``.
    reason : where the tag stands, what it was inferred from, or what the user must say.
    """

    value: T | None
    origin: str
    reason: str

    def __post_init__(self) -> None:
        if (self.value is None) != (self.origin == MISSING):
            raise ValueError(f"a {self.origin} fact cannot have the value {self.value!r}")

    @property
    def known(self) -> bool:
        return self.origin != MISSING


def tagged(value: T, reason: str) -> Fact[T]:
    return Fact(value, TAGGED, reason)


def inferred(value: T, reason: str) -> Fact[T]:
    return Fact(value, INFERRED, reason)


def missing(reason: str) -> Fact[T]:
    return Fact(None, MISSING, reason)
