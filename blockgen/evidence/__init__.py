"""What was found out about a block after it was planned: measured characteristics and what they mean."""
