// Tells the program what was recorded, once signal is there. Sales go in lists and are merged by their
// ids; everything else carries its id as Idempotency-Key. That an entry is about to be told is written
// down first, so after a sudden end it is told again, which changes nothing.

import * as clock from './clock.js';
import { changed } from './entries.js';
import { mayHoldNames, tokenNow, unseal } from './guard.js';
import { newId } from './ids.js';
import { coinsOf, say } from './money.js';
import * as store from './store.js';
import { t } from './words.js';

const AT_ONCE = 100;
const WAIT_MAX = 60000;
const ANSWER_MAX = 20000;

let running = false;
let wanted = false;
let fails = 0;
let timer = null;
let status = 'idle';

/** idle, sending, no-signal, cut-off or locked. */
export const statusNow = () => status;

/** The program did not answer, or asked to wait. */
class Later extends Error {
  constructor(seconds) {
    super('later');
    this.seconds = seconds;
  }
}

export class CutOff extends Error {}

/** Asks the program; 2xx answers are given, a plain no too, anything else is for later. */
export async function ask(path, options = {}) {
  const end = new AbortController();
  const timeout = setTimeout(() => end.abort(), ANSWER_MAX);
  const sentAt = Date.now();
  let response;
  let body;
  try {
    response = await fetch(path, {
      ...options,
      cache: 'no-store',
      credentials: 'omit',
      signal: end.signal,
      headers: {
        ...(tokenNow() ? { Authorization: 'Bearer ' + tokenNow() } : {}),
        ...(options.body ? { 'Content-Type': 'application/json' } : {}),
        ...options.headers,
      },
    });
    const text = await response.text();
    body = text ? JSON.parse(text) : null;
  } catch {
    throw new Later();
  } finally {
    clearTimeout(timeout);
  }
  await clock.note(response, sentAt);
  if (response.status === 401 || body?.code === 'token-too-narrow') {
    throw new CutOff();
  }
  if (response.status >= 500 || response.status === 429 || response.status === 408) {
    throw new Later(Number(response.headers.get('Retry-After')) || undefined);
  }
  return { ok: response.ok, status: response.status, body };
}

const post = (path, body, key) =>
  ask(path, { method: 'POST', body: JSON.stringify(body), headers: { 'Idempotency-Key': key } });

/** What the program said no with, in its words. */
const refusal = (answer) =>
  [answer.body?.detail, ...(answer.body?.errors ?? []).map((error) => error.message)]
    .filter((text, n, all) => text && all.indexOf(text) === n)
    .join(' ') || 'HTTP ' + answer.status;

/** Writes down that entries are about to be told, and with which time. */
async function begin(ids, told) {
  await store.change(ids, (entry) => {
    entry.tries += 1;
    entry.told ??= told(entry.at);
  });
  return Promise.all(ids.map(store.entry));
}

const sent = (entry) => {
  entry.state = 'sent';
  entry.sentAt = Date.now();
  delete entry.problem;
};

const refused = (problem) => (entry) => {
  entry.state = 'refused';
  entry.problem = problem;
};

async function tellSales(show, sales) {
  const told = await begin(sales.map((sale) => sale.id), clock.toldForSale);
  const answer = await post(
    `/api/shows/${show}/sales`,
    told.map((sale) => ({ ...sale.body, id: sale.id, at: sale.told })),
    newId(),
  );
  if (!answer.ok) {
    if (told.length === 1) {
      await store.change([told[0].id], refused(refusal(answer)));
      return;
    }
    // one of them keeps the others out: each by itself
    for (const sale of told) {
      await tellSales(show, [sale]);
    }
    return;
  }
  const became = new Map(answer.body.items.map((item) => [item.id, item]));
  await store.change(told.map((sale) => sale.id), (entry) => {
    const item = became.get(entry.id);
    sent(entry);
    if (item.result === 'conflict') {
      entry.state = 'conflict';
      entry.problem = t('conflict-words');
      return;
    }
    entry.notes = item.notes.map((note) => note.detail);
    const booked = coinsOf(item.total);
    if (booked !== null && booked !== entry.coins) {
      entry.notes.push(t('booked-otherwise', say(booked)));
    }
  });
}

