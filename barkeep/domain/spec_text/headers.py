"""The named fields of a spec's text: *Glass: coupe*, *Serves: 4*, *Tags: winter, house*."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace

from barkeep.domain.amounts.spoken import any_amount_at_start
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.ingredients.languages import WORD, action_words, header_words, plain, words_of
from barkeep.domain.ingredients.line_words import tells_nothing_else
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.found import amounts_in
from barkeep.domain.specs.glasses import glass_named
from barkeep.errors import AmountError, NegativeAmount
from barkeep.translation import tr

MOST_SPEC_SERVES = 1000.0
"""Of one spec as it is written; more is a misprint."""

MOST_TAGS = 50
RULE = re.compile(r"-{3,}|={3,}")
"""What parts one spec from the next."""
_HEADER = re.compile(
    r"(?P<name>name|title|glass(?:ware)?|ice|garnish(?:es)?|notes?|riff[ ]of|method|instructions"
    r"|directions|serves|servings|makes|yields?|tags?|credit|by|source|ingredients(?=[ ]?:$))"
    r"[ ]?:[ ]?(?P<value>.*)",
    re.IGNORECASE,
)
_COUNT = (
    r"(?:[0-9]+(?:[ ]?[-–/][ ]?[0-9]+)?|one|two|three|four|five|six|seven|eight|nine|ten|twelve"
    r"|(?:a|one)[ ]dozen)\b"
)
_SERVED = (
    r"(?:serve|serving|drink|cocktail|person|people|portion|glass|guest|friend"
    r"|of[ ](?:us|them|you))"
    r"(?:e?s)?\b"
)
_SERVES_FOUR = re.compile(
    r"[(\[]?(?:(?:this|it|the[ ]recipe|recipe)[ ])?(?P<name>serves|servings|makes|yields?)[ ]"
    rf"(?P<value>(?:[0-9]|(?:about[ ])?{_COUNT}).{{0,40}}?)[)\]]?[.]?",
    re.IGNORECASE,
)
_FOR_TWO = re.compile(
    rf"[(\[]?(?P<name>for)[ ](?P<value>{_COUNT}(?:[ ]{_SERVED})?)[)\]]?[.]?", re.IGNORECASE
)
_IN_A_TITLE = re.compile(
    r"(?P<title>.*?\w.*?)[ ]*[-–—,;:|]?[ ]*[(\[]?(?<![\w])"
    rf"(?P<name>serves|makes|yields)[ ](?P<value>{_COUNT}(?:[ ]{_SERVED})?)[ ]*[)\]]?",
    re.IGNORECASE,
)
_TIMES_IN_A_TITLE = re.compile(r".*\w[ ]*[(\[ ][ ]*(?P<times>[x×][ ]?[0-9]{1,2})[ ]*[)\]]?", re.I)
_IN_A_METHOD = re.compile(
    r"(?:^|(?<=[.!;])[ ]|\n)[ ]*[(\[]?(?:(?:this|it|the[ ]recipe|recipe)[ ])?"
    rf"(?P<name>serves|makes|yields)[ ](?P<value>{_COUNT}(?:[ ]{_SERVED})?)[ ]*[)\]]?[ ]*"
    r"(?:[.!;]|$)",
    re.IGNORECASE | re.MULTILINE,
)
_OF_THE_PAGE = re.compile(
    r"\#{2,6}[ ].*"
    r"|(?:n\.?b\.?|p\.?s\.?|fyi|remember|reminder|warning)(?:[ :.,-]|$).*|tip[ ]?[:,–-].*"
    r"|for[ ](?:the|one)[ ](?:[\w-]+[ ])?(?:syrup|drink|cocktail|punch|batch|mix"
    r"|foam|base|infusion|cordial|shrub|garnish|topping|puree|brine|tincture|glass):?"
    r"|[^\W\d_][^0-9:;,]{1,40}:"
    r"|(?:(?:hey|hi|hello|howdy|welcome|alright|okay|ok|so|and|thanks|thank|what['’]?s|up|back"
    r"|everyone|everybody|guys|folks|friends|y['’]?all|all|there|again|to|the|channel|bar|you|for"
    r"|watching|good|morning|evening|afternoon|team|people)\b[ ,.!]*)+"
    r"|(?:[$£€¥][ ]?[0-9]+(?:[.,][0-9]{1,2})?|[0-9]+(?:[.,][0-9]{1,2})?[ ]?[$£€])"
    r"|[★☆⭐]{3,}.*|[0-9](?:[.,][0-9])?[ ]?(?:/[ ]?5|stars?|out[ ]of[ ](?:5|five))"
    r"(?:[ ]*(?:stars?\b|from\b|rating|\().*)?[ .]*"
    r"|.*\b[0-9]+[ ](?:votes?|ratings?|reviews?|comments?|shares?)[ .]*"
    r"|(?:(?:prep(?:aration)?|total|active|cook(?:ing)?|ready[ ]in|time)\b[ ]?(?:time)?[ ]?:.*)"
    r"|(?:(?:prep(?:aration)?|total|active|cook(?:ing)?|chill(?:ing)?)[ ]time)\b.*"
    r"|(?:ratings?|difficulty|skill[ ]level|nutrition(?:al)?(?:[ ](?:facts|information))?"
    r"|calories|kcal|author|course|cuisine|category|categories|keywords?|votes|reviews?|comments?"
    r"|updated|published|posted|(?:last[ ])?updated[ ]on|photo(?:graph)?|video|print|servings?)"
    r"(?:$|[ ]?[:|–-].*|[ ]\(.*|[ ][0-9].*|[ ]by[ ].*)"
    r"|difficulty[ ](?:easy|medium|hard|simple|moderate|low|high)[ .]*|author[ ][^\W\d_].*"
    r"|[0-9]+[ ]?(?:kcal|calories|cals?)(?:[ ](?:per|each|a)\b.*)?[ .]*"
    r"|(?:leave|add|write|post)[ ]a[ ](?:comment|review|rating|reply)[ .!]*"
    r"|(?:special[ ]|bar[ ]|other[ ])?(?:equipment|tools?|gear)(?:[ ]needed|[ ]required)?[ ]?:.*"
    r"|(?:jump|skip)[ ]to[ ].*|(?:print|pin|save|share|rate)(?:[ ](?:this|the|it|recipe"
    r"|page))*[ !]*"
    r"|(?:(?:it[ ])?tastes?|drinks?|smells?|looks?)[ ]like[ ].*"
    r"|(?:adapted|inspired|taken|borrowed|stolen|based)[ ](?:from|by|on)[ ].*"
    r"|(?:recipe|photos?|words|created|invented)[ ](?:by|from|courtesy)[ ].*"
    r"|(?:a|my|our|this[ ]is[ ]a)[ ](?:riff|twist|take|variation)[ ]on[ ].*"
    r"|there(?:['’]s|[ ]is|[ ]are)[ ]no[ ].*|(?:(?:no|without|skip[ ]the"
    r"|garnish[ ]?:)[ ](?:a[ ])?)(?:garnish|none|n/a|ice)"
    r"(?:[ ](?:on|for|in|with|needed|necessary|here|today|tonight|required)\b.*)?[ .!]*"
    r"|(?:enjoy|cheers|done|voil[aà]|santé|prost|salute|salud|perfect|delicious|yum)[ .!]*",
    re.IGNORECASE,
)

_SAME: Mapping[str, str] = {
    "title": "name",
    "glassware": "glass",
    "garnishes": "garnish",
    "note": "notes",
    "instructions": "method",
    "directions": "method",
    "tag": "tags",
    "by": "credit",
    "yields": "yield",
    "servings": "serves",
    "for": "serves",
}
_ONCE = frozenset({"glass", "ice", "riff of", "credit", "source"})
_A_NUMBER_OF = re.compile(
    r"[ ]?(?:serve|serving|drink|cocktail|person|people|portion|glass|guest)?(?:e?s)?[ .]*",
    re.IGNORECASE,
)
_ROUGHLY = re.compile(r"(?:about|around|approx(?:imately)?\.?|for|up to)[ ]", re.IGNORECASE)
_NAMED = re.compile(r"(?P<name>[^\W\d_][^:,.;]{1,24}?)[ ]?:[ ]?(?P<value>.*)")
_ALONE = re.compile(r"(?P<name>[^\W\d_]{5,16})(?P<value>)")
_FOR_FOUR = re.compile(r"(?P<name>[^\W\d_]{3,8}(?:[ ]per)?)[ ](?P<value>[0-9]+[ ](?P<who>\w+))")
_BETWEEN_TAGS = re.compile(r"[ ]?[,;][ ]?")


@dataclass(frozen=True, slots=True)
class Header:
    """A field by its usual name, its value, and where in its row the value begins, from 0."""

    name: str
    value: str
    at: int


def header_in(text: str) -> Header | None:
    """The field that a row of a text gives, None where it gives none."""
    plain = " ".join(text.split())
    title = serves_in_title(plain) if plain[:1] in "iI" else None
    if title and title[0].casefold().strip(" :") in ("ingredients", "ingredient list"):
        return title[1]
    found = _HEADER.fullmatch(plain) or _SERVES_FOUR.fullmatch(plain) or _FOR_TWO.fullmatch(plain)
    if found is None:
        return _foreign_header(plain, text)
    return _header(found["name"].casefold(), found["value"], text)


_WITH_A_REST = re.compile(
    rf"(?P<value>(?:(?:about|around)[ ])?{_COUNT}(?:[ ]{_SERVED})?)[ ]*[:;,–—-]+[ ]*(?P<rest>\S.*)",
    re.IGNORECASE,
)


def header_and_rest(header: Header, units: BarUnits) -> tuple[Header, str] | None:
    """*Serves 8: 1 bottle of wine*: the field and what is measured behind it, None without that."""
    if header.name not in ("serves", "makes", "yield"):
        return None
    found = _WITH_A_REST.fullmatch(header.value)
    rest = found["rest"] if found else ""
    try:
        amount = any_amount_at_start(rest, units) if rest else None
    except (AmountError, NegativeAmount):
        return None
    if found is None or amount is None or amount.unit in (None, "each"):
        return None
    return replace(header, value=found["value"]), rest


def measures_something(header: Header, units: BarUnits) -> bool:
    """*Serves 4 (2 oz gin each)*: whether an amount stands behind how many it serves."""
    if header.name not in ("serves", "makes", "yield"):
        return False
    try:
        first = any_amount_at_start(header.value, units)
    except (AmountError, NegativeAmount):
        return False
    if first is None or first.unit not in (None, "each"):
        return False
    found = amounts_in(header.value[first.end :], units)
    return any(each.amount.unit not in (None, "each") for each in found)


def serves_in_title(text: str) -> tuple[str, Header] | None:
    """*Night Mail (serves two)*: the name alone and the field behind it; None without one."""
    plain = " ".join(text.split())
    found = _IN_A_TITLE.fullmatch(plain)
    if found is None:
        return None
    return found["title"], _header(found["name"].casefold(), found["value"], text)


def times_in_title(text: str) -> str | None:
    """*Night Mail (x2)*: what may say how many its amounts are for."""
    found = _TIMES_IN_A_TITLE.fullmatch(" ".join(text.split()))
    return found["times"] if found else None


def serves_in_method(text: str) -> Header | None:
    """The field that a sentence of the method gives: *Shake and strain. Makes two.*"""
    found = _IN_A_METHOD.search(text)
    return _header(found["name"].casefold(), found["value"], text) if found else None


_IN_A_GLASS = re.compile(
    r"(?:(?:and|so|then|now|okay|ok|that|this|it|we|i|all|just)(?:['’]s|['’]ll)?[ ,]+)*"
    r"(?:(?:goes|go|comes|served?|serves|poured?|strained?|put|pop|gets|want)\b[ ]?"
    r"(?:it|that|this|up|straight)?[ ]?)?"
    r"(?:in|into|up[ ]in|over[ ]ice[ ]in)[ ](?:an?|the|my|your|our)[ ](?P<glass>[\w' -]+)[ .!]*",
    re.IGNORECASE,
)
_CHATTER = re.compile(
    r"\b(?:is|was|are|were|isn['’]t|wasn['’]t|we|we['’]re|we['’]ll|i|i['’]m|i['’]ll|it['’]s|that['’]s"
    r"|you['’]re|this[ ]one['’]s|welcome|thanks|thank|hello|hi|hey)\b",
    re.IGNORECASE,
)
_FEWEST_WORDS_OF_CHATTER = 5


def names_a_glass(text: str) -> bool:
    """Whether a row that is no ingredient says in what glass it is served."""
    found = _IN_A_GLASS.fullmatch(" ".join(text.split()))
    glass = re.split(r"[ ](?:with|over|and|on)[ ]", found["glass"])[0] if found else ""
    return bool(glass) and glass_named(glass) is not None


def tells_what_to_do_elsewhere(text: str) -> bool:
    """Whether a row that is no ingredient says in another language what is done."""
    words = [plain(each.group()) for each in WORD.finditer(text)]
    begins = bool(words) and words[0] in action_words()  # Frapper … pendant 10 s
    counted = any(mark.isnumeric() for mark in text) and not begins
    return len(words) > 1 and not counted and not action_words().isdisjoint(words)


def is_chatter(text: str) -> bool:
    """Whether a row is a sentence that is said to whoever listens, by its words."""
    words = text.split()
    return len(words) >= _FEWEST_WORDS_OF_CHATTER and bool(_CHATTER.search(text))


_SPEAKS = re.compile(
    r"\b(?:i|i['’](?:m|d|ll|ve)|my|me|we|we['’](?:re|ll|ve|d)|our|us|you|you['’](?:re|ll|ve|d)|your|he|she|his|her"
    r"|they|their|them|it|it['’]s|that['’]s|this|there['’]s|is|are|was|were|be|has|have|had|do|does|don['’]t|did"
    r"|didn['’]t|can|can['’]t|will|won['’]t|would|should|never|always|let|let['’]s)\b",
    re.IGNORECASE,
)
_MOST_UNKNOWN = 0.25
"""Of the words of a sentence that may be none of a line's words (*chosen here*)."""


