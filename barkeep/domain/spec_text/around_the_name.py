"""What stands before and after the name in a line of a spec: marks, amounts, and what is done.

| written                         | taken as                                  |
|---------------------------------|-------------------------------------------|
| - [ ] 2 oz gin, > 2 oz gin      | the mark of a list is no part of the line |
| and 2 oz gin, + 2 oz gin        | the joining word means nothing            |
| (optional) 2 dashes saline      | optional                                  |
| ~2 oz gin, about 2 oz gin       | the hedge is a note: *about*              |
| gin, about 2 oz; gin ~60 ml     | the same after the name                   |
| garnish with …                  | a garnish                                 |
| top with soda, float 15 ml rum  | a note                                    |
| juice of half a lime            | 0.5 of a lime, noted *juice*              |
| 30 ml (1 oz) gin, 1 oz / 30 ml  | the first amount, the other a note        |
| 6/8 pcs raspberries             | a range of pieces                         |
| gin 2 oz, gin: 60 ml            | the amount after the name                 |
| dark rum float, absinthe, rinse | one float, one rinse                      |
| so I'll start with 2 oz of gin  | the words before the amount are a note    |
| a fat ounce, a good two ounces  | a note: *fat*, *good*                     |
| 2 x 25 ml, 1 (13.5 oz) can      | 50 ml; one can that holds 13.5 oz         |
| rinse the glass with absinthe   | one rinse                                 |
| express a lemon peel over …     | a garnish, noted *expressed*              |
| salt rim, rim: half salt        | a garnish, noted *rim*, *half rim*        |
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace

from barkeep.domain.amounts.amount import Amount, ReadAmount, unit_at
from barkeep.domain.amounts.measures import dimension
from barkeep.domain.amounts.spoken import HOW_FULL, any_amount_at_start
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.ingredients.line_words import turns
from barkeep.domain.ingredients.names import WORDS_AFTER
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.found import names_in
from barkeep.errors import AmountError, NegativeAmount

MARK = re.compile(
    r"(?:(?:--+|[-*•·–—▪◦▢☐☑>→●○■□‣⁃✓✔]|//+)[ ]+|[•·▪◦▢☐☑→●○■□‣⁃✓✔]|\(?[0-9]{1,2}\)[ ]*"
    r"|[0-9]{1,2}\.[ ]+)?(?:\[[ xX✓]?\][ ]*)?"
)
"""What a list puts in front of its lines: bullets, numbers and boxes to tick."""


_JOIN = re.compile(
    r"(?:(?:and|plus)\b|[+&])[ ,:]*|(?P<needs>(?:(?:then|also|finally|lastly|next|add"
    r"|(?:don['’]?t|do[ ]not|not)[ ]forget(?:ting)?(?:[ ](?:the|your|about(?:[ ]the)?))?"
    r"|remember(?:[ ](?:the|your))?)\b[ ,:]*)+)",
    re.IGNORECASE,
)

_OPTIONAL = re.compile(
    r"[(\[][ ]*opt(?:ional(?:ly)?)?\.?[ ]*[)\]][ ]*[:,–-]?[ ]*"
    r"|opt(?:ional(?:ly)?)?\.?[ ]*[:,–-][ ]*|(?P<bare>opt(?:ional(?:ly)?|\.)[ ]+)",
    re.IGNORECASE,
)

_HEDGES = (
    r"[~≈±]|(?:ca|c|approx|max|min)\.|(?:ca|circa|approx|approximately|about|around|roughly|nearly|almost"
    r"|maybe|perhaps|possibly|barely|exactly|max|min|just[ ](?:under|over|about)"
    r"|(?:just[ ])?(?:a[ ](?:(?:tiny|wee|little)[ ])?(?:bit|little|touch|hair|tad|smidge|smidgen"
    r"|whisker|shade|fraction)|slightly|ever[ ]so[ ]slightly)[ ](?:under|over|above|below"
    r"|(?:more|less)[ ]than|s(?:hy|hort)[ ]of)|(?:just[ ])?(?:shy|short)[ ]of"
    r"|close[ ]to|call[ ]it"
    r"|ish|(?:maybe|about|just|say|something|probably)[ ]like|like|probably|say"
    r"|something[ ]like|somewhere[ ]around|anywhere[ ]from"
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


_SPEECH_LIST = """
    so i i'm im i've i'd i'll ive we we're we've we'll we'd you you'll you'd you've let's lets he
    gonna going to go goes going start starting started begin beginning with add adding adds added
    put putting puts pour pouring measure measuring drop dropping throw throwing toss take taking
    get getting grab use using need needs want like love have has had got give it that this these
    is are be will would can could should might here here's there there's now next up then first
    second third last lastly finally and also plus after followed follow by in into on onto top of
    for our my your me us the base spirit drink one two glass tin shaker mixing bottom ok okay
    alright right well um uh er oh just only say said bit more comes come another as well too it's
    its that's thats what about away fresh good nice lovely little really very still back over from
    out off do did does done doing think thinking reckon see how ahead slide sneak work pop chuck
    build building balance sour sweet bitter acid side sugar citrus fruit split goes everything else
    throughout always usually today tonight episode recipe spec call calls called calling if feel
    make making makes made mix end finish finishing round rounding bring hit hitting knock finally
    combine combining juice stir shake muddle grate crack cracking cracked at them other along
    alongside thing things people somewhere slap slapping tuck squeeze spoon spooning whisk
    schooner mug flute goblet tumbler pitcher jug kick people folks guests place sprinkle tell
    under almost nearly roughly exactly shy
    tear break rip slice chop smash bruise press spank clap smack if sweeter stronger tarter drier
    stiffer lighter sourer another prefer fancy them
    told probably there'll we're they they'll he'll she he's she's said says gets every any only
