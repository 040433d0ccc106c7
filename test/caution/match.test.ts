import { expect, test } from 'vitest';
import type { Caution, SelectionView } from '../../src/core/caution/index.js';
import { loadDemo } from '../demo-house.js';
import { category, option, room, seenBy, selection } from './house.js';

const base = category([], { slug: 'base', trade: 'joiner' });
const [alder, fir] = ['alder', 'fir'].map((slug) => option({}, { slug, name: slug }));

/** What is seen of three rooms whose bases are to match. */
function seen(
  ...of: readonly (Partial<SelectionView> & { readonly stands?: ReturnType<typeof option> })[]
): readonly Caution[] {
  const slugs = ['hall', 'den', 'loft'];
  const rooms = of.map(({ stands, ...more }, index) => {
    const slug = slugs[index] ?? '';
    return room({
      slug,
      selections: [selection(['base'], base, stands, { id: `${slug}/base/base`, room: slug, ...more })],
    });
  });
  const matches = [{ name: 'Bases', why: 'One line.', selections: slugs.map((slug) => `${slug}/base/base`) }];
  return seenBy('must-match', rooms, { matches });
}

const stands = (one: typeof alder): { stands: ReturnType<typeof option> } => {
  if (!one) throw new Error('no option');
  return { stands: one };
};

test('the same option everywhere is passed over', () => {
  expect(seen(stands(alder), stands(alder), stands(alder))).toHaveLength(0);
});

test('one that differs is one caution, at the first place, that lists them all', () => {
  const cautions = seen(stands(alder), stands(alder), stands(fir));
  expect(cautions.map(({ id, selections, trades }) => [id, selections.length, trades])).toEqual([
    ['must-match/hall/base', 3, ['joiner']],
  ]);
  expect(cautions[0]?.seen).toBe('Bases differ: base in hall: alder; base in den: alder; base in loft: fir.');
});

test('a deliberate none differs from an option', () => {
  expect(seen(stands(alder), { state: 'none' })[0]?.seen).toContain('base in den: none');
  expect(seen({ state: 'none' }, { state: 'none' })).toHaveLength(0);
});

test('an open place counts as its standard, and without one may still be the same', () => {
  expect(seen(stands(alder), { ...stands(fir), state: 'open' })[0]?.seen).toContain(
    'fir, the standard while this is open',
  );
  expect(seen(stands(alder), { state: 'open' })).toHaveLength(0);
});

test('the demo names places as its rooms write them', async () => {
  const { book } = await loadDemo('2026-04-20');
  const found = book?.cautions
    .filter(({ rule }) => rule === 'must-match')
    .map(({ id, selections }) => [id, selections]);
  expect(found).toEqual([['must-match/gallery/base', ['gallery/base-trim/base', 'upper-hall/base-trim/base']]]);
});
