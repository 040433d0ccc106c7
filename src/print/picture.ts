import { drawnRoom, type BookRoom, type LookUp } from '../core/book/index.js';
import { drawCutaway, pictureWords, type CutawayRoom } from '../draw/index.js';
import { palette, ready, type Box, type PrintDrawing } from './drawings.js';

/** A room as it will look, with what its numbers stand for. */
export interface PrintPicture extends PrintDrawing {
  readonly keys: readonly PictureKey[];
  /** On what was taken away, or without a recorded place. */
  readonly unseen: readonly Omit<PictureKey, 'number'>[];
}

interface PictureKey {
  /** 0 where no number has room in the picture. */
  readonly number: number;
  readonly at: string;
  readonly finish: string;
}

/** Inches of paper. On a room's sheet the keys stand beside the picture; a room whose plan takes the width of its sheet has one for the picture too. */
const sheetBox = { width: 4.2, height: 3 };
const wideRoomBox = { width: 4.6, height: 4 };
const coverBox = { width: 6.3, height: 5 };

/** The picture on a room's sheet; null where nothing that is selected is seen. */
export function printPicture(room: BookRoom, look: LookUp, isWide: boolean): PrintPicture | null {
  return pictureOf(drawnRoom(room, look), `${room.slug}-picture`, isWide ? wideRoomBox : sheetBox);
}

/** Without numbers: the room's own sheet has them. */
export function coverPicture(room: BookRoom, look: LookUp): PrintDrawing {
  const { drawing } = drawCutaway(drawnRoom(room, look), { id: 'cover', palette, box: coverBox, plain: true });
  return ready(drawing, drawing.title, pictureWords);
}

export function pictureOf(room: CutawayRoom, id: string, box: Box): PrintPicture | null {
  const { drawing, keys, unseen } = drawCutaway(room, { id, palette, box });
  if (keys.length === 0) return null;
  return {
    ...ready(drawing, 'As it will look', pictureWords),
    keys: keys.map(({ number = 0, at, finish }) => ({ number, at, finish })),
    unseen: unseen.map(({ at, finish }) => ({ at, finish })),
  };
}
