// Lengths as the pane prints them.
import { digits } from '../plain/digits';
import { call } from '../calculations';

/** `4.24 mm`, on request with `(0.167 in)` behind it. */
export function lengthText(lengthMm: number, inch: boolean): string {
  const both = call('DUAL', [lengthMm]);
  const text = both.ok ? String(both.value) : digits(lengthMm);
  return (inch ? text : text.replace(/ \(.*$/, '')).replaceAll('-', '−');
}
