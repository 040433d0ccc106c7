import { describe, expect, it } from 'vitest';
import { readProse } from '../../src/write/index.js';

describe('prose', () => {
  it('reads inlines as nested data', () => {
    expect(readProse('A **bold *both*** `x` [web](https://e.example) end')).toEqual([
      {
        kind: 'paragraph',
        inlines: [
          { kind: 'text', text: 'A ' },
          {
            kind: 'strong',
            inlines: [
              { kind: 'text', text: 'bold ' },
              { kind: 'emphasis', inlines: [{ kind: 'text', text: 'both' }] },
            ],
          },
          { kind: 'text', text: ' ' },
          { kind: 'code', text: 'x' },
          { kind: 'text', text: ' ' },
          { kind: 'link', href: 'https://e.example', inlines: [{ kind: 'text', text: 'web' }] },
          { kind: 'text', text: ' end' },
        ],
      },
    ]);
  });

  it('reads lists within lists, numbered from where they start', () => {
    const [list] = readProse('3. three\n   - inner\n4. four');
    expect(list).toMatchObject({ kind: 'list', ordered: true, start: 3 });
    expect(list?.kind === 'list' && list.items).toEqual([
      [
        { kind: 'paragraph', inlines: [{ kind: 'text', text: 'three' }] },
        {
          kind: 'list',
          ordered: false,
          start: 1,
          items: [[{ kind: 'paragraph', inlines: [{ kind: 'text', text: 'inner' }] }]],
        },
      ],
      [{ kind: 'paragraph', inlines: [{ kind: 'text', text: 'four' }] }],
    ]);
  });

  it('reads tables', () => {
    expect(readProse('| a | b |\n|---|---|\n| 1 | 2 |')).toEqual([
      {
        kind: 'table',
        head: [[{ kind: 'text', text: 'a' }], [{ kind: 'text', text: 'b' }]],
        rows: [[[{ kind: 'text', text: '1' }], [{ kind: 'text', text: '2' }]]],
      },
    ]);
  });

  it.each(['field:x', 'javascript:1', '../rooms/101.md', 'file:///etc/passwd'])(
    'drops a link to %s and keeps its words',
    (href) => {
      expect(JSON.stringify(readProse(`[words](${href})`))).not.toContain('"link"');
      expect(JSON.stringify(readProse(`[words](${href})`))).toContain('words');
    },
  );

  it('keeps raw HTML as text', () => {
    expect(JSON.stringify(readProse('<script>alert(1)</script>'))).toContain('<script>');
  });
});
