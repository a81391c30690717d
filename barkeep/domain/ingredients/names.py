"""From words on a page to an ingredient of the family tree.

Names are matched as they are written or not at all: first the whole text,
then without adjectives that change nothing at the bar, then with its words in
another order, then without a maker's words before or behind it. What stands in
brackets or after a comma narrows the name where both together are one. Likeness
of spelling gives a guess, which is never sure enough to be taken without asking.

| written                       | named                 | besides                |
|-------------------------------|-----------------------|------------------------|
| vermouth (dry), gin, Old Tom  | dry vermouth, Old Tom |                        |
| vodka vanilla, juice of lemon | vanilla vodka, …      |                        |
| milk chocolate, beer ginger   | none: the order makes another thing            |
| all spice dram                | allspice dram         |                        |
| house bourbon blend           | bourbon               | stated: *blend*        |
| 8 year bourbon                | bourbon               | stated: *8 year*       |
| port (tawny, 10 yr)           | tawny port            | stated: *10 yr*        |
| Grey Ferry gin, gin Grey Ferry| gin                   | maker: *Grey Ferry*    |
| gin (sweetened), hard vanilla | none: these words change what it is            |
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence, Set
from dataclasses import dataclass, replace
from itertools import combinations

from barkeep.domain.amounts.units import unit_named
from barkeep.domain.ingredients.finder import nearest
from barkeep.domain.ingredients.line_words import tells_nothing_else
from barkeep.domain.ingredients.tree import (
    WITHOUT_MEANING,
    FamilyTree,
    Ingredient,
    words_of_a_name,
)
from barkeep.domain.phrases import folded

EXACT, ADJUSTED, MAKER, GUESSED = 1.0, 0.95, 0.7, 0.6
"""Confidence of a name as written, without its adjectives, after a maker's words, and misspelt.

A ranking chosen here; only the order has a meaning.
"""
LONGEST = 300
"""Characters; nothing longer is looked at as a name."""


_ADJECTIVES_LIST = """
    fresh freshly squeezed pressed brewed ground grated cut picked peeled chopped sliced chilled
    cold cool iced hot warm strong good quality high fine best large small medium big thin thick
    long short heavy scant generous level heaped ripe raw homemade house made organic unwaxed washed
    premium bottled quality decent flaky flaked coarse house generic standard
    whole clear plain pure real few your favourite favorite of the well other another any similar
