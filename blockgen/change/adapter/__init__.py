"""Ring or plate between a block that exists and another motor."""
