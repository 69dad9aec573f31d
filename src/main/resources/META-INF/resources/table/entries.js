// Everything recorded at the table: made here, told by sending.js, listed with what became of it.

import { button, h, screen } from './dom.js';
import { newId } from './ids.js';
import { say } from './money.js';
import { mayHoldNames, seal } from './guard.js';
import * as store from './store.js';
import { t, time } from './words.js';

const listeners = [];

/** Called whenever the entries change. */
export const onChange = (listener) => listeners.push(listener);

export const changed = () => Promise.all(listeners.map((listener) => listener()));

/**
 * Records something that happened, now.
 *
 * @param kind sale, loss, transfer, pack-out, back, lead, undo
 * @param body what the program is told, without id and time
 * @param words what the list says of it, without names of people
 */
export async function record(show, kind, body, words, coins = null, of = null) {
  const now = Date.now();
  const entry = {
    id: newId(now),
    at: new Date(now).toISOString(),
    show,
    kind,
    words,
    coins,
    of,
    state: 'waiting',
    tries: 0,
  };
  if (kind === 'lead') {
    if (!mayHoldNames()) {
      throw new Error('names need the PIN');
    }
    entry.sealed = await seal(body);
  } else {
    entry.body = body;
  }
  await store.add(entry);
  await changed();
  return entry;
}

const UNDONE_BY_REVERSAL = ['sale', 'loss'];

/** Whether an entry can be taken back on this phone. */
export const canTakeBack = (entry) =>
  entry.state === 'waiting' && entry.tries === 0 && entry.kind !== 'undo'
  || ['waiting', 'sent'].includes(entry.state) && UNDONE_BY_REVERSAL.includes(entry.kind) && !entry.undone;

/**
 * Takes an entry back: one that was never sent stays here for good; of one that was, or may have been, the
 * program is told that it did not happen.
 */
export async function takeBack(id) {
  let told = false;
  await store.change([id], (entry) => {
    if (!canTakeBack(entry)) {
      return; // taken back already
    }
    if (entry.state === 'waiting' && entry.tries === 0) {
      entry.state = 'taken-back';
    } else {
      entry.undone = true;
      told = true;
    }
  });
  const entry = await store.entry(id);
  if (told) {
    await record(entry.show, 'undo', { reason: t('undo-reason') }, t('entry.undo', entry.words), null, id);
  } else {
    await changed();
  }
  return entry;
}

/** Says again something the program said no to, once what it named was mended. */
export async function again(id) {
  await store.change([id], (entry) => {
    if (entry.state === 'refused') {
      entry.state = 'waiting';
    }
  });
  await changed();
}

/** Somebody has dealt with it by hand; it stays in the list. */
export async function settled(id) {
  await store.change([id], (entry) => {
    if (['refused', 'conflict'].includes(entry.state)) {
      entry.was = entry.state;
      entry.state = 'settled';
    }
  });
  await changed();
}

const LISTED_MOST = 200;

function item(entry, redraw) {
  const problem = entry.problem;
  const act = (how) => async () => {
    await how(entry.id);
    redraw();
  };
  return h('li', { class: 'entry ' + entry.state },
    h('p', { class: 'what' },
      h('strong', {}, entry.words),
      entry.coins === null ? '' : ' ' + say(entry.coins)),
    h('p', {}, time(entry.at), ' · ', t('state.' + entry.state), entry.undone ? ' · ' + t('entry.undone') : ''),
    problem ? h('p', { class: 'wrong' }, problem) : null,
    (entry.notes ?? []).map((note) => h('p', { class: 'note' }, note)),
    h('p', { class: 'acts' },
      canTakeBack(entry) ? button(t('take-back'), act(takeBack), 'quiet') : null,
      entry.state === 'refused' ? button(t('send-again'), act(again), 'quiet') : null,
      ['refused', 'conflict'].includes(entry.state) ? button(t('settled-by-hand'), act(settled), 'quiet') : null));
}

/** The list of what was recorded, what needs somebody first. */
export async function showEntries(back) {
  const redraw = () => showEntries(back);
  const all = (await store.entries()).reverse();
  const first = all.filter((entry) => ['refused', 'conflict'].includes(entry.state));
  const rest = all.filter((entry) => !first.includes(entry)).slice(0, LISTED_MOST);
  screen(
    h('h1', {}, t('entries')),
    first.length ? h('h2', {}, t('to-look-at')) : null,
    first.length ? h('ul', { class: 'entries' }, first.map((entry) => item(entry, redraw))) : null,
    h('h2', {}, t('recorded')),
    rest.length
      ? h('ul', { class: 'entries' }, rest.map((entry) => item(entry, redraw)))
      : h('p', {}, t('nothing-recorded')),
    h('p', { class: 'acts' }, button(t('back'), back)));
}
