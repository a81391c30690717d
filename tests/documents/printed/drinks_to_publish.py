"""Drinks with everything that a page can trip over, and what is said of them."""

from __future__ import annotations

from barkeep.documents.printed.cards import CardContent, DrinkFacts, card_content
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.text import read_specs
from barkeep.domain.specs.spec import Spec

LONG_NAME = "The Extraordinarily Long Name of a Drink That Hardly Fits In"
HEBREW, ARABIC = "ערב על הרציף", "قطار الليل"
ACCENTED = "Crème Brûlée à l’Été – Žluťoučký Kůň"
UNBROKEN = "Donauüberquerungsdampfschifffahrtsgesellschaftskapitänskajüte"
MARKED_UP = "A <b>Bold</b> & *Starred* [Name]"


TEXTS = (
    f"""{LONG_NAME}
1 1/2 oz London dry gin
3/4 oz sweet vermouth
1/2 oz red bitter aperitivo
1/4 oz maraschino liqueur
1/2 oz lemon juice
1/2 oz lime juice
1/4 oz grenadine
1 barspoon absinthe
2-3 dashes aromatic bitters
1 dash orange bitters
1 egg white
3/4 oz double cream
8 mint leaves
soda water to top
Garnish: lemon peel
Glass: tall highball
Ice: cubes
Serves: 2
Tags: long, creamy
Credit: A guest, by the lamp
Notes: Sets in a minute.
Notes: Taste the lime first.
Riff of: Buffer Stop

Dry shake everything but the soda, then shake hard with ice until the tin hurts to hold.

Strain over fresh cubes, lift with the soda and lay the peel on the foam.
""",
    f"{HEBREW}\n2 oz London dry gin\n3/4 oz lime juice\n\nלנער עם קרח ולסנן לכוס מקוררת.\n",
    f"{ARABIC}\n60 ml Cognac\n20 ml white crème de cacao\n\nيرج مع الثلج ويصفى.\n",
    f"{ACCENTED}\n1 1/2-2 oz Calvados\n15 ml crème de cassis (optional)\n\nRemuer, passer.\n",
    f"{UNBROKEN}\n60 ml Cognac\n\nStir.\n",
    f"{MARKED_UP}\n2 oz white rum\n1 oz lime juice\n\nShake < 10 s & strain.\n",
)
FACTS = DrinkFacts(
    17.3,
    1.52,
    "United States",
    ("egg", "milk"),
    ("Raw egg: follow your local food rules.", "Do not drive after drinking."),
)


def specs(tree: FamilyTree) -> tuple[Spec, ...]:
    """The drinks as specs; the first with a credit, a parent, tags and two serves."""
    read = [each for text in TEXTS for each in read_specs(text, tree)]
    assert [each.problems for each in read] == [()] * len(TEXTS)
    return tuple(each.spec for each in read if each.spec is not None)


def cards(tree: FamilyTree, settings: Settings | None = None) -> tuple[CardContent, ...]:
    """The drinks as they are printed."""
    return tuple(card_content(spec, tree, settings or Settings(), FACTS) for spec in specs(tree))
