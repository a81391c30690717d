"""Bottles and specs out of files, looked at before anything is written."""
