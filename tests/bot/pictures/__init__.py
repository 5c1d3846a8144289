"""Pictures: what is drawn in them, and that it can be read."""
