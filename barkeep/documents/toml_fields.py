"""Typed reading of TOML tables, as `barkeep.domain.toml_fields` has it."""

from barkeep.domain.toml_fields import Fields, Table, parse, refuse_other_tables, tables

__all__ = ["Fields", "Table", "parse", "refuse_other_tables", "tables"]
