"""From what someone typed to the one thing that is meant, or the nearest names."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TypeVar

from barkeep.domain.bar.shoots import Shoot, ShootDrink
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.barcodes import is_like_a_code, read_gtin, same_code
from barkeep.domain.bottles.bottle import Bottle, Product
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.specs.spec import Spec
from barkeep.errors import AmbiguousName, UnknownName, UserError
from barkeep.translation import tr

T = TypeVar("T")


def there(kind: str, found: T | None, identity: int | None) -> T:
    """What was looked for by its id. Raises `UnknownName` where it was not found."""
    if found is None:
        raise UnknownName(kind, f"#{identity}")
    return found


NEAREST = 3


def nearest_names(name: str, names: Iterable[str], limit: int = NEAREST) -> tuple[str, ...]:
    """The names most like the one given, best first; none that is far-fetched."""
    from barkeep.domain.name_search import Named, NameIndex  # most names are spelt as they are

    index = NameIndex(Named(each, (each,)) for each in dict.fromkeys(names))
    return tuple(hit.value for hit in index.hits(name)[:limit])


def find_ingredient(tree: FamilyTree, text: str, *, owned: Collection[str] = ()) -> str:
    """The key of the ingredient with this key or name, in whatever language. Raises `UnknownName`.

    Of the nearest names, those of what is `owned` (keys) go first among equals; of a foreign
    name that may be one thing or another they are what it may be.
    """
    if text in tree:
        return text
    key = tree.called(text)
    if key is None and (meant := tree.may_be(text)):
        raise UnknownName("ingredient", text, tuple(map(tree.name, meant)))
    if key is None:
        from barkeep.domain.ingredients.finder import nearest  # as above

        near = nearest(text, tree, there=owned)
        raise UnknownName("ingredient", text, tuple(each.name for each in near))
    return key


def find_spec(snapshot: Snapshot, text: str) -> Spec:
    """The owner's spec or the classic of this name. Raises `UnknownName` or `AmbiguousName`."""
    return _find("spec", text, snapshot.all_specs, lambda spec: spec.name)


def find_bottle(snapshot: Snapshot, text: str, *, rather_open: bool = False) -> Bottle:
    """The bottle with this id, barcode or title. Raises `UnknownName` or `AmbiguousName`.

    Of several bottles of one product none is chosen: their ids are offered.
    With `rather_open` the only open one of them is.
    """
    same_id = [each for each in snapshot.bottles if str(each.id) == text.strip().lstrip("#")]
    if same_id:
        return same_id[0]
    of_code = {each.id for each in _of_code(snapshot.products, text)}
    found = [each for each in snapshot.bottles if each.product.id in of_code]
    found = found or _candidates(text, snapshot.bottles, lambda bottle: bottle.product.title)
    if rather_open and len({each.product.id for each in found}) == 1:
        in_use = [each for each in found if each.level.state == "open"]
        found = in_use if len(in_use) == 1 else found
    if len(found) > 1:
        choices = tuple(f"{each.product.title} (#{each.id})" for each in found)
        raise AmbiguousName("bottle", text, choices)
    if not found:
        titles = (bottle.product.title for bottle in snapshot.bottles)
        raise UnknownName("bottle", text, nearest_names(text, titles))
    return found[0]


def find_product(snapshot: Snapshot, text: str) -> Product:
    """The product of this title, or with this barcode. Raises `UnknownName` or `AmbiguousName`."""
    of_code = _of_code(snapshot.products, text)
    if len(of_code) == 1:
        return of_code[0]
    return _find("product", text, snapshot.products, lambda product: product.title)


class NobodyHasCode(UserError):
    """No bottle has this code; `product` has it, where it is not empty."""

    code: str
    product: str

    def __str__(self) -> str:
        if self.product:
            return tr(
                "There is no bottle of {product}, which has the barcode {code}.",
                product=self.product,
                code=self.code,
            )
        return tr(
            "No bottle has the barcode {code}; “barkeep product add” takes one in with --barcode.",
            code=self.code,
        )


