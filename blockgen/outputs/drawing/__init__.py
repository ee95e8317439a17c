"""Sheets for the shop: strokes on paper, where they are placed, and the files that they become."""
