"""Pure readers and writers of whatever comes in and goes out."""
