"""The help: its pages and the words they explain, read, searched, and put in a terminal's letters."""
