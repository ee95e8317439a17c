"""``python -m blockgen`` is the command ``blockgen``."""

from blockgen.cli import main

if __name__ == "__main__":
    main()
