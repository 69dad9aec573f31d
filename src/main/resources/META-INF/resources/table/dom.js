// Small ways to make elements; text always goes in as text.

export function h(tag, attributes, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes ?? {})) {
    if (name.startsWith('on')) {
      element.addEventListener(name.slice(2), value);
    } else if (value === true) {
      element.setAttribute(name, '');
    } else if (value !== false && value !== null && value !== undefined) {
      element.setAttribute(name, value);
    }
  }
  element.append(...children.flat(Infinity).filter((child) => child !== null && child !== undefined && child !== false));
  return element;
}

export const button = (words, act, kind = '') => h('button', { type: 'button', class: kind, onclick: act }, words);

let fields = 0;

/** A labelled field; its input is the last child. */
export function field(words, attributes, hint) {
  const id = 'f' + ++fields;
  return h('p', { class: 'field' },
    h('label', { for: id }, words),
    hint ? h('span', { class: 'hint', id: id + 'h' }, hint) : null,
    h('input', { id, 'aria-describedby': hint ? id + 'h' : null, autocomplete: 'off', ...attributes }));
}

export const valueOf = (labelled) => labelled.lastElementChild.value;

export function choice(words, options, attributes) {
  const id = 'f' + ++fields;
  return h('p', { class: 'field' },
    h('label', { for: id }, words),
    h('select', { id, ...attributes }, options.map(([value, text]) => h('option', { value }, text))));
}

let shown = 0;

/** Grows with every screen that is shown: what waited for an answer sees whether somebody went on meanwhile. */
export const shownNow = () => shown;

/** Shows a screen; its heading says where one is, and reading begins there. */
export function screen(...children) {
  shown += 1;
  const main = document.getElementById('screen');
  main.replaceChildren(...children.flat(Infinity).filter(Boolean));
  window.scrollTo(0, 0);
}

let down = false;
addEventListener('pointerdown', () => (down = true), true);
for (const over of ['pointerup', 'pointercancel']) {
  addEventListener(over, () => setTimeout(() => (down = false)), true);
}

/** Whether a finger is on the screen: what is drawn anew under it would swallow the tap. */
export const pressed = () => down;

export const say = (words) => (document.getElementById('said').textContent = words);

/** A form that is told by its button; what is wrong stands at its top. */
export function form(act, words, ...children) {
  const wrong = h('p', { class: 'wrong', role: 'alert' });
  const submit = h('button', { type: 'submit' }, words);
  return h('form', {
    novalidate: true,
    onsubmit: async (event) => {
      event.preventDefault();
      submit.disabled = true;
      try {
        const fault = await act();
        wrong.textContent = fault ?? '';
      } finally {
        submit.disabled = false;
      }
    },
  }, wrong, children, h('p', { class: 'acts' }, submit));
}
