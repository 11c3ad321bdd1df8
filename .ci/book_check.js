#!/usr/bin/env node
/* Use build books as readers do, in Chromium and offline: ticks, the view, its rows, phone and desk, paper.
 * usage: book_check.js [--modules DIR] [--shots DIR] FILE.html...
 * exit 0 when every page holds, 1 when one does not, 2 usage, 3 a tool is missing
 * Needs npm playwright-core below DIR and chromium on PATH. --shots writes NAME.light-390.png, NAME.light-1280.png,
 * NAME.dark-390.png, NAME.dark-1280.png and NAME.pdf, NAME being the folder of the file. */
'use strict';
const fs = require('fs'), path = require('path'), os = require('os');
const { pathToFileURL } = require('url');

const files = [], options = {};
const words = process.argv.slice(2);
for (let i = 0; i < words.length; i++) {
  if (words[i] === '--modules' || words[i] === '--shots') options[words[i].slice(2)] = words[++i];
  else files.push(words[i]);
}
if (!files.length || files.some((f) => f.startsWith('--'))) {
  console.error('usage: book_check.js [--modules DIR] [--shots DIR] FILE.html...');
  process.exit(2);
}
const roots = [options.modules, options.modules && path.join(options.modules, 'node_modules'), ...(process.env.NODE_PATH || '').split(path.delimiter)];
const home = roots.filter(Boolean).map((r) => path.join(r, 'playwright-core')).find((p) => fs.existsSync(p));
const exe = (process.env.PATH || '').split(path.delimiter).map((d) => path.join(d, 'chromium')).find((p) => fs.existsSync(p));
if (!home || !exe) {
  console.error(home ? 'chromium not found' : 'playwright-core not found');
  process.exit(3);
}
const { chromium } = require(home);

function holds(what, so) {
  if (!so) throw new Error(what);
}

// A profile on disk, as a reader has one: ticks must be there after the browser was closed.
async function browse(profile, settings, use) {
  const context = await chromium.launchPersistentContext(profile, { executablePath: exe, args: ['--no-sandbox'], offline: true, ...settings });
  try {
    return await use(context.pages()[0] || (await context.newPage()), context);
  } finally {
    await context.close();
  }
}

async function open(page, url) {
  const wrong = [];
  page.on('console', (said) => { if (['error', 'warning'].includes(said.type())) wrong.push(said.text()); });
  page.on('pageerror', (error) => wrong.push(error.message));
  page.on('request', (request) => { if (request.url().split('#')[0] !== url && !request.url().startsWith('data:')) wrong.push(`asks for ${request.url()}`); });
  await page.goto(url);
  await page.waitForTimeout(200);
  return wrong;
}

const pose = (page) => page.$eval('#view', (view) => ({ ...view.dataset }));
const settle = (page) => page.waitForTimeout(500);

async function changes(page, what, names, act) {
  const before = await pose(page);
  await act();
  await settle(page);
  const after = await pose(page);
  holds(`the view does not answer ${what}`, names.some((name) => before[name] !== after[name]));
}

async function fitsWidth(page, wide) {
  await page.setViewportSize({ width: wide, height: 800 });
  await page.waitForTimeout(100);
  const most = await page.evaluate(() => document.documentElement.scrollWidth);
  holds(`${wide} px wide, and the page scrolls to ${most}`, most <= wide);
  await page.evaluate(() => scrollTo(0, 0));
}

async function smallTargets(page) {
  const small = await page.$$eval('button, main a:not(.skip), nav a, li > label, .layers > label', (parts) => parts
    .filter((part) => part.offsetParent && (part.offsetHeight < 43.5 || part.offsetWidth < 20)).map((part) => part.textContent));
  holds(`too small for a finger: ${small.slice(0, 5).join(', ')}`, small.length === 0);
}

async function ticks(page) {
  const box = page.locator('input[data-tick]').first();
  if (!(await box.count())) return;
  const count = page.locator('.ticks .count').first();
  holds('ticked before anybody ticked', !(await box.isChecked()));
  await box.check();
  holds('the count does not count', (await count.textContent()).startsWith('1 of '));
  await page.reload();
  holds('the tick is lost after a reload', await page.locator('input[data-tick]').first().isChecked());
}

