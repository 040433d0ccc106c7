/** Rooms of a published sample building: outline in metres, extruded height, and the volume that the authoring program
 *  states. Figures copied as they stand; see the source in sample-building.test.ts. */
export interface SampleRoom {
  readonly number: string;
  readonly name: string;
  readonly outline: readonly (readonly [x: string, y: string])[];
  readonly height: string;
  readonly statedVolume: number;
}

export const sampleRooms: readonly SampleRoom[] = [
  {
    number: 'A101',
    name: 'Foyer',
    outline: [
      ['-1.6968 m', '0.141889 m'],
      ['-1.6968 m', '-5.416111 m'],
      ['0.3622 m', '-5.416111 m'],
      ['0.3622 m', '-1.833111 m'],
      ['0.4862 m', '-1.833111 m'],
      ['0.4862 m', '-0.633111 m'],
      ['0.4602 m', '-0.633111 m'],
      ['0.4602 m', '-0.495341 m'],
      ['0.4602 m', '0.971889 m'],
      ['0.3362 m', '0.971889 m'],
      ['0.3362 m', '1.658889 m'],
      ['0.3362 m', '1.913889 m'],
      ['0.3362 m', '2.675889 m'],
      ['0.3362 m', '3.891889 m'],
      ['-0.6824 m', '3.891889 m'],
      ['-0.6824 m', '0.141889 m'],
    ],
    height: '2.581 m',
    statedVolume: 40.241254,
  },
  {
    number: 'A102',
    name: 'Living Room',
    outline: [
      ['-2.3915 m', '-2.8915 m'],
      ['2.3915 m', '-2.8915 m'],
      ['2.3915 m', '2.8915 m'],
      ['-2.3915 m', '2.8915 m'],
    ],
    height: '2.581 m',
    statedVolume: 71.39069,
  },
  {
    number: 'A103',
    name: 'Kitchen',
    outline: [
      ['-2.9045 m', '-1.115 m'],
      ['2.9045 m', '-1.115 m'],
      ['2.9045 m', '1.115 m'],
      ['-2.9045 m', '1.115 m'],
    ],
    height: '2.587 m',
    statedVolume: 33.512179,
  },
  {
    number: 'A104',
    name: 'Bathroom 1',
    outline: [
      ['-1.0855 m', '-0.728 m'],
      ['1.0855 m', '-0.728 m'],
      ['1.0855 m', '0.728 m'],
      ['-1.0855 m', '0.728 m'],
    ],
    height: '2.587 m',
    statedVolume: 8.177445,
  },
  {
    number: 'A202',
    name: 'Bedroom 1',
    outline: [
      ['-1.682556 m', '-1.628667 m'],
      ['-1.663556 m', '-1.628667 m'],
      ['-0.063556 m', '-1.628667 m'],
      ['-0.063556 m', '-1.088667 m'],
      ['0.120444 m', '-1.088667 m'],
      ['0.984444 m', '-1.088667 m'],
      ['2.025444 m', '-1.088667 m'],
      ['2.025444 m', '4.620333 m'],
      ['-1.682556 m', '4.620333 m'],
    ],
    height: '2.581 m',
    statedVolume: 56.893582,
  },
  {
    number: 'A203',
    name: 'Bedroom 2',
    outline: [
      ['-1.77952 m', '-4.7292 m'],
      ['1.92848 m', '-4.7292 m'],
      ['1.92848 m', '0.9798 m'],
      ['0.91408 m', '0.9798 m'],
      ['0.86678 m', '0.9798 m'],
      ['0.00278 m', '0.9798 m'],
      ['-0.16052 m', '0.9798 m'],
      ['-0.16052 m', '1.5198 m'],
      ['-1.76052 m', '1.5198 m'],
      ['-1.77952 m', '1.5198 m'],
    ],
    height: '2.581 m',
    statedVolume: 56.893582,
  },
  {
    number: 'A204',
    name: 'Bathroom 2',
    outline: [
      ['-0.762 m', '-1.552308 m'],
      ['0.762 m', '-1.552308 m'],
      ['0.762 m', '1.552308 m'],
      ['-0.762 m', '1.552308 m'],
    ],
    height: '2.587 m',
    statedVolume: 12.240221,
  },
  {
    number: 'A205',
    name: 'Utility',
    outline: [
      ['-0.762 m', '-0.465692 m'],
      ['0.762 m', '-0.465692 m'],
      ['0.762 m', '0.465692 m'],
      ['-0.762 m', '0.465692 m'],
    ],
    height: '2.587 m',
    statedVolume: 3.672064,
  },
];
