"""What speech is taken down as that sounds like something else: *mess cal*, *to ounces*.

| taken down as                    | was said            |
|----------------------------------|---------------------|
| to ounces of rye, for dashes     | two, four           |
| ate mint leaves                  | eight               |
| an ounce of mess cal             | mezcal              |
| one ounce sweet for mouth        | sweet vermouth      |
| half announce of simple serum    | half an ounce, syrup |

Only words stand here that mean nothing else where they are found; whatever is spelt wrongly
otherwise is asked about.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from itertools import pairwise

from barkeep.domain.amounts.spoken import NUMBER_WORDS
from barkeep.domain.spec_text.traced import Traced

_SOUNDS_LIKE = """
    vermouth: for mouth, four mouth, fur mouth, fore mouth, verm youth, vermooth, firm mouth
    triple sec: trip will sec, triple sack, triple sick, triple sek, tripple sack, trip'll sec
    mezcal: mess cal, mess call, mess kal, mez cal, mezz cal, mes cal, mescow, mess cow
    syrup: serum, sir up, sirrup, seer up, sear up
    egg white: egg quite, egg wide, egg wightte, ag white
    egg whites: egg quitestes
    agave: a gave, a gavi, uh gave, a gavay, agavi, a gaveh
    orgeat: or jot, or zhat, or zha, oar jot, or jaw, or jah, or jeat, or sha, or gia
    falernum: fill learn um, fa learn um, fell ernum, fallen um, fall earn um, fell learn um,
        fill ernum, for learn um, fuller num, fell her num
    maraschino: mara skeeno, marra skeeno, mara skino, maras keeno, mara she no, mara sheeno,
        maras chino, mara schino, mare a skeeno, marash ino
    curaçao: cure a sow, cure a so, cure a sew, cure a sao, cura sow, cure us ow, curious sow,
        cure a saw, cura so
    amaro: a morrow, am arrow, a marrow, ah maro, a maro, amoro
    amaretto: am a retto, ammo retto, ama retto, a more etto, am aretto, ammaretto
    cachaça: ka shasa, ca shasa, kasha saw, cash asa, ka shah sa, catch aca, ka chaka, cuh shasa,
        cashasa, kashasa, cachasa, cashassa, cachassa
    absinthe: ab synth, ab sent, ab sinth, app synth, absent, ab since, absynth
    bitters: bidders, betters, bit hers
    prosecco: pro secco, pro seco, pro sec oh, press ecco, prose echo, pro say co
    cognac: cone yak, con yak, corn yak, cone yack, konyak, con yack, cog nack
    pisco: pee sco, piss co, peace co, pea sco, peas co
    tequila: to kill a, tea keela, te keela, to keela, ta keela, the keela, tequil a
    grenadine: grenade een, grenade in, grenade ine, gren a dean, grena dean, granade in
    demerara: dem a rara, dem a rera, demo rara, damn a rara, dammer ara, demer ara, dem erara
    ginger beer: ginger bear, ginger beard, ginger bier
    tonic water: tonic waiter, tonic what her
    soda water: soda waiter
    elderflower: elder flour, elder flow are, elder flowers
    cardamom: card a mom, carda mom, card a mum
    fino: fee no, feeno
    oloroso: olo rosso, oh lo roso, oh lo rosso, ola roso
    amontillado: a mon tia do, amontia do, a montillado, a monty auto, a mont yado, amon tiado
    manzanilla: manza nia, mansa nia, man's a nia, manza nilla
    rye: wry
    bourbon: bur bin, burr bon, bur bun, bour bin
    gin: jin
    sugar cube: sugar queue, sugar cue
    mint leaves: meant leaves, men leaves, mint leafs, mint leave, mint leads, mint leafes
    saline: say lean, sail lean, sale lean, say line, sailing
    lime juice: line juice, lime jews, lying juice, limb juice, climb juice
    lemon juice: lemon jews, lemming juice, lemon jus, lemon deuce, limon juice
    orange juice: orange jews
    pineapple: pine apple
    cordial: cord deal, cordeal, core deal, cord ial
    liqueur: lick your, lick her, lick cure, li cure
    aperitivo: a parrot evo, a per a tivo, aperi tivo, a pair a tivo
    aquavit: aqua vit, aqua veet, aqua feet, aqua vet
    calvados: cal vados, calva dose, cal va dose
    champagne: sham pain, sham pagne
    allspice dram: all spice tram, all spy stram, all spice drum, all spice dramm
    crème de cacao: creme de cow cow, creme day cacao, cream de cocoa, creme to cacao,
        creme de ka cow, cream to cacao, cream de cacao
    crème de violette: creme de violet, cream de violet, cream to violet, creme de violette
    crème de menthe: cream de mint, cream to mint, cream de month, creme de month, creme de mint
    crème de cassis: cream de cassis, cream to cassis, creme de cassis, creme day cassis
    barspoon: bar spun, bars spoon, bar's spoon
    barspoons: bar spoons, bar's spoons
    grapefruit: grape fruit
    superfine: super fine
    superfine sugar: super fine sugar, sugar super fine
    butterscotch: butter scotch
    dragon fruit: dragonfruit
    passion fruit: passion froot, passionate fruit
    VSOP: v s o p, vs op, v.s. o.p
    XO: x o, ex oh
    PX sherry: p x sherry, p.x. sherry, p.x sherry, pea ex sherry
    pedro ximénez sherry: pedro him enez, pedro jimenez, pedro ximenes, pedro hymen ez
    reposado: repo sado, rep a sado, reposado's, repos auto, repo soddo, rest a sado
    añejo: on yeah ho, an yay ho, on a ho, anneyho, an a ho
    blanco: blank oh, blanko
    crème de mûre: creme de mure, cream de mure, creme de moor, cream de moor, creme de mur
    crème de pêche: creme de pesh, cream de pesh, creme de peche
    genever: jenny ver, jen ever, gen ever, yen ever, jenever
    kirsch: kersh, kirsh, curse wasser
    limoncello: lemon cello, limon cello, lemoncello, lemon chello
    espresso: expresso, express oh, espresso's
    Worcestershire: worcester sure, wooster sure, wooster, woostershire, worchester, worstershire,
        worcester shire, wor chester shire, war chester shire, wuster
    aquafaba: aqua fava, aqua faba, aqua fabba, aquafava
    tonka: tonk a
    hibiscus: high biscuits, hi biscus, high biscus
    chamomile: camel mile, cam a mile
    lapsang souchong: lap sang souchong, lap sang sue chong
    grappa: grapper, grap a
    rhum agricole: rum agricole, rum agri cole, room agricole, rum agree cole, roma agricole
    Scotch: scotts, skotch
    whiskey: whisk key, wiskey, whiskie
    vodka: vodca, vod ka
    liqueur: liquer, liquour, liquere, likeur
    cinnamon: cinammon, cinnamin, sin a man, cinnamun
    cucumber: queue cumber, cue cumber
    raspberry: raz berry, rasberry
    coconut: coco nut, cocoanut
    pomegranate: palm a granite, pomegranite, pom a granite
    tamarind: tamarin, tamar end
    elderflower liqueur: elderflower lick her
    overproof: over proof, over prove
    bianco vermouth: be anko vermouth, bianca vermouth
    rosso vermouth: row so vermouth, rose oh vermouth
    mint leaves: mint lives
    simple syrup: simple sear up, simple sir up, simple syrop, simple siren, simple stirrup
    honey syrup: honey serum, honey sir up
