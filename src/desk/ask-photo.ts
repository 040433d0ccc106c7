import type { BookOption } from '../core/book/index.js';
import { isShared } from '../core/records/index.js';
import { plainKey } from '../manual/index.js';
import { photoTypes } from '../photo/index.js';
import type { Ask, Field } from './ask.js';
import { mostPhotoWords } from './guard.js';
import { hints } from './hints.js';
import { keyField } from './schema-fields.js';

/** To put a photograph to an option, and to take away the one that it has; none for an option that other houses share. */
export function asksForPhoto(option: BookOption): readonly Ask[] {
  const { id, category, slug, photo, source } = option;
  if (isShared(source)) return [];
  const of: readonly Field[] = [
    { name: 'category', label: '', as: 'word', kind: 'picked', value: category },
    { name: 'slug', label: '', as: 'word', kind: 'picked', value: slug },
  ];
  const put: Ask = {
    id: `photo/${id}`,
    title: photo ? 'Change the photograph' : 'Add a photograph',
    says: `A JPEG, PNG or WebP, of ${mostPhotoWords} at most. Where and when it was taken is taken out of it.`,
    button: photo ? 'Change it' : 'Add it',
    command: ['photo'],
    was: photo?.file ?? '',
    fields: [
      ...of,
      {
        name: 'file',
        label: 'Photograph',
        as: 'word',
        kind: 'file',
        accept: Object.values(photoTypes).join(','),
        ...(photo && { isOptional: true, hint: hints.photo() }),
      },
      keyField(plainKey('option', 'shows', 'photo'), {
        label: 'What it shows',
        hint: hints.shows(),
        ...(photo && { value: photo.shows }),
      }),
    ],
  };
  if (!photo) return [put];
  const remove: Ask = {
    id: `no-photo/${id}`,
    title: 'Take the photograph away',
    button: 'Take it away',
    command: ['photo', '--remove'],
    was: photo.file,
    fields: of,
  };
  return [put, remove];
}
