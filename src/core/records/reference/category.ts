import type { Problem } from '../../../base/problem/index.js';
import type { Draft } from '../draft.js';
import { some, unknown } from './unknown.js';

/** A category's trade and milestones exist. */
export function categoryReferences({ categories, house, slugs }: Draft): readonly Problem[] {
  return categories.flatMap(({ slug, record: { raw, origin, sound } }) => {
    const problems: Problem[] = [];
    if (sound(['trade']) && typeof raw.trade === 'string' && !slugs.trades.has(raw.trade)) {
      const message = `category '${slug}' belongs to a trade '${raw.trade}', which there is not`;
      const lives = 'Trades live in content/trades/';
      problems.push(
        unknown(origin, ['trade'], { code: 'trade-unknown', message, name: raw.trade, among: slugs.trades, lives }),
      );
    }
    const among = house?.milestoneIds;
    if (!among) return problems;
    const early = raw['fixes-early'];
    const milestones = [
      { path: ['needed-at'], name: raw['needed-at'] },
      { path: ['measured-after'], name: raw['measured-after'] },
      ...(Array.isArray(early)
        ? early.map((one, index) => ({ path: ['fixes-early', index, 'milestone'], name: one?.milestone }))
        : [{ path: ['fixes-early', 'milestone'], name: early?.milestone }]),
    ];
    for (const { path, name } of milestones) {
      if (!sound(path) || typeof name !== 'string' || among.has(name)) continue;
      const message = `the house has no milestone '${name}'`;
      const lives = `Milestones are ${some(among)}`;
      problems.push(unknown(origin, path, { code: 'milestone-unknown', message, name, among, lives }));
    }
    return problems;
  });
}
