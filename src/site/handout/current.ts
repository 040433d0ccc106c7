import type { Handout, HandoutCover } from '../../handout/index.js';
import { printDay, slugFor } from '../../base/units/index.js';

/** Where a site says which issue of a handout is the current one: an image for each trade, by job. A page that was opened from a disk may read
 *  no file of data there, and is to run no script from there; the size of an image it may ask for. */
export function currentFile({ job, trade }: Pick<HandoutCover, 'job' | 'trade'>): string {
  return `current/${slugFor(job) || 'job'}/${trade.slug}.svg`;
}

/** Where an older copy asks: only when the house record names its site. */
export function currentAddress(cover: HandoutCover): string | undefined {
  return cover.site === undefined ? undefined : `${cover.site}/handout/${currentFile(cover)}`;
}

const hexDigits = { ofWidth: 3, ofHeight: 2 };

/** The images of those that are issued, by their paths in the site's folder of handouts. Width: the number, then the first three digits of its
 *  digest; height: the days since 1970, then the next two. `assets/handout.js` reads them. */
export function currentImages(handouts: readonly Handout[]): ReadonlyMap<string, string> {
  return new Map(
    handouts.flatMap(({ cover }) => (cover.stamp ? [[currentFile(cover), imageOf(cover, cover.stamp)] as const] : [])),
  );
}

function imageOf({ trade }: HandoutCover, { number, date, digest }: NonNullable<HandoutCover['stamp']>): string {
  const { ofWidth, ofHeight } = hexDigits;
  const packed = (figure: number, from: number, digits: number): number =>
    figure * 16 ** digits + Number.parseInt(digest.slice(from, from + digits), 16);
  const days = Date.parse(`${date}T00:00:00Z`) / 86_400_000;
  const [width, height] = [packed(number, 0, ofWidth), packed(days, ofWidth, ofHeight)];
  const words = `${trade.slug}: issue ${number} of ${printDay(date)}`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 400 40">` +
    `<title>${words}</title><text x="8" y="26">${words}</text></svg>\n`
  );
}
