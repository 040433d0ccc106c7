import type { Product } from '../product.js';

/** What is around a fire, and stone. */
export const masonry = {
  stone: {
    name: 'stone',
    measuredBy: 'stone',
    knownBy: ['corner-covers'],
    facts: {
      kind: {
        kind: 'text',
        tells: '`full bed` stands on something; other stone is stuck to its wall.',
        cautions: ['full-bed-support', 'adhered-facing', 'adhered-facing-outside'],
      },
      setting: {
        kind: 'text',
        tells: 'What it is set on; on a `ledge` it stands.',
        cautions: ['full-bed-support', 'adhered-facing', 'adhered-facing-outside'],
        readers: ['stone schedule'],
      },
      bed: {
        kind: 'length',
        tells: 'How thick it is; absent, the thickness of the option.',
        cautions: ['full-bed-support', 'adhered-facing', 'adhered-facing-outside'],
        readers: ['stone schedule'],
        isOptional: true,
      },
      'mortar-weight': {
        kind: 'number',
        unit: 'lb / sq ft',
        tells:
          'What the mortar that it is set in weighs, where the weight of the option is of the stone alone; 0 where that has it.',
        cautions: ['full-bed-support', 'adhered-facing'],
        readers: ['weight in place', 'stone schedule'],
        isOptional: true,
      },
      'lath-weight': {
        kind: 'number',
        unit: 'lb / sq ft',
        tells: 'What lath and scratch coat behind it weigh; absent, nothing.',
        cautions: ['full-bed-support', 'adhered-facing'],
        readers: ['weight in place', 'stone schedule'],
        isOptional: true,
      },
      joint: { kind: 'text', tells: 'How it is jointed.', readers: ['stone schedule'], isOptional: true },
      'course-heights': {
        kind: 'lengths',
        tells: 'Heights of its courses, each once.',
        readers: ['pictures of rooms'],
        isOptional: true,
      },
      'corner-covers': {
        kind: 'number',
        unit: 'sq ft for a foot of corner',
        tells: 'What a foot of corner pieces covers of the faces.',
        readers: ['take-off of flats'],
        isOptional: true,
      },
    },
  },
  /** What goes around a firebox. */
  'hearth-facing': {
    name: 'facing around a firebox',
    knownBy: ['is-combustible'],
    facts: {
      'is-combustible': {
        kind: 'yes-no',
        tells: 'Whether it can burn.',
        cautions: ['combustible-near-fire'],
      },
    },
  },
  fireplace: {
    name: 'a fireplace',
    knownBy: ['fuel', 'opening-width', 'opening-height', 'heat-output', 'mantel-clearance'],
    facts: {
      fuel: {
        kind: 'text',
        tells: 'What it burns; `gas` needs no hearth before it. By it rules know the unit of a firebox.',
        cautions: ['hearth-extension', 'combustible-near-fire', 'rough-opening'],
      },
      'opening-width': {
        kind: 'length',
        tells: 'Width of the opening; absent, that of the firebox as drawn.',
        cautions: ['hearth-extension', 'rough-opening'],
      },
      'opening-height': {
        kind: 'length',
        tells: 'Height of the opening; absent, that of the firebox as drawn.',
        cautions: ['hearth-extension', 'rough-opening'],
      },
      'frame-width': {
        kind: 'length',
        tells: 'How wide it is framed, held against the breast.',
        cautions: ['rough-opening'],
      },
      'heat-output': {
        kind: 'number',
        unit: 'Btu / h',
        tells: 'Heat that a fireplace or stove gives off at most; absent, nothing is asked.',
        cautions: ['heat-for-room'],
        isOptional: true,
      },
      'mantel-clearance': {
        kind: 'length',
        tells: 'Least clearance to a mantel that can burn, by its listing.',
        cautions: ['combustible-near-fire'],
      },
    },
  },
} as const satisfies Readonly<Record<string, Product>>;
