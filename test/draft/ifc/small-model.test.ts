import { describe, expect, test } from 'vitest';
import { modelReport, nothingTaken } from '../../../src/draft/index.js';
import { additionText, drafted, edited, leftOut, metricHouse } from './model-text.js';

/** The addition's two rooms, and what small changes of its model make of them. */

const dining = 'content/rooms/dining.md';
const den = 'content/rooms/den.md';

const shapeOfDining = `walls:
  - { name: north, go: east, run: 8'-0" }
  - { name: east, go: south, run: 10'-0" }
  - { name: south, go: west, run: 14'-0" }
  - { name: west, go: north, run: 8'-0" }
  - { name: north-2, go: east, run: 6'-0" }
  - { name: west-2, go: north, run: 2'-0" }
ceiling: flat 9'-0"`;

const slope = `ceiling: { form: shed, low: east, plate: 7'-0", pitch: 6/12 }`;

function recordOf(text: string, path: string): string {
  const draft = drafted(text);
  expect(leftOut(draft)).toEqual([]);
  return draft.files.get(path) ?? '';
}

test('the rooms as worked by hand', () => {
  const { files, levels, spaces, notes } = drafted(additionText);
  expect([...files.keys()]).toEqual([dining, den]);
  expect(files.get(dining)).toBe(`---
name: "Dining"
number: "110"
level: main-level
use: dining
${shapeOfDining}
openings:
  - { mark: D11, kind: door, wall: east, at: 4'-0", width: 3'-0", height: 6'-8", to: den, hinge: left, swing: den, note: "BookmatchSmallModel095 Door 3068" }
  - { mark: W11, kind: window, wall: south, at: 7'-0", width: 4'-0", height: 4'-0", sill: 3'-0", to: outside, note: "BookmatchSmallModel115 Window 4040" }
---

Drafted from the architect's model, space #30: to be taped before anything is ordered by it.
`);
  expect(files.get(den)).toContain(`use: study
size: 10'-0" x 10'-0"
${slope}
openings:
  - { mark: D11, recorded-in: dining, wall: west, at: 3'-0" }
`);
  expect(levels).toEqual([{ line: '  - { id: main-level, name: "Main level" }', isKnown: false }]);
  expect(spaces.map(({ title, asks }) => [title, asks])).toEqual([
    ['#30 110 Dining', []],
    ['#50 111 Den', []],
  ]);
  expect(notes).toEqual([
    'walls between rooms measure 6" at D11 in the model: wall-types in content/house.md say it, face to face',
  ]);
});

test('in a metric house the same lengths stand in metres', () => {
  const { files } = drafted(additionText, { locale: metricHouse });
  expect(files.get(den)).toContain(
    'size: 3.048 m x 3.048 m\nceiling: { form: shed, low: east, plate: 2.1336 m, pitch: 26.5651° }',
  );
});

