import { readFileSync } from 'node:fs';
import { inLocale, type Locale } from '../../../src/base/units/index.js';
import { draftModel, type ModelDraft, type Taken } from '../../../src/draft/index.js';

/** The model of the small house's addition, worked by hand in its comments: feet, IFC4, two rooms. */
export const additionText = readFileSync(new URL('../../cases/model.ifc', import.meta.url), 'utf8');

/** A model with lines put in place of others, each of which it must have. */
export function edited(text: string, ...edits: readonly (readonly [from: string, to: string])[]): string {
  return edits.reduce((before, [from, to]) => {
    if (!before.includes(from)) throw new Error(`the model has no ${from}`);
    return before.replace(from, () => to);
  }, text);
}

/** Adds an entity and answers its number as `#12`. */
type Add = (type: string, args: string) => string;
export type Triple = readonly [number, number, number];

/** What a space is made of. */
export interface GivenSpace {
  readonly number: string;
  readonly name: string;
  /** One item of its body. */
  readonly body: (add: Add) => string;
  readonly at?: Triple;
  readonly storey?: number;
}

export interface GivenModel {
  readonly schema?: string;
  /** `MILLI`, `CENTI` or none, of metres. */
  readonly prefix?: string;
  /** Degrees by which the building is turned counter-clockwise in its model. */
  readonly turn?: number;
  /** Heights of the storeys. */
  readonly storeys?: readonly number[];
  readonly spaces: readonly GivenSpace[];
}

export const real = (figure: number): string =>
  Number.isInteger(figure) ? `${figure}.` : String(figure).toUpperCase();
export const tuple = (figures: readonly number[]): string => `(${figures.map(real).join(',')})`;

/** A model of such spaces, as text. */
export function modelText({ schema = 'IFC4', prefix, turn = 0, storeys = [0], spaces }: GivenModel): string {
  const lines: string[] = [];
  const add: Add = (type, args) => {
    lines.push(`#${lines.length + 1}=${type}(${args});`);
    return `#${lines.length}`;
  };
  const guid = (): string => `'${String(lines.length).padStart(22, '0')}'`;
  const point = (place: readonly number[]): string => add('IFCCARTESIANPOINT', tuple(place));
  const placed = (place: Triple, degrees: number, within: string): string => {
    const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const along = add('IFCDIRECTION', tuple([cos, sin, 0]));
    const axes = add('IFCAXIS2PLACEMENT3D', `${point(place)},${add('IFCDIRECTION', '(0.,0.,1.)')},${along}`);
    return add('IFCLOCALPLACEMENT', `${within},${axes}`);
  };
  const unit = add('IFCSIUNIT', `*,.LENGTHUNIT.,${prefix === undefined ? '$' : `.${prefix}.`},.METRE.`);
  const units = add('IFCUNITASSIGNMENT', `(${unit})`);
  const axes = add('IFCAXIS2PLACEMENT3D', `${point([0, 0, 0])},$,$`);
  const context = add('IFCGEOMETRICREPRESENTATIONCONTEXT', `$,'Model',3,1.E-5,${axes},$`);
  const project = add('IFCPROJECT', `${guid()},$,'Rooms',$,$,$,$,(${context}),${units}`);
  const whole = placed([0, 0, 0], turn, '$');
  const levels = storeys.map((height, index) => {
    const stand = placed([0, 0, height], 0, whole);
    const args = `${guid()},$,'Level ${index + 1}',$,$,${stand},$,$,.ELEMENT.,${real(height)}`;
    return { stand, entity: add('IFCBUILDINGSTOREY', args) };
  });
  add('IFCRELAGGREGATES', `${guid()},$,$,$,${project},(${levels.map(({ entity }) => entity).join()})`);
  for (const { number, name, body, at = [0, 0, 0], storey = 0 } of spaces) {
    const level = levels[storey] as (typeof levels)[number];
    const shape = add('IFCSHAPEREPRESENTATION', `${context},'Body','Any',(${body(add)})`);
    const product = add('IFCPRODUCTDEFINITIONSHAPE', `$,$,(${shape})`);
    const stand = placed(at as Triple, 0, level.stand);
    const args = `${guid()},$,'${number}',$,$,${stand},${product},'${name}',.ELEMENT.,.INTERNAL.,$`;
    const space = add('IFCSPACE', args);
    add('IFCRELAGGREGATES', `${guid()},$,$,$,${level.entity},(${space})`);
  }
  return [
    'ISO-10303-21;',
    'HEADER;',
    "FILE_DESCRIPTION((''),'2;1');",
    "FILE_NAME('','',(''),(''),'','','');",
    `FILE_SCHEMA(('${schema}'));`,
    'ENDSEC;',
    'DATA;',
    ...lines,
    'ENDSEC;',
    'END-ISO-10303-21;',
    '',
  ].join('\n');
}

