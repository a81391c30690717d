"""What a line says of how many it is for: never taken for one serve without asking.

| written                        | asked, with this ready                  |
|--------------------------------|-----------------------------------------|
| 750 ml gin per 12 guests       | 62.5 ml gin                             |
| 2 oz gin (x2)                  | 4 oz gin                                |
| 1 bottle gin (serves 12)       | without an answer: a bottle has no size |
| 100 g sugar per litre          | without one: it is a proportion         |
| 2 oz gin per drink             | nothing: that is what a line says       |
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from functools import partial

from barkeep.domain.amounts.amount import Amount, show_range
from barkeep.domain.amounts.measures import dimension
from barkeep.domain.amounts.spoken import any_amount_at_start
from barkeep.domain.amounts.units import BarUnits
from barkeep.errors import AmountError, NegativeAmount
from barkeep.translation import tr

_COUNT = (
    r"(?:[0-9]{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty"
    r"|forty|fifty|(?:a|one)[ ]dozen)\b"
)
_FOR = re.compile(
    rf"\b(?:per|for|serves|makes|yields)[ ](?:about[ ]|around[ ]|every[ ])?(?P<count>{_COUNT})"
    r"(?![ ]?(?:ml|cl|dl|l|oz|g|kg|litres?|liters?|minutes?|mins?|seconds?|secs?|hours?|days?"
    r"|weeks?|dash(?:es)?|parts?|ounces?|cups?|times)\b)",
    re.IGNORECASE,
)
_TIMES = re.compile(r"(?:^|(?<=[ (]))[x×][ ]?(?P<times>[0-9]{1,2})\b", re.IGNORECASE)
_PROPORTION = re.compile(
    r"\bper[ ](?:every[ ])?(?:[0-9]+[ ]?)?(?:ml|cl|dl|l|litres?|liters?|bottles?|cups?|ounces?|oz"
    r"|quarts?|pints?|gallons?|kg|kilos?|g|pitchers?|jugs?|batch(?:es)?|bowls?|carafes?)\b",
    re.IGNORECASE,
)


def question_of(
    amount: Amount, notes: Sequence[str], units: BarUnits
) -> tuple[Callable[[], str], str, str | None] | None:
    """What says what is asked, the words it is asked of, and the amount of one serve, likely meant.

    None where nothing says that a line is for more or less than one.
    """
    for note in notes:
        proportion = _PROPORTION.search(note)
        if proportion:
            words = proportion.group()
            return partial(_of_a_proportion, words), words, None
        for_many = _FOR.search(note)
        count = _counted(for_many["count"], units) if for_many else None
        if for_many and count is not None and count != 1.0:
            words = note[for_many.start() :].strip(" .)")
            return partial(_of_many, words, count), words, _times(amount, 1.0 / count, units)
        times = _TIMES.search(note)
        if times and times["times"] != "1" and not _already(note, amount):
            words = times.group()
            told = partial(_of_several_times, words, times["times"])
            return told, words, _times(amount, float(times["times"]), units)
    return None


def _of_a_proportion(words: str) -> str:
    return tr("“{words}” is a proportion; write how much goes into one", words=words)


def _of_many(words: str, count: float) -> str:
    return tr(
        "“{words}” says that this is for {count:g}; write what goes into one",
        words=words,
        count=count,
    )


def _of_several_times(words: str, times: str) -> str:
    return tr("“{words}” may say that so much goes in {times} times", words=words, times=times)


def _already(note: str, amount: Amount) -> bool:
    """*2 x 25 ml*, which is counted in the amount."""
    return bool(re.match(r"[0-9]", note)) and amount.unit != "each"


def _counted(words: str, units: BarUnits) -> float | None:
    try:
        found = any_amount_at_start(f"{words} ", units)
    except (AmountError, NegativeAmount):
        return None
    return found.value if found else None


def _times(amount: Amount, times: float, units: BarUnits) -> str | None:
    """So much in words that can be poured; None where it cannot."""
    if dimension(amount.unit, units) not in ("volume", "mass") or amount.unit in ("bottle", "can"):
        return None
    high = None if amount.high is None else amount.high * times
    return show_range(amount.value * times, high, amount.unit, units)
