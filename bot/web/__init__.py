"""HTTP, for whoever asks for it: the webhook, health and figures, and pages on this machine."""