"""
_SPEECH = frozenset(_SPEECH_LIST.split()) | {"some people", "some folks", "some guests"}
"""What is said before an amount without meaning anything of it."""

_SAID_ONLY_TO_JOIN = frozenset({"and", "then", "plus", "also", "finally", "lastly", "next", "add"})

_MOST_SPEECH = 16
"""Words before an amount; whoever says more tells a story."""

_IF_YOU_LIKE = re.compile(
    r"\b(?:if[ ](?:you|you'd|i)[ ](?:like|want|fancy|wish|prefer|have[ ](?:it|some|any|them|one))"
    r"|optionally)\b",
    re.IGNORECASE,
)

_GARNISH = re.compile(
    r"(?:(?:for|as|to)[ ](?:an?[ ]|the[ ]|our[ ]|my[ ])?)?garnish(?:ed|ing|es)?"
    r"(?:[ ]*[:–-]|[ ](?:(?:it|that|this|them|each|everything|(?:the|your|each)[ ](?:drink"
    r"|glass))[ ])?with\b|[ ](?:is|of)\b|(?<=or garnish)[ ]*,?(?=[ ])"
    r"|(?<=s garnish)[ ]*,?(?=[ ])|(?<=r garnish)[ ]*,?(?=[ ]))[ ]*",
    re.IGNORECASE,
)
_ONLY_SAID = re.compile(
    r"(?:(?:just|simply|only|(?:i|we)(?:['’](?:ll|m|re|d))?[ ](?:use|using|do|doing|like|go[ ]with"
    r"|going[ ]with|want|take)|use|let['’]s[ ](?:do|use))[ ]+)+(?=\w)",
    re.IGNORECASE,
)
"""*For garnish just a lime wheel*."""
_ALL_OF_IT = (
    r"(?:[ ](?:it|this|that|everything|(?:(?:the|your|each|a)[ ])?"
    r"(?:glass|glasses|flute|mug|drink|rest|whole[ ]thing)"
    r"(?:[ ]of[ ](?:it|(?:(?:the|your|each)[ ])?(?:glass|flute|mug|coupe|drink|tumbler)))?))?"
)
_TOP = re.compile(
    rf"(?:(?P<verb>top(?:ped|ping)?|fill(?:ed|ing)?|lengthen(?:ed|ing)?|charge[d]?|finish(?:ed|ing)?"
    rf"|cap(?:ped)?|crown(?:ed)?){_ALL_OF_IT}(?:[ ]up|[ ]off|[ ]out)?[ ](?:with|by)"
    rf"|(?P<short>top))[ :]+",
    re.IGNORECASE,
)
_VESSEL = (
    r"(?:(?:the|an?|your|my|each|our)[ ])?(?:[\w-]+[ ])?"
    r"(?:glass(?:es)?|coupes?|flutes?|goblets?|tumblers?|mugs?|inside|rim)"
)
_RINSE = re.compile(
    r"(?:absinthe[ ])?rinse[ ]*[:–-][ ]*(?=\w)|"
    rf"(?:(?:and|then|now|i|we|you|just|first|so|i['’]m|we['’]re|i['’]ll|we['’]ll|gonna)[ ,]+)*"
    rf"(?P<verb>rins|wash|coat|season|swirl|spray|mist|spritz)(?:e|ing)?[ ](?:out[ ]|down[ ])?"
    rf"{_VESSEL}"
    r"[ ](?:out[ ])?with[ ](?:(?:just[ ])?a[ ](?:(?:little|tiny|wee)[ ])?(?:bit|touch|hint"
    r"|splash|dash|drop)[ ]of[ ])?",
    re.IGNORECASE,
)
_EXPRESS = re.compile(
    r"(?P<how>express(?:ed)?|flame|spritz|twist)[ ](?:the[ ])?"
    r"(?:oils?[ ](?:of|from|out[ ]of)[ ])?"
    r"(?=(?:an?|one|the|some|two)[ ]|[\w]+[ ](?:peel|twist|zest))",
    re.IGNORECASE,
)
_GRATE = re.compile(
    r"(?P<how>grate|dust|sprinkle|shave|grind)[ ](?:(?:some|a[ ](?:little|bit[ ]of)|over)[ ])?"
    r"(?=\w[^,;]*[ ](?:over|on)(?:[ ](?:it|top|the[ ](?:top|drink|glass|foam|surface)))?[ .]*$)",
    re.IGNORECASE,
)
"""*Grate some nutmeg over it*."""
_GRATED = {"grate": "grated", "dust": "dusted", "sprinkle": "sprinkled", "shave": "shaved"}
_OVER_IT = re.compile(
    r"[ ](?:over|on|across|above)(?:[ ](?:it|top|the[ ](?:top|drink|glass|surface)))?[ ]*"
    r"(?P<rest>(?:[,;(].*|and[ ].*|then[ ].*)?)$",
    re.IGNORECASE,
)
"""*Express a lemon peel over (the drink)*: where a thing is expressed, behind it."""
_RIM = re.compile(
    r"(?:(?:an?|the)[ ])?(?P<half>half(?:[ -]a)?[ -])?(?P<what>[^\W\d_][\w' -]*?)"
    r"(?<![ ]the)(?<![ ]of)(?<![ ]to)(?<![ ]on)[ -](?:rim(?:med)?)(?:[ ](?:the["
    r" ])?glass)?(?![\w-])[ ]*",
    re.IGNORECASE,
)
_ON_THE_RIM = re.compile(
    r"(?P<what>[^\W\d_][\w' -]*?)[ ](?:on|around"
    r"|along)[ ](?:the[ ])?(?:(?P<half>half)(?:[ ]of)?[ ])?"
    r"(?:the[ ]|a[ ])?(?:rim|edge|lip)(?:[ ]of[ ]the[ ]glass)?(?![\w-])[ ]*",
    re.IGNORECASE,
)
_RIM_WITH = re.compile(
    rf"(?:rim(?:med)?(?:[ ](?:(?P<some>half|part)(?:[ ]of)?[ ])?{_VESSEL})?"
    r"|(?:salt|sugar|coat|dip|frost|crust)[ ](?:the[ ])?(?P<part>half(?:[ ]of)?[ ](?:the[ ])?)?rim"
    r"(?:[ ]of[ ]the[ ]glass)?)(?:[ ]in|[ ]with|[ ]*[:–-])[ ]*"
    r"(?P<half>half(?:[ ]with|[ ]in)?[ ])?",
    re.IGNORECASE,
)
_RIMMED_WITH = re.compile(
    r"(?P<what>salt|sugar)[ ](?:(?P<half>half)[ ](?:of[ ])?)?(?:the|your|a|each|its)[ ]"
    r"(?:(?!of[ ])[\w'’]+[ ])?rim(?:[ ]of[ ](?:the|your|each)[ ]\w+)?(?=[ .]*(?:$|[,;(]))",
    re.IGNORECASE,
)
"""*Salt half the rim*: what is done names what with."""
_LOOSE = re.compile(r"(?P<word>float|rinse)(?:[ ]with|[ ]on)?[ :]+(?!of\b)", re.IGNORECASE)
_PART_OF = re.compile(
    r"(?:the[ ])?(?P<part>juice|zest|peel|pulp|flesh|seeds)[ ](?:of|from)[ ]+(?:the[ ](?=\w))?",
    re.IGNORECASE,
)
_OF_AN_EGG = re.compile(
    r"(?P<count>.{0,12}?)(?:the[ ])?\b(?P<part>white|yolk)s?[ ](?:of|from)[ ]"
    r"(?:an?[ ]|one[ ]|1[ ]|the[ ])?(?P<how>(?:(?:small|medium|large|big|fresh|free[ -]range"
    r"|whole|extra"
    r"|very|good|nice|organic)[ ])*)eggs?\b",
    re.IGNORECASE,
)
_HALF_A = re.compile(
    r"(?:a[ ])?(?P<share>half|quarter)[ ](?:of[ ])?an?[ ]+(?!dozen\b)", re.IGNORECASE
)
_SHARES = {"half": 0.5, "quarter": 0.25}

_HOW_FULL = re.compile(rf"(?:an?[ ])?(?P<how>{'|'.join(HOW_FULL)})[ ](?=\w)", re.IGNORECASE)

_ARTICLE = re.compile(r"an?[ ]+(?=\w)", re.IGNORECASE)

_PIECES = re.compile(r"(?P<low>[0-9]{1,2})/(?P<high>[0-9]{1,2})(?=[ ]*[^\W\d_])")
_PLAIN_FRACTIONS = {(1, 2), (1, 3), (2, 3), (1, 4), (3, 4), (1, 8), (3, 8), (5, 8), (7, 8)}
_PIECE_UNITS = frozenset(
    {"piece", "leaf", "sprig", "slice", "wedge", "wheel", "cube", "stick", "twist", "peel", "each"}
    | {"bunch", "scoop", "chunk"}
)
_AFTER_AMOUNT = re.compile(
    r"[ ]*(?:\((?P<aside>[^()]*)\)[ ]*(?=\w))?(?P<each>(?:of[ ]+)?each\b[ :]*)?"
    r"(?:,?[ ]*worth(?=[ ]))?(?:,?[ ]*of[ ]+)?(?:(?:the|an?|that|this|our)[ ]+)?",
    re.IGNORECASE,
)
_TWIN = re.compile(
    r"[ ]*[/=≈|][ ]*|,?[ ]+or[ ]+(?=[0-9a-z])|,[ ]*(?:that's|which[ ]is|so|i\.e\.)[ ]+"
    r"|[ ]+(?:that['’]s|which[ ]is)[ ]+",
    re.IGNORECASE,
)
_TIMES = re.compile(r"(?P<times>[0-9]{1,2})[ ]?[x×*][ ]?(?=[0-9.¼½¾])", re.IGNORECASE)
_PACKAGE = re.compile(
    r"(?:[ ]*[x×])?[ ]*[(\[]?[ ]*(?P<size>[0-9][^()\[\]]*?)[ ]*[)\]]?[ -]*"
    r"(?P<pack>bottles?|btls?|cans?|tins?)\b",
    re.IGNORECASE,
)
_VESSEL_OF = re.compile(
    r"(?:an?[ ])?(?:glass|schooner|mug|tankard|flute|tumbler|cup|bowl|pot|jug)[ ]of[ ](?=\w)",
    re.IGNORECASE,
)
_NUMBER_WORDS = (
    "an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|fifty"
    "|sixty|half|quarter|few|couple|dash|pinch|splash"
)

_MAY_BEGIN = re.compile(
    rf"(?<![^ (:–—~≈±=@|-])(?=[0-9.¼½¾⅓⅔⅛⅜⅝⅞]|(?:{_NUMBER_WORDS})\b)", re.IGNORECASE
)

_NOT_BEFORE = re.compile(
    r"(?:^|.*[ ,(])(?:into|of|with|about|over|in|to|for|at|by|from|least|and|or|plus|a|cut)[ ]*$",
    re.IGNORECASE,
)
_REST_IS_NOTES = re.compile(r"[ ]*(?:$|[,(;#].*|[–—-]+[ ].*)")
_LOOSE_AFTER = re.compile(
    r"(?:[ ]*[,(–-][ ]*|[ ])(?:(?:to|as|for)[ ](?:an?[ ]|the[ ])?)?"
    r"(?P<word>float(?:ing)?|rins(?:e|ing))"
    r"(?:[ ]on[ ]top|[ ](?:the[ ])?glass)?[ ]*\)?(?P<tail>[ ]*(?:[,;(].*)?)$",
    re.IGNORECASE,
)


@dataclass
class Draft:
    """A line while it is being taken apart; `at` is where `rest` begins in the text.

    `plain` is all of that text, and the line begins in it at `begins`, after its mark.
    The amount stands from `amount_at` to `amount_end`, as far as it is written in one piece.

    `each` says that the amount is of each of the things that follow, and
    `by_the_piece` that its unit is what one piece is called: *2 slices orange*;
    `holds` is the size of a bottle or can that is written beside it; `beside_others`
    says that the text stands with other ingredients on one line.
    """

    rest: str
    at: int
    units: BarUnits
    plain: str = ""
    begins: int = 0
    amount: Amount | None = None
    amount_at: int = 0
    amount_end: int = 0
    hedges: list[str] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    optional: bool = False
    garnish: bool = False
    each: bool = False
    by_the_piece: bool = False
    holds: Amount | None = None
    beside_others: bool = False

    @property
    def beside_amount(self) -> str:
        """The text with space in place of the amount, so that all else stays where it is."""
        gap = " " * (self.amount_end - self.amount_at)
        return self.plain[: self.amount_at] + gap + self.plain[self.amount_end :]

    def advance(self, count: int) -> None:
        """Leave so many characters behind."""
        self.rest, self.at = self.rest[count:], self.at + count

    def take(self, pattern: re.Pattern[str]) -> re.Match[str] | None:
        """Leave behind what a pattern finds at the start."""
        found = pattern.match(self.rest)
        if found:
            self.advance(found.end())
        return found


def begun(plain: str, units: BarUnits) -> Draft:
    """A line without the space, bullet or number in front of it."""
    draft = Draft(plain.rstrip(), 0, units, plain)
    draft.advance(len(draft.rest) - len(draft.rest.lstrip(" ")))
    draft.take(MARK)
    draft.advance(len(draft.rest) - len(draft.rest.lstrip(" ")))
    draft.begins = draft.at
    return draft


def take_around(draft: Draft) -> None:
    """Take everything off that stands around the name.

    Raises `AmountError` or `NegativeAmount`.
    """
    _take_lead_ins(draft)
    if _take_speech(draft):
        _take_lead_ins(draft)
    draft.garnish = bool(draft.take(_GARNISH))
    if draft.garnish and (said := draft.take(_ONLY_SAID)):
        draft.hedges.append(said.group().strip().lower())
    if _take_rim(draft):
        return
    if plenty := _noted_plenty(draft):
        draft.notes += plenty
        return
    _take_use(draft)
    _take_front(draft)
    if draft.amount is None:
        _take_after(draft)
    _take_loose(draft)


_TO_TOP_BEHIND = re.compile(r"[ ]to[ ](?:top|fill)(?:[ ]up)?[ .]*$", re.IGNORECASE)
_TO_TASTE = re.compile(
    r"(?!(?:more|extra|some|plus|and|with|or|adjust|less|a|an|the|your|any)\b)[^,;()]+?"
    r"[ ,]+to[ ]taste[ .]*",
    re.IGNORECASE,
)
"""*Sugar to taste*, and no more of what stands before."""
_TELLS_OF_THE_LAST = re.compile(
    r"(?:from|that['’]?s|that[ ]is|which|i\.e\.|it['’]?s)\b", re.IGNORECASE
)
"""How a piece begins that tells of the thing before it: *from about 3 limes*."""


def begins_an_item(text: str, tree: FamilyTree, units: BarUnits) -> bool:
    """Whether a piece of a line is a line by itself: an amount or a use, and a name after it."""
    if _TELLS_OF_THE_LAST.match(text):
        return False
    draft = begun(text, units)
    try:
        take_around(draft)
    except (AmountError, NegativeAmount):
        return False
    used = any(
        each in ("to top", "to fill", "rim", "half rim", "expressed", *_GRATED.values())
        for each in draft.notes
    )
    tops = _TO_TOP_BEHIND.search(draft.rest)  # soda to top
    used = used or bool(_TO_TASTE.fullmatch(draft.rest))
    if draft.amount is None and not used and not (tops and draft.rest[: tops.start()].strip()):
        return False
    name = next(names_in(draft.rest, tree), None)
    return name is not None and not _is_only_one(draft, name.key, text, tree)


def _is_only_one(draft: Draft, key: str, text: str, tree: FamilyTree) -> bool:
    """*2 oz gin, a London dry if possible*: an article measures nothing that is poured."""
    counted = draft.amount is not None and draft.amount.unit == "each"
    said = text[draft.amount_at : draft.amount_end].strip().casefold()
    poured = tree[key].unit == "ml" and not folded(tree.name(key)).startswith("egg ")
    return counted and said in ("a", "an") and poured


def _take_speech(draft: Draft) -> bool:
    """Take off what is only said before an amount: *so I'm going to start with*."""
    if draft.rest[:1].isnumeric():
        return False
    for count, word in enumerate(_SPOKEN_WORD.finditer(draft.rest)):
        rest = draft.rest[word.start() :]
        if _begins_an_amount(rest, draft.units) or _begins_a_use(rest):
            if not count or _is_nothing_but_an_amount(rest, draft.units):
                return False  # sugar 15
            said = draft.rest[: word.start()].strip(" ,.:;–—-!")
            draft.advance(word.start())
            draft.optional = draft.optional or bool(_IF_YOU_LIKE.search(said))
            words = {each.group().casefold() for each in _SPOKEN_WORD.finditer(said)}
            if not words <= _SAID_ONLY_TO_JOIN:
                draft.hedges.append(said)
            return True
        if word.group().casefold().replace("’", "'") not in _SPEECH or count == _MOST_SPEECH:
            return False
    return False


