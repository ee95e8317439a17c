"""Makers' STEP files: which face is screwed on, what its sizes are, and how sure that is."""
