// The ways into the application: pairing the phone, its PIN, and which show it serves.

import { button, field, form, h, screen, valueOf } from './dom.js';
import * as guard from './guard.js';
import * as money from './money.js';
import { CutOff, ask } from './sending.js';
import { forget, keep, kept, lasting } from './store.js';
import { day, t } from './words.js';

const PIN = /^[0-9]{4,12}$/;

const CODE = /^#pair=([0-9a-z-]{10,60})$/i;

/** Whether the address carries the owner's code. */
export const pairingAsked = () => CODE.test(location.hash);

/** The owner's code, from the address that was scanned; it is taken out of the address at once. */
function scanned() {
  const found = CODE.exec(location.hash);
  if (found) {
    history.replaceState(null, '', location.pathname);
  }
  return found?.[1] ?? '';
}

const told = (answer) => answer.body?.detail ?? t('no-answer');

/** Turns the owner's code into a token, then asks for a PIN to keep it behind. */
export function pair(done) {
  const code = field(t('pairing-code'), { autocapitalize: 'none', spellcheck: 'false', value: scanned() }, t('pairing-code-hint'));
  screen(
    h('h1', {}, t('pair')),
    h('p', {}, t('pair-lead')),
    guard.possible() ? null : h('p', { class: 'caution' }, t('no-https')),
    form(async () => {
      let answer;
      try {
        answer = await ask('/api/table/pairing', {
          method: 'POST',
          body: JSON.stringify({ code: valueOf(code) }),
        });
      } catch {
        return t('no-answer');
      }
      if (!answer.ok) {
        return told(answer);
      }
      await keep('phone', answer.body.name);
      await lasting();
      if (guard.possible()) {
        choosePin(answer.body.token, done);
      } else {
        guard.holdOpen(answer.body.token);
        done();
      }
      return null;
    }, t('pair-it'), code));
}

function choosePin(token, done) {
  const digits = { type: 'password', inputmode: 'numeric', maxlength: 12 };
  const first = field(t('pin-new'), digits, t('pin-hint'));
  const second = field(t('pin-again'), digits);
  screen(
    h('h1', {}, t('pin-choose')),
    h('p', {}, t('pin-lead')),
    form(async () => {
      if (!PIN.test(valueOf(first))) {
        return t('pin-form');
      }
      if (valueOf(first) !== valueOf(second)) {
        return t('pin-differ');
      }
      await guard.close(valueOf(first), token);
      done();
      return null;
    }, t('pin-keep'), first, second));
}

/** Asks for the PIN; a phone whose PIN is forgotten is paired anew and keeps its entries. */
export async function unlock(done) {
  const pin = field(t('pin'), { type: 'password', inputmode: 'numeric', maxlength: 12 });
  screen(
    h('h1', {}, t('unlock')),
    h('p', {}, (await kept('show'))?.name ?? ''),
    form(async () => {
      const left = await guard.open(valueOf(pin));
      if (left === null) {
        done();
        return null;
      }
      if (left <= 0) {
        pair(done);
        return null;
      }
      pin.lastElementChild.value = '';
      return t('pin-wrong', left);
    }, t('open'), pin),
    h('details', {}, h('summary', {}, t('pin-forgotten')),
      h('p', {}, t('pin-forgotten-lead')),
      button(t('pair-anew'), async () => {
        await forget('guard');
        pair(done);
      }, 'quiet')));
  pin.lastElementChild.focus();
}

/** Fetches all that a show's table needs; answers null, or why not. */
export async function fetchShow(id) {
  let answer;
  try {
    answer = await ask('/api/table/shows/' + id);
  } catch (fault) {
    return t(fault instanceof CutOff ? 'cut-off' : 'no-answer');
  }
  if (!answer.ok) {
    return told(answer);
  }
  await keep('show', { ...answer.body, keptAt: Date.now() });
  money.use(answer.body);
  return null;
}

/** Which show this phone serves. */
export async function chooseShow(done, back) {
  let answer;
  let fault = null;
  try {
    answer = await ask('/api/table/shows');
    fault = answer.ok ? null : told(answer);
  } catch (thrown) {
    fault = t(thrown instanceof CutOff ? 'cut-off' : 'no-answer');
  }
  const shows = answer?.ok ? answer.body.items : [];
  const wrong = h('p', { class: 'wrong', role: 'alert' }, fault ?? '');
  screen(
    h('h1', {}, t('choose-show')),
    wrong,
    fault || shows.length ? null : h('p', {}, t('no-shows')),
    h('ul', { class: 'choices' }, shows.map((show) =>
      h('li', {}, button([show.name, h('span', { class: 'small' }, show.town + ' · ' + day(show.starts))], async () => {
        const reason = await fetchShow(show.id);
        if (reason) {
          wrong.textContent = reason;
        } else {
          done();
        }
      })))),
    h('p', { class: 'acts' },
      button(t('ask-again'), () => chooseShow(done, back), 'quiet'),
      back ? button(t('back'), back, 'quiet') : null));
}
