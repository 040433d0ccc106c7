import { codesByPage, type Problem } from '../../src/base/problem/index.js';
import { measureFiles, type LoadedHouse } from '../../src/disk/load/index.js';
import { smallFiles } from '../book/small-house.js';

/** A door of 3'-0" and its other side, as lines of two rooms' records. */
export const door = (mark: string, wall: string, at: string, to: string): string =>
  `  - { mark: ${mark}, kind: door, wall: ${wall}, at: ${at}, width: 3'-0", height: 7'-0", to: ${to} }`;
export const seen = (mark: string, room: string, wall: string, at: string): string =>
  `  - { mark: ${mark}, recorded-in: ${room}, wall: ${wall}, at: ${at} }`;

/** The small house with these rooms alone, by slug: lines of their records, of which level, use and ceiling may be left out. `levels` and more
 *  of house.md, as YAML. */
export function roomsLaid(
  rooms: Readonly<Record<string, readonly string[]>>,
  house = `levels:\n  - { id: main, name: Main level }\n`,
): LoadedHouse {
  const others = smallFiles({ 'content/house.md': [['levels:\n  - { id: main, name: Main level }\n', house]] });
  const made = Object.entries(rooms).map(([slug, lines], index) => {
    const name = slug.replace(/^./u, (letter) => letter.toUpperCase());
    const given = [`name: ${name}`, `number: "${101 + index}"`, ...lines];
    const usual = [`level: main`, `use: hall`, `ceiling: flat 8'-0"`].filter(
      (line) => !lines.some((one) => one.startsWith(line.slice(0, line.indexOf(':') + 1))),
    );
    return { path: `content/rooms/${slug}.md`, text: `---\n${[...given, ...usual].join('\n')}\n---\n` };
  });
  return measureFiles([...others.filter(({ path }) => !path.startsWith('content/rooms/')), ...made]);
}

/** What is said of where rooms stand, as `code: message`. */
export function laidOf({ problems }: LoadedHouse): readonly string[] {
  return ofLaying(problems).map(({ code, message }) => `${code}: ${message}`);
}

export function ofLaying(problems: readonly Problem[]): readonly Problem[] {
  const codes: readonly string[] = codesByPage.laying;
  return problems.filter(({ code, severity }) => codes.includes(code) || severity === 'error');
}
