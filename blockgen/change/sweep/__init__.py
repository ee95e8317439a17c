"""Many variants of one spec: tried, kept, compared."""
