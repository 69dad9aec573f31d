// The phone's token at rest, behind a PIN: PBKDF2 with HMAC-SHA-256 (RFC 8018) makes the key, AES-GCM
// seals. 600,000 rounds is what OWASP's Password Storage Cheat Sheet names for it (2023, from memory).
// A PIN of six digits has a million values: it stops somebody who picks the phone up, not somebody who
// copies its storage and tries them all. Against that helps cutting the phone off.

import { forget, keep, kept } from './store.js';

const ROUNDS = 600000;
const WRONG_MAX = 10;

let key = null;
let token = null;

/** Browsers give no cryptography to pages without HTTPS. */
export const possible = () => Boolean(globalThis.crypto?.subtle);

export const tokenNow = () => token;

export const mayHoldNames = () => key !== null;

async function derive(pin, salt, rounds) {
  const base = await crypto.subtle.importKey('raw', new TextEncoder().encode(pin), 'PBKDF2', false, ['deriveKey']);
  return crypto.subtle.deriveKey(
    { name: 'PBKDF2', hash: 'SHA-256', salt, iterations: rounds },
    base,
    { name: 'AES-GCM', length: 256 },
    false,
    ['encrypt', 'decrypt'],
  );
}

export async function seal(value) {
  const iv = crypto.getRandomValues(new Uint8Array(12));
  const text = new TextEncoder().encode(JSON.stringify(value));
  return { iv, data: new Uint8Array(await crypto.subtle.encrypt({ name: 'AES-GCM', iv }, key, text)) };
}

export async function unseal(sealed) {
  const text = await crypto.subtle.decrypt({ name: 'AES-GCM', iv: sealed.iv }, key, sealed.data);
  return JSON.parse(new TextDecoder().decode(text));
}

/** Keeps a new token behind a PIN. */
export async function close(pin, newToken) {
  const salt = crypto.getRandomValues(new Uint8Array(16));
  key = await derive(pin, salt, ROUNDS);
  token = newToken;
  await keep('guard', { salt, rounds: ROUNDS, wrong: 0, sealed: await seal(newToken) });
}

/** Without HTTPS: the token lives as long as the page. */
export function holdOpen(newToken) {
  token = newToken;
}

/** Opens with a PIN. Answers how many tries are left, or null if it opened. */
export async function open(pin) {
  const guard = await kept('guard');
  const tried = await derive(pin, guard.salt, guard.rounds);
  key = tried;
  try {
    token = await unseal(guard.sealed);
  } catch {
    key = null;
    guard.wrong += 1;
    if (guard.wrong >= WRONG_MAX) {
      await forget('guard');
    } else {
      await keep('guard', guard);
    }
    return WRONG_MAX - guard.wrong;
  }
  if (guard.wrong) {
    await keep('guard', { ...guard, wrong: 0 });
  }
  return null;
}

export function lock() {
  key = null;
  token = null;
}
