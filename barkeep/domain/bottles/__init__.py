"""Bottles and what is in them: labels, the ledger, levels, shapes, tares, barcodes."""
