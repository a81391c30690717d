"""Amounts and units: read as people write and say them, converted, rounded and shown."""
