"""What a client's messages and the passing of time come to."""
