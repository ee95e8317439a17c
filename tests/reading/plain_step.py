"""A motor as the text of a STEP file, put together entity by entity: no CAD kernel has a part in it.

Square flange with four through holes, proud pilot, plain shaft; the mounting face lies in z = 0.
"""

from __future__ import annotations


class Writer:
    """Collects entities and hands out their numbers."""

    def __init__(self, scale):
        self.lines, self.scale = [], scale

    def add(self, text):
        self.lines.append(f"#{len(self.lines) + 1}={text};")
        return f"#{len(self.lines)}"

    def point(self, x, y, z):
        return self.add(f"CARTESIAN_POINT('',({x / self.scale!r},{y / self.scale!r},{z / self.scale!r}))")

    def direction(self, x, y, z):
        return self.add(f"DIRECTION('',({float(x)!r},{float(y)!r},{float(z)!r}))")

    def place(self, at, z=(0, 0, 1), x=(1, 0, 0)):
        return self.add(f"AXIS2_PLACEMENT_3D('',{self.point(*at)},{self.direction(*z)},{self.direction(*x)})")

    def circle(self, at, radius):
        """Return a closed edge about an axis along z, counter-clockwise from above, and its one vertex."""
        vertex = self.add(f"VERTEX_POINT('',{self.point(at[0] + radius, at[1], at[2])})")
        curve = self.add(f"CIRCLE('',{self.place(at)},{radius / self.scale!r})")
        return self.add(f"EDGE_CURVE('',{vertex},{vertex},{curve},.T.)"), vertex

    def line(self, start, end, vertices):
        way = tuple(b - a for a, b in zip(start, end, strict=True))
        size = sum(c * c for c in way) ** 0.5
        vector = self.add(f"VECTOR('',{self.direction(*(c / size for c in way))},1.)")
        curve = self.add(f"LINE('',{self.point(*start)},{vector})")
        return self.add(f"EDGE_CURVE('',{vertices[0]},{vertices[1]},{curve},.T.)")

    def loop(self, *edges):
        """Return a loop of (edge, forward) pairs."""
        oriented = [self.add(f"ORIENTED_EDGE('',*,*,{e},{'.T.' if f else '.F.'})") for e, f in edges]
        return self.add(f"EDGE_LOOP('',({','.join(oriented)}))")

    def face(self, surface, outer, inner=(), same=True):
        bounds = [self.add(f"FACE_OUTER_BOUND('',{outer},.T.)"), *(self.add(f"FACE_BOUND('',{i},.T.)") for i in inner)]
        return self.add(f"ADVANCED_FACE('',({','.join(bounds)}),{surface},{'.T.' if same else '.F.'})")

    def cylinder(self, at, radius, low, high, hollow):
        """Return the face between two circles (edge, vertex) and a seam."""
        x, y = at
        seam = self.line((x + radius, y, low[2]), (x + radius, y, high[2]), (low[1], high[1]))
        surface = self.add(f"CYLINDRICAL_SURFACE('',{self.place((x, y, low[2]))},{radius / self.scale!r})")
        edges = [(low[0], True), (seam, True), (high[0], False), (seam, False)]
        if hollow:
            edges = [(e, not f) for e, f in reversed(edges)]
        return self.face(surface, self.loop(*edges), same=not hollow)


def text_of(size, thickness, pilot, pilot_length, spacing, hole, shaft, shaft_length, inch=False, unit=True):
    """Return a STEP file; all sizes in mm, whatever unit the file has."""
    w = Writer(25.4 if inch else 1.0)
    half, t = size / 2, thickness
    faces = _plate(w, half, t, pilot, spacing, hole)
    top = (*w.circle((0, 0, pilot_length), pilot / 2), pilot_length)
    foot = (*faces.pop("foot"), 0.0)
    root = (*w.circle((0, 0, pilot_length), shaft / 2), pilot_length)
    end = (*w.circle((0, 0, shaft_length), shaft / 2), shaft_length)
    ring = w.add(f"PLANE('',{w.place((0, 0, pilot_length))})")
    cap = w.add(f"PLANE('',{w.place((0, 0, shaft_length))})")
    shell = [
        *faces.pop("plate"),
        w.cylinder((0, 0), pilot / 2, foot, top, False),
        w.face(ring, w.loop((top[0], True)), [w.loop((root[0], False))]),
        w.cylinder((0, 0), shaft / 2, root, end, False),
        w.face(cap, w.loop((end[0], True))),
    ]
    return _file(w, w.add(f"CLOSED_SHELL('',({','.join(shell)}))"), inch, unit)


