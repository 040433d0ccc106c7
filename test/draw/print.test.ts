import { join } from 'node:path';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { PDFDocument } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { drawPlan, drawSwatch, printPalette } from '../../src/draw/index.js';
import { swatchPatterns } from '../../src/core/model/index.js';
import { svgText } from '../../src/base/svg/index.js';
import { greatRoom } from './rooms.js';

const fonts = join(import.meta.dirname, '../../fonts/print');

describe('in Typst', () => {
  it('a drawing takes its size on paper, and every swatch is an image', async () => {
    const compiler = NodeCompiler.create({ fontArgs: [{ fontPaths: [fonts] }] });
    const plan = drawPlan(greatRoom(), { id: 'p', number: '101', name: 'Great room', palette: printPalette });
    const swatches = swatchPatterns.map((pattern) =>
      svgText(
        drawSwatch({ pattern, colors: ['#b08a5e', '#96714a'] }, { width: 96, height: 60, seed: 's', title: pattern }),
      ),
    );
    const image = (svg: string, width = ''): string => `image(bytes(${JSON.stringify(svg)}), format: "svg"${width})`;
    const source = [
      '#set page(width: auto, height: auto, margin: 0pt)',
      `#${image(svgText(plan.svg))}`,
      '#pagebreak()',
      `#grid(columns: 5, ${swatches.map((svg) => image(svg, ', width: 1in')).join(', ')})`,
    ].join('\n');
    const pdf = await PDFDocument.load(compiler.pdf({ mainFileContent: source }));
    expect(pdf.getPageCount()).toBe(2);
    // Points on paper are the drawing's inches times 72.
    expect(pdf.getPage(0).getWidth()).toBeCloseTo(plan.width * 72, 0);
    expect(pdf.getPage(0).getHeight()).toBeCloseTo(plan.height * 72, 0);
    expect(pdf.getPage(1).getWidth()).toBeCloseTo(5 * 72, 0);
  });
});
