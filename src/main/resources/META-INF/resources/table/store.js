// What the phone keeps: the show it serves, and every entry until it is told and after. IndexedDB through
// the small wrapper idb. Entries are written strictly, so that they are on the flash before the screen
// says so and survive an empty battery.

import { openDB } from '/webjars/idb/build/index.js';

const opened = openDB('barreltally-table', 1, {
  upgrade(db) {
    db.createObjectStore('kept');
    const entries = db.createObjectStore('entries', { keyPath: 'id' });
    entries.createIndex('state', 'state');
  },
});

const STRICT = { durability: 'strict' };

export const kept = async (key) => (await opened).get('kept', key);

export const keep = async (key, value) => (await opened).put('kept', value, key);

export const forget = async (key) => (await opened).delete('kept', key);

export async function add(entry) {
  const change = (await opened).transaction('entries', 'readwrite', STRICT);
  await Promise.all([change.store.add(entry), change.done]);
}

/** Changes entries in one transaction; each is read anew, so nothing is overwritten unseen. */
export async function change(ids, how) {
  const all = (await opened).transaction('entries', 'readwrite', STRICT);
  for (const id of ids) {
    const entry = await all.store.get(id);
    if (entry) {
      how(entry);
      await all.store.put(entry);
    }
  }
  await all.done;
}

export const entry = async (id) => (await opened).get('entries', id);

/** By their ids, which sort by the time they were made. */
export const entries = async () => (await opened).getAll('entries');

export const waiting = async () => (await opened).getAllFromIndex('entries', 'state', 'waiting');

/** How many are not in the book: still waiting, or said no to. */
export async function counts() {
  const db = await opened;
  const of = (state) => db.countFromIndex('entries', 'state', state);
  const [wait, refused, conflict] = await Promise.all([of('waiting'), of('refused'), of('conflict')]);
  return { waiting: wait, refused, conflict };
}

/** Asks the browser not to clear what is kept when space runs short. */
export const lasting = () => navigator.storage?.persist?.().catch(() => false);
