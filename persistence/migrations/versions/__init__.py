"""One file a step; each names the one before it."""
