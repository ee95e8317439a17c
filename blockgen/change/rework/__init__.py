"""Can the block that exists be re-machined into the new one."""
