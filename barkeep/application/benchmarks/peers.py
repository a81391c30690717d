"""Plainer ways to the same questions, to set barkeep's own beside.

Each answers *which specs can be made* and *how many each purchase turns*:

- a relational division in SQLite, in memory, over indexed tables;
- bits and counts in numpy arrays, the least that the question can cost;
- a plain networkx search for every ask, which knows kinds and stand-ins, but
  neither recipes nor what a drink's method allows, so that its answer is near
  and not the same.

Not one of them says with what a drink is poured, why, or for how many serves.
"""

from __future__ import annotations

import sqlite3
from collections import Counter
from collections.abc import Collection, Iterable, Mapping
from functools import cached_property
from itertools import chain
from math import log
from typing import Protocol

import networkx as nx
import numpy as np
from numpy.typing import NDArray

from barkeep.application.benchmarks.plain_book import PlainBook
from barkeep.domain.bar.knowledge import Knowledge


class Peer(Protocol):
    """Answers from what it was prepared with."""

    def ready(self) -> frozenset[int]:
        """The places of the specs that can be made."""
        ...

    def turned(self) -> Mapping[str, int]:
        """The key of each purchase that turns a spec, and how many it turns."""
        ...


_TABLES = """
CREATE TABLE need (spec INTEGER, ask INTEGER, PRIMARY KEY (spec, ask)) WITHOUT ROWID;
CREATE TABLE met (ask INTEGER PRIMARY KEY);
CREATE TABLE helps (ask INTEGER, kind TEXT, PRIMARY KEY (ask, kind)) WITHOUT ROWID;
"""
_READY = """
SELECT spec FROM need EXCEPT SELECT spec FROM need WHERE ask NOT IN (SELECT ask FROM met)
"""
_TURNED = """
WITH missing AS (SELECT spec, ask FROM need WHERE ask NOT IN (SELECT ask FROM met)),
     lacking AS (SELECT spec, count(*) AS asks FROM missing GROUP BY spec),
     turned AS (SELECT spec, kind FROM missing JOIN helps USING (ask) JOIN lacking USING (spec)
                GROUP BY spec, kind HAVING count(*) = asks)
SELECT kind, count(*) FROM turned GROUP BY kind
"""


class RelationalDivision:
    """The textbook's *for all* in SQL."""

    def __init__(self, book: PlainBook) -> None:
        self._file = sqlite3.connect(":memory:")
        self._file.executescript(_TABLES)
        needs = ((spec, ask) for spec, asks in enumerate(book.of_spec) for ask in asks)
        helps = ((ask, kind) for ask, kinds in enumerate(book.helped) for kind in kinds)
        self._file.executemany("INSERT INTO need VALUES (?, ?)", needs)
        self._file.executemany(
            "INSERT INTO met VALUES (?)", ((ask,) for ask, met in enumerate(book.met) if met)
        )
        self._file.executemany("INSERT INTO helps VALUES (?, ?)", helps)
        self._file.execute("ANALYZE")

    def ready(self) -> frozenset[int]:
        """The places of the specs that can be made; one without a line is in no table."""
        return frozenset(spec for (spec,) in self._file.execute(_READY))

    def turned(self) -> Mapping[str, int]:
        """The key of each purchase that turns a spec, and how many it turns."""
        return dict(self._file.execute(_TURNED).fetchall())


