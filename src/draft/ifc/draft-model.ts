import { positionOf, problemIn, type Outcome, type Problem } from '../../base/problem/index.js';
import { limits } from './limits.js';
import { modelOf, type Model } from './model.js';
import { northLines, railingLines } from './notes.js';
import { readHoles } from './opening/hole.js';
import { FileRefused } from './refused.js';
import { draftRooms } from './room/draft-rooms.js';
import { readSpaces, type Taken } from './room/read-spaces.js';
import { spaceTitle } from './room/space.js';
import { readStep, tooLarge } from './step/read-step.js';
import { roomPath } from './prove.js';

/** What an architect's model comes to. */
export interface ModelDraft {
  /** Records by their path, `content/rooms/kitchen.md`: of rooms that the house does not have yet. */
  readonly files: ReadonlyMap<string, string>;
  /** Entries of `levels:` in content/house.md, from the lowest up, and whether the house has each. */
  readonly levels: readonly { readonly line: string; readonly isKnown: boolean }[];
  /** Each space of the model, in the order of its numbers there. */
  readonly spaces: readonly SpaceReport[];
  /** What is told of the model as a whole, a line each. */
  readonly notes: readonly string[];
}

export interface SpaceReport {
  /** `#30 101 Kitchen`. */
  readonly title: string;
  /** Its record; absent where it is left out. */
  readonly path?: string;
  /** What is asked of whoever knows the house, in half sentences. */
  readonly asks: readonly string[];
  /** Why it is left out. */
  readonly why?: string;
}

/** A house without any room. */
export const nothingTaken: Taken = { numbers: [], marks: [], rooms: [], levels: [] };

/** Drafts rooms from the text of a model (ISO 16739 in the form of ISO 10303-21), in the units of the house in force. `file` names the
 *  model in problems. What cannot be read at all is a problem and no value; a space that cannot is told among `spaces`. */
export function draftModel(
  { file, text }: { readonly file: string; readonly text: string },
  taken: Taken = nothingTaken,
): Outcome<ModelDraft> {
  try {
    return { value: draftOf(modelOf(readStep(text)), taken), problems: [] };
  } catch (error) {
    if (!(error instanceof FileRefused)) throw error;
    const at = positionOf(text, error.offset);
    return { problems: [problemIn({ file, text }, at, error.code, error.message, { fix: error.fix })] };
  }
}

/** Whether a file of so many bytes is more than is read, before it is. */
export function modelTooLarge(file: string, bytes: number): Problem | undefined {
  if (bytes <= limits.characters) return undefined;
  const { code, message, fix } = tooLarge();
  return problemIn({ file, text: '' }, { line: 1, column: 1 }, code, message, { fix });
}

function draftOf(model: Model, taken: Taken): ModelDraft {
  const count = model.all('IFCSPACE').length;
  if (count === 0) {
    const fix = 'export the model with its rooms as spaces: IFCSPACE';
    throw new FileRefused('model-empty', 'the model has no spaces', fix);
  }
  if (count > limits.spaces) {
    const fix = 'export the rooms of this house alone';
    throw new FileRefused('model-too-large', `the model has ${count} spaces, more than ${limits.spaces}`, fix);
  }
  const { spaces, leftOut, turn, asks } = readSpaces(model, taken);
  const { holes, unread } = readHoles(model, turn);
  const drafted = draftRooms(model, { spaces, holes, turn }, taken);
  const files = new Map<string, string>();
  const reports = spaces.map((space) => {
    const { entity, slug } = space;
    const title = spaceTitle(space);
    const path = roomPath(slug);
    const told = [...(asks.get(space) ?? []), ...(drafted.asks.get(space) ?? [])];
    const why = drafted.leftOut.get(space);
    const text = drafted.texts.get(space);
    if (why !== undefined || text === undefined) return { id: entity.id, report: { title, asks: [], why: why ?? '' } };
    if (taken.rooms.includes(slug)) {
      return { id: entity.id, report: { title, asks: [], why: `${path} is there already, and stays as it is` } };
    }
    files.set(path, text);
    return { id: entity.id, report: { title, path, asks: told } };
  });
  const others = leftOut.map((one) => ({
    id: one.entity.id,
    report: { title: spaceTitle(one), asks: [], why: one.why },
  }));
  return {
    files,
    levels: drafted.levels.map(({ line, isKnown }) => ({ line, isKnown })),
    spaces: [...reports, ...others].toSorted((a, b) => a.id - b.id).map(({ report }) => report),
    notes: [
      ...northLines(model, turn),
      ...drafted.told,
      ...unread.map(({ entity, why }) => `opening #${entity.id} is left out: ${why}`),
      ...railingLines(model),
    ],
  };
}
