"""The report: one page that shows block, numbers and verdict, and needs nothing beside it."""
