import type { Handout, HandoutCover } from '../../handout/index.js';
import { printDay } from '../../base/units/index.js';

/** The list of current issues in the site's folder of handouts. */
export const currentFile = 'current.js';

/** Where an older copy asks: only when the house record names its site. */
export function currentAddress({ site }: Pick<HandoutCover, 'site'>): string | undefined {
  return site === undefined ? undefined : `${site}/handout/${currentFile}`;
}

/** The current issue of each trade's handout, as a classic script: a page that was opened from a disk may load a script from
 *  the house's site, but may not read a file of data there. */
export function currentScript(handouts: readonly Handout[]): string {
  const first = handouts[0];
  const list = {
    format: 'bookmatch/current/1',
    job: first?.cover.job ?? '',
    trades: Object.fromEntries(handouts.map(({ cover }) => [cover.trade.slug, entry(cover)])),
  };
  return `window.bookmatchCurrent = ${JSON.stringify(list).replaceAll('<', '\\u003c')};\n`;
}

/** `number` is null while nothing is issued. `day` is the date in words. */
function entry({ stamp, on }: HandoutCover) {
  const date = stamp?.date ?? on;
  return { number: stamp?.number ?? null, date, day: printDay(date), digest: stamp?.digest ?? null };
}
