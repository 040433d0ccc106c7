import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { largestPhoto, readPhoto, type Photo } from '../../src/photo/index.js';
import { exif, jpeg, joined, png, secret, webp, webpOf, withChunk, withSegments } from './samples.js';

function photoOf(bytes: Uint8Array): Photo {
  const photo = readPhoto(bytes);
  if (!photo.ok) throw new Error(photo.why);
  return photo.value;
}

const whyNot = (bytes: Uint8Array): string => {
  const photo = readPhoto(bytes);
  return photo.ok ? 'taken' : photo.why;
};
const textOf = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1');

describe('a photograph', () => {
  it.each([
    ['jpg', jpeg],
    ['png', png],
    ['webp', webp],
    ['webp', webpOf(0)],
  ] as const)('that is a %s is told by what is in it, with its size', (kind, bytes) => {
    expect(photoOf(bytes)).toMatchObject({ kind, width: 12, height: 8 });
  });

  it.each([
    ['jpg', jpeg],
    ['png', png],
    ['webp', webp],
  ] as const)('that tells nothing of its taking stays as it is: a %s', (_, bytes) => {
    const once = photoOf(bytes).bytes;
    expect(photoOf(once).bytes).toEqual(once);
    expect(once.length).toBeLessThanOrEqual(bytes.length);
  });

  it('has no Exif data, XMP, remarks, thumbnails, or anything behind its end', () => {
    const said = new Uint8Array(Buffer.from(secret));
    const xmp = joined('http://ns.example/xap/1.0/\0', secret);
    const thumb = joined('JFIF\0', [1, 1, 0, 0, 1, 0, 1, 1, 1], secret);
    const told = withSegments(
      [0xe0, thumb],
      [0xe1, exif(1, 'II')],
      [0xe1, xmp],
      [0xed, said],
      [0xfe, said],
      [0xe2, said],
    );
    for (const bytes of [joined(told, secret), withChunk('tEXt', secret), withChunk('eXIf', secret)])
      expect(textOf(photoOf(bytes).bytes)).not.toContain('GPS');
    const stripped = photoOf(joined(webpOf(0x0c, ['EXIF', secret], ['XMP ', secret]), secret)).bytes;
    expect(textOf(stripped)).not.toContain('GPS');
    expect(stripped[20]).toBe(0);
    expect(Buffer.from(stripped).readUInt32LE(4)).toBe(stripped.length - 8);
  });

  it('keeps what its colors need', () => {
    const profile = joined('ICC_PROFILE\0', [1, 1], 'colors');
    const adobe = joined('Adobe', [0, 100, 0, 0, 0, 0, 1]);
    const { bytes } = photoOf(withSegments([0xe2, profile], [0xee, adobe]));
    expect(textOf(bytes)).toContain('colors');
    expect(textOf(bytes)).toContain('Adobe');
    expect(textOf(photoOf(withChunk('iCCP', 'colors')).bytes)).toContain('colors');
  });

  it.each([
    [1, 'II', [12, 8]],
    [3, 'MM', [12, 8]],
    [6, 'II', [8, 12]],
    [8, 'MM', [8, 12]],
    [9, 'MM', [12, 8]],
  ] as const)('that was taken turned by %i in %s stays upright', (turned, order, [width, height]) => {
    const photo = photoOf(withSegments([0xe1, exif(turned, order)]));
    expect(photo).toMatchObject({ width, height });
    expect(textOf(photo.bytes)).not.toContain('GPS');
    expect(photoOf(photo.bytes)).toEqual(photo);
  });

  it.each([
    ['<svg xmlns="http://www.w3.org/2000/svg"><script/></svg>', 'may hold scripts'],
    ['\u00ef\u00bb\u00bf <?xml version="1.0"?><svg/>', 'may hold scripts'],
    ['<!DOCTYPE html><script>', 'may hold scripts'],
    ['\0\0\0\u0018ftypheic\0\0\0\0', 'HEIC or AVIF'],
    ['GIF89a', 'a GIF'],
    ['%PDF-1.7', 'a PDF'],
    ['BM', 'no JPEG, PNG or WebP'],
    ['RIFF\0\0\0\0WAVE', 'no JPEG, PNG or WebP'],
    ['', 'empty'],
  ])('is not %j', (text, why) => {
    expect(whyNot(joined(text))).toContain(why);
  });

  it('is not too large in bytes or pixels, not moving, and whole', () => {
    expect(whyNot(new Uint8Array(largestPhoto + 1))).toContain('6 MB at most');
    const wide = png.slice();
    wide[18] = 0x1f;
    wide[19] = 0x41;
    expect(whyNot(wide)).toContain('8001 × 8 pixels');
    const none = png.slice();
    none[19] = 0;
    expect(whyNot(none)).toContain('no size');
    expect(whyNot(webpOf(0x02))).toContain('moves');
    for (const whole of [jpeg, png, webp]) expect(whyNot(whole.subarray(0, whole.length - 30))).toContain('cut off');
  });

  it('is refused or taken whatever bytes come, and never grows by more than which way is up', () => {
    const start = fc.constantFrom(jpeg, png, webp, webpOf(0x0c, ['EXIF', secret]));
    const changes = fc.array(fc.tuple(fc.nat(700), fc.nat(255)), { maxLength: 12 });
    fc.assert(
      fc.property(start, changes, fc.nat(700), (whole, changed, cut) => {
        const bytes = whole.slice(0, cut > 600 ? whole.length : Math.max(3, cut));
        for (const [at, value] of changed) if (at < bytes.length) bytes[at] = value;
        const photo = readPhoto(bytes);
        if (photo.ok) expect(photo.value.bytes.length).toBeLessThanOrEqual(bytes.length + 36);
        if (!photo.ok) expect(photo.why).not.toBe('');
      }),
      { numRuns: 2000 },
    );
  });
});
