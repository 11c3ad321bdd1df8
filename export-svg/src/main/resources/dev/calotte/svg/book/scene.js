// The scene as the page holds it: places, pieces, and who lies beside whom.

const TYPES = ['', 'hub', 'strut', 'panel'];

function readScene(holder) {
  const data = JSON.parse(holder.textContent);
  const scene = {
    xyz: Float64Array.from(data.xyz),
    pieces: data.pieces.map(([mark, kind, about, ...places], number) => ({
      number, mark, places,
      kind: data.kinds[kind][0],
      colour: data.kinds[kind][1],
      about: data.abouts[about],
      type: TYPES[Math.min(places.length, 3)],
      hand: places.length > 2 ? handOf(data.kinds[kind][0]) : '',
    })),
  };
  measure(scene);
  meet(scene);
  scene.step = meanLength(scene);
  return scene;
}

// Twins share their colour; the letter of their kind tells the left one from the right one.
const handOf = (kind) => (/\d([LR])$/.exec(kind) || [])[1] || '';

// The axis through the middle, and how far the scene reaches from it.
function measure(scene) {
  const { xyz } = scene;
  const low = [Infinity, Infinity, Infinity], high = [-Infinity, -Infinity, -Infinity];
  xyz.forEach((value, i) => {
    low[i % 3] = Math.min(low[i % 3], value);
    high[i % 3] = Math.max(high[i % 3], value);
  });
  scene.middle = low.map((value, i) => (value + high[i]) / 2);
  scene.across = 0;
  scene.reach = 0;
  for (let i = 0; i < xyz.length; i += 3) {
    const across = Math.hypot(xyz[i] - scene.middle[0], xyz[i + 1] - scene.middle[1]);
    scene.across = Math.max(scene.across, across);
    scene.reach = Math.max(scene.reach, Math.hypot(across, xyz[i + 2] - scene.middle[2]));
  }
  scene.across = scene.across || 1;
  scene.high = (high[2] - low[2]) / 2;
  scene.reach = scene.reach || 1;
}

function meet(scene) {
  scene.at = Array.from({ length: scene.xyz.length / 3 }, () => []);
  scene.named = new Map();
  for (const piece of scene.pieces) {
    piece.places.forEach((place) => scene.at[place].push(piece));
    piece.middle = [0, 1, 2].map((axis) =>
      piece.places.reduce((sum, place) => sum + scene.xyz[3 * place + axis], 0) / piece.places.length);
    for (const name of new Set([piece.mark, piece.kind])) {
      if (!scene.named.has(name)) scene.named.set(name, []);
      scene.named.get(name).push(piece);
    }
  }
}

// How long struts are, or so, for what is drawn in proportion to them.
function meanLength({ xyz, pieces, across }) {
  const struts = pieces.filter((piece) => piece.type === 'strut');
  const length = ([one, other]) => Math.hypot(...[0, 1, 2].map((axis) => xyz[3 * one + axis] - xyz[3 * other + axis]));
  return struts.reduce((sum, strut) => sum + length(strut.places), 0) / struts.length || across / 4;
}

// What touches a piece along an edge, or at a hub.
function neighbours(scene, piece) {
  const shared = new Map();
  piece.places.forEach((place) => scene.at[place].forEach((other) => shared.set(other, (shared.get(other) || 0) + 1)));
  shared.delete(piece);
  return [...shared]
    .filter(([other, places]) => other.type === 'hub' || places > 1 || (piece.type === 'hub' && other.type === 'strut'))
    .map(([other]) => other)
    .sort((one, other) => one.number - other.number);
}
