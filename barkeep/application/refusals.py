"""What a bar refuses to do, each with one clear sentence."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.errors import UserError


@dataclass
class WrongState(UserError):
    """A bottle that is not as the action needs it, such as opening an open one."""

    bottle: str
    state: str
    advice: str

    def __str__(self) -> str:
        return f"{self.bottle} is {self.state} already: {self.advice}."


@dataclass
class NeverOffered(UserError):
    """A stand-in between things that are mistaken for each other."""

    wanted: str
    offered: str
    why: str

    def __str__(self) -> str:
        return f"{self.offered} must never stand in for {self.wanted}: {self.why}"


@dataclass
class StillInUse(UserError):
    """Something that cannot go while other things refer to it."""

    thing: str
    users: str

    def __str__(self) -> str:
        return f"{self.thing} cannot be removed: {self.users} still refer to it."
