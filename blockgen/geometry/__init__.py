"""From plan to solid with named faces; the only folder that loads the CAD kernel."""
