// The screen of the table: one tap a jar, one tap how it was paid.

import * as basket from './basket.js';
import * as clock from './clock.js';
import { button, choice, field, form, h, pressed, say as announce, screen, shownNow, valueOf } from './dom.js';
import { record, takeBack } from './entries.js';
import * as money from './money.js';
import { send } from './sending.js';
import * as store from './store.js';
import { count, grade, t } from './words.js';

let away = {};
let last = null;

/** What left the table by this phone since the sheet was read, by row and lot. */
async function reckonAway(sheet) {
  away = {};
  for (const entry of await store.entries()) {
    const counted = entry.show !== sheet.id || entry.undone || entry.state === 'taken-back'
      || (entry.sentAt && entry.sentAt < sheet.keptAt);
    if (!counted && ['sale', 'loss', 'transfer'].includes(entry.kind)) {
      for (const line of entry.body.lines ?? [entry.body]) {
        const key = line.container + ' ' + (line.grade ?? '');
        away[key] = (away[key] ?? 0) + line.count;
      }
    }
  }
}

const left = (row) =>
  row.lots.reduce((sum, lot) => sum + lot.onTable, 0) - (away[basket.keyOf(row)] ?? 0) - basket.countOf(row);

export const rowWords = (row) => row.size + (row.grade ? ' · ' + grade(row.grade) : '');

/** @param over the screen it may take the place of, while no finger is on it; without it, any */
export async function showTable(others, over) {
  await reckonAway(basket.sheetNow());
  if (over === undefined || (over === shownNow() && !pressed())) {
    draw(others);
  }
}

function draw(others) {
  const sheet = basket.sheetNow();
  const sizes = [...new Set(sheet.rows.map((row) => row.container))];
  screen(
    h('h1', { class: 'show' }, sheet.name),
    notices(sheet),
    sheet.rows.length
      ? sizes.map((size) => sizeGroup(sheet.rows.filter((row) => row.container === size), others))
      : h('p', { class: 'caution' }, t('no-rows')),
    last ? lastSale(others) : null,
    h('p', { class: 'acts' }, button(t('other-things'), others, 'quiet')),
    till(others));
}

function notices(sheet) {
  const minutes = clock.minutesOff();
  return [
    minutes === null ? null : h('p', { class: 'caution' },
      t(minutes > 0 ? 'clock-ahead' : 'clock-behind', Math.abs(minutes))),
    sheet.priceList ? null : h('p', { class: 'caution' }, t('no-prices')),
  ];
}

function sizeGroup(rows, others) {
  const id = 's' + rows[0].container;
  return h('section', { class: 'size', 'aria-labelledby': id },
    h('h2', { id }, rows[0].size),
    h('div', { class: 'jars' }, rows.map((row) => jar(row, others))));
}

function jar(row, others) {
  const inHand = basket.countOf(row);
  const price = basket.priceGiven(row) ?? money.coinsOf(row.price);
  const add = async (jars) => {
    if (jars > 0 && basket.lotAsked(row)) {
      askLot(row, () => tap(row, jars, others), others);
      return;
    }
    await tap(row, jars, others);
  };
  return h('div', { class: 'jar ' + (row.grade ?? 'any') },
    h('button', { type: 'button', class: 'add', onclick: () => add(1) },
      h('span', { class: 'grade' }, grade(row.grade)),
      h('span', { class: 'price' }, price === null ? t('no-price') : money.say(price)),
      row.lots.length ? h('span', { class: 'left' }, t('left', left(row))) : null,
      inHand ? h('span', { class: 'in-hand' }, '× ' + inHand) : null),
    inHand
      ? h('button', { type: 'button', class: 'less quiet', 'aria-label': t('one-less', rowWords(row)), onclick: () => add(-1) }, '−')
      : null,
    row.lots.length > 1 && !basket.lotAsked(row)
      ? h('button', { type: 'button', class: 'lot quiet', onclick: () => askLot(row, () => draw(others), others) },
        basket.lotOf(row) ? t('lot-now', basket.lotOf(row)) : t('lot-unknown'))
      : null);
}

async function tap(row, jars, others) {
  const kept = basket.add(row, jars);
  last = null;
  draw(others);
  announce(rowWords(row) + ': ' + basket.countOf(row));
  await kept;
}

/** Two lots of one item are out: which one is being sold from now? */
function askLot(row, done, others) {
  const take = (lot) => async () => {
    await basket.nameLot(row, lot);
    await done();
    draw(others);
  };
  screen(
    h('h1', {}, t('which-lot')),
    h('p', {}, rowWords(row)),
    h('ul', { class: 'choices' },
      row.lots.map((lot) => h('li', {}, button(lot.lot, take(lot.lot)))),
      h('li', {}, button(t('lot-not-read'), take(null), 'quiet'))));
}

function till(others) {
  const jars = basket.rowsInHand().reduce((sum, row) => sum + basket.countOf(row), 0);
  if (!jars) {
    return null;
  }
  const due = basket.due();
  const total = due.total;
  return h('div', { class: 'till' },
    h('p', { class: 'total' },
      h('span', {}, count('jars', jars)),
      h('strong', {}, total === null ? t('no-price') : money.say(total))),
    due.saved || due.tax
      ? h('p', { class: 'small' },
        due.saved ? t('deals-saved', money.say(due.saved)) : '',
        due.saved && due.tax ? ' · ' : '',
        due.tax ? t('tax-in-it', money.say(due.tax)) : '')
      : null,
    h('div', { class: 'pay' },
      button(t('cash'), () => (total === null ? split(others) : cash(total, others))),
      button(t('card'), () => (total === null ? split(others) : sold({ card: total }, others))),
      button(t('owing'), () => (total === null ? split(others) : sold({ owing: total }, others))),
      button(t('clear'), async () => {
        await basket.clear();
        draw(others);
      }, 'quiet')));
}

