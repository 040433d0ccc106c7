import { photoPath } from '../../core/records/index.js';
import type { Option } from '../../core/model/index.js';
import { problemAt, type Problem } from '../../base/problem/index.js';
import type { Photo } from '../../photo/index.js';
import { readPhotoFile } from '../store/index.js';
import type { OpenHouse } from './open-house.js';

/** Photographs of a house's options as they may be shown, by the option's `<category>/<slug>`, and a warning for each that may not. Pages are made
 *  without these. */
export async function readPhotos(
  open: OpenHouse,
): Promise<{ readonly photos: ReadonlyMap<string, Photo>; readonly problems: readonly Problem[] }> {
  const { house } = await open.current();
  const photos = new Map<string, Photo>();
  const problems: Problem[] = [];
  for (const option of house?.records.options ?? []) {
    if (!option.photo) continue;
    const { photo, problem } = await readOne(open.dir, option, option.photo);
    if (photo) photos.set(`${option.category}/${option.slug}`, photo);
    if (problem) problems.push(problem);
  }
  return { photos, problems };
}

async function readOne(
  dir: string,
  { origin }: Option,
  { file, width, height }: NonNullable<Option['photo']>,
): Promise<{ readonly photo?: Photo; readonly problem?: Problem }> {
  const severity = 'warning';
  const path = photoPath(origin.file, file);
  const photo = await readPhotoFile(dir, path);
  if (!photo.ok) {
    const fix = photo.fix === undefined ? {} : { fix: photo.fix };
    return { problem: problemAt(origin, ['photo', 'file'], 'photo-unreadable', photo.why, { ...fix, severity }) };
  }
  const { value } = photo;
  const isEnding = file.endsWith(`.${value.kind}`);
  const isSize = value.width === width && value.height === height;
  if (isEnding && isSize) return { photo: value };
  const message = isEnding
    ? `${path} is ${value.width} × ${value.height} pixels, and the record says ${width} × ${height}`
    : `${path} is a ${value.kind}, by what is in it`;
  const fix = isEnding
    ? `write width: ${value.width} and height: ${value.height}`
    : `name it so that it ends in .${value.kind}`;
  return {
    problem: problemAt(origin, ['photo', isEnding ? 'width' : 'file'], 'photo-differs', message, { fix, severity }),
  };
}
