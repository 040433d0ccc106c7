import { area } from './area.js';
import type { ConventionRule } from './convention.js';
import { each } from './each.js';
import { lump } from './lump.js';
import { railing } from './railing.js';
import { run } from './run.js';
import { stair } from './stair.js';
import { stone } from './stone.js';

/** Every way of measuring that a category can name. */
export const conventions: readonly ConventionRule[] = [area, run, each, stone, railing, stair, lump];

export type { ConventionRule } from './convention.js';
