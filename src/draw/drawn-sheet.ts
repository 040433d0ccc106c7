import type { SvgNode } from '../base/svg/index.js';
import type { Scale } from './scale.js';
import { locale } from '../base/units/index.js';
import { Sheet } from './sheet.js';

export interface Title {
  readonly title: string;
  readonly description: string;
  /** Beside the scale, such as `Heights above this room's floor`. */
  readonly notes?: readonly string[];
  /** Of a plan: where true north lies, in degrees clockwise from up. */
  readonly north?: number;
}

/** What is to be drawn, at any scale. */
export interface Subject {
  /** The measure that it is of: its sheets are kept as long as this lives. */
  readonly of: object;
  /** Which view of it: `plan`, `wall/north`. */
  readonly view: string;
  /** All else that the sheet depends on, as plain data and maps. */
  readonly shows: object;
  /** The ratio to begin with: 24 for `1/2" = 1'-0"`. */
  readonly largest: number;
  /** In nanometres, what the sheet reaches over at least; a scale that brings even this out of the box is passed over. */
  readonly span?: { readonly width: number; readonly height: number };
  draw(sheet: Sheet): Title;
}

/** A sheet as drawn at one scale: without ids, and with roles in place of colours. */
export interface DrawnSheet extends Pick<Sheet, 'scale' | 'bounds' | 'plainBounds'> {
  readonly title: Title;
  readonly groups: readonly SvgNode[];
}

const kept = new WeakMap<object, Map<string, DrawnSheet>>();
const originals = new WeakMap<object, object>();

/** The sheets of a subject by scale, each drawn once: pages, book, handouts and comparison issue the same one. */
export function sheetsOf(subject: Subject): (scale: Scale) => DrawnSheet {
  const { of, view, shows } = subject;
  const original = originalOf(of);
  const sheets = kept.get(original) ?? new Map<string, DrawnSheet>();
  kept.set(original, sheets);
  const key = `${view} ${JSON.stringify(shows, plain)}`;
  return (scale) => {
    const name = `${scale.name} ${locale().units} ${key}`;
    const drawn = sheets.get(name) ?? drawSheet(subject, scale);
    sheets.set(name, drawn);
    return drawn;
  };
}

/** Says that a copy of a measure looks like its original, such as one that lost words of its record: they share their sheets. */
export function drawnAlike<Copy extends object>(copy: Copy, original: object): Copy {
  originals.set(copy, originalOf(original));
  return copy;
}

/** What it looks like, and what was drawn of it is kept under. */
export function originalOf(of: object): object {
  return originals.get(of) ?? of;
}

function drawSheet({ draw }: Subject, scale: Scale): DrawnSheet {
  const sheet = new Sheet(scale);
  const title = draw(sheet);
  return { scale, title, bounds: sheet.bounds, plainBounds: sheet.plainBounds, groups: sheet.groups() };
}

function plain(_key: string, value: unknown): unknown {
  return value instanceof Map ? [...(value as ReadonlyMap<unknown, unknown>)] : value;
}
