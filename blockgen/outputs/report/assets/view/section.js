// A plane that takes away what lies before it, with the cut faces filled and hatched part by part.

const AXES = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] };
const HATCH = `
  uniform vec3 fill;
  uniform vec3 line;
  uniform float spacing;
  uniform float way;
  void main() {
    float place = mod(gl_FragCoord.x + way * gl_FragCoord.y, spacing);
    float ink = 1.0 - smoothstep(0.09, 0.16, abs(place / spacing - 0.5));
    gl_FragColor = vec4(mix(fill, line, 0.75 * ink), 1.0);
    #include <colorspace_fragment>
  }`;
const PLAIN = "void main() { gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0); }";

// Counts, at each pixel, how many more back faces than front faces of a part are left: not zero where it is cut.
function counter(side, step, plane) {
  return new THREE.MeshBasicMaterial({
    side, clippingPlanes: [plane], colorWrite: false, depthWrite: false, depthTest: false, stencilWrite: true,
    stencilFunc: THREE.AlwaysStencilFunc, stencilFail: step, stencilZFail: step, stencilZPass: step,
  });
}

function capMaterial(colour, number) {
  const fill = new THREE.Color(colour);
  return new THREE.ShaderMaterial({
    uniforms: {
      fill: { value: fill.clone().lerp(new THREE.Color("#ffffff"), 0.25) },
      line: { value: fill.clone().multiplyScalar(0.25) },
      spacing: { value: 9 },
      way: { value: number % 2 ? 1 : -1 },
    },
    vertexShader: PLAIN, fragmentShader: HATCH, side: THREE.DoubleSide, stencilWrite: true, stencilRef: 0,
    stencilFunc: THREE.NotEqualStencilFunc, stencilFail: THREE.ZeroStencilOp, stencilZFail: THREE.ZeroStencilOp,
    stencilZPass: THREE.ZeroStencilOp,
  });
}

function sectionOf(parts, reach) {
  const plane = new THREE.Plane();
  const counters = [
    counter(THREE.BackSide, THREE.IncrementWrapStencilOp, plane),
    counter(THREE.FrontSide, THREE.DecrementWrapStencilOp, plane),
  ];
  const sheet = new THREE.PlaneGeometry(2 * reach, 2 * reach);
  const caps = new THREE.Group();
  const rim = new THREE.LineBasicMaterial({ color: "#20252a" });
  parts.forEach((part, number) => {
    part.counters = counters.map((material) => new THREE.Mesh(part.mesh.surface, material));
    part.counters.forEach((mesh) => (mesh.renderOrder = 10 + 2 * number));
    part.standing.add(...part.counters);
    part.cap = new THREE.Mesh(sheet, capMaterial(part.data.colour, number));
    part.cap.renderOrder = 11 + 2 * number;
    part.rim = new THREE.LineSegments(new THREE.BufferGeometry(), rim);
    part.rim.renderOrder = 900;
    part.standing.add(part.rim);
    caps.add(part.cap);
  });
  return { plane, caps, rim, axis: "", place: 0, other: false };
}

// Which side is taken away, so that the cut is seen: the side of the start view, -x, -y or +z, or the other one.
function setSection(section, parts, materials, { axis, place, other }) {
  Object.assign(section, { axis, place, other });
  const on = axis !== "";
  if (on) {
    const sense = (axis === "z" ? -1 : 1) * (other ? -1 : 1);
    section.plane.normal.fromArray(AXES[axis]).multiplyScalar(sense);
    section.plane.constant = -place * sense;
  }
  for (const material of materials) {
    material.clippingPlanes = on ? [section.plane] : null;
    material.needsUpdate = true;
  }
  showCaps(section, parts);
}

function showCaps(section, parts) {
  const on = section.axis !== "";
  const at = section.plane.normal.clone().multiplyScalar(-section.plane.constant);
  const index = "xyz".indexOf(section.axis);
  for (const part of parts) {
    const box = part.box;
    const shown = part.group.visible && part.surface.visible;
    const cut = on && shown && box[index] < section.place && box[index + 3] > section.place;
    part.cap.visible = cut;
    part.counters.forEach((mesh) => (mesh.visible = cut));
    part.rim.visible = cut;
    if (!cut) continue;
    drawRim(part, section.plane);
    part.cap.position.copy(at);
    part.cap.lookAt(at.clone().add(section.plane.normal));
  }
}

// The outline of the cut: where the plane runs through the triangles. It stands a little before the plane, to be seen.
function drawRim(part, plane) {
  const own = plane.clone().applyMatrix4(part.standing.matrix.clone().setPosition(
    new THREE.Vector3().setFromMatrixPosition(part.standing.matrix).add(part.group.position)).invert());
  const { x, y, z } = own.normal;
  const places = part.mesh.surface.getAttribute("position").array;
  const heights = new Float32Array(places.length / 3);
  for (let i = 0; i < heights.length; i++) {
    heights[i] = x * places[3 * i] + y * places[3 * i + 1] + z * places[3 * i + 2] + own.constant;
  }
  const out = [];
  for (let t = 0; t < heights.length; t += 3) {
    for (let side = 0; side < 3; side++) {
      const [a, b] = [t + side, t + ((side + 1) % 3)];
      if (heights[a] < 0 === heights[b] < 0) continue;
      const share = heights[a] / (heights[a] - heights[b]);
      for (let i = 0; i < 3; i++) out.push(places[3 * a + i] + share * (places[3 * b + i] - places[3 * a + i]));
    }
  }
  part.rim.geometry.dispose();
  part.rim.geometry = geometryOf({ position: new Float32Array(out) });
  part.rim.geometry.translate(-0.02 * x, -0.02 * y, -0.02 * z);
}

// The part in whose cut face a ray enters: the ray leaves it once more than it enters it. The last drawn lies on top.
function cutPart(hits, direction) {
  const left = new Map();
  for (const { face, object } of hits) {
    const { part } = object.userData;
    const outward = face.normal.clone().transformDirection(object.matrixWorld).dot(direction) > 0;
    left.set(part, (left.get(part) ?? 0) + (outward ? 1 : -1));
  }
  const inside = [...left].filter(([, times]) => times > 0).map(([part]) => part);
  return inside.reduce((one, other) => (one && one.cap.renderOrder > other.cap.renderOrder ? one : other), null);
}
