"""Numbers as a drawing writes them."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Figures:
    """How numbers are written.

    Args:
        comma: True for a decimal comma, as ISO 129-1 and most of Europe have it; False for a point.
    """

    comma: bool = False

    def number(self, value: float, digits: int = 3) -> str:
        """Return a number without needless zeros, at most ``digits`` behind the decimal sign."""
        text = f"{value:.{digits}f}"
        text = text.rstrip("0").rstrip(".") if "." in text else text
        return self.signed("0" if text in {"-0", ""} else text)

    def deviation(self, value: float) -> str:
        """Return a deviation in mm with its sign; nought has none."""
        text = self.number(value)
        return text if text == "0" or value < 0 else f"+{text}"

    def signed(self, text: str) -> str:
        """Return a text of digits with the sheet's decimal sign."""
        return text.replace(".", ",") if self.comma else text
