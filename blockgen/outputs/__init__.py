"""Files written from a plan: STEP, STL, summary, spec, manifest."""
