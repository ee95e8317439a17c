"""The vector chain between journal and motor shaft, and its statistics."""
