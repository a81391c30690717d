"""The Stand-ins page, and saying what stands in."""
