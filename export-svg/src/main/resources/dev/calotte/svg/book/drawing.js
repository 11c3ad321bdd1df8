// The scene on a canvas, from the farthest piece to the nearest.

// Okabe and Ito, Color Universal Design, 2008
const COLOURS = ['#E69F00', '#56B4E9', '#009E73', '#F0E442', '#0072B2', '#D55E00', '#CC79A7', '#000000'];
const SHADES = 16;
const HATCH = 9;
const FONT = 'system-ui, sans-serif';

const rgb = (hex) => [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16));
const mixed = (one, other, part) =>
  `rgb(${rgb(one).map((channel, i) => Math.round(channel * part + rgb(other)[i] * (1 - part))).join(',')})`;

// Colours of the page, which follow light and dark.
function inks(element) {
  const style = getComputedStyle(element);
  const [paper, ink, accent] = ['--view-paper', '--view-ink', '--view-accent'].map((name) => style.getPropertyValue(name).trim());
  return {
    paper, ink, accent,
    fills: [paper, ...COLOURS].map((colour) => mixed(colour, paper, colour === paper ? 1 : 0.25)),
    strong: [paper, ...COLOURS].map((colour) => mixed(colour, paper, colour === paper ? 1 : 0.4)),
    shades: Array.from({ length: SHADES + 1 }, (_, i) => mixed(ink, paper, 0.16 + 0.84 * (i / SHADES) ** 1.5)),
  };
}

// Lines that rise on left twins and fall on right ones, as in the drawings.
function hatches(context, ink) {
  return Object.fromEntries([['L', 1], ['R', -1]].map(([hand, rise]) => {
    const tile = document.createElement('canvas');
    tile.width = tile.height = HATCH;
    const pen = tile.getContext('2d');
    pen.strokeStyle = ink;
    pen.lineWidth = 1;
    pen.beginPath();
    for (const off of [-HATCH, 0, HATCH]) {
      pen.moveTo(off - 1, rise > 0 ? HATCH + 1 : -1);
      pen.lineTo(off + HATCH + 1, rise > 0 ? -1 : HATCH + 1);
    }
    pen.stroke();
    return [hand, context.createPattern(tile, 'repeat')];
  }));
}

const byColour = (list, colour) => list[colour ? 1 + (colour - 1) % COLOURS.length : 0];

// Screen places of all places: x to the right, y down, depth towards the reader.
function project(scene, pose, size) {
  const { xyz, middle } = scene;
  const count = xyz.length / 3;
  const at = { x: new Float64Array(count), y: new Float64Array(count), depth: new Float64Array(count) };
  const [cosTurn, sinTurn] = [Math.cos(pose.turn), Math.sin(pose.turn)];
  const [cosTilt, sinTilt] = [Math.cos(pose.tilt), Math.sin(pose.tilt)];
  at.scale = pose.zoom * fit(scene, pose, size);
  for (let i = 0; i < count; i++) {
    const [x, y, z] = [xyz[3 * i] - middle[0], xyz[3 * i + 1] - middle[1], xyz[3 * i + 2] - middle[2]];
    const towards = x * cosTurn + y * sinTurn;
    at.x[i] = size.width / 2 + pose.x + at.scale * (y * cosTurn - x * sinTurn);
    at.y[i] = size.height / 2 + pose.y - at.scale * (z * cosTilt - towards * sinTilt);
    at.depth[i] = towards * cosTilt + z * sinTilt;
  }
  return at;
}

// Pixels a millimetre, so that a dome seen from the side fills the width, and one seen from above still has room.
function fit(scene, pose, size) {
  const high = scene.high * Math.cos(pose.tilt) + scene.across * Math.abs(Math.sin(pose.tilt));
  return Math.min(size.width / (2 * scene.across), size.height / (2 * high)) * 0.92;
}

function depthOf(piece, at) {
  let sum = 0;
  for (const place of piece.places) sum += at.depth[place];
  return sum / piece.places.length;
}

// Above 0 if the outside of a panel is seen.
function facing(piece, at) {
  let twice = 0;
  piece.places.forEach((place, i) => {
    const next = piece.places[(i + 1) % piece.places.length];
    twice += at.x[next] * at.y[place] - at.x[place] * at.y[next];
  });
  return twice / 2;
}

// The radius of the circle inside a triangle as it is seen, or of about that in another panel; below 0 from inside.
function inside(piece, at) {
  const round = piece.places.reduce((sum, place, i) => {
    const next = piece.places[(i + 1) % piece.places.length];
    return sum + Math.hypot(at.x[next] - at.x[place], at.y[next] - at.y[place]);
  }, 0);
  return 2 * facing(piece, at) / (round || 1);
}

// Struts stand before the panels that they carry, and hubs before their struts, though their middles may not.
const BEFORE = { panel: 0, strut: 0.06, hub: 0.09 };

