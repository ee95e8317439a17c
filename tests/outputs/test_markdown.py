from blockgen.outputs import markdown


def test_cells_cannot_break_a_table():
    text = markdown.table(("A", "B"), [("x|y", "<i>\nz")], "none", right=("B",))
    assert text == "| A | B |\n|---|---:|\n| x\\|y | &lt;i> z |\n"


def test_an_empty_table_says_so():
    assert markdown.table(("A",), [], "Nothing is cut.") == "Nothing is cut.\n"


def test_lists_and_headings():
    assert markdown.bullets(["a", "# b"], "none") == "- a\n- \\# b\n"
    assert markdown.bullets([], "none") == "none\n"
    assert markdown.heading("A *b*", 3) == "### A \\*b\\*\n"
    assert markdown.strong("x") == "**x**\n"