def speaks_of_nothing_poured(text: str) -> bool:
    """Whether a row that names and counts nothing is a sentence, by nearly all of its words."""
    words = [folded(each) for each in re.findall(r"[^\W\d_]+(?:['’][^\W\d_]+)*", text)]
    if len(words) < _FEWEST_WORDS_OF_CHATTER or not _SPEAKS.search(text):
        return False
    unknown = sum(not tells_nothing_else(each) for each in words)
    return unknown <= _MOST_UNKNOWN * len(words)


_TELLS_OF_THEN = re.compile(
    r"\b(?:last[ ](?:time|week|night|year|month)|was|were|wasn['’]t|weren['’]t|used[ ]to|tried"
    r"|liked|thought|had[ ](?:it"
    r"|this|one|a)|follow|subscribe|comments?|episode|pt[ ]?[0-9]|part[ ](?:two|2)|channel"
    r"|customers?|always[ ]tell"
    r"|remember|invented|story|history|no[ ][^,]+[ ]in[ ](?:this|it|here)|(?:i|we)[ ](?:never"
    r"|always|once|first|often)"
    r"|reminds?|tastes?[ ](?:like|of)|wouldn['’]t|shouldn['’]t|don['’]t[ ](?:use|buy|bother"
    r"|worry|skimp|be|forget|you)"
    r"|never[ ]use|stands?[ ]for|means|is[ ](?:called|named|basically|actually|my|the[ ](?:best"
    r"|star|key|secret))"
    r"|good[ ](?:morning|evening|afternoon)|welcome|hello|everyone|thanks|cheers|link"
    r"|recipe[ ](?:below|in)|let['’]?s[ ](?:talk|chat|discuss|get[ ]into|dive|move)|talk[ ]about"
    r"|speaking[ ]of|a[ ]word[ ](?:on|about)|works?[ ](?:here|too|as[ ]well|instead|great"
    r"|well|fine))\b",
    re.IGNORECASE,
)
_SPOKEN_TO_WHOEVER_LISTENS = 5


