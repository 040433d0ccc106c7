import { isMetric } from './locale.js';
import type { Length } from './quantity.js';

/** The finest step of lengths in records that are written by the program: 0.1 mm, or 1/64". */
export function recordStep(): number {
  return isMetric() ? 100_000 : 396_875;
}

/** The length nearest to it that records are written in, never -0. */
export function toRecordStep(length: number): Length {
  return (Math.round(length / recordStep()) * recordStep() + 0) as Length;
}

/** A length as a record of the house in force has it, to be read back as it is: `14'-6 1/2"`, `30 1/64"`, `4.4321 m`, `165.5 mm`. Of a length
 *  that is no whole number of steps, the nearest. */
export function writeLength(length: Length): string {
  const steps = Math.round(length / recordStep());
  const sign = steps < 0 ? '-' : '';
  return `${sign}${isMetric() ? metres(Math.abs(steps)) : feetAndInches(Math.abs(steps))}`;
}

function metres(tenths: number): string {
  if (tenths < 10_000) return `${trimmed((tenths / 10).toFixed(1), 0)} mm`;
  return `${trimmed((tenths / 10_000).toFixed(4), 2)} m`;
}

/** Without zeros at the end, but for so many digits after the point. */
function trimmed(figure: string, digits: number): string {
  const [whole = '', part = ''] = figure.split('.');
  const kept = part.slice(0, digits) + part.slice(digits).replace(/0+$/u, '');
  return kept === '' ? whole : `${whole}.${kept}`;
}

function feetAndInches(sixtyFourths: number): string {
  const [feet, rest] = [Math.floor(sixtyFourths / 768), sixtyFourths % 768];
  const [inches, over] = [Math.floor(rest / 64), rest % 64];
  const part = over === 0 ? '' : fraction(over, 64);
  if (feet === 0 && inches === 0 && part !== '') return `${part}"`;
  return `${feet === 0 ? '' : `${feet}'-`}${inches}${part === '' ? '' : ` ${part}`}"`;
}

function fraction(over: number, under: number): string {
  return over % 2 === 0 ? fraction(over / 2, under / 2) : `${over}/${under}`;
}
