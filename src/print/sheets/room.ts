import type { BookRoom, KeyLevel, LookUp } from '../../core/book/index.js';
import type { Surface } from '../../core/model/index.js';
import {
  counted,
  printArea,
  printAreaBeside,
  printLength,
  printLengthBeside,
  printMoneyChange,
  type Area,
  type Length,
} from '../../base/units/index.js';
import { printRoom, type PrintDrawing } from '../drawings.js';
import { printPicture, type PrintPicture } from '../picture.js';
import { fromOtherSide, layoutsOnPaper, otherSideWords, quantityLines, saidOnce } from '../../table/index.js';
import { printTable, readProse, type PrintTable, type ProseBlock as Block } from '../../write/index.js';
import { locator } from '../levels.js';
import { shorten } from '../shorten.js';
import { cautionRow, type CautionRow } from './cautions.js';
import { openChoice, selectionRow, type OpenChoice, type SelectionRow } from './selection-row.js';

export interface RoomSheet {
  readonly slug: string;
  readonly number: string;
  readonly name: string;
  /** Number and name, short enough for the title block. */
  readonly sheet: string;
  readonly level: string;
  /** Where it lies on its level. */
  readonly locator: PrintDrawing | null;
  /** In the columns they are set in. */
  readonly facts: readonly (readonly Fact[])[];
  readonly body: readonly Block[];
  readonly plan: PrintDrawing;
  /** Is there room for the facts beside the plan? */
  readonly besidePlan: boolean;
  /** Null where nothing that is selected is seen. */
  readonly picture: PrintPicture | null;
  readonly elevations: readonly PrintDrawing[];
  /** Ceiling, chimney breast, section of an edge. */
  readonly features: readonly PrintDrawing[];
  readonly selections: readonly SelectionRow[];
  readonly layouts: readonly PrintTable[];
  readonly notes: readonly { readonly key: string; readonly place: string; readonly text: string }[];
  readonly cautions: readonly CautionRow[];
  readonly open: readonly OpenChoice[];
  readonly summary: string;
  /** Middle of the names of the room's initials fields: a slug, because a field's name may hold no full stop. */
  readonly initials: string;
  /** Short digest of what initials on this page agree to: the same in every issue in which nothing of it changed. */
  readonly digest: string;
  /** What is signed of it, and what changed since. */
  readonly standing: string;
}

interface Fact {
  readonly label: string;
  readonly text: string;
  /** Metric, where the house asks for it. */
  readonly beside: string;
}

export function roomSheet(room: BookRoom, look: LookUp, digest: string, levels: readonly KeyLevel[]): RoomSheet {
  const selections = look.selectionsOf(room);
  const noted = selections.filter(({ note }) => note !== undefined);
  const keys = new Map(noted.map(({ id }, index) => [id, String(index + 1)]));
  const { plan, besidePlan, elevations, features } = printRoom(room, look);
  const facts = roomFacts(room, look);
  const lines = quantityLines(look, selections);
  return {
    slug: room.slug,
    number: room.number,
    name: room.name,
    sheet: shorten(`${room.number} ${room.name}`, 44),
    level: look.levelName(room.level),
    locator: locator(room, levels),
    facts: besidePlan ? [facts] : inColumns(facts),
    body: readProse(room.body),
    plan,
    besidePlan,
    picture: printPicture(room, look, !besidePlan),
    elevations,
    features,
    layouts: layoutsOnPaper(lines, look).map((table) => printTable(table, () => undefined)),
    selections: selections.map((selection) => selectionRow(selection, look, keys.get(selection.id) ?? '')),
    notes: noted.map(({ id, placeText, note }) => ({
      key: keys.get(id) ?? '',
      place: saidOnce(placeText),
      text: note ?? '',
    })),
    cautions: look.cautionsIn(room.slug).map(cautionRow),
    open: selections.filter(({ state }) => state === 'open').map((selection) => openChoice(selection, look)),
    summary: summaryText(room, selections.length),
    initials: room.slug,
    digest,
    standing: signedText(room),
  };
}

function signedText({ signed }: BookRoom): string {
  if (!signed || signed.state === 'new') return '';
  if (signed.state === 'signed') return `As signed in issue ${signed.issue}: initials given there stand.`;
  return `Changed since issue ${signed.issue} was signed: ${signed.what.join(', ')}.`;
}

function roomFacts(room: BookRoom, look: LookUp): readonly Fact[] {
  const { measure } = room;
  const { beside } = look.book.house;
  const area = (label: string, value: Area): Fact => ({
    label,
    text: printArea(value),
    beside: beside ? printAreaBeside(value) : '',
  });
  const length = (label: string, value: Length): Fact => ({
    label,
    text: printLength(value),
    beside: beside ? printLengthBeside(value) : '',
  });
  const faces = (label: string, list: readonly Surface[] = []): readonly Fact[] =>
    list.length === 0 ? [] : [area(label, list.reduce((sum, { net }) => sum + net, 0) as Area)];
  const level = measure.lowest === measure.highest;
  const isSloped = measure.ceiling.facets.some(({ slope }) => slope !== 0);
  const others = fromOtherSide(room, look);
  const walls = measure.walls.filter(({ openTo }) => openTo === undefined);
  const net = walls.reduce((sum, wall) => sum + wall.net, 0) as Area;
  return [
    area('Floor', measure.floor.net),
    area(isSloped ? 'Ceiling, on the slope' : 'Ceiling', measure.ceiling.net),
    area('Walls less openings', net),
    ...faces('Steps of the ceiling', measure.steps),
    ...faces('Risers of the floor', measure.risers),
    length('Wall run', measure.wallRun),
    ...(level
      ? [length('Ceiling height', measure.highest)]
      : [length('Height, lowest', measure.lowest), length('Height, highest', measure.highest)]),
    ...(others.length > 0 ? [{ label: 'Insulated for sound', text: otherSideWords(others), beside: '' }] : []),
    ...measure.features.flatMap((feature) =>
      feature.facts
        .slice(0, 2)
        .map(({ label, text }) => ({ label: `${feature.name}: ${label.toLowerCase()}`, text, beside: '' })),
    ),
  ];
}

function inColumns(facts: readonly Fact[]): readonly (readonly Fact[])[] {
  const half = Math.ceil(facts.length / 2);
  return [facts.slice(0, half), facts.slice(half)].filter((column) => column.length > 0);
}

function summaryText(room: BookRoom, count: number): string {
  const choices = count === 0 ? 'No selections' : counted(count, 'selection');
  if (count === 0) return choices;
  const open = room.open === 0 ? 'none open' : `${room.open} open`;
  const change =
    room.change === 0 ? 'no change to the contract' : `${printMoneyChange(room.change)} against the contract`;
  return `${choices}, ${open}, ${change}`;
}
