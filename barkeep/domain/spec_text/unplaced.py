"""What a line says that has no place in what was made of it: nothing of it is lost unasked.

Whatever else the reader does, at the end each number, unit and known ingredient
of a line stands in its amount, in its name, or in words that may hold it:

| words                 | may hold                                                      |
|-----------------------|---------------------------------------------------------------|
| a maker's             | no number, unit, article or *of*, nor another ingredient      |
| a note's              | no amount with a unit, nor another ingredient's name          |

An age, a strength and a ratio are no amounts: *12 year*, *at least 50 %*, *2:1*;
nor is how it is cut or served: *into 8 wedges*, *over ice*.
The same amount in another unit is a note: *30 ml (1 oz)*. So is an ingredient
that the note only tells apart: *preferably London dry*, *or brandy*, and with its
amount where it would do as well: *or ½ oz simple syrup*. A name written large beside
a word that no kind is called by is a maker's: *Salt Ladder*.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from barkeep.domain.amounts.amount import Amount, ReadAmount
from barkeep.domain.amounts.measures import dimension, to_quantity
from barkeep.domain.amounts.units import US_UNITS, BarUnits, Unit, unit_named
from barkeep.domain.ingredients.names import ADJECTIVES, LOOSENED, STATEMENT
from barkeep.domain.ingredients.tree import FamilyTree, singular
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.found import (
    ARTICLES,
    DIGIT,
    WORD,
    FoundName,
    amounts_in,
    is_a_number,
    names_in,
)
from barkeep.translation import tr, tr_noop

SAME_WITHIN = 0.25
"""How far, as a share, two amounts may differ and be one: *25 ml (1 oz)* (*common practice*)."""

_NO_AMOUNT = re.compile(
    r"[0-9]+(?:[.,][0-9]+)?[ -]?(?:%(?:[ ]?(?:vol|abv))?|proof\b|°[ ]?[CF]?|years?\b|yrs?\b|yo\b)"
    r"(?:[ -]?olds?\b)?"
    r"|[0-9]+(?:[.,][0-9]+)?[ ]?:[ ]?[0-9]+(?:[.,][0-9]+)?"
    r"|(?:[0-9./]+|[¼½¾])[ -]?(?:inch|cm|in)\b(?:[ ](?:strip|slice|stick|cube)\b)?"
    r"|\b(?:over|on|with|without|no)[ ](?:[^\W\d_]+[ ])?ice\b|\bice[ -]cold\b"
    r"|\b(?:in|at)[ ]a[ ](?:pinch|push)\b|\bin[ ](?:brine|syrup|oil|vinegar)\b"
    r"|\b(?:in|into)[ ](?:[0-9]+|[^\W\d_]+)[ ](?:wedges|slices|wheels|pieces|cubes|sticks)\b",
    re.IGNORECASE,
)

_QUOTED = re.compile(r"[\"“„«][^\"”“»]+[\"”“»]")
"""What is written as a name, whatever its words."""

_TIMES = re.compile(r"(?P<times>[0-9]{1,2})[ ]?[x×*][ ]?", re.IGNORECASE)

_ONLY_HEDGED = re.compile(
    r"(?:(?:about|around|roughly|approx\.?|approximately|ca\.?|circa|or|~|that's|i\.e\."
    r"|[/=,])[ ]?)*",
    re.I,
)

_OR_SO_MUCH = re.compile(
    r"or[ ](?:use[ ])?(?=[0-9.¼½¾]|an?[ ]|one|two|three|four|five|six|ten|fifteen|twenty|thirty"
    r"|forty|sixty|half|maybe|just)",
    re.IGNORECASE,
)

_TOLD_APART = re.compile(
    r"\b(?:or|not|no|nothing|never|don['’]?t[ ](?:use|sub|swap|try|add|take)|if|for[ ]the"
    r"|in[ ]place[ ]of|instead[ ]of|such[ ]as|preferably"
    r"|ideally|like|without|rather[ ]than|than|unless|from|vom|von|aus|du|d['’]un|dal|dall['’]"
    r"|del|similar[ ]to|reminds[ ]me[ ]of"
    r"|(?:so[ ])?that['’]?s[ ](?:the|your|my|our)|(?:i|we)[ ](?:also[ ])?(?:make|use|like|love"
    r"|prefer|have|had|take)"
    r"|(?:be)?cause|['’]cause|cos|since|these|those[ ]are|they['’]?re|this[ ]is|it['’]?s[ ](?:a"
    r"|like|basically|just)"
    r"|mine|ours|made[ ](?:with|from|of)|goes[ ]with|ersatzweise|alternativ|wahlweise|notfalls"
    r"|statt|anstatt"
    r"|anstelle|oder|à[ ]défaut|sinon|ou|au[ ]lieu[ ]de|plutôt[ ]que|in[ ]alternativa|oppure"
    r"|altrimenti|invece[ ]di"
    r"|al[ ]posto[ ]di|o[ ]in[ ]alternativa|en[ ]su[ ]defecto|o[ ]bien|o[ ]si[ ]no|si[ ]no"
    r"|en[ ]vez[ ]de|en[ ]lugar[ ]de"
    r"|(?:with|into|in|over|onto|on|after|before|alongside|under|to|against|between|beside)"
    r"[ ](?:the|your|all[ ]the|both|that|those))[ ]",
    re.IGNORECASE,
)

_THINNED = re.compile(
    r"\b(?:cut|thinned|diluted|let[ ]down|loosened)\b.*\bwith[ ](?:[\w]+[ ])?water\b", re.IGNORECASE
)
"""*Cut 1:1 with water*: how a thing is made ready, and no water of the drink."""

_AS_IT_TASTES = re.compile(
    r"\b[^\W\d_]+(?:-(?:heavy|led|driven|accented|dominant|y|like|ish|centric)|[- ]forward)\b"
    r"|(?:[^\W\d_]+[ ]){1,3}style$",
    re.IGNORECASE,
)
"""*Something juniper-heavy*: what a thing tastes of is no other thing."""

_AND_ALL = re.compile(
    r"\b(?:the[ ])?(?:yolk|white)s?[ ](?:too|as[ ]well|included|also|in[ ]there)\b"
    r"|\b[^\W\d_]+[ ]and[ ](?:all|everything)\b",
    re.IGNORECASE,
)
"""*Yolk and all*: a part of the thing that the line names."""

_WHAT_IT_IS = re.compile(
    r"the[ ](?:soda|(?:soft[ ]|fizzy[ ])?drink|liqueur|syrup|juice|spirit|wine|beer|mixer|cordial"
    r"|fruit|herb|spice|powder|tea)",
    re.IGNORECASE,
)
"""*(The soda)*: a note that says what sort of thing the name is."""

_WHICH_ONE_IT_IS = re.compile(
    r"\b(?:(?:that['’]?s|which[ ]is|it['’]?s|this[ ]is)[ ])?(?:the|my|our|an?|that|this)[ ]"
    r"(?:[\w'-]+[ ]){1,3}(?:ones?|kind|stuff|sort|type|version|flavou?r|style)\b",
    re.IGNORECASE,
)
"""*That's the almond one*: what tells which it is by what it is made of or tastes of."""

