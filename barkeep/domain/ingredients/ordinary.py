"""What a general want is ordinarily poured from, and what becomes of a kind with age."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from barkeep.shipped_data import Positive, Share, Text, Texts

WithAge = Literal["past_its_best", "spent", "not_safe"]
"""What a thing past its date is; only what is *past its best* is still counted."""


@dataclass(frozen=True, slots=True)
class OnlyWhenAsked:
    """A kind that a more general want takes only as a stand-in, by closeness and ratio.

    `words` in a line, or in the method of a drink that has the kind nowhere
    else, ask for it.
    """

    key: str
    closeness: Share
    ratio: Positive
    why: Text
    words: Texts = ()


Tiers = tuple[Texts, ...]
"""Kinds of a general want, the best match first; those of one tuple match alike."""


@dataclass(frozen=True, slots=True)
class Roles:
    """The kinds of a general want as a *light* drink takes them, and as a *dark* one does.

    Light is what is shaken, blended or long; dark what is stirred, or built of
    little but spirit. No `dark` is the same.
    """

    key: str
    light: Tiers
    dark: Tiers = ()


@dataclass(frozen=True, slots=True)
class Ordinary:
    """All of it, by key. `rather` is, by what is wanted, the safer of what may be poured."""

    only_when_asked: Mapping[str, OnlyWhenAsked] = field(default_factory=dict)
    roles: Mapping[str, Roles] = field(default_factory=dict)
    with_age: Mapping[str, WithAge] = field(default_factory=dict)
    rather: Mapping[str, Text] = field(default_factory=dict)


NOTHING_SAID = Ordinary()
