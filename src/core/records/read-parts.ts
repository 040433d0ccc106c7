import type { OptionPart } from '../model/index.js';
import { problemAt, type Path, type Problem } from '../../base/problem/index.js';
import {
  parsePercent,
  parseQuantity,
  parseRate,
  parseWeight,
  unitName,
  type Decimal,
  type Unit,
} from '../../base/units/index.js';
import type { Checked } from './checked-record.js';
import { passed } from './formats.js';
import type { Pricing } from './price-form.js';
import type { RawOption, RawPack, RawPrice } from './raw/option.js';

/** A part of an option and where its material price stands. */
export interface LocatedPart {
  readonly part: OptionPart;
  readonly path: Path;
}

const noWaste: Decimal = { amount: 0, scale: 2 };

interface Priced extends RawPrice {
  readonly pack?: RawPack;
  readonly waste?: string;
}

/** Parts of an option: the one part `main` of a price, or the parts as written. Only what the schema has passed. */
export function readParts({ raw, sound }: Checked<RawOption>): readonly LocatedPart[] {
  const whole: LocatedPart[] = [];
  if (raw.price !== undefined && sound(['price']) && sound(['pack']) && sound(['waste'])) {
    const { price, pack, waste } = raw;
    const priced = { ...price, ...(pack && { pack }), ...(waste !== undefined && { waste }) };
    whole.push({ part: readPart('main', priced), path: ['price'] });
  }
  if (typeof raw.parts !== 'object' || raw.parts === null) return whole;
  const parts = Object.entries(raw.parts).filter(([name]) => sound(['parts', name]));
  return [...whole, ...parts.map(([name, part]) => ({ part: readPart(name, part), path: ['parts', name] }))];
}

function readPart(part: string, { material, labor, pack, waste }: Priced): OptionPart {
  const { rate, unit } = passed(parseRate(material));
  return {
    part,
    unit,
    material: rate,
    ...(labor !== undefined && { labor: passed(parseRate(labor)).rate }),
    ...(pack && { pack: { name: pack.name, holds: passed(parseQuantity(pack.holds)).amount } }),
    waste: waste === undefined ? noWaste : passed(parsePercent(waste)),
  };
}

/** Every figure of a part is for one and the same unit: for the category's, where that is known. That the material's is another is then
 *  told by `reference/option.ts`, and what agrees with the category is not at fault. */
export function unitsProblems(
  record: Checked<RawOption>,
  parts: readonly LocatedPart[],
  pricing: Pricing | undefined,
): readonly Problem[] {
  const { raw, origin, sound } = record;
  const problems = parts.flatMap((part) => unitProblems(part, record, pricing));
  const first = parts[0]?.part;
  if (raw.weight !== undefined && first && sound(['weight'])) {
    const { per } = passed(parseWeight(raw.weight));
    if (per !== first.unit && per !== pricing?.asked[first.part]) {
      const message = `the weight is for ${unitName(per)}, the price for ${unitName(first.unit)}`;
      problems.push(
        problemAt(origin, ['weight'], 'unit-differs', message, {
          fix: `say the weight of one ${unitName(first.unit)}`,
        }),
      );
    }
  }
  return problems;
}

function unitProblems(
  { part, path }: LocatedPart,
  { raw, origin }: Checked<RawOption>,
  pricing: Pricing | undefined,
): Problem[] {
  const differs = (unit: Unit): boolean => unit !== part.unit && unit !== pricing?.asked[part.part];
  const written = (part.part === 'main' && path[0] === 'price' ? raw.price : raw.parts?.[part.part]) as Priced;
  const problems: Problem[] = [];
  const labor = written.labor === undefined ? undefined : passed(parseRate(written.labor));
  if (labor && differs(labor.unit)) {
    const message = `labor is for ${unitName(labor.unit)}, material for ${unitName(part.unit)}`;
    problems.push(
      problemAt(origin, [...path, 'labor'], 'unit-differs', message, { fix: 'price both for the same unit' }),
    );
  }
  const pack = path[0] === 'price' ? raw.pack : written.pack;
  if (!pack) return problems;
  const holds = passed(parseQuantity(pack.holds));
  const place: Path = path[0] === 'price' ? ['pack', 'holds'] : [...path, 'pack', 'holds'];
  if (differs(holds.unit)) {
    const message = `the pack holds ${unitName(holds.unit)}, the price is for ${unitName(part.unit)}`;
    problems.push(
      problemAt(origin, place, 'unit-differs', message, { fix: `say how many ${unitName(part.unit)} it holds` }),
    );
  } else if (holds.amount <= 0) {
    problems.push(
      problemAt(origin, place, 'pack-empty', 'the pack holds nothing', {
        fix: `say how many ${unitName(part.unit)} it holds`,
      }),
    );
  }
  return problems;
}