def tells_of_another_time(text: str) -> bool:
    """Whether a row that measures nothing tells a story, though it names something.

    *Last time I used bourbon but it was too sweet*, *no citrus in this one*.
    """
    words = text.split()
    return len(words) >= _SPOKEN_TO_WHOEVER_LISTENS and bool(_TELLS_OF_THEN.search(text))


def tells_of_the_page(text: str) -> bool:
    """Whether a row that is no ingredient heads a section or tells of the page or the drink."""
    return bool(_OF_THE_PAGE.fullmatch(" ".join(text.split())))


def _header(name: str, value: str, text: str) -> Header:
    value = value.strip()
    return Header(_SAME.get(name, name), value, max(0, text.find(value[:20].split(" ")[0])))


def _foreign_header(plain: str, text: str) -> Header | None:
    """*Zutaten:*, *Verre : coupe*, *Per 4 persone*; a section may be headed by its word alone."""
    named = _NAMED.fullmatch(plain)
    if named:
        name = _field_called(named["name"])
        return _header(name, named["value"], text) if name else None
    alone = _ALONE.fullmatch(plain)
    if alone:
        name = _field_called(alone["name"])
        return _header(name, "", text) if name in ("ingredients", "method") else None
    serves = _FOR_FOUR.fullmatch(plain)
    if serves and _field_called(serves["name"]) == _field_called(serves["who"]) == "serves":
        return _header("serves", serves["value"], text)
    return None


