// The sale in hand: jars by row of the sheet, with prices and deals reckoned as the program does.

import { reckon } from './deals.js';
import { coinsOf, moneyOf } from './money.js';
import { keep, kept } from './store.js';

let sheet = null;
let counts = {};
let prices = {};
let reason = null;
let lots = {};

export const keyOf = (row) => row.container + ' ' + (row.grade ?? '');

export const sheetNow = () => sheet;

/** Takes the show up, with the sale that was in hand when the page ended. */
export async function load() {
  sheet = await kept('show');
  const held = (await kept('basket')) ?? {};
  const own = held.show === sheet.id;
  counts = own ? held.counts : {};
  prices = own ? held.prices : {};
  reason = own ? held.reason : null;
  lots = (await kept('lots ' + sheet.id)) ?? {};
}

/** Takes newer figures of the same show; what is in hand stays. */
export async function takeSheet() {
  sheet = await kept('show');
}

const save = () => keep('basket', { show: sheet.id, counts, prices, reason });

export const countOf = (row) => counts[keyOf(row)] ?? 0;

export async function add(row, jars) {
  counts[keyOf(row)] = Math.max(0, Math.min(999, countOf(row) + jars));
  await save();
}

export async function clear() {
  counts = {};
  prices = {};
  reason = null;
  await save();
}

export const rowsInHand = () => sheet.rows.filter((row) => countOf(row) > 0);

export const priceGiven = (row) => prices[keyOf(row)] ?? null;

/** A price by hand, and why; null gives the list's price back. */
export async function givePrice(row, coins, why) {
  if (coins === null) {
    delete prices[keyOf(row)];
  } else {
    prices[keyOf(row)] = coins;
  }
  reason = Object.keys(prices).length ? why : null;
  await save();
}

export const reasonGiven = () => reason;

export const hasDeals = () => sheet.deals.length > 0;

/** The lot that is sold from now: the only one there, or the one somebody named. */
export function lotOf(row) {
  return row.lots.length === 1 ? row.lots[0].lot : lots[keyOf(row)]?.lot ?? null;
}

/** Whether two lots are out and nobody said yet which one is being sold. */
export const lotAsked = (row) => row.lots.length > 1 && lots[keyOf(row)] === undefined;

export async function nameLot(row, lot) {
  lots[keyOf(row)] = { lot };
  await keep('lots ' + sheet.id, lots);
}

/** What the jars in hand cost. total is null if one has no price. */
export function due() {
  const lines = rowsInHand().map((row) => ({
    container: row.container,
    grade: row.grade,
    count: countOf(row),
    each: priceGiven(row) ?? coinsOf(row.price),
    agreed: priceGiven(row) !== null,
    taxPercent: row.taxPercent,
  }));
  if (lines.some((line) => line.each === null)) {
    return { total: null, saved: 0, tax: 0, used: [] };
  }
  const deals = sheet.deals.map((deal) => ({ ...deal, coins: coinsOf(deal.price) }));
  return reckon(lines, deals, sheet.priceList?.taxIncluded ?? true);
}

/** The sale as the program is told it, without id and time. */
export function told(paid) {
  const money = Object.fromEntries(
    Object.entries(paid).filter(([, coins]) => coins).map(([how, coins]) => [how, moneyOf(coins)]));
  return {
    lines: rowsInHand().map((row) => ({
      container: row.container,
      ...(lotOf(row) ? { lot: lotOf(row) } : {}),
      ...(row.grade ? { grade: row.grade } : {}),
      count: countOf(row),
      ...(priceGiven(row) === null ? {} : { price: moneyOf(priceGiven(row)) }),
    })),
    deal: hasDeals(),
    paid: money,
    ...(reason ? { reason } : {}),
  };
}