async function clearing(page) {
  const box = page.locator('input[data-tick]').first();
  if (!(await box.count())) return;
  holds('the tick is lost when the browser is closed', await box.isChecked());
  const clear = page.locator('.ticks .clear').first();
  page.once('dialog', (asked) => asked.dismiss());
  await clear.click();
  holds('cleared without leave', await box.isChecked());
  page.once('dialog', (asked) => asked.accept());
  await clear.click();
  holds('not cleared', !(await box.isChecked()));
  await page.reload();
  holds('the tick comes back', !(await page.locator('input[data-tick]').first().isChecked()));
}

async function mouse(page) {
  const canvas = page.locator('#view canvas');
  await canvas.scrollIntoViewIfNeeded();
  const box = await canvas.boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await changes(page, 'a mouse that drags', ['turn'], async () => {
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 60, y, { steps: 4 });
    await page.mouse.up();
  });
  await changes(page, 'the wheel', ['zoom'], () => page.mouse.wheel(0, -240));
  await canvas.focus();
  await changes(page, 'the key 0', ['zoom'], () => page.keyboard.press('0'));
  await changes(page, 'the key ArrowLeft', ['turn'], () => page.keyboard.press('ArrowLeft'));
  await changes(page, 'the key ArrowUp', ['tilt'], () => page.keyboard.press('ArrowUp'));
  await changes(page, 'the key +', ['zoom'], () => page.keyboard.press('+'));
  await changes(page, 'the key −', ['zoom'], () => page.keyboard.press('-'));
  await page.keyboard.press('0');
  await settle(page);
  await changes(page, 'a click on a piece', ['chosen'], () => canvas.click({ position: { x: box.width / 2 + 14, y: box.height * 0.6 } }));
  await changes(page, 'Tab', ['chosen'], () => page.keyboard.press('Tab'));
  await changes(page, 'Escape', ['chosen'], () => page.keyboard.press('Escape'));
  await page.keyboard.press('Tab');
  holds('Tab does not leave the view', !(await canvas.evaluate((it) => it === document.activeElement)));
  await canvas.focus();
  await changes(page, 'Enter', ['chosen'], () => page.keyboard.press('Enter'));
  holds('nothing is said of the piece', (await page.locator('#view .said').textContent()).includes((await pose(page)).chosen));
}

async function rows(page) {
  const show = page.locator('a.show');
  if (!(await show.count())) return;
  const row = page.locator('tr[data-about]').last();
  const about = await row.getAttribute('data-about');
  await show.last().click();
  await settle(page);
  holds(`the row of ${about} does not show it`, (await pose(page)).chosen.length > 0);
  holds(`the row of ${about} is not marked`, await row.evaluate((it) => it.matches('.chosen[aria-current]')));
  await page.locator('#view a.row').last().click();
  await settle(page);
  holds('the way back to the row is lost', await page.evaluate(() => document.activeElement.matches('a.show')));
  const pieces = await page.evaluate(() => JSON.parse(document.getElementById('scene').textContent));
  const piece = pieces.pieces.find(([, kind]) => pieces.kinds[kind][0] === about) || pieces.pieces.find(([mark]) => mark === about);
  await page.locator('#find').fill(piece[0].toLowerCase());
  await page.keyboard.press('Enter');
  await settle(page);
  holds(`${piece[0]} is not found`, (await pose(page)).chosen === piece[0]);
  holds(`${piece[0]} does not mark its row`, await row.evaluate((it) => it.matches('.chosen')));
  await page.locator('#view canvas').focus();
  await page.keyboard.press('Escape');
  holds('the row stays marked', !(await page.locator('tr.chosen').count()));
}

async function finger(page, context) {
  const canvas = page.locator('#view canvas');
  await canvas.scrollIntoViewIfNeeded();
  const box = await canvas.boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const hand = await context.newCDPSession(page);
  const touch = (type, ...points) => hand.send('Input.dispatchTouchEvent', { type, touchPoints: points.map(([px, py], id) => ({ x: px, y: py, id })) });
  await changes(page, 'a finger that drags', ['turn'], async () => {
    await touch('touchStart', [x, y]);
    for (let i = 1; i < 9; i++) await touch('touchMove', [x + 10 * i, y]);
    await touch('touchEnd');
  });
  await changes(page, 'a pinch', ['zoom'], async () => {
    await touch('touchStart', [x - 20, y], [x + 20, y]);
    for (let i = 1; i < 9; i++) await touch('touchMove', [x - 20 - 5 * i, y], [x + 20 + 5 * i, y]);
    await touch('touchEnd');
  });
  await page.locator('#view [data-move=reset]').click();
  await settle(page);
  await canvas.scrollIntoViewIfNeeded();
  const now = await canvas.boundingBox();
  await changes(page, 'a touch', ['chosen'], () => page.touchscreen.tap(now.x + now.width / 2, now.y + now.height * 0.6));
}

