// The view: draws on demand, answers to mouse, touch and keys, and tells what was chosen.

const CHOSEN = "#d9480f";
const STEP = { turn: 8, pan: 30, zoom: 0.85 };
const NOTHING = "Nothing is chosen. Click or tap a face, or take a feature from the list.";
const TAP = 6; // pixels that a finger may move while it taps

function readJson(id) {
  const found = document.getElementById(id);
  return found ? JSON.parse(found.textContent) : null;
}

function drawable() {
  try {
    const context = document.createElement("canvas").getContext("webgl2", { stencil: true });
    context?.getExtension("WEBGL_lose_context")?.loseContext();
    return context !== null;
  } catch {
    return false;
  }
}

function start() {
  const figureElement = document.querySelector("figure.view");
  const scene = readJson("scene-data");
  if (!figureElement || !scene) return;
  const say = (text) => {
    const message = figureElement.querySelector(".view-message");
    message.textContent = text;
    message.hidden = text === "";
  };
  if (!drawable()) {
    say("This browser draws no 3D (WebGL 2 is missing or switched off). The picture stands still.");
    return;
  }
  try {
    window.blockgenView = new View(figureElement, scene, readJson("summary-data") ?? {}, say);
  } catch (error) {
    say(`The 3D view could not start (${error.message}). The picture stands still.`);
  }
}

class View {
  constructor(figureElement, data, summary, say) {
    Object.assign(this, { figure: figureElement, data, summary, say });
    this.canvas = figureElement.querySelector("canvas");
    this.facts = figureElement.querySelector(".view-facts");
    this.field = null;
    this.waiting = false;
    this.apart = 0;
    this.direction = START;
    this.follows = true; // the picture is fitted again by itself, until somebody zooms or moves it
    this.build();
    this.figure.classList.add("view-live");
    this.figure.querySelector(".view-controls").hidden = false;
    this.connect();
    this.resize();
    this.look(START, false);
    this.draw();
    this.firstPicture = performance.now();
    this.figure.dataset.ready = "yes";
  }

  build() {
    this.renderer = new THREE.WebGLRenderer({ canvas: this.canvas, antialias: true, alpha: true, stencil: true });
    this.renderer.localClippingEnabled = true;
    this.scene = new THREE.Scene();
    this.camera = new THREE.OrthographicCamera();
    this.lineMaterial = new THREE.LineBasicMaterial({ color: "#20252a" });
    this.faintMaterial = new THREE.LineBasicMaterial({ color: "#7d868c" });
    const meshes = this.data.meshes.map(meshOf);
    this.parts = this.data.parts.map((part) => partOf(part, meshes, this.lineMaterial));
    this.scene.add(...this.parts.map((part) => part.group));
    const sky = new THREE.HemisphereLight("#ffffff", "#9fa0a0", 1.9);
    sky.position.set(0, 0, 1);
    this.scene.add(sky);
    this.lamps = [[-0.4, 0.75, 0.9, 1.9], [0.8, 0.2, 0.6, 0.9]].map(([x, y, z, strength]) => {
      const lamp = new THREE.DirectionalLight("#ffffff", strength);
      lamp.userData.place = [x, y, z];
      this.scene.add(lamp);
      return lamp;
    });
    this.reach = 4 * Math.max(...this.boxes(1).flat().map(Math.abs));
    this.marks = new THREE.Group();
    this.markMaterials = [1, 0.35].map((opacity, i) => new THREE.MeshBasicMaterial({
      color: CHOSEN, side: THREE.DoubleSide, transparent: true, opacity, depthTest: i === 0, depthWrite: false,
    }));
    this.scene.add(this.marks);
    this.section = sectionOf(this.parts, this.reach);
    this.scene.add(this.section.caps);
    this.setApart(0);
  }

  // Boxes of the parts that are shown, drawn apart by a share.
  boxes(share, parts = this.parts) {
    return parts.map(({ data }) => data.box.map((v, i) => v + share * data.shift[i % 3]));
  }

  shown() {
    return this.parts.filter((part) => part.group.visible);
  }

  clipped() {
    const fills = this.parts.map((part) => part.surface.material);
    const lines = [this.lineMaterial, this.faintMaterial];
    return [...fills, ...lines, ...this.markMaterials, ...(this.field?.materials ?? [])];
  }

  // Looks

  look(direction, gently = true) {
    this.direction = direction;
    const boxes = this.boxes(this.apart, this.shown().length ? this.shown() : this.parts);
    this.glide({ ...direction, ...fitted(boxes, direction, this.aspect) }, gently);
  }

  glide(to, gently = true) {
    cancelAnimationFrame(this.gliding);
    const from = this.view;
    if (!gently || !from || matchMedia("(prefers-reduced-motion: reduce)").matches) {
      this.view = { turn: to.turn, tilt: to.tilt, half: to.half, middle: to.middle };
      this.draw();
      return;
    }
    const began = performance.now();
    const step = (now) => {
      const share = Math.min(1, Math.max(0, (now - began) / 280));
      this.view = between(from, to, share * share * (3 - 2 * share));
      this.paint();
      if (share < 1) this.gliding = requestAnimationFrame(step);
    };
    this.gliding = requestAnimationFrame(step);
  }

  change(view) {
    cancelAnimationFrame(this.gliding);
    this.view = view;
    this.draw();
  }

  // Draws once before the next picture of the screen, however many changes there are until then.
  draw() {
    if (this.waiting) return;
    this.waiting = true;
    requestAnimationFrame(() => {
      this.waiting = false;
      this.paint();
    });
  }

