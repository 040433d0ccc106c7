import type { BookRoom, BookSelection } from '../../book/index.js';
import type { OpeningMeasure } from '../../model/index.js';
import { printLength } from '../../units/index.js';
import type { LookUp } from '../../book/index.js';

/** Door and opening schedule: each opening of the house once, in order of its mark. */
export interface OpeningSchedule {
  readonly doors: readonly OpeningRow[];
  readonly windows: readonly OpeningRow[];
}

export interface OpeningRow {
  readonly mark: string;
  readonly kind: string;
  readonly from: string;
  readonly to: string;
  readonly width: string;
  readonly height: string;
  readonly sill: string;
  readonly action: string;
  /** Category and what is chosen, one a line. */
  readonly finishes: readonly { readonly category: string; readonly text: string; readonly isOpen: boolean }[];
  readonly note: string;
}

export function makeOpeningSchedule(look: LookUp): OpeningSchedule {
  const rows = look.book.rooms.flatMap((room) =>
    room.measure.openings
      .filter(({ own }) => own)
      .map((opening) => ({ opening, row: openingRow(room, opening, look) })),
  );
  rows.sort((a, b) => collator.compare(a.row.mark, b.row.mark));
  return {
    doors: rows.filter(({ opening }) => opening.kind !== 'window').map(({ row }) => row),
    windows: rows.filter(({ opening }) => opening.kind === 'window').map(({ row }) => row),
  };
}

const collator = new Intl.Collator('en', { numeric: true });

function openingRow(room: BookRoom, opening: OpeningMeasure, look: LookUp): OpeningRow {
  const on = look.book.selections.filter((selection) => isOn(selection, room, opening));
  return {
    mark: opening.mark,
    kind: { door: 'Door', window: 'Window', cased: 'Cased opening', open: 'Opening' }[opening.kind],
    from: look.roomTitle(room.slug),
    to: opening.to === 'outside' ? 'Outside' : look.roomTitle(opening.to),
    width: printLength(opening.width),
    height: printLength(opening.height),
    sill: opening.kind === 'window' ? printLength(opening.sill) : '',
    action: actionText(room, opening, look),
    finishes: on.map((selection) => ({
      category: `${look.categoryName(selection.category)}${sideText(selection, on, look)}`,
      text: look.option(selection.category, selection.chosen)?.name ?? (selection.state === 'none' ? 'none' : 'open'),
      isOpen: selection.state === 'open',
    })),
    note: opening.record.by === 'own' ? (opening.record.note ?? '') : '',
  };
}

/** The room whose side it is on, where both sides have one of the kind. */
function sideText(selection: BookSelection, on: readonly BookSelection[], look: LookUp): string {
  const sides = on.filter(({ category }) => category === selection.category);
  return sides.length < 2 ? '' : `, side of ${look.roomTitle(selection.room).split(' ')[0] ?? ''}`;
}

/** Is the selection on this opening, in the room that records it or in the one behind it? */
function isOn(selection: BookSelection, room: BookRoom, opening: OpeningMeasure): boolean {
  if (selection.room !== room.slug && selection.room !== opening.to) return false;
  return selection.places.some(({ id }) => id === opening.mark);
}

/** How it moves, from facts: 'hinges left seen from 101, swings into 104 Pantry'. */
function actionText(room: BookRoom, opening: OpeningMeasure, look: LookUp): string {
  if (opening.kind !== 'door') return '';
  if (opening.operation === 'pocket' || opening.operation === 'sliding') return opening.operation;
  const hinge = opening.hinge === undefined ? '' : `hinges ${opening.hinge} seen from ${room.number}`;
  const swing =
    opening.swing === undefined
      ? ''
      : `swings into ${opening.swing === 'outside' ? 'the open' : look.roomTitle(opening.swing)}`;
  const leaves = opening.operation === 'double' ? 'double' : '';
  return [leaves, hinge, swing].filter((part) => part !== '').join(', ');
}
