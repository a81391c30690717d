"""Pages laid out and painted: on paper, into a PDF, on the screen."""
