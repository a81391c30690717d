"""From what someone typed to a bar that is changed on paper alone."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from barkeep.application.finding import find_bottle, find_ingredient, nearest_names
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, Product
from barkeep.domain.buying.on_paper import OnPaper, changed_on_paper
from barkeep.domain.buying.packages import Purchase, purchase_of, purchase_of_product
from barkeep.domain.phrases import folded
from barkeep.errors import AmbiguousName, InvalidField, UnknownName, spoken_list
from barkeep.translation import tr, tr_noop


def read_on_paper(
    snapshot: Snapshot, bought: Sequence[str] = (), gone: Sequence[str] = ()
) -> OnPaper:
    """The bar with each of `bought` and without each of `gone`, as they were typed.

    What is bought is a kind, or a product that the bar knows; what is gone a bottle by its id or
    title, or all there is of a kind. Raises `UnknownName`, `AmbiguousName` or `InvalidField`.
    """
    bottles, not_there = list[Bottle](), list[str]()
    for text in gone:
        found = _gone(text, snapshot)
        bottles += (each for each in found if isinstance(each, Bottle))
        not_there += (each for each in found if isinstance(each, str))
    return changed_on_paper(
        snapshot,
        [_bought(text, snapshot) for text in bought],
        list({each.id: each for each in bottles}.values()),
        list(dict.fromkeys(not_there)),
    )


def _bought(text: str, snapshot: Snapshot) -> Purchase:
    tree, wanted = snapshot.knowledge.tree, folded(text)
    for product in _for_sale(snapshot):
        if folded(product.title) == wanted:
            return purchase_of_product(product, snapshot)
    if not _is_kind(text, snapshot) and (called := _called(text, _for_sale(snapshot))):
        return purchase_of_product(called[0], snapshot)
    key = _kind(text, snapshot, (each.title for each in snapshot.products))
    if key in snapshot.always_there:
        raise InvalidField("with", text.strip(), tr_noop("it is always there"))
    if tree[key].family:
        kinds = [each for some in tree.downwards(key) for each in some if not tree[each].family]
        likely = spoken_list([f"“{tree.in_sentence(each)}”" for each in kinds[:3]])
        raise InvalidField(
            "with", text.strip(), tr("it is several kinds; likely {names}", names=likely)
        )
    return purchase_of(key, snapshot)


def _gone(text: str, snapshot: Snapshot) -> Sequence[Bottle | str]:
    """The bottles that are meant, or the key of what is always there."""
    titled = [each for each in snapshot.bottles if folded(each.product.title) == folded(text)]
    if titled:
        return titled
    if text.strip().removeprefix("#").isdigit():
        return [find_bottle(snapshot, text)]
    products = [each.product for each in snapshot.bottles]
    if not _is_kind(text, snapshot) and (called := _called(text, products)):
        return [each for each in snapshot.bottles if each.product.title == called[0].title]
    key = _kind(text, snapshot, (each.product.title for each in snapshot.bottles))
    if key in snapshot.always_there:
        return [key]
    kinds = snapshot.knowledge.tree.at_or_below(key)
    found = [each for each in snapshot.bottles if each.ingredient in kinds]
    if not any(each.level.amount > 0.0 for each in found):
        raise InvalidField("without", text.strip(), tr_noop("there is none in the bar"))
    return found


def _for_sale(snapshot: Snapshot) -> list[Product]:
    return [each for each in snapshot.products if not each.house_made and each.size > 0.0]


def _called(text: str, products: Iterable[Product]) -> list[Product]:
    """The one product whose title has all these words, as often as it is there."""
    words = set(folded(text).split())
    found = [each for each in products if words <= set(folded(each.title).split())]
    titles = tuple(dict.fromkeys(each.title for each in found))
    if len(titles) > 1 and words:
        raise AmbiguousName(tr_noop("bottle"), text.strip(), titles)
    return found if words else []


def _kind(text: str, snapshot: Snapshot, titles: Iterable[str]) -> str:
    """The key of a kind. Raises `UnknownName` with the nearest kinds and titles."""
    try:
        return find_ingredient(snapshot.knowledge.tree, text, owned=snapshot.owned)
    except UnknownName as error:
        near = (*error.nearest, *nearest_names(text, titles))
        raise UnknownName(tr_noop("kind or bottle"), text.strip(), near[:4]) from None


def _is_kind(text: str, snapshot: Snapshot) -> bool:
    tree = snapshot.knowledge.tree
    return text in tree or tree.called(text) is not None