def _is_nothing_but_an_amount(text: str, units: BarUnits) -> bool:
    try:
        found = _amount(text, units)
    except (AmountError, NegativeAmount):
        return False
    return found is not None and not text[found.end :].strip(" .,")


_SPOKEN_WORD = re.compile(r"some[ ](?:people|folks|guests)\b|[^\W_]+(?:['’][^\W_]+)*|[~≈¼½¾⅓⅔⅛⅜⅝⅞]")


def _begins_a_use(text: str) -> bool:
    return any(use.match(text) for use in (_TOP, _RINSE, _EXPRESS, _GRATE, _GARNISH, _RIM_WITH))


_PLENTY = re.compile(
    r"(?:(?:lots|plenty|loads|heaps|a[ ]lot|a[ ]load|as[ ]much|enough|a[ ]bit)[ ]of[ ]|all[ ]the[ ]"
    r"|(?:(?:just|give[ ]it|with|add|and|then)[ ])*(?:(?:an?|the|one|another|your)[ ]"
    r"(?:[^\W\d_]+,?[ ]){0,2}|(?:(?:big|small|good|little|light|quick|generous|tiny|healthy)[ ])?)"
    r"(?:squeeze|spritz|spray|mist|drizzle|hit|kiss|dollop|knob|grind|crack|dusting|shaving|swirl|smear|swig|sip"
    r"|touch|hint|whisper|tad|suggestion|lick|smidgen|smidge|scrape|sprinkling|sprinkle|pour|shower|trickle"
    r"|dribble|squirt|drizzling|whiff|nub|turn)s?[ ]of[ ](?:(?:the|your|my)[ ])?"
    r"|plenty[ ]|enough[ ]|some[ ](?!of\b)|a[ ]little[ ](?:bit[ ]of[ ])?(?:of[ ])?"
    r"(?!(?:splash|dash|drop|pinch|squeeze|drizzle|bit|less|more|under|over|touch|float|sprig|slice|piece|wedge"
    r"|spoon|glug|slug|cube|handful|of|extra|short|shy)))(?=\w)",
    re.IGNORECASE,
)
"""How much, without an amount."""


