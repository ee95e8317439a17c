import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from blockgen.outputs.report.markup import Markup, anchor, coordinate, element, joined, text
from tests.outputs.report.reading import Strict


@settings(deadline=None)
@given(st.text())
def test_any_text_comes_back_from_xml_without_what_cannot_be_seen(plain):
    from xml.etree import ElementTree as ET

    read = ET.fromstring(element("p", plain, title=plain))
    assert read.text in {str(ET.fromstring(f"<p>{text(plain)}</p>").text), None}
    assert read.get("title") is not None
    Strict(element("p", plain, title=plain))


def test_markup_stays_and_text_is_escaped():
    assert element("p", Markup("<b/>"), "<i>", None) == "<p><b/>&lt;i&gt;</p>"
    assert joined(("a<", Markup("<br/>")), ", ") == "a&lt;, <br/>"


def test_attributes_are_left_out_repeated_and_renamed():
    made = element("a", class_="x", aria_label='"q"', open=True, hidden=False, id=None, x=1.5)
    assert made == '<a class="x" aria-label="&quot;q&quot;" open="open" x="1.5"></a>'


def test_empty_elements_are_closed():
    assert element("br") == "<br/>"
    assert element("th") == "<th></th>"


def test_marks_of_direction_and_control_do_not_reach_the_page():
    assert text("a\u202eb\x1b\x00c\nd") == "abc\nd"


@settings(deadline=None)
@given(st.text(), st.text())
def test_anchors_are_ids_and_differ_where_keys_do(one, other):
    assert not set(anchor("value", one)) - set("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789._-")
    if one != other and "-" not in one + other:
        assert anchor("value", one) != anchor("value", other)


@pytest.mark.parametrize(("value", "shown"), [(1.0, "1"), (-0.001, "0"), (2.345, "2.35"), (10, "10")])
def test_coordinates_are_short(value, shown):
    assert coordinate(value) in {shown, "2.34"}
