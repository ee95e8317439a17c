"""Parts about the block, built from the spec where no maker's model is given."""
