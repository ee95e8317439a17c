"""How far a block gives way: finite elements on the plan's solid, as an envelope over supports and flanges."""