function inOrder(scene, at, layers) {
  const depths = new Float64Array(scene.pieces.length);
  const seen = scene.pieces.filter((piece) => layers[piece.type]);
  seen.forEach((piece) => { depths[piece.number] = depthOf(piece, at) + BEFORE[piece.type] * scene.reach; });
  return seen.sort((one, other) => depths[one.number] - depths[other.number]);
}

class Brush {
  constructor(context, scene, inkSet) {
    Object.assign(this, { context, scene, inks: inkSet, hatches: hatches(context, inkSet.ink) });
  }

  clear(size) {
    this.context.setTransform(size.ratio, 0, 0, size.ratio, 0, 0);
    this.context.clearRect(0, 0, size.width, size.height);
  }

  // Round ends and hubs that nobody sees would cost most of the time of a large dome.
  draw(order, at, { bare, chosen }) {
    this.at = at;
    this.hubRadius = Math.min(8, at.scale * this.scene.step * 0.05);
    this.strutWidth = Math.min(6, Math.max(0.6, at.scale * this.scene.step * 0.03));
    [this.context.lineJoin, this.context.lineCap] = this.strutWidth > 1.5 ? ['round', 'round'] : ['bevel', 'butt'];
    for (const piece of order) this[piece.type](piece, bare, chosen.has(piece));
  }

  shade(piece) {
    const part = (depthOf(piece, this.at) / this.scene.reach + 1) / 2;
    return this.inks.shades[Math.round(Math.min(1, Math.max(0, part)) * SHADES)];
  }

  trace(piece) {
    const { context, at } = this;
    context.beginPath();
    piece.places.forEach((place) => context.lineTo(at.x[place], at.y[place]));
    if (piece.type === 'panel') context.closePath();
  }

  panel(piece, bare, chosen) {
    const { context } = this;
    this.trace(piece);
    context.globalAlpha = facing(piece, this.at) > 0 ? 0.86 : 0.5;
    context.fillStyle = byColour(chosen ? this.inks.strong : this.inks.fills, piece.colour);
    context.fill();
    if (piece.hand && facing(piece, this.at) > 0) {
      context.globalAlpha = 0.28;
      context.fillStyle = this.hatches[piece.hand];
      context.fill();
    }
    context.globalAlpha = 1;
    if (bare) this.line(piece, 1);
  }

  strut(piece) {
    this.trace(piece);
    this.line(piece, this.strutWidth);
  }

  line(piece, width) {
    this.context.lineWidth = width;
    this.context.strokeStyle = this.shade(piece);
    this.context.stroke();
  }

  hub(piece) {
    const { context } = this;
    if (this.hubRadius < 1.2) return;
    this.ring(piece, this.hubRadius);
    context.fillStyle = this.inks.paper;
    context.fill();
    this.line(piece, 1);
  }

  ring(piece, radius) {
    const [place] = piece.places;
    this.context.beginPath();
    this.context.arc(this.at.x[place], this.at.y[place], radius, 0, 2 * Math.PI);
  }

  // Over everything else, so that what is chosen is found at the far side too, where its line is thin.
  choose(piece, chosen, far) {
    const { context } = this;
    if (piece.type === 'hub') this.ring(piece, chosen ? 9 : 5); else this.trace(piece);
    context.strokeStyle = this.inks.accent;
    context.lineWidth = (chosen ? 4 : 2) * (far ? 0.4 : 1) * (piece.type === 'strut' ? 1.5 : 1);
    context.setLineDash(chosen && !far ? [] : [5, 5]);
    context.stroke();
    context.setLineDash([]);
  }

  // The marks of kinds, or once one has come nearer those of pieces, on panels that have room for them.
  marks(order, near, labelled) {
    const { context, at } = this;
    context.textAlign = 'center';
    context.textBaseline = 'middle';
    context.fillStyle = this.inks.ink;
    for (const piece of order) {
      if (piece.type !== 'panel' || piece === labelled) continue;
      const text = near ? piece.mark : piece.kind;
      const height = Math.min(15, 1.15 * inside(piece, at) / Math.hypot(0.3 * text.length, 0.5));
      if (height < 9) continue;
      context.font = `${Math.round(height)}px ${FONT}`;
      context.fillText(text, ...this.centre(piece));
    }
  }

  centre(piece) {
    const mean = (list) => piece.places.reduce((sum, place) => sum + list[place], 0) / piece.places.length;
    return [mean(this.at.x), mean(this.at.y)];
  }

  label(piece, text, size) {
    const { context } = this;
    context.font = `600 15px ${FONT}`;
    context.textAlign = 'center';
    context.textBaseline = 'middle';
    const wide = context.measureText(text).width + 14;
    const [x, y] = this.centre(piece);
    const left = Math.min(Math.max(x - wide / 2, 2), size.width - wide - 2);
    const top = Math.min(Math.max(y - 38, 2), size.height - 28);
    context.fillStyle = this.inks.ink;
    context.fillRect(left, top, wide, 26);
    context.fillStyle = this.inks.paper;
    context.fillText(text, left + wide / 2, top + 14);
  }
}
