// From the page's data to what is drawn: meshes with a normal for each corner, parts, lines.

const CREASE = Math.cos(Math.PI / 6); // triangles of one face that meet at a sharper angle are shaded apart

function bytes(text) {
  const raw = atob(text);
  const out = new Uint8Array(raw.length);
  for (let i = 0; i < raw.length; i++) out[i] = raw.charCodeAt(i);
  return out;
}

function integers({ bits, data }) {
  const raw = bytes(data).buffer;
  return bits === 16 ? new Uint16Array(raw) : new Uint32Array(raw);
}

function reals(data) {
  return new Float32Array(bytes(data).buffer);
}

function points({ low, step, data }) {
  const steps = new Uint16Array(bytes(data).buffer);
  const out = new Float32Array(steps.length);
  for (let i = 0; i < steps.length; i++) out[i] = low[i % 3] + step[i % 3] * steps[i];
  return out;
}

function faceNumbers(runs, count) {
  const out = new Uint16Array(count);
  let at = 0;
  for (const [face, many] of runs) {
    out.fill(face, at, at + many);
    at += many;
  }
  return out;
}

function crossProducts(places, triangles) {
  const out = new Float32Array(triangles.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t] * 3, triangles[t + 1] * 3, triangles[t + 2] * 3];
    const [ux, uy, uz] = [places[b] - places[a], places[b + 1] - places[a + 1], places[b + 2] - places[a + 2]];
    const [vx, vy, vz] = [places[c] - places[a], places[c + 1] - places[a + 1], places[c + 2] - places[a + 2]];
    out[t] = uy * vz - uz * vy;
    out[t + 1] = uz * vx - ux * vz;
    out[t + 2] = ux * vy - uy * vx;
  }
  return out;
}

// Triangles about each corner, as one list with starts.
function about(triangles, count) {
  const starts = new Uint32Array(count + 1);
  for (const corner of triangles) starts[corner + 1] += 1;
  for (let i = 0; i < count; i++) starts[i + 1] += starts[i];
  const fill = starts.slice();
  const list = new Uint32Array(triangles.length);
  for (let i = 0; i < triangles.length; i++) list[fill[triangles[i]]++] = (i / 3) | 0;
  return { starts, list };
}

// A normal for each corner of each triangle: the sum over the triangles of the same face about that corner.
function cornerNormals(places, triangles, faces) {
  const across = crossProducts(places, triangles);
  const { starts, list } = about(triangles, places.length / 3);
  const out = new Float32Array(triangles.length * 3);
  for (let i = 0; i < triangles.length; i++) {
    const own = (i / 3) | 0;
    const [ox, oy, oz] = across.subarray(own * 3, own * 3 + 3);
    const size = Math.hypot(ox, oy, oz) || 1;
    let [x, y, z] = [0, 0, 0];
    for (let k = starts[triangles[i]]; k < starts[triangles[i] + 1]; k++) {
      const other = list[k];
      if (faces[other] !== faces[own]) continue;
      const [px, py, pz] = across.subarray(other * 3, other * 3 + 3);
      if (ox * px + oy * py + oz * pz < CREASE * size * Math.hypot(px, py, pz)) continue;
      x += px;
      y += py;
      z += pz;
    }
    const length = Math.hypot(x, y, z) || 1;
    out.set([x / length, y / length, z / length], i * 3);
  }
  return out;
}

function unfolded(places, triangles) {
  const out = new Float32Array(triangles.length * 3);
  for (let i = 0; i < triangles.length; i++) out.set(places.subarray(triangles[i] * 3, triangles[i] * 3 + 3), i * 3);
  return out;
}

function geometryOf(attributes) {
  const geometry = new THREE.BufferGeometry();
  for (const [name, numbers] of Object.entries(attributes)) {
    geometry.setAttribute(name, new THREE.BufferAttribute(numbers, 3));
  }
  return geometry;
}

function meshOf(data) {
  const places = points(data.points);
  const triangles = integers(data.triangles);
  const faces = faceNumbers(data.runs, triangles.length / 3);
  const edges = integers(data.edges);
  return {
    faces,
    surface: geometryOf({ position: unfolded(places, triangles), normal: cornerNormals(places, triangles, faces) }),
    lines: geometryOf({ position: unfolded(places, edges) }),
  };
}

// The triangles of some faces, to lay over them.
function piece(mesh, wanted) {
  const source = mesh.surface.getAttribute("position").array;
  const out = [];
  mesh.faces.forEach((face, t) => {
    if (wanted(face)) for (let i = 0; i < 9; i++) out.push(source[t * 9 + i]);
  });
  return geometryOf({ position: new Float32Array(out) });
}

function matrixOf(rows) {
  return new THREE.Matrix4().set(...rows, 0, 0, 0, 1);
}

function partOf(data, meshes, lineMaterial) {
  const mesh = meshes[data.mesh];
  const fill = new THREE.MeshLambertMaterial({
    color: data.colour, side: THREE.DoubleSide, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1,
  });
  const group = new THREE.Group();
  const surface = new THREE.Mesh(mesh.surface, fill);
  const lines = new THREE.LineSegments(mesh.lines, lineMaterial);
  const standing = new THREE.Group();
  standing.matrixAutoUpdate = false;
  standing.matrix.copy(matrixOf(data.place));
  standing.add(surface, lines);
  group.add(standing);
  const part = { data, mesh, group, standing, surface, lines };
  surface.userData.part = part;
  return part;
}
