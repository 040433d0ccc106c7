import { attributeFor } from '../fact/index.js';
import {
  goesWithUnits,
  measureParts,
  type Assembly,
  type AttributeRule,
  type Convention,
  type SupplyRule,
} from '../model/index.js';
import { problemAt, type Path, type Problem } from '../../base/problem/index.js';
import { parsePercent, parseUsage, fromHouse, unitName } from '../../base/units/index.js';
import type { Checked } from './checked-record.js';
import { passed, readDimension, readOpeningRule } from './formats.js';
import type { RawAssembly, RawCategory, RawSupply } from './raw/category.js';

/** How a category is measured, from a record that the schema has passed. */
export function readMeasure({ measure }: RawCategory): Convention {
  const { by, openings, along, times, lay, counted, supplies, words, source } = measure;
  const [timesBy, hiddenBy, orderBy] = [measure['times-by'], measure['hidden-by'], measure['order-by']];
  return {
    by,
    openings: passed(readOpeningRule(openings ?? 'none')),
    ...(hiddenBy !== undefined && { hiddenBy: hiddenBy === 'none' ? [] : hiddenBy }),
    ...(along !== undefined && { along }),
    times: times ?? 1,
    ...(timesBy !== undefined && { timesBy }),
    ...(lay !== undefined && { lay }),
    ...(orderBy !== undefined && { orderBy }),
    ...(measure['between-rooms'] !== undefined && { betweenRooms: measure['between-rooms'] }),
    ...(counted !== undefined && { counted }),
    ...(supplies && { supplies: supplies.map(readSupply) }),
    words,
    source,
  };
}

export function readAssembly({ name, over, framing, layers }: RawAssembly): Assembly {
  const { what, share, depth, source } = framing;
  return {
    name,
    over,
    framing: {
      what,
      share: passed(parsePercent(share)),
      rPerInch: fromHouse(framing['r-per-inch'], 'sq ft h °F / Btu in'),
      ...(depth !== undefined && { depth: passed(readDimension(depth)) }),
      source,
    },
    layers: layers.map((layer) => ({ ...layer, r: fromHouse(layer.r, 'sq ft h °F / Btu') })),
  };
}

/** Attributes that the measure works with are among the category's, each of the right kind, and supplies go with something
 *  that is measured. */
export function measureProblems(rules: readonly AttributeRule[], record: Checked<RawCategory>): readonly Problem[] {
  const { raw, sound, origin } = record;
  const measured = sound(['measure']) ? wantedByMeasure(raw) : [];
  const assembled = sound(['assemblies']) && raw.assemblies ? wantedByAssemblies : [];
  const missing = [...measured, ...assembled].flatMap(({ path, who, name, kinds }) => {
    const rule = rules.find((candidate) => candidate.name === name);
    if (rule && kinds.includes(rule.kind)) return [];
    const message = rule
      ? `${who} works with the attribute '${name}', which is of kind ${rule.kind}, not ${kinds.join(' or ')}`
      : `${who} works with the attribute '${name}', which is not among the attributes`;
    const fix = `${rule ? 'write' : 'add'} ${name}: { label: …, kind: ${kinds[0] ?? 'text'}, required: true }`;
    return [problemAt(origin, path, 'attribute-needed', message, { fix })];
  });
  return [...missing, ...(sound(['measure']) ? unitProblems(record) : [])];
}

/** Names of the attributes that counting, supplies and assemblies of a sound record work with. */
export function namesWanted(raw: RawCategory): readonly string[] {
  return [...wantedByMeasure(raw), ...(raw.assemblies ? wantedByAssemblies : [])].map(({ name }) => name);
}

interface Wanted {
  readonly path: Path;
  readonly who: string;
  readonly name: string;
  readonly kinds: readonly AttributeRule['kind'][];
}

/** Attributes by which each way of counting counts. */
const countedBy: Readonly<Record<NonNullable<Convention['counted']>, readonly ReturnType<typeof attributeFor>[]>> = {
  boards: [attributeFor('pieces', 'face'), attributeFor('pieces', 'nominal')],
  sheets: [attributeFor('pieces', 'face'), attributeFor('pieces', 'stock')],
  gallons: [attributeFor('paint', 'coverage')],
};

