"""What stands before an amount and is none of it: list marks, joining words, hedges, *optional*.

| written                       | taken as                             |
|-------------------------------|--------------------------------------|
| - [ ] 2 oz gin, > 2 oz gin    | the mark is no part of the line      |
| and 2 oz gin, + 2 oz gin      | the joining word means nothing       |
| (optional) 2 dashes saline    | optional                             |
| ~2 oz gin, about 2 oz gin     | the hedge is a note: *about*         |
| gin, about 2 oz; gin ~60 ml   | the same after the name              |
"""

from __future__ import annotations

import re
from dataclasses import dataclass

MARK = re.compile(
    r"(?:(?:--+|[-*•·–—▪◦▢☐☑>→])[ ]+|[•·▪◦▢☐☑→]|\(?[0-9]{1,2}\)[ ]*|[0-9]{1,2}\.[ ]+)?"
    r"(?:\[[ xX✓]?\][ ]*)?"
)
"""What a list puts in front of its lines: bullets, numbers and boxes to tick."""


_JOIN = re.compile(
    r"(?:(?:and|plus)\b|[+&])[ ,:]*|(?P<needs>(?:(?:then|also|finally|lastly|next|add)\b[ ,:]*)+)",
    re.IGNORECASE,
)

_OPTIONAL = re.compile(
    r"[(\[][ ]*optional(?:ly)?[ ]*[)\]][ ]*[:,–-]?[ ]*"
    r"|optional(?:ly)?[ ]*[:,–-][ ]*|(?P<bare>optional(?:ly)?[ ]+)",
    re.IGNORECASE,
)

_HEDGES = (
    r"[~≈±]|(?:ca|c|approx)\.|(?:ca|circa|approx|approximately|about|around|roughly|nearly|almost"
    r"|maybe|perhaps|just[ ](?:under|over)|a[ ](?:bit|little|touch)[ ](?:under|over)"
    r"{further})\b"
)

_HEDGE = re.compile(
    _HEDGES.format(
        further="|up[ ]to|at[ ](?:least|most)|(?:(?:no|not)[ ])?(?:more|less)[ ]than|over|under"
    ),
    re.IGNORECASE,
)

_HEDGE_AT_THE_END = re.compile(
    rf"(?P<before>^|[ ,:(–—-])(?P<hedge>{_HEDGES.format(further='')})[ ]*$", re.IGNORECASE
)

_SIGNS = frozenset("~≈±")


@dataclass(frozen=True, slots=True)
class LeadIn:
    """One thing in front of an amount and how many characters it takes.

    `note` is what is kept of it; `unsure` says that it is only meant so where an
    amount follows, since a name or a step of a method may begin alike.
    """

    length: int
    note: str = ""
    optional: bool = False
    unsure: bool = False


def lead_in(text: str) -> LeadIn | None:
    """What a text begins with that is no part of an amount; None where that is nothing."""
    optional = _OPTIONAL.match(text)
    if optional:
        return LeadIn(optional.end(), optional=True, unsure=bool(optional["bare"]))
    hedge = _HEDGE.match(text)
    if hedge:
        gap = len(text[hedge.end() :]) - len(text[hedge.end() :].lstrip(" "))
        return LeadIn(hedge.end() + gap, _noted(hedge.group()), unsure=True)
    joint = _JOIN.match(text)
    return LeadIn(joint.end(), unsure=bool(joint["needs"])) if joint else None


def hedge_at_the_end(text: str) -> LeadIn | None:
    """The hedge that a text ends in, before an amount that comes after the name."""
    found = _HEDGE_AT_THE_END.search(text)
    return LeadIn(len(text) - found.start("hedge"), _noted(found["hedge"])) if found else None


def _noted(hedge: str) -> str:
    return "about" if hedge in _SIGNS else hedge
