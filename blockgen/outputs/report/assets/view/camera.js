// Parallel projection about a point; turned by two angles, so that z stays upright in the picture.

const START = { turn: -122, tilt: 26 };
const DIRECTIONS = {
  angle: START,
  front: { turn: -90, tilt: 0 },
  back: { turn: 90, tilt: 0 },
  motor: { turn: 0, tilt: 0 },
  bearing: { turn: 180, tilt: 0 },
  above: { turn: -90, tilt: 90 },
  below: { turn: -90, tilt: -90 },
};
const MARGIN = 1.08;

function axesOf({ turn, tilt }) {
  const [a, e] = [(turn * Math.PI) / 180, (tilt * Math.PI) / 180];
  return {
    back: new THREE.Vector3(Math.cos(e) * Math.cos(a), Math.cos(e) * Math.sin(a), Math.sin(e)),
    up: new THREE.Vector3(-Math.sin(e) * Math.cos(a), -Math.sin(e) * Math.sin(a), Math.cos(e)),
    right: new THREE.Vector3(-Math.sin(a), Math.cos(a), 0),
  };
}

function cornersOf([x0, y0, z0, x1, y1, z1]) {
  const corners = [];
  for (const x of [x0, x1]) {
    for (const y of [y0, y1]) for (const z of [z0, z1]) corners.push(new THREE.Vector3(x, y, z));
  }
  return corners;
}

// What shows all of some boxes from a direction: the point in the middle, and half the height of the picture in mm.
function fitted(boxes, direction, aspect) {
  const { back, up, right } = axesOf(direction);
  const ends = [right, up, back].map((axis) => {
    const along = boxes.flatMap(cornersOf).map((corner) => corner.dot(axis));
    return [Math.min(...along), Math.max(...along)];
  });
  const [across, high, deep] = ends.map(([low, top]) => top - low);
  const middle = new THREE.Vector3();
  [right, up, back].forEach((axis, i) => middle.addScaledVector(axis, (ends[i][0] + ends[i][1]) / 2));
  return { middle, half: (Math.max(high, across / aspect, 1) / 2) * MARGIN, deep };
}

function aim(camera, view, aspect, reach) {
  const { back, up } = axesOf(view);
  camera.up.copy(up);
  camera.position.copy(view.middle).addScaledVector(back, reach);
  camera.lookAt(view.middle);
  [camera.top, camera.bottom] = [view.half, -view.half];
  [camera.left, camera.right] = [-view.half * aspect, view.half * aspect];
  [camera.near, camera.far] = [0, 2 * reach];
  camera.updateProjectionMatrix();
  camera.updateMatrixWorld();
}

function turned(view, across, upwards) {
  const tilt = Math.max(-90, Math.min(90, view.tilt + upwards));
  return { ...view, turn: view.turn + across, tilt };
}

// The picture moved by pixels; one pixel is 2 half / height mm.
function panned(view, across, down, height) {
  const { up, right } = axesOf(view);
  const scale = (2 * view.half) / height;
  const middle = view.middle.clone().addScaledVector(right, -across * scale).addScaledVector(up, down * scale);
  return { ...view, middle };
}

// Zoomed about a place in the picture, given from its middle in parts of half its height.
function zoomed(view, factor, place = [0, 0]) {
  const half = Math.max(2, Math.min(2000, view.half * factor));
  const { up, right } = axesOf(view);
  const gain = view.half - half;
  const middle = view.middle.clone().addScaledVector(right, place[0] * gain).addScaledVector(up, place[1] * gain);
  return { ...view, middle, half };
}

function between(from, to, share) {
  const mix = (a, b) => a + (b - a) * share;
  const whole = ((((to.turn - from.turn) % 360) + 540) % 360) - 180; // the shorter way round
  return {
    turn: from.turn + whole * share,
    tilt: mix(from.tilt, to.tilt),
    half: mix(from.half, to.half),
    middle: from.middle.clone().lerp(to.middle, share),
  };
}
