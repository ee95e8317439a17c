"""Living with change: compare two designs, re-machine a block, adapters, families, many variants."""
