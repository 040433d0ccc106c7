import { problemAt, type Origin, type Path, type Problem } from '../../../base/problem/index.js';
import { looseItems } from '../checked-record.js';
import type { Draft } from '../draft.js';
import type { HouseDraft } from '../read-house.js';
import { signersIn } from '../read-signers.js';
import { some, unknown, unknownOption } from './unknown.js';

/** Names of levels, allowances and milestones are each written once; allowances list known categories. */
export function houseReferences(draft: Draft): readonly Problem[] {
  const { house, slugs } = draft;
  if (!house) return [];
  const { origin } = house.record;
  const twice = ['levels', 'allowances', 'milestones'].flatMap((list) => {
    const seen = new Set<string>();
    return looseItems(house.record, list).flatMap((item, index) => {
      const id = (item as { id?: unknown } | null)?.id;
      if (typeof id !== 'string') return [];
      if (!seen.has(id)) return seen.add(id) && [];
      const message = `${list} has '${id}' twice`;
      return [problemAt(origin, [list, index, 'id'], 'id-duplicate', message, { fix: 'give each its own id' })];
    });
  });
  const unlisted = house.allowances.flatMap(({ value, index }) =>
    value.categories.flatMap((name, place) => {
      if (slugs.categories.has(name)) return [];
      const message = `allowance '${value.id}' lists a category '${name}', which there is not`;
      const lives = 'Categories live in content/categories/';
      const path = ['allowances', index, 'categories', place];
      return [unknown(origin, path, { code: 'category-unknown', message, name, among: slugs.categories, lives })];
    }),
  );
  return [
    ...twice,
    ...unlisted,
    ...pictureProblems(house, slugs.rooms),
    ...zeroProblems(house),
    ...invoiceReferences(house, draft),
    ...signersTwice(house),
  ];
}

/** One certificate in two hands says nothing of who signed. */
function signersTwice({ record }: HouseDraft): readonly Problem[] {
  const seen = new Map<string, string>();
  return signersIn(record).flatMap(({ path, role, fingerprint }): readonly Problem[] => {
    const first = seen.get(fingerprint);
    if (first === undefined) return seen.set(fingerprint, role) && [];
    const message =
      first === role
        ? `the ${role}'s certificate stands among the signers twice`
        : `the ${role} signs with the ${first}'s certificate: no book that both sign with it will be taken for signed by both`;
    const fix = first === role ? 'take this one out' : `write the fingerprint of the ${role}'s own certificate`;
    return [problemAt(record.origin, [...path, 'fingerprint'], 'signer-twice', message, { fix, severity: 'warning' })];
  });
}

function pictureProblems({ whole, record: { origin } }: HouseDraft, among: ReadonlySet<string>): readonly Problem[] {
  const name = whole?.picture;
  if (name === undefined || among.has(name)) return [];
  const message = `the house is pictured by a room '${name}', which there is not`;
  const lives = 'Rooms live in content/rooms/';
  return [unknown(origin, ['picture'], { code: 'room-unknown', message, name, among, lives })];
}

/** Money that a new house has yet to fill in. */
function zeroProblems({ allowances, whole, record: { origin } }: NonNullable<Draft['house']>): readonly Problem[] {
  const contract =
    whole?.contract.sum === 0
      ? [
          zeroProblem(
            origin,
            ['contract', 'sum'],
            'the contract sum is at nothing',
            'write the sum that the contract names',
          ),
        ]
      : [];
  const empty = allowances.filter(
    ({ value: { amount } }) => (amount.by === 'lump' ? amount.sum : amount.rate.amount) === 0,
  );
  return [
    ...contract,
    ...empty.map(({ value, index }) => {
      const message = `the allowance '${value.id}' is at nothing: all that draws on it goes over`;
      const fix = 'write what the contract sets aside; where that is nothing, leave the allowance out';
      return zeroProblem(origin, ['allowances', index, 'amount'], message, fix);
    }),
  ];
}

function zeroProblem(origin: Origin, path: Path, message: string, fix: string): Problem {
  return problemAt(origin, path, 'amount-zero', message, { fix, severity: 'warning' });
}

/** An invoice is for an option that there is, of a category that the allowance pays for. */
function invoiceReferences(house: NonNullable<Draft['house']>, draft: Draft): readonly Problem[] {
  const { origin } = house.record;
  return house.allowances.flatMap(({ value, index }) =>
    (value.invoices ?? []).flatMap(({ option }, place): readonly Problem[] => {
      const path = ['allowances', index, 'invoices', place, 'for'];
      const [category = '', slug = ''] = option.split('/');
      const among = value.categories;
      if (!among.includes(category)) {
        const message = `allowance '${value.id}' does not cover the category '${category}'`;
        const lives = `It covers ${some(among)}`;
        return [unknown(origin, path, { code: 'allowance-category', message, name: category, among, lives })];
      }
      const options = draft.slugs.options.get(category) ?? new Set<string>();
      return options.has(slug) ? [] : [unknownOption(origin, path, slug, { category, draft })];
    }),
  );
}

/** Milestones follow known ones, and none follows itself by way of others. */
export function milestoneReferences({ house }: Draft): readonly Problem[] {
  if (!house) return [];
  const { milestoneIds } = house;
  const { origin } = house.record;
  const problems: Problem[] = [];
  const after = new Map<string, string>();
  for (const { value, index } of house.milestones) {
    // Of an id that is written twice, which is a problem of its own, the first counts.
    if (value.when.by !== 'after' || after.has(value.id)) continue;
    const name = value.when.after;
    after.set(value.id, name);
    if (!milestoneIds || milestoneIds.has(name)) continue;
    const message = `milestone '${value.id}' follows '${name}', which there is not`;
    const lives = `Milestones are ${some(milestoneIds)}`;
    const path = ['milestones', index, 'after'];
    problems.push(unknown(origin, path, { code: 'milestone-unknown', message, name, among: milestoneIds, lives }));
  }
  const told = new Set<string>();
  for (const { value, index } of house.milestones) {
    const ring = ringFrom(value.id, after);
    if (!ring || after.get(value.id) === undefined || ring.some((id) => told.has(id))) continue;
    for (const id of ring) told.add(id);
    const message = `milestones follow each other in a ring: ${[...ring, value.id].join(' after ')}`;
    const path = ['milestones', index, 'after'];
    problems.push(problemAt(origin, path, 'milestone-cycle', message, { fix: 'give one of them a date' }));
  }
  return problems;
}

/** The ring of milestones that leads from one back to itself, if there is one. */
function ringFrom(start: string, after: ReadonlyMap<string, string>): readonly string[] | undefined {
  const ring = [start];
  for (let next = after.get(start); next !== undefined; next = after.get(next)) {
    if (next === start) return ring;
    if (ring.includes(next)) return undefined;
    ring.push(next);
  }
  return undefined;
}
