// The view that turns: pointer, wheel and keys in, pictures out.

const LEAST_TILT = -0.2, MOST_TILT = 1.5, MOST_ZOOM = 16, STEP = Math.PI / 12;
const START = { turn: 0.3, tilt: 0.25, zoom: 1, x: 0, y: 0 };
const clamp = (value, low, high) => Math.min(high, Math.max(low, value));
const shortWay = (angle) => Math.atan2(Math.sin(angle), Math.cos(angle));
const calm = matchMedia('(prefers-reduced-motion: reduce)');

class View {
  constructor(figure, scene) {
    Object.assign(this, { figure, scene, pose: { ...START }, chosen: [], beside: [], caption: '' });
    this.layers = { panel: true, strut: true, hub: true };
    this.canvas = figure.querySelector('canvas');
    this.context = this.canvas.getContext('2d');
    this.fingers = new Map();
    this.onChoose = () => {};
    new ResizeObserver(() => this.redraw()).observe(this.canvas);
    matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => { this.brush = null; this.redraw(); });
    this.listen();
    this.tell();
  }

  listen() {
    const on = (event, act) => this.canvas.addEventListener(event, (e) => act.call(this, e), { passive: false });
    on('pointerdown', this.down);
    on('pointermove', this.move);
    on('pointerup', this.up);
    on('pointercancel', (e) => this.fingers.delete(e.pointerId));
    on('wheel', this.wheel);
    on('keydown', this.key);
  }

  // Drawing, at most once a frame

  redraw() {
    if (!this.waiting) this.waiting = requestAnimationFrame(() => { this.waiting = 0; this.paint(); });
  }

  sized() {
    const { clientWidth: width, clientHeight: height } = this.canvas;
    const ratio = Math.min(devicePixelRatio || 1, 2);
    if (this.canvas.width !== Math.round(width * ratio) || this.canvas.height !== Math.round(height * ratio)) {
      this.canvas.width = Math.round(width * ratio);
      this.canvas.height = Math.round(height * ratio);
    }
    return { width, height, ratio };
  }

  paint() {
    const size = this.sized();
    if (!size.width) return;
    this.brush = this.brush || new Brush(this.context, this.scene, inks(this.figure));
    this.brush.clear(size);
    this.at = project(this.scene, this.pose, size);
    this.order = inOrder(this.scene, this.at, this.layers);
    this.brush.draw(this.order, this.at, { bare: !this.layers.strut, chosen: new Set(this.chosen) });
    const labelled = this.chosen[this.front()];
    this.brush.marks(this.order, this.pose.zoom > 1.5, labelled);
    this.beside.filter((piece) => this.layers[piece.type]).forEach((piece) => this.brush.choose(piece, false, this.isFar(piece)));
    this.chosen.forEach((piece) => this.brush.choose(piece, true, this.isFar(piece)));
    if (labelled) this.brush.label(labelled, this.caption, size);
    this.tell();
  }

  isFar(piece) {
    if (piece.type === 'panel') return facing(piece, this.at) <= 0;
    const [x, y] = piece.middle.map((value, axis) => value - this.scene.middle[axis]);
    return x * Math.cos(this.pose.turn) + y * Math.sin(this.pose.turn) < -0.05 * this.scene.across;
  }

  front() {
    const depths = this.chosen.map((piece) => depthOf(piece, this.at));
    return depths.indexOf(Math.max(...depths));
  }

  tell() {
    const degrees = (rad) => String(Math.round(rad * 1800 / Math.PI) / 10);
    this.figure.dataset.turn = degrees(this.pose.turn);
    this.figure.dataset.tilt = degrees(this.pose.tilt);
    this.figure.dataset.zoom = String(Math.round(this.pose.zoom * 100) / 100);
    this.figure.dataset.chosen = this.caption;
  }

  // Moving

  turnBy(turn, tilt) {
    this.moving = null;
    this.pose.turn += turn;
    this.pose.tilt = clamp(this.pose.tilt + tilt, LEAST_TILT, MOST_TILT);
    this.redraw();
  }

  zoomBy(factor, x = 0, y = 0) {
    const zoom = clamp(this.pose.zoom * factor, 1, MOST_ZOOM);
    const part = zoom / this.pose.zoom;
    Object.assign(this.pose, { zoom, x: zoom === 1 ? 0 : x - (x - this.pose.x) * part, y: zoom === 1 ? 0 : y - (y - this.pose.y) * part });
    this.redraw();
  }

  // Buttons and keys come nearer to the one piece that is chosen, else to the middle.
  aim() {
    if (this.chosen.length !== 1 || !this.brush) return [0, 0];
    const [x, y] = this.brush.centre(this.chosen[0]);
    return [x - this.canvas.clientWidth / 2, y - this.canvas.clientHeight / 2];
  }

  act(move) {
    const acts = {
      left: () => this.turnBy(STEP, 0), right: () => this.turnBy(-STEP, 0),
      up: () => this.turnBy(0, STEP / 2), down: () => this.turnBy(0, -STEP / 2),
      nearer: () => this.zoomBy(1.25, ...this.aim()), away: () => this.zoomBy(0.8, ...this.aim()),
      reset: () => { this.pose = { ...START }; this.redraw(); },
    };
    acts[move]();
  }

  // Turns a piece to the front, the short way round, and to the middle if the view is nearer than at the beginning.
  face(piece) {
    const [x, y, z] = piece.middle.map((value, axis) => value - this.scene.middle[axis]);
    const across = Math.hypot(x, y);
    if (across < this.scene.reach * 0.02) return;
    const up = this.pose.zoom * fit(this.scene, this.pose, this.sized()) * (z * Math.cos(this.pose.tilt) - across * Math.sin(this.pose.tilt));
    this.glide({ turn: shortWay(Math.atan2(y, x) - this.pose.turn), x: -this.pose.x, y: (this.pose.zoom > 1 ? up : 0) - this.pose.y });
  }

  glide(way) {
    const from = { ...this.pose };
    const begun = performance.now();
    const length = calm.matches ? 0 : 350;
    const moving = this.moving = {};
    const step = (now) => {
      if (this.moving !== moving) return;
      const part = length ? clamp((now - begun) / length, 0, 1) : 1;
      const eased = part * part * (3 - 2 * part);
      for (const name of Object.keys(way)) this.pose[name] = from[name] + way[name] * eased;
      if (part < 1) requestAnimationFrame(step);
      this.redraw();
    };
    step(begun);
  }

  // Choosing

  mark(pieces, beside, caption) {
    Object.assign(this, { chosen: pieces, beside, caption });
    this.tell();
    if (pieces.length) {
      const away = ({ middle: [x, y] }) => Math.abs(shortWay(Math.atan2(y - this.scene.middle[1], x - this.scene.middle[0]) - this.pose.turn));
      this.face(pieces.reduce((best, piece) => (away(piece) < away(best) ? piece : best)));
    }
    this.redraw();
  }

  // What lies at a place on the canvas: small things before large ones, unless they are behind them.
  hit(x, y, reach) {
    const found = {};
    for (const piece of this.order || []) {
      if (this.meets(piece, x, y, reach)) found[piece.type] = piece;
    }
    const { hub, strut, panel } = found;
    const depth = (piece) => depthOf(piece, this.at) + 0.25 * this.scene.reach;
    return [hub, strut].find((piece) => piece && (!panel || depth(piece) > depthOf(panel, this.at))) || panel || hub || strut;
  }

  meets(piece, x, y, reach) {
    const { at } = this;
    const [a, b] = piece.places;
    if (piece.type === 'hub') return Math.hypot(at.x[a] - x, at.y[a] - y) < reach;
    if (piece.type === 'strut') {
      const [ux, uy] = [at.x[b] - at.x[a], at.y[b] - at.y[a]];
      const part = clamp(((x - at.x[a]) * ux + (y - at.y[a]) * uy) / (ux * ux + uy * uy || 1), 0, 1);
      return Math.hypot(at.x[a] + part * ux - x, at.y[a] + part * uy - y) < reach * 0.7;
    }
    let inside = false;
    piece.places.forEach((one, i) => {
      const other = piece.places[(i + 1) % piece.places.length];
      const crosses = (at.y[one] > y) !== (at.y[other] > y);
      if (crosses && x < at.x[one] + (at.x[other] - at.x[one]) * (y - at.y[one]) / (at.y[other] - at.y[one])) inside = !inside;
    });
    return inside;
  }

  // Pointer

  down(e) {
    this.canvas.setPointerCapture(e.pointerId);
    this.fingers.set(e.pointerId, { x: e.clientX, y: e.clientY });
    this.way = this.fingers.size > 1 ? Infinity : 0;
  }

  move(e) {
    const finger = this.fingers.get(e.pointerId);
    if (!finger) return;
    const [dx, dy] = [e.clientX - finger.x, e.clientY - finger.y];
    const before = this.spread();
    Object.assign(finger, { x: e.clientX, y: e.clientY });
    this.way += Math.hypot(dx, dy);
    if (this.fingers.size > 1) {
      this.pinch(before, dx, dy);
    } else if (this.way > 4) {
      this.turnBy(-dx * 0.009, dy * 0.005);
    }
  }

  spread() {
    const [one, other] = [...this.fingers.values()];
    return other ? Math.hypot(one.x - other.x, one.y - other.y) : 0;
  }

  pinch(before, dx, dy) {
    Object.assign(this.pose, { x: this.pose.x + dx / 2, y: this.pose.y + dy / 2 });
    const [one, other] = [...this.fingers.values()];
    this.zoomBy(this.spread() / (before || 1), ...this.centred((one.x + other.x) / 2, (one.y + other.y) / 2));
  }

  // A place on the screen as seen from the middle of the canvas.
  centred(x, y) {
    const box = this.canvas.getBoundingClientRect();
    return [x - box.left - box.width / 2, y - box.top - box.height / 2];
  }

  up(e) {
    if (!this.fingers.delete(e.pointerId) || this.way > 6) return;
    const box = this.canvas.getBoundingClientRect();
    this.onChoose(this.hit(e.clientX - box.left, e.clientY - box.top, e.pointerType === 'mouse' ? 8 : 16));
  }

  // A page that is being scrolled must not get stuck here, so the wheel is taken once the view was touched.
  wheel(e) {
    if (document.activeElement !== this.canvas && !e.ctrlKey) return;
    e.preventDefault();
    this.zoomBy(Math.exp(clamp(-e.deltaY, -120, 120) * 0.0025), ...this.centred(e.clientX, e.clientY));
  }

  // Keys

  key(e) {
    if (e.altKey || e.metaKey || (e.ctrlKey && e.key !== 'Tab')) return;
    const moves = {
      ArrowLeft: 'left', ArrowRight: 'right', ArrowUp: 'up', ArrowDown: 'down',
      '+': 'nearer', '=': 'nearer', '-': 'away', '_': 'away', 0: 'reset', Home: 'reset',
    };
    if (moves[e.key]) this.act(moves[e.key]);
    else if (e.key === 'Enter' || e.key === ' ') this.onChoose(this.hit(this.canvas.clientWidth / 2, this.canvas.clientHeight / 2, 20) || this.nearest());
    else if (e.key === 'Escape' && this.chosen.length) this.onChoose(undefined);
    else if (e.key !== 'Tab' || !this.walk(e.shiftKey ? -1 : 1)) return;
    e.preventDefault();
  }

  nearest() {
    return (this.order || [])[this.order.length - 1];
  }

  walk(way) {
    if (!this.chosen.length) return false;
    const all = this.scene.pieces.filter((piece) => this.layers[piece.type]);
    const next = all[all.indexOf(this.chosen[0]) + way];
    if (next) this.onChoose(next);
    return Boolean(next);
  }
}
