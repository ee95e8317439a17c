"""Published tables as CSV files, each with its source, and typed lookups; code here only looks up."""
