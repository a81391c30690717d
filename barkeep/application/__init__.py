"""The use cases that the desktop and the command line both call."""