_SOMETHING_TO_TOP = re.compile(
    r"(?!(?:(?:plus|and|with)[ ](?:a[ ](?:bit|little|splash)[ ])?(?:more|extra|some|another)"
    r"|just|only|enough|use|used|as|a[ ]little|some|more)\b)[^\W\d_].*[ ]to[ ](?:top|fill)"
    r"(?:[ ]up)?",
    re.IGNORECASE,
)
"""*Rum 2 oz, fizz to top*: another thing, even where nobody knows it."""

_A_TIME = re.compile(
    r"\b(?:[0-9.,]+|[^\W\d_]+)[ -]?(?:(?:to|or|-)[ ]?(?:[0-9]+|[^\W\d_]+)[ -]?)?(?:seconds?"
    r"|secs?|minutes?|mins?"
    r"|hours?|hrs?|days?|weeks?|months?|times?|degrees)\b|\b(?:for|serves|between"
    r"|into)[ ](?:[0-9]+|[^\W\d_]+)\b"
    r"|\b(?:step|page|no\.?|number|day|batch|version|round|take|pt|part)[ ][0-9]{1,3}\b|\#[0-9]+",
    re.IGNORECASE,
)
"""*For thirty seconds*, *2 hours*, *page 3*: numbers that count nothing of the line."""

