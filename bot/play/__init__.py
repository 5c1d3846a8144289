"""Scripts of what people do, played in virtual time through the real desk, store, clock and delivery."""
