"""What was asked: the tables of the spec, its loading with line numbers, presets."""