def _noted_plenty(draft: Draft) -> list[str]:
    plenty = draft.take(_PLENTY)
    return [plenty.group().strip().lower()] if plenty else []


def _take_use(draft: Draft) -> None:
    """Take off what is done with it: *top with*, *rinse the glass with*, *express*."""
    top = draft.take(_TOP)
    if top:
        filled = (top["verb"] or "").lower().startswith("fill")
        draft.notes.append("to fill" if filled else "to top")
        draft.notes += _noted_plenty(draft)  # top it off with some ginger beer
    rinse = _RINSE.match(draft.rest)
    if rinse:
        at = draft.at
        draft.advance(rinse.end())
        verb = (rinse["verb"] or "rins").lower()
        draft.notes += [] if verb in ("rins", "wash") else [verb]  # mist the glass with
        if _amount(draft.rest, draft.units) is None:
            _set(draft, Amount(1.0, None, "rinse"), at, at + rinse.end())
            draft.advance(_END_OF_ARTICLE.match(draft.rest).end())  # type: ignore[union-attr]
        else:
            draft.notes.append("rinse")
        return
    express = draft.take(_EXPRESS) or draft.take(_GRATE)
    if express:
        draft.garnish = True
        how = express["how"].lower()
        said = {"express": "expressed", "flame": "flamed", "grind": "ground", **_GRATED}
        draft.notes.append(said.get(how, how))
        over = _OVER_IT.search(draft.rest)
        if over and draft.rest[: over.start()].strip(" "):
            draft.notes.append(draft.rest[over.start() : over.start("rest")].strip())
            tail = over["rest"] if over["rest"][:1] in ",;(" else f", {over['rest']}"
            draft.rest = f"{draft.rest[: over.start()]}{tail}".rstrip(" ,")


