"""What a card or a description says of one drink, whatever it looks like."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.documents.printed_lines import PrintedLine, printed_lines
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.snapshot import Settings
from barkeep.domain.specs import Spec
from barkeep.errors import spoken_list

FIRST_OF_ALL = (
    "These are the usual cautions. Local rules come first, "
    "and so does whoever is qualified to advise you."
)
"""What stands before the cautions wherever they are printed."""


@dataclass(frozen=True, slots=True)
class DrinkFacts:
    """What was worked out of a drink. Strength in % vol as served, None where it is not known.

    `standard_drinks` are those of `country`; `allergens` words, `cautions` sentences.
    """

    abv_percent: float | None = None
    standard_drinks: float | None = None
    country: str = ""
    allergens: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class CardContent:
    """One drink in texts. `method` is its paragraphs; what there is nothing of is empty."""

    name: str
    lines: tuple[PrintedLine, ...]
    garnish: str = ""
    method: tuple[str, ...] = ()
    glass: str = ""
    ice: str = ""
    serves: str = ""
    riff: str = ""
    credit: str = ""
    strength: str = ""
    standard_drinks: str = ""
    allergens: str = ""
    cautions: tuple[str, ...] = ()

    @property
    def service(self) -> tuple[tuple[str, str], ...]:
        """Glass, ice and garnish, each with its word."""
        named = (("Glass", self.glass), ("Ice", self.ice), ("Garnish", self.garnish))
        return tuple((word, text) for word, text in named if text)


def card_content(
    spec: Spec, tree: FamilyTree, settings: Settings, facts: DrinkFacts | None = None
) -> CardContent:
    """What is printed of a spec; without `facts` nothing is said of strength and safety."""
    known = facts or DrinkFacts()
    garnishes = printed_lines([line for line in spec.lines if line.garnish], tree, settings)
    return CardContent(
        name=spec.name,
        lines=printed_lines([line for line in spec.lines if not line.garnish], tree, settings),
        garnish=", ".join(f"{each.amount} {each.name}".strip() for each in garnishes),
        method=_paragraphs(spec.method),
        glass=spec.glass,
        ice=spec.ice,
        serves="" if spec.serves == 1.0 else f"Makes {spec.serves:g}",
        riff=f"After {spec.riff_of}" if spec.riff_of else "",
        credit=", ".join(each for each in (spec.credit, spec.source) if each),
        strength=_strength(known),
        standard_drinks=_standard_drinks(known, each=spec.serves != 1.0),
        allergens=f"Contains {spoken_list(known.allergens, 'and')}" if known.allergens else "",
        cautions=(FIRST_OF_ALL, *known.cautions) if known.cautions else (),
    )


def _paragraphs(method: str) -> tuple[str, ...]:
    """The paragraphs of a method; each of its lines is one."""
    rows = (" ".join(row.split()) for row in method.splitlines())
    return tuple(row for row in rows if row)


def _strength(facts: DrinkFacts) -> str:
    if facts.abv_percent is None:
        return ""
    return f"about {facts.abv_percent:.0f} % vol" if facts.abv_percent >= 0.5 else "no alcohol"


def _standard_drinks(facts: DrinkFacts, *, each: bool) -> str:
    if facts.standard_drinks is None or facts.standard_drinks < 0.05:
        return ""
    many = "drink" if f"{facts.standard_drinks:.1f}" == "1.0" else "drinks"
    where = f" ({facts.country})" if facts.country else ""
    return f"about {facts.standard_drinks:.1f} standard {many}{' each' * each}{where}"
