"""What may be asked of drinks, as the help of a command shows it."""

from __future__ import annotations

from barkeep.cli.output import table
from barkeep.domain.specs.query import LANGUAGE, NO_FIELD


def query_help(asked_by: str) -> str:
    """The query language, as the help of a command shows it."""
    said = table(("written", "a spec is found that"), LANGUAGE)
    minus = f"A query that begins with a minus goes after --: barkeep {asked_by} -- -egg"
    return f"{said}\n\n{NO_FIELD}\n{minus}"
