import { describe, expect, test } from 'vitest';
import { draftModel } from '../../../src/draft/index.js';
import { atMost, processorTime } from '../../processor-time.js';
import { additionText, drafted, edited, extruded, leftOut, modelText, refusal, type GivenSpace } from './model-text.js';

/** A model is a stranger's file. What is no model, or is made to keep a machine busy, is refused by name, at once. */

const end = 'ENDSEC;\nEND-ISO-10303-21;';

function within(milliseconds: number, work: () => void): void {
  const took = processorTime(work);
  expect(took).toBeLessThan(atMost(milliseconds, took));
}

describe('files that are not read', () => {
  test.each<[string, string, string]>([
    ['nothing', '', 'model-form: this is no model in the form of ISO 10303-21'],
    ['another form', '{"type":"IFC"}', 'model-form: this is no model in the form of ISO 10303-21'],
    ['the XML form', '<?xml version="1.0"?>', 'model-form: this is no model in the form of ISO 10303-21'],
    [
      'without its last line',
      edited(additionText, ['END-ISO-10303-21;\n', '']),
      'model-cut-off: the file ends in the middle',
    ],
    ['a number twice', edited(additionText, ['#31=', '#30=']), 'model-id-twice: #30 is there twice'],
    ['too large a figure', edited(additionText, ['#7,9.)', '#7,1e999)']), "model-number: '1e999' is not a number"],
    ['no number', edited(additionText, ['#7,9.)', '#7,NaN)']), "model-number: 'NaN' is not a number"],
    ['infinity', edited(additionText, ['#7,9.)', '#7,Infinity)']), "model-number: 'Infinity' is not a number"],
    [
      'lists in lists',
      edited(additionText, [end, `#900=IFCX(${'('.repeat(60)}${')'.repeat(60)});\n${end}`]),
      'model-too-deep: lists stand in each other more than 50 deep',
    ],
    [
      'another schema',
      edited(additionText, ["'IFC4'", "'AUTOMOTIVE_DESIGN'"]),
      "model-schema: the schema 'AUTOMOTIVE_DESIGN' is not read",
    ],
    ['no schema', edited(additionText, ["FILE_SCHEMA(('IFC4'));\n", '']), 'model-schema: the header names no schema'],
    [
      'no unit',
      edited(additionText, ['(#4)', '()']),
      'model-units: the model does not say in what unit its lengths are',
    ],
    [
      'a unit of itself',
      edited(additionText, ['(0.3048),#1)', '(0.3048),#4)']),
      'model-units: the model does not say in what unit its lengths are',
    ],
    [
      'a unit of no size',
      edited(additionText, ['(0.3048),#1)', '(0.),#1)']),
      'model-units: the model does not say in what unit its lengths are',
    ],
    [
      'a program in it',
      edited(additionText, ['#7,9.)', '#7,eval(process.exit()))']),
      "model-form: ',9.)' is not expected here",
    ],
    ['no space', additionText.replaceAll('IFCSPACE', 'IFCZONE'), 'model-empty: the model has no spaces'],
  ])('%s', (what, text, words) => {
    if (what === 'a program in it') expect(refusal(text)).toMatch(/^model-form: /u);
    else expect(refusal(text)).toBe(words);
  });

  test('cut off at any sign, every prefix of the file', () => {
    for (let length = 0; length < additionText.trimEnd().length; length += 7) {
      const words = refusal(additionText.slice(0, length));
      expect(words, `of ${length} signs`).toMatch(length < 13 ? /^model-form: / : /^model-(cut-off|form): /u);
    }
  });

  test('more than 100 MB', () => {
    within(500, () => expect(refusal(' '.repeat(100_000_001))).toBe('model-too-large: the model has more than 100 MB'));
  });

  test('more than five million values', () => {
    const many = edited(additionText, [end, `#900=IFCX((${'1,'.repeat(5_000_001)}1));\n${end}`]);
    within(8000, () => expect(refusal(many)).toBe('model-too-large: the model has more than 5 million values'));
  });

  test('lists without an end', () => {
    within(500, () =>
      expect(refusal(edited(additionText, [end, `#900=IFCX(${'('.repeat(5_000_000)}`]))).toMatch(/^model-too-deep/u),
    );
  });

  test('a text or a comment without an end', () => {
    expect(refusal(edited(additionText, ["'Den',.E", "'Den,.E"]))).toMatch(/^model-(cut-off|form)/u);
    expect(refusal(edited(additionText, [end, '/* ']))).toBe('model-cut-off: the file ends in the middle');
  });

  test('more than 500 spaces', () => {
    const lines = Array.from({ length: 499 }, (_, index) => `#${1000 + index}=IFCSPACE('a',$,'1',$,$,$,$,$,$,$,$);`);
    expect(refusal(edited(additionText, [end, `${lines.join('\n')}\n${end}`]))).toBe(
      'model-too-large: the model has 501 spaces, more than 500',
    );
  });

  test('the place in the file is told', () => {
    const { problems } = draftModel({ file: 'a.ifc', text: edited(additionText, ['#31=', '#30=']) });
    expect(problems[0]).toMatchObject({
      file: 'a.ifc',
      at: { line: 32, column: 1 },
      excerpt: '#30=IFCLOCALPLACEMENT(#16,#9);',
    });
  });
});

