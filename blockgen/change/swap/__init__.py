"""Another part in a spec, with what exists locked."""
