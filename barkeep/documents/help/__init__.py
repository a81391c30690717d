"""The help: its pages and the words they explain; read, searched, and as plain text."""
