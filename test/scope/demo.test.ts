import { expect, test } from 'vitest';
import { demoBook } from '../demo-house.js';

const book = await demoBook('2026-04-20');

test('the demo house has these findings, each true of its records, and no others', () => {
  expect(book.scope.findings.map(({ id }) => id)).toEqual([
    'gap/laundry/ceiling/wall-texture',
    'need-without-trade/great-room/ceiling/junction-boxes',
    'need-without-trade/gallery/edge/gallery-angle',
    'need-without-trade/upper-hall/ceiling/energy-report',
    'never-chosen/dining/D12/casing',
  ]);
});

test('every selection that is not a deliberate none is a layer somewhere, and every layer but the gaps has a trade', () => {
  const layers = book.scope.buildUps.flatMap((buildUp) => buildUp.layers);
  const shown = new Set(layers.flatMap(({ selection }) => selection ?? []));
  const wanted = book.selections.filter(({ state }) => state !== 'none').map(({ id }) => id);
  expect(wanted.filter((id) => !shown.has(id))).toEqual([]);
  const idle = new Set(layers.filter(({ installedBy }) => installedBy === undefined).map(({ what }) => what));
  expect([...idle].sort()).toEqual([
    'Energy report that accepts R-49 at these slopes',
    'Junction boxes set to the face of the boards',
    'Wall texture or ceiling texture or ceiling board',
  ]);
});