def _field_called(word: str) -> str | None:
    """The field that a word of another language heads, None for any other word."""
    return header_words().get(" ".join(words_of(word)))


@dataclass
class HeaderFields:
    """What the headers of one spec said."""

    once: dict[str, str] = field(default_factory=dict)
    notes: list[str] = field(default_factory=list)
    tags: list[str] = field(default_factory=list)
    serves: float | None = None

    def take(self, header: Header, units: BarUnits) -> str:
        """Take a field in. What is wrong with it, empty where nothing is."""
        name, value = header.name, header.value
        if not value or name == "ingredients":
            return ""
        if name == "notes":
            self.notes.append(value)
        elif name == "tags":
            if len(self.tags) >= MOST_TAGS:
                return tr("a spec has at most {most} tags", most=MOST_TAGS)
            self.tags += distinct_tags(_BETWEEN_TAGS.split(value), self.tags)
        elif name in ("serves", "makes", "yield"):
            return self._take_serves(header, units)
        elif name in self.once:
            if self.once[name] != value:
                return tr(
                    "“{name}” is given twice; it is “{once}” above",
                    name=name,
                    once=self.once[name],
                )
        elif name in _ONCE:
            self.once[name] = value
        return ""

    def _take_serves(self, header: Header, units: BarUnits) -> str:
        """How many serves; a volume is no number of them and is kept as a note."""
        rough = _ROUGHLY.match(header.value)
        text = header.value[rough.end() :] if rough else header.value
        try:
            found = any_amount_at_start(text, units)
        except (AmountError, NegativeAmount) as error:
            return str(error)
        said = f"{header.name.capitalize()}: {header.value}"
        if found is not None and found.unit not in (None, "each"):
            self.notes.append(said)
            return ""
        if found is None or not 0.0 < found.value <= MOST_SPEC_SERVES:
            return tr(
                "serves cannot be “{value}”: it is a number from 1 to {most:.0f}",
                value=header.value,
                most=MOST_SPEC_SERVES,
            )
        if self.serves is not None and self.serves != found.value:
            return tr("serves is given twice; it is {serves:g} above", serves=self.serves)
        self.serves = found.value
        if found.high is not None or not _A_NUMBER_OF.fullmatch(text[found.end :]):
            self.notes.append(said)
        return ""


def distinct_tags(tags: Iterable[str], there: Iterable[str] = ()) -> list[str]:
    """The tags that are not there yet, each once, without space around them or a # in front."""
    known = {folded(tag) for tag in there}
    found: list[str] = []
    for tag in tags:
        plain = " ".join(tag.split()).lstrip("#").strip()
        if plain and folded(plain) not in known:
            known.add(folded(plain))
            found.append(plain)
    return found