type Corner = readonly [number, number];

/** An outline that stands so high, with holes. */
export function extruded(
  outline: readonly Corner[],
  height: number,
  holes: readonly (readonly Corner[])[] = [],
): GivenSpace['body'] {
  return (add) => {
    const curve = (ring: readonly Corner[]): string => {
      const points = [...ring, ring[0] as Corner].map((corner) => add('IFCCARTESIANPOINT', tuple(corner)));
      return add('IFCPOLYLINE', `(${points.join()})`);
    };
    const rings = [curve(outline), ...holes.map(curve)];
    const [outer, ...inner] = rings;
    const profile =
      inner.length === 0
        ? add('IFCARBITRARYCLOSEDPROFILEDEF', `.AREA.,$,${outer}`)
        : add('IFCARBITRARYPROFILEDEFWITHVOIDS', `.AREA.,$,${outer},(${inner.join()})`);
    const axes = add('IFCAXIS2PLACEMENT3D', `${add('IFCCARTESIANPOINT', '(0.,0.,0.)')},$,$`);
    return add('IFCEXTRUDEDAREASOLID', `${profile},${axes},${add('IFCDIRECTION', '(0.,0.,1.)')},${real(height)}`);
  };
}

/** A body by its faces: places, and for each face their numbers from 0. */
export function faceted(places: readonly Triple[], faces: readonly (readonly number[])[]): GivenSpace['body'] {
  return (add) => {
    const points = places.map((place) => add('IFCCARTESIANPOINT', tuple(place)));
    const shell = faces.map((face) => {
      const loop = add('IFCPOLYLOOP', `(${face.map((index) => points[index]).join()})`);
      return add('IFCFACE', `(${add('IFCFACEOUTERBOUND', `${loop},.T.`)})`);
    });
    return add('IFCFACETEDBREP', add('IFCCLOSEDSHELL', `(${shell.join()})`));
  };
}

/** The same as a set of triangles or of polygons that count their corners. */
export function indexed(
  places: readonly Triple[],
  faces: readonly (readonly number[])[],
  as: 'triangles' | 'polygons',
): GivenSpace['body'] {
  return (add) => {
    const list = add('IFCCARTESIANPOINTLIST3D', `(${places.map(tuple).join()})`);
    const numbers = faces.map((face) => `(${face.map((index) => index + 1).join()})`);
    if (as === 'triangles') return add('IFCTRIANGULATEDFACESET', `${list},$,.T.,(${numbers.join()}),$`);
    const polygons = numbers.map((face) => add('IFCINDEXEDPOLYGONALFACE', face));
    return add('IFCPOLYGONALFACESET', `${list},.T.,(${polygons.join()}),$`);
  };
}

export const metricHouse: Locale = { units: 'metric', currency: 'EUR' };

/** What a model comes to; every problem fails the test. */
export function drafted(
  text: string,
  { taken, locale }: { readonly taken?: Taken; readonly locale?: Locale } = {},
): ModelDraft {
  const work = (): ReturnType<typeof draftModel> => draftModel({ file: 'model.ifc', text }, taken);
  const { value, problems } = locale ? inLocale(locale, work) : work();
  if (!value) throw new Error(JSON.stringify(problems, null, 2));
  return value;
}

/** The code by which a model is refused, with its words. */
export function refusal(text: string): string {
  const { value, problems } = draftModel({ file: 'model.ifc', text });
  const [problem, ...more] = problems;
  if (value || !problem || more.length > 0) throw new Error('the model was not refused');
  return `${problem.code}: ${problem.message}`;
}

/** Why the model's spaces are left out, each with its title. */
export function leftOut({ spaces }: ModelDraft): readonly string[] {
  return spaces.flatMap(({ title, why }) => (why === undefined ? [] : [`${title}: ${why}`]));
}

/** A metric house's draft of one room, 'Hall'. */
export const draftHall = (body: GivenSpace['body']): ModelDraft =>
  drafted(modelText({ spaces: [{ number: '1', name: 'Hall', body }] }), { locale: metricHouse });

/** The ceiling's lines in the record of such a room. */
export function ceilingOf(body: GivenSpace['body']): string {
  const one = draftHall(body);
  if (leftOut(one).length > 0) throw new Error(leftOut(one).join());
  const [, text = ''] = /^(?=ceiling:)([^]*?)^---$/mu.exec(one.files.get('content/rooms/hall.md') ?? '') ?? [];
  return text.trimEnd();
}
