// Counting out, counting home, and the drawer by notes and coins.

import * as basket from './basket.js';
import { button, field, form, h, screen, valueOf } from './dom.js';
import { record } from './entries.js';
import * as money from './money.js';
import { rowWords } from './sell.js';
import { send } from './sending.js';
import { count, t } from './words.js';

const backLine = (back) => h('p', { class: 'acts' }, button(t('back'), back, 'quiet'));

/** A count that was typed: nothing is nothing, words are none. */
const counted = (input) => {
  const text = valueOf(input).trim();
  return text === '' ? 0 : /^[0-9]{1,6}$/.test(text) ? Number(text) : null;
};

const countField = (words, hint) => field(words, { inputmode: 'numeric', class: 'short' }, hint);

export function packOut(back) {
  const sheet = basket.sheetNow();
  const shelves = sheet.room.map((shelf) => [
    shelf,
    countField(rowWords(shelf) + ' · ' + shelf.lot, t('in-room', shelf.onHand)),
  ]);
  const cash = field(t('float'), { inputmode: 'decimal' }, t('optional'));
  screen(
    h('h1', {}, t('pack-out')),
    h('p', {}, t('pack-out-lead')),
    form(async () => {
      const lines = shelves.map(([shelf, input]) => [shelf, counted(input)]);
      if (lines.some(([, n]) => n === null)) {
        return t('count-wrong');
      }
      const out = lines.filter(([, n]) => n > 0);
      const float = valueOf(cash).trim() ? money.typed(valueOf(cash)) : 0;
      if (!out.length || float === null) {
        return t(out.length ? 'no-sum' : 'nothing-counted', valueOf(cash));
      }
      const jars = out.reduce((sum, [, n]) => sum + n, 0);
      await record(sheet.id, 'pack-out', {
        lines: out.map(([shelf, n]) => ({ container: shelf.container, lot: shelf.lot, count: n })),
        ...(float ? { float: money.moneyOf(float) } : {}),
      }, t('pack-out') + ': ' + count('jars', jars));
      send();
      back();
      return null;
    }, t('packed'), shelves.map(([, input]) => input), cash),
    backLine(back));
}

export function countHome(back) {
  const sheet = basket.sheetNow();
  const rows = sheet.rows.flatMap((row) => row.lots.map((lot) => ({
    row,
    lot: lot.lot,
    whole: countField(t('whole')),
    broken: countField(t('broken-home')),
    sampled: countField(t('sampled-home')),
  })));
  const closes = h('input', { type: 'checkbox', id: 'closes', checked: true });
  screen(
    h('h1', {}, t('count-home')),
    h('p', {}, t('count-home-lead')),
    rows.length
      ? form(async () => {
        const lines = rows.map((one) => ({
          container: one.row.container,
          lot: one.lot,
          count: counted(one.whole),
          broken: counted(one.broken),
          sampled: counted(one.sampled),
        }));
        if (lines.some((line) => line.count === null || line.broken === null || line.sampled === null)) {
          return t('count-wrong');
        }
        const jars = lines.reduce((sum, line) => sum + line.count, 0);
        await record(sheet.id, 'back', { lines, closes: closes.checked }, t('count-home') + ': ' + count('jars', jars));
        send();
        back();
        return null;
      }, t('counted'), rows.map((one) => h('fieldset', {},
        h('legend', {}, rowWords(one.row) + ' · ' + one.lot), one.whole, one.broken, one.sampled)),
      h('p', { class: 'check' }, closes, h('label', { for: 'closes' }, t('closes'))))
      : h('p', {}, t('no-lots-out')),
    backLine(back));
}

export function drawer(back) {
  const sheet = basket.sheetNow();
  const inputs = money.notes().map((value) => [value, countField(money.say(money.ofUnits(value)))]);
  const total = h('output', { class: 'total' });
  const sum = () => inputs.reduce((all, [value, input]) => all + money.ofUnits(value) * (counted(input) ?? 0), 0);
  const update = () => (total.textContent = money.say(sum()));
  inputs.forEach(([, input]) => input.addEventListener('input', update));
  update();
  screen(
    h('h1', {}, t('drawer')),
    h('p', {}, t('drawer-lead')),
    form(async () => {
      const pieces = inputs.map(([value, input]) => ({ value, count: counted(input) }));
      if (pieces.some((piece) => piece.count === null)) {
        return t('count-wrong');
      }
      await record(sheet.id, 'back', {
        lines: [],
        drawer: { denominations: pieces.filter((piece) => piece.count > 0) },
        closes: false,
      }, t('drawer'), sum());
      send();
      back();
      return null;
    }, t('counted'), h('div', { class: 'notes' }, inputs.map(([, input]) => input)),
    h('p', {}, t('in-drawer'), ' ', total)),
    backLine(back));
}