const PATHS = { loss: 'losses', transfer: 'transfers', 'pack-out': 'pack-out', back: 'back' };

/** Where the book is told that an entry did not happen; null while it may still be on its way. */
async function undoPath(entry) {
  const of = await store.entry(entry.of);
  if (of.state === 'waiting') {
    return null;
  }
  if (of.state !== 'sent') {
    // the book never took it, so there is nothing to take back
    await store.change([entry.id], (kept) => (kept.state = 'settled'));
    return null;
  }
  return of.kind === 'sale'
    ? `/api/sales/${of.id}/reversal`
    : `/api/shows/${of.show}/losses/${of.movement}/reversal`;
}

async function tellOther(entry) {
  if (entry.kind === 'lead' && !mayHoldNames()) {
    return;
  }
  const path = entry.kind === 'undo' ? await undoPath(entry) : `/api/shows/${entry.show}/${PATHS[entry.kind] ?? 'leads'}`;
  if (path === null) {
    return; // what it takes back has not arrived
  }
  let names = null;
  if (entry.kind === 'lead') {
    try {
      names = await unseal(entry.sealed);
    } catch {
      // sealed under a PIN that is gone
      await store.change([entry.id], refused(t('lead-sealed')));
      return;
    }
  }
  const [told] = await begin([entry.id], clock.toldForCount);
  const body =
    entry.kind === 'lead'
      ? { ...names, id: entry.id, at: told.told }
      : entry.kind === 'undo' ? told.body : { ...told.body, at: told.told };
  const answer = await post(path, body, entry.id);
  await store.change([entry.id], (kept) => {
    if (!answer.ok) {
      refused(refusal(answer))(kept);
      return;
    }
    sent(kept);
    kept.movement = answer.body?.id;
    delete kept.sealed; // a name leaves the phone once it is told
  });
}

async function tellAll() {
  const waiting = await store.waiting();
  const shows = [...new Set(waiting.map((entry) => entry.show))];
  for (const show of shows) {
    const sales = waiting.filter((entry) => entry.show === show && entry.kind === 'sale');
    for (let n = 0; n < sales.length; n += AT_ONCE) {
      await tellSales(show, sales.slice(n, n + AT_ONCE));
      await changed();
    }
  }
  for (const entry of waiting.filter((one) => one.kind !== 'sale')) {
    await tellOther(entry);
  }
}

const alone = (act) => (navigator.locks ? navigator.locks.request('barreltally-sending', act) : act());

/** Tells what waits; called at every entry, when signal comes back, and after a while by itself. */
export async function send() {
  clearTimeout(timer);
  if (!tokenNow()) {
    status = 'locked';
    return changed();
  }
  if (running) {
    wanted = true;
    return undefined;
  }
  running = true;
  try {
    do {
      wanted = false;
      if ((await store.waiting()).length) {
        status = 'sending';
        await alone(tellAll);
      }
    } while (wanted);
    fails = 0;
    status = 'idle';
  } catch (fault) {
    if (fault instanceof CutOff) {
      status = 'cut-off';
    } else if (fault instanceof Later) {
      status = 'no-signal';
      fails += 1;
      timer = setTimeout(send, pause(fault.seconds));
    } else {
      throw fault;
    }
  } finally {
    running = false;
  }
  return changed();
}

/** Twice as long after each failure, up to a minute, and not all phones at once. */
function pause(seconds) {
  const wait = seconds ? seconds * 1000 : Math.min(WAIT_MAX, 1000 * 2 ** fails);
  return wait * (0.75 + Math.random() / 2);
}

export function listen() {
  addEventListener('online', send);
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && send());
}