_NO_COUNT = frozenset({"one", "half", "couple", "few", "once", "quarter", "quarters", "third"})

_OR_SO_MANY = re.compile(
    r"(?:^|\b(?:or|maybe|perhaps|even|auch|ou|peut[ ]être|même|anche|forse|o|tal[ ]vez|incluso"
    r"|quizás?"
    r"|sogar|eher|lieber|vielleicht|oder|plutôt|piuttosto|mejor|make[ ]it|better|rather"
    r"|up[ ]to)[ ])"
    r"(?:[0-9]+(?:[.,/][0-9]+)?|[¼½¾]|[0-9]+[ ]?[¼½¾]|two|three|four|five|six|seven|eight|ten"
    r"|twelve)"
    r"(?=[ .!]*$)",
    re.IGNORECASE,
)
"""*Or 3*, *gern auch 6*, *maybe two if it is tart*: another number, of what the line counts."""

_VAGUE_UNITS = frozenset({"handful", "bunch", "scoop"})

_TOLD_APART_OF = re.compile(rf"{_TOLD_APART.pattern}(?:(?![ ]and[ ]).)*", re.IGNORECASE)
"""What is told apart, up to what is told beside it: *not lemon* in *not lemon and syrup*."""

_BETWEEN_NUMBERS = frozenset({"and", "a", "an", "of", "well", "to", "or", "few", "couple"})

_PIECES = frozenset({"count", "length"})

_GENERAL = frozenset({"fruit", "garnish"})
"""Words that a tree groups by, and that name nothing by themselves."""

_IN_GENERAL = re.compile(
    r"\b(?:for|some|the|your|of|more|extra)[ ](?:spices?|spirit|sweetener|seasoning|essence)$",
    re.IGNORECASE,
)
"""*For some spice two dashes of hot sauce*."""

_PARTS_OF_A_FRUIT = frozenset({"juice", "zest", "peel"})
"""What is taken of what the line names, though a tree may group ingredients under the word."""


@dataclass(frozen=True, slots=True)
class Stray:
    """Words that have no place in their line, and what they are."""

    words: str
    what: str

    def place_in(self, text: str) -> int:
        """The character, from 0, at which the words stand in a text; 0 where they do not."""
        found = re.search(rf"(?<!\w){re.escape(self.words)}(?!\w)", text)
        return found.start() if found else 0

    def say(self) -> str:
        """The question, in a sentence without its stop."""
        return tr(self.what, words=self.words)


@dataclass(frozen=True, slots=True)
class Placed:
    """What was made of a line: its amount, the keys of its ingredients, the words that stand
    beside, and whatever else was kept; `grouping` where the first only groups others."""

    amount: Amount | None
    wanted: tuple[str, ...]
    makers: tuple[str, ...]
    notes: tuple[str, ...]
    kept: tuple[str, ...] = ()
    grouping: bool = False


_ANOTHER_AMOUNT = tr_noop("“{words}” is a second amount; give what it measures a line of its own")

_WHOSE_AMOUNT = tr_noop("“{words}” was not understood as the amount; begin the line with it")

_WHOSE_NUMBER = tr_noop("“{words}” is a number that belongs to nothing here; write what it counts")

_IN_A_MAKER = tr_noop(
    "“{words}” stands where only a maker's words may; "
    "put the maker behind the ingredient in brackets, or correct it"
)

_ANOTHER_THING = tr_noop("“{words}” is another ingredient; give it a line of its own")

_DROPPED = tr_noop(
    "“{words}” has no place in this line; write it as a note in brackets, or correct it"
)


