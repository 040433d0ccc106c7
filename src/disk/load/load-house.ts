import { layHouse, type LayHouse } from '../../core/lay/index.js';
import { measureHouse, type MeasureHouse } from '../../core/measure/index.js';
import type { LaidHouse, Records, RoomMeasure, Source } from '../../core/model/index.js';
import type { Problem } from '../../base/problem/index.js';
import { readRecords, type ReadRecords } from '../../core/records/index.js';
import { readHouseFolder } from '../store/index.js';

/** A house folder read and measured, ready to compose Books from. */
export interface LoadedHouse {
  /** Both absent when the records cannot be read far enough. */
  readonly house?: {
    readonly records: Records;
    readonly measures: ReadonlyMap<string, RoomMeasure>;
    readonly laid: LaidHouse;
  };
  /** The records' text. */
  readonly sources: readonly Source[];
  readonly problems: readonly Problem[];
  /** How many record files were read. */
  readonly files: number;
}

/** Reads and measures a house folder. Every stage reports all it can: a room that does not measure does not hide an
 *  option that is missing elsewhere. */
export async function loadHouse(houseDir: string): Promise<LoadedHouse> {
  const folder = await readHouseFolder(houseDir);
  return measureFiles(folder.files, folder.problems);
}

/** Readers that may keep what several houses have in common. */
export interface HouseReaders {
  readonly readRecords: ReadRecords;
  readonly measureHouse: MeasureHouse;
  readonly layHouse: LayHouse;
}

/** Reads and measures records whose text is at hand, such as those of an older version. */
export function measureFiles(
  sources: readonly Source[],
  found: readonly Problem[] = [],
  readers: HouseReaders = { readRecords, measureHouse, layHouse },
): LoadedHouse {
  const read = readers.readRecords(sources);
  const problems = [...found, ...read.problems];
  const files = sources.length;
  if (!read.value) return { sources, problems, files };
  const measured = readers.measureHouse(read.value);
  problems.push(...measured.problems);
  if (!measured.value) return { sources, problems, files };
  const { problems: disagreeing, ...laying } = readers.layHouse(read.value, measured.value);
  // Among rooms of which one is missing, what does not fit is no news.
  if (measured.value.size === read.value.rooms.length) problems.push(...disagreeing);
  return { house: { records: read.value, ...laying }, sources, problems, files };
}
