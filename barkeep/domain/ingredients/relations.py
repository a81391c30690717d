"""How ingredients hang together: what stands in, what nothing replaces, what is made from what."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.domain.ingredients.uses import Scope

STAND_IN_STEPS = 2
"""How many stand-in steps one derivation may take."""


@dataclass(frozen=True, slots=True)
class StandIn:
    """`offered` may replace `wanted`, `ratio` ml of it for each ml wanted.

    Closeness runs from 0 to 1; 1 tastes the same. Every condition in `scope`
    must hold for the line: only in a *shaken* or *stirred* drink, only as an
    *accent*, *never_base*.
    """

    wanted: str
    offered: str
    closeness: float
    ratio: float
    why: str
    scope: tuple[Scope, ...] = ()
    own: bool = False


@dataclass(frozen=True, slots=True)
class NoStandIn:
    """Nothing replaces `wanted`, and why."""

    wanted: str
    why: str


@dataclass(frozen=True, slots=True)
class Input:
    """One thing a recipe takes, in that ingredient's own unit."""

    ingredient: str
    amount: float


@dataclass(frozen=True, slots=True)
class MadeFrom:
    """`made` comes from all of `inputs` together and yields `yields` in its own unit.

    `own` is the owner's own way of making it. It rests `rest_hours` before it
    can be used.
    """

    made: str
    inputs: tuple[Input, ...]
    yields: float
    how: str
    closeness: float = 1.0
    basis: str = ""
    own: bool = False
    rest_hours: float = 0.0
