import { posix, win32 } from 'node:path';
import { describe, expect, test } from 'vitest';
import { pathBelow } from '../../src/disk/program/index.js';

describe('the path of a file below a folder has slashes', () => {
  test.each([
    ['/job/house', '/job/house/issued/002-signed-owner.pdf', posix, 'issued/002-signed-owner.pdf'],
    ['/job/house', '/job/scan.pdf', posix, '../scan.pdf'],
    ['/job/house', '/job/house/a\\b.md', posix, 'a\\b.md'],
    ['C:\\job\\house', 'C:\\job\\house\\issued\\002-signed-owner.pdf', win32, 'issued/002-signed-owner.pdf'],
    ['C:\\job\\house', 'c:/job/house/content/rooms/study.md', win32, 'content/rooms/study.md'],
    ['C:\\job\\house', 'C:\\job\\scan.pdf', win32, '../scan.pdf'],
    ['C:\\job\\house', 'D:\\scan.pdf', win32, 'D:/scan.pdf'],
  ])('%s, %s', (folder, file, by, expected) => {
    expect(pathBelow(folder, file, by)).toBe(expected);
  });
});
