import { describe, expect, it } from 'vitest';
import { appendItem } from '../../src/core/records/index.js';

const item = { id: 'b', name: 'New: one', covers: ['material', 'tax'] };
const record = (list: string): string =>
  `---\nname: House # ours\n${list}# the order of work\nlast: 1\n---\n\nProse.\n`;

describe('one more entry of a list', () => {
  it('stands over several lines where the one before it does', () => {
    const before = record('all:\n  # first\n  - id: a\n    name: One # kept\n    covers: [material]\n');
    const added = '  - id: b\n    name: "New: one"\n    covers: [ material, tax ]\n';
    expect(appendItem(before, 'all', item, [])).toBe(before.replace('# the order', `${added}# the order`));
  });

  it('stands in one line where the one before it does', () => {
    const before = record('all:\n  - { id: a, name: One, covers: [material] } # kept\n');
    const added = '  - { id: b, name: "New: one", covers: [ material, tax ] }\n';
    expect(appendItem(before, 'all', item, [])).toBe(before.replace('# the order', `${added}# the order`));
  });

  it('stands within the brackets of a list in one line', () => {
    const before = record('all: [{ id: a }]\n');
    expect(appendItem(before, 'all', { id: 'b' }, [])).toBe(before.replace('{ id: a }]', '{ id: a }, { id: b }]'));
  });

  it('begins a list that is empty or not there, after the key that it follows', () => {
    expect(appendItem(record('all: []\n'), 'all', { id: 'b' }, [])).toBe(record('all:\n  - id: b\n'));
    expect(appendItem(record(''), 'all', { id: 'b' }, ['name'])).toBe(record('all:\n  - id: b\n'));
  });

  it('keeps the line ends of the file', () => {
    const before = record('all:\n  - { id: a }\n').replaceAll('\n', '\r\n');
    expect(appendItem(before, 'all', { id: 'b' }, [])).toBe(
      before.replace('  - { id: a }\r\n', '  - { id: a }\r\n  - { id: b }\r\n'),
    );
  });
});
