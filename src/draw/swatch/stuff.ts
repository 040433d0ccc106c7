import type { TrimJoints } from '../../core/fact/index.js';
import type { Swatch } from '../../core/model/index.js';
import { mix, shade } from './color.js';
import type { Random } from './random.js';

/** What an option's record tells of its material beside the swatch. What is absent is taken from the swatch's `repeat`. */
export interface MaterialFacts {
  /** Width and height of a tile, in inches. */
  readonly size?: readonly [width: number, height: number];
  /** How far each row of tiles is shifted from the one below. */
  readonly bond?: Bond;
  /** Degrees by which tiles are turned as they are laid. */
  readonly turn?: 0 | 45 | 90;
  /** Heights of courses of stone, in inches. */
  readonly courses?: readonly number[];
  /** How many shapes of stone there are, where they are molded: the same ones come again. Absent: no two are alike. */
  readonly shapes?: number;
  /** Width of one mark of a plaster's relief, in inches; 0 is smooth. */
  readonly relief?: number;
  /** Of paint: how much of a light it throws back, from 0 to 1. */
  readonly gloss?: number;
  /** Of a thing, and not of a material. */
  readonly thing?: Thing;
  /** Paint on it, `#rrggbb`, in place of its own color. */
  readonly paint?: string;
}

/** Sizes in inches. */
export interface Thing {
  readonly profile?: 'flat' | 'backband';
  readonly face?: number;
  readonly through?: number;
  /** Of trim. */
  readonly joints?: TrimJoints;
  readonly section?: readonly [wide: number, deep: number];
  readonly opening?: readonly [width: number, height: number];
  readonly burns?: 'gas' | 'wood';
  readonly panels?: number;
  readonly hasGlassAbove?: true;
}

export type Bond = 'stack' | 'half' | 'third';

/** What repeats are made of: a swatch with its record's facts and a stream of chance. */
export interface Stuff {
  /** At least one, `#rrggbb`. */
  readonly colors: readonly string[];
  readonly base: string;
  /** The swatch's own colors, whatever is painted over them. */
  readonly unpainted: readonly string[];
  /** Inches. */
  readonly repeat?: number;
  readonly facts: MaterialFacts;
  readonly random: Random;
}

/** Tones of pieces, so few that each is written once: from the first color through all others to the last, each varied by a little. */
export function tonesOf(
  { colors, random }: Pick<Stuff, 'colors' | 'random'>,
  count: number,
  spread: number,
): readonly string[] {
  return Array.from({ length: count }, (_, index) => {
    const along = (index / Math.max(1, count - 1)) * (colors.length - 1);
    const color = mix(colors[Math.floor(along)]!, colors[Math.ceil(along)]!, along % 1);
    return shade(color, random.between(-spread, spread));
  });
}

/** Gives one of the tones after another, by chance but none twice running. */
export function toneBy(random: Random, tones: readonly string[]): () => string {
  let last = '';
  return () => {
    const others = tones.filter((tone) => tone !== last);
    last = random.pick(others.length > 0 ? others : tones);
    return last;
  };
}

const nanometresPerInch = 25_400_000;
const anyColor = '#b8b2a6';

/** A swatch's colors and sizes as they are drawn: a neutral where no color can be read, inches, paint over what is painted. */
export function stuffOf(swatch: Swatch, facts: MaterialFacts, random: Random): Stuff {
  const told = swatch.colors.map(sixDigits).filter((color) => color !== undefined);
  const paint = facts.paint === undefined ? undefined : sixDigits(facts.paint);
  const own = told.length > 0 ? told : [anyColor];
  const inches = swatch.repeat === undefined ? undefined : swatch.repeat / nanometresPerInch;
  const colors = paint === undefined ? own : [paint];
  return {
    colors,
    base: colors[0]!,
    unpainted: own,
    ...(inches === undefined || !(inches > 0) ? {} : { repeat: inches }),
    facts,
    random,
  };
}

function sixDigits(color: string): string | undefined {
  const long = /^#[0-9a-f]{6}$/i.exec(color);
  if (long !== null) return color.toLowerCase();
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(color);
  return short === null
    ? undefined
    : `#${short[1]}${short[1]}${short[2]}${short[2]}${short[3]}${short[3]}`.toLowerCase();
}
