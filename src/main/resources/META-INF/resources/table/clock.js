// How far the phone's clock is from the program's, by the Date header of its answers (RFC 9110, 6.6.1).

import { keep, kept } from './store.js';

const TOLD_FROM = 2 * 60 * 1000;

/** The program takes a clock up to twelve hours ahead; beyond this the phone corrects itself. */
const CORRECTED_FROM = 11 * 3600 * 1000;

let ahead = 0;

export const load = async () => (ahead = (await kept('ahead')) ?? 0);

/** Notes an answer that came at once, so that the way hardly counts. */
export async function note(response, sentAt) {
  const header = response.headers.get('Date');
  const took = Date.now() - sentAt;
  if (header && took < 10000) {
    ahead = Math.round(sentAt + took / 2 - Date.parse(header));
    await keep('ahead', ahead);
  }
}

/** Minutes the clock is ahead, below zero if it is behind; null if it is near enough. */
export const minutesOff = () => (Math.abs(ahead) < TOLD_FROM ? null : Math.round(ahead / 60000));

/** The time an entry is told with; only a clock that is far ahead is corrected. */
export const toldForSale = (at) => (ahead > CORRECTED_FROM ? corrected(at) : at);

/** Counts and transfers may not lie ahead at all. */
export const toldForCount = (at) => (ahead > 0 ? corrected(at) : at);

const corrected = (at) => new Date(Date.parse(at) - ahead - 2000).toISOString();
