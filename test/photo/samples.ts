/** Small pictures of 12 × 8 pixels, as a browser made them, and what cameras put into such files. */
export const jpeg = bytesOf(
  '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABsSFBcUERsXFhceHBsgKEIrKCUlKFE6PTBCYFVlZF9VXVtqeJmBanGQc1tdhbWGkJ6jq62rZ4C8ybqmx5moq6T/2wBDARweHigjKE4rK06kbl1upKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKT/wAARCAAIAAwDASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAT/xAAbEAABBAMAAAAAAAAAAAAAAAAAAgMSEwQRQf/EABUBAQEAAAAAAAAAAAAAAAAAAAME/8QAFhEBAQEAAAAAAAAAAAAAAAAAAAER/9oADAMBAAIRAxEAPwCdjBpeS5ZLXIlgBPbpn//Z',
);
export const png = bytesOf(
  'iVBORw0KGgoAAAANSUhEUgAAAAwAAAAICAYAAADN5B7xAAAAPUlEQVR4AbyOQQ0AMAgDCQ5mYRZmYRZmYRawgBZMgoH2wYcm92nS9PTslYjwlwiVZgYG9q8gmOmAErtmfQEAAP//S/ujdQAAAAZJREFUAwBVhh5Zaf8lQwAAAABJRU5ErkJggg==',
);
export const webp = bytesOf('UklGRjgAAABXRUJQVlA4ICwAAACQAQCdASoMAAgABABoJagCdADLT4AA/u6MXz/qzemvWNhdYF+tZWk0iQAAAA==');

function bytesOf(text: string): Uint8Array {
  return new Uint8Array(Buffer.from(text, 'base64'));
}

export function joined(...parts: readonly (Uint8Array | readonly number[] | string)[]): Uint8Array {
  const bytes = parts.map((part) => (typeof part === 'string' ? Buffer.from(part, 'latin1') : Buffer.from(part)));
  return new Uint8Array(Buffer.concat(bytes));
}

/** Words that no picture may carry on: as if a camera had told where it was. */
export const secret = 'GPS 47.6 N, 122.3 W';

/** A JPEG with more segments behind its start. */
export function withSegments(...segments: readonly (readonly [marker: number, data: Uint8Array])[]): Uint8Array {
  const more = segments.map(([marker, data]) =>
    joined([0xff, marker, (data.length + 2) >> 8, (data.length + 2) & 255], data),
  );
  return joined(jpeg.subarray(0, 2), ...more, jpeg.subarray(2));
}

/** Exif data that say which way is up, in one of its byte orders, with words behind. */
export function exif(turned: number, order: 'II' | 'MM'): Uint8Array {
  const isLittle = order === 'II';
  const tiff = Buffer.alloc(26);
  tiff.write(order, 0, 'latin1');
  const two = (value: number, at: number): number =>
    isLittle ? tiff.writeUInt16LE(value, at) : tiff.writeUInt16BE(value, at);
  const four = (value: number, at: number): number =>
    isLittle ? tiff.writeUInt32LE(value, at) : tiff.writeUInt32BE(value, at);
  two(42, 2);
  four(8, 4);
  two(1, 8);
  two(0x0112, 10);
  two(3, 12);
  four(1, 14);
  two(turned, 18);
  return joined('Exif\0\0', tiff, secret);
}

/** A PNG with one chunk more behind its head; its check sum is not looked at. */
export function withChunk(type: string, data: string): Uint8Array {
  const head = Buffer.alloc(4);
  head.writeUInt32BE(data.length);
  return joined(png.subarray(0, 33), head, type, data, [0, 0, 0, 0], png.subarray(33));
}

/** A WebP of several chunks, the picture among them. */
export function webpOf(flags: number, ...chunks: readonly (readonly [name: string, data: string])[]): Uint8Array {
  const chunk = (name: string, data: Uint8Array): Uint8Array => {
    const size = Buffer.alloc(4);
    size.writeUInt32LE(data.length);
    return joined(name, size, data, data.length % 2 === 1 ? [0] : []);
  };
  const body = joined(
    chunk('VP8X', joined([flags, 0, 0, 0, 11, 0, 0, 7, 0, 0])),
    webp.subarray(12),
    ...chunks.map(([name, data]) => chunk(name, joined(data))),
  );
  const size = Buffer.alloc(4);
  size.writeUInt32LE(body.length + 4);
  return joined('RIFF', size, 'WEBP', body);
}