_END_OF_ARTICLE = re.compile(r"(?:(?:an?|the|some|your|our)[ ]+(?=\w))?", re.IGNORECASE)


_RIMMED = {"salted": "salt", "sugared": "sugar"}


def _take_rim(draft: Draft) -> bool:
    """*Salt rim*, *salted rim*, *half salt rim*, *rim: salt*, *rim half the glass with salt*."""
    if "rim" not in draft.rest.casefold():
        return False
    behind = draft.take(_RIM_WITH)
    if behind:
        draft.garnish = True
        draft.notes.append(
            "half rim" if behind["half"] or behind["some"] or behind["part"] else "rim"
        )
        return True
    rim = _RIMMED_WITH.match(draft.rest) or _ON_THE_RIM.match(draft.rest) or _RIM.match(draft.rest)
    if rim is None or (_amount(draft.rest, draft.units) is not None and not rim["half"]):
        return False
    draft.garnish = True
    draft.notes.append("half rim" if rim["half"] else "rim")
    draft.at += rim.start("what")
    tail = draft.rest[rim.end() :].strip()
    gap = "" if tail[:1] in ",;(" else ", "
    what = _RIMMED.get(rim["what"].casefold(), rim["what"])
    draft.rest = f"{what}{gap if tail else ''}{tail}"
    if _ARTICLE.match(draft.rest) or draft.rest[:1].isnumeric():
        _take_front(draft)  # a lime wedge on the rim
    return True


def _take_lead_ins(draft: Draft) -> None:
    """Take off what leads in, as far as it is sure or an amount comes after it."""
    rest, at, notes, optional = draft.rest, draft.at, list[str](), False
    while found := lead_in(rest):
        rest, at = rest[found.length :], at + found.length
        notes += [found.note] if found.note else []
        optional = optional or found.optional
        if not found.unsure or _begins_an_amount(rest, draft.units):
            draft.rest, draft.at, draft.optional = rest, at, optional
            draft.hedges, notes = [*draft.hedges, *notes], []


def _begins_an_amount(text: str, units: BarUnits) -> bool:
    """Whether a text begins with an amount, or with what says how much without one."""
    if lead_in(text) is None and (_PART_OF.match(text) or _TOP.match(text) or _HALF_A.match(text)):
        return True
    try:
        return _amount(text, units) is not None or bool(_ARTICLE.match(text))
    except (AmountError, NegativeAmount):
        return True  # it is told of where the amount is taken


def _take_front(draft: Draft) -> None:
    """Take *juice of* and the amount off the front."""
    loose = _LOOSE.match(draft.rest)
    if loose and _amount(draft.rest[loose.end() :], draft.units):
        draft.notes.append(loose["word"].lower())
        draft.advance(loose.end())
    if _take_egg(draft):
        return
    part = draft.take(_PART_OF)
    if part:
        draft.notes.append(part["part"].lower())
    taken = _take_half(draft) or _take_share(draft)
    taken = taken or _take_measure(draft) or _take_scant(draft) or _take_treated(draft)
    if taken or _take_package(draft):
        return
    found = _amount(draft.rest, draft.units)
    if found:
        _take_amount(draft, found)
        return
    article = _ARTICLE.match(draft.rest)
    if part and not article:
        _take_after(draft)  # juice of lemon: 2 oz
    elif article and _is_measured_behind(draft, article.end()):
        draft.advance(article.end())
        _take_after(draft)  # a twelve-year Speyside, an ounce and a half
    if draft.amount is None and (article or part):
        length = article.end() if article else 0
        _set(draft, Amount(1.0, None, "each"), draft.at, draft.at + length)
        draft.advance(length)


