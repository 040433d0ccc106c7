import { printAmount } from '../../../base/units/index.js';
import { limits } from '../limits.js';
import { FileRefused } from '../refused.js';
import { makeScanner, type Scanner } from './scanner.js';
import { isList, type Entity, type StepFile, type Value } from './value.js';

/** Editions of ISO 16739 whose entities are known here, as files name them. */
const schemas = /^IFC(2X3|4|4X3)(_|$)/u;

/** Takes a file of ISO 10303-21 apart: one section of data, entities of one type each. Throws FileRefused where the file is no such
 *  file, is cut off, or asks for more than `limits`. Nothing of a file is run, and nothing that it names is looked up. */
export function readStep(text: string): StepFile {
  if (text.length > limits.characters) throw tooLarge();
  const scan = makeScanner(text);
  if (!scan.skip('ISO-10303-21;')) {
    const fix = 'export the model as an IFC file in STEP text: its first line is ISO-10303-21;';
    throw new FileRefused('model-form', 'this is no model in the form of ISO 10303-21', fix);
  }
  scan.expect('HEADER;');
  const schema = headerSchema(scan);
  scan.expect('DATA;');
  const entities = new Map<number, Entity>();
  while (!scan.skip('ENDSEC;')) {
    const at = scan.place();
    const entity = scan.entity();
    if (entities.has(entity.id)) {
      const fix = 'export the model again: each entity has a number of its own';
      throw new FileRefused('model-id-twice', `#${entity.id} is there twice`, fix, at);
    }
    entities.set(entity.id, entity);
  }
  scan.expect('END-ISO-10303-21;');
  return { schema, entities };
}

export function tooLarge(): FileRefused {
  const most = printAmount(limits.characters / 1_000_000, 0);
  const fix = 'export the rooms of this house alone';
  return new FileRefused('model-too-large', `the model has more than ${most} MB`, fix);
}

/** The schema that the header names, if it is one that is known. */
function headerSchema(scan: Scanner): string {
  let named: string | undefined;
  let at = scan.place();
  while (!scan.skip('ENDSEC;')) {
    const start = scan.place();
    const { type, args } = scan.header();
    if (type !== 'FILE_SCHEMA') continue;
    at = start;
    named = firstText(args[0]);
  }
  if (named !== undefined && schemas.test(named.toUpperCase())) return named.toUpperCase();
  const message = named === undefined ? 'the header names no schema' : `the schema '${named.slice(0, 40)}' is not read`;
  throw new FileRefused('model-schema', message, 'export the model as IFC2X3, IFC4 or IFC4X3', at);
}

function firstText(value: Value): string | undefined {
  const first = isList(value) ? value[0] : undefined;
  return typeof first === 'string' ? first : undefined;
}