class Bits:
    """One bit for each ask and spec; counts where one purchase has to meet all that is missing."""

    def __init__(self, book: PlainBook) -> None:
        self._specs = len(book.of_spec)
        asks = np.fromiter(chain.from_iterable(book.of_spec), np.int64)
        specs = np.repeat(np.arange(self._specs), _lengths(book.of_spec))
        needed = np.zeros((len(book.met), self._specs), np.bool_)
        needed[asks, specs] = True
        self._needed = np.packbits(needed, axis=1)
        self._met = np.array(book.met, np.bool_)
        self._asks, self._of = asks, specs
        self._kinds = sorted(frozenset().union(*book.helped))
        place = {kind: number for number, kind in enumerate(self._kinds)}
        self._helps = [np.array([place[each] for each in some], np.int64) for some in book.helped]
        self._lengths = _lengths(book.helped)
        self._starts = np.cumsum(self._lengths) - self._lengths
        self._all_helps = np.concatenate([np.zeros(0, np.int64), *self._helps])

    def ready(self) -> frozenset[int]:
        """The places of the specs that can be made."""
        return frozenset(np.flatnonzero(self._ready()).tolist())

    def _ready(self) -> NDArray[np.bool_]:
        lacking = np.bitwise_or.reduce(self._needed[~self._met], axis=0)
        return ~np.unpackbits(lacking, count=self._specs).astype(np.bool_)

    def turned(self) -> Mapping[str, int]:
        """The key of each purchase that turns a spec, and how many it turns."""
        missing = ~self._met[self._asks]
        asks, specs = self._asks[missing], self._of[missing]
        lacking = np.bincount(specs, minlength=self._specs)
        lengths = self._lengths[asks]
        offset = np.arange(lengths.sum()) - np.repeat(np.cumsum(lengths) - lengths, lengths)
        kinds = self._all_helps[np.repeat(self._starts[asks], lengths) + offset]
        pairs = np.repeat(specs, lengths) * len(self._kinds) + kinds
        found, times = np.unique(pairs, return_counts=True)
        turned = found[times == lacking[found // max(1, len(self._kinds))]]
        counts = np.bincount(turned % max(1, len(self._kinds)), minlength=len(self._kinds))
        return {kind: int(count) for kind, count in zip(self._kinds, counts, strict=True) if count}


def _lengths(some: Iterable[Collection[object]]) -> NDArray[np.int64]:
    return np.fromiter(map(len, some), np.int64)


class PlainSearch:
    """networkx's own search over kinds and stand-ins, once for each ask whenever it is asked."""

    def __init__(
        self, book: PlainBook, knowledge: Knowledge, owned: frozenset[str], floor: float
    ) -> None:
        self._book, self._owned, self._cutoff = book, owned, -log(floor) + 1e-9
        self._tree = knowledge.tree
        self._knowledge = knowledge

    @cached_property
    def _graph(self) -> nx.DiGraph[str]:
        graph: nx.DiGraph[str] = nx.DiGraph()
        graph.add_nodes_from(self._tree)
        for entry in chain.from_iterable(self._knowledge.graph.stand_ins.values()):
            graph.add_edge(entry.wanted, entry.offered, cost=-log(entry.closeness))
        for key in self._tree:
            graph.add_edges_from(((key, below) for below in self._tree.children(key)), cost=0.0)
        return graph

    def _reached(self) -> list[frozenset[str]]:
        return [
            frozenset(
                nx.multi_source_dijkstra_path_length(
                    self._graph, set(names), cutoff=self._cutoff, weight="cost"
                )
            )
            for names in self._book.names
        ]

    def ready(self) -> frozenset[int]:
        """The places of the specs all of whose asks reach something that is owned."""
        met = [bool(each & self._owned) for each in self._reached()]
        return frozenset(
            spec for spec, asks in enumerate(self._book.of_spec) if all(met[ask] for ask in asks)
        )

    def turned(self) -> Mapping[str, int]:
        """The key of each purchase that turns a spec, and how many it turns."""
        reached = self._reached()
        turned: Counter[str] = Counter()
        for asks in self._book.of_spec:
            missing = [reached[ask] for ask in asks if not reached[ask] & self._owned]
            if missing:
                turned.update(frozenset.intersection(*missing))
        return {key: count for key, count in turned.items() if not self._tree[key].family}


def peers(
    book: PlainBook, knowledge: Knowledge, owned: frozenset[str], floor: float
) -> Mapping[str, Peer]:
    """All of them, by the name of the ratio that each is the baseline of."""
    return {
        "against_search": PlainSearch(book, knowledge, owned, floor),
        "against_sql": RelationalDivision(book),
        "against_floor": Bits(book),
    }
