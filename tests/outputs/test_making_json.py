from blockgen.making.setup_sheet import setup_sheet
from blockgen.outputs.making_json import with_making
from tests.sizing.strategies import sized


def test_each_number_of_the_setup_sheet_comes_with_its_reason():
    sheet = setup_sheet(sized())
    document = with_making({"schema": 1}, sheet)
    assert document["schema"] == 1
    assert set(document["making"]) == {record.key for record in sheet.records}
    assert document["making"]["making.stock_mass"]["unit"] == "kg"
    assert all(entry["source"] and entry["origin"] for entry in document["making"].values())