@dataclass(frozen=True, slots=True)
class OfCode:
    """What the number under a barcode is on: products, and their bottles, the open ones first."""

    code: str
    products: tuple[Product, ...]
    bottles: tuple[Bottle, ...]


def is_code(snapshot: Snapshot, text: str) -> bool:
    """Whether a text is the code of a product, or digits enough for one."""
    return is_like_a_code(text) or bool(text.strip() and _of_code(snapshot.products, text))


def find_by_code(snapshot: Snapshot, text: str) -> OfCode:
    """What a code is on; nothing where nobody has it. Raises `InvalidField` for a wrong digit."""
    products = _of_code(snapshot.products, text)
    code = text.strip() if products else read_gtin(text)
    keys = {each.id for each in products}
    bottles = [each for each in snapshot.bottles if each.product.id in keys]
    states = ("open", "sealed", "empty")
    bottles.sort(key=lambda each: states.index(each.level.state))
    return OfCode(code, products, tuple(bottles))


def _of_code(products: Iterable[Product], text: str) -> tuple[Product, ...]:
    return tuple(each for each in products if each.barcode and same_code(each.barcode, text))


def find_shoot(snapshot: Snapshot, text: str, on: date | None = None) -> Shoot:
    """The shoot of this id or theme, or whose theme begins so or holds all the words.

    Of several shoots of one theme it is the one `on` that day, else the nearest
    not yet logged, else the latest. Raises `UnknownName` or `AmbiguousName`.
    """
    wanted = folded(text)
    begun = [each for each in snapshot.shoots if wanted and folded(each.theme).startswith(wanted)]
    found = shoots_called(snapshot, text) or begun
    found = found or _candidates(text, snapshot.shoots, lambda shoot: shoot.theme)
    if not found:
        themes = (shoot.theme for shoot in snapshot.shoots)
        raise UnknownName("shoot", text, nearest_names(text, themes))
    that_day = [each for each in found if each.on == on]
    if on is not None and not that_day:
        raise UnknownName("shoot", f"{text}, {on}", tuple(map(_dated, found[:NEAREST])))
    found = that_day or found
    if len({folded(each.theme) for each in found}) > 1:
        raise AmbiguousName("shoot", text, tuple(map(_dated, found)))
    ahead = [each for each in found if each.log is None]
    if ahead:
        return min(ahead, key=lambda each: (abs(each.on - snapshot.on), each.on, each.id or 0))
    return max(found, key=lambda each: (each.on, each.id or 0))


def shoots_called(snapshot: Snapshot, text: str) -> list[Shoot]:
    """The shoot of this id, or those of exactly this theme."""
    wanted = folded(text)
    same_id = [each for each in snapshot.shoots if f"#{each.id}" == text.strip()]
    return same_id or [each for each in snapshot.shoots if folded(each.theme) == wanted]


def find_drink(shoot: Shoot, text: str) -> ShootDrink:
    """The drink of a shoot by its name. Raises `UnknownName` or `AmbiguousName`."""
    return _find(
        tr("drink of {theme}", theme=shoot.theme), text, shoot.drinks, lambda drink: drink.name
    )


def _dated(shoot: Shoot) -> str:
    return f"{shoot.theme} ({shoot.on}, #{shoot.id})"


def _find(kind: str, text: str, things: Sequence[T], name_of: Callable[[T], str]) -> T:
    found = _candidates(text, things, name_of)
    if not found:
        raise UnknownName(kind, text, nearest_names(text, map(name_of, things)))
    if len(found) > 1:
        raise AmbiguousName(kind, text, tuple(name_of(each) for each in found))
    return found[0]


def _candidates(text: str, things: Sequence[T], name_of: Callable[[T], str]) -> list[T]:
    """Those of exactly this name; failing that, those whose name holds all its words."""
    wanted = folded(text)
    exact = [each for each in things if folded(name_of(each)) == wanted]
    if exact or not wanted:
        return exact
    words = set(wanted.split())
    return [each for each in things if words <= set(folded(name_of(each)).split())]
