"""Finding drinks by the query language as it is typed, and the language as help."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import partial
from html import escape
from typing import Generic, TypeVar

from barkeep.desktop.screens.background import Background
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.search import SLOW_FACTS, query_of
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.specs.query import LANGUAGE, NO_FIELD, Query, SpecFacts
from barkeep.domain.specs.spec import Spec
from barkeep.errors import BadQuery

QUICK_FACTS = frozenset({"due", "shoot", "allergens"})

Of = TypeVar("Of")
FactsOf = Callable[[Of, frozenset[str], Memory], Sequence[SpecFacts]]
"""Of what is listed, the facts that a query asks."""


class Finding(Generic[Of]):
    """Keeps the last query that meant something, and the facts it asks of what is listed.

    `question` is under what slow facts are asked for in the background; `on_ready` is called
    when they have come.
    """

    def __init__(
        self,
        background: Background,
        question: str,
        facts_of: FactsOf[Of],
        on_ready: Callable[[], object],
    ) -> None:
        self._background, self._question = background, question
        self._facts_of, self._on_ready = facts_of, on_ready
        self._memory = Memory()
        self._query = self._in_force = Query(())
        self._facts: Mapping[str, SpecFacts] = {}
        self._known_of: Of | None = None
        self._strengths_of: Of | None = None
        self._asked_of: Of | None = None

    def read(self, text: str, snapshot: Snapshot) -> str:
        """Take what was typed; why it cannot be used, empty where it can."""
        try:
            self._query = query_of(text, snapshot)
        except BadQuery as error:
            return str(error)
        return ""

    def finder(self, listed: Of) -> Callable[[Spec], bool]:
        """Whether a spec is found; by the query before it while an answer is still to come."""
        if self._query.asks & SLOW_FACTS and self._strengths_of is not listed:
            self._ask(listed)
        else:
            self._background.forget(self._question)
            self._asked_of, self._in_force = None, self._query
        query = self._in_force
        if not query.terms:
            return lambda _spec: True
        if self._known_of is not listed and not query.asks & SLOW_FACTS:
            self._keep(listed, self._facts_of(listed, QUICK_FACTS, self._memory))
        facts = self._facts
        return lambda spec: spec.name in facts and query.finds(facts[spec.name])

    def _ask(self, listed: Of) -> None:
        if self._asked_of is listed:
            return
        self._asked_of = listed
        question = partial(self._facts_of, listed, QUICK_FACTS | SLOW_FACTS, self._memory)
        self._background.ask(self._question, question, partial(self._answered, listed))

    def _answered(self, listed: Of, facts: Sequence[SpecFacts]) -> None:
        self._asked_of, self._strengths_of = None, listed
        self._keep(listed, facts)
        self._on_ready()

    def _keep(self, listed: Of, facts: Sequence[SpecFacts]) -> None:
        self._facts, self._known_of = {each.spec.name: each for each in facts}, listed


def language_as_help() -> str:
    """The query language as a small table."""
    rows = "".join(
        f"<tr><td style='white-space: nowrap'><b>{escape(written)}</b>&nbsp;&nbsp;</td>"
        f"<td>{escape(found)}</td></tr>"
        for written, found in LANGUAGE
    )
    return f"<p>A spec is found that</p><table>{rows}</table><p>{escape(NO_FIELD)}</p>"
