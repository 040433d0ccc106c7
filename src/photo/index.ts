/** Photographs. In: bytes that somebody says are a picture. Out: its kind and size, and its bytes without what tells where, when and by what it was
 *  taken; or why it is refused. Absent: the disk, and decoding: no picture is made or changed. */
export {
  isPicture,
  largestPhoto,
  photoTypes,
  readPhoto,
  seenOnce,
  tooManyBytes,
  type Photo,
  type PhotoBounds,
  type PhotoKind,
} from './read-photo.js';
