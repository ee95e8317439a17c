"""Two designs against each other: what differs, and what became obsolete."""
