import type { Surface } from '../../core/model/index.js';
import { printArea } from '../../base/units/index.js';
import { drawDimensions } from '../dimension.js';
import type { DrawOptions, Drawing } from '../drawing.js';
import type { Title } from '../drawn-sheet.js';
import { extentOf } from '../figures.js';
import { fitDrawing } from '../issue.js';
import { lengthText } from '../length-text.js';
import type { Sheet } from '../sheet.js';

interface StepOptions extends DrawOptions {
  /** Number and name of the room, for the title. */
  readonly number: string;
  readonly name: string;
}

/** An upright face between two parts of a ceiling, unfolded as seen from under the higher one. Heights are above the floor. */
export function drawStep(step: Surface, options: StepOptions): Drawing {
  const whole = extentOf(step.regions);
  const title = {
    title: `${step.name} – ${options.number} ${options.name}`,
    description: `${step.name}, seen from under the higher part of the ceiling: ${printArea(step.net)}.`,
    notes: whole ? [`From ${lengthText(whole.bottom)} to ${lengthText(whole.top)} above the finished floor`] : [],
  };
  const draw = (sheet: Sheet): Title => {
    for (const { outline } of step.regions) {
      const spots = outline.map((point) => sheet.spot(point));
      sheet.polygon(spots, { pen: 'cut', fill: 'tone', layer: 'fill' });
    }
    if (!whole) return title;
    const [left, low] = sheet.spot({ x: whole.left, y: whole.bottom });
    const ends = step.regions
      .flatMap((region) => extentOf([region]) ?? [])
      .flatMap(({ left: from, right }) => [from, right]);
    drawDimensions(sheet, {
      origin: [0, low + 22],
      along: [1, 0],
      outward: [0, 1],
      stops: [...new Set(ends)].sort((a, b) => a - b),
    });
    const stops = [whole.bottom, whole.top];
    drawDimensions(sheet, { origin: [left - 20, 0], along: [0, -1], outward: [-1, 0], stops });
    return title;
  };
  const shows = { number: options.number, name: options.name };
  const span = whole && { width: whole.right - whole.left, height: whole.top - whole.bottom };
  return fitDrawing({ of: step, view: 'step', shows, largest: 24, ...(span && { span }), draw }, options);
}