  paint() {
    aim(this.camera, this.view, this.aspect, this.reach);
    const { back, up, right } = axesOf(this.view);
    for (const lamp of this.lamps) {
      const [x, y, z] = lamp.userData.place;
      lamp.position.set(0, 0, 0).addScaledVector(right, x).addScaledVector(up, y).addScaledVector(back, z);
    }
    this.renderer.render(this.scene, this.camera);
  }

  resize() {
    const { clientWidth: width, clientHeight: height } = this.canvas;
    if (!width || !height) return;
    this.aspect = width / height;
    this.renderer.setPixelRatio(Math.min(window.devicePixelRatio || 1, 2.5));
    this.renderer.setSize(width, height, false);
    if (this.view) {
      if (this.follows) this.look(this.direction, false);
      else this.paint();
    }
  }

  // What is shown

  setApart(share) {
    this.apart = share;
    for (const part of this.parts) {
      part.group.position.fromArray(part.data.shift).multiplyScalar(share);
      part.box = this.boxes(share, [part])[0];
    }
    showCaps(this.section, this.parts);
    this.placeMarks();
  }

  show(label, on) {
    for (const part of this.parts) if (part.data.label === label) part.group.visible = on;
    this.hideForField();
    showCaps(this.section, this.parts);
    this.draw();
  }

  setSection(to) {
    setSection(this.section, this.parts, this.clipped(), to);
    this.draw();
  }

  // What is chosen

  pick(x, y) {
    const { left, top, width, height } = this.canvas.getBoundingClientRect();
    const place = new THREE.Vector2(((x - left) / width) * 2 - 1, 1 - ((y - top) / height) * 2);
    const ray = new THREE.Raycaster();
    aim(this.camera, this.view, this.aspect, this.reach);
    ray.setFromCamera(place, this.camera);
    const on = this.section.axis !== "";
    const all = ray.intersectObjects(this.shown().map((part) => part.surface), false);
    const hits = all.filter(({ point }) => !on || this.section.plane.distanceToPoint(point) > 0);
    const cut = on && this.section.plane.normal.dot(ray.ray.direction) > 0 ? cutPart(hits, ray.ray.direction) : null;
    if (cut) return this.choose(cut);
    if (!hits.length) return this.choose(null);
    const { part } = hits[0].object.userData;
    return this.choose(part, part.data.id === "block" ? part.mesh.faces[hits[0].faceIndex] : null);
  }

  choose(part, face = null) {
    this.clearMarks();
    const list = this.figure.querySelector(".view-features");
    if (part === null) {
      this.tell([element("p", {}, NOTHING)]);
      list.value = "";
    } else if (face === null) {
      const alike = this.parts.filter(({ data }) => data.label === part.data.label).length;
      this.mark(part, () => true, part.data.id === "block");
      this.tell(partFacts(part.data, alike));
      list.value = "";
    } else {
      const shown = this.data.faces[face];
      this.mark(part, (number) => number === face);
      this.tell(faceFacts(this.summary, shown));
      list.value = optionOf(shown);
    }
    this.draw();
    return { part: part?.data.id ?? null, face: face === null ? null : this.data.faces[face].id };
  }

  chooseOption(value) {
    this.clearMarks();
    const faces = this.data.faces.filter((face) => optionOf(face) === value);
    const block = this.parts.find(({ data }) => data.id === "block");
    if (!faces.length || !block) return this.choose(null);
    const numbers = new Set(faces.map((face) => this.data.faces.indexOf(face)));
    this.mark(block, (number) => numbers.has(number));
    const title = faces[0].feature ? words(faces[0].feature) : faces[0].title;
    this.tell(faceFacts(this.summary, { ...faces[0], title }));
    return this.draw();
  }

  tell(children) {
    this.facts.replaceChildren(...children);
  }

  mark(part, wanted, faint = false) {
    const geometry = piece(part.mesh, wanted);
    this.markMaterials.forEach((material, i) => {
      if (faint && i === 0) return;
      const mesh = new THREE.Mesh(geometry, material);
      mesh.matrixAutoUpdate = false;
      mesh.renderOrder = 1000 + i;
      mesh.userData.part = part;
      this.marks.add(mesh);
    });
    this.placeMarks();
  }

  placeMarks() {
    for (const mesh of this.marks.children) {
      const { part } = mesh.userData;
      mesh.matrix.makeTranslation(part.group.position).multiply(part.standing.matrix);
    }
  }

  clearMarks() {
    for (const mesh of this.marks.children) mesh.geometry.dispose();
    this.marks.clear();
  }

  // A block under load

  hideForField() {
    const block = this.parts.find(({ data }) => data.id === "block");
    if (!this.field || !block) return;
    this.field.mesh.visible = this.field.on && block.group.visible;
    block.surface.visible = !this.field.on;
    block.lines.material = this.field.on ? this.faintMaterial : this.lineMaterial;
    showCaps(this.section, this.parts);
  }

  // For tests, and for who looks from outside

  project(x, y, z) {
    aim(this.camera, this.view, this.aspect, this.reach);
    const { left, top, width, height } = this.canvas.getBoundingClientRect();
    const at = new THREE.Vector3(x, y, z).project(this.camera);
    return { x: left + ((at.x + 1) / 2) * width, y: top + ((1 - at.y) / 2) * height };
  }
}

// Features are chosen as a whole, outside faces each for itself.
function optionOf(face) {
  return face.feature ?? face.id.split(".")[0];
}