"""
ADJECTIVES = frozenset(_ADJECTIVES_LIST.split())
"""Words in front of a name that leave it the same ingredient (*common practice*)."""


_NOTE = re.compile(
    r"[ ]*(?:\((?P<brackets>[^()]*)\)|\[(?P<square>[^\[\]]*)\]|,[ ]*(?P<comma>[^,()]*)"
    r"|[ ][-–—]+[ ](?P<dash>(?:(?![ ][-–—]+[ ])[^,()])*?)|;[ ]*(?P<stop>[^,();]*)"
    r"|[ ]\#+[ ]*(?P<hash>[^()]*)"
    r"|(?<=[^\W\d_]):[ ]+(?P<colon>[^,():]*))[ ]*[*.]*$"
)
_WITHIN = re.compile(r"[ ]*\((?P<brackets>[^(),]*)\)(?=[ ]*\w)")

WORDS_AFTER = re.compile(
    r"""(?<=\w)[ ]+(?P<note>(?:cut|peeled|muddled|sliced|chopped|crushed|grated|squeezed|chilled
        |cooled|snapped|mashed|zested|trimmed|rinsed|drained|thawed|warmed|juiced|hulled|pitted|shelled|reserved|skinned|toasted|bruised|scored
        |beaten|halved|quartered|diced|expressed|flamed|torn|slapped|floated|freshly|finely|lightly
        |gently|strained|shaken|softened|melted|split|left|please|each
        |an?[ ](?:bit|little|touch|tad)[ ](?:more|less)
        |cracked|ground|shaved|dusted|sprinkled|poured|drizzled|pulled|brewed|steeped|picked|plucked|scooped
        |whipped|whisked|heated|boiled|cooked|thinned|reduced|measured|weighed|packed|heaped|levelled|leveled
        |rubbed|wiped|spanked|smacked|clapped|cubed|skewered|speared|stuck|tucked|draped|perched|placed|added
        |used|needed|required|preferred|obviously|honestly|just|only|maybe|perhaps|probably|whatever|whichever
        |or[ ]whatever|give[ ]it|as[ ]needed|if[ ]needed
        |soaked|doused|drenched|moistened|saturated|smashed|bashed|slightly|very
        |to[ ](?:top|taste|serve|fill|finish|float|rinse|garnish|start|begin|balance|brighten|lift
            |lengthen|cut|round|open|give|make|get|help|bring|keep|stop|wake|loosen|lighten
            |sweeten|sharpen|soften|stretch|cool|dilute|boost|deepen|tie)|on[ ]top
        |(?:for|serves|makes|yields)[ ](?:about[ ]|around[ ])?(?:[0-9]+|one|two|three|four|five|six
            |seven|eight|nine|ten|twelve|a[ ]dozen)
        |[x×][ ]?[0-9]{1,2}[ ]*$
        |for[ ](?:(?:extra|some|a[ ](?:bit|little|touch)[ ]of|added|more)[ ])?(?:[a-z]+ness|depth
            |body|spice|acidity|balance|texture|foam|froth|length|fizz|heat|bite|kick|aroma|smoke
            |flavou?r|scent|dilution|luck|fun|height|crunch|looks|show|contrast|structure|lift)\b
        |for[ ]preference|by[ ]preference|if[ ]possible
        |for[ ](?:garnish|rinsing|the[ ]\w+|this|that|colour|color|good|me|you|us|an?[ ]\w+)
        |as[ ](?:a[ ])?(?:garnish|rinse|float|usual|needed)|or[ ]so|or[ ]thereabouts
        |give[ ]or[ ]take
        |in[ ](?:the|there|here|a|an|to|my|our|your|with|next|first|one|two|long|big
            |small|thin|wide|chunks|slices|strips|pieces|quarters)|into|onto
        |over[ ](?:the|ice|top)
        |on[ ](?:the|this|that|a)|at[ ]the|because
        |from[ ](?:(?:the|a|my|our|your|about|around|roughly|half|one|two|three|four)\b|[0-9½¼¾])
        |cos|depending|you[ ](?:can|could|have|like|want|got|need|prefer|find)|don['’]?t|do[ ]not
        |recipe[ ](?:in|below|above|is|on|at|follows)|see[ ](?:my|the|below|above|notes?|recipe)
        |which|that|when|until|goes|go|here|there|today|tonight|too|now|first|next|instead
        |if|at[ ]least|at[ ]most|preferably|ideally|such[ ]as|like[ ]the|plus|about
        |roughly|approximately|more[ ]or[ ]less|per[ ]\w+|straight[ ](?:in|from|out)|just[ ]to
        |then|so|we|i|i'm|it|it's|and[ ](?:that's|then|that|dump|stir|shake|give|be|go|don't|strain
        |tuck|stick|stand|lay|place|drop|rub|wipe|discard|hang|perch|pop|serve|set|slide
            |throw|toss|pour|swirl|empty|tip|chuck|leave|bin|turn|roll|let|wait|save|keep|do|we|you|it's|they)
        |but)\b.*)$""",
    re.IGNORECASE | re.VERBOSE,
)
"""Words behind a name that begin to tell something of it, and are no part of it."""

_FLAVOURED = ("juice", "syrup", "liqueur", "bitters", "milk", "extract", "water", "puree", "pod")
_FLAVOURED_BEHIND = frozenset(_FLAVOURED) - {"milk", "water"}
"""What a flavour is said behind too: *syrup ginger*."""

_CHANGING_LIST = """
    alcohol alcoholic non free zero low no imitation mock flavoured flavored infused spiced smoked
    sweet sweetened dry sparkling still red white black green pink blue gold golden dark light brown
    stir shake add pour build strain serve muddle top mix with without scented hard nitro overproof
    key washed virgin faux mocktail dealcoholised dealcoholized vegan decaf decaffeinated dairy
    gluten lactose oat soy
"""
_CHANGING = frozenset(_CHANGING_LIST.split())
"""Words that make something else of what follows them."""

_NEVER_BESIDE = frozenset(
    {"alcohol", "alcoholic", "non", "free", "zero", "imitation", "mock", "flavoured", "flavored"}
    | {"infused", "sweetened", "hard", "nitro", "key", "scented", "washed", "dealcoholised"}
    | {"virgin", "faux", "mocktail"}
)
"""The same said behind a kind: where no kind holds it, it is asked about."""

_NUMBER = r"(?:[0-9]+(?:[.,][0-9]+)?|one|two|three|four|five|six|seven|eight|nine|ten|twelve"
_NUMBER += r"|fifteen|eighteen|twenty(?:[ -](?:one|three|five))?|thirty)"
STATEMENT = re.compile(
    rf"(?:aged[ ])?(?:at[ ]least[ ]|over[ ])?(?:{_NUMBER}[ ]?(?:-|–"
    rf"|to)[ ]?)?{_NUMBER}[ -]?(?:years?|yrs?\.?|yo|y/o)\b(?:[ -]?old)?"
    r"|[0-9]+(?:[.,][0-9]+)?[ ]?%[ ]?(?:(?:blue[ ])?agave|vol\.?|abv|alc\.?)?|[0-9]+[ -]?proof\b"
    r"|[0-9]+(?:[.,][0-9]+)?[ ]?(?:°[ ]?)?b(?:ri)?x\b"
    r"|[0-9]+(?:[.,][0-9]+)?[ ]?°|[0-9]+(?:[.,][0-9]+)?[ ]?:[ ]?[0-9]+(?:[.,][0-9]+)?"
    r"|dry[ -]hopped\b|\bhors[ ]d['’][âa]ge\b|(?:v\.?s\.?o\.?p\.?|x\.?o\.?|v\.?s\.?"
    r"|napoleon)(?!\w)",
    re.IGNORECASE,
)
"""An age, a strength or a ratio: what a line may ask beyond the kind."""

_STATING_LIST = """
    jamaican cuban barbadian bajan haitian martinique guyanese trinidadian spanish french italian
    german english british scottish irish american canadian japanese mexican peruvian chilean
    brazilian dutch belgian austrian swiss portuguese greek polish russian swedish danish norwegian
    caribbean islay highland lowland speyside island coastal kentucky tennessee puerto rican
    white red black green pink blue gold golden amber dark light brown rosé rose pale tawny ruby
    dry sweet bittersweet semi extra brut bone off medium rich unsweetened
    aged unaged young old mature matured reserve reserva riserva
    vieux vieille vecchio vecchia viejo vieja anejo reposado blanco joven solera
    barrel cask single small batch strength bonded bottled straight pot column still peated unpeated
    smoky smoked funky wheated high blended malt grain agricole overproof navy full
    bodied spiced grassy herbal floral juniper forward style type premium undiluted uncut
    craft artisanal natural
    cloudy clear clarified filtered unfiltered pulp bio organic vintage additive blend hopped
"""
_STATING = frozenset(_STATING_LIST.split())
"""Words of strength, age, origin, colour, sweetness and style."""

_BETWEEN_NOTES = re.compile(r";|,(?![0-9]+[ ]?(?:m|c|d|k)?[lg]\b)", re.IGNORECASE)

_FREE_OF = re.compile(
    r"\b(?:additive|pith|seed|stone|pulp|gluten|lactose|caffeine)[ -]free\b", re.I
)
"""What a thing may be free of and stay what it is."""

_HARD_AS_DONE = re.compile(
    r"\b(?:too|so|very|really|pretty|super|it|them|that|this|shaken?|shake|stir|stirred|press|pressed|muddled?"
    r"|squeezed?|nice[ ]and)[ ]hard\b",
    re.IGNORECASE,
)
"""*Don't muddle them too hard*: how something is done."""

_PLAINLY_SWEET_G_PER_L = 100.0
"""From so much sugar on a thing is sweetened by what it is (*chosen here*)."""

_BELONGING = frozenset({"of", "from", "de", "di", "del", "du"})

_HOW_CUT = re.compile(
    r"\b(?:cut|sliced|chopped|halved|quartered|split|torn|broken|peeled)\b.*\bin(?:to)?[ ]",
    re.IGNORECASE,
)
"""*Cut into wedges*: how the whole of it is cut, and no kind of it."""

LOOSENED = re.compile(
    r"\b(?:dissolved|melted|loosened|thinned|softened|diluted)\b.*\bin[ ](?:an?[ ]|the[ ])?"
    r"(?:(?:little|bit|some|splash|drop|touch|same|equal|amount|of|as|much)[ ]+)*"
    r"(?:(?:very|just)[ ])?(?:(?:hot|warm|boiling|cold|boiled)[ ])?water\b",
    re.IGNORECASE,
)
"""*Dissolved in a little hot water*: how it is made ready, and no water of the drink."""

_SAID_FOR: Mapping[str, str] = {"strong": "overproof", "bubbly": "sparkling", "fizzy": "sparkling"}
"""Words that are said for the one that a name has."""

_AGED_IN = re.compile(
    r"(?:(?:bourbon|whisk(?:e)?y|rye|rum|cognac|brandy|sherry|port|wine|oak|tequila|maple)[ -])?"
    r"(?P<how>(?:barrel|cask|oak|wood)[ -](?:aged|rested|finished))",
    re.IGNORECASE,
)
"""*Whiskey barrel aged*: in what it was kept, which is nothing that is poured."""

_NO_KIND_ALONE = frozenset({"barrel", "cask", "batch", "grain", "malt", "pot", "column", "island"})
"""Words of style that alone behind a name are a thing of their own."""

_AT_LEAST = re.compile(
    r"(?:at least|min|over)\b"
    r"|.* (?:or (?:more|above|stronger|higher|over|better|up|greater)|minimum|and (?:up|above))$",
    re.IGNORECASE,
)

_ONE_OF_IT = frozenset(
    {"kind", "one", "ones", "sort", "type", "version", "stuff", "style", "variety"}
    | {"something", "that", "this", "ratio"}
)
"""*The white one*, *the London dry kind*: words that stand for the kind itself."""

_TOLD_APART = re.compile(
    r"(?:don['’]?t|do[ ]not|or|not|no|nothing|never|without|in[ ]place[ ]of|instead[ ]of"
    r"|such[ ]as|preferably"
    r"|ideally|like|e\.?g\.?|see"
    r"|i[ ]use|we[ ]use|try"
    r"|(?:(?:but|and|though|or)[ ])*(?:you|we|i|one)(?:['’]d|[ ]can|[ ]could|[ ]may|[ ]might)"
    r"(?:[ ](?:also|always|easily|just|totally))?[ ](?:use|do|go|sub|swap|take|try)"
    r"|(?:(?:use|try|take|sub|go[ ](?:with|for))[ ])?(?:an?|some|any|another)[ ][^,;()]+?"
    r"[ ](?:if|when)[ ](?:you|it|that|possible)"
    r"|(?:feel[ ]free|happy|okay|ok|fine)[ ]to[ ](?:use|sub|swap|try))\b|.*\b(?:works?"
    r"|would[ ]do|will[ ]do|(?:is|are)[ ](?:fine"
    r"|good|ok|okay))"
    r"(?:[ ](?:too|as[ ]well|here|also))?$",
    re.IGNORECASE,
)
"""How a note begins that tells of something else than the name it stands beside."""

_MAKER_WORDS = 5
"""A maker and a label take no more words than this in front of a kind."""
_MOST_EXTRA = 6
"""So many words beside a name are tried with it; what is more is prose."""


@dataclass(frozen=True, slots=True)
class Match:
    """What a text names. `key` is None where it names nothing known.

    `matched` is the name that was found and `maker` the words around it that
    name nothing; `nearest` are the names most like the text, given only where
    nothing was found. `called` are the words that were taken for the name, as
    they are written, `stated` what is asked beyond the kind, an age, a strength, and
    `changed` what stands beside it that makes something else of it: *sweetened*.
    """

    key: str | None
    matched: str | None
    confidence: float
    nearest: tuple[str, ...] = ()
    maker: str = ""
    called: str = ""
    stated: tuple[str, ...] = ()
    changed: str = ""


def match_ingredient(text: str, tree: FamilyTree) -> Match:
    """The ingredient a text names, notes in brackets or after a comma left out."""
    found, _notes = find_name(text, tree)
    known = found if found and not found.changed else None
    if known is not None and known.confidence >= ADJUSTED:
        return known
    foreign = tree.called(text)
    if foreign is not None:
        return Match(foreign, tree.name(foreign), EXACT)
    return known or Match(None, None, 0.0, suggestions(text, tree))


def find_name(text: str, tree: FamilyTree) -> tuple[Match | None, tuple[str, ...]]:
    """The ingredient a text names and the notes that trail its name, in their order.

    Where nothing is found, every note is taken off.
    """
    stages = without_notes(text)
    for name, notes in stages:
        found = named(name, tree)
        if found:
            return _with_its_notes(replace(found, called=name), notes, tree)
    name, notes = stages[-1]
    if all(word in ADJECTIVES for word in _words(name)):
        return match_name(text.replace(",", " "), tree), ()  # "cold, fresh lime juice"
    found = match_name(name, tree)
    after = WORDS_AFTER.search(name)
    if found is None and after:
        shorter = match_name(name[: after.start()], tree)
        if shorter:
            return _with_its_notes(shorter, (after["note"], *notes), tree)
    if found is None:
        found, notes = _across(name, notes, tree)
    within = _WITHIN.search(text) if found is None else None
    if within:  # rich (2:1) demerara syrup
        rest = f"{text[: within.start()]} {text[within.end() :]}, {within['brackets']}"
        return find_name(" ".join(rest.split()), tree)
    if found is None and notes:
        found = _kind_of_a_makers(name, notes[0], tree)
        notes = notes[1:] if found else notes
    return _with_its_notes(found, notes, tree) if found else (None, notes)


def _kind_of_a_makers(name: str, note: str, tree: FamilyTree) -> Match | None:
    """*Hollow Lamp (amaro)*: words written large that name nothing, and what they are of."""
    found = named(note, tree)
    made = name.split()
    if found is None or found.key is None or len(made) > _MAKER_WORDS:
        return None
    large = all(word[:1].isupper() or word in ("&", "and", "of") for word in made)
    if not large or found.key not in tree.alcoholic or not _may_be_a_maker(_words(name), tree):
        return None
    if not _has_a_maker(found.key, tree):
        return None
    return replace(found, maker=name, confidence=MAKER, called=note)


def _with_its_notes(
    found: Match, notes: tuple[str, ...], tree: FamilyTree
) -> tuple[Match, tuple[str, ...]]:
    """The name with what its notes narrow it to or state; the notes that do neither."""
    kept: list[str] = []
    first = found
    for note in notes:
        for part in filter(None, map(str.strip, _BETWEEN_NOTES.split(note))):
            if _DONE_THEN.match(part):
                kept.append(part)
                continue
            narrower = None if _TOLD_APART.match(part) else narrowed(found, part, tree)
            apart = found is not first and _is_contrary(found, first, part, tree)
            if apart or (narrower is None and _changes(part, found, tree)):
                found = replace(found, changed=part)
                kept.append(part)
            elif narrower:
                found = narrower
            elif _states(part):
                found = replace(found, stated=(*found.stated, part))
            else:
                found, rest = _narrowed_in_passing(found, part, tree)
                kept += [rest] if rest else []
    whole = tuple(kept)
    return found, notes if set(notes) == set(whole) or ", ".join(notes) == ", ".join(
        kept
    ) else whole


_CONTRARY = (
    frozenset({"white", "dark", "gold", "black", "red"}),
    frozenset({"dry", "sweet", "cream", "fino", "amontillado", "oloroso"}),
    frozenset({"aged", "unaged", "blanco", "reposado", "anejo"}),
    frozenset({"ruby", "tawny", "white"}),
)
"""Words of which a thing is one and not another."""


def _is_contrary(found: Match, first: Match, note: str, tree: FamilyTree) -> bool:
    """*Port, the ruby one, tawny*: whether a note makes another kind of what a first one told."""
    said, before = set(_words(note)), set(re.findall(r"\w+", folded(found.called or "")))
    against = any(said <= each and before & each for each in _CONTRARY)
    if not said or not against or found.key is None or found.key == first.key:
        return False
    other = narrowed(first, note, tree)
    if other is None or other.key is None:
        return False
    return not (tree.is_a(found.key, other.key) or tree.is_a(other.key, found.key))


_DONE_THEN = re.compile(
    r"(?:and|then)[ ](?:then[ ])?(?:blend|shake|stir|mix|muddle|strain|whisk)\b", re.IGNORECASE
)
"""*And blend*: what is done then, and no blended one."""

_PARTS_OF_IT = re.compile(
    r"(?:(?:its|the|of|and|both|only|all|zest|juice|peel|skin|flesh|pulp|seeds)[ ,]*|[&+][ ]?){2,}",
    re.IGNORECASE,
)
"""*2 lemons (zest + juice)*: parts of the fruit, and no kind of it."""

_WHICH_IT_IS = re.compile(
    r"(?:(?:and|but|so|then|just|really|well|here|today)[ ,]+)*"
    r"(?:(?:it['’]?s|it[ ]is|that['’]?s|that[ ]is|this[ ]is|they['’]re|which[ ]is|being|make[ ]it"
    r"|make[ ]that|make[ ]sure[ ]it['’]?s|make[ ]sure[ ]that['’]?s"
    r"|(?:i|we)(?:['’](?:ll|m|re|d|ve))?[ ](?:be[ ])?(?:use|using|go|going|went|take|taking|do"
    r"|doing|got|have|want|like)(?:[ ](?:with|for))?|go[ ](?:with|for)|going[ ](?:with|for)|use"
    r"|using|i[ ]mean|meaning)[ ](?:just[ ])?"
    r"(?:an?|the|my|our|some|something|one|actually|basically)?"
    r"|just[ ](?:an?|the|some|something)|something|an?|the)[ ]*(?<=[ ])(?P<kind>(?:(?![ ](?:and"
    r"|or|&)[ ])[^,;()])+?)"
    r"(?P<more>[ ,]*(?:[ ,](?:nothing|no|not|but[ ]not)[ ][^,;()]*"
    r"|[ ](?:here|today|tonight|this[ ]time|though|please|for[ ](?:this|that)(?:[ ]one)?"
    r"|i[ ]think|if[ ](?:i|we)[ ]can))?)[ .!]*",
    re.IGNORECASE,
)
"""*It's a blended scotch, nothing fancy*: a note that says which one of a kind it is."""


def _which_it_is(found: Match, note: str, tree: FamilyTree) -> tuple[Match, str] | None:
    """The kind that a note says a thing is of, and what is left to be noted."""
    said = _WHICH_IT_IS.fullmatch(note)
    if said is None or found.key is None:
        return None
    kind = match_name(said["kind"], tree)
    key = kind.key if kind and kind.confidence >= ADJUSTED and not kind.stated else None
    if key and tree.is_a(key, found.key):
        sure, called = min(found.confidence, ADJUSTED), f"{found.called} ({said['kind']})"
        of_it = replace(found, key=key, matched=tree.name(key), confidence=sure, called=called)
        return of_it, said["more"].strip(" ,")
    narrower = narrowed(found, said["kind"], tree)
    if narrower is not None:
        return narrower, said["more"].strip(" ,")
    poured = key in tree.alcoholic and not tree[str(key)].family
    if key and poured and not tree.is_a(found.key, key):
        return replace(found, changed=note), note  # gin, it's a vodka
    return None


def _changes(note: str, found: Match, tree: FamilyTree) -> bool:
    """Whether a note makes something else of what was found; what is sweet is sweetened anyway."""
    plain = _FREE_OF.sub(" ", _HARD_AS_DONE.sub(" ", note))
    changing = _NEVER_BESIDE & set(_words(plain))
    if changing == {"sweetened"}:
        return (tree[str(found.key)].sugar_g_per_l or 0.0) < _PLAINLY_SWEET_G_PER_L
    return bool(changing)


def _narrowed_in_passing(found: Match, note: str, tree: FamilyTree) -> tuple[Match, str]:
    """*London dry, on top*: what begins a note may narrow the name; what is within it is asked."""
    if _TOLD_APART.match(note) or LOOSENED.search(note):
        return found, note
    if _AT_LEAST.match(note) and STATEMENT.search(note):
        return found, note  # 100 proof or higher
    if _PARTS_OF_IT.fullmatch(note):
        return found, note
    which = _which_it_is(found, note, tree)
    if which is not None:
        return which
    after = WORDS_AFTER.search(note)
    narrower = narrowed(found, note[: after.start()], tree) if after else None
    if after and narrower:
        only_if_there = after["note"].casefold().startswith(("if ", "when "))
        return (found, note) if only_if_there else (narrower, after["note"])
    made = _narrowed_by_a_maker(found, note, tree)
    if made:
        return made, ""
    words = _words(note)
    own = [_name_words(name) for name in (found.matched or "", *tree[str(found.key)].all_names)]
    for count in (3, 2, 1):
        for start in range(len(words) - count + 1):
            more = words_of_a_name(" ".join(words[start : start + count]))
            keys = {tree.by_words.get(each | more) for each in own if more and not more <= each}
            alike = (key for key in keys if key and tree[key].unit == tree[str(found.key)].unit)
            if any(key != found.key for key in alike) and not any(map(unit_named, more)):
                return replace(found, changed=note), note
    return found, note


def _narrowed_by_a_maker(found: Match, note: str, tree: FamilyTree) -> Match | None:
    """*Gin (Pellow & Rudge London dry)*: a maker written large, and the kind behind it."""
    written = note.split()
    if found.maker or found.key is None or not _has_a_maker(found.key, tree):
        return None
    for start in range(1, min(len(written), _MAKER_WORDS + 1)):
        maker = written[:start]
        if not all(word[:1].isupper() or word in ("&", "and", "of") for word in maker):
            return None
        narrower = narrowed(found, " ".join(written[start:]), tree)
        if narrower and _may_be_a_maker(_words(" ".join(maker)), tree):
            return replace(narrower, maker=" ".join(maker), confidence=MAKER)
    return None


def narrowed(found: Match, note: str, tree: FamilyTree) -> Match | None:
    """The kind that a name and a note are together, None where they are none.

    What the note says beyond is stated; words that state nothing are no part of a name.
    """
    if found.key is None or _HOW_CUT.search(note) or _are_two_kinds(found, note, tree):
        return None
    said = STATEMENT.sub(_as_one_word, _AGED_IN.sub(lambda each: each["how"], note))
    words = [word for word in _words(said) if word not in WITHOUT_MEANING]
    bare = [_SAID_FOR.get(word, word) for word in words if word not in _ONE_OF_IT]
    whole = _narrowed_by(words, found, note, tree)
    return whole or (_narrowed_by(bare, found, note, tree) if bare != words else None)


def _below_beside(key: str, more: Set[str], tree: FamilyTree) -> set[str | None]:
    """*Dry sherry, fino*: kinds below one that are named by what they are all kinds of."""
    above = [_name_words(name) for each in tree[key].parents for name in tree[each].all_names]
    keys = {tree.by_words.get(frozenset(each | more)) for each in above if not more <= each}
    return {each for each in keys if each and each != key and tree.is_a(each, key)}


_BETWEEN_KINDS = re.compile(r"[ ](?:and|or|&)[ ]|[ ]?/[ ]?", re.IGNORECASE)


def _are_two_kinds(found: Match, note: str, tree: FamilyTree) -> bool:
    """*Dark and light*, of rum: whether a note joins what narrows a name to several kinds."""
    parts = _BETWEEN_KINDS.split(note)
    if len(parts) < 2:
        return False
    kinds = [narrower.key for each in parts if (narrower := narrowed(found, each, tree))]
    return any(
        not tree.is_a(str(one), str(other)) and not tree.is_a(str(other), str(one))
        for one, other in combinations(kinds, 2)
    )


def _as_one_word(statement: re.Match[str]) -> str:
    """*Aged 5-8 years* as *aged 5to8years*, so that it stays one word beside the others."""
    aged = re.match(r"aged[ ]", statement.group(), re.IGNORECASE)
    number = statement.group()[aged.end() if aged else 0 :]
    joined = re.sub(r"(?<=[0-9])[ ]?[-–][ ]?(?=[0-9])", "to", number).replace(" ", "")
    return f" {'aged ' if aged else ''}{joined} "


def _narrowed_by(extra: Sequence[str], found: Match, note: str, tree: FamilyTree) -> Match | None:
    if not extra or len(extra) > _MOST_EXTRA or found.key is None:
        return None
    own = [_name_words(name) for name in (found.matched or "", *tree[found.key].all_names)]
    for size in range(len(extra), 0, -1):
        for chosen in combinations(extra, size):
            rest = [word for word in extra if word not in chosen]
            if not all(word in _STATING | ADJECTIVES or STATEMENT.match(word) for word in rest):
                continue
            more = {_stem(word) for word in chosen}
            keys = {tree.by_words.get(frozenset(each | more)) for each in own if not more <= each}
            keys -= {None, found.key}
            keys = keys or _below_beside(found.key, more, tree)
            if len(keys) == 1 and tree[str(min(keys, key=str))].unit == tree[found.key].unit:
                key = str(keys.pop())
                stated = (_said_of_it(rest, note),) if rest else ()
                return replace(
                    found,
                    key=key,
                    matched=tree.name(key),
                    confidence=min(found.confidence, ADJUSTED),
                    called=f"{found.called} ({note})",
                    stated=(*found.stated, *stated),
                )
    return None


def _said_of_it(words: Sequence[str], note: str) -> str:
    """The words of a note that no name holds, a statement as it was written."""
    written = {_words(_as_one_word(each))[-1]: each.group() for each in STATEMENT.finditer(note)}
    return " ".join(written.get(word, word) for word in words)


def _across(
    name: str, notes: tuple[str, ...], tree: FamilyTree
) -> tuple[Match | None, tuple[str, ...]]:
    """A name that only its notes complete: *bitters, orange*, *crème, cassis*."""
    for count in range(1, len(notes) + 1):
        if any(_TOLD_APART.match(each) for each in notes[:count]):
            break
        whole = " ".join((name, *notes[:count]))
        found = _in_any_order(whole, tree)
        if found:
            written = f"{name} ({', '.join(notes[:count])})"
            return replace(found, called=written), notes[count:]
    return None, notes


def _states(note: str) -> bool:
    """Whether a note asks something of the bottle, and says nothing else."""
    if not STATEMENT.search(note) and not _STATING & set(_words(note)):
        return False
    if _AT_LEAST.match(note):
        return False  # a least strength has a field of its own
    rest = _words(STATEMENT.sub(" ", note))
    passing = WITHOUT_MEANING | _ONE_OF_IT if STATEMENT.search(note) else WITHOUT_MEANING
    return all(word.strip(".,'&") in _STATING | passing for word in rest)


def may_change(word: str) -> bool:
    """Whether a word, folded, may make something else of what it stands beside."""
    return word in _CHANGING and word not in _DONE_AND_NOTHING_ELSE


_DONE_AND_NOTHING_ELSE = frozenset(
    {"stir", "shake", "add", "pour", "build", "strain", "serve", "muddle", "top", "mix", "with"}
    | {"without", "no", "still"}
)


def states(word: str) -> bool:
    """Whether a word, folded, tells of strength, age, origin, colour, sweetness or style."""
    return word in _STATING


def match_name(name: str, tree: FamilyTree) -> Match | None:
    """The ingredient of a bare name without notes, None where there is none."""
    words = _words(name)
    if not words:
        return None
    found = (
        _named(words, tree, EXACT)
        or _without_adjectives(words, tree)
        or _written_apart(words, tree)
        or _simple_of(words, tree)
        or _in_any_order(name, tree)
        or _stated_before(name, tree)
        or _stated_behind(name, tree)
        or _after_a_maker(name, tree)
        or _before_a_maker(name, tree)
    )
    return found if found is None or found.called else replace(found, called=name.strip())


def named(name: str, tree: FamilyTree) -> Match | None:
    """The ingredient called exactly this, singular or plural, None where there is none."""
    return _named(_words(name), tree, EXACT)


def rather_named(text: str, tree: FamilyTree) -> str | None:
    """The kind a name is of where it is the key of a grouping too: *bitters* are aromatic ones."""
    if text not in tree or not tree[text].family:
        return None
    found = named(text, tree)
    return found.key if found and found.key != text else None


def suggestions(text: str, tree: FamilyTree) -> tuple[str, ...]:
    """The names of `guesses`."""
    return tuple(str(each.matched) for each in guesses(text, tree))


def guesses(text: str, tree: FamilyTree) -> tuple[Match, ...]:
    """The ingredients a text may mean, likeliest first; none of them is sure.

    They are what other languages call so, where that is known; else up to three that are
    most like it, none of them far-fetched.
    """
    meant = tree.may_be(bare_name(text))
    if meant:
        return tuple(Match(key, tree.name(key), GUESSED) for key in meant)
    found = nearest(bare_name(text), tree)
    return tuple(Match(each.key, each.name, round(GUESSED * each.score, 3)) for each in found)


def bare_name(text: str) -> str:
    """A text without the notes that trail it, as it is where it is nothing but notes."""
    return without_notes(text)[-1][0] or text.strip()


def without_notes(text: str) -> list[tuple[str, tuple[str, ...]]]:
    """A text with none, one, two … of its trailing notes taken off, and those notes."""
    stages: list[tuple[str, tuple[str, ...]]] = [(text.strip()[:LONGEST], ())]
    while found := _NOTE.search(stages[-1][0]):
        rest, notes = stages[-1]
        groups = ("brackets", "square", "comma", "dash", "stop", "hash", "colon")
        note = next((found[each] for each in groups if found[each]), "").strip()
        stages.append((rest[: found.start()].rstrip(), (note, *notes) if note else notes))
    return stages


def _words(name: str) -> list[str]:
    return folded(name[:LONGEST]).strip(" .").split()


def _named(words: list[str], tree: FamilyTree, confidence: float) -> Match | None:
    """The ingredient called exactly this, singular or plural."""
    name = " ".join(words)
    for number, form in enumerate(_forms(name)):
        key = tree.by_name.get(form)
        if key is not None:
            sure = confidence if number == 0 else min(confidence, ADJUSTED)
            return Match(key, _name_written(tree[key], form), sure)
    return None


def _without_adjectives(words: list[str], tree: FamilyTree) -> Match | None:
    """The name after the adjectives in front of it, the fewest taken away."""
    for start in range(1, len(words)):
        if words[start - 1].rstrip(",") not in ADJECTIVES:
            break
        found = _named(words[start:], tree, ADJUSTED)
        if found:
            return found
    if words[0] == "bitter":
        found = _named(words[1:], tree, ADJUSTED)
        return found if found and _is_bitter(found, tree) else None
    return None


def _simple_of(words: list[str], tree: FamilyTree) -> Match | None:
    """*Rosemary simple syrup*, *honey simple*: a simple syrup of a flavour is its syrup."""
    front = words[: -2 if words[-1] == "syrup" else -1]
    if not front or "simple" not in words[1:] or words[len(front)] != "simple":
        return None
    return _named([*front, "syrup"], tree, ADJUSTED)


def _in_any_order(name: str, tree: FamilyTree) -> Match | None:
    """A name whose words stand in another order that names nothing else: *vodka vanilla*."""
    said = STATEMENT.findall(name)
    words = _words(STATEMENT.sub(" ", name)) if said else _words(name)
    bare = [word for each in words if (word := each.strip(",.")) and word not in ADJECTIVES]
    if words and words[0] in ("for", "from", "in", "del", "di"):
        return None  # for the syrup
    if _KEPT_IN.search(name):
        return None  # olives in brine
    if not 1 < len(bare) <= _MAKER_WORDS + 3 and not (said and bare):
        return None
    alone = tree.by_name.get(bare[0]) if said and len(bare) == 1 else None
    named_so = _set_of(bare)
    key = (tree.by_words.get(named_so) if len(named_so) > 1 else None) or alone
    if key is None or (said and len(bare) == 1 and not _has_a_maker(key, tree)):
        return None
    if alone is None and not _means_the_same(name, bare, key, tree):
        return None
    stated = tuple(each.group().strip() for each in STATEMENT.finditer(name))
    found = Match(key, tree.name(key), ADJUSTED, called=name.strip())
    narrower = narrowed(found, " ".join(stated), tree) if stated else None
    return replace(narrower, called=found.called) if narrower else replace(found, stated=stated)


_KEPT_IN = re.compile(
    r"[^,(]\bin[ ](?:[\w-]+[ ])?(?:brine|syrup|oil|vinegar|juice|water|milk|cream|alcohol)\b"
    r"|[ ](?:infused|steeped|washed|macerated|soaked)[ ](?:with|in|by)\b",
    re.IGNORECASE,
)
"""*Cherries in syrup*, *gin infused with tea*: neither is what its words name in another order."""


def _means_the_same(name: str, words: Sequence[str], key: str, tree: FamilyTree) -> bool:
    """Whether words in another order are the same thing: *milk chocolate* is no chocolate milk.

    They are where the name ends in the same word, where a stop or a joining word stands between
    them, where a drink stands before its flavour, and where all else only tells which one.
    """
    last = _stem(words[-1])
    if any(_stem(_words(each)[-1]) == last for each in tree[key].all_names if _words(each)):
        return not _HOW_CUT.search(name)
    if "," in name or "(" in name or _BELONGING & set(words):
        return True
    if all(word in _STATING for word in words[1:]):
        return True
    fronts = (" ".join(words[:end]) for end in range(len(words) - 1, 0, -1))
    kind = next((found for front in fronts if (found := named(front, tree))), None)
    if kind is None or kind.key is None:
        return False
    last_of_kind = _stem(_words(tree.name(kind.key))[-1])
    ends_in_it = any(_stem(_words(each)[-1]) == last_of_kind for each in tree[key].all_names)
    both_drinks = kind.key in tree.alcoholic and key in tree.alcoholic
    is_its_drink = both_drinks and (ends_in_it or tree.is_a(key, kind.key))
    return words[0] in _FLAVOURED_BEHIND or is_its_drink


def _stated_before(name: str, tree: FamilyTree) -> Match | None:
    """A kind behind words of age, origin or colour that no kind holds: *Cuban gin*."""
    written = name[:LONGEST].split()
    for start in range(1, min(len(written), _MAKER_WORDS + 1)):
        before = " ".join(written[:start])
        sweetened = before.casefold() == "sweetened"
        if not sweetened and not _only_states(before):
            continue
        found = _named(_words(" ".join(written[start:])), tree, ADJUSTED)
        if found and found.key is not None and not tree[found.key].family:
            if sweetened and _changes(before, found, tree):
                return None
            return _narrowed_or_stated(found, before, name.strip(), tree)
    return None


def _written_apart(words: list[str], tree: FamilyTree) -> Match | None:
    """A name one word of which is written as two: *all spice dram*."""
    for at in range(len(words) - 1):
        found = _named([*words[:at], words[at] + words[at + 1], *words[at + 2 :]], tree, ADJUSTED)
        if found:
            return found
    return None


def _stated_behind(name: str, tree: FamilyTree) -> Match | None:
    """A kind before words of age, origin or style: *whisky single cask*, *house bourbon blend*."""
    written = name[:LONGEST].split()
    for end in range(len(written) - 1, max(0, len(written) - _MAKER_WORDS - 1), -1):
        behind = " ".join(written[end:])
        if not _only_states(behind):
            return None
        if behind.casefold() in _NO_KIND_ALONE:
            continue  # a root beer barrel
        words = _words(" ".join(written[:end]))
        found = _named(words, tree, ADJUSTED) or _without_adjectives(words, tree)
        if found and found.key in tree.alcoholic and not tree[found.key].family:
            return _narrowed_or_stated(found, behind, name.strip(), tree)
    return None


def _narrowed_or_stated(found: Match, words: str, name: str, tree: FamilyTree) -> Match:
    """The kind that words beside a name narrow it to, else the name with the words stated."""
    narrower = narrowed(replace(found, called=name), words, tree)
    return replace(narrower or replace(found, stated=(words,)), called=name)


def _only_states(words: str) -> bool:
    """Whether words ask something of the bottle and make nothing else of what is in it."""
    plain = _AGED_IN.sub(" aged ", STATEMENT.sub(" ", words))
    if _words(words) and _words(words)[-1] in _JOINS:
        return False  # dark and light rum
    return _states(_AGED_IN.sub(" aged ", words)) and not _CHANGING & set(_words(plain)) - {"still"}


def _after_a_maker(name: str, tree: FamilyTree) -> Match | None:
    """A kind of drink after words that name nothing: *Grey Ferry London dry gin*.

    The longest name wins. An ingredient or a flavour is never a maker: *almond
    cream* is no cream and *vanilla gin* no gin.
    """
    written = name[:LONGEST].split()
    for start in range(1, min(len(written), _MAKER_WORDS + 1)):
        maker, kind = " ".join(written[:start]), " ".join(written[start:])
        found = _named(_words(kind), tree, MAKER)
        if found and found.key is not None:
            made = _has_a_maker(found.key, tree) and _may_be_a_maker(_words(maker), tree)
            made = made and not _is_only_talk(maker)
            made = made and (found.key in tree.alcoholic or maker[:1].isupper())
            return replace(found, maker=maker, called=kind) if made else None
    return None


def _is_only_talk(words: str) -> bool:
    """*Take your*, *I said*: whether small words are what anybody says, and no maker's."""
    said = words.split()
    return words == words.lower() and all(tells_nothing_else(folded(each)) for each in said)


def _before_a_maker(name: str, tree: FamilyTree) -> Match | None:
    """A kind of drink before words that name nothing and are written large: *gin Grey Ferry*."""
    written = name[:LONGEST].split()
    for end in range(len(written) - 1, max(0, len(written) - _MAKER_WORDS - 1), -1):
        maker, kind = written[end:], " ".join(written[:end])
        if not all(word[:1].isupper() or word in ("&", "and", "of") for word in maker):
            break
        found = _named(_words(kind), tree, MAKER)
        if found and found.key is not None:
            said = " ".join(maker)
            made = _has_a_maker(found.key, tree) and _may_be_a_maker(_words(said), tree)
            return replace(found, maker=said, called=kind) if made else None
    return None


def _has_a_maker(key: str, tree: FamilyTree) -> bool:
    """Whether it is bought as a maker's drink, and not as milk, butter or a mere grouping."""
    ingredient = tree[key]
    several = len(folded(ingredient.name).split()) > 1
    if ingredient.unit != "ml" or (ingredient.family and not (several and key in tree.alcoholic)):
        return False
    return (ingredient.abv_percent or 0.0) > 0.5 or several


_PUTS_RIGHT = frozenset({"sorry", "meant", "mean", "wait", "actually", "scratch", "oops"})
_JOINS = frozenset({"or", "oder", "ou", "oppure", "o", "u", "and", "with", "plus", "and/or"})


def _may_be_a_maker(words: list[str], tree: FamilyTree) -> bool:
    """Whether no word is an ingredient, a flavour, or changes what the kind is."""
    if words and (words[-1] in _JOINS or not _PUTS_RIGHT.isdisjoint(words)):
        return False  # korn or vodka: what is joined is no maker's
    for word in words:
        plain = word.strip(".,'&")
        if plain in _CHANGING or any(form in tree.by_name for form in _forms(plain)):
            return False
        if len(plain) > 4 and plain.endswith("y") and plain[:-1] in tree.by_name:
            return False  # peachy bourbon
        if any(f"{plain} {kind}" in tree.by_name for kind in _FLAVOURED):
            return False
    return True


def _name_words(name: str) -> frozenset[str]:
    return _set_of(_words(name))


def _set_of(words: Sequence[str]) -> frozenset[str]:
    return words_of_a_name(" ".join(words))


def _stem(word: str) -> str:
    return next(iter(words_of_a_name(word)), word)


def _is_bitter(match: Match, tree: FamilyTree) -> bool:
    kinds = (match.key, *tree.ancestors(match.key)) if match.key else ()
    return any("bitter" in folded(tree.name(each)).split() for each in kinds)


def _name_written(ingredient: Ingredient, form: str) -> str:
    return next((each for each in ingredient.all_names if folded(each) == form), ingredient.name)


def _forms(name: str) -> Iterator[str]:
    """A folded name, then its singular or plural, and the other spelling of whisky."""
    yield name
    for ending, other in (("ies", "y"), ("ves", "f"), ("es", ""), ("s", "")):
        if name.endswith(ending) and len(name) > len(ending) + 2:
            yield name[: -len(ending)] + other
    yield f"{name}s"
    if name.endswith("whiskey"):
        yield f"{name[:-3]}y"
    elif name.endswith("whisky"):
        yield f"{name[:-1]}ey"
