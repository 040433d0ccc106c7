import { printAmount } from './amount.js';
import { isMetric } from './locale.js';
import { plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';

/** Rise over run, as a roof's slope is said: 6/12 rises six inches a foot. */
interface Slope {
  readonly rise: number;
  readonly run: number;
}

/** Reads `6/12`, `4.5/12`, `25°`, `25 degrees` or `45 %`. A flat (0/12) is refused: it has a word of its own. */
export function parsePitch(text: string): Reading<Slope> {
  const written = plainText(text).replace(/ ?[:/] ?| in /u, '/');
  const usual = isMetric() ? 'degrees or percent, such as 25° or 45 %' : 'rise over run, such as 6/12';
  const [, angle = '', sign = ''] = /^(\d+(?:[.,]\d+)?) ?(°|deg(?:rees?)?|%)$/iu.exec(written) ?? [];
  if (angle !== '') return slopeOf(Number(angle.replace(',', '.')), sign === '%', text);
  const [, rise = '', run = ''] = /^(\d+(?:\.\d+)?)\/(\d+(?:\.\d+)?)$/u.exec(written) ?? [];
  if (rise === '') {
    const bare = /^(\d+(?:\.\d+)?)$/u.test(written);
    const meant = isMetric() ? `${written}° or ${written} %` : `${written}/12`;
    return unread(`'${text}' is not a pitch`, bare ? `did you mean ${meant}?` : `write ${usual}`);
  }
  if (Number(run) === 0) return unread(`'${text}' has no run`, 'write rise over run, such as 6/12');
  if (Number(rise) === 0) return unread(`'${text}' is flat`, 'write a flat ceiling instead');
  return read({ rise: Number(rise), run: Number(run) });
}

function slopeOf(size: number, isPercent: boolean, text: string): Reading<Slope> {
  if (size === 0) return unread(`'${text}' is flat`, 'write a flat ceiling instead');
  if (isPercent) return read({ rise: size, run: 100 });
  if (size >= 90) return unread(`'${text}' is no slope`, 'write less than 90°');
  return read({ rise: Math.tan((size * Math.PI) / 180), run: 1 });
}

/** Rise over run as the house says it: `6/12`, or `26.6°` in a metric house. */
export function printPitch(slope: number): string {
  if (isMetric()) return `${printAmount((Math.atan(slope) * 180) / Math.PI, 1)}°`;
  return `${printAmount(slope * 12, 2)}/12`;
}
