import { printAmount } from './amount.js';
import { steepest } from './limits.js';
import { isMetric } from './locale.js';
import { plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';

/** Rise over run, as a roof's slope is said: 6/12 rises six inches a foot. */
interface Slope {
  readonly rise: number;
  readonly run: number;
}

/** Reads `6/12`, `4.5/12`, `25°`, `25 degrees` or `45 %`. A flat (0/12) is refused; `flatFix`: what to write
 *  for it. */
export function parsePitch(text: string, flatFix = 'write a flat ceiling instead'): Reading<Slope> {
  const written = plainText(text).replace(/ ?[:/] ?| in /u, '/');
  const usual = isMetric() ? 'degrees or percent, such as 25° or 45 %' : 'rise over run, such as 6/12';
  const [, angle = '', sign = ''] = /^(\d+(?:[.,]\d+)?) ?(°|deg(?:rees?)?|%)$/iu.exec(written) ?? [];
  if (angle !== '') return slopeOf(Number(angle.replace(',', '.')), sign === '%', { text, flatFix });
  const [, rise = '', run = ''] = /^(\d+(?:\.\d+)?)\/(\d+(?:\.\d+)?)$/u.exec(written) ?? [];
  if (rise === '') {
    const bare = /^(\d+(?:\.\d+)?)$/u.test(written);
    const meant = isMetric() ? `${written}° or ${written} %` : `${written}/12`;
    return unread(`'${text}' is not a pitch`, bare ? `did you mean ${meant}?` : `write ${usual}`);
  }
  if (Number(run) === 0) return unread(`'${text}' has no run`, 'write rise over run, such as 6/12');
  if (Number(rise) === 0) return unread(`'${text}' is flat`, flatFix);
  return sloped(text, { rise: Number(rise), run: Number(run) });
}

function slopeOf(
  size: number,
  isPercent: boolean,
  { text, flatFix }: { readonly text: string; readonly flatFix: string },
): Reading<Slope> {
  if (size === 0) return unread(`'${text}' is flat`, flatFix);
  if (isPercent) return sloped(text, { rise: size, run: 100 });
  if (size >= 90) return unread(`'${text}' is no slope`, 'write less than 90°');
  return sloped(text, { rise: Math.tan((size * Math.PI) / 180), run: 1 });
}

function sloped(text: string, slope: Slope): Reading<Slope> {
  if (slope.rise <= steepest * slope.run) return read(slope);
  return unread(`'${text}' is steeper than any roof`, 'see whether rise and run stand in their places');
}

/** Rise over run as the house says it: `6/12`, or `26.6°` in a metric house. */
export function printPitch(slope: number): string {
  if (isMetric()) return `${printAmount((Math.atan(slope) * 180) / Math.PI, 1)}°`;
  return `${printAmount(slope * 12, 2)}/12`;
}

/** A slope, rise over run, as a record of the house in force has it: `6.25/12` or `26.5651°`, to a millimetre in ten metres and finer. */
export function writePitch(slope: number): string {
  const figure = (amount: number): string => amount.toFixed(4).replace(/\.?0+$/u, '');
  return isMetric() ? `${figure((Math.atan(slope) * 180) / Math.PI)}°` : `${figure(slope * 12)}/12`;
}