def unplaced(
    placed: Placed, beside: str, tree: FamilyTree, units: BarUnits = US_UNITS
) -> Iterator[Stray]:
    """Each thing of a line that has no place. `beside` is the line without its amount."""
    for maker in placed.makers:
        yield from _in_a_maker(maker, placed, tree, units)
    for note in placed.notes:
        yield from _in_a_note(note, placed, tree, units)
    yield from _dropped(beside, placed, tree)


def _in_a_maker(maker: str, placed: Placed, tree: FamilyTree, units: BarUnits) -> Iterator[Stray]:
    plain = _NO_AMOUNT.sub(" ", maker)
    quoted = _QUOTED.sub(" ", plain)
    if not any(found.unit for _, found in _amounts(plain, units)):
        plain = quoted  # "47 Steps"
    what = _ANOTHER_AMOUNT if placed.amount else _WHOSE_AMOUNT
    amounts = [each for each, found in _amounts(plain, units) if found.unit or not placed.amount]
    yield from (Stray(words, what) for words in amounts)
    if amounts:
        return
    for word in _words(plain):
        if is_a_number(word) or unit_named(word) or word.casefold() in ARTICLES:
            yield Stray(word, _IN_A_MAKER)
    yield from _names(plain, placed, tree)


def _in_a_note(note: str, placed: Placed, tree: FamilyTree, units: BarUnits) -> Iterator[Stray]:
    plain = _NO_AMOUNT.sub(" ", note).strip()
    times = _TIMES.match(plain)
    if _OR_SO_MUCH.match(plain) and not _OR_SO_MANY.search(plain):
        return  # or ½ oz simple syrup: what would do as well
    for words, amount in _amounts(plain, units):
        if len(_words(words)) == 1 and not is_a_number(words):
            continue  # just drop them in
        if placed.amount and (amount.value, amount.unit) == (
            placed.amount.high,
            placed.amount.unit,
        ):
            continue  # up to 20 ml, which is the amount's upper end
        if times and plain.endswith(words) and _makes_up(times["times"], amount, placed.amount):
            continue  # 50 ml, which were written as 2 x 25 ml
        if amount.unit not in (None, "each") and not (
            _says_only_amounts(plain, units) and is_the_same(amount, placed.amount, units)
        ):
            yield Stray(words, _ANOTHER_AMOUNT if placed.amount else _WHOSE_AMOUNT)
    counts = [each for each in _words(plain) if folded(each) not in _BETWEEN_NUMBERS]
    measured = any(amount.unit for _, amount in _amounts(plain, units))
    bare = bool(counts) and all(map(is_a_number, counts)) and not measured
    bare = bare or (not measured and _OR_SO_MANY.search(plain) is not None)
    if placed.amount and bare and not _says_again(note, placed.amount):
        yield Stray(note, _WHOSE_NUMBER)
    if placed.amount is None and not bare:
        yield from (
            Stray(each, _WHOSE_NUMBER)
            for each in _words(_A_TIME.sub(" ", plain))
            if is_a_number(each) and folded(each) not in _NO_COUNT
        )
    if _SOMETHING_TO_TOP.fullmatch(note):
        yield Stray(note, _ANOTHER_THING)
    elif not _WHAT_IT_IS.fullmatch(note):
        told = _THINNED.sub(" ", LOOSENED.sub(" ", _TOLD_APART_OF.sub(" ", plain)))
        told = _AND_ALL.sub(" ", STATEMENT.sub(" ", _AS_IT_TASTES.sub(" ", told)))
        better = _says_which_is_better(plain, placed, tree) or _WOULD_DO.fullmatch(plain)
        better = better or _YOU_CAN.fullmatch(plain)
        told = "" if better else told
        told = "" if _is_of_its_name(note, placed, tree) else told
        told = told if placed.grouping else _WHICH_ONE_IT_IS.sub(" ", told)
        yield from _names(told, placed, tree)


_PLEASE_USE = re.compile(
    r"please[ ](?:only[ ])?use[ ](?P<what>(?:[^\W\d_]+[ ]){0,2}?(?P<last>[^\W\d_]+))[ .!]*",
    re.IGNORECASE,
)
"""*One egg white, please use fresh eggs*."""


