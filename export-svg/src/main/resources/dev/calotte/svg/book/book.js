// Joins the page: ticks, folded tables, large pictures, and the view with its rows.

const all = (selector, from = document) => [...from.querySelectorAll(selector)];
const made = (tag, text, properties = {}) => Object.assign(document.createElement(tag), { textContent: text }, properties);

// A table laid out as cards is no table for screen readers any more, unless it says so.
function keepRoles(narrow) {
  const roles = { table: 'table', thead: 'rowgroup', tbody: 'rowgroup', tr: 'row', 'thead th': 'columnheader', 'tbody th': 'rowheader', td: 'cell' };
  for (const [selector, role] of Object.entries(roles)) {
    all(`main ${selector}`).forEach((part) => (narrow ? part.setAttribute('role', role) : part.removeAttribute('role')));
  }
}

// Pictures that had to shrink can be seen at full size.
function startSheet(sheet) {
  const button = made('button', 'Larger', { type: 'button', className: 'larger', hidden: true });
  button.setAttribute('aria-expanded', 'false');
  button.addEventListener('click', () => {
    const full = sheet.classList.toggle('full');
    button.textContent = full ? 'Smaller' : 'Larger';
    button.setAttribute('aria-expanded', String(full));
  });
  sheet.after(button);
  const svg = sheet.querySelector('svg');
  const look = () => {
    if (!sheet.classList.contains('full')) button.hidden = !sheet.clientWidth || svg.width.baseVal.value < sheet.clientWidth * 1.15;
  };
  new ResizeObserver(look).observe(sheet);
}

class Finder {
  constructor(figure) {
    this.figure = figure;
    this.scene = readScene(document.getElementById('scene'));
    this.live = figure.querySelector('.live');
    this.live.hidden = false;
    figure.classList.add('turns');
    this.said = figure.querySelector('.said');
    this.details = figure.querySelector('.piece');
    this.view = new View(figure, this.scene);
    this.view.onChoose = (piece) => (piece ? this.piece(piece) : this.letGo());
    this.rows = new Map();
    all('tr[data-about]').forEach((row) => this.rows.set(row.dataset.about, [...(this.rows.get(row.dataset.about) || []), row]));
    this.listen();
  }

  listen() {
    document.addEventListener('click', (e) => this.click(e));
    all('[data-move]', this.figure).forEach((button) => button.addEventListener('click', () => this.view.act(button.dataset.move)));
    all('[data-layer]', this.figure).forEach((box) => box.addEventListener('change', () => {
      this.view.layers[box.dataset.layer.slice(0, -1).toLowerCase()] = box.checked;
      this.view.redraw();
    }));
    const form = this.figure.querySelector('form');
    form.addEventListener('submit', (e) => { e.preventDefault(); this.find(form.querySelector('#find').value.trim()); });
  }

  click(e) {
    const show = e.target.closest('a.show');
    const row = e.target.closest('a.row');
    if (show) {
      e.preventDefault();
      this.about(show.closest('tr').dataset.about);
      this.figure.scrollIntoView({ block: 'start' });
      this.view.canvas.focus({ preventScroll: true });
    } else if (row) {
      e.preventDefault();
      const to = document.getElementById(row.hash.slice(1));
      to.scrollIntoView({ block: 'center' });
      to.querySelector('a.show').focus({ preventScroll: true });
    }
  }

  find(text) {
    const wanted = text.toUpperCase();
    const name = [...this.scene.named.keys()].find((mark) => mark.toUpperCase() === wanted);
    if (name === undefined) this.said.textContent = text ? `There is no piece ${text}.` : 'Type a mark first.';
    else this.about(name);
  }

  // A mark of a piece, or of a kind of many pieces
  about(name) {
    const pieces = this.scene.named.get(name);
    if (pieces.length === 1) return this.piece(pieces[0]);
    const [first] = pieces;
    const same = pieces.every((piece) => piece.about === first.about) && first.about;
    this.view.mark(pieces, [], name);
    this.tell(name, [`${pieces.length} ${first.type}s`, same], this.rowsOf([name]), []);
    return undefined;
  }

  piece(piece) {
    const beside = neighbours(this.scene, piece);
    const kind = piece.kind && piece.kind !== piece.mark ? ` of kind ${piece.kind}` : '';
    this.view.mark([piece], beside, piece.mark);
    this.tell(piece.mark, [`${piece.type}${kind}`, piece.about], this.rowsOf([piece.mark, piece.kind]), beside);
  }

  letGo() {
    this.view.mark([], [], '');
    this.details.hidden = true;
    this.said.textContent = 'Nothing is chosen.';
    this.markRows([]);
  }

  rowsOf(names) {
    return [...new Set(names)].flatMap((name) => this.rows.get(name) || []);
  }

  markRows(rows) {
    all('tr.chosen').forEach((row) => { row.classList.remove('chosen'); row.removeAttribute('aria-current'); });
    rows.forEach((row) => { row.classList.add('chosen'); row.setAttribute('aria-current', 'true'); });
  }

  tell(name, words, rows, beside) {
    this.markRows(rows);
    this.said.textContent = `${name}: ${words.filter(Boolean).join(' · ')}`;
    this.details.replaceChildren(...this.linksTo(rows), ...this.chips(beside));
    this.details.hidden = !this.details.childNodes.length;
  }

  linksTo(rows) {
    if (!rows.length) return [];
    const list = made('ul', '', { className: 'rows' });
    rows.slice(0, 8).forEach((row) => {
      const item = made('li', '');
      const names = [row.closest('.chapter').querySelector('h2'), row.closest('table').caption];
      item.append(made('a', names.filter(Boolean).map((it) => it.textContent).join(': '), { href: `#${row.id}`, className: 'row' }));
      list.append(item);
    });
    return [made('p', 'Where it stands in the lists:'), list];
  }

  chips(beside) {
    if (!beside.length) return [];
    const list = made('ul', '', { className: 'chips' });
    beside.slice(0, 24).forEach((piece) => {
      const item = made('li', '');
      const button = made('button', piece.mark, { type: 'button' });
      button.addEventListener('click', () => { this.piece(piece); this.view.canvas.focus({ preventScroll: true }); });
      item.append(button);
      list.append(item);
    });
    return [made('p', 'Beside it:'), list];
  }
}

all('.ticks').forEach(startTicks);
all('.sheet:not(.instead)').forEach(startSheet);
const narrow = matchMedia('(max-width: 480px)');
narrow.addEventListener('change', () => keepRoles(narrow.matches));
if (narrow.matches) keepRoles(true);
const place = document.getElementById('view');
if (place && place.querySelector('.live')) new Finder(place);
