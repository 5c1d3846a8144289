"""What a coach's messages come to."""
