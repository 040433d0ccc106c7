import { lookUp, optionId, type Book } from '../book/index.js';
import { byText, inLocale, type IsoDate } from '../../base/units/index.js';
import type { RoomNames } from './compare-measures.js';
import { compareOptions } from './compare-options.js';
import { compareRecords } from './compare-records.js';
import { compareRooms } from './compare-rooms.js';
import { selectionComparer } from './compare-selections.js';
import { compareAllowances, compareMilestones, compareTerms } from './compare-terms.js';
import { compareContract, contractTerms } from './contract-terms.js';
import type { Comparison, Side } from './comparison.js';
import { isSigned, type Source } from '../model/index.js';
import { matchOptions, matchRooms } from './match.js';
import { compareCautions, compareFindings } from './notice-change.js';
import type { MarkupRules } from '../price/index.js';
import { choicesAlone, splitMoney, type Between } from './split-money.js';
import { touchedTrades } from './touched-trades.js';

export interface CompareInput {
  readonly from: Book;
  readonly to: Book;
  readonly labels: { readonly from: string; readonly to: string };
  readonly commits?: { readonly from?: string | undefined; readonly to?: string | undefined };
  /** Houses composed from records of both sides, to tell choices, terms and prices apart. */
  readonly between?: Between;
}

/** Compares two Books of one house. Comparing a Book with itself finds nothing. */
export function compare(input: CompareInput): Comparison {
  return inLocale(input.to.house, () => compareBooks(input));
}

function compareBooks({ from, to, labels, commits = {}, between = {} }: CompareInput): Comparison {
  const options = matchOptions(from, to);
  const matchedRooms = matchRooms(from, to);
  const optionNow = new Map(options.flatMap((pair) => (pair.from && pair.to ? [[pair.from.id, pair.to.id]] : [])));
  const slugNow = new Map(
    matchedRooms.flatMap((pair) => (pair.from && pair.to ? [[pair.from.slug, pair.to.slug]] : [])),
  );
  const roomNow = (slug: string): string => slugNow.get(slug) ?? slug;
  const [names, namesBefore] = [lookUp(to), lookUp(from)];
  const roomName: RoomNames = {
    from: (slug) => (slugNow.has(slug) ? names.roomName(roomNow(slug)) : namesBefore.roomName(slug)),
    to: names.roomName,
  };
  const alone = choicesAlone(to, between);
  const compareSelections = selectionComparer({
    from,
    to,
    byChoice: alone,
    sameOption: (category, a, b) =>
      a === undefined || b === undefined ? a === b : optionNow.get(optionId(category, a)) === optionId(category, b),
  });
  const rooms = matchedRooms
    .map((pair) => compareRooms(pair, { from: namesBefore, to: names }, compareSelections, roomName))
    .filter((change) => change !== undefined)
    .sort((a, b) => byText(a.number, b.number));
  const allowances = compareAllowances(from, to, alone);
  const cautions = compareCautions(from, to, roomNow);
  const scope = compareFindings(from, to, roomNow);
  return {
    format: 'bookmatch/comparison/1',
    house: { name: to.house.name, number: to.house.number },
    from: describeSide(from, labels.from, commits.from, to.issues),
    to: describeSide(to, labels.to, commits.to, to.issues),
    rooms,
    priceBook: options.map(compareOptions).filter((change) => change !== undefined),
    allowances,
    terms: compareTerms(from, to),
    contract: compareContract(contractTerms(houseRecord(from)), contractTerms(houseRecord(to))),
    milestones: compareMilestones(from, to),
    cautions,
    scope,
    records: compareRecords(from, to, [...matchedRooms, ...options]),
    money: splitMoney({ from, to, between }, rooms, allowances),
    rules: rulesOf(to),
    trades: touchedTrades(
      rooms.flatMap(({ selections }) => selections),
      [...cautions, ...scope],
      [to, from],
    ),
  };
}

function rulesOf({ money: { markupOn, overageMarkup, workMarkup, creditMarkup, fee } }: Book): MarkupRules {
  return { markupOn, overageMarkup, workMarkup, creditMarkup, ...(fee && { fee }) };
}

function houseRecord({ house, sources }: Book): Source | undefined {
  return sources.find(({ path }) => path === house.source);
}

function describeSide(book: Book, label: string, commit: string | undefined, issues: Book['issues']): Side {
  const { contractSum, today } = book.money;
  const signedOn = signingDay(issues.find(({ number }) => label === `issue-${number}`));
  return {
    label,
    ...(commit !== undefined && { commit }),
    on: book.on,
    contractSum,
    today,
    ...(signedOn !== undefined && { signedOn }),
  };
}

/** The day on which the second of both had signed; undefined while one has not. */
function signingDay(issue: Book['issues'][number] | undefined): IsoDate | undefined {
  if (!issue || !isSigned(issue)) return undefined;
  return issue.signatures
    .map(({ on }) => on)
    .sort()
    .at(-1);
}
