import type { SvgNode } from '../../svg/index.js';
import type { Spot } from '../convex.js';
import type { Sheet } from '../sheet.js';

/** Draws a feature kind's own plan symbol: paths of M, L and Z in nanometres of the room, y up. Anything else is left out. */
export function drawSymbolNodes(sheet: Sheet, nodes: readonly SvgNode[]): void {
  for (const node of nodes) {
    const data = node.name === 'path' ? node.attributes['d'] : undefined;
    if (typeof data !== 'string') continue;
    const spots = [...data.matchAll(/[ML]\s*(-?[\d.]+)[\s,]+(-?[\d.]+)/g)].map(([, x, y]): Spot =>
      sheet.spot({ x: Number(x), y: Number(y) }),
    );
    if (spots.length < 2) continue;
    if (/Z\s*$/.test(data)) sheet.polygon(spots, { pen: 'object', fill: 'tone', layer: 'fill' });
    else sheet.polyline(spots, { pen: 'fine' });
  }
}
