import type { Product } from '../product.js';

/** What is in a wall or ceiling behind the finish. */
export const buildUp = {
  insulation: {
    name: 'insulation',
    knownBy: ['r-value', 'continuous-r', 'needs-cover', 'vapor-retarder'],
    facts: {
      'r-value': {
        kind: 'number',
        unit: 'sq ft h °F / Btu',
        tells: 'Resistance of the layer; by it rules and schedule know insulation.',
        cautions: ['insulation-by-zone'],
        readers: ['insulation schedule', 'resistance of assemblies'],
      },
      'needs-cover': {
        kind: 'yes-no',
        tells: 'Whether it is foam that must be covered against fire.',
        cautions: ['thermal-barrier'],
        readers: ['insulation schedule'],
      },
      'continuous-r': {
        kind: 'number',
        unit: 'sq ft h °F / Btu',
        tells: 'Resistance outside the framing that goes with it; absent, none.',
        cautions: ['insulation-by-zone'],
        isOptional: true,
      },
      'r-per-inch': {
        kind: 'number',
        unit: 'sq ft h °F / Btu in',
        tells: 'Resistance of an inch of it, where it is of one layer.',
        readers: ['check of the R'],
        isOptional: true,
      },
      'thickness-in-place': {
        kind: 'length',
        tells: 'Thickness in place, and depth of the framing where an assembly says none.',
        readers: ['insulation schedule', 'resistance of assemblies'],
        isOptional: true,
      },
      type: { kind: 'text', tells: 'Batt, blown, foam.', readers: ['insulation schedule'], isOptional: true },
      'vapor-retarder': {
        kind: 'text',
        tells: 'What holds vapor back.',
        readers: ['insulation schedule'],
        isOptional: true,
      },
    },
  },
  'sound-insulation': {
    name: 'sound insulation',
    knownBy: ['stc', 'wall-adds'],
    facts: {
      stc: {
        kind: 'number',
        unit: 'STC',
        tells: 'Rating of the tested wall; by it rules and schedule know sound insulation.',
        cautions: ['sound-at-bath', 'impact-sound'],
        readers: ['sound schedule'],
      },
      'wall-adds': {
        kind: 'length',
        tells: 'How much thicker it makes the wall; absent, nothing.',
        cautions: ['jamb-depth'],
        isOptional: true,
      },
      assembly: { kind: 'text', tells: 'The wall it was tested in.', readers: ['sound schedule'], isOptional: true },
      'thickness-in-place': {
        kind: 'length',
        tells: 'Thickness in place.',
        readers: ['sound schedule'],
        isOptional: true,
      },
    },
  },
  'gypsum-board': {
    name: 'gypsum board',
    knownBy: ['board-thickness'],
    facts: {
      'board-thickness': {
        kind: 'length',
        tells: 'Thickness of the board; by it rules know board.',
        cautions: ['thermal-barrier', 'jamb-depth', 'wet-room'],
      },
      type: { kind: 'text', tells: 'Moisture board, backer, fire-rated.', cautions: ['wet-room'] },
    },
  },
} as const satisfies Readonly<Record<string, Product>>;
