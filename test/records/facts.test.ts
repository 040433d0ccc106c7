import { expect, test } from 'vitest';
import { toldOf } from './small-house.js';

const study = 'content/rooms/study.md';
const chosen = '    chosen: fir-tg-1x6\n    chosen-on: 2026-03-02\n';

const told = (lines: string): readonly string[] => toldOf([study, chosen, `${chosen}${lines}`]);

test('facts of a choice in order of their days are no problem', () => {
  const facts = [
    'released: { on: 2026-03-03, option: fir-tg-1x6, by: Project manager }',
    'ordered: { on: 2026-03-04, option: fir-tg-1x6, number: "C-1", promised: 2026-04-20 }',
    'acknowledged: { on: 2026-03-04, promised: 2026-04-22 }',
    'shipped: { on: 2026-04-17 }',
    'received: { on: 2026-04-22, count: 31 boxes, lot: "4471" }',
    'installed: { on: 2026-05-04 }',
  ];
  expect(told(facts.map((line) => `    ${line}\n`).join(''))).toEqual([]);
});

test('each that comes before the one before it is a warning', () => {
  expect(told('    shipped: { on: 2026-04-22 }\n    received: { on: 2026-04-17 }\n')).toEqual([
    'rooms/study.md:23:21 (warning) date-order received on 2026-04-17, before it was shipped on 2026-04-22 | check both days',
  ]);
});

test('an order of another option needs instead-of, of that very option', () => {
  const ordered = '    ordered: { on: 2026-03-02, option: pine-shiplap-1x8 }\n';
  const instead = (option: string): string =>
    `    instead-of: { option: ${option}, on: 2026-03-10, why: The sample was lighter }\n`;
  expect(told(ordered)[0]).toMatch(
    /chosen-after-order 'fir-tg-1x6' is chosen, but 'pine-shiplap-1x8' was ordered on 2 March 2026/,
  );
  expect(told(`${ordered}${instead('pine-shiplap-1x8')}`)).toEqual([]);
  expect(told(`${ordered}${instead('fir-tg-1x6')}`)[0]).toMatch(/chosen-after-order/);
});
