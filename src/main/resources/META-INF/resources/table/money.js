// Amounts are whole numbers of the currency's least coin; money of the interface is read and written here.

import { language } from './words.js';

let currency = 'USD';
let decimals = 2;

export function use(sheet) {
  currency = sheet.currency;
  decimals = sheet.decimals;
}

export const coinsOf = (money) => (money ? Math.round(money.amount * 10 ** decimals) : null);

export const moneyOf = (coins) => ({ amount: coins / 10 ** decimals, currency });

export const plainOf = (coins) => coins / 10 ** decimals;

export const currencyNow = () => currency;

export function say(coins) {
  return new Intl.NumberFormat(language() === 'fr' ? 'fr-CA' : 'en-US', { style: 'currency', currency })
    .format(coins / 10 ** decimals);
}

/** What somebody typed, with a point or a comma; null if it is no amount from 0 to a million. */
export function typed(text) {
  const plain = text.trim().replace(/[^0-9.,]/g, '').replace(',', '.');
  if (!/^[0-9]{1,7}(\.[0-9]*)?$/.test(plain)) {
    return null;
  }
  const [whole, part = ''] = plain.split('.');
  return part.length > decimals && /[1-9]/.test(part.slice(decimals))
    ? null
    : Number(whole) * 10 ** decimals + Number(part.slice(0, decimals).padEnd(decimals, '0') || 0);
}

/** Amounts a buyer may hand over: exactly, or the next round sums of notes. */
export function handedOver(total) {
  const unit = 10 ** decimals;
  const sums = [5, 10, 20, 50, 100].map((note) => Math.ceil(total / (note * unit)) * note * unit);
  return [...new Set(sums)].filter((sum) => sum > total).sort((a, b) => a - b).slice(0, 4);
}

const NOTES = {
  USD: [100, 50, 20, 10, 5, 2, 1, 0.5, 0.25, 0.1, 0.05, 0.01],
  CAD: [100, 50, 20, 10, 5, 2, 1, 0.25, 0.1, 0.05],
};

/** Notes and coins of the currency, the largest first. */
export const notes = () => NOTES[currency] ?? [500, 200, 100, 50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01];

export const ofUnits = (value) => Math.round(value * 10 ** decimals);