describe('spaces that are left out, the others drafted', () => {
  const solid = '#35=IFCEXTRUDEDAREASOLID(#34,#9,#7,9.);';

  test.each<[string, string, string]>([
    [
      'a placement in itself',
      edited(additionText, ['#31=IFCLOCALPLACEMENT(#16,#9)', '#31=IFCLOCALPLACEMENT(#31,#9)']),
      'its placement #31 stands in itself, or more than 60 deep',
    ],
    [
      'a body of itself',
      edited(additionText, [solid, '#35=IFCBOOLEANRESULT(.DIFFERENCE.,#35,#63);']),
      'its body is made of itself, or more than 30 deep',
    ],
    [
      'a copy of itself',
      edited(additionText, [
        solid,
        `#35=IFCMAPPEDITEM(#500,#501);\n#500=IFCREPRESENTATIONMAP(#9,#36);\n#501=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#6,$,$);`,
      ]),
      'its body is made of itself, or more than 30 deep',
    ],
    [
      'a curve of itself',
      edited(
        additionText,
        ['$,#33)', '$,#510)'],
        [solid, `${solid}\n#510=IFCCOMPOSITECURVE((#511),.F.);\n#511=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#510);`],
      ),
      'its outline is made of itself',
    ],
    [
      'a reference to nothing',
      edited(additionText, ['#34,#9,#7,9.', '#34,#9,#999,9.']),
      'it refers to #999, which is not there',
    ],
    [
      'a direction of no length',
      edited(additionText, ['#34,#9,#7,9.', '#34,#9,#520,9.'], ['#36=', '#520=IFCDIRECTION((0.,0.,0.));\n#36=']),
      'a direction in it has no length',
    ],
    ['no height', edited(additionText, ['#34,#9,#7,9.', '#34,#9,#7,0.']), 'its body encloses nothing'],
    [
      'corners that are not there',
      edited(additionText, ['(1,2,3,4,5,6,1)', '(1,2,3,4,5,7,1)']),
      'it counts corners that are not there',
    ],
    [
      'a corner on the moon',
      edited(additionText, ['(14.,10.)', '(14.,1.0E9)']),
      "it lies more than 10 km from the model's origin",
    ],
    [
      'an outline that crosses itself',
      edited(additionText, ['(14.,0.),(14.,10.)', '(14.,10.),(14.,0.)']),
      'its floor is in several parts',
    ],
    [
      'a kind of body that is not read',
      edited(additionText, [solid, '#35=IFCREVOLVEDAREASOLID(#34,#9,#7,9.);']),
      'its body is an IFCREVOLVEDAREASOLID, which is not read',
    ],
    [
      'a kind of outline that is not read',
      edited(additionText, [
        '#34=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#33)',
        '#34=IFCCIRCLEPROFILEDEF(.AREA.,$,$,5.)',
      ]),
      'its outline is an IFCCIRCLEPROFILEDEF, which is not read',
    ],
    [
      'a union',
      edited(additionText, [solid, '#35=IFCBOOLEANRESULT(.UNION.,#57,#57);']),
      'its body is a union of two, which is not read',
    ],
    [
      'a cut by what is bounded',
      edited(additionText, [
        solid,
        '#35=IFCBOOLEANRESULT(.DIFFERENCE.,#57,#530);\n#530=IFCPOLYGONALBOUNDEDHALFSPACE(#62,.F.,#9,#33);',
      ]),
      'its body is cut by an IFCPOLYGONALBOUNDEDHALFSPACE, which is not read',
    ],
    ['a text for a figure', edited(additionText, ['#34,#9,#7,9.', "#34,#9,#7,'9'"]), 'a figure in it is missing'],
  ])('%s', (_, text, words) => {
    const [why = '', ...more] = leftOut(drafted(text));
    expect(more).toEqual([]);
    expect(why).toBe(`#30 110 Dining: ${words}`);
  });

  test('copies of copies of copies: 4 to the 12th', () => {
    const levels = Array.from({ length: 12 }, (_, level) => {
      const [map, item, shape] = [600 + level * 10, 601 + level * 10, 602 + level * 10];
      const inner = level === 11 ? '#57' : `#${item + 10}`;
      const items = level === 11 ? inner : Array.from({ length: 4 }, () => inner).join();
      return `#${map}=IFCREPRESENTATIONMAP(#9,#${shape});
#${item}=IFCMAPPEDITEM(#${map},#599);
#${shape}=IFCSHAPEREPRESENTATION(#10,'Body','Any',(${items}));`;
    });
    const operator = '#599=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#6,$,$);';
    const text = edited(
      additionText,
      [solid, `${operator}\n${levels.join('\n')}`],
      ["'SweptSolid',(#35)", "'Any',(#601)"],
    );
    within(4000, () => expect(leftOut(drafted(text))[0]).toMatch(/more than (20000 bodies|5000 faces)/u));
  });

  test('a body of more faces than are read', () => {
    const ring = Array.from({ length: 5200 }, (_, index): readonly [number, number] => {
      const angle = (index / 5200) * 2 * Math.PI;
      return [100 * Math.cos(angle), 100 * Math.sin(angle)];
    });
    const space: GivenSpace = { number: '1', name: 'Hall', body: extruded(ring, 3) };
    within(4000, () =>
      expect(leftOut(drafted(modelText({ spaces: [space] })))).toEqual([
        expect.stringContaining('its body has more than 5000 faces'),
      ]),
    );
  });
});

test('500 spaces in a row take their time, not more', () => {
  const spaces = Array.from({ length: 500 }, (_, index): GivenSpace => ({
    number: String(index + 1),
    name: `Bedroom ${index + 1}`,
    body: extruded(
      [
        [0, 0],
        [3, 0],
        [3, 4],
        [0, 4],
      ],
      2.5,
    ),
    at: [(index % 25) * 3.1, Math.floor(index / 25) * 4.1, 0],
  }));
  const text = modelText({ spaces });
  within(20_000, () => expect(drafted(text).files.size).toBe(500));
}, 120_000);
