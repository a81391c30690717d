"""barkeep: know what is in the bar, what it can make, and what to buy next."""

__version__ = "0.2.0"
