import { open, realpath } from 'node:fs/promises';
import { constants } from 'node:fs';
import { join, sep } from 'node:path';
import { largestPhoto, readPhoto, tooManyBytes, type Photo } from '../../photo/index.js';
import { unread, type Reading } from '../../base/units/index.js';
import { noted } from './reads.js';

/** A photograph of a house by its path, `photos/floor/oak.jpg`, or `../our-book/photos/floor/oak.jpg` of a folder that houses share; without what tells of
 *  its taking. A link may not lead out of the folder that has `photos`. */
export const readPhotoFile = noted('photograph', readWithin, (photo) =>
  photo.ok ? [photo.value.bytes, JSON.stringify({ ...photo.value, bytes: [] })] : [JSON.stringify(photo)],
);

async function readWithin(dir: string, path: string): Promise<Reading<Photo>> {
  const missing = unread(`there is no file ${path}`, 'put it there, or take photo out of the record');
  const at = path.indexOf('photos/');
  const root = await realpath(join(dir, path.slice(0, at))).catch(() => undefined);
  const real = await realpath(join(dir, path)).catch(() => undefined);
  if (root === undefined || real === undefined) return missing;
  if (!real.startsWith(`${root}${sep}`))
    return unread(`${path} is a link that leads out of its folder`, 'copy the file in its place');
  // A pipe is never read, and a file no further than a photograph goes.
  const file = await open(real, constants.O_RDONLY | constants.O_NONBLOCK).catch(() => undefined);
  if (!file) return unread(`${path} may not be read`, 'check who owns it');
  try {
    const facts = await file.stat();
    if (!facts.isFile()) return unread(`${path} is no file`, 'put a photograph in its place');
    const photo = facts.size > largestPhoto ? tooManyBytes(facts.size) : readPhoto(await file.readFile());
    return photo.ok ? photo : unread(`${path}: ${photo.why}`, photo.fix);
  } finally {
    await file.close();
  }
}
