import { parse } from 'yaml';
import { readFrontMatter, slugOfPath, type RawHouse, type RawRoom } from '../../core/records/index.js';
import type { ModelDraft } from '../ifc/index.js';
import { usualUse } from '../record/use.js';
import type { DraftedRoom } from './drafted-room.js';

interface RoomsOfModel {
  readonly rooms: readonly DraftedRoom[];
  readonly levels: RawHouse['levels'];
  /** Those whose use the model's names do not tell. */
  readonly guessed: readonly DraftedRoom[];
}

/** Rooms and levels of an architect's model, for a new house: each room with a use, so that one knows what is to be chosen in it. */
export function roomsOfModel({ files, levels }: Pick<ModelDraft, 'files' | 'levels'>): RoomsOfModel {
  const drafted = [...files].map(([path, text]) => {
    const values = (readFrontMatter({ path, text }).value?.data ?? {}) as unknown as RawRoom & { use?: RawRoom['use'] };
    const room = { slug: slugOfPath(path), values: { ...values, use: values.use ?? usualUse }, text };
    return { room, isGuessed: values.use === undefined };
  });
  return {
    rooms: drafted.map(({ room }) => room),
    levels: parse(levels.map(({ line }) => line).join('\n')) as RawHouse['levels'],
    guessed: drafted.filter(({ isGuessed }) => isGuessed).map(({ room }) => room),
  };
}
