import { expect } from 'vitest';
import { measured } from '../../measure/measured.js';
import { len, point } from '../../measure/room-record.js';
import { published } from '../published.js';
import { sampleRooms } from './sample-rooms.js';

const source =
  'Duplex Apartment architecture model, IFC 2x3 CoordinationView export of 2011-09-07, a public sample building: profiles, extrusion depths and Volume properties of its IfcSpace solids';

/** Cubic metres in a cubic foot, exactly: 0.3048³. */
const cubicMetres = 0.028316846592;

for (const { number, name, outline, height, statedVolume } of sampleRooms) {
  published({ what: `${number} ${name}: volume within 0.1 %`, source, mark: 'S' }, () => {
    const corners = outline.map(([x, y], i) => ({ at: point(x, y), wall: `w${i + 1}` }));
    const measure = measured({ shape: { by: 'outline', corners }, ceiling: { form: 'flat', height: len(height) } });
    expect(Math.abs((measure.volume * cubicMetres) / statedVolume - 1)).toBeLessThan(0.001);
  });
}