def _plate(w, half, t, pilot, spacing, hole):
    corners = [(-half, -half), (half, -half), (half, half), (-half, half)]
    points = [[(x, y, z) for x, y in corners] for z in (-t, 0.0)]
    vertices = [[w.add(f"VERTEX_POINT('',{w.point(*p)})") for p in row] for row in points]
    around = [
        [w.line(row[i], row[(i + 1) % 4], (v[i], v[(i + 1) % 4])) for i in range(4)]
        for row, v in zip(points, vertices, strict=True)
    ]
    upright = [w.line(points[0][i], points[1][i], (vertices[0][i], vertices[1][i])) for i in range(4)]
    at = [(x * spacing / 2, y * spacing / 2) for x, y in ((1, 1), (-1, 1), (-1, -1), (1, -1))]
    rims = [[(*w.circle((*p, z), hole / 2), z) for p in at] for z in (-t, 0.0)]
    foot = w.circle((0, 0, 0), pilot / 2)
    front, back = w.add(f"PLANE('',{w.place((0, 0, 0))})"), w.add(f"PLANE('',{w.place((0, 0, -t), (0, 0, -1))})")
    inner = [w.loop((r[0], False)) for r in rims[1]] + [w.loop((foot[0], False))]
    faces = [
        w.face(front, w.loop(*((e, True) for e in around[1])), inner),
        w.face(back, w.loop(*((e, False) for e in reversed(around[0]))), [w.loop((r[0], True)) for r in rims[0]]),
    ]
    for i, out in enumerate(((0, -1, 0), (1, 0, 0), (0, 1, 0), (-1, 0, 0))):
        surface = w.add(f"PLANE('',{w.place(points[0][i], out, (0, 0, 1))})")
        j = (i + 1) % 4
        loop = w.loop((around[0][i], True), (upright[j], True), (around[1][i], False), (upright[i], False))
        faces.append(w.face(surface, loop))
    faces += [w.cylinder(p, hole / 2, a, b, True) for p, a, b in zip(at, *rims, strict=True)]
    return {"plate": faces, "foot": foot}


def _file(w, shell, inch, unit):
    brep = w.add(f"MANIFOLD_SOLID_BREP('motor',{shell})")
    millimetre = w.add("(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))") if unit else None
    length = millimetre
    if inch and unit:
        factor = w.add(f"LENGTH_MEASURE_WITH_UNIT(LENGTH_MEASURE(25.4),{millimetre})")
        dimensions = w.add("DIMENSIONAL_EXPONENTS(1.,0.,0.,0.,0.,0.,0.)")
        length = w.add(f"(CONVERSION_BASED_UNIT('INCH',{factor})LENGTH_UNIT()NAMED_UNIT({dimensions}))")
    angle = w.add("(NAMED_UNIT(*)PLANE_ANGLE_UNIT()SI_UNIT($,.RADIAN.))")
    solid = w.add("(NAMED_UNIT(*)SI_UNIT($,.STERADIAN.)SOLID_ANGLE_UNIT())")
    units = ",".join(u for u in (length, angle, solid) if u)
    context = w.add(
        f"(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNIT_ASSIGNED_CONTEXT(({units}))REPRESENTATION_CONTEXT('','3D'))"
    )
    application = w.add("APPLICATION_CONTEXT('mechanical design')")
    product_context = w.add(f"PRODUCT_CONTEXT('',{application},'mechanical')")
    product = w.add(f"PRODUCT('motor','motor','',({product_context}))")
    formation = w.add(f"PRODUCT_DEFINITION_FORMATION('','',{product})")
    definition_context = w.add(f"PRODUCT_DEFINITION_CONTEXT('part definition',{application},'design')")
    definition = w.add(f"PRODUCT_DEFINITION('design','',{formation},{definition_context})")
    shape = w.add(f"PRODUCT_DEFINITION_SHAPE('','',{definition})")
    form = w.add(f"ADVANCED_BREP_SHAPE_REPRESENTATION('',({w.place((0, 0, 0))},{brep}),{context})")
    w.add(f"SHAPE_DEFINITION_REPRESENTATION({shape},{form})")
    head = (
        "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('motor','',(''),(''),'','','');\n"
        "FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));\nENDSEC;\nDATA;\n"
    )
    return head + "\n".join(w.lines) + "\nENDSEC;\nEND-ISO-10303-21;\n"
