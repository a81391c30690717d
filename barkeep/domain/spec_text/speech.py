"""A line as it was said or jotted down, put as it would be written out.

| said or jotted down                       | put as                                     |
|-------------------------------------------|--------------------------------------------|
| ½ oz ea. lemon, orgeat; 2 dsh bitters     | ½ oz each lemon, orgeat; 2 dash bitters    |
| an ounce of, what's it called, falernum   | an ounce of falernum                       |
| three, ounces of gin                      | three ounces of gin                        |
| pisco the Peruvian one not the Chilean    | pisco, the Peruvian one, not the Chilean   |
| espresso still hot, simple leave it out if | espresso, still hot; simple, leave it out |
| 1 oz lime and the same of syrup           | 1 oz lime and 1 oz syrup                   |
| a Speyside ounce and a half               | a Speyside an ounce and a half             |
| drop a cherry in the bottom               | a cherry in the bottom                     |
| 1-inch piece ginger                       | one piece ginger, 1-inch                   |
| lemon juice comma strained period         | lemon juice, strained                      |
| 1 T sugar, 1 t vanilla extract            | 1 tbsp sugar, 1 tsp vanilla extract        |
| eight dashes yes eight of bitters         | eight dashes of bitters                    |
| simple, two to one                        | simple, 2:1                                |
| `| gin | 45 ml | chilled |`               | 45 ml gin, chilled                         |

Only what a line is read from is put so; its own words are kept as they were written.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping

from barkeep.domain.amounts.amount import Amount
from barkeep.domain.amounts.units import BarUnits, unit_named
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.found import amount_at, amounts_in, is_a_number
from barkeep.domain.spec_text.misheard import as_said
from barkeep.domain.spec_text.traced import Traced, joined
from barkeep.domain.spec_text.unplaced import is_the_same

_SHORTHAND: Mapping[str, str] = {
    "ea": "each",
    "dsh": "dash",
    "dshs": "dashes",
    "oj": "orange juice",
    "lrg": "large",
    "lg": "large",
    "w/": "with ",
    "w/o": "without ",
    "lt": "light",
    "dk": "dark",
    "garn": "garnish:",
    "gf": "grapefruit",
    "med": "medium",
    "sm": "small",
    "sml": "small",
    "lge": "large",
    "frsh": "fresh",
    "fr": "fresh",
    "sqzd": "squeezed",
    "swt": "sweet",
    "verm": "vermouth",
    "choc": "chocolate",
    "mara": "maraschino",
    "pref": "preferably",
    "xtra": "extra",
    "hvy": "heavy",
    "blk": "black",
    "wht": "white",
    "bbn": "bourbon",
    "teq": "tequila",
    "lem": "lemon",
    "jce": "juice",
    "juc": "juice",
    "simp": "simple",
    "arom": "aromatic",
    "aro": "aromatic",
    "liq": "liqueur",
    "liqu": "liqueur",
    "syr": "syrup",
    "gren": "grenadine",
    "btrs": "bitters",
    "bttrs": "bitters",
    "bitt": "bitters",
    "crm": "cream",
    "rasp": "raspberry",
    "cuke": "cucumber",
    "cukes": "cucumbers",
    "pom": "pomegranate",
    "cran": "cranberry",
    "elderfl": "elderflower",
    "bourb": "bourbon",
    "champ": "champagne",
    "prosec": "prosecco",
    "sqz": "squeeze",
    "sqzed": "squeezed",
    "chld": "chilled",
}
_SHORT = re.compile(
    r"(?<![\w/.'’-])(?:(?:ea|dshs?|oj|lrg|lge?|lt|dk|gf|med|sml?|frsh|fr|sqzd|swt|verm|choc"
    r"|mara|pref|xtra|hvy|blk|wht|bbn|teq|lem|jce|juc|simp|aro|arom|liqu?|syr|gren|bt?trs|bitt|crm"
    r"|rasp|cukes?|pom|cran|elderfl|bourb|champ|prosec|sqz|sqzed|chld)\b(?![’'/-])\.?"
    r"|garn\b[.:]*|w/o(?![a-z])|w/(?!o\b))[ ]?",
    re.IGNORECASE,
)

_FILLER = re.compile(
    r"[ ,]*\b(?:what(?:['’]s|[ ]is)[ ](?:it|that|this)[ ]called"
    r"|what[ ]do[ ]you[ ]call[ ](?:it|that)"
    r"|what(?:['’]s|[ ]is)[ ](?:its|the)[ ](?:name|word)|whatsit|what['’]?s[ ]its[ ]name"
    r"|whatchamacallit|how[ ]do[ ]you[ ]say|you[ ]know(?![ ]what)|let[ ]me[ ]see)\b[ ,?]*",
    re.IGNORECASE,
)
_OF_AND_STOP = re.compile(r"(?<=\bof),[ ]*(?!(?:no|not|wait|sorry|make|i[ ]mean)\b)", re.IGNORECASE)
_MEASURE = (
    r"(?:ounces?|oz|ml|mils?|millilit(?:er|re)s?|cl|dash(?:es)?|drops?|parts?|barspoons?"
    r"|(?:tea|table)spoons?|tsp|tbsp|cups?)\b"
)
_NUMBER_AND_STOP = re.compile(rf"(?<=\w),[ ]+(?={_MEASURE})", re.IGNORECASE)

_ASIDE = re.compile(
    r"""(?P<before>[\w'’]+)[)]?(?P<gap>[ ]+)(?=
        (?:the|that)[ ](?!(?:last|other|first|second|same|next)\b)(?:[\w'-]+[ ]){1,4}?
            (?:ones?|kind|sort|style|stuff|type|version|variety)\b
        |not[ ]\w
        |or[ ](?:any[ ])?(?:other|another|similar|anything|something|whatever)\b
        |(?:something|anything)[ ]\w
        |(?:trust|believe)[ ]me\b|i[ ](?:swear|promise)\b
        |(?:ice|stone)[ -]cold(?=(?:[ ,]+please)?[ .!]*$|[,;)])
        |(?<![0-9][ ])(?<!ly[ ])(?:torched|singed|slapped|smacked|spanked|clapped|bruised)
            (?=[ .]*$|[,;)]|[ ](?:a[ ]|and|over|as|for|before|in[ ]|on[ ]|just|until|first)\b)
        |still[ ](?:hot|warm|cold|frozen|fizzy)\b
        |(?:leave|skip|omit)[ ](?:it|this|that)\b
        |(?:yes|no)[ ](?:really|honestly|seriously)\b
        |(?:go[ ]easy|whatever)\b
        |seven[ ](?:fifty|hundred)[ .]*$
        |or[ ](?:maybe[ ]|even[ ]|perhaps[ ])?
            (?:an?[ ](?:bit|little|touch|tad|hair)[ ]|slightly[ ])?
            (?:less|more)\b(?![ ](?:of|than)\b)
        |nothing[ ](?:(?:too|very|that|super)[ ])?\w+
        |(?:you|we)[ ](?:can|could|might)[ ](?:also[ ])?(?:use|sub|swap|go|do|make|try)\b
        |the[ ](?:more[ ])?\w+[ ]the[ ](?:better|merrier)\b
        |(?P<fine>\w+[ ](?:is|are|works)[ ](?:(?:also|totally|just|perfectly)[ ])?
            (?:fine|ok|okay|good|great|better|best|perfect|well)\b)
        |no[ ](?:pith|pulp|seeds|pips|stems?|skin|bits|ice)\b
        |(?:yolk|skin|peel|pith|shell|stems?|stalks?|seeds?|pips|pulp|lea(?:f|ves)|rind|core|fronds?
            |tops?|zest|white)[ ]and[ ](?:all|everything)\b
    )""",
    re.IGNORECASE | re.VERBOSE,
)
_NEEDS_WHAT_FOLLOWS_LIST = """
    of for with use using used in on and or it that that's make from is are was to not no like
    than but if by as we i i've the an a add call go say take mean sorry wait rather please do did
    don't cut double halve change swap switch something anything about over pot single
"""
_NEEDS_WHAT_FOLLOWS = frozenset(_NEEDS_WHAT_FOLLOWS_LIST.split())
"""Words that what follows them belongs to, so that no stop was meant between the two."""

_SYRUP = (
    r"(?:(?:simple|sugar|honey|demerara|turbinado|agave|maple|cane|brown[ ]sugar|gum|cinnamon"
    r"|ginger|vanilla|white[ ]sugar)(?:[ ]syrup)?|syrup)"
)
_RATIO = re.compile(
    rf"(?:(?<![\w])(?P<before>{_SYRUP})"
    r"(?P<gap>[ ,(]+(?:(?:at|that['’]?s|it['’]?s|which[ ]is|an?|so|mixed|made)[ ])*))?"
    r"\b(?P<sugar>one|two|three|1|2|3|one[ ]and[ ]a[ ]half|1[.]5)[ -]to[ -](?P<water>one|two|1|2)\b"
    rf"(?P<ratio>[ ]ratio(?:[ ]of)?)?(?P<behind>(?=[,]?[ ](?:rich[ ]|heavy[ ])?{_SYRUP}\b))?",
    re.IGNORECASE,
)
"""*Simple, two to one*: how much sugar to how much water, where a syrup stands beside."""
_JUST_THE_ONE = re.compile(
    r"(?P<what>[^\W\d_][^,;()]*?)(?P<gap>[ ,]+just[ ](?:the[ ])?(?P<count>one|two|three)[ .!]*)$",
    re.IGNORECASE,
)
"""*Egg white, just the one*."""
_WHATEVER = re.compile(
    r"(?<![\w])(?P<which>whatever|whichever|any)[ ](?P<what>[^,;()]+?)[ ](?P<tail>(?:you|we|i"
    r"|they|is|happens)"
    r"(?:['’](?:ve|re|s|d))?[ ](?:like|have|got|prefer|love|want|on[ ]hand|around|open|there"
    r"|to[ ]be|fancy|find|can|use)"
    r"\b.*)$",
    re.IGNORECASE,
)
"""*Whatever ginger beer you like*."""
_CAN_HOLDS = re.compile(
    r"\b(?P<size>four|five|six|seven|eight|ten|twelve|fourteen|fifteen|sixteen|twenty"
    r"|three[ ]hundred|five[ ]hundred"
    r"|seven[ ]fifty)[ -](?P<unit>ounce|ml|mil)(?=[ -](?:cans?|bottles?|tins?|cartons?|jars?)\b)",
    re.IGNORECASE,
)
"""*A six ounce can*: how much it holds, in words."""
_SIZES: Mapping[str, str] = {
    **{
        "four": "4",
        "five": "5",
        "six": "6",
        "seven": "7",
        "eight": "8",
        "ten": "10",
        "twelve": "12",
    },
    **{"fourteen": "14", "fifteen": "15", "sixteen": "16", "twenty": "20", "three hundred": "300"},
    **{"five hundred": "500", "seven fifty": "750"},
}
_PART_ONLY = re.compile(
    r"\begg(?P<many>s?)(?P<told>[ ,(–-]+(?:(?:just|only)[ ](?:the[ ]|its[ ])?(?P<first>white"
    r"|yolk)s?|(?:the[ ])?"
    r"(?P<last>white|yolk)s?[ ]only)[ ]*\)?)",
    re.IGNORECASE,
)
"""*1 egg (white only)* is an egg white."""
_RATIO_IN_PARTS = re.compile(
    r"(?P<sugar>[1-3]|one|two|three|1[.]5)[ ]parts?(?P<first>[ ](?:of[ ])?(?:honey|sugar|maple"
    r"|agave"
    r"|demerara|[\w]+[ ]sugar))?(?:[ ]*,[ ]*|[ ](?:to|and)[ ]|[ ])(?P<water>1|2|one|two)"
    r"(?:[ ]parts?)?[ ](?:of[ ])?(?:(?:hot|warm|boiling)[ ])?water\b",
    re.IGNORECASE,
)
"""*Three parts honey, one part water*: how a syrup is made."""
_TO_THE_TOP = re.compile(
    r"(?P<gap>[ ,]+)(?:(?:and|then|just|you|to)[ ]+)*(?:fill(?:[ ](?:it|the[ ](?:glass|rest)"
    r"|that|her))?"
    r"(?:[ ]up)?[ ](?:(?:all[ ]the[ ]way[ ])?to|right[ ](?:up[ ])?to)"
    r"|all[ ]the[ ]way(?:[ ]up)?[ ]to"
    r"|(?:right[ ])?up[ ]to|to)[ ](?:(?:within|about)[ ](?:an?|one|half[ ]an?)[ ](?:inch"
    r"|centimet(?:er|re)|cm"
    r"|finger)[ ](?:of|from|below)[ ])?the[ ](?:top|rim|brim|line|edge|lip)(?:[ ]of[ ](?:the"
    r"|your)[ ]"
    r"(?:glass|mug|cup))?[ .!]*$",
    re.IGNORECASE,
)
"""*Ginger ale, fill it to the top*; *hot coffee to within an inch of the rim*."""
_IN_FIGURES: Mapping[str, str] = {
    **{"one": "1", "two": "2", "three": "3", "one and a half": "1.5"},
    **{each: each for each in ("1", "2", "3", "1.5")},
}

_SOAKED = re.compile(
    r"(?P<how>soaked|doused|drenched|moistened|saturated)(?P<gap>[ ](?:with|in|by|w/)[ ])"
    r"(?=[0-9]|an?[ ]|one|two|three|four|five|six|a[ ]few)",
    re.IGNORECASE,
)
_FOOTNOTE = re.compile(r"(?<=[^\W\d_])[¹²³†‡]+|(?<=[^\W\d_])\*+(?=$|[ ,])")
_OPTIONAL_AT_THE_END = re.compile(
    r"(?<=[\w)])(?<!not)(?<!is)(?<!it's)(?<!that's)[ ]+"
    r"(?=\(?(?:totally[ ])?optional(?:ly)?[).!]*$)",
    re.IGNORECASE,
)
_ITS_KIND = re.compile(
    r"(?P<name>[^\W\d_][\w'’& -]*?)(?P<gap>[ ,]+)(?:that['’]?s|which[ ]is|it['’]?s)[ ]"
    r"(?:the|an?|our|my)[ ](?P<kind>[^\W\d_][\w' -]*?)[ .]*$",
    re.IGNORECASE,
)
_ITS_MAKER = re.compile(
    r"(?P<name>[^,;()]*?[^\W\d_])(?P<gap>[ ]+)(?:from|by|like|such[ ]as|say"
    r"|e\.?g\.?)[ ](?!(?:the|an?"
    r"|half|one|two|three|my|our|your|so|this|that|it|you|we"
    r"|i)\b)[^\W\d_]+(?:[ ](?:&[ ])?[^\W\d_]+){0,5}[ .]*$",
    re.IGNORECASE,
)
"""*Coffee liqueur from hollow lamp*."""
_SHARE_OF_ONE = re.compile(
    r"(?P<unit>ounce|barspoon|teaspoon|tablespoon|cup)[ ]and[ ](?:an?[ ])?(?:half|quarter)\b", re.I
)
_OR_TWO = re.compile(
    r"(?<![\w-])(?P<one>an?|one)[ ](?P<what>(?!(?:or|dash|drop|ounce|half)\b)"
    r"[^\W\d_][\w' -]{1,40}?)(?P<more>[ ]or[ ](?:two|three))(?=[ ]*(?:$|[,;.)(]))",
    re.IGNORECASE,
)
_SHAKES = re.compile(
    r"(?<=[\w¼½¾])[ ](?P<what>shakes?)(?=[ ]of[ ])|^(?P<first>shakes?)(?=[ ]of[ ])", re.IGNORECASE
)
_TOUCH = re.compile(
    r"(?P<some>(?:just[ ])?an?[ ](?:(?:tiny|little|wee)[ ])?(?:touch|hint|whisper|kiss|tad"
    r"|suggestion|smidgen|whiff|lick))[ ]of[ ](?P<what>[^,;()]+?)[ ]*,?[ ]"
    r"(?:(?:like|about|say|maybe|so|around|roughly|probably|call[ ]it|that['’]s)[ ]+)+"
    r"(?P<much>\S.*)",
    re.IGNORECASE,
)

_SAME = re.compile(
    r"\b(?:(?:the[ ])?same(?:[ ](?:amount|again|measure|quantity))?[ ]of"
    r"|(?<=and[ ])as[ ]much(?:[ ]of)?|an[ ]equal[ ](?:amount|measure)[ ]of)[ ](?:the[ ])?",
    re.IGNORECASE,
)
_SAME_OF_EACH = re.compile(
    r"^(?:it's[ ])?(?:the[ ])?same[ ](?:amount|measure|quantity)[ ]of[ ]", re.I
)
_EACH_ENDS = re.compile(r"\b(?:each|apiece)[ .!]*$", re.IGNORECASE)
_AND_A_SHARE = re.compile(
    r"(?<=[ ])(?P<unit>ounce|barspoon|teaspoon|tablespoon|cup)"
    r"(?=[ ]and[ ](?:an?[ ]|one[ ]|three[ ])?(?:half|quarters?|third)\b)",
    re.IGNORECASE,
)
_VERB = re.compile(
    r"(?:(?:and|then|now|next|so|just)[ ,]+)*(?P<verb>drop|dash|splash|stick|perch|hang|pop)"
    r"(?:[ ]in)?[ ](?=(?:an?|one|two|three|some|the)[ ])(?!\w+[ ](?:of)[ ])",
    re.IGNORECASE,
)
_LONG_PIECE = re.compile(
    r"(?:(?P<count>[0-9]{1,2}|an?|one|two|three|four)[ ])?"
    r"(?P<size>(?:[0-9]+(?:[./][0-9]+)?|[¼½¾]|one|two|three|half[- ]an?)[ -]?(?:inch|cm|in\.|\"))"
    r"[ -](?P<what>piece|knob|chunk|length|stick|strip|cube|segment|coin|slice)(?P<many>s?)"
    r"(?:[ ]of)?[ ](?=\w)",
    re.IGNORECASE,
)
_IN_PIECES = re.compile(
    r"(?P<count>(?:[0-9]{1,2}(?:[ ]?(?:-|–|to|or)[ ]?[0-9]{1,2})?|an?|one|two|three|four|five"
    r"|six|a[ ]few"
    r"|a[ ]couple(?:[ ]of)?)[ ])(?P<what>(?:(?!of[ ])[^\W\d_]+[- ]){0,2}?"
    r"(?:strip|ribbon|knob|thumb|nub|segment|spear|disc|round|ring|stalk|swath|curl|piece|shard|sliver|length"
    r"|cheek|bulb|clove|pod|head|ear|rib|nest|flake|shaving|nugget|block|lump)e?s?)"
    r"[ ](?:of[ ])?(?=[^\W\d_])",
    re.IGNORECASE,
)
"""*2 wide strips of orange peel*: so many pieces, and what they are like."""
_ONE_PIECE = re.compile(
    r"(?:strip|ribbon|knob|thumb|piece|slice|wedge|wheel|sprig|twist|curl|swath|coin|round|stick)"
    r"[ ]of[ ](?=[^\W\d_])",
    re.IGNORECASE,
)
"""*Strip of lemon peel* is one."""
_BAG_OF = re.compile(
    r"(?:(?:1|one|an?)[ ])?[(]?(?P<size>[0-9]+(?:[./][0-9]+)?[ -]?(?:oz|ounces?|ml|g|grams?|cl|l"
    r"|lb))[.]?[)]?[ -]+"
    r"(?P<pack>bags?|box(?:es)?|cartons?|tubs?|jars?|packets?|packs?|packages?|pouch(?:es)?|tubes?|punnets?"
    r"|sachets?|bricks?)[ ](?:of[ ])?(?=[^\W\d_])",
    re.IGNORECASE,
)
"""*12 oz bag of frozen strawberries*: how much it holds."""
_SOME_OF = re.compile(
    r"(?:(?:and|then|now|so|we['’]ll|i['’]ll|take|add|get|use)[ ,]+)*(?:a[ ]bit|some"
    r"|a[ ]little)[ ]of"
    r"[ ](?:that|this|the|your|our|my|those)[ ](?=\w)",
    re.IGNORECASE,
)
_PURPOSE = re.compile(
    r"for[ ](?:the|our|my|this)[ ](?!garnish)(?:[\w'-]+[ ]){1,3}?(?:i|we|you"
    r"|it)(?:['’](?:ve|ll|s|m|re)|[ ]use"
    r"|[ ]need|[ ]take|[ ]do|[ ]have)(?:[ ](?:got|use|need|want|take|do|have))?[ ,]+",
    re.IGNORECASE,
)

_HINTS = re.compile(
    r"\b(?:ea|dshs?|oj|lrg|lge?|w(?=/)|called|call|whats|whatsit|whatchamacallit|what['’]?s|say|know|see"
    r"|ones?|kind|sort|style|stuff|type|version|variety|not|other|another|similar|anything|something"
    r"|whatever|still|leave|skip|omit|really|honestly|seriously|easy|seven|same|much|equal|some|bit|little|ounce"
    r"|barspoon|teaspoon|tablespoon|cup|drop|dash|splash|stick|perch|hang|pop|inch|in|cm|for"
    r"|chunks?|cubes|out|off|on|removed|intact|attached|blend|shake|stir|mix|muddle|strain)\b"
    r"|\b(?:touch|hint|whisper|kiss|tad|inch(?:es)?|soaked|doused|drenched|moistened|saturated)\b"
    r"|optional|[ ]shakes?[ ]|[¹²³†‡*]|that['’]?s|which[ ]is|it['’]s"
    r"|[ ]or[ ](?:two|three)\b|[ -]to[ -](?:one|two|[12])\b"
    r"|\b(?:lt|dk|garn|gf|med|sml?|frsh|fr|sqzd|swt|verm|choc|mara|pref|xtra|hvy|blk|wht|bbn|teq|lem"
    r"|jce|juc|simp|aro|arom|liqu?|syr|gren|bt?trs|bitt|crm|rasp|cukes?|pom|cran|elderfl|bourb|champ"
    r"|prosec|sqz|sqzed|chld)\b|[ ][x×][ ]?[0-9]"
    r"|only|parts?|which|any[ ]|[ ]or,|[0-9]-[a-z]|[ ]\((?:[0-9]+|one|two|three|four|five|six"
    r"|eight|ten|twelve)\)|[ ]o['’][ ]|fat[ ]"
    r"|[ ]or[ ]so[ ]|(?:white"
    r"|yolk)s?[ ](?:from|of)"
    r"|\b(?:less|more|nothing|better|no|is|are|works|could|e[.]?g|and[ ](?:all|everything))\b"
    r"|[ ]just[ ]|[ ]to[ ]the"
    r"|all[ ]the[ ]way|fill"
    r"|,[ ]+(?:ou|oz|m|c|da|dr|p|b|te|ta|ts|tb)|of,|^[|]|[0-9]cm|\""
    r"|trust|believe|swear|promise|cold|torched|singed|slapped|smacked|spanked|clapped|bruised",
    re.IGNORECASE,
)
"""A line without any of these is put no other way."""


def put_in_writing(said: Traced, units: BarUnits, *, english: bool = True) -> Traced:
    """The line with its shorthand in full, its fillers out and the stops it was spoken with.

    `english` says that it was written so: elsewhere one letter is another spoon or a cup.
    """
    said = as_said(_with_spoken_stops(said))
    said = _with_spoons_in_full(said) if english else said
    said = _as_jotted(_without_what_is_said_again(said), units)
    proof = _PROOF_IN_A_NAME.search(said.text) if "151" in said.text else None
    if proof:
        said = said.said_instead(*proof.span("gap"), ", ")
    if not _HINTS.search(said.text):
        return said
    for way in _WAYS:
        said = way(said, units)
    return said


_TIMES_FIRST = re.compile(
    r"[0-9]{1,2}(?P<times>[ ]?[x×][ ]+)"
    r"(?!(?:oz|ounces?|ml|cl|l|parts?|cups?|ts?p|tbsp|shots?)\b)(?=[^\W\d_]{2})",
    re.IGNORECASE,
)
"""*2x basil leaves*; what is measured may be meant to be doubled."""
_WITH = re.compile(r"(?<=[^\W\d_][ ])w(?=[ ])")
_TOP_UP = re.compile(r"(?<=[^\W\d_])(?P<gap>[ ]+)top[ -](?:up|off)(?=[ .!]*(?:$|[,(]))", re.I)
_BESIDE = re.compile(r"(?<=\w)(?P<gap>[ ]*[|][ ]*)(?P<much>[0-9¼-¾][^|()]*)$")
_BRIX = re.compile(
    r"(?P<gap>[ ]*(?:,[ ]*)?@[ ]*)(?=[0-9]+(?:[.,][0-9]+)?[ ]?(?:°[ ]?)?b(?:ri)?x\b)", re.I
)
_PROOF = re.compile(r"(?P<gap>[ ,]+)(?P<number>[0-9]{2,3})[ ]?p(?:f|r?f)\b\.?", re.IGNORECASE)
_SAID_TWICE = re.compile(r"(?P<much>[^,]{5,30}?)(?P<again>,[ ]+(?P=much))(?=[ ])", re.IGNORECASE)
_FORGOT = re.compile(
    r"(?:(?:oh|and|ah|wait|also|so|sorry|yes|now|damn|almost|oops)[ ,]+)*(?:i|we)[ ]"
    r"(?:almost[ ]|nearly[ ])?forgot[ ](?:about[ ]|to[ ](?:add|say|mention)[ ])?(?:the|my|our)[ ]"
    r"(?P<rest>[^\W\d_].*)",
    re.IGNORECASE,
)
_GARNISH_IS = re.compile(
    r"(?:(?:and|so|then|now|okay|ok|finally)[ ,]+)*(?:for|as)[ ]"
    r"(?:the[ ]|an?[ ]|my[ ]|our[ ])?garnish[ ,]+(?:(?:i|we|you)(?:['’](?:ve|m|re|ll|d))?"
    r"(?:[ ](?:got|have|am|are|will|would|need|want|use|using|like|take"
    r"|do|doing|add|adding|going[ ]with|go[ ]with))+|there['’]?s|it['’]?s|that['’]?s)[ ,]+(?=\S)",
    re.IGNORECASE,
)
_OR_MORE = re.compile(
    r"(?P<one>an?|one|two|three|four|[1-9])(?P<what>[ ](?:[^\W\d_]+)[ ](?:of[ ])?[^,;()]*?)"
    r"(?P<told>[ ,]+or[ ](?P<more>two|three|four|five|six|[2-9])"
    r"(?![\w./]|[ ](?:more[ ])?(?!if|when|for|to)\w).*)",
    re.IGNORECASE,
)
_HOW_MANY: Mapping[str, int] = {
    **{"a": 1, "an": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6},
    **{str(each): each for each in range(1, 10)},
}


def _as_jotted(said: Traced, units: BarUnits) -> Traced:
    """What a line is jotted down with: *2x*, *w ginger ale*, *top up*, *@ 50 brix*, *100pf*."""
    times = _TIMES_FIRST.match(said.text)
    if times:
        said = said.said_instead(*times.span("times"), " ")
    said = _instead(said, _WITH, lambda _: "with") if " w " in said.text else said
    for pattern, marks in ((_TOP_UP, "top"), (_BRIX, "@")):
        found = pattern.search(said.text) if marks in said.text.casefold() else None
        if found and (marks == "@" or amount_at(said.text, units) is None):
            said = said.said_instead(*found.span("gap"), ", " if marks == "@" else ", to ")
    proof = _PROOF.search(said.text) if "p" in said.text else None
    if proof:
        said = said.said_instead(*proof.span(), f", {proof['number']} proof")
    beside = _BESIDE.search(said.text) if "|" in said.text[1:] and said.text[0] != "|" else None
    if beside and _says_the_same(said.text, beside["much"], units):
        much = said.part(*beside.span("much"))
        said = joined((said.part(0, beside.start()), " (", much, ")"))
    return _as_told(said, units)


def _with_what_was_forgotten(said: Traced, units: BarUnits) -> Traced:
    """*I forgot the bitters, two dashes orange* is two dashes of orange bitters."""
    forgot = _FORGOT.fullmatch(said.text)
    begins = forgot.start("rest") if forgot else 0
    amount = next(amounts_in(said.text[begins:], units), None) if forgot else None
    if amount is None or amount.start == 0:
        return said
    what = said.part(begins, begins + amount.start).stripped()
    if not what.text.strip(" ,:-").replace(" ", "").isalpha():
        return said
    what = said.part(begins, begins + len(what.text.rstrip(" ,:-")))
    return joined((said.part(begins + amount.start).stripped(), " ", what))


def _says_the_same(text: str, much: str, units: BarUnits) -> bool:
    """*1 oz ruby port | 30 ml*: whether what stands beside is the line's own amount again."""
    first, again = amount_at(text, units), amount_at(f"{much} ", units)
    if first is None or again is None or not _is_an_amount(much, units):
        return False
    return is_the_same(again, Amount(first.value, first.high, first.unit or "each"), units)


def _as_told(said: Traced, units: BarUnits) -> Traced:
    """*One ounce, one ounce of*; *I forgot the bitters, two dashes orange*; *or two if …*."""
    again = _SAID_TWICE.match(said.text) if "," in said.text else None
    if again and _is_an_amount(again["much"].removesuffix(" of"), units):
        said = said.said_instead(*again.span("again"), "")
    garnish = _GARNISH_IS.match(said.text) if "garnish" in said.text.casefold() else None
    if garnish:
        return said.said_instead(0, garnish.end(), "garnish: ")
    if " forgot " in said.text.casefold():
        return _with_what_was_forgotten(said, units)
    more = _OR_MORE.fullmatch(said.text) if " or " in said.text else None
    if more and _HOW_MANY[folded(more["more"])] > _HOW_MANY[folded(more["one"])]:
        first = amount_at(said.text, units)
        if first and first.unit not in (None, "each") and first.high is None:
            least, most = (_HOW_MANY[folded(more[each])] for each in ("one", "more"))
            why = more["told"].strip(" ,.")
            only = why.casefold() == f"or {more['more']}".casefold()
            said = said.part(0, more.start("told")) if only else said
            return said.said_instead(*more.span("one"), f"{least} or {most}")
    return said


_PROOF_IN_A_NAME = re.compile(
    r"(?<=[^\W\d_][ ])151(?P<gap>[ ]+)(?=[¼½¾⅓⅔⅛⅜⅝⅞]|[0-9]{1,2}[ ]?[/⁄][ ]?[0-9])"
)
"""*Demerara 151 ¾ oz*: the proof that a rum is called by is no part of its amount."""

_SPOKEN_STOPS = re.compile(
    r"(?P<comma>[ ]comma(?=[ ]))|(?P<colon>[ ]semi-?[ ]?colon(?=[ ]))"
    r"|(?P<end>[ ](?:period|full[ ]stop|exclamation[ ](?:mark|point))[ .]*$)"
    r"|(?P<open>(?<=[ ])open(?:ing)?[ ](?:bracket|paren(?:thesis|s)?)[ ])"
    r"|(?P<close>[ ]clos(?:e|ed|ing)[ ](?:bracket|paren(?:thesis|s)?)(?![\w]))"
    r"|(?<!\w)(?P<over>one|two|three|[1-9])[ ]slash[ ](?P<under>two|three|four|eight|[2-8])(?!\w)",
    re.IGNORECASE,
)
"""Marks that were said aloud: *lemon juice comma strained period*, *one slash two ounce*."""
_SAID_AS = {"comma": ",", "colon": ";", "open": "(", "close": ")"}
_FIGURES = {"one": "1", "two": "2", "three": "3", "four": "4", "eight": "8"}


def _with_spoken_stops(said: Traced) -> Traced:
    """The marks that were said aloud as marks."""
    for found in reversed(list(_SPOKEN_STOPS.finditer(said.text))):
        if found["end"]:
            said = said.part(0, found.start())
            continue
        mark = next((_SAID_AS[each] for each in _SAID_AS if found[each]), "")
        if not mark:
            over, under = (folded(found[each]) for each in ("over", "under"))
            mark = f"{_FIGURES.get(over, over)}/{_FIGURES.get(under, under)}"
        said = said.said_instead(*found.span(), mark)
    return said


_SPOON = re.compile(r"(?<=[0-9¼-¾])[ ]?(?P<word>T|Tb|Tbs|Tbl|t|c|C)\.?[ ](?=[^\W\d_])")
_SPOONS = {"T": " tbsp ", "t": " tsp ", "c": " cup ", "C": " cup "}
"""A tablespoon is written with a large T and a teaspoon with a small one (*common practice*)."""


def _with_spoons_in_full(said: Traced) -> Traced:
    """*1 T sugar*, where not all of the line is written large."""
    if said.text.upper() == said.text:
        return said
    return _instead(said, _SPOON, lambda found: _SPOONS[found["word"][0]])


_SAID_AGAIN = re.compile(
    r"(?<!\w)(?P<number>[\w¼-¾]+)[ ](?P<unit>[^\W\d_]+)(?P<again>[ ,]+(?:yes|yeah|yep"
    r"|right|that's[ ]right"
    r"|you[ ]heard(?:[ ]me)?|i[ ]said)[ ,]+(?P=number)(?:[ ](?P=unit))?[ ,]*)(?=of[ ])",
    re.IGNORECASE,
)


def _without_what_is_said_again(said: Traced) -> Traced:
    """*Eight dashes, yes, eight of bitters*: the same number once more, so as to be heard."""
    found = _SAID_AGAIN.search(said.text)
    if found is None or not is_a_number(found["number"]):
        return said
    return said.said_instead(*found.span("again"), " ")


def _in_full(said: Traced, _units: BarUnits) -> Traced:
    return _instead(said, _SHORT, lambda found: f"{_SHORTHAND[_short(found)]} ".replace("  ", " "))


def _short(found: re.Match[str]) -> str:
    return found.group().casefold().strip(" .:")


def _without_fillers(said: Traced, _units: BarUnits) -> Traced:
    said = _instead(said, _FILLER, lambda _: " ")
    said = _instead(said, _OF_AND_STOP, lambda _: " ")
    return _instead(said, _NUMBER_AND_STOP, lambda found: " " if _is_behind_a_number(found) else "")


def _is_behind_a_number(stop: re.Match[str]) -> bool:
    before = stop.string[: stop.start()].split()
    return bool(before) and is_a_number(before[-1].strip(",."))


def _with_stops(said: Traced, _units: BarUnits) -> Traced:
    for gap in reversed(list(_asides(said.text))):
        said = said.said_instead(*gap, ", ")
    return said


def _asides(text: str) -> Iterator[tuple[int, int]]:
    """The gaps of a text at which something is told by the way."""
    for found in _ASIDE.finditer(text):
        before = found["before"].casefold()
        counts = found["fine"] and (is_a_number(before) or unit_named(before) is not None)
        if before not in _NEEDS_WHAT_FOLLOWS and not counts:
            yield found.span("gap")


def _with_the_amount_again(said: Traced, units: BarUnits) -> Traced:
    """*An ounce of lime and the same of syrup*."""
    of_each = _SAME_OF_EACH.match(said.text)
    if of_each and _EACH_ENDS.search(said.text):
        return _without_so(said.part(of_each.end()))
    same = _SAME.search(said.text)
    before = list(amounts_in(said.text[: same.start()], units)) if same else []
    if same is None or not before or before[-1].amount.unit is None:
        return said
    amount = said.text[before[-1].start : before[-1].end]
    return said.said_instead(same.start(), same.end(), f"{amount} ")


def _without_so(said: Traced) -> Traced:
    return _instead(said, re.compile(r",[ ]*so[ ]"), lambda _: ", ")


_OR_BY_THE_WAY = re.compile(
    r"(?P<gap>[ ,]+)or,[ ](?P<aside>[^,()0-9]{2,30}),[ ](?:de[ ](?:la[ ])?"
    r"|d['’])?(?P<what>[^,;()]+)$",
    re.IGNORECASE,
)


def _with_its_other_behind(said: Traced, _units: BarUnits) -> Traced:
    """*Raspberry syrup or, failing that, grenadine*: the aside stands behind both."""
    found = _OR_BY_THE_WAY.search(said.text)
    if found is None:
        return said
    what, aside = (said.part(*found.span(each)) for each in ("what", "aside"))
    return joined((said.part(0, found.start()), ", or ", what, ", ", aside))


def _with_an_article(said: Traced, _units: BarUnits) -> Traced:
    """*A Speyside ounce and a half*: the ounce is one, where no number stands before it."""
    if _SHARE_OF_ONE.match(said.text):
        return said.said_instead(0, 0, "an ")
    found = _AND_A_SHARE.search(said.text)
    before = folded(said.text[: found.start()]).split()[-1:] if found else []
    if found is None or not before:
        return said
    counted = is_a_number(before[0]) or before[0] in ("a", "an", "the", "of", "another")
    return said if counted else said.said_instead(found.start(), found.start(), "an ")


def _without_verb(said: Traced, _units: BarUnits) -> Traced:
    """*Drop a cherry in*: a word that elsewhere is a unit, and here is what is done."""
    verb = _VERB.match(said.text)
    return said.part(verb.end()) if verb else said


def _with_its_length_behind(said: Traced, units: BarUnits) -> Traced:
    """*1-inch piece ginger* is a piece of ginger, and how long it is stands behind."""
    long = _LONG_PIECE.match(said.text)
    if long is None:
        return said
    unit = long["what"] if amount_at(f"1 {long['what']} ", units) else "piece"
    count = long["count"] or "one"
    size = long["size"].replace(" ", "-")
    what = "" if unit in ("piece", long["what"]) and long["what"] == "piece" else f" {long['what']}"
    return joined((f"{count} piece ", said.part(long.end()), f", {size}{what}"))


def _in_pieces(said: Traced, units: BarUnits) -> Traced:
    """*Two wide strips of orange peel* are two pieces of it, wide strips."""
    if _ONE_PIECE.match(said.text):
        said = said.said_instead(0, 0, "a ")
    found = _IN_PIECES.match(said.text)
    if found is None or _is_a_unit(found["what"], units):
        return said
    count, what = (said.part(*found.span(each)) for each in ("count", "what"))
    return joined((count.stripped(), " piece ", said.part(found.end()), ", ", what))


def in_pieces(said: Traced, units: BarUnits) -> Traced:
    """The line with what a piece or a packet of it is like behind, where it begins with that."""
    return _without_its_bag(_in_pieces(said, units), units)


def _is_a_unit(word: str, units: BarUnits) -> bool:
    found = amount_at(f"1 {word} ", units)
    return found is not None and found.unit not in (None, "each")


def _without_its_bag(said: Traced, _units: BarUnits) -> Traced:
    """*12 oz bag of strawberries* is 12 oz of them, from a bag."""
    found = _BAG_OF.match(said.text)
    if found is None:
        return said
    size, pack = (said.part(*found.span(each)) for each in ("size", "pack"))
    return joined((size, " ", said.part(found.end()), ", ", pack))


_INCHES = re.compile(
    r"(?P<size>(?:[0-9]+(?:[./][0-9]+)?|[¼½¾]|an?|one|two|three|half[ ]an?)[ ]?(?:inch(?:es)?|cm))"
    r"[ ]of[ ](?=[^\W\d_])",
    re.IGNORECASE,
)


def _with_its_inches_behind(said: Traced, _units: BarUnits) -> Traced:
    """*An inch of ginger* is one piece of it, so long."""
    long = _INCHES.match(said.text)
    if long is None:
        return said
    return joined(("one piece ", said.part(long.end()), ", ", said.part(*long.span("size"))))


def _from_cells(said: Traced, units: BarUnits) -> Traced:
    """The cells of a row of a table: the amount first, then the name, the rest behind."""
    if not said.text.startswith("|"):
        return said
    spans = [found.span() for found in re.finditer(r"[^|]*[^| ][^|]*", said.text)]
    cells = [said.part(*span).stripped() for span in spans]
    measured = [each for each in cells if _is_an_amount(each.text, units)]
    others = [each for each in cells if each not in measured]
    unit = next((each for each in others if _is_a_unit(each.text, units)), None)
    if unit and len(measured) == 1 and amount_at(f"{measured[0].text} ", units).unit is None:  # type: ignore[union-attr]
        measured, others = [joined((measured[0], " ", unit))], [x for x in others if x is not unit]
    if len(measured) != 1 or not others:
        return said
    parts: list[Traced | str] = [measured[0], " ", others[0]]
    for each in others[1:]:
        parts += [", ", each]
    return joined(parts)


def _is_an_amount(text: str, units: BarUnits) -> bool:
    found = amount_at(f"{text} ", units)
    return found is not None and found.end >= len(text)


def _without_purpose(said: Traced, units: BarUnits) -> Traced:
    """*For the sour mix I've got …*: what it is for is no ingredient of it."""
    purpose = _PURPOSE.match(said.text)
    if purpose is None and next(amounts_in(said.text, units), None) is not None:
        purpose = _SOME_OF.match(said.text)  # some of that rum, an ounce and a half
        if purpose and amount_at(said.text[purpose.end() :], units) is not None:
            purpose = None  # some of the 2 oz
    return said.part(purpose.end()) if purpose else said


def _instead(
    said: Traced, pattern: re.Pattern[str], words: Callable[[re.Match[str]], str]
) -> Traced:
    """With other words wherever a pattern is found; empty words leave what is there."""
    for found in reversed(list(pattern.finditer(said.text))):
        new = words(found)
        said = said.said_instead(found.start(), found.end(), new) if new else said
    return said


def _with_its_ratio(said: Traced, _units: BarUnits) -> Traced:
    """*Two to one simple* is *2:1 simple*."""
    for ratio in reversed(list(_RATIO.finditer(said.text))):
        if ratio["before"] is None and ratio["behind"] is None:
            continue
        sugar, water = (_IN_FIGURES[folded(ratio[each])] for each in ("sugar", "water"))
        begins = ratio.start("sugar")
        if ratio["gap"] and ratio["gap"].strip(" ,("):
            begins, sugar = ratio.start("gap"), f", {sugar}"
        said = said.said_instead(begins, ratio.end(), f"{sugar}:{water}")
    return said


def _with_its_ratio_of_parts(said: Traced, _units: BarUnits) -> Traced:
    """*Honey syrup, three parts honey to one part water* is *honey syrup, 3:1*."""
    found = _RATIO_IN_PARTS.search(said.text)
    elsewhere = f"{said.text[: found.start()]} {said.text[found.end() :]}" if found else ""
    if found is None or not re.search(_SYRUP, elsewhere, re.IGNORECASE):
        return said
    begins = found.start()
    lead = re.search(r"[ ,(]*(?:that['’]?s|which[ ]is|it['’]?s|so)[ ]+$", said.text[:begins], re.I)
    sugar, water = (_IN_FIGURES[folded(found[each])] for each in ("sugar", "water"))
    said = said.said_instead(begins, found.end(), f"{sugar}:{water}")
    return said.said_instead(lead.start(), begins, ", ") if lead else said


def _with_its_count_first(said: Traced, units: BarUnits) -> Traced:
    """*Egg white, just the one* is one egg white."""
    found = _JUST_THE_ONE.fullmatch(said.text)
    if found is None or next(amounts_in(found["what"], units), None) is not None:
        return said
    count = said.part(*found.span("count"))
    return joined((count, " ", said.part(*found.span("what"))))


_FIGURES_OF: Mapping[str, str] = {
    **{"one": "1", "two": "2", "three": "3", "four": "4", "five": "5", "six": "6", "seven": "7"},
    **{"eight": "8", "nine": "9", "ten": "10", "twelve": "12"},
}
_HYPHENED = re.compile(
    r"[0-9][0-9 ]*/[0-9](?P<hyphen>-)(?:oz|ounces?|ml|cl|tsp|tbsp|cups?)\b\.?[ ]"
    r"(?!(?:cans?|bottles?|tins?|bags?|box(?:es)?|cartons?|jars?)\b)",
    re.IGNORECASE,
)
_COUNT_TWICE = re.compile(
    r"(?<!\w)(?P<word>one|two|three|four|five|six|seven|eight|nine|ten"
    r"|twelve)[ ]\((?P<count>[0-9]+)\)(?=[ ])"
    r"|(?<!\w)(?P<figure>[0-9]+)[ ]\((?P<again>[^\W\d_]+)\)(?=[ ])",
    re.IGNORECASE,
)
_OF = re.compile(r"(?<=\w[ ])o['’](?=[ ])", re.IGNORECASE)
_FULL_FAT = re.compile(
    r"(?P<fat>(?:full|whole)[- ]fat)[ ](?=(?:coconut|oat|soya?|yog|cream))", re.IGNORECASE
)
_OR_SO = re.compile(r"(?<=\w)(?P<gap>[ ]or[ ]so)(?=[ ]" + _MEASURE + ")", re.IGNORECASE)
_EGGS_FROM = re.compile(
    r"(?:(?:egg|the)[ ])*(?P<part>white|yolk)s?[ ](?:from|of)[ ](?P<count>[0-9]|two|three|four"
    r"|five|six)"
    r"[ ](?P<how>(?:[\w-]+[ ]){0,2})eggs?\b",
    re.IGNORECASE,
)


def _with_small_words_in_full(said: Traced, _units: BarUnits) -> Traced:
    """*Two (2) oz*, *a splash o' soda*, *two or so dashes*, *whites from two eggs*."""
    hyphen = _HYPHENED.match(said.text)
    if hyphen:
        said = said.said_instead(*hyphen.span("hyphen"), " ")
    twice = _COUNT_TWICE.search(said.text)
    number = str(twice["count"] or twice["figure"]) if twice else ""
    if twice and number == _FIGURES_OF.get(folded(twice["word"] or twice["again"])):
        said = said.said_instead(*twice.span(), number)
    said = _instead(said, _OF, lambda _: "of")
    so = _OR_SO.search(said.text)
    if so:
        begins, ends = so.span("gap")
        said = joined((said.part(0, begins), said.part(ends), ", or so"))
    fat = _FULL_FAT.search(said.text)
    if fat:
        begins, ends = fat.span()
        said = joined((said.part(0, begins), said.part(ends), ", ", said.part(*fat.span("fat"))))
    eggs = _EGGS_FROM.match(said.text)
    if eggs:
        how = f", {eggs['how'].strip()}" if eggs["how"].strip() else ""
        said = said.said_instead(*eggs.span(), f"{eggs['count']} egg {folded(eggs['part'])}s{how}")
    return said


_TIMES_BEHIND = re.compile(
    r"(?:^"
    r"|(?<=:[ ]))(?P<what>[^\W\d_][^:,;()0-9]*?)(?P<times>[ ]+[x×]"
    r"[ ]?(?P<count>[0-9]{1,2}))(?=[ .]*(?:$|[,;(]|[-–—][ ]))",
    re.IGNORECASE,
)


def _with_its_times_first(said: Traced, _units: BarUnits) -> Traced:
    """*Chilli slice x2 (seeds out)* is 2 chilli slices."""
    found = _TIMES_BEHIND.search(said.text)
    if found is None:
        return said
    parts = [said.part(*found.span(each)) for each in ("count", "what")]
    lead = said.part(0, found.start())
    return joined((lead, parts[0], " ", parts[1], said.part(found.end())))


_CUT_SMALL = re.compile(
    r"(?P<what>[^\W\d_][\w' -]*?)[ ](?P<chunks>chunks?|cubes)(?=[ .]*(?:$|[,;(]))", re.IGNORECASE
)
_NO_CHUNKS = re.compile(r"\b(?:ice|sugar)$", re.IGNORECASE)


def _with_its_chunks_first(said: Traced, units: BarUnits) -> Traced:
    """*6 pineapple chunks* are 6 chunks of pineapple; of 2 cups of them it is a note."""
    amount = next(amounts_in(said.text, units), None) if "c" in said.text else None
    found = _CUT_SMALL.match(said.text, amount.end + 1) if amount and amount.start == 0 else None
    if amount is None or found is None or _NO_CHUNKS.search(found["what"]):
        return said
    what, chunks = (said.part(*found.span(each)) for each in ("what", "chunks"))
    rest, count = said.part(found.end()), said.part(0, amount.end)
    if amount.amount.unit is not None:
        return joined((count, " ", what, ", ", chunks, rest))
    if chunks.text.casefold() == "cubes":
        return said
    return joined((count, " ", chunks, " ", what, rest))


_PART_OUT = re.compile(
    r"(?<=[\w)])(?P<gap>[ ]+)(?:seeds?|skin|peel|pith|stems?|rind|core|pips|stones?|ribs?|husk)[ ]"
    r"(?:out|off|on|in|removed|intact|attached)[ .!]*$"
    r"|(?<=[\w)])(?P<then>[ ]+)(?:and|then)[ ](?:blend|shake|stir|mix|muddle|strain)"
    r"(?:[ ](?:it|well|hard|everything|again|gently|briefly|them|until|smooth))*[ .!]*$",
    re.IGNORECASE,
)


def _with_its_parts_behind(said: Traced, _units: BarUnits) -> Traced:
    """*Jalapeño seeds out* is jalapeño, seeds out."""
    found = _PART_OUT.search(said.text)
    if found is None or not said.text[: found.start()].strip():
        return said
    return said.said_instead(*found.span("gap" if found["gap"] else "then"), ", ")


def _with_its_size_in_figures(said: Traced, _units: BarUnits) -> Traced:
    """*A six ounce can* is a 6 oz can."""
    return _instead(
        said,
        _CAN_HOLDS,
        lambda found: (
            f"{_SIZES[folded(found['size'])]} {'oz' if found['unit'][0] in 'oO' else 'ml'}"
        ),
    )


_WANTS_THE_PART = re.compile(
    r"\beggs?(?![ ](?:white|yolk))(?P<gap>[ ,]+)(?:[\w'’]+[ ,]+){0,7}?(?:only|just)[ ](?:want"
    r"|need|using|use|after|keep)[ ]"
    r"(?:the[ ])?(?P<part>white|yolk)s?\b",
    re.IGNORECASE,
)
"""*One egg, separate it, we only want the white*."""


def _with_the_part_of_an_egg(said: Traced, _units: BarUnits) -> Traced:
    """*1 egg (white only)* is 1 egg white."""
    wanted = _WANTS_THE_PART.search(said.text)
    if wanted:
        return said.said_instead(*wanted.span("gap"), f" {folded(wanted['part'])}, ")
    found = _PART_ONLY.search(said.text)
    if found is None:
        return said
    part = folded(found["first"] or found["last"])
    return said.said_instead(found.end("many"), found.end(), f" {part}")


def _with_its_choice_behind(said: Traced, _units: BarUnits) -> Traced:
    """*Whatever ginger beer you like* is ginger beer, whatever you like."""
    found = _WHATEVER.search(said.text)
    if found is None:
        return said
    parts = [said.part(*found.span(each)) for each in ("what", "which", "tail")]
    return joined((said.part(0, found.start()), parts[0], ", ", parts[1], " ", parts[2]))


def _with_its_top_behind(said: Traced, _units: BarUnits) -> Traced:
    """*Ginger ale fill it to the top* is ginger ale, to fill."""
    found = _TO_THE_TOP.search(said.text)
    if found is None or not said.text[: found.start()].strip():
        return said
    return said.said_instead(*found.span(), ", to fill" + _kept(found.group()))


def _kept(words: str) -> str:
    """What is said of how full, in brackets, where it is more than *to the top*."""
    less = re.search(r"within.*|about.*", words, re.IGNORECASE)
    return f", {less.group().strip(' .!')}" if less else ""


def _without_footnotes(said: Traced, _units: BarUnits) -> Traced:
    """*Irish whiskey¹*: a mark that points below is no part of the name."""
    for mark in reversed(list(_FOOTNOTE.finditer(said.text))):
        said = joined((said.part(0, mark.start()), said.part(mark.end())))
    return said


def _with_optional_behind(said: Traced, _units: BarUnits) -> Traced:
    """*Cinnamon stick optional* is a cinnamon stick, optional."""
    return _instead(said, _OPTIONAL_AT_THE_END, lambda _: ", ")


def _with_dashes(said: Traced, _units: BarUnits) -> Traced:
    """*Two shakes of hot sauce*, as it comes out of the bottle, are dashes."""
    shakes = _SHAKES.search(said.text)
    if shakes is None or shakes["what"] is None:
        return said
    return joined((said.said_instead(*shakes.span("what"), "dashes"), ", shakes"))


def with_its_kind(said: Traced, units: BarUnits) -> Traced:
    """*An ounce of hollow lamp, that's the amaro* is an ounce of amaro, hollow lamp."""
    amount = next(amounts_in(said.text, units), None)
    of = re.compile(r"[ ]*(?:of[ ])?").match(said.text, amount.end if amount else 0)
    begins = of.end() if amount and amount.start == 0 and of else 0
    found = _ITS_KIND.fullmatch(said.text, begins)
    if found is None:
        return said
    kind, name = (said.part(*found.span(each)) for each in ("kind", "name"))
    return joined((said.part(0, begins), kind, ", ", name))


def with_its_maker_behind(said: Traced, _units: BarUnits) -> Traced:
    """*Coffee liqueur from hollow lamp* is coffee liqueur, from hollow lamp."""
    found = _ITS_MAKER.fullmatch(said.text)
    return said.said_instead(*found.span("gap"), ", ") if found else said


def _with_or_two(said: Traced, _units: BarUnits) -> Traced:
    """*A cherry or two* is one or two cherries."""
    found = _OR_TWO.search(said.text)
    if found is None:
        return said
    said = (
        said.part(0, found.start("more"))
        if not said.text[found.end() :]
        else said.said_instead(found.start("more"), found.end("more"), " ")
    )
    return said.said_instead(*found.span("one"), f"one{found['more']}")


def _with_what_it_takes_up(said: Traced, _units: BarUnits) -> Traced:
    """*A sugar cube soaked with 3 dashes of bitters* is a cube, soaked, and the dashes."""
    found = _SOAKED.search(said.text)
    return said.said_instead(*found.span("gap"), ", ") if found else said


def _with_how_much_first(said: Traced, units: BarUnits) -> Traced:
    """*A touch of saline, like three drops*: what is said last is how much."""
    found = _TOUCH.fullmatch(said.text)
    if found is None or not _is_an_amount(found["much"].strip(" ."), units):
        return said
    much, what, some = (said.part(*found.span(each)) for each in ("much", "what", "some"))
    return joined((much.stripped(), " ", what, ", ", some))


_WAYS: tuple[Callable[[Traced, BarUnits], Traced], ...] = (
    *(
        _from_cells,
        _in_full,
        _with_small_words_in_full,
        _with_the_part_of_an_egg,
        _with_its_size_in_figures,
        _with_its_choice_behind,
        _with_its_count_first,
        _with_its_times_first,
        _with_its_chunks_first,
        _with_its_parts_behind,
        _with_its_ratio_of_parts,
        _with_its_ratio,
        _with_its_top_behind,
        _without_fillers,
        _without_purpose,
        _without_verb,
    ),
    *(
        _with_the_amount_again,
        _with_its_other_behind,
        _with_stops,
        _with_an_article,
        _with_its_length_behind,
    ),
    *(_without_footnotes, _with_optional_behind, _with_dashes),
    *(_with_or_two, _with_what_it_takes_up, _with_how_much_first, _with_its_inches_behind),
)
