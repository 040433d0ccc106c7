import { untoldOf, untoldWords } from '../core/fact/index.js';
import { lookUp, type Book, type BookRoom, type LookUp } from '../core/book/index.js';
import { printDay, printMoneyChange } from '../base/units/index.js';

/** What stands in the way of issuing for construction, by what it is. */
export interface Blocker {
  readonly kind: 'unsigned' | 'open' | 'missing' | 'untold' | 'not-covered' | 'caution';
  /** A sentence with its place. */
  readonly text: string;
}

/** What the kinds of blockers are called, in the order of telling. */
const blockerTitles: Readonly<Record<Blocker['kind'], string>> = {
  unsigned: 'Not signed',
  open: 'Not decided',
  missing: 'Missing',
  untold: 'Not told yet',
  'not-covered': 'Not covered by an approved change order',
  caution: 'Cautions that nobody accepted',
};

/** All that stands in the way of issuing for construction: rooms that are not as they were signed, choices that are open, work and finishes
 *  that nobody does, chosen products that do not tell what is issued of them, change that no approved change order covers, cautions that nobody accepted. `hasSlots`: does the house's record say what
 *  each room must have? Without it each room is asked for floor, ceiling and walls. Empty when nothing does. */
export function issueBlockers(book: Book, { hasSlots }: { readonly hasSlots: boolean }): readonly Blocker[] {
  const look = lookUp(book);
  const told = (kind: Blocker['kind'], texts: readonly string[]): Blocker[] => texts.map((text) => ({ kind, text }));
  return [
    ...told('unsigned', unsigned(book)),
    ...told('open', openChoices(look)),
    ...told('missing', [
      ...book.scope.findings
        .filter(({ kind }) => kind !== 'overlap')
        .map(({ source, line, room, what }) => `${source}:${line}: ${look.roomTitle(room)}: ${what}`),
      ...(hasSlots ? [] : book.rooms.flatMap((room) => bareSurfaces(room, look))),
    ]),
    ...told('untold', untold(look)),
    ...told('not-covered', notCovered(book)),
    ...told(
      'caution',
      book.cautions
        .filter(({ accepted }) => accepted === undefined)
        .map(({ room, placeText, title, seen }) => `${look.roomTitle(room)}, ${placeText}: ${title}: ${seen}`),
    ),
  ];
}

function unsigned({ rooms }: Book): readonly string[] {
  if (!rooms.some(({ signed }) => signed)) return ['no issue is signed by owner and builder'];
  return rooms.flatMap(({ source, number, name, signed }) => {
    if (!signed || signed.state === 'signed') return [];
    const how =
      signed.state === 'new'
        ? `is new since issue ${signed.issue} was signed`
        : `changed since issue ${signed.issue} was signed`;
    const what = signed.what.length === 0 ? '' : `: ${signed.what.join(', ')}`;
    return [`${source}:1: ${number} ${name} ${how}${what}`];
  });
}

function openChoices({ book, roomTitle }: LookUp): readonly string[] {
  return book.selections
    .filter(({ state }) => state === 'open')
    .map(({ room, placeText, category, decision, source, line }) => {
      const isDue = decision.state === 'late' || decision.state === 'due-soon';
      const when = `${isDue ? 'was to be decided' : 'to be decided'} by ${printDay(decision.by)}`;
      return `${source}:${line}: ${roomTitle(room)}, ${placeText}: ${category} is open and ${when}`;
    });
}

/** Products that are chosen, whose part of what is issued would be empty. */
function untold({ book, category }: LookUp): readonly string[] {
  const chosen = new Set(
    book.selections.flatMap((selection) =>
      selection.chosen === undefined ? [] : [`${selection.category}/${selection.chosen}`],
    ),
  );
  return book.options.flatMap((option) => {
    const asked = category(option.category);
    if (!asked || !chosen.has(option.id)) return [];
    const attributes = Object.fromEntries(option.attributes.map(({ name, attribute }) => [name, attribute]));
    const missing = untoldOf({ ...option, attributes }, { by: asked.measure.by, rules: asked.attributes });
    return missing.length === 0 ? [] : [`${option.source}:1: ${option.name} does not tell its ${untoldWords(missing)}`];
  });
}

/** Floor, ceiling and walls that no selection covers. */
function bareSurfaces(room: BookRoom, look: LookUp): readonly string[] {
  const { measure, source, number, name } = room;
  const covered = new Set(look.selectionsOf(room).flatMap(({ places }) => places.map(({ id }) => id)));
  const walls = measure.walls.filter(({ openTo }) => openTo === undefined).map(({ id }) => id);
  const parts = [...covered].filter((id) => id.startsWith('ceiling'));
  const bare = [
    ...(measure.floor.net > 0 && !covered.has('floor') ? ['floor'] : []),
    ...(measure.ceiling.net > 0 && parts.length === 0 ? ['ceiling'] : []),
    ...(walls.length > 0 && !walls.some((id) => covered.has(id)) ? ['walls'] : []),
  ];
  return bare.map((what) => `${source}:1: ${number} ${name}: nothing covers its ${what}`);
}

function notCovered({ money }: Book): readonly string[] {
  if (money.agreed.notCovered === 0) return [];
  const amount = printMoneyChange(money.agreed.notCovered, 'always');
  return [`${amount} of change is not covered by an approved change order: draft one with bookmatch compare --draft`];
}

/** Blockers for a terminal, under their titles. */
export function printBlockers(blockers: readonly Blocker[]): string {
  return (Object.keys(blockerTitles) as Blocker['kind'][])
    .flatMap((kind) => {
      const texts = blockers.filter((blocker) => blocker.kind === kind).map(({ text }) => `    ${text}\n`);
      return texts.length === 0 ? [] : [`  ${blockerTitles[kind]}\n${texts.join('')}`];
    })
    .join('');
}
