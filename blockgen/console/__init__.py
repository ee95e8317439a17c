"""What the commands print: pages of text, tables and trees, as plain text or, on a terminal, with modest colour."""
