"""The names a line of a spec may take: kinds and bottles in its table, kinds in its text."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import replace

from barkeep.desktop.screens.name_completion import Suggestion, ingredient_names, with_others
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.ingredients.finder import Found, ranked
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.name_search import Fit, Hit, Named, NameIndex
from barkeep.domain.phrases import folded

LEAST_LETTERS = 2
OFFERED = 10


class NamesOfLines:
    """What a line may name: the kinds of the tree, and what is on the shelf.

    A bottle writes its kind and names itself. A name that was typed in full stays as it was
    written, whatever the kind is called here.
    """

    def __init__(self, snapshot: Snapshot) -> None:
        self._tree = snapshot.knowledge.tree
        self._kinds = ingredient_names(self._tree, snapshot.owned)
        left = {each.product.id for each in snapshot.bottles if each.level.amount > 0.0}
        known = {each.product.id: each.product for each in snapshot.bottles}
        shelf = sorted(known.values(), key=lambda each: each.title.casefold())
        self._shelf = tuple(self._of_a_bottle(each, there=each.id in left) for each in shelf)
        self._index = NameIndex(
            Named(each, (product.title,)) for each, product in zip(self._shelf, shelf, strict=True)
        )

    def __iter__(self) -> Iterator[Suggestion]:
        return iter((*self._kinds, *self._shelf))

    def fitting(self, text: str) -> Sequence[Suggestion]:
        """What fits, likeliest first."""
        ways = ranked(text, self._tree, there=self._kinds.there)
        kinds = [(each.fit, each.score, self._of_a_kind(each, text)) for each in ways]
        hits = self._index.hits(text)
        bottles = [(each.fit, each.score, _as_found(each)) for each in hits]
        both = sorted((*kinds, *bottles), key=lambda each: each[:2], reverse=True)
        found = [suggestion for _fit, _score, suggestion in both]
        return with_others(found, map(self._by_its_kind, self._kinds.holding(text)))

    def _by_its_kind(self, each: Suggestion) -> Suggestion:
        return replace(each, text=self._tree.in_sentence(str(each.value)))

    def _of_a_kind(self, found: Found, typed: str) -> Suggestion:
        in_full = found.fit is Fit.EXACT and self._tree.by_name.get(folded(typed)) == found.key
        text = typed.strip() if in_full else self._tree.in_sentence(found.key)
        return replace(self._kinds.offered(found), text=text)

    def _of_a_bottle(self, product: Product, *, there: bool) -> Suggestion:
        kind = self._tree.in_sentence(product.ingredient)
        title = product.title.translate(str.maketrans("(),", "   "))
        shown = f"{product.title}: {kind}"
        return Suggestion(shown, f"{kind} ({title})", product, there=there)


def _as_found(hit: Hit[Suggestion]) -> Suggestion:
    return hit.value if hit.fit > Fit.LIKE else replace(hit.value, sure=False)


class IngredientNames:
    """The names that may be written at the end of a line of text, found as they are typed."""

    def __init__(self, tree: FamilyTree, there: Collection[str] = ()) -> None:
        self._tree = tree
        self._kinds = ingredient_names(tree, there)

    def beginning_with(self, words: str) -> tuple[str, ...]:
        """The names that `words` may become, likeliest first and one a kind, as they are written.

        A guess is none: what is written may go on in any way.
        """
        return tuple(each.text for each in self.offered(words))

    def offered(self, words: str) -> tuple[Suggestion, ...]:
        """The same, with what is said of each."""
        if len(folded(words)) < LEAST_LETTERS:
            return ()
        found = ranked(words, self._tree, there=self._kinds.there, guess=False, limit=OFFERED)
        return tuple(
            replace(self._kinds.offered(each), text=each.called or self._tree.in_sentence(each.key))
            for each in found
        )

    def unfinished(self, before_cursor: str) -> tuple[str, tuple[str, ...]]:
        """The end of a line that could become a name, as written, and the names it could become.

        The longest such end wins: in *30 ml dry ver* it is *dry ver*. Nothing
        where the line already ends in the only name it could be.
        """
        start = len(before_cursor) - len(before_cursor.lstrip())
        if before_cursor[-1:].isspace():
            start = len(before_cursor)
        while start < len(before_cursor):
            tail = before_cursor[start:]
            names = self.beginning_with(tail)
            if names:
                return ("", ()) if _is_finished(tail, names) else (tail, names)
            start = _next_word(before_cursor, start)
        return ("", ())


def _is_finished(tail: str, names: tuple[str, ...]) -> bool:
    return len(names) == 1 and folded(names[0]) == folded(tail)


def _next_word(text: str, start: int) -> int:
    """Where the next word begins, the end of the text where there is none."""
    blank = text.find(" ", start)
    while 0 <= blank < len(text) and text[blank] == " ":
        blank += 1
    return blank if blank > 0 else len(text)
