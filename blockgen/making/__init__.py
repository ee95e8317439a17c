"""How the block is made: stock, tools, order of setups, class of machining time, masses to lift; rows for a table."""
