"""The shipped papers and cards by their keys."""

from __future__ import annotations

from barkeep.documents.printed.paper import Size, SizeKind, shipped_sizes


def size_named(kind: SizeKind, key: str) -> Size:
    """A shipped size by its key."""
    return {size.key: size for size in shipped_sizes()[kind]}[key]
