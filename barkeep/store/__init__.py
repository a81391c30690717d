"""The only SQL: one bar in a SQLite file or on a PostgreSQL server, written all or nothing."""
