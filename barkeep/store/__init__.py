"""The only SQL: one bar in one SQLite file, written all or nothing."""