def _take_half(draft: Draft) -> bool:
    """*Half a lime*; half an ounce is a spoken amount."""
    half = _HALF_A.match(draft.rest)
    if half is None or unit_at(draft.rest, half.end(), draft.units)[0]:
        return False
    share = Amount(_SHARES[half["share"].lower()], None, "each")
    _set(draft, share, draft.at, draft.at + half.end())
    draft.advance(half.end())
    return True


_SHARE_OF = re.compile(
    r"(?:an?[ ])?(?P<share>half|quarter|three[ -]quarters?)[ ]+"
    r"(?!(?:an?|of|and|the|to|or)\b)(?=[^\W\d_])",
    re.IGNORECASE,
)


def _take_share(draft: Draft) -> bool:
    """*Half simple*, *three quarters lemon juice*: a share without its unit, which is asked for."""
    found = _SHARE_OF.match(draft.rest)
    if found is None or unit_at(draft.rest, found.end(), draft.units)[0]:
        return False
    share = 0.75 if found["share"].lower().startswith("three") else _SHARES[found["share"].lower()]
    _set(draft, Amount(share, None, "each"), draft.at, draft.at + found.end())
    draft.advance(found.end())
    return True


def _take_scant(draft: Draft) -> bool:
    """*A generous splash of*, *scant ounce*: one of a unit, and how full."""
    how = _HOW_FULL.match(draft.rest)
    if how is None:
        return False
    number = _amount(draft.rest[how.end() :], draft.units)
    counted = number is not None and number.unit_at > 0  # and no bare *ladle*
    if number is not None and counted and number.unit not in (None, "each"):  # a good two ounces
        draft.notes.append(how["how"].lower())
        draft.advance(how.end())
        _take_amount(draft, number)
        return True
    begins, note = how.start("how"), ""
    unit, end = unit_at(draft.rest, begins, draft.units)  # a measure may be called *small ladle*
    if unit is None:
        begins, note = how.end(), how["how"].lower()
        unit, end = _filled_unit(draft, how)
    if unit is None or unit == "each" or not draft.rest[end:].strip(" "):
        return False
    draft.notes += [note] if note else []
    vague = _VAGUE.match(draft.rest, begins)
    draft.notes += [vague.group().lower()] if vague else []  # a good glug
    _take_amount(draft, ReadAmount(value=1.0, high=None, unit=unit, end=end, unit_at=begins))
    return True


_TREATED = re.compile(r"(?:an?|one|1)[ ](?P<how>[^\W\d_]+(?:ed|y|ish))[ ](?=[^\W\d_])", re.I)


def _take_treated(draft: Draft) -> bool:
    """*A torched sprig of rosemary*: what was done to one piece, before what it is counted by."""
    how = _TREATED.match(draft.rest)
    if how is None or turns(folded(how["how"])):
        return False
    unit, end = unit_at(draft.rest, how.end(), draft.units)
    if unit not in _PIECE_UNITS - {"each"} or not draft.rest[end:].strip(" "):
        return False
    draft.notes.append(how["how"].lower())
    one = ReadAmount(value=1.0, high=None, unit=unit, end=end, unit_at=how.end())
    _take_amount(draft, one)
    return True


_A_MEASURE_OF = re.compile(
    r"(?P<measure>(?:an?|one)[ ][^\W\d_]+)[ ][(\[](?P<size>[^()\[\]]+)[)\]][ ]*(?:of[ ])",
    re.IGNORECASE,
)


def _take_measure(draft: Draft) -> bool:
    """*A nip (30 ml) of rum*: the measure nobody knows is as large as it says."""
    found = _A_MEASURE_OF.match(draft.rest)
    size = _amount(f"{found['size']} ", draft.units) if found else None
    if found is None or size is None or size.unit is None or found["size"][size.end :].strip():
        return False
    draft.notes.append(found["measure"])
    _set(draft, Amount(size.value, size.high, size.unit), draft.at, draft.at + found.end())
    draft.advance(found.end())
    return True


def _take_package(draft: Draft) -> bool:
    """*1 (13.5 oz) can*, *a 750 ml bottle*: so many packages, and what one holds."""
    front = re.compile(r"(?:(?P<number>[0-9]{1,2}|an?|one|two|three|half[ ]an?)\b)?", re.I).match(
        draft.rest
    )
    if front is None:
        return False
    package = _PACKAGE.match(draft.rest, front.end())
    written = package["size"].replace("-", " ") if package else ""
    size = _amount(f"{written} ", draft.units) if package else None
    if package is None or size is None or size.unit is None or size.high is not None:
        return False
    if written[size.end :].strip(" x×"):
        return False
    counted = _amount(f"{front['number'] or 'one'} bottles", draft.units)
    pack, _ = unit_at(package["pack"], 0, draft.units)
    if counted is None or pack is None:
        return False
    draft.holds = Amount(size.value, None, size.unit)
    draft.notes.append(package["size"].strip(" -x×"))
    whole = ReadAmount(
        value=counted.value, high=None, unit=pack, end=package.end(), unit_at=package.start("pack")
    )
    _take_amount(draft, whole)
    return True


def _filled_unit(draft: Draft, how: re.Match[str]) -> tuple[str | None, int]:
    """The unit behind a word of how full it is, and its end; none where it is the owner's own.

    A *large ladle* is no *ladle*: of a measure of one's own the size is known.
    """
    unit, end = unit_at(draft.rest, how.end(), draft.units)
    if unit is None or unit == "each" or draft.units.measure(unit) is not None:
        return None, end
    return unit, end


