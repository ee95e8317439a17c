"""Tests of finding solid, unit and faces in what the kernel wrote."""

import pytest

from blockgen.errors import KernelError
from blockgen.outputs.part21 import Ref
from blockgen.outputs.step_tolerances.model import read_model

DATA = """DATA;
#4 = PRODUCT_DEFINITION_SHAPE('','',#5);
#10 = ADVANCED_BREP_SHAPE_REPRESENTATION('',(#11,
  #15),#90);
#17 = ADVANCED_FACE('@4@',(#18),#107,.F.);
#21 = ADVANCED_FACE('@5@',(#18),#107,.F.);
#23 = ADVANCED_FACE('@6@',(#18),#107,.F.);
#90 = ( GEOMETRIC_REPRESENTATION_CONTEXT(3)
GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT((#94)) GLOBAL_UNIT_ASSIGNED_CONTEXT(
(#91,#92,#93)) REPRESENTATION_CONTEXT('Context #1',
  '3D Context with UNIT and UNCERTAINTY') );
#91 = ( LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT(.MILLI.,.METRE.) );
#92 = ( NAMED_UNIT(*) PLANE_ANGLE_UNIT() SI_UNIT($,.RADIAN.) );
#99 = ( LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT(.MILLI.,.METRE.) );
ENDSEC;
END-ISO-10303-21;
"""
TOKENS = {"@4@": "base", "@5@": "top", "@6@": "base"}


def test_what_is_found():
    model = read_model(DATA, TOKENS)
    assert (model.shape, model.solid, model.context, model.millimetre) == (Ref(4), Ref(10), Ref(90), Ref(91))
    assert model.faces == {"base": (Ref(17), Ref(23)), "top": (Ref(21),)}
    assert model.last == 99


@pytest.mark.parametrize(
    ("old", "new", "what"),
    [
        (".MILLI.", "$", "0 entities for the length unit of a millimetre"),
        ("ADVANCED_BREP_SHAPE", "SHAPE", "0 entities for the solid"),
        ("#99 =", "#98 = PRODUCT_DEFINITION_SHAPE('','',#5);\n#99 =", "2 entities for the shape of a product"),
    ],
)
def test_anything_else_is_refused(old, new, what):
    with pytest.raises(KernelError, match=what):
        read_model(DATA.replace(old, new), TOKENS)
