"""Tonight, what one drink comes to, and the sheet to read it from on camera."""
