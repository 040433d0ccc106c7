import {
  isCommitted,
  mayTake,
  selectionId,
  type HouseAlternative,
  type Selection,
  type SelectionFact,
} from '../../model/index.js';
import { problemAt, type Path, type Problem } from '../../../base/problem/index.js';
import { printDay } from '../../../base/units/index.js';
import type { Draft } from '../draft.js';
import { personUnknown, some, unknown, unknownCategory, unknownOption } from './unknown.js';

/** Alternatives name places, categories and options that there are; what they could not be chosen for is a warning. */
export function alternativeReferences(draft: Draft): readonly Problem[] {
  const places = new Map(
    draft.rooms.flatMap(({ slug, selections }) =>
      selections.map((selection) => [selectionId(slug, selection), selection] as const),
    ),
  );
  return draft.alternatives.flatMap(({ whole }) => {
    if (!whole) return [];
    const { origin, by, choices, throughout } = whole;
    return [
      ...personUnknown(draft, by, { origin, path: ['by'], did: 'drawn up by' }),
      ...choices.flatMap((choice) => choiceProblems(choice, whole, places, draft)),
      ...throughout.flatMap((one) => throughoutProblems(one, whole, places, draft)),
    ];
  });
}

type Places = ReadonlyMap<string, Selection>;

function choiceProblems(
  { selection: id, option }: HouseAlternative['choices'][number],
  { origin }: HouseAlternative,
  places: Places,
  draft: Draft,
): readonly Problem[] {
  const { rooms, slugs } = draft;
  const path: Path = ['choices', id];
  const selection = places.get(id);
  if (!selection) {
    // The room that has it may be one that cannot be read.
    const isBroken =
      rooms.length < slugs.rooms.size ||
      rooms.some(({ record }) => !record.sound(['selections']) || record.meant('selections'));
    if (isBroken) return [];
    const [room = ''] = id.split('/');
    const own = [...places.keys()].filter((each) => each.startsWith(`${room}/`));
    const message = `there is no selection '${id}'`;
    const lives =
      own.length > 0
        ? `Selections of ${room} are ${some(own)}`
        : 'Write room/category/place, as in the addresses of the book';
    const code = 'selection-unknown';
    return [unknown(origin, path, { code, message, name: id, among: places.keys(), lives, onKey: true })];
  }
  if (option === 'none') return orderedProblems(selection, option, origin, path);
  const { category, standard, considering, chosen } = selection;
  const among = slugs.options.get(category) ?? [];
  if (![...among].includes(option)) return [unknownOption(origin, path, option, { category, draft })];
  const known = [standard, ...considering, chosen].includes(option);
  const withdrawn = draft.options.find((each) => each.category === category && each.slug === option)?.whole?.withdrawn;
  return [
    ...(known ? [] : [notConsidered(origin, path, { id, option })]),
    ...(withdrawn
      ? [
          warning(
            origin,
            path,
            'option-withdrawn',
            `'${option}' was withdrawn on ${printDay(withdrawn.on)}: ${withdrawn.why}`,
            withdrawn.instead === undefined
              ? `name another option of ${category}`
              : `'${withdrawn.instead}' is offered instead`,
          ),
        ]
      : []),
    ...orderedProblems(selection, option, origin, path),
  ];
}

function notConsidered(
  origin: HouseAlternative['origin'],
  path: Path,
  { id, option }: { readonly id: string; readonly option: string },
): Problem {
  const message = `'${option}' is neither the standard at ${id} nor considered there`;
  return warning(
    origin,
    path,
    'chosen-not-considered',
    message,
    'it is priced all the same; add it to considering so that others are compared with it',
  );
}

/** What is ordered can be compared with; it costs more than is shown to change it. */
function orderedProblems(
  selection: Selection,
  option: string,
  origin: HouseAlternative['origin'],
  path: Path,
): readonly Problem[] {
  if (!isCommitted(selection) || selection.chosen === option) return [];
  const last = selection.facts.findLast(({ option: of }) => of !== undefined);
  const message = `'${selection.chosen ?? ''}' was ${last ? factWords(last) : 'ordered'} there`;
  return [
    warning(
      origin,
      path,
      'alternative-ordered',
      message,
      'what the supplier keeps is not in its figures; the change needs instead-of in the room’s record',
    ),
  ];
}

function factWords({ step, on, number }: SelectionFact): string {
  return `${step} on ${printDay(on)}${number === undefined ? '' : ` as order ${number}`}`;
}

function throughoutProblems(
  { category, option }: HouseAlternative['throughout'][number],
  { origin }: HouseAlternative,
  places: Places,
  draft: Draft,
): readonly Problem[] {
  const { slugs } = draft;
  const path: Path = ['throughout', category];
  if (!slugs.categories.has(category))
    return [unknownCategory(origin, path, category, slugs.categories, { onKey: true })];
  const among = slugs.options.get(category) ?? [];
  if (![...among].includes(option)) return [unknownOption(origin, path, option, { category, draft })];
  if ([...places.values()].some((selection) => mayTake(selection, category, option))) return [];
  const message = `'${option}' is nowhere the standard or considered where it could still be chosen`;
  return [warning(origin, path, 'alternative-nowhere', message, 'name places under choices, or leave it out')];
}

function warning(
  origin: HouseAlternative['origin'],
  path: Path,
  code: 'alternative-nowhere' | 'chosen-not-considered' | 'option-withdrawn' | 'alternative-ordered',
  message: string,
  fix: string,
): Problem {
  return problemAt(origin, path, code, message, { fix, severity: 'warning' });
}
