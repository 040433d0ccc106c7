import { element, rect, text, type SvgNode } from '../../base/svg/index.js';
import { tenth } from './canvas.js';
import { layRepeat, type Repeat } from './repeat.js';

interface Size {
  readonly width: number;
  readonly height: number;
}

const ink = '#6b675e';
/** Width of a letter of the text face for a unit of its height, on the wide side: a name must not leave the picture. */
const letter = 0.62;
const mostLines = 3;

/** Hatching, for what nobody has described or decided. */
export const untoldHatch: Repeat = {
  width: 8,
  height: 8,
  ground: '#f4f2ec',
  marks: [
    {
      outline: [
        [0, 0],
        [1, 0],
        [9, 8],
        [8, 8],
      ],
      fill: '#b8b2a6',
    },
  ],
};

/** The sample of an option whose record describes none yet: hatched, with its name, so that nobody takes it for a material. */
export function untoldSwatch(name: string, size: Size): readonly SvgNode[] {
  const { width, height } = size;
  const inch = Math.max(6, width / 18) / untoldHatch.width;
  const { lines, high } = setName(name, size);
  const top = height / 2 - (lines.length * high * 1.2) / 2;
  const longest = Math.max(...lines.map((line) => line.length)) * high * letter;
  return [
    ...layRepeat({ width, height, inch, isFine: false }, untoldHatch),
    rect(tenth((width - longest) / 2), tenth(top), tenth(longest), tenth(lines.length * high * 1.2), {
      fill: untoldHatch.ground,
    }),
    element(
      'g',
      { 'font-family': 'Public Sans', 'font-size': tenth(high), fill: ink, 'text-anchor': 'middle' },
      ...lines.map((line, index) => text(tenth(width / 2), tenth(top + high * (index * 1.2 + 0.95)), line)),
    ),
  ];
}

/** The name in as many lines as make it largest; what is longer than these hold is cut. */
function setName(name: string, { width, height }: Size): { readonly lines: readonly string[]; readonly high: number } {
  const settings = Array.from({ length: mostLines }, (_, index) => linesOf(name, index + 1)).map((lines) => {
    const longest = Math.max(...lines.map((line) => line.length), 1);
    return { lines, high: Math.min((width * 0.92) / (longest * letter), height / (lines.length * 1.5), height / 5) };
  });
  return settings.reduce((best, next) => (next.high > best.high ? next : best));
}

/** Words in so many lines of about one length. */
function linesOf(name: string, count: number): readonly string[] {
  const words = name.split(/\s+/u).filter((word) => word !== '');
  const length = Math.ceil(name.length / count);
  return words.reduce<readonly string[]>((lines, word) => {
    const last = lines.at(-1);
    if (last === undefined || (lines.length < count && last.length >= length)) return [...lines, word];
    if (lines.length < count && `${last} ${word}`.length > length + word.length / 2) return [...lines, word];
    return [...lines.slice(0, -1), `${last} ${word}`];
  }, []);
}
