// The currencies offered for a choice, by their ISO 4217 codes, named in the language that is set.
import { settings } from '../store/settings.js';

const CODES = ['USD', 'GBP', 'EUR', 'CAD', 'AUD', 'NZD', 'CHF', 'SEK', 'NOK', 'DKK', 'PLN', 'CZK', 'HUF', 'JPY', 'INR', 'ZAR',
  'MXN', 'BRL', 'KWD'];

export function currencyOptions(current) {
  const names = new Intl.DisplayNames([settings.value.words], { type: 'currency' });
  const codes = !current || CODES.includes(current) ? CODES : [current, ...CODES];
  return codes.map((code) => ({ value: code, text: code, hint: nameIn(names, code) }));
}

// A code from a file may be none at all; it is shown as it stands, and the core says what is wrong with it.
function nameIn(names, code) {
  try {
    return names.of(code);
  } catch {
    return undefined;
  }
}
