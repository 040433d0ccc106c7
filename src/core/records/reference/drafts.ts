import { untoldOf, untoldWords, type Untold } from '../../fact/index.js';
import { problemAt, type Path, type Problem } from '../../../base/problem/index.js';
import type { Draft } from '../draft.js';
import type { CategoryDraft } from '../read-category.js';
import type { OptionDraft } from '../read-option.js';
import type { RoomDraft } from '../read-room.js';

interface Chosen {
  readonly room: RoomDraft;
  readonly path: Path;
}

/** What options do not tell yet, once for each: something to look at while it is only considered, a warning once it is the standard or
 *  chosen; an error where it is chosen and figures are made from what is missing. */
export function draftReferences({ options, categories, rooms }: Draft): readonly Problem[] {
  const chosen = new Map<string, Chosen>();
  const standard = new Map<string, Chosen>();
  for (const room of rooms) {
    for (const { category, path, ...selection } of room.selections) {
      const contracted = `${category}/${selection.standard ?? ''}`;
      if (selection.standard !== undefined && !standard.has(contracted))
        standard.set(contracted, { room, path: [...path, 'standard'] });
      const id = `${category}/${selection.chosen ?? ''}`;
      if (selection.chosen !== undefined && !chosen.has(id)) chosen.set(id, { room, path: [...path, 'chosen'] });
    }
  }
  return options.flatMap((option) => {
    const category = categories.find(({ slug }) => slug === option.category);
    if (!option.whole || !category?.rules || !isAsking(category) || !hasFamily(option, category)) return [];
    const id = `${option.category}/${option.slug}`;
    const untold = untoldOf(option.whole, { by: category.record.raw.measure.by, rules: category.rules });
    const at = chosen.get(id) ?? standard.get(id);
    // What the contract holds has a price, too.
    const figured = chosen.has(id)
      ? untold.filter((one) => isFigured(one, category))
      : standard.has(id)
        ? untold.filter(isOfPrice)
        : [];
    const rest = untold.filter((one) => !figured.includes(one));
    return [
      ...(at && figured.length > 0 ? [untoldProblem(option, at, figured)] : []),
      ...(rest.length > 0 ? [draftProblem(option, rest, at !== undefined)] : []),
    ];
  });
}

/** May be asked what its options tell: what it says wrong may be what they have from it. */
function isAsking({ record: { sound, meant } }: CategoryDraft): boolean {
  const isThere = (key: string): boolean => sound([key]) && !meant(key);
  return sound(['measure']) && isThere('options') && isThere('families');
}

/** That there is no such family has been said, and may be all that is missing. */
function hasFamily({ record }: OptionDraft, category: CategoryDraft): boolean {
  const { family } = record.raw;
  return family === undefined || Object.hasOwn(category.record.raw.families ?? {}, family);
}

function isOfPrice({ key }: Pick<Untold, 'key'>): boolean {
  return key.endsWith('.labor');
}

/** Days are figured from the lead time, prices with labor, quantities from what the measure works with. */
function isFigured({ key }: Untold, { measuredFrom }: CategoryDraft): boolean {
  return key === 'lead' || isOfPrice({ key }) || [...measuredFrom].some((name) => key === `attributes.${name}`);
}

function untoldProblem({ slug, record }: OptionDraft, { room, path }: Chosen, untold: readonly Untold[]): Problem {
  const is = path.at(-1) === 'chosen' ? 'chosen' : 'the standard';
  const message = `'${slug}' is ${is}, and does not tell its ${untoldWords(untold.map(byKey))}`;
  const fix = `write ${keysOf(untold)} in ${record.origin.file}`;
  return problemAt(room.record.origin, path, 'option-untold', message, { fix });
}

function draftProblem({ record }: OptionDraft, untold: readonly Untold[], stands: boolean): Problem {
  const message = `a draft: it does not tell its ${untoldWords(untold.map(byKey))}`;
  const fix = `write ${keysOf(untold)}${stands ? '' : ' by the time it is chosen'}`;
  const severity = stands ? 'warning' : 'notice';
  return problemAt(record.origin, ['name'], 'option-draft', message, { fix, severity });
}

/** An attribute by the key that is to be written, then as its category calls it: `face (width)`. */
function byKey(untold: Untold): Untold {
  const [, name] = untold.key.split('.');
  const isAttribute = untold.key.startsWith('attributes.') && name !== undefined;
  return isAttribute && name !== untold.what ? { ...untold, what: `${name} (${untold.what})` } : untold;
}

/** `lead, attributes (face, stock) and care`, as they are written in the record. */
function keysOf(untold: readonly Untold[]): string {
  const own = untold.map(({ key }) => key.split('.'));
  const names = [...new Set(own.map(([name = '']) => name))].map((name) => {
    const parts = own.flatMap(([key, part]) => (key === name && part !== undefined ? [part] : []));
    return parts.length === 0 ? name : `${name}: { ${parts.map((part) => `${part}: …`).join(', ')} }`;
  });
  return names.join(', ');
}
