import { expect } from 'vitest';
import { feet } from '../../../src/base/units/index.js';
import { measured } from '../../measure/measured.js';
import { flat, len, size } from '../../measure/room-record.js';
import { published } from '../published.js';

const source = 'NIST SP 811 App. B, Handbook 44 App. C, quoted in heat and FAO tables';

published({ what: '1 ft = 0.3048 m and 1 in. = 25.4 mm, exactly', source, mark: 'S2' }, () => {
  expect(len('0.3048 m')).toBe(len(`1'`));
  expect(len('25.4 mm')).toBe(len(`1"`));
});

published({ what: '1 ft² = 0.09290304 m² and 1 ft³ = 0.028316846592 m³', source, mark: 'S2' }, () => {
  const { floor, volume, perimeter } = measured({ shape: size('1 m', '1 m'), ceiling: flat('1 m') });
  expect(floor.net * 0.09290304).toBeCloseTo(1, 14);
  expect(volume * 0.028316846592).toBeCloseTo(1, 14);
  expect(feet(perimeter) * 0.3048).toBeCloseTo(4, 14);
});

published({ what: 'a room in feet and the same room in metres are one', source, mark: 'S2' }, () => {
  const imperial = measured({ shape: size(`24'-6"`, `18'-3 1/2"`), ceiling: flat(`9'-1 1/8"`) });
  const metric = measured({ shape: size('7467.6 mm', '5575.3 mm'), ceiling: flat('2771.775 mm') });
  expect(metric).toEqual(imperial);
});

const doors: [string, string][] = [
  [`6'-8"`, '2032 mm'],
  [`2'-6"`, '762 mm'],
  [`2'-10"`, '863.6 mm'],
];
for (const [imperial, metric] of doors) {
  published(
    {
      what: `a door of ${imperial} is ${metric}`,
      source: 'Duplex Apartment IFC model, its doors 0762 x 2032 and 0864 x 2032',
      mark: 'S',
    },
    () => {
      expect(len(imperial)).toBe(len(metric));
    },
  );
}
