import { describe, expect, it } from 'vitest';
import { PathBuilder, element, numberText, svgText, text } from '../../src/base/svg/index.js';

describe('svgText', () => {
  it('escapes text and attributes', () => {
    const node = text(1, 2, `<a> & "b" 'c'`, { 'aria-label': `5'-0" <x>` });
    expect(svgText(node)).toBe(
      '<text x="1" y="2" aria-label="5&#39;-0&quot; &lt;x&gt;">&lt;a&gt; &amp; &quot;b&quot; &#39;c&#39;</text>',
    );
  });

  it('leaves out what is undefined and closes what is empty', () => {
    expect(svgText(element('g', { fill: undefined, stroke: 'none' }))).toBe('<g stroke="none"/>');
  });

  it('drops characters that XML forbids', () => {
    expect(svgText(text(0, 0, 'a\u0000b\u001fc'))).toBe('<text x="0" y="0">abc</text>');
  });
});

describe('numberText', () => {
  it.each([
    [1.005, '1'], // 1.005 is a little less than itself in binary
    [-0.001, '0'],
    [1e-9, '0'],
    [12.5, '12.5'],
    [100, '100'],
    [1234567.891, '1234567.89'],
  ])('%d is %s', (value, expected) => expect(numberText(value)).toBe(expected));

  it('keeps the zeros of whole numbers when no decimals are asked for', () => expect(numberText(100, 0)).toBe('100'));
});

describe('PathBuilder', () => {
  it('writes absolute commands', () => {
    const d = new PathBuilder().moveTo(0, 1.234).lineTo(2, 3).arcTo(5, true, 7, 8).close().data;
    expect(d).toBe('M0 1.23L2 3A5 5 0 0 1 7 8Z');
  });
});
