import { describe, expect, test } from 'vitest';
import {
  drafted,
  extruded,
  faceted,
  leftOut,
  metricHouse,
  modelText,
  real,
  tuple,
  type GivenSpace,
} from './model-text.js';

/** Rooms of one house: what they are open to, what joins them, levels, stairs. In metres. */

type Corner = readonly [number, number];

const box = (width: number, depth: number, height = 2.5): GivenSpace['body'] =>
  extruded(
    [
      [0, 0],
      [width, 0],
      [width, depth],
      [0, depth],
    ],
    height,
  );

function room(name: string, at: readonly [number, number, number], body: GivenSpace['body'], storey = 0): GivenSpace {
  return { number: `${name.length}${name.charCodeAt(0)}`, name, at, body, storey };
}

const metric = { locale: metricHouse };

describe('sides where two outlines coincide', () => {
  test('a whole side, seen from both rooms, and only what they share of it', () => {
    const text = modelText({
      spaces: [room('Kitchen', [0, 0, 0], box(3, 4)), room('Dining', [3, 1, 0], box(4, 2))],
    });
    const { files, spaces } = drafted(text, metric);
    expect(files.get('content/rooms/kitchen.md')).toContain(`walls:
  - { name: north, go: east, run: 3.00 m }
  - { name: east, go: south, run: 1.00 m }
  - { name: east-2, go: south, run: 2.00 m, open-to: dining }
  - { name: east-3, go: south, run: 1.00 m }
  - { name: south, go: west, run: 3.00 m }
  - { name: west, go: north, run: 4.00 m }
`);
    expect(files.get('content/rooms/dining.md')).toContain('size: 4.00 m x 2.00 m\nopen: { west: kitchen }\n');
    expect(spaces[1]?.asks).toEqual([
      expect.stringMatching(/^nothing stands between the rooms in the model: open at west \(#\d+ 775 Kitchen\)$/u),
    ]);
  });

  test('none on another level, and none a hand apart', () => {
    const text = modelText({
      storeys: [0, 2.8],
      spaces: [
        room('Kitchen', [0, 0, 0], box(3, 4)),
        room('Dining', [3.1, 0, 0], box(4, 4)),
        room('Study', [3, 0, 0], box(4, 4), 1),
      ],
    });
    for (const record of drafted(text, metric).files.values()) expect(record).not.toContain('open');
  });
});

describe('where rooms stand that nothing joins', () => {
  const text = modelText({
    storeys: [0, 2.8],
    spaces: [
      room('Kitchen', [10, 5, 0], box(3, 4)),
      room('Dining', [13, 5, 0], box(4, 4)),
      room('Study', [9.5, 4, 0], box(4, 4), 1),
    ],
  });
  const { files, levels } = drafted(text, metric);

  test('is told from a room of the largest group', () => {
    expect(files.get('content/rooms/study.md')).toContain('place: { from: kitchen, x: -500 mm, y: -1.00 m }\n');
    expect(files.get('content/rooms/kitchen.md')).not.toContain('place:');
    expect(files.get('content/rooms/dining.md')).not.toContain('place:');
  });

  test('levels are told with their floors', () => {
    expect(levels.map(({ line }) => line)).toEqual([
      '  - { id: level-1, name: "Level 1" }',
      '  - { id: level-2, name: "Level 2", floor: 2.80 m }',
    ]);
  });
});

test('a floor off its level, and a room that goes up through the next', () => {
  const text = modelText({
    storeys: [0, 3],
    spaces: [
      room('Kitchen', [0, 0, 0], box(3, 4)),
      room('Dining', [4, 0, 0], box(3, 4)),
      room('Living', [8, 0, -0.15], box(6, 6, 5.5)),
      room('Study', [0, 0, 0], box(3, 4), 1),
    ],
  });
  expect(drafted(text, metric).spaces[2]?.asks).toEqual([
    'it goes up through Level 2: say where rooms there look into it',
    "its floor lies 150 mm below its level's: record its above-ground, or what steps between",
  ]);
});

test('a stair that goes up through the next level is told, not drafted', () => {
  const text = modelText({
    storeys: [0, 3],
    spaces: [
      room('Stair', [0, 0, 0], box(2, 4, 5.5)),
      room('Hall', [2.1, 0, 0], box(3, 4)),
      room('Study', [3, 0, 0], box(3, 4), 1),
    ],
  });
  expect(leftOut(drafted(text, metric))[0]).toMatch(
    /Stair: it is a stair from Level 1 through Level 2: record it by hand, its well as open-above$/u,
  );
});

test('a round wall in straight pieces is asked about', () => {
  const ring = Array.from({ length: 36 }, (_, index): Corner => {
    const angle = (index / 36) * 2 * Math.PI;
    return [3 * Math.cos(angle), 3 * Math.sin(angle)];
  });
  const { spaces } = drafted(modelText({ spaces: [room('Library', [0, 0, 0], extruded(ring, 3))] }), metric);
  expect(spaces[0]?.asks).toEqual(['its outline has 36 corners: record arcs as arcs']);
});

describe('flights', () => {
  /** A hall of 6 by 2.5 m under a storey 2.8 m up, with a flight of 16 risers of 175 mm and goings of 260 mm along its south wall. */
  const hall = (risers: number | undefined, riser = 0.175): string => {
    const steps = Array.from({ length: 15 }, (_, index): readonly [number, number] => [
      index * 0.26,
      (index + 1) * 0.175,
    ]);
    const profile = [
      ...steps.flatMap(([x, z]): Corner[] => [
        [x, z],
        [x + 0.26, z],
      ]),
      [3.9, 0] as Corner,
    ];
    const outline: readonly Corner[] = [[0, 0], ...profile];
    const side = (y: number): (readonly [number, number, number])[] => outline.map(([x, z]) => [x, y, z]);
    const count = outline.length;
    const around = outline.map((_, index) => [
      index,
      (index + 1) % count,
      ((index + 1) % count) + count,
      index + count,
    ]);
    const faces = [outline.map((_, index) => index), outline.map((_, index) => 2 * count - 1 - index), ...around];
    const text = modelText({
      storeys: [0, 2.8],
      spaces: [room('Hall', [0, 0, 0], box(6, 2.5)), room('Study', [0, 0, 0], box(6, 2.5), 1)],
    });
    // The flight's entities follow the last of the model.
    const lines: string[] = [];
    const first = [...text.matchAll(/^#(\d+)=/gmu)].length;
    const add = (type: string, args: string): string => {
      lines.push(`#${first + lines.length + 1}=${type}(${args});`);
      return `#${first + lines.length}`;
    };
    const body = faceted([...side(0), ...side(0.9)], faces)(add);
    const shape = add('IFCSHAPEREPRESENTATION', `$,'Body','Brep',(${body})`);
    const product = add('IFCPRODUCTDEFINITIONSHAPE', `$,$,(${shape})`);
    const axes = add('IFCAXIS2PLACEMENT3D', `${add('IFCCARTESIANPOINT', tuple([1, 0, 0]))},$,$`);
    const stand = add('IFCLOCALPLACEMENT', `$,${axes}`);
    const figures = `${risers ?? '$'},15,${real(riser)},0.26`;
    add('IFCSTAIRFLIGHT', `'FlightFlightFlightFlig',$,'Main stair',$,$,${stand},${product},$,${figures},.STRAIGHT.`);
    return text.replace('ENDSEC;\nEND-', `${lines.join('\n')}\nENDSEC;\nEND-`);
  };

  test('whose figures agree are drafted', () => {
    const { files, notes } = drafted(hall(16), metric);
    expect(files.get('content/rooms/hall.md')).toContain(
      'features:\n  - { kind: stair, id: stair, name: "Main stair", rise: 2.80 m, risers: 16, going: 260 mm, width: 900 mm, x: 1.00 m, y: 0 mm, go: east }\n',
    );
    expect(notes).toEqual([]);
  });

  test.each<[string, string, string]>([
    ['one riser too many', hall(17), 'its risers do not come to the height between two floors: record it as taped'],
    [
      'a riser in feet in a model in metres',
      hall(16, 0.574),
      'its risers do not come to the height between two floors: record it as taped',
    ],
    ['no number of risers', hall(undefined), 'a figure in it is missing'],
  ])('others are told: %s', (_, text, why) => {
    const { files, notes } = drafted(text, metric);
    expect(files.get('content/rooms/hall.md')).not.toContain('stair');
    expect(notes).toEqual([expect.stringContaining(`Main stair: ${why}`)]);
  });
});
