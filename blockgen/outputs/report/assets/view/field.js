// A block under load: its surface moved by the displacement times a magnification, coloured by stress. It is not
// shaded, so that a colour means the same everywhere; its edges show the shape, fainter ones the block without load.

const SCALE = ["#efe9d6", "#dfb87c", "#c57d51", "#8f4757", "#452a50"];

// The stress, not the colour, is what runs evenly over a triangle; the colours are those of the scale beneath.
const STRESS_PLACE = `
  attribute vec3 stress;
  varying float share;
  #include <clipping_planes_pars_vertex>
  void main() {
    share = stress.x;
    vec4 mvPosition = modelViewMatrix * vec4(position, 1.0);
    #include <clipping_planes_vertex>
    gl_Position = projectionMatrix * mvPosition;
  }`;
const STRESS_COLOUR = `
  uniform vec3 stops[${SCALE.length}];
  varying float share;
  #include <clipping_planes_pars_fragment>
  void main() {
    #include <clipping_planes_fragment>
    float place = clamp(share, 0.0, 1.0) * ${SCALE.length - 1}.0;
    vec3 colour = stops[0];
    for (int i = 1; i < ${SCALE.length}; i++) colour = mix(colour, stops[i], clamp(place - float(i - 1), 0.0, 1.0));
    gl_FragColor = vec4(colour, 1.0);
  }`;

function stressMaterial() {
  const parts = (colour) => [1, 3, 5].map((i) => parseInt(colour.slice(i, i + 2), 16) / 255);
  return new THREE.ShaderMaterial({
    uniforms: { stops: { value: SCALE.map((colour) => new THREE.Vector3(...parts(colour))) } },
    vertexShader: STRESS_PLACE, fragmentShader: STRESS_COLOUR, side: THREE.DoubleSide, clipping: true,
    polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1,
  });
}

// The greatest of 1, 2 or 5 times a power of ten that is not greater.
function round125(value) {
  const power = 10 ** Math.floor(Math.log10(value));
  return [5, 2, 1].find((digit) => digit * power <= value) * power;
}

function fieldOf(data, length, lineMaterial) {
  const places = points(data.points);
  const triangles = integers(data.triangles);
  const displacement = reals(data.displacement);
  const stress = reals(data.stress);
  const { greatest } = data; // at sharp edges there is more, which only tells how fine the mesh is
  const over = stress.some((value) => value > 1.001 * greatest);
  const way = displacement.reduce((a, b) => Math.max(a, Math.abs(b)), 0);
  const shares = new Float32Array(stress.length * 3);
  stress.forEach((value, i) => (shares[3 * i] = greatest ? value / greatest : 0));
  const geometry = geometryOf({ position: places.slice(), stress: shares });
  geometry.setIndex(new THREE.BufferAttribute(triangles, 1));
  const material = stressMaterial();
  const mesh = new THREE.Mesh(geometry, material);
  const edges = new THREE.LineSegments(new THREE.BufferGeometry(), lineMaterial);
  edges.geometry.setAttribute("position", geometry.getAttribute("position"));
  edges.geometry.setIndex(new THREE.BufferAttribute(integers(data.edges), 1));
  mesh.add(edges);
  mesh.visible = false;
  return { places, displacement, geometry, mesh, edges, greatest, over, materials: [material],
    usual: way > 0 ? round125((0.06 * length) / way) : 1 };
}

function magnify(field, factor) {
  const moved = field.geometry.getAttribute("position");
  for (let i = 0; i < moved.array.length; i++) moved.array[i] = field.places[i] + factor * field.displacement[i];
  moved.needsUpdate = true;
  for (const geometry of [field.geometry, field.edges.geometry]) geometry.computeBoundingSphere();
}

View.prototype.connectField = function connectField() {
  const set = this.figure.querySelector(".view-load");
  if (!this.data.field || !set) return;
  const block = this.data.parts.find(({ id }) => id === "block").box;
  this.field = fieldOf(this.data.field, block[3] - block[0], this.lineMaterial);
  this.scene.add(this.field.mesh);
  const [box, slider] = [set.querySelector("input[type=checkbox]"), set.querySelector("input[type=range]")];
  const shown = set.querySelector("output");
  const update = () => {
    const factor = (this.field.usual * Number(slider.value)) / 50;
    slider.disabled = !box.checked;
    set.querySelector(".view-scale").hidden = !box.checked;
    this.field.on = box.checked;
    shown.textContent = `${figure(factor, 0)} times`;
    if (box.checked) magnify(this.field, factor);
    this.hideForField();
    this.draw();
  };
  set.querySelector(".view-scale-end").textContent = `${figure(this.field.greatest, 1)} MPa${this.field.over ? " and more, at sharp edges" : ""}`;
  box.addEventListener("change", update);
  slider.addEventListener("input", update);
  this.field.update = update;
};
