// The show table: opens to the chosen show, with signal or without.

import * as basket from './basket.js';
import * as clock from './clock.js';
import * as counts from './counts.js';
import { button, h, screen, shownNow } from './dom.js';
import { onChange, showEntries } from './entries.js';
import * as guard from './guard.js';
import * as money from './money.js';
import * as others from './others.js';
import { chooseShow, fetchShow, pair, pairingAsked, unlock } from './pairing.js';
import { priceByHand, showTable } from './sell.js';
import { listen, send, statusNow } from './sending.js';
import * as store from './store.js';
import { count, load as loadWords, t } from './words.js';

/** The bar stays in sight: what is not told, and whether there is signal. */
async function drawBar() {
  const { waiting, refused, conflict } = await store.counts();
  const look = refused + conflict;
  const status = guard.tokenNow() ? (navigator.onLine ? statusNow() : 'no-signal') : 'locked';
  document.getElementById('bar').replaceChildren(
    h('button', { type: 'button', class: 'not-sent' + (look ? ' look' : waiting ? ' some' : ''), onclick: toEntries },
      count('not-sent', waiting), look ? ' · ' + count('to-see', look) : ''),
    h('span', { class: 'status' }, t('status.' + status)));
}

const toEntries = () => guard.tokenNow() && showEntries(home);

async function home() {
  if (!(await store.kept('show'))) {
    await chooseShow(home);
    return;
  }
  money.use(await store.kept('show'));
  await basket.load();
  await showTable(menu);
  send();
  refresh();
}

/** Takes up what changed at home, if nothing waits and no sale is in hand. */
async function refresh() {
  const at = shownNow();
  const { waiting } = await store.counts();
  if (!waiting && navigator.onLine && !basket.rowsInHand().length) {
    const before = JSON.stringify(basket.sheetNow());
    const fault = await fetchShow(basket.sheetNow().id);
    if (!fault && at === shownNow()) {
      await basket.takeSheet();
      if (JSON.stringify(basket.sheetNow()) !== before) {
        await showTable(menu, at);
      }
    }
  }
}

const MENU = () => [
  ['loss.broken', () => others.loss('broken', home)],
  ['loss.sampled', () => others.loss('sampled', home)],
  ['loss.given', () => others.loss('given', home)],
  ['price-by-hand', () => priceByHand(home)],
  ['lead', () => others.lead(home)],
  ['transfer', () => others.transfer(home)],
  ['drawer', () => counts.drawer(home)],
  ['pack-out', () => counts.packOut(home)],
  ['count-home', () => counts.countHome(home)],
  ['entries', toEntries],
  ['choose-show', () => chooseShow(home, home)],
  ['lock', lock],
];

function menu() {
  screen(
    h('h1', {}, t('other-things')),
    h('ul', { class: 'choices' }, MENU().map(([key, act]) => h('li', {}, button(t(key), act)))),
    h('p', { class: 'acts' }, button(t('back'), home, 'quiet')));
}

function lock() {
  guard.lock();
  drawBar();
  start();
}

async function start() {
  await drawBar();
  if (pairingAsked()) {
    pair(begun);
  } else if (guard.tokenNow()) {
    await home();
  } else if (guard.possible() && (await store.kept('guard'))) {
    await unlock(begun);
  } else {
    pair(begun);
  }
}

async function begun() {
  await drawBar();
  await home();
}

await loadWords();
await clock.load();
onChange(drawBar);
listen();
addEventListener('offline', drawBar);
addEventListener('online', drawBar);
addEventListener('hashchange', () => pairingAsked() && start());
if ('serviceWorker' in navigator) {
  // a phone that does not trust the certificate gets none; the table works while the page stays open
  navigator.serviceWorker.register('/table/sw.js').catch(() => {});
}
await start();
