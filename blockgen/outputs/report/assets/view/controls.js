// Mouse, touch, keys and the form beneath the picture.

View.prototype.connect = function connect() {
  this.connectPicture();
  this.connectKeys();
  this.connectForm();
  this.connectField();
  this.connectPage();
};

View.prototype.connectPicture = function connectPicture() {
  const { canvas } = this;
  const down = new Map();
  let moved = 0;
  const spread = () => {
    const [a, b] = [...down.values()];
    return { gap: Math.hypot(a.x - b.x, a.y - b.y) || 1, x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  };
  canvas.addEventListener("pointerdown", (event) => {
    if (!down.size) moved = 0;
    down.set(event.pointerId, { x: event.clientX, y: event.clientY });
    canvas.setPointerCapture(event.pointerId);
  });
  canvas.addEventListener("pointermove", (event) => {
    const before = down.get(event.pointerId);
    if (!before) return;
    const [across, along] = [event.clientX - before.x, event.clientY - before.y];
    const pair = down.size === 2 ? spread() : null;
    down.set(event.pointerId, { x: event.clientX, y: event.clientY });
    moved += Math.hypot(across, along);
    if (pair) this.pinch(pair, spread());
    else if (event.shiftKey || event.buttons & 6) this.move(across, along);
    else if (moved > TAP) this.change(turned(this.view, -across * 0.45, along * 0.45));
  });
  const up = (event) => {
    if (!down.delete(event.pointerId)) return;
    if (event.type === "pointerup" && !down.size && moved <= TAP && event.button === 0) {
      this.pick(event.clientX, event.clientY);
    }
  };
  canvas.addEventListener("pointerup", up);
  canvas.addEventListener("pointercancel", up);
  canvas.addEventListener("contextmenu", (event) => event.preventDefault());
  canvas.addEventListener("wheel", (event) => this.wheel(event), { passive: false });
};

// The wheel scrolls the page, until the picture was clicked or Ctrl is held.
View.prototype.wheel = function wheel(event) {
  if (!event.ctrlKey && document.activeElement !== this.canvas) return;
  event.preventDefault();
  const { left, top, width, height } = this.canvas.getBoundingClientRect();
  const place = [(2 * (event.clientX - left) - width) / height, 1 - (2 * (event.clientY - top)) / height];
  const lines = event.deltaMode === 1 ? 30 : 1;
  this.follows = false;
  this.change(zoomed(this.view, Math.exp(Math.max(-300, Math.min(300, event.deltaY * lines)) * 0.0012), place));
};

View.prototype.pinch = function pinch(before, after) {
  this.follows = false;
  const view = zoomed(this.view, before.gap / after.gap);
  this.change(panned(view, after.x - before.x, after.y - before.y, this.canvas.clientHeight));
};

View.prototype.move = function move(across, along) {
  this.follows = false;
  this.change(panned(this.view, across, along, this.canvas.clientHeight));
};

View.prototype.zoom = function zoom(factor) {
  this.follows = false;
  this.change(zoomed(this.view, factor));
};

View.prototype.connectKeys = function connectKeys() {
  const ways = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  this.canvas.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const way = ways[event.key];
    if (way && event.shiftKey) this.move(way[0] * STEP.pan, way[1] * STEP.pan);
    else if (way) this.change(turned(this.view, -way[0] * STEP.turn, way[1] * STEP.turn));
    else if (event.key === "+" || event.key === "=") this.zoom(STEP.zoom);
    else if (event.key === "-") this.zoom(1 / STEP.zoom);
    else if (event.key === "0" || event.key === "Home") this.whole(START);
    else if (event.key === "Enter" || event.key === " ") this.pickMiddle();
    else if (event.key === "Escape") this.choose(null);
    else return;
    event.preventDefault();
  });
};

View.prototype.pickMiddle = function pickMiddle() {
  const { left, top, width, height } = this.canvas.getBoundingClientRect();
  this.pick(left + width / 2, top + height / 2);
};

View.prototype.whole = function whole(direction) {
  this.follows = true;
  this.look(direction);
};

