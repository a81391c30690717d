"""Specs as text and in pieces: read with located problems, and written so that they read back."""
