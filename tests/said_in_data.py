"""The words of shipped data that a person reads: they are translated where they are shown.

Names of ingredients and the book's own drinks are no such words.
"""

from __future__ import annotations

from collections.abc import Iterator

from barkeep.application.knowledge import shipped
from barkeep.domain.cautions.allergens import shipped_allergens
from barkeep.domain.cautions.cautions import Caution, of_allergens, shipped_cautions
from barkeep.domain.drink.balance import styles
from barkeep.domain.drink.looks import shipped_looks
from barkeep.domain.liquids.constants import constants
from barkeep.domain.liquids.content import countries, standard_drink
from barkeep.domain.making.portions import shipped_vessel_kinds
from barkeep.domain.specs.glasses import shipped_glassware
from barkeep.domain.specs.telling_garnishes import shipped_telling_garnishes


def said_in_data() -> Iterator[str]:
    """Each of them in English, as its file has it; some more than once."""
    yield from _to_be_minded()
    yield from _reasons()
    yield from (each.how for each in shipped().made_from if each.how)
    for vessel in shipped_vessel_kinds().values():
        yield from (vessel.name, vessel.why)
    looks, glassware = shipped_looks(), shipped_glassware()
    yield from (each.name for each in styles().values())
    yield from (*looks.named_clear, *looks.named_cloudy)
    yield from (each.name for each in glassware.glasses.values())
    yield from (each.why for each in shipped_telling_garnishes().values())
    yield from (each["basis"] for each in constants("dilution").values())
    for country in countries():
        yield from (country, f"{standard_drink(country).called}s")


def _to_be_minded() -> Iterator[str]:
    allergens = shipped_allergens()
    cautions = (rule.caution for rule in shipped_cautions())
    for each in (*cautions, *of_allergens(allergens.all)):
        yield from _of_caution(each)
    yield from (each.word for each in allergens.all)
    yield from (allergens.sentences.contains, allergens.sentences.brought_in)


def _reasons() -> Iterator[str]:
    """Why something stands in, why nothing does, and why two things are not the same."""
    knowledge = shipped()
    for each in (*knowledge.stand_ins, *knowledge.none, *knowledge.tree.confusables):
        yield each.why


def _of_caution(caution: Caution) -> Iterator[str]:
    yield from (caution.written, caution.in_brief, *caution.authorities)
