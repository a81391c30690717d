"""What the search of the Specs page finds: the query language over the rows there are."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import partial
from html import escape

from barkeep.desktop.background import Background
from barkeep.domain.answers.memory import Memory
from barkeep.domain.answers.spec_search import SLOW_FACTS, facts_for
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.spec_query import LANGUAGE, NO_FIELD, Query, SpecFacts, parse_query
from barkeep.domain.specs import Spec
from barkeep.errors import BadQuery

QUESTION = "specs-search"
"""Under which slow facts are asked for in the background."""


QUICK_FACTS = frozenset({"due"})


class SpecFinding:
    """Keeps the last query that meant something, and the facts it asks of the bar's specs.

    `on_ready` is called when facts have come that take too long to wait for.
    """

    def __init__(self, background: Background, on_ready: Callable[[], object]) -> None:
        self._background, self._on_ready = background, on_ready
        self._memory = Memory()
        self._query = self._in_force = Query(())
        self._facts: Mapping[str, SpecFacts] = {}
        self._facts_of: Snapshot | None = None
        self._strengths_of: Snapshot | None = None
        self._asked_of: Snapshot | None = None

    def read(self, text: str, snapshot: Snapshot) -> str:
        """Take what was typed; why it cannot be used, empty where it can."""
        try:
            self._query = parse_query(text, snapshot.knowledge.tree)
        except BadQuery as error:
            return str(error)
        return ""

    def finder(self, snapshot: Snapshot) -> Callable[[Spec], bool]:
        """Whether a spec is found; by the query before it while an answer is still to come."""
        if self._query.asks & SLOW_FACTS and self._strengths_of is not snapshot:
            self._ask(snapshot)
        else:
            self._background.forget(QUESTION)
            self._asked_of, self._in_force = None, self._query
        query = self._in_force
        if not query.terms:
            return lambda _spec: True
        if self._facts_of is not snapshot and not query.asks & SLOW_FACTS:
            self._keep(snapshot, facts_for(snapshot.all_specs, snapshot, QUICK_FACTS))
        facts = self._facts
        return lambda spec: spec.name in facts and query.finds(facts[spec.name])

    def _ask(self, snapshot: Snapshot) -> None:
        if self._asked_of is snapshot:
            return
        self._asked_of = snapshot
        asks = QUICK_FACTS | SLOW_FACTS
        question = partial(facts_for, snapshot.all_specs, snapshot, asks, self._memory)
        self._background.ask(QUESTION, question, partial(self._answered, snapshot))

    def _answered(self, snapshot: Snapshot, facts: Sequence[SpecFacts]) -> None:
        self._asked_of, self._strengths_of = None, snapshot
        self._keep(snapshot, facts)
        self._on_ready()

    def _keep(self, snapshot: Snapshot, facts: Sequence[SpecFacts]) -> None:
        self._facts, self._facts_of = {each.spec.name: each for each in facts}, snapshot


def language_as_help() -> str:
    """The query language as a small table."""
    rows = "".join(
        f"<tr><td style='white-space: nowrap'><b>{escape(written)}</b>&nbsp;&nbsp;</td>"
        f"<td>{escape(found)}</td></tr>"
        for written, found in LANGUAGE
    )
    return f"<p>A spec is found that</p><table>{rows}</table><p>{escape(NO_FIELD)}</p>"