def _take_egg(draft: Draft) -> bool:
    """*The white of one egg*, *2 whites of eggs*."""
    egg = _OF_AN_EGG.match(draft.rest) if "egg" in draft.rest.casefold() else None
    count = egg["count"].strip() if egg else ""
    found = _amount(count, draft.units) if count else None
    if egg is None or (count and (found is None or found.unit or count[found.end :].strip(" "))):
        return False
    ends = draft.at + egg.end()
    draft.at += egg.start("part")
    how = f", {egg['how'].strip()}" if egg["how"].strip() else ""
    draft.rest = f"egg {egg['part'].lower()}{how}{draft.rest[egg.end() :]}"
    if found is None and not egg["count"]:
        _take_after(draft)  # white of egg, about 2 oz
    if draft.amount is None:
        number = Amount(found.value, found.high, "each") if found else Amount(1.0, None, "each")
        _set(draft, number, ends - egg.end(), ends)
    return True


def _amount(text: str, units: BarUnits) -> ReadAmount | None:
    """An amount at the start: also a range of pieces."""
    pieces = _PIECES.match(text)
    if pieces:
        low, high = int(pieces["low"]), int(pieces["high"])
        unit, end = unit_at(text, pieces.end(), units)
        if unit in _PIECE_UNITS and 0 < low < high and (low, high) not in _PLAIN_FRACTIONS:
            return ReadAmount(
                value=float(low), high=float(high), unit=unit, end=end, unit_at=pieces.end()
            )
    return any_amount_at_start(text, units)


def _take_amount(draft: Draft, found: ReadAmount) -> None:
    unit, end = found.unit, found.end
    if unit is None:
        how = re.compile(rf"[ ]+{_HOW_FULL.pattern}", re.IGNORECASE).match(draft.rest, end)
        full, after_unit = _filled_unit(draft, how) if how else (None, end)
        if how and full:
            draft.notes.append(how["how"].lower())
            unit, end = full, after_unit
    draft.hedges += _said_of(draft.rest[:end]) if draft.holds is None else []
    _set(draft, Amount(found.value, found.high, unit or "each"), draft.at, draft.at + end)
    while (twin := _end_of_twin(draft, end)) > end:
        end = twin
    after = _AFTER_AMOUNT.match(draft.rest, end)
    if after and after["aside"]:
        aside = after["aside"].strip()
        draft.notes.append(aside)
        _take_up_to(draft, aside)
        size = _amount(aside, draft.units) if unit in ("bottle", "can") else None
        if size and size.unit and size.high is None and not draft.holds:
            draft.holds = Amount(size.value, None, size.unit)
    draft.each = bool(after and after["each"])
    draft.advance(after.end() if after else end)


def _take_up_to(draft: Draft, aside: str) -> None:
    """*15 ml (up to 20 ml if …)*: the aside says how far the amount may go."""
    begins = re.match(r"(?:or[ ])?up[ ]to[ ]", aside, re.IGNORECASE)
    most = _amount(f"{aside[begins.end() :]} ", draft.units) if begins else None
    amount = draft.amount
    if most is None or amount is None or amount.high is not None or most.high is not None:
        return
    if most.unit in (None, amount.unit) and most.value > amount.value:
        draft.amount = replace(amount, high=most.value)


_VAGUE = re.compile(r"(?:an?[ ])?few\b|(?:an?[ ])?(?:glug|slug)\b", re.IGNORECASE)
"""Amounts that are counted as something (*common practice*), and said to be vague."""


_GLUGS = re.compile(r"(?:glug|slug)s?(?=[ ]*$)", re.IGNORECASE)


def _said_of(amount: str) -> list[str]:
    """What the words of an amount say beyond its number and unit."""
    vague = _VAGUE.match(amount)
    times = _TIMES.match(amount)
    loose = _GLUGS.search(amount) if vague is None and "lug" in amount else None
    if loose:
        return [loose.group().lower()]
    return [vague.group().lower()] if vague else [amount.strip()] if times else []


def _end_of_twin(draft: Draft, start: int) -> int:
    """Where the same amount in another unit ends, if one follows: *2 oz / 60 ml*."""
    slash = _TWIN.match(draft.rest, start)
    twin = _amount(draft.rest[slash.end() :], draft.units) if slash else None
    if slash is None or twin is None or twin.unit is None:
        return start
    amount = draft.amount
    if amount is None or dimension(twin.unit, draft.units) != dimension(amount.unit, draft.units):
        return start
    if twin.unit == amount.unit:
        return start
    end = slash.end() + twin.end
    draft.notes.append(draft.rest[slash.end() : end])
    return end


def _take_after(draft: Draft) -> None:
    """Take an amount that comes after the name, with the colon or dash before it."""
    for place, name, found, end in _amounts_after(draft):
        amount = Amount(found.value, found.high, found.unit or "each")
        _set(draft, amount, draft.at + place, draft.at + end)
        draft.hedges += _said_of(draft.rest[place:end])
        front, note = _without_hedge(draft.rest[:place])
        draft.hedges += [note] if note else []
        tail = draft.rest[end:].strip()
        tail = tail.removeprefix(")").strip() if front.rstrip(" ").endswith("(") else tail
        vessel = _VESSEL_OF.match(name)
        if vessel:
            draft.hedges.append(vessel.group().strip())
            name = name[vessel.end() :]
        gap = "" if tail[:1] in ",;" else ", " if tail[:1].isalpha() or tail[:1] == "+" else " "
        draft.rest = f"{name}{gap}{tail}".rstrip(" ,")
        return
    alone = _NUMBER_ALONE.fullmatch(draft.rest)
    number = _amount(alone["number"], draft.units) if alone else None
    if alone and number:
        at, end = (draft.at + each for each in alone.span("number"))
        _set(draft, Amount(number.value, number.high, "each"), at, end)
        draft.rest = alone["name"].rstrip(" ,:–-")


_NUMBER_ALONE = re.compile(
    r"(?P<name>[^0-9()]*?[^\W\d_][^0-9()]*?)[ ]+(?:[x×][ ]?)?"
    r"(?P<number>[0-9]{1,3}(?:[.,][0-9]+)?|[.][0-9]+|[¼½¾]|[0-9]/[0-9])[ .]*"
)
"""*Pisco 60*: a number without a unit behind the name, which is asked about."""


