"""Rules that turn a spec into a plan, one file a subject."""
