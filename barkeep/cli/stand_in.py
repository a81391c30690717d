"""`barkeep stand-in`: what may replace an ingredient, how close it is and why."""

from __future__ import annotations

from collections.abc import Iterator

from barkeep.application.finding import find_ingredient, find_spec
from barkeep.cli.arguments import Arguments, argument, command
from barkeep.cli.on_paper import ON_PAPER, of_snapshot
from barkeep.cli.output import Answer, rounded, title_of
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.names import match_ingredient
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.specs.spec import Spec
from barkeep.domain.stand_ins.offers import Offer, StandIns, or_buy_in_words, stand_in
from barkeep.errors import InvalidField, spoken_list


@command(
    argument("name", metavar="NAME", help="the ingredient to replace"),
    argument(
        "--for", dest="spec", metavar="SPEC", help="within this drink, its method and its roles"
    ),
    *ON_PAPER,
)
@of_snapshot
def run(arguments: Arguments, snapshot: Snapshot) -> Answer:
    """What may stand in, owned first, then closest."""
    tree = snapshot.knowledge.tree
    key = _ingredient(arguments.name, snapshot)
    spec = None if arguments.spec is None else _spec_with(arguments.spec, key, snapshot)
    answer = stand_in(snapshot, key, spec)
    return Answer(lambda: _answer_json(answer, tree), _shown(answer, tree))


def _ingredient(name: str, snapshot: Snapshot) -> str:
    """What is named, as on a line of a spec too: *fresh lime juice*."""
    tree = snapshot.knowledge.tree
    if name in tree:
        return name
    match = match_ingredient(name, tree)
    return match.key or find_ingredient(tree, name, owned=snapshot.owned)


def _spec_with(name: str, key: str, snapshot: Snapshot) -> Spec:
    spec = find_spec(snapshot, name)
    if all(key not in line.wanted for line in spec.lines):
        wanted = snapshot.knowledge.tree.in_sentence(key)
        raise InvalidField("--for", spec.name, f"it has no line of {wanted}")
    return spec


def _answer_json(answer: StandIns, tree: FamilyTree) -> dict[str, object]:
    return {
        "wanted": tree.name(answer.wanted),
        "none_because": answer.none_because,
        "stand_ins": [_offer_json(offer, tree) for offer in answer.stand_ins],
    }


def _offer_json(offer: Offer, tree: FamilyTree) -> dict[str, object]:
    return {
        "ingredient": tree.name(offer.ingredient),
        "bottle": title_of(offer.bottle),
        "closeness": rounded(offer.closeness, 3),
        "ratio": rounded(offer.ratio, 3),
        "path": list(offer.path),
        "why": offer.why,
        "corrections": list(offer.corrections),
        "owned": offer.owned,
        "to_buy": [tree.name(key) for key in offer.missing],
        "or_buy": [tree.name(key) for key, _closeness in offer.or_buy],
    }


def _shown(answer: StandIns, tree: FamilyTree) -> Iterator[str]:
    yield f"Instead of {tree.in_sentence(answer.wanted)}"
    if answer.none_because is not None:
        yield f"  nothing: {answer.none_because}"
    for offer in answer.stand_ins:
        there = _there(offer, tree)
        yield f"  {tree.name(offer.ingredient)} ({there}), closeness {offer.closeness:.2f}"
        yield f"      {offer.why}"
        yield from (f"      {correction}" for correction in offer.corrections)
        if offer.or_buy:
            yield f"      or buy {or_buy_in_words(offer, tree)}"
    for friend in answer.confusables:
        yield f"  never {tree.in_sentence(friend.ingredient)}: {friend.why}"


def _there(offer: Offer, tree: FamilyTree) -> str:
    """The bottle to pour from, or what has to be bought first."""
    if offer.owned:
        made_or_there = "always there" if tree[offer.ingredient].always_there else "made here"
        return title_of(offer.bottle) or made_or_there
    if offer.missing == (offer.ingredient,):
        return "not in the bar"
    return f"to buy: {spoken_list([tree.in_sentence(key) for key in offer.missing], 'and')}"
