import {
  picturedRoom,
  drawnRoom,
  type BookHouseAlternative,
  type BookOption,
  type BookRoom,
  type BookSelection,
  type Instead,
} from '../core/book/index.js';
import { svgText } from '../base/svg/index.js';
import { drawCutaway, looksSame, roomView, screenPalette, type Cutaway, type CutawayOptions } from '../draw/index.js';
import { candidatesOf } from './choice-rows.js';
import type { View } from './view.js';

/** Inches that a picture may take beside others. */
const small = { width: 3, height: 4 } as const;

type Asked = Omit<CutawayOptions, 'palette'> & { readonly instead?: Instead };

/** A room as it is decided in a Book, with what is asked for in place of it. */
export function drawPicture(room: BookRoom, view: View, { instead, ...options }: Asked): Cutaway {
  return drawCutaway(drawnRoom(room, view, instead), { ...options, palette: screenPalette });
}

/** A picture without numbers in a file of its own in the book's folder, so that pages stay light. */
export interface PictureFile {
  readonly path: string;
  readonly cutaway: Cutaway;
}

export function pictureText({ cutaway }: PictureFile): string {
  return `${svgText(cutaway.drawing.svg)}\n`;
}

/** A room as decided today, small. */
export function todayPicture(room: BookRoom, view: View): PictureFile {
  const cutaway = drawPicture(room, view, { id: 'look', plain: true, box: small });
  return { path: `assets/pictures/${room.slug}.svg`, cutaway };
}

export interface OptionPicture extends PictureFile {
  readonly option: BookOption;
}

/** Each option of a place in its room, from one view and cut to the place; none where no two of them can be told apart. */
export function choicePictures(selection: BookSelection, view: View): readonly OptionPicture[] {
  const room = view.room(selection.room);
  const page = view.choicePath(selection);
  if (!room || page === undefined) return [];
  const focus = selection.places.map(({ id }) => id);
  const asked = { id: 'look', view: roomView(room, focus), plain: true, box: small, focus };
  const draw = (option: BookOption, bounds?: Cutaway['bounds']): OptionPicture => ({
    option,
    path: `assets/pictures/${page.replace(/\.html$/, '')}/${option.slug}.svg`,
    cutaway: drawPicture(room, view, {
      ...asked,
      title: `${view.roomTitle(room.slug)} with ${option.name}`,
      instead: new Map([[selection.id, option.slug]]),
      ...(bounds && { bounds }),
    }),
  });
  const options = candidatesOf(selection, view).map(({ option }) => option);
  const own = options.map((option) => draw(option));
  // Posts and caps reach further than others: what is compared stands at the same place and scale.
  const all = spanOf(own.map(({ cutaway }) => cutaway.bounds));
  const isOne = own.every(({ cutaway: { bounds } }) => JSON.stringify(bounds) === JSON.stringify(all));
  const pictures = isOne ? own : options.map((option) => draw(option, all));
  return alike(pictures).length > 1 ? pictures : [];
}

function spanOf(bounds: readonly Cutaway['bounds'][]): Cutaway['bounds'] {
  return {
    left: Math.min(...bounds.map(({ left }) => left)),
    right: Math.max(...bounds.map(({ right }) => right)),
    top: Math.min(...bounds.map(({ top }) => top)),
    bottom: Math.max(...bounds.map(({ bottom }) => bottom)),
  };
}

/** Pictures that show the same, together. */
export function alike<One extends PictureFile>(pictures: readonly One[]): readonly (readonly One[])[] {
  const groups: One[][] = [];
  for (const picture of pictures) {
    const group = groups.find(([first]) => first && looksSame(first.cutaway, picture.cutaway));
    if (group) group.push(picture);
    else groups.push([picture]);
  }
  return groups;
}

/** A room that sets of choices would change to the eye. */
export interface SetPictures {
  readonly room: BookRoom;
  readonly today: PictureFile;
  readonly sets: readonly (PictureFile & { readonly set: BookHouseAlternative })[];
}

/** Rooms as decided today and with each set that can be seen there, from one view. */
export function setPictures(view: View): readonly SetPictures[] {
  const { rooms, alternatives } = view.book;
  if (alternatives.length === 0) return [];
  return rooms.flatMap((room): readonly SetPictures[] => {
    const today = todayPicture(room, view);
    const sets = alternatives.flatMap((set) => {
      const picture = setPicture(set, room, view);
      return picture && !looksSame(picture.cutaway, today.cutaway) ? [{ ...picture, set }] : [];
    });
    return sets.length === 0 ? [] : [{ room, today, sets }];
  });
}

/** What is chosen by the set itself: where the rest of an allowance stands meanwhile is nobody's choice. */
function setPicture({ slug, name, lines }: BookHouseAlternative, room: BookRoom, view: View): PictureFile | undefined {
  const own = lines.filter(({ selection, isRest }) => !isRest && view.selection(selection)?.room === room.slug);
  if (own.length === 0) return undefined;
  const instead = new Map(own.map(({ selection, option }) => [selection, option?.slice(option.indexOf('/') + 1)]));
  const title = `${view.roomTitle(room.slug)}: ${name}`;
  const cutaway = drawPicture(room, view, { id: 'look', plain: true, box: small, title, instead });
  return { path: `assets/pictures/sets/${slug}/${room.slug}.svg`, cutaway };
}

/** All pictures that pages of a book show from files. */
export function pictureFiles(view: View): readonly PictureFile[] {
  const { selections, alternatives } = view.book;
  const first = picturedRoom(view.book);
  const sets = alternatives.length === 0 ? [] : setPictures(view);
  const files = [
    ...(first ? [todayPicture(first, view)] : []),
    ...selections.flatMap((selection) => choicePictures(selection, view)),
    ...sets.flatMap(({ today, sets: pictures }) => [today, ...pictures]),
  ];
  return [...new Map(files.map((file) => [file.path, file])).values()];
}
