"""How a drink is made, inferred from the words of its method."""

from __future__ import annotations

import re

from barkeep.domain.specs import Technique

_NOT_DONE = re.compile(
    r"\b(?:not|never|don['’]t|without|instead of)\s+(?:be\s+)?\w+", re.IGNORECASE
)

# In this order: what is shaken or blended is so whatever else is done to it.
_SIGNS: tuple[tuple[Technique, re.Pattern[str]], ...] = (
    ("shaken", re.compile(r"\bshak(?:e|en|ing)\b", re.IGNORECASE)),
    (
        "blended",
        re.compile(
            r"\b(?:blend|blending|whizz?)\b|\bblended\b(?!\s+(?:scotch|whisk|malt|rum))",
            re.IGNORECASE,
        ),
    ),
    ("swizzled", re.compile(r"\bswizzl(?:e|ed|ing)\b", re.IGNORECASE)),
    ("thrown", re.compile(r"\bthrow(?:n|ing)?\b", re.IGNORECASE)),
    (
        "hot",
        re.compile(
            r"\b(?:hot(?![\s-]+(?:\w+\s+)?(?:sauce|ginger\s+beer))"
            r"|boil|boiling|boiled|warm|warmed|heat|heated|simmer|steam)\b",
            re.IGNORECASE,
        ),
    ),
)
_STIRRED = re.compile(r"\bstir(?:red|ring)?\b", re.IGNORECASE)
_BUILT = re.compile(
    r"\b(?:build|built|building|pour|fill|layer|layered|top\s+(?:up\s+)?with|in\s+the\s+glass)\b",
    re.IGNORECASE,
)


def technique_of(method: str) -> Technique:
    """The technique a method's words name, *unknown* where they name none.

    *Build … and stir* is built; *shake … and pour* is shaken; anything warmed
    and neither shaken nor blended is hot.

    >>> technique_of("Dry shake, then shake hard with ice and double strain.")
    'shaken'
    """
    # "Shake without ice" keeps its verb; "do not shake" loses it.
    words = _NOT_DONE.sub(" ", method)
    for technique, sign in _SIGNS:
        if sign.search(words):
            return technique
    stirred, built = _STIRRED.search(words), _BUILT.search(words)
    if stirred and (built is None or stirred.start() < built.start()):
        return "stirred"
    return "built" if built else "unknown"


def begins_a_method(line: str) -> bool:
    """Whether a line reads as an instruction and not as an ingredient."""
    first = line.split(maxsplit=1)[:1]
    return bool(first) and technique_of(first[0]) not in ("unknown", "hot") and " " in line.strip()