// Tables of two columns stay tables on a phone; others fold into cards, without cells that say nothing.
async function tables(page) {
  const shown = await page.$$eval('table', (all) => all.map((table) => ({
    pair: table.classList.contains('pair'),
    table: getComputedStyle(table).display === 'table',
    heading: (table.querySelector('thead') || table).offsetHeight > 1,
    empty: [...table.querySelectorAll('td:empty')].filter((cell) => cell.offsetHeight > 0).length,
  })));
  holds('a table of two columns folds on a phone', shown.filter((it) => it.pair).every((it) => it.table && it.heading));
  holds('a wide table does not fold on a phone', shown.filter((it) => !it.pair).every((it) => !it.table && !it.empty));
}

// At a desk nothing that stands beside a figure is cut off or has to be scrolled for.
async function besides(page) {
  const cut = await page.$$eval('.beside .listed', (all) => all.filter((it) => it.scrollWidth > it.clientWidth + 1)
    .map((it) => `${(it.querySelector('caption') || it).textContent}: ${it.scrollWidth} in ${it.clientWidth}`));
  holds(`does not fit beside its figure: ${cut.join(', ')}`, cut.length === 0);
}

async function desk(page, context, url, pdf) {
  const wrong = await open(page, url);
  await fitsWidth(page, 390);
  await fitsWidth(page, 1280);
  await besides(page);
  await ticks(page);
  if (await page.locator('#view .live').count()) {
    await mouse(page);
    await rows(page);
  }
  await page.pdf({ path: pdf, format: 'A4' });
  const pages = (fs.readFileSync(pdf, 'latin1').match(/\/Type\s*\/Page\b(?!s)/g) || []).length;
  holds(`printed on ${pages} page`, pages > 1);
  holds(wrong.join('; '), wrong.length === 0);
  return pages;
}

async function phone(page, context, url) {
  const wrong = await open(page, url);
  await smallTargets(page);
  await tables(page);
  if (await page.locator('#view .live').count()) await finger(page, context);
  await clearing(page);
  holds(wrong.join('; '), wrong.length === 0);
}

async function withoutScript(page, context, url) {
  await page.goto(url);
  if (await page.locator('#view').count()) holds('without a script there is no picture', await page.locator('#view .instead svg').isVisible());
}

async function shoot(page, file) {
  await page.waitForTimeout(300);
  await page.screenshot({ path: file, fullPage: true });
}

async function check(file) {
  const url = pathToFileURL(fs.realpathSync(file)).href;
  const name = path.basename(path.dirname(fs.realpathSync(file)));
  const tmp = fs.mkdtempSync(path.join(os.tmpdir(), 'book-'));
  const profile = path.join(tmp, 'profile');
  try {
    const pages = await browse(profile, { viewport: { width: 1280, height: 800 } }, (page, context) => desk(page, context, url, path.join(tmp, 'book.pdf')));
    await browse(profile, { viewport: { width: 390, height: 800 }, hasTouch: true, isMobile: true, reducedMotion: 'reduce' }, (page, context) => phone(page, context, url));
    await browse(path.join(tmp, 'bare'), { javaScriptEnabled: false }, (page, context) => withoutScript(page, context, url));
    if (options.shots) {
      fs.mkdirSync(options.shots, { recursive: true });
      fs.copyFileSync(path.join(tmp, 'book.pdf'), path.join(options.shots, `${name}.pdf`));
      for (const [colorScheme, width] of [['light', 390], ['light', 1280], ['dark', 390], ['dark', 1280]]) {
        await browse(path.join(tmp, 'shots'), { colorScheme, viewport: { width, height: 800 } }, async (page) => {
          await page.goto(url);
          await shoot(page, path.join(options.shots, `${name}.${colorScheme}-${width}.png`));
        });
      }
    }
    console.log(`ok ${name}: ${pages} pages`);
    return true;
  } catch (wrong) {
    console.log(`FAIL ${file}: ${wrong.message}`);
    return false;
  } finally {
    fs.rmSync(tmp, { recursive: true, force: true });
  }
}

(async () => {
  let rc = 0;
  for (const file of files) if (!(await check(file))) rc = 1;
  process.exit(rc);
})();
