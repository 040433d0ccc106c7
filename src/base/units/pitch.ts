import { plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';

/** Rise over run, as a roof's slope is said: 6/12 rises six inches a foot. */
interface Slope {
  readonly rise: number;
  readonly run: number;
}

/** Reads `6/12` or `4.5/12`. A flat (0/12) is refused: it has a word of its own. */
export function parsePitch(text: string): Reading<Slope> {
  const written = plainText(text).replace(/ ?[:/] ?| in /u, '/');
  const [, rise = '', run = ''] = /^(\d+(?:\.\d+)?)\/(\d+(?:\.\d+)?)$/u.exec(written) ?? [];
  if (rise === '') {
    const bare = /^(\d+(?:\.\d+)?)$/u.test(written);
    return unread(
      `'${text}' is not a pitch`,
      bare ? `did you mean ${written}/12?` : 'write rise over run, such as 6/12',
    );
  }
  if (Number(run) === 0) return unread(`'${text}' has no run`, 'write rise over run, such as 6/12');
  if (Number(rise) === 0) return unread(`'${text}' is flat`, 'write a flat ceiling instead');
  return read({ rise: Number(rise), run: Number(run) });
}
