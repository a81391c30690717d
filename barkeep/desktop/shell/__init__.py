"""The program around the pages: start, window, menus, navigation, faults, help and settings."""