const jointedBy = (['length', 'width', 'joint'] as const).map((name) => attributeFor('tile', name));

const wantedByAssemblies: readonly Wanted[] = (['r-value', 'thickness-in-place'] as const)
  .map((name) => attributeFor('insulation', name))
  .map(({ name, kind }) => ({ path: ['assemblies'], who: 'an assembly', name, kinds: [kind] }));

function wantedByMeasure({ measure }: RawCategory): readonly Wanted[] {
  const timesBy = measure['times-by'];
  const { counted } = measure;
  return [
    ...(timesBy === undefined
      ? []
      : [{ path: ['measure', 'times-by'], who: 'times-by', name: timesBy, kinds: ['number' as const] }]),
    ...(counted ? countedBy[counted] : []).map(({ name, kind }) => ({
      path: ['measure', 'counted'],
      who: `counting ${counted ?? ''}`,
      name,
      kinds: [kind],
    })),
    ...(measure.supplies ?? []).flatMap((supply, index) => wantedBySupply(supply, ['measure', 'supplies', index])),
  ];
}

function wantedBySupply(supply: RawSupply, path: Path): readonly Wanted[] {
  const who = supply.what;
  const { when = {}, amount } = supply;
  const [timesBy, namedBy] = [supply['times-by'], supply['named-by']];
  const joints = passed(parseUsage(amount)).of === 'cu ft' ? jointedBy : [];
  return [
    ...(timesBy === undefined ? [] : [{ path: [...path, 'times-by'], who, name: timesBy, kinds: ['number' as const] }]),
    ...(namedBy === undefined ? [] : [{ path: [...path, 'named-by'], who, name: namedBy, kinds: ['text' as const] }]),
    ...Object.keys(when).map((name) => ({
      path: [...path, 'when'],
      who,
      name,
      kinds: ['text' as const, 'number' as const, 'yes-no' as const],
    })),
    ...joints.map(({ name, kind }) => ({ path: [...path, 'amount'], who, name, kinds: [kind] })),
  ];
}

function unitProblems({ raw: { measure }, origin }: Checked<RawCategory>): readonly Problem[] {
  const units: readonly string[] = Object.values(measureParts[measure.by]);
  return (measure.supplies ?? []).flatMap(({ what, amount, 'goes-with': goesWith }, index) => {
    const { of } = passed(parseUsage(amount));
    if (goesWith !== undefined && goesWithUnits[goesWith] !== of) {
      const message = `${what} goes with ${goesWith}, counted in ${unitName(goesWithUnits[goesWith])}, and says how much for ${unitName(of)}`;
      const fix = `write how much for ${goesWithUnits[goesWith] === 'each' ? 'each' : `a ${unitName('lin ft')}`}, such as 1 each / ${unitName(goesWithUnits[goesWith])}`;
      return [problemAt(origin, ['measure', 'supplies', index, 'amount'], 'supply-unit', message, { fix })];
    }
    if (goesWith !== undefined) return [];
    const needed = of === 'cu ft' ? 'sq ft' : of;
    if (units.includes(needed)) return [];
    const message = `${what} goes with ${unitName(needed)}, but measuring by ${measure.by} gives ${[...new Set(units)].map(unitName).join(' and ')}`;
    const fix = `write ${what} for so many ${unitName(units[0] ?? 'each')}`;
    return [problemAt(origin, ['measure', 'supplies', index, 'amount'], 'supply-unit', message, { fix })];
  });
}

function readSupply(raw: RawSupply): SupplyRule {
  const { what, amount, when = {}, pack, waste, why, source } = raw;
  const [timesBy, namedBy, goesWith] = [raw['times-by'], raw['named-by'], raw['goes-with']];
  return {
    what,
    usage: passed(parseUsage(amount)),
    ...(timesBy !== undefined && { timesBy }),
    when: Object.entries(when).map(([attribute, says]) => ({ attribute, says })),
    ...(namedBy !== undefined && { namedBy }),
    ...(goesWith !== undefined && { goesWith }),
    ...(pack && { pack: { name: pack.name, holds: pack.holds } }),
    waste: waste === undefined ? { amount: 0, scale: 0 } : passed(parsePercent(waste)),
    ...(why !== undefined && { why }),
    source,
  };
}
