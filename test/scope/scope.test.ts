import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaCategory, board, paint, scopeOf, study } from './house.js';

const tiler = (carries: string) => ({
  'content/trades/tiler.md': `---\nname: Tile\ncontact: Tile setter\nsections: ["09 30 10"]\n${carries}---\n`,
});

describe('what lies beneath', () => {
  test('paint with a board beneath it is no gap', () => {
    const scope = scopeOf(
      board,
      paint,
      study('{ at: walls, category: board, chosen: board }', '{ at: walls, category: paint, chosen: paint }'),
    );
    expect(scope.findings).toEqual([]);
    expect(scope.buildUps.find(({ place }) => place === 'north')?.layers).toEqual([
      {
        layer: 'substrate',
        what: 'Board',
        selection: 'study/board/walls',
        suppliedBy: 'carpentry',
        installedBy: 'carpentry',
      },
      {
        layer: 'finish',
        what: 'Paint',
        selection: 'study/paint/walls',
        suppliedBy: 'carpentry',
        installedBy: 'carpentry',
      },
    ]);
  });

  test('paint without one is a gap, told once for the walls that lack it, at the line of the paint', () => {
    const [gap, ...more] = scopeOf(
      board,
      paint,
      study('{ at: [north, east], category: board, chosen: board }', '{ at: walls, category: paint, chosen: paint }'),
    ).findings;
    expect(more).toEqual([]);
    expect(gap).toMatchObject({
      id: 'gap/study/south/board',
      kind: 'gap',
      placeText: 'South and west walls',
      source: 'content/rooms/study.md',
      line: 12,
    });
    expect(gap?.fix).toContain('at south, west');
  });

  test('a deliberate none does not lie there', () => {
    const none = study('{ at: walls, category: board, chosen: none }', '{ at: walls, category: paint, chosen: paint }');
    expect(scopeOf(board, paint, none).findings).toMatchObject([{ kind: 'gap', placeText: 'Walls' }]);
  });

  test('what a trade carries lies there by itself', () => {
    const scope = scopeOf(
      tiler('carries: [{ id: backer, what: Backer, layer: substrate }]\n'),
      areaCategory('tile', 'finish', 'needs-beneath: [backer]\n'),
      study('{ at: floor, category: tile, chosen: tile }'),
    );
    expect(scope.findings).toEqual([]);
    expect(scope.buildUps[0]?.layers[0]).toEqual({
      layer: 'substrate',
      what: 'Backer',
      suppliedBy: 'tiler',
      installedBy: 'tiler',
    });
  });
});

describe('two on one place', () => {
  const tile = areaCategory('tile', 'finish');

  test('two finishes on a wall overlap', () => {
    const [overlap, ...more] = scopeOf(
      board,
      paint,
      tile,
      study(
        '{ at: walls, category: board, chosen: board }',
        '{ at: walls, category: paint, chosen: paint }',
        '{ at: [north, west], category: tile, chosen: tile }',
      ),
    ).findings;
    expect(more).toEqual([]);
    expect(overlap).toMatchObject({ kind: 'overlap', placeText: 'North and west walls', line: 13 });
  });

  test('varnish on ceiling boards is a layer on a layer', () => {
    const ceiling = study(
      '{ at: ceiling, category: ceiling-board, chosen: fir-tg-1x6 }',
      '{ at: ceiling, category: paint, chosen: paint }',
    );
    const scope = scopeOf(board, paint, ceiling);
    expect(scope.findings).toEqual([]);
    // Paint is done first by its category's sequence and still lies outside.
    expect(scope.buildUps[0]?.layers.map(({ what }) => what)).toEqual(['Ceiling board', 'Paint']);
  });

  test('two trades that carry one thing', () => {
    const carries = 'carries: [{ id: backer, what: Backer, layer: substrate }]\n';
    const scope = scopeOf(
      tiler(carries),
      { 'content/trades/mason.md': `---\nname: Masonry\ncontact: Mason\nsections: ["04 43 00"]\n${carries}---\n` },
      areaCategory('tile', 'finish', 'needs-beneath: [backer]\n'),
      study('{ at: floor, category: tile, chosen: tile }'),
    );
    expect(scope.findings).toMatchObject([
      { kind: 'overlap', trades: ['mason', 'tiler'], source: 'content/trades/tiler.md' },
    ]);
  });
});

describe('needs of options', () => {
  const needs = (id: string) =>
    areaCategory(
      'stone',
      'finish',
      '',
      `needs: [{ ${id}what: A ledge under the whole breast, by: carpentry, before: framing }]\n`,
    );

  test('that no trade carries are found at the line of the need', () => {
    const [finding] = scopeOf(
      needs('id: ledge, '),
      study('{ at: north, category: stone, considering: [stone] }'),
    ).findings;
    expect(finding).toMatchObject({
      id: 'need-without-trade/study/north/ledge',
      kind: 'need-without-trade',
      trades: ['carpentry'],
      source: 'content/options/stone/stone.md',
      line: 12,
    });
    expect(finding?.what).toContain('(not chosen yet)');
  });

  test('of an option that was not chosen do not count', () => {
    const other = study('{ at: north, category: stone, considering: [stone], chosen: none }');
    expect(scopeOf(needs('id: ledge, '), other).findings).toEqual([]);
  });

  test('without an id take the trade they name at its word', () => {
    const scope = scopeOf(needs(''), study('{ at: north, category: stone, chosen: stone }'));
    expect(scope.findings).toEqual([]);
    expect(scope.buildUps[0]?.layers[0]).toMatchObject({ layer: 'backing', installedBy: 'carpentry' });
  });

  test('that another trade carries than they name are named twice', () => {
    const carried = tiler('carries: [{ id: ledge, what: Ledge, layer: framing }]\n');
    const scope = scopeOf(needs('id: ledge, '), carried, study('{ at: north, category: stone, chosen: stone }'));
    expect(scope.findings).toMatchObject([{ kind: 'overlap', trades: ['tiler', 'carpentry'] }]);
  });
});

