// What else happens at a table: jars broken, tasted, given, carried to another table; a wish for gift boxes.

import * as basket from './basket.js';
import { button, choice, field, form, h, screen, valueOf } from './dom.js';
import { record } from './entries.js';
import { mayHoldNames } from './guard.js';
import { rowChoice, rowWords } from './sell.js';
import { send } from './sending.js';
import { t } from './words.js';

const COUNT_MAX = 999;

const backLine = (back) => h('p', { class: 'acts' }, button(t('back'), back, 'quiet'));

const whole = (text) => (/^[0-9]{1,3}$/.test(text.trim()) ? Number(text) : 0);

/** The lots of all rows, for those that are out in two lots or more. */
function lotChoice() {
  const lots = basket.sheetNow().rows.flatMap((row) => (row.lots.length > 1 ? row.lots.map((lot) => lot.lot) : []));
  return lots.length ? choice(t('lot'), [['', t('lot-not-read')], ...[...new Set(lots)].map((lot) => [lot, lot])]) : null;
}

function lotSaid(row, chosen) {
  const lot = chosen && valueOf(chosen);
  if (lot && row.lots.some((there) => there.lot === lot)) {
    return lot;
  }
  return row.lots.length === 1 ? row.lots[0].lot : null;
}

/** @param cause broken, sampled or given */
export function loss(cause, back) {
  const which = rowChoice(t('jars-of'));
  const jars = field(t('how-many'), { inputmode: 'numeric', value: '1' });
  const lot = lotChoice();
  const why = field(t('reason'), { maxlength: 200 }, t(cause === 'given' ? 'given-hint' : 'optional'));
  screen(
    h('h1', {}, t('loss.' + cause)),
    cause === 'broken' ? h('p', { class: 'caution' }, t('glass')) : null,
    form(async () => {
      const row = basket.sheetNow().rows[valueOf(which)];
      const n = whole(valueOf(jars));
      if (n < 1 || n > COUNT_MAX) {
        return t('count-wrong');
      }
      if (cause === 'given' && !valueOf(why).trim()) {
        return t('reason-needed');
      }
      const named = lotSaid(row, lot);
      await record(basket.sheetNow().id, 'loss', {
        container: row.container,
        ...(row.grade ? { grade: row.grade } : {}),
        ...(named ? { lot: named } : {}),
        count: n,
        cause,
        ...(valueOf(why).trim() ? { reason: valueOf(why).trim() } : {}),
      }, t('loss.' + cause) + ': ' + n + ' × ' + rowWords(row));
      send();
      back();
      return null;
    }, t('note-it'), which, jars, lot, why),
    backLine(back));
}

export function transfer(back) {
  const sheet = basket.sheetNow();
  const to = sheet.others.length ? choice(t('to-table'), sheet.others.map((other) => [other.id, other.name])) : null;
  const which = rowChoice(t('jars-of'));
  const jars = field(t('how-many'), { inputmode: 'numeric' });
  const lot = lotChoice();
  screen(
    h('h1', {}, t('transfer')),
    to
      ? form(async () => {
        const row = sheet.rows[valueOf(which)];
        const n = whole(valueOf(jars));
        if (n < 1) {
          return t('count-wrong');
        }
        const named = lotSaid(row, lot);
        const other = sheet.others.find((one) => one.id === valueOf(to));
        await record(sheet.id, 'transfer', {
          to: other.id,
          lines: [{ container: row.container, ...(named ? { lot: named } : {}), count: n }],
        }, t('transfer-words', n + ' × ' + rowWords(row), other.name));
        send();
        back();
        return null;
      }, t('note-it'), to, which, jars, lot)
      : h('p', {}, t('no-other-table')),
    backLine(back));
}

/** Somebody would like gift boxes: kept sealed until it is told, then forgotten here. */
export function lead(back) {
  const sheet = basket.sheetNow();
  const name = field(t('lead-name'), { maxlength: 80, autocomplete: 'off' });
  const phone = field(t('lead-phone'), { maxlength: 80, type: 'tel' });
  const wish = field(t('lead-wish'), { maxlength: 300 }, sheet.boxes.map((box) => box.name).join(', '));
  screen(
    h('h1', {}, t('lead')),
    mayHoldNames()
      ? [h('p', {}, t('lead-lead')), form(async () => {
        if (!valueOf(name).trim() || !valueOf(phone).trim()) {
          return t('lead-both');
        }
        await record(sheet.id, 'lead', {
          name: valueOf(name).trim(),
          phone: valueOf(phone).trim(),
          ...(valueOf(wish).trim() ? { wish: valueOf(wish).trim() } : {}),
        }, t('lead'));
        send();
        back();
        return null;
      }, t('note-it'), name, phone, wish)]
      : h('p', { class: 'caution' }, t('lead-no-https')),
    backLine(back));
}
