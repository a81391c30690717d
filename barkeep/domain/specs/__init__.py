"""Specs and what can be read off them: lines, ratios, glasses, riffs, trials, the query."""