def _is_of_its_name(note: str, placed: Placed, tree: FamilyTree) -> bool:
    """Whether what is asked for in a note is what the line's own name speaks of."""
    asked = _PLEASE_USE.fullmatch(note)
    own = {word for key in placed.wanted for word in folded(tree.name(key)).split()}
    return asked is not None and singular(folded(asked["last"])) in own


_WOULD_DO = re.compile(
    r"(?:sub(?:s|bed|bing|stitute[sd]?|stituting)?|swap(?:ped)?|orig(?:inal(?:ly)?)?|alt(?:ernat(?:e|ive)(?:ly)?)?"
    r"|replac(?:es|ing)|in[ ]lieu[ ]of|alternativ\w*|ersatzweise|ersatz"
    r"|sinon|altrimenti|wahlweise)\b[ .:,].*"
    r"|(?:(?!(?:on|in|with|and|plus|over|add)\b)[\w'’-]+[ ]){1,5}(?:works?|will[ ]do|would[ ]do"
    r"|can[ ]be[ ]used|(?:is|are)[ ](?:(?:also|totally|just|perfectly)[ ])?"
    r"(?:fine|ok|okay|good|great|nice|alright))"
    r"(?:[ ](?:too|as[ ]well|here|also|instead|just[ ]as[ ]well|in[ ]a[ ]pinch))*[ .!]*",
    re.IGNORECASE,
)
"""*Sub: vodka*, *vodka works too*: what would do as well."""

_YOU_CAN = re.compile(
    r"(?:(?:and|or|but|though|maybe)[ ,]+)?(?:you|we|one)[ ](?:(?:can|could|might)[ ]also"
    r"|also[ ](?:can|could))[ ](?:use|sub|swap|go"
    r"|do|make|try)\b[^0-9]*"
    r"|(?:you|we)[ ](?:can|could|might)[ ](?:also[ ])?(?:use|sub|swap|go|do|make|try)\b.*"
    r"\b(?:too|instead|as[ ]well|also|here|if[ ].*)[ .!]*",
    re.IGNORECASE,
)
"""*You can do vodka too*."""

_IF_THERE = re.compile(
    r"(?:(?:use|sub|subbed|substitute|swap)[ ](?:in[ ]|with[ ]|for[ ])?)?(?P<what>[\w' -]+?)[ ,]+"
    r"(?:if|when|where(?:ver)?)[ ](?:you[ ](?:can|have|must|need)|it['’]s|in[ ]season|there['’]s"
    r"|you['’](?:ve|re))\b.*",
    re.IGNORECASE,
)
_IN_ITS_PLACE = re.compile(r"(?:sub|subbed|substitute|swap)[ ]", re.IGNORECASE)


def _says_which_is_better(note: str, placed: Placed, tree: FamilyTree) -> bool:
    """*Blood orange if you can find it*, of orange juice; *sub vodka if you must*."""
    found = _IF_THERE.fullmatch(note.strip())
    if found is None:
        return False
    if _IN_ITS_PLACE.match(note.strip()):
        return True
    last = (folded(tree.name(each)).split()[-1] for each in placed.wanted)
    kinds = (tree.key_of(f"{found['what'].strip()} {each}") for each in last)
    return any(kind and tree.is_a(kind, each) for kind in kinds for each in placed.wanted)


def _says_again(note: str, amount: Amount) -> bool:
    """Whether a note of nothing but a number says the line's own again."""
    return f"{amount.value:g}" in _words(note)


def _says_only_amounts(note: str, units: BarUnits) -> bool:
    """*About ¾ oz / 22 ml*: whether a note says how much, and nothing else."""
    for words, _ in _amounts(note, units):
        note = note.replace(words, "/", 1)
    return bool(_ONLY_HEDGED.fullmatch(note))


def _makes_up(times: str, once: ReadAmount, whole: Amount | None) -> bool:
    return whole is not None and once.value * float(times) == whole.value


