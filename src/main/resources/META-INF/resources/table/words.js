// The words of the application, in the language of the phone. They come with the application, so they are there in flight mode.

let words = {};
let chosen = 'en';

export const language = () => chosen;

export async function load() {
  chosen = (navigator.languages ?? [navigator.language]).some((l, n) => n === 0 && l.toLowerCase().startsWith('fr'))
    ? 'fr'
    : 'en';
  words = await (await fetch(`/table/words/${chosen}.json`)).json();
  document.documentElement.lang = chosen;
  document.title = t('title') + ' – Barreltally';
}

/** The text of a key; {0}, {1} are what stands in it. */
export function t(key, ...values) {
  const text = words[key] ?? key;
  return text.replace(/\{(\d)\}/g, (all, n) => values[n] ?? '');
}

/** A text whose form a number decides. */
export const count = (key, n) => t(key + (n === 1 || (n === 0 && chosen === 'fr') ? '.one' : '.many'), n);

export const grade = (code) => (code ? t('grade.' + code) : t('grade.any'));

export const time = (instant) =>
  new Intl.DateTimeFormat(chosen === 'fr' ? 'fr-CA' : 'en-US', { timeStyle: 'short' }).format(new Date(instant));

export const day = (date) =>
  new Intl.DateTimeFormat(chosen === 'fr' ? 'fr-CA' : 'en-US', { dateStyle: 'medium', timeZone: 'UTC' })
    .format(new Date(date + 'T12:00:00Z'));
