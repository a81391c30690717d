"""From what there is to a verdict: supply, the ways to meet a line, serves, warnings."""