/** What was handed over; the change is said at once. */
function cash(total, others) {
  screen(
    h('h1', {}, t('handed-over')),
    h('p', { class: 'total' }, h('span', {}, t('to-pay')), h('strong', {}, money.say(total))),
    h('div', { class: 'sums' },
      button(t('exactly'), () => sold({ cash: total }, others)),
      money.handedOver(total).map((sum) =>
        button([money.say(sum), h('span', { class: 'small' }, t('change-of', money.say(sum - total)))], () =>
          sold({ cash: sum }, others)))),
    h('p', { class: 'acts' },
      button(t('another-sum'), () => split(others), 'quiet'),
      button(t('back'), () => draw(others), 'quiet')));
}

/** Any sums, or parts of each. */
function split(others) {
  const total = basket.due().total;
  const inputs = ['cash', 'card', 'owing'].map((how) => [how, field(t(how), { inputmode: 'decimal' })]);
  screen(
    h('h1', {}, t('another-sum')),
    total === null ? null : h('p', {}, t('to-pay'), ' ', h('strong', {}, money.say(total))),
    form(async () => {
      const paid = {};
      for (const [how, input] of inputs) {
        const text = valueOf(input);
        paid[how] = text.trim() ? money.typed(text) : 0;
        if (paid[how] === null) {
          return t('no-sum', text);
        }
      }
      const sum = paid.cash + paid.card + paid.owing;
      if (total !== null && sum < total) {
        return t('too-little', money.say(total - sum));
      }
      if (total !== null && sum - paid.cash > total) {
        return t('too-much');
      }
      await sold(paid, others);
      return null;
    }, t('sold'), inputs.map(([, input]) => input)),
    h('p', { class: 'acts' }, button(t('back'), () => draw(others), 'quiet')));
}

let selling = false;

/** A second tap before the screen changed is the same sale. */
async function sold(paid, others) {
  if (selling || !basket.rowsInHand().length) {
    return;
  }
  selling = true;
  try {
    await recordSale(paid, others);
  } finally {
    selling = false;
  }
}

async function recordSale(paid, others) {
  const sheet = basket.sheetNow();
  const total = basket.due().total;
  const words = basket.rowsInHand().map((row) => basket.countOf(row) + ' × ' + rowWords(row)).join(', ');
  const sum = (paid.cash ?? 0) + (paid.card ?? 0) + (paid.owing ?? 0);
  const entry = await record(sheet.id, 'sale', basket.told(paid), words, total ?? sum);
  await basket.clear();
  last = { entry, change: total === null ? 0 : sum - total };
  await showTable(others);
  announce(last.change ? t('change', money.say(last.change)) : t('saved'));
  send();
}

function lastSale(others) {
  return h('section', { class: 'last', 'aria-label': t('last') },
    last.change
      ? h('p', { class: 'change' }, t('change-due'), ' ', h('strong', {}, money.say(last.change)))
      : null,
    h('p', {}, t('saved'), ' ', last.entry.words, ' · ', money.say(last.entry.coins)),
    button(t('take-back-last'), async () => {
      const { entry } = last ?? {};
      if (!entry) {
        return;
      }
      last = null;
      await takeBack(entry.id);
      await showTable(others);
      announce(t('taken-back'));
      send();
    }, 'quiet'));
}

/** Prices by hand for the jars in hand. */
export function priceByHand(back) {
  const rows = basket.rowsInHand();
  const inputs = rows.map((row) => [row, field(rowWords(row), {
    inputmode: 'decimal',
    value: basket.priceGiven(row) === null ? '' : money.plainOf(basket.priceGiven(row)),
  }, row.price ? t('list-price', money.say(money.coinsOf(row.price))) : t('no-price'))]);
  const why = field(t('reason'), { maxlength: 200, value: basket.reasonGiven() ?? '' }, t('reason-hint'));
  screen(
    h('h1', {}, t('price-by-hand')),
    rows.length
      ? form(async () => {
        const prices = inputs.map(([row, input]) => [row, valueOf(input).trim() ? money.typed(valueOf(input)) : undefined]);
        if (prices.some(([, coins]) => coins === null)) {
          return t('no-sum', '');
        }
        if (prices.some(([, coins]) => coins !== undefined) && !valueOf(why).trim()) {
          return t('reason-needed');
        }
        for (const [row, coins] of prices) {
          await basket.givePrice(row, coins ?? null, valueOf(why).trim());
        }
        back();
        return null;
      }, t('take-prices'), inputs.map(([, input]) => input), why)
      : h('p', {}, t('jars-first')),
    h('p', { class: 'acts' }, button(t('back'), back, 'quiet')));
}

/** A choice among the rows of the sheet, for what is not a sale. */
export const rowChoice = (words) =>
  choice(words, basket.sheetNow().rows.map((row, n) => [n, rowWords(row)]));
