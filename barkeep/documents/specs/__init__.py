"""Specs as JSON-LD, JSON, Markdown, CSV and plain text."""