"""

_AS_ONE = (entry.partition(": ") for entry in re.split(r"\n {4}(?! )", _SOUNDS_LIKE.strip()))
_MEANT: Mapping[str, str] = {
    " ".join(heard.split()): meant for meant, _, said in _AS_ONE for heard in said.split(",")
}
_BEGINNINGS = frozenset(" ".join(heard.split()[:2]) for heard in _MEANT)
"""The first two words of each, or its only one."""
_FIRST_WORDS = frozenset(heard.split()[0] for heard in _MEANT)
_HEARD = re.compile(
    rf"(?<![\w'’-])(?:{'|'.join(sorted(_MEANT, key=len, reverse=True))})(?![\w'’-])",
    re.IGNORECASE,
)

_COUNTED = (
    r"(?:ounces|oz|dashes|drops|parts|barspoons|teaspoons|tablespoons|cups|sprigs|slices|wedges"
    r"|cubes|mint[ ]lea(?:ves|fs)|basil[ ]leaves|egg[ ](?:whites|yolks|quites)|eggs|limes|lemons"
    r"|raspberries|strawberries|blackberries|cherries|olives|sugar[ ]cubes)\b"
)
_BEGINS = r"(?:^|(?<=[,;.][ ])|(?<=\band[ ])|(?<=\bthen[ ]))"
_NUMBERS: tuple[tuple[re.Pattern[str], str], ...] = (
    (re.compile(rf"{_BEGINS}too?[ ](?={_COUNTED})", re.I), "two "),
    (re.compile(rf"{_BEGINS}fore?[ ](?={_COUNTED})", re.I), "four "),
    (re.compile(rf"{_BEGINS}(?:tree|free)[ ](?={_COUNTED})", re.I), "three "),
    (re.compile(rf"{_BEGINS}ate[ ](?=\w)", re.I), "eight "),
    (re.compile(rf"{_BEGINS}won[ ](?=\w)", re.I), "one "),
    (re.compile(r"\bhalf[ ](?:(?:and|in|on|a)[ ]ounce|announce)\b", re.I), "half an ounce"),
    (re.compile(r"\bquarters?[ ](?:announce|in[ ]ounce|and[ ]ounce)\b", re.I), "quarter ounce"),
    (re.compile(rf"{_BEGINS}(?:announce|a[ ]nounce)[ ](?=of\b|and\b)", re.I), "an ounce "),
    (
        re.compile(
            r"(?<=\bone[ ])once(?=[ ]of\b)|(?<=\btwo[ ])once(?=[ ]of\b)|(?<=\ban[ ])once(?=[ ]of\b)"
            r"|(?<=\bquarter[ ])once\b|(?<=\bhalf[ ])once\b",
            re.I,
        ),
        "ounce",
    ),
)
_MEASURED = re.compile(
    r"(?<=[\w¼½¾][ ])(?:(?P<ml>m[ .]l|mills|mill's|miles|milz|meals|mil's|em[ ]el)"
    r"|(?P<cl>c[ .]l|see[ ]el|cee[ ]el)|(?P<oz>o[ .]z|ounce's|ouncies|announces))\b(?![ ]of[ ]ice)",
    re.IGNORECASE,
)
"""Measures as they are spelt or sound, behind a number."""

_MEASURE_HINTS = frozenset(
    {
        "m",
        "c",
        "o",
        "m.l",
        "c.l",
        "o.z",
        "mills",
        "mill's",
        "miles",
        "milz",
        "meals",
        "mil's",
        "em",
        "see",
    }
    | {"cee", "ounce's", "ouncies", "announces"}
)

_GLUED = re.compile(
    r"\b(?P<tens>twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)"
    r"(?P<ones>one|two|three|four|five|six|seven|eight|nine)\b",
    re.IGNORECASE,
)
"""*Fortyfive*, taken down as one word."""

_NUMBER_HINTS = frozenset(
    {"to", "too", "for", "fore", "tree", "free", "ate", "won", "once", "announce", "nounce"}
    | {"in", "on", "and"}
)


_HINTS = _FIRST_WORDS | _NUMBER_HINTS | _MEASURE_HINTS
"""A line without any of these was taken down as it was said."""


def _may_be_heard(words: Sequence[str]) -> bool:
    plain = [each.strip(".;:()!?") for each in words]
    return any(
        one in _BEGINNINGS or f"{one} {other}" in _BEGINNINGS
        for one, other in pairwise([*plain, ""])
    )


def as_said(said: Traced) -> Traced:
    """The line as it was said, where it was taken down by its sound."""
    spoken = said.text.casefold().replace(",", " ").split()
    words = frozenset(spoken)
    if words.isdisjoint(_HINTS) and "ty" not in said.text:
        return said
    if _may_be_heard(spoken):
        for found in reversed(list(_HEARD.finditer(said.text))):
            meant = _MEANT[found.group().casefold()]
            said = said.said_instead(found.start(), found.end(), meant)
    spelt = not words.isdisjoint(_MEASURE_HINTS)
    for found in reversed(list(_MEASURED.finditer(said.text)) if spelt else []):
        before = said.text[: found.start()].split()[-1].strip(",.")
        if before[-1:].isnumeric() or before.casefold() in NUMBER_WORDS | {"five", "point"}:
            unit = "ml" if found["ml"] else "cl" if found["cl"] else "oz"
            said = said.said_instead(*found.span(), unit)
    for found in reversed(list(_GLUED.finditer(said.text)) if "ty" in said.text else []):
        said = said.said_instead(*found.span(), f"{found['tens']}-{found['ones']}")
    if not words.isdisjoint(_NUMBER_HINTS):
        for pattern, number in _NUMBERS:
            for found in reversed(list(pattern.finditer(said.text))):
                said = said.said_instead(found.start(), found.end(), number)
    return said