View.prototype.connectForm = function connectForm() {
  const find = (name) => this.figure.querySelector(name);
  for (const button of this.figure.querySelectorAll("[data-look]")) {
    button.addEventListener("click", () => this.whole(DIRECTIONS[button.dataset.look]));
  }
  for (const button of this.figure.querySelectorAll("[data-zoom]")) {
    button.addEventListener("click", () => this.zoom(button.dataset.zoom === "in" ? STEP.zoom : 1 / STEP.zoom));
  }
  const [axis, place, other] = [find(".view-axis"), find(".view-place"), find(".view-other")];
  axis.addEventListener("change", () => this.cut(axis.value, null, other.checked));
  place.addEventListener("input", () => this.cut(axis.value, Number(place.value), other.checked));
  other.addEventListener("change", () => this.cut(axis.value, Number(place.value), other.checked));
  find(".view-apart").addEventListener("input", (event) => {
    this.setApart(Number(event.target.value) / 100);
    find(".view-apart-shown").textContent = `${event.target.value} %`;
    if (this.follows) this.look({ turn: this.view.turn, tilt: this.view.tilt }, false);
    this.draw();
  });
  for (const box of this.figure.querySelectorAll(".view-parts input")) {
    box.addEventListener("change", () => this.show(box.value, box.checked));
  }
  this.fillFeatures(find(".view-features"));
  const form = find(".view-form");
  form.reset(); // a browser may have kept what was there before the page was loaded again
  form.addEventListener("reset", () => setTimeout(() => this.startAgain())); // the form still has its old values here
  form.addEventListener("submit", (event) => event.preventDefault());
};

View.prototype.startAgain = function startAgain() {
  this.setApart(0);
  this.figure.querySelector(".view-apart-shown").textContent = "0 %";
  for (const { data } of this.parts) this.show(data.label, true);
  this.cut("", null, false);
  this.field?.update();
  this.choose(null);
  this.whole(START);
};

// Sets the cut; without a place it starts in the middle of the block.
View.prototype.cut = function cut(axis, place, other) {
  const [slider, shown] = [this.figure.querySelector(".view-place"), this.figure.querySelector(".view-place-shown")];
  slider.disabled = axis === "";
  this.figure.querySelector(".view-other").disabled = axis === "";
  const block = this.data.parts.find(({ id }) => id === "block").box;
  const i = "xyz".indexOf(axis);
  if (axis !== "" && place === null) {
    const boxes = this.boxes(0).map((box) => [box[i], box[i + 3]]);
    slider.min = Math.floor(Math.min(...boxes.map(([low]) => low)));
    slider.max = Math.ceil(Math.max(...boxes.map(([, high]) => high)));
    const shaft = this.summary.dimensions?.shaft_height?.value;
    slider.value = axis === "z" && typeof shaft === "number" ? shaft : (block[i] + block[i + 3]) / 2;
  }
  shown.textContent = axis === "" ? "" : `${axis} = ${slider.value} mm`;
  this.setSection({ axis, place: Number(slider.value), other });
};

View.prototype.fillFeatures = function fillFeatures(list) {
  const order = (this.summary.features ?? []).map(({ id }) => id);
  const rank = (value) => (order.includes(value) ? order.indexOf(value) : order.length);
  const options = [...new Set(this.data.faces.map(optionOf))].filter((value) => value !== "");
  options.sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1));
  list.append(...options.map((value) => element("option", { value }, this.optionWords(value))));
  list.addEventListener("change", () => this.chooseOption(list.value));
};

View.prototype.optionWords = function optionWords(value) {
  const feature = (this.summary.features ?? []).find(({ id }) => id === value);
  const face = this.data.faces.find((found) => optionOf(found) === value);
  return feature ? `${words(value)}: ${feature.call_out || words(feature.kind)}` : face.title;
};

View.prototype.connectPage = function connectPage() {
  new ResizeObserver(() => this.resize()).observe(this.canvas);
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const colours = () => {
    const line = getComputedStyle(this.figure).getPropertyValue("--view-line").trim() || "#20252a";
    for (const material of [this.lineMaterial, this.section.rim]) material.color.set(line);
    if (this.view) this.draw();
  };
  dark.addEventListener("change", colours);
  colours();
  this.canvas.addEventListener("webglcontextlost", (event) => {
    event.preventDefault();
    this.figure.classList.remove("view-live");
    this.say("The graphics card took the 3D view away; it comes back by itself when it can.");
  });
  this.canvas.addEventListener("webglcontextrestored", () => {
    this.figure.classList.add("view-live");
    this.say("");
    this.resize();
    this.draw();
  });
};

document.readyState === "loading" ? document.addEventListener("DOMContentLoaded", start) : start();
