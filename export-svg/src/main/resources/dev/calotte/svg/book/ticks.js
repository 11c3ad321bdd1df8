// Ticks, remembered on this device under the key of the book. A browser may refuse to remember; then they last until it is closed.

const memory = {
  name: (id) => `build-book.${document.body.dataset.key}.${id}`,
  has(id) {
    try { return localStorage.getItem(this.name(id)) !== null; } catch { return false; }
  },
  put(id, ticked) {
    try {
      if (ticked) localStorage.setItem(this.name(id), '1'); else localStorage.removeItem(this.name(id));
    } catch { /* refused */ }
  },
};

function startTicks(list) {
  const boxes = [...list.querySelectorAll('input[data-tick]')];
  const clear = list.querySelector('.clear');
  const count = () => boxes.filter((box) => box.checked).length;
  const tell = () => {
    list.querySelector('.count').textContent = `${count()} of ${boxes.length} done`;
    clear.hidden = count() === 0;
  };
  boxes.forEach((box) => {
    box.checked = memory.has(box.dataset.tick);
    box.addEventListener('change', () => { memory.put(box.dataset.tick, box.checked); tell(); });
  });
  clear.addEventListener('click', () => {
    const which = list.querySelector('h3').textContent;
    if (!confirm(`Clear ${count() === 1 ? 'the tick' : `all ${count()} ticks`} of “${which}”?`)) return;
    boxes.forEach((box) => { box.checked = false; memory.put(box.dataset.tick, false); });
    tell();
    boxes[0].focus();
  });
  tell();
}