describe('the same rooms', () => {
  const site = '#13=IFCLOCALPLACEMENT($,#9);';
  test.each<[string, string]>([
    ['in another edition', edited(additionText, ["(('IFC4'))", "(('IFC2X3'))"])],
    ['in the newest edition', edited(additionText, ["(('IFC4'))", "(('IFC4X3_ADD2'))"])],
    [
      'with comments and white space where they may stand',
      additionText.replace(/^#.*$/gmu, (line) => line.replaceAll(',', ' /* , */ ,\n ')),
    ],
    [
      'as a copy of a body that is kept once',
      edited(
        additionText,
        ["'SweptSolid',(#35)", "'MappedRepresentation',(#202)"],
        [
          '#38=',
          `#200=IFCREPRESENTATIONMAP(#9,#201);
#201=IFCSHAPEREPRESENTATION(#10,'Body','SweptSolid',(#35));
#202=IFCMAPPEDITEM(#200,#203);
#203=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#6,$,$);
#38=`,
        ],
      ),
    ],
    [
      'by a polyline that comes back to its first corner',
      edited(
        additionText,
        [
          '#33=IFCINDEXEDPOLYCURVE(#32,(IFCLINEINDEX((1,2,3,4,5,6,1))),.F.);',
          '#33=IFCPOLYLINE((#6,#301,#302,#303,#304,#305,#6));',
        ],
        [
          '#38=',
          `#301=IFCCARTESIANPOINT((14.,0.));
#302=IFCCARTESIANPOINT((14.,10.));
#303=IFCCARTESIANPOINT((6.,10.));
#304=IFCCARTESIANPOINT((6.,8.));
#305=IFCCARTESIANPOINT((0.,8.));
#38=`,
        ],
      ),
    ],
    [
      'far from the origin',
      edited(additionText, [
        site,
        '#13=IFCLOCALPLACEMENT($,#401);\n#400=IFCCARTESIANPOINT((20000.,-9000.,500.));\n#401=IFCAXIS2PLACEMENT3D(#400,$,$);',
      ]),
    ],
  ])('%s', (_, text) => {
    const draft = drafted(text);
    expect(leftOut(draft)).toEqual([]);
    expect(draft.files.get(dining)).toContain(shapeOfDining);
    expect(draft.files.get(den)).toContain(slope);
  });

  test('turned by half a turn, which is along the compass as well', () => {
    const turn =
      '#13=IFCLOCALPLACEMENT($,#401);\n#400=IFCDIRECTION((-1.,0.,0.));\n#401=IFCAXIS2PLACEMENT3D(#6,#7,#400);';
    const { files } = drafted(edited(additionText, [site, turn]));
    expect(files.get(dining)).toContain(`walls:
  - { name: north, go: east, run: 14'-0" }
  - { name: east, go: south, run: 8'-0" }
  - { name: south, go: west, run: 6'-0" }
  - { name: east-2, go: south, run: 2'-0" }
  - { name: south-2, go: west, run: 8'-0" }
  - { name: west, go: north, run: 10'-0" }
`);
    expect(files.get(dining)).toContain(`wall: north, at: 7'-0"`);
    expect(files.get(den)).toContain(slope.replace('east', 'west'));
  });

  test('turned by 30 degrees: the plan is turned back, and true north told', () => {
    const turned = edited(
      additionText,
      [
        site,
        '#13=IFCLOCALPLACEMENT($,#401);\n#400=IFCDIRECTION((0.86602540378443865,0.5,0.));\n#401=IFCAXIS2PLACEMENT3D(#6,#7,#400);',
      ],
      [',#9,$);\n#11=', ',#9,#402);\n#402=IFCDIRECTION((0.,1.));\n#11='],
    );
    const { files, notes } = drafted(turned);
    const plain = drafted(additionText).files;
    expect(files).toEqual(plain);
    expect(notes.slice(0, 2)).toEqual([
      'plans are turned 30° clockwise, so that most walls run along the compass',
      'the model has true north: north: 30 in content/house.md',
    ]);
  });
});

describe('what is not said is asked, or left out', () => {
  test('no body', () => {
    const { files, spaces } = drafted(edited(additionText, ["#10,'Body','Clipping'", "#10,'FootPrint','Clipping'"]));
    expect([...files.keys()]).toEqual([dining]);
    expect(spaces.find(({ title }) => title === '#50 111 Den')?.why).toBe('it has no body');
    expect(files.get(dining)).toContain('mark: W11');
    expect(files.get(dining)).not.toContain('D11');
    expect(spaces[0]?.asks).toEqual([
      'door #95 Door 3068 in its east wall is left out: the model does not say what it leads to',
    ]);
  });

  test('an arc in the outline', () => {
    const arc = edited(additionText, [
      '(IFCLINEINDEX((1,2,3,4,5,6,1)))',
      '(IFCLINEINDEX((1,2,3,4)),IFCARCINDEX((4,5,6)),IFCLINEINDEX((6,1)))',
    ]);
    expect(leftOut(drafted(arc))).toEqual(['#30 110 Dining: its outline has arcs, which are not drafted']);
  });

  test('a window that nothing calls external', () => {
    const draft = drafted(edited(additionText, ['IFCBOOLEAN(.T.)', 'IFCBOOLEAN(.F.)']));
    expect(draft.files.get(dining)).not.toContain('W11');
    expect(draft.spaces[0]?.asks).toEqual([
      'window #115 Window 4040 in its south wall is left out: the model does not say what it leads to',
    ]);
  });

  test('a border of the space says it as well', () => {
    const border =
      "#120=IFCRELSPACEBOUNDARY('BookmatchSmallModel120',$,$,$,#30,#115,$,.PHYSICAL.,.EXTERNAL.);\nENDSEC;\nEND-";
    const text = edited(additionText, ['IFCBOOLEAN(.T.)', 'IFCBOOLEAN(.F.)'], ['ENDSEC;\nEND-', border]);
    expect(recordOf(text, dining)).toContain('mark: W11');
  });

  test.each([
    ['.NOTDEFINED.', 'to: den, note'],
    ['.SINGLE_SWING_RIGHT.', 'to: den, hinge: right, swing: den, note'],
    ['.DOUBLE_DOOR_SINGLE_SWING.', 'to: den, operation: double, note'],
    ['.SLIDING_TO_LEFT.', 'to: den, operation: sliding, note'],
    ['.REVOLVING.', 'to: den, note'],
  ])('how a door opens: %s', (word, keys) => {
    expect(recordOf(edited(additionText, ['.SINGLE_SWING_LEFT.', word]), dining)).toContain(keys);
  });

  test('a door whose y points into the room that records it swings there, its hinges seen from behind', () => {
    const text = edited(additionText, ['#92=IFCDIRECTION((0.,-1.,0.))', '#92=IFCDIRECTION((0.,1.,0.))']);
    expect(recordOf(text, dining)).toContain('hinge: right, swing: dining');
  });

  test('a door along whose wall its y runs has no hinges', () => {
    const draft = drafted(edited(additionText, ['#92=IFCDIRECTION((0.,-1.,0.))', '#92=IFCDIRECTION((1.,0.,0.))']));
    expect(draft.files.get(dining)).toContain('to: den, note');
    expect(draft.spaces[0]?.asks).toEqual(['the model does not say how D11 opens']);
  });

  test('a use that no word of the name says', () => {
    const draft = drafted(edited(additionText, ["'Den',.ELEMENT.", "'Lair',.ELEMENT."]));
    expect(draft.files.get('content/rooms/lair.md')).not.toContain('use:');
    expect(draft.spaces[1]?.asks).toEqual(['what is it used for? its name does not say: use']);
  });
});

describe('what the house has already', () => {
  test('a record that is there stays, its level is used, numbers and marks are others', () => {
    const draft = drafted(additionText, {
      taken: {
        rooms: ['den', 'study'],
        numbers: ['110', '111'],
        marks: ['D11', 'D01'],
        levels: [{ id: 'main', name: 'Main level' }],
      },
    });
    expect([...draft.files.keys()]).toEqual([dining]);
    expect(draft.files.get(dining)).toContain('number: "110-2"\nlevel: main\n');
    expect(draft.files.get(dining)).toContain('mark: D02, kind: door');
    expect(draft.levels).toEqual([{ line: '  - { id: main, name: "Main level" }', isKnown: true }]);
    expect(leftOut(draft)).toEqual(['#50 111 Den: content/rooms/den.md is there already, and stays as it is']);
  });

  test('two rooms of one name are told apart by their numbers', () => {
    const draft = drafted(edited(additionText, ["'Dining',.ELEMENT.", "'Den',.ELEMENT."]), { taken: nothingTaken });
    expect([...draft.files.keys()]).toEqual(['content/rooms/den-110.md', 'content/rooms/den-111.md']);
  });

  test('names carry no control signs, no turned writing, no marks, and are cut', () => {
    const name = `Bed\\X2\\202E0007\\X0\\<!-- x -->\\X2\\00E9\\X0\\''s ${'long '.repeat(40)}`;
    const draft = drafted(edited(additionText, ["'Den',.ELEMENT.", `'${name}',.ELEMENT.`]));
    const [, text = ''] = [...draft.files].find(([path]) => path !== dining) ?? [];
    const [, written = ''] = /^name: "(.*)"$/mu.exec(text) ?? [];
    expect(written).toBe(`Bed x é's ${'long '.repeat(14)}`.trim());
    expect([...written].length).toBeLessThanOrEqual(80);
  });
});

test('the report tells of each space, its questions and why it is left out', () => {
  const text = edited(
    additionText,
    ["#10,'Body','SweptSolid',(#35)", "#10,'Box','SweptSolid',(#35)"],
    ["'Den',.ELEMENT.", "'Lair',.ELEMENT."],
    ['ENDSEC;\nEND-', "#130=IFCRAILING('BookmatchSmallModel130',$,$,$,$,$,$,$,$);\nENDSEC;\nEND-"],
  );
  expect(modelReport(drafted(text))).toBe(`#30 110 Dining  left out: it has no body
#50 111 Lair  content/rooms/lair.md
  ? what is it used for? its name does not say: use
  ? door #95 Door 3068 in its west wall is left out: the model does not say what it leads to

- window #115 Window 4040 is in no wall of a room that is drafted
- 1 railing of the model is not drafted: record them as rails of stairs and drop edges

content/house.md needs these levels:

levels:
  - { id: main-level, name: "Main level" }

2 spaces: 1 drafted, 1 of them with questions; 1 left out.
`);
});
