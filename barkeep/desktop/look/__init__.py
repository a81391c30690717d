"""How everything looks: sizes, tones, icons, light and dark."""
