import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { featureKinds } from '../../src/core/feature/index.js';

const formats = ['length', 'dimension', 'coordinate'];
const ajv = new Ajv2020({ strict: true, formats: Object.fromEntries(formats.map((name) => [name, true])) });
ajv.addKeyword('read-by');

const written: Record<string, Record<string, unknown>> = {
  'chimney-breast': {
    wall: 'north',
    at: `8'`,
    width: `7'`,
    depth: `2'`,
    height: `16'`,
    firebox: { width: `3'-6"`, height: `3'`, sill: `1'` },
    hearth: { width: `7'`, depth: `1'-8"`, thickness: `2"`, height: `1'` },
  },
  'drop-edge': { wall: 'south', at: `0'`, run: `14'`, drop: `10'-6"` },
  stair: { rise: `10'-6"`, risers: 17, going: `10 1/2"`, width: `3'-6"`, rails: 1, x: `4'`, y: `0'`, go: 'north' },
  timber: {
    count: 4,
    length: `19'`,
    width: `7 1/2"`,
    depth: `11 1/2"`,
    species: 'larch',
    density: '36 lb / cu ft',
    'end-allowances': [`4"`, `0"`],
    joinery: 'Tenon',
    run: 'north-south',
    at: `4'`,
    spacing: `6'`,
    from: `1'`,
    underside: `8'`,
  },
  niche: { wall: 'east', at: `2'`, width: `1'-2"`, height: `1'-8"`, sill: `3'-6"`, depth: `3 1/2"` },
  'half-wall': { x: `1'`, y: `2'`, go: 'east', run: `4'`, height: `3'-6"`, thickness: `4 1/2"` },
  'wet-place': { x: `6'`, y: `6'-6"`, width: `5'`, depth: `3'-6"` },
  skylight: { x: `4'`, y: `3'`, width: `2'`, length: `4'`, depth: `1'`, head: 'level', foot: 'plumb' },
  soffit: { wall: 'north', at: `0'`, length: `10'`, depth: `2'`, drop: `1'` },
  'built-in': { wall: 'west', at: `4'`, width: `6'`, depth: `1'-8"`, height: `1'-6"` },
};

test.each(featureKinds.map((kind) => [kind.kind, kind] as const))(
  '%s: the record format passes, a stray key and a bare number do not',
  (name, kind) => {
    const validate = ajv.compile(kind.schema);
    const record = { kind: name, id: 'one', name: 'One', ...written[name] };
    expect(validate(record), ajv.errorsText(validate.errors)).toBe(true);
    expect(validate({ ...record, colour: 'red' })).toBe(false);
    for (const [key, value] of Object.entries(written[name] ?? {})) {
      const length = typeof value === 'string' && /['"]$/.test(value);
      if (length) expect(validate({ ...record, [key]: 3 }), key).toBe(false);
    }
  },
);
