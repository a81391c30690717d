"""The Bottles page, labels, levels and facts of bottles."""