def _without_hedge(text: str) -> tuple[str, str]:
    """A text before an amount without the hedge that it ends in, and what is noted of that."""
    hedge = hedge_at_the_end(text)
    return (text[: len(text) - hedge.length], hedge.note) if hedge else (text, "")


def _amounts_after(draft: Draft) -> Iterator[tuple[int, str, ReadAmount, int]]:
    """Each amount that stands at the end or before the notes: its place, the name, its end."""
    for begins in _MAY_BEGIN.finditer(draft.rest):
        place = begins.start()
        front, _ = _without_hedge(draft.rest[:place])
        name = front.rstrip(" ,:(–—-.…_=@|")
        if name.count("(") > name.count(")"):
            name = f"{name})" if front.rstrip().endswith(")") else name
        if not name or name.count("(") != name.count(")") or _NOT_BEFORE.match(front):
            continue
        try:
            found = _amount(draft.rest[place:], draft.units)
        except (AmountError, NegativeAmount):
            continue
        if found is None:
            continue
        end, before = place + found.end, front[len(name) :].strip()
        rest = draft.rest[end:]
        if before == "(":
            closed = rest.lstrip(" ").startswith(")")
            rest = rest.lstrip(" ")[1:] if closed else "not closed"
        before = before.strip(".…_") or before[:1]
        if (found.unit or before in (":", "-", "–", "—", "=", "@")) and _is_notes(rest):
            yield place, name, found, end


def _is_notes(rest: str) -> bool:
    """Whether what stands behind an amount tells something of it and names nothing."""
    more = re.match(r"[ ]*(?:[+]|plus)[ ]*[\w½¼]+[ ]more\b", rest)  # + 1 more if tart
    return bool(_REST_IS_NOTES.fullmatch(rest) or more) or (
        rest.startswith(" ") and WORDS_AFTER.match(f"x{rest}", 1) is not None
    )


def _is_measured_behind(draft: Draft, start: int) -> bool:
    """Whether what an article stands before is poured, and its amount comes after it."""
    behind = Draft(draft.rest[start:], 0, draft.units)
    found = next(_amounts_after(behind), None)
    unit = found[2].unit if found else None
    return unit is not None and dimension(unit, draft.units) in ("volume", "mass", "part")


def _take_loose(draft: Draft) -> None:
    """Take *float* or *rinse* off the end: a unit where there is no amount, else a note."""
    said = draft.rest.casefold()
    loose = _LOOSE_AFTER.search(draft.rest) if "float" in said or "rins" in said else None
    if loose is None or not draft.rest[: loose.start()].strip(" "):
        return
    word = "float" if loose["word"].lower().startswith("float") else "rinse"
    if draft.amount is None:
        starts, ends = (draft.at + each for each in loose.span("word"))
        _set(draft, Amount(1.0, None, word), starts, ends)
    elif word != draft.amount.unit:
        draft.notes.append(draft.rest[loose.start() : loose.start("tail")].strip(" ,()–-"))
    draft.rest = draft.rest[: loose.start()].rstrip(" ") + loose["tail"].rstrip(" ")


def take_how_much(draft: Draft, notes: Sequence[str]) -> tuple[str, ...]:
    """The notes of a *float of rum, about ½ oz*, whose amount is what the last of them says."""
    amount = draft.amount
    if amount is None or amount.unit not in ("float", "rinse") or amount.value != 1.0:
        return tuple(notes)
    for place, note in enumerate(notes):
        lead = lead_in(note)
        begins = lead.length if lead else 0
        try:
            found = _amount(f"{note[begins:]} ", draft.units)
        except (AmountError, NegativeAmount):
            continue
        exact = found is not None and found.unit not in (None, "each", amount.unit)
        if found is not None and exact and not note[begins + found.end :].strip():
            draft.amount = Amount(found.value, found.high, found.unit or "each")
            return (*notes[:place], amount.unit, *notes[place:])
    return tuple(notes)


def is_its_size(draft: Draft, note: str) -> bool:
    """Whether a note only says what the bottle or can of a line holds: *200 ml*."""
    if draft.holds is None:
        return False
    try:
        size = _amount(f"{note} ", draft.units)
    except (AmountError, NegativeAmount):
        return False
    if size is None or note[size.end :].strip(" ."):
        return False
    return (size.value, size.unit) == (draft.holds.value, draft.holds.unit)


def count_what_is_noted(draft: Draft, notes: Sequence[str]) -> None:
    """*A few mint leaves (8-10)*, *cucumber slices (3 or 4)*: how many they are, said behind."""
    vague = any(map(_VAGUE.fullmatch, draft.hedges))
    if draft.amount is not None and not vague:
        return
    for note in notes:
        lead = lead_in(note)
        begins = lead.length if lead else 0
        try:
            found = _amount(f"{note[begins:]} ", draft.units)
        except (AmountError, NegativeAmount):
            continue
        if found is None or note[begins + found.end :].strip(" ."):
            continue
        unit = draft.amount.unit if draft.amount else "each"
        if found.unit in (None, "each", unit):
            draft.amount = Amount(found.value, found.high, unit)
            return


def hold_what_is_noted(draft: Draft, notes: Sequence[str]) -> None:
    """*A small bottle of tonic water (200 ml)*: the size that stands behind the name."""
    amount = draft.amount
    if amount is None or amount.unit not in ("bottle", "can") or draft.holds is not None:
        return
    for note in notes:
        try:
            size = _amount(f"{note} ", draft.units)
        except (AmountError, NegativeAmount):
            continue
        whole = size is not None and not note[size.end :].strip(" .")
        if size and whole and size.high is None and dimension(size.unit or "each") == "volume":
            draft.holds = Amount(size.value, None, size.unit or "each")
            return


def _set(draft: Draft, amount: Amount, at: int, end: int) -> None:
    draft.amount, draft.amount_at, draft.amount_end = amount, at, end