describe('what the owner furnishes', () => {
  const owner = {
    'content/house.md': [['owner-furnished-install: contract', 'owner-furnished-install: owner']],
  } as const;
  const floor = (more: string) => study(`{ at: floor, category: floor, chosen: oak, supply: owner-furnished${more} }`);

  test('has no installer where the contract does not install it and nobody is named', () => {
    expect(scopeOf(owner, floor('')).findings).toMatchObject([{ kind: 'no-installer', line: 11 }]);
    expect(scopeOf(owner, floor('')).buildUps[0]?.layers[0]).not.toHaveProperty('installedBy');
  });

  test('is installed by whom the record names, or by the trade where the contract includes it', () => {
    expect(scopeOf(owner, floor(', install: owner')).findings).toEqual([]);
    const [buildUp] = scopeOf(floor('')).buildUps;
    expect(buildUp?.layers[0]).toMatchObject({ suppliedBy: 'owner', installedBy: 'carpentry' });
  });
});

describe('slots', () => {
  const slots = (text: string) =>
    ({ 'content/house.md': [['milestones:\n', `slots:\n${text}milestones:\n`]] }) as const;
  const bare = study('{ at: floor, category: floor, chosen: oak }');

  test('a place that a room must have and nothing speaks of was never chosen', () => {
    const scope = scopeOf(slots('  - { at: walls, needs: [board, finish] }\n'), board, bare);
    expect(scope.findings).toMatchObject([{ kind: 'never-chosen', placeText: 'Walls', line: 10 }]);
  });

  test('speak only of the uses that they name', () => {
    const rule = '  - { at: walls, needs: board, in: [bath] }\n  - { at: base, needs: edge, except: [study] }\n';
    expect(scopeOf(slots(rule), board, bare).findings).toEqual([]);
  });

  test('a deliberate none is a decision', () => {
    const none = study('{ at: walls, category: board, chosen: none }');
    expect(scopeOf(slots('  - { at: walls, needs: board }\n'), board, none).findings).toEqual([]);
  });

  test('outside walls are all of the only room, and of a room that is not laid out those with an opening to outside', () => {
    const scope = scopeOf(slots('  - { at: outside-walls, needs: board }\n'), board, bare);
    expect(scope.findings).toMatchObject([{ place: 'north', placeText: 'Walls' }]);
    const shed = `---\nname: Shed\nnumber: "102"\nlevel: main\nuse: utility\nsize: 5'-0" x 5'-0"\nceiling: flat 8'-0"\n---\n`;
    const apart = scopeOf(slots('  - { at: outside-walls, needs: board }\n'), board, bare, {
      'content/rooms/shed.md': shed,
    });
    expect(apart.findings).toMatchObject([{ place: 'north', placeText: 'North wall' }]);
    expect(apart.findings[0]?.what).toBe('Board for north wall was never chosen.');
  });
});

// A gap is a painted wall without board or ceiling board; an overlap is a wall with two finishes of which neither names
// the other: tile with anything else.
test('gaps and overlaps are what their definition says, whatever is selected where', () => {
  const tile = areaCategory('tile', 'finish');
  const walls = ['north', 'east', 'south', 'west'] as const;
  const some = fc.subarray([...walls]);
  fc.assert(
    fc.property(some, some, some, (boarded, painted, tiled) => {
      const at = (list: readonly string[], category: string) =>
        list.length === 0 ? [] : [`{ at: [${list.join(', ')}], category: ${category}, chosen: ${category} }`];
      const lines = [...at(boarded, 'board'), ...at(painted, 'paint'), ...at(tiled, 'tile')];
      fc.pre(lines.length > 0);
      const { findings, buildUps } = scopeOf(board, paint, tile, study(...lines));
      const gaps = painted.filter((wall) => !boarded.includes(wall));
      const overlaps = painted.filter((wall) => tiled.includes(wall));
      expect(findings.filter(({ kind }) => kind === 'gap').length).toBe(gaps.length > 0 ? 1 : 0);
      expect(findings.filter(({ kind }) => kind === 'overlap').length).toBe(overlaps.length > 0 ? 1 : 0);
      expect(findings.find(({ kind }) => kind === 'gap')?.fix ?? '').toContain(gaps.join(', '));
      expect(new Set(buildUps.map(({ place }) => place))).toEqual(new Set([...boarded, ...painted, ...tiled]));
      expect(new Set(findings.map(({ id }) => id)).size).toBe(findings.length);
    }),
    { numRuns: 40 },
  );
});
