"""How a drink is made, inferred from the words of its method."""

from __future__ import annotations

import re

from barkeep.domain.ingredients.relations import Technique

_NOT_DONE = re.compile(
    r"\b(?:not|no|never|don['’]t|without|instead of)\s+(?:(?:be|any|use|using)\s+)?\w+",
    re.IGNORECASE,
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
)
_VESSEL = r"(?:glass(?:es)?|mugs?|cups?|coupes?|flutes?|goblets?|tumblers?|tins?|shakers?|bowls?)\b"
_WHICH = r"(?:(?:the|a|an|your|each|serving|heatproof|tall|small|large|mixing|toddy|rocks)\s+){0,3}"
_IN_HOT_WATER = r"\s+(?:with|in|under|using)\s+(?:\w+\s+){0,2}?(?:hot|boiling|warm)\s+water\b"
_WARMED_GLASS = re.compile(
    rf"\b(?:pre-?)?(?:warm|heat|rins|scald)(?:e|ed|ing)?\s+{_WHICH}{_VESSEL}(?:\s+first)?"
    rf"(?:{_IN_HOT_WATER})?"
    rf"|\brins(?:e|ed|ing)(?:\s+(?:it|out))?{_IN_HOT_WATER}"
    rf"|{_VESSEL}\s+warmed{_IN_HOT_WATER}",
    re.IGNORECASE,
)
"""A glass is warmed for hot drinks and rinsed for cold ones: it tells nothing."""
_TO_WHAT = r"(?:the|it|gently|slowly|everything|all|both|until|through|up)\b"
_HOT = re.compile(
    # Peppery things are not hot drinks.
    r"\bhot\b(?![\s-]+(?:(?:\w+\s+)?(?:sauce|ginger\s+beer)|honey|chill?i|chill?ies|chiles?"
    r"|peppers?|paprika)\b)"
    r"|\b(?:boil|boiling|boiled|simmer|simmered|simmering|steam|steamed|heated)\b"
    # What is heated is; heat and warmth alone are a taste.
    rf"|\b(?:heat|warm)\s+{_TO_WHAT}|\b(?:gently|slowly|then)\s+(?:heat|warm)\b"
    r"|(?:^|[.;:!\n])\s*(?:heat|warm)\s+(?!of\b|and\b|notes?\b|spices?\b|finish\b|comes\b)\w"
    r"|\b(?:over|on|off)\s+(?:the|an?)?\s*(?:\w+\s+)?heat\b"
    r"|\bserved?\s+(?:it\s+)?warm\b|\buntil\s+(?:\w+\s+)?warm\b"
    r"|\bwarm(?:ed)?\s+(?:milk|cream|water|coffee|tea|chocolate|cider|wine|port|sake|juice)\b",
    re.IGNORECASE,
)
_ON_ICE = re.compile(
    r"\b(?:stir(?:red|ring)?|build|built|building|pour|fill|in\s+the\s+glass)\b[^.;]*"
    r"\bice\b(?![\s-]+(?:cream|cold)\b)",
    re.IGNORECASE,
)
_STIRRED = re.compile(r"\bstir(?:red|ring)?\b", re.IGNORECASE)
_BUILT = re.compile(
    r"\b(?:build|built|building|pour|fill|layer|layered|top\s+(?:up\s+)?with|in\s+the\s+glass)\b",
    re.IGNORECASE,
)


def technique_of(method: str) -> Technique:
    """The technique a method's words name, *unknown* where they name none.

    *Build … and stir* is built; *shake … and pour* is shaken; anything warmed
    and neither shaken, blended, nor stirred or built on ice is hot.

    >>> technique_of("Dry shake, then shake hard with ice and double strain.")
    'shaken'
    """
    # "Shake without ice" keeps its verb; "do not shake" loses it.
    words = _NOT_DONE.sub(" ", method)
    for technique, sign in _SIGNS:
        if sign.search(words):
            return technique
    if _HOT.search(_WARMED_GLASS.sub(" ", words)) and not _ON_ICE.search(words):
        return "hot"
    stirred, built = _STIRRED.search(words), _BUILT.search(words)
    if stirred and (built is None or stirred.start() < built.start()):
        return "stirred"
    return "built" if built else "unknown"


def begins_a_method(line: str) -> bool:
    """Whether a line reads as an instruction and not as an ingredient."""
    first = line.split(maxsplit=1)[:1]
    return bool(first) and technique_of(first[0]) not in ("unknown", "hot") and " " in line.strip()


_TELLS = re.compile(
    r"(?:(?:and|so|then|now|just|okay|ok|finally|next|last|first|after[ ]that|once[ ]more|again"
    r"|all[ ]right"
    r"|alright|right|well|oh|also|you|we|i|you['’](?:re|ll|ve|d)|we['’](?:re|ll|d)|i['’](?:m|ll|d)|let['’]s|going|gonna"
    r"|want|wanna|need|like|have|got|to|can|could|will|would|should|always|please|gently|quickly|briefly|carefully"
    r"|slowly|really|only|simply|basically|here|it['’]s|time|dry|wet|hard|-)[ ,]+)*"
    r"(?:don['’]t|do not|never|you (?:should|can|could|might)|give (?:it|that|this|everything"
    r"|all|the)(?: \w+){0,4}"
    r" (?:shake|stir|swirl|mix|go|whirl|blitz|taste|minute|second|seconds|rest|muddle|press|roll"
    r"|toss|whip|turn)"
    r"|fill (?:it|the|your|a|each)\b[^,.;]*\bice(?= (?:and|then)\b)"
    r"|chill|discard|dump|serve|(?:double |fine |dry )?(?:strain|shake)|stir|muddle|build|blend"
    r"|(?:put|pop|place|stick) (?:it|that|this|everything|all|the lid)|bring (?:it|that|to)"
    r"|set (?:it|that|aside)|top (?:it|that) (?:up|off)?(?= and)|whisk|whip|beat|simmer|boil"
    r"|heat|warm|steep|infuse|reduce"
    r"|cover|seal|store|keep (?:it|in|for)|garnish and|combine (?:everything|all)|mix (?:it"
    r"|everything|all|well|together)"
    r"|shaking|stirring|straining|pouring it|break (?:it|them) up|swirl (?:it|and)|turn"
    r"|toss (?:it|that)|hold (?:it|the)"
    r"|remove|discard|peel and|press down|allow|cool it|cut the heat|strain"
    r"|swizzle|throw|roll|pour (?:it|that|this|over|into)|taste (?:it|and)"
    r"|(?:let|leave) (?:it|that)|wait (?:for|until|till)|repeat|enjoy|cheers"
    r"|that['’]s (?:it|your|the)|adjust|refrigerate|freeze|preheat)\b",
    re.IGNORECASE,
)


def tells_what_to_do(line: str) -> bool:
    """Whether a line that is no ingredient tells what to do, or speaks to whoever watches."""
    return bool(_TELLS.match(line.strip())) and " " in line.strip()
