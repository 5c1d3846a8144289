"""One invented coach, her invented clients and some weeks of theirs, played through the real bot."""
