"""Finding drinks by the query language as it is typed, and the language as help."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import partial
from html import escape
from typing import Generic, TypeVar

from barkeep.desktop.screens.background import Background
from barkeep.desktop.widgets.waiting import Waiting
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.search import query_of
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.specs.query import LANGUAGE, NO_FIELD, Query, SpecFacts
from barkeep.domain.specs.spec import Spec
from barkeep.errors import BadQuery
from barkeep.translation import tr

QUICK_FACTS = frozenset({"due", "shoot"})
"""What is found out of every spec at once, beside its words and kinds."""

Of = TypeVar("Of")
FactsOf = Callable[[Of, frozenset[str], Memory], Sequence[SpecFacts]]
"""Of what is listed, the facts that a query asks."""


class Finding(Generic[Of]):
    """Keeps the last query that meant something, and the facts it asks of what is listed.

    Facts are asked for in the background, under `question`; `on_ready` is called when those
    have come that a query waits for. `waiting` says so meanwhile.
    """

    def __init__(
        self,
        background: Background,
        question: str,
        facts_of: FactsOf[Of],
        on_ready: Callable[[], object],
        *,
        waiting: Waiting,
    ) -> None:
        self._background, self._question, self._waiting = background, question, waiting
        self._facts_of, self._on_ready = facts_of, on_ready
        self._memory = Memory()
        self._query = self._in_force = Query(())
        self._facts: Mapping[str, SpecFacts] = {}
        self._known_of: Of | None = None
        self._known: frozenset[str] = frozenset()
        self._asked: tuple[Of, frozenset[str]] | None = None

    def read(self, text: str, snapshot: Snapshot) -> str:
        """Take what was typed; why it cannot be used, empty where it can."""
        try:
            self._query = query_of(text, snapshot)
        except BadQuery as error:
            return str(error)
        return ""

    @property
    def asks(self) -> frozenset[str]:
        """The facts that the query needs."""
        return self._query.asks

    def prepare(self, listed: Of) -> None:
        """Find out what any query may ask and takes no long time, before one is typed."""
        if not self._is_known(listed, frozenset()):
            self._ask(listed, self.asks)

    def finder(self, listed: Of) -> Callable[[Spec], bool]:
        """Whether a spec is found; by the query before it while an answer is still to come."""
        if not self._query.terms or self._is_known(listed, self._query.asks):
            self._in_force = self._query
            self._waiting.end(self._question)
        else:
            self._ask(listed, self._query.asks)
            self._waiting.begin(self._question, tr("Searching…"))
        return self.last_finder()

    def last_finder(self) -> Callable[[Spec], bool]:
        """Whether a spec is found by the query that was answered last."""
        query, facts = self._in_force, self._facts
        if not query.terms:
            return lambda _spec: True
        return lambda spec: spec.name in facts and query.finds(facts[spec.name])

    def _is_known(self, listed: Of, asks: frozenset[str]) -> bool:
        return self._known_of is listed and asks | QUICK_FACTS <= self._known

    def _ask(self, listed: Of, asks: frozenset[str]) -> None:
        wanted = asks | QUICK_FACTS | (self._known if self._known_of is listed else frozenset())
        if self._asked is not None and self._asked[0] is listed and wanted <= self._asked[1]:
            return
        self._asked = listed, wanted
        question = partial(self._facts_of, listed, wanted, self._memory)
        answered = partial(self._answered, listed, wanted)
        self._background.ask(self._question, question, answered)

    def _answered(self, listed: Of, known: frozenset[str], facts: Sequence[SpecFacts]) -> None:
        self._asked, self._known_of, self._known = None, listed, known
        self._facts = {each.spec.name: each for each in facts}
        if self._query.terms:
            self._on_ready()


def language_as_help() -> str:
    """The query language as a small table."""
    rows = "".join(
        f"<tr><td style='white-space: nowrap'><b>{escape(written)}</b>&nbsp;&nbsp;</td>"
        f"<td>{escape(tr(found))}</td></tr>"
        for written, found in LANGUAGE
    )
    found_that, no_field = escape(tr("A spec is found that")), escape(tr(NO_FIELD))
    return f"<p>{found_that}</p><table>{rows}</table><p>{no_field}</p>"
