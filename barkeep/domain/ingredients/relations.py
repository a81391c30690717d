"""How ingredients hang together: what stands in, what nothing replaces, what is made from what."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Literal, get_args

from barkeep.shipped_data import Limits, Positive, Share, Text

Technique = Literal["shaken", "stirred", "built", "blended", "thrown", "swizzled", "hot", "unknown"]
"""How a drink is made, as it bears on what may stand in."""
Role = Literal["base", "modifier", "accent"]
"""What a line does in a drink, for the same reason."""
Scope = Literal["shaken", "stirred", "accent", "never_base"]
SCOPES: tuple[Scope, ...] = get_args(Scope)
STAND_IN_STEPS = 2
"""How many stand-in steps one derivation may take."""

RestHours = Annotated[float, Limits(ge=0.0, le=14 * 24.0)]
"""What rests longer is not made for a shoot."""
Minutes = Annotated[float, Limits(gt=0.0, le=240.0)]


@dataclass(frozen=True, slots=True)
class StandIn:
    """`offered` may replace `wanted`, `ratio` ml of it for each ml wanted.

    Closeness runs from 0 to 1; 1 tastes the same. Every condition in `scope`
    must hold for the line: only in a *shaken* or *stirred* drink, only as an
    *accent*, *never_base*.
    """

    wanted: Text
    offered: Text
    closeness: Share
    ratio: Positive
    why: Text
    scope: tuple[Scope, ...] = ()
    own: bool = False


@dataclass(frozen=True, slots=True)
class NoStandIn:
    """Nothing replaces `wanted`, and why."""

    wanted: Text
    why: Text


@dataclass(frozen=True, slots=True)
class Input:
    """One thing a recipe takes, in that ingredient's own unit."""

    ingredient: str
    amount: float


@dataclass(frozen=True, slots=True)
class MadeFrom:
    """`made` comes from all of `inputs` together and yields `yields` in its own unit.

    `own` is the owner's own way of making it. It takes `minutes` of work and
    rests `rest_hours` before it can be used.
    """

    made: Text
    inputs: tuple[Input, ...]
    yields: Positive
    how: Text
    closeness: Share = 1.0
    basis: str = ""
    own: bool = False
    rest_hours: RestHours = 0.0
    minutes: Minutes = 10.0