def _dropped(beside: str, placed: Placed, tree: FamilyTree) -> Iterator[Stray]:
    """Numbers, units and ingredients of the line that stand in nothing that was made of it."""
    plain = _words(_NO_AMOUNT.sub(" ", beside))
    counts = [word for word in plain if is_a_number(word) or unit_named(word)]
    if not counts and len(plain) == 1:
        return
    names = (name for key in placed.wanted for name in tree[key].all_names)
    texts = (*placed.makers, *placed.notes, *placed.kept, *names)
    kept = frozenset[str]().union(*map(_forms_in, texts))
    yield from (Stray(word, _DROPPED) for word in counts if folded(word) not in kept)
    left = [word for word in plain if folded(word) not in kept and word not in counts]
    if left:
        yield from _names(" ".join(left), placed, tree)


@lru_cache(maxsize=8192)  # the names of the same few kinds are looked at again and again
def _forms_in(text: str) -> frozenset[str]:
    """Every word of a text, of one and of many."""
    return frozenset(
        form
        for said in _words(text)
        for word in (folded(said), *_words(folded(said)))
        for form in (word, f"{word}s", f"{word}es", word.rstrip("s"))
    )


def _amounts(text: str, units: BarUnits) -> Iterator[tuple[str, ReadAmount]]:
    """The words of each number and its unit, if any; an article is no number of pieces."""
    for each in amounts_in(text, units):
        said, found = text[each.start : each.end].strip(), each.amount
        article = folded(said).split()[0] in ARTICLES
        if (article or not is_a_number(_words(said)[0])) and not _measures(found.unit):
            continue
        if found.unit is None and not DIGIT.match(said):
            continue
        yield said, found


def _measures(unit: str | None) -> bool:
    return unit is not None and dimension(unit) not in _PIECES


def is_the_same(found: ReadAmount, amount: Amount | None, units: BarUnits) -> bool:
    """Whether an amount only says another again; what cannot be compared is taken to."""
    if amount is None or found.unit is None:
        return False
    if dimension(found.unit) != dimension(amount.unit) or amount.unit in _VAGUE_UNITS:
        return True
    if dimension(amount.unit) not in ("volume", "mass"):
        return found.value == amount.value
    unit: Unit = "ml" if dimension(amount.unit) == "volume" else "g"
    mine = to_quantity(amount, unit, units)
    other = to_quantity(Amount(found.value, found.high, found.unit), unit, units)
    return abs(mine - other) <= SAME_WITHIN * max(mine, other)


def _names(text: str, placed: Placed, tree: FamilyTree) -> Iterator[Stray]:
    """The names of ingredients in a text that are not those of the line."""
    for each in names_in(text, tree):
        said = text[each.start : each.end]
        general = folded(said) in _GENERAL or _IN_GENERAL.search(text[: each.end])
        if general or _is_in_a_proper_name(each, text, tree):
            continue  # less if your fruit is ripe; Salt Ladder
        if not _is_one_of(each.key, said, placed, tree):
            yield Stray(said, _ANOTHER_THING)


def _is_in_a_proper_name(name: FoundName, text: str, tree: FamilyTree) -> bool:
    """Whether a name is written large beside a word written large that no kind is called by."""
    if not all(word[:1].isupper() for word in _words(text[name.start : name.end])):
        return False
    before, after = _words(text[: name.start])[-1:], _words(text[name.end :])[:1]
    return any(
        word[:1].isupper() and word[1:].islower() and folded(word) not in tree.words | ADJECTIVES
        for word in (*before, *after)
    )


def _is_one_of(key: str, said: str, placed: Placed, tree: FamilyTree) -> bool:
    """Whether it is the line's own ingredient, a kind above or below, or what its name says.

    *Lime juice, from 2 limes* names nothing else.
    """
    own = [folded(tree.name(each)) for each in placed.wanted]
    if folded(said) == "gomme" and any(each.endswith(" syrup") for each in own):
        return True  # raspberry syrup, gomme: what it is made with
    called = (folded(said), folded(tree.name(key)))
    return (
        folded(said) in _PARTS_OF_A_FRUIT
        or any(tree.is_a(key, each) or tree.is_a(each, key) for each in placed.wanted)
        or any(each in name for name in own for each in called)
    )


def _words(text: str) -> list[str]:
    return [each.group() for each in WORD.finditer(text)]
