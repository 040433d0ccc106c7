import { PDFString } from 'pdf-lib';
import { holds, ofType, put, standsIn } from './elements.js';
import { elementOf, memory, profile, retype, type Rule } from './rule.js';
import { key, kidTypes, textIn, type Tag } from './tagged.js';

const hasWords = ({ dict }: Tag): boolean =>
  [textIn(dict, 'Alt'), textIn(dict, 'ActualText')].some((text) => text !== undefined && text !== '');

const levelOf = ({ standard = '' }: Tag): number => Number(/^H(\d)$/u.exec(standard)?.[1] ?? 0);

/** How other elements stand in each other: lists, contents, headings, drawings, notes. */
export const structureRules: readonly Rule[] = [
  {
    id: '7.2-17',
    source: profile,
    says: 'an item stands in a list',
    faults: standsIn('LI', 'L'),
    plant: put('LI', 'Document'),
  },
  {
    id: '7.2-18',
    source: profile,
    says: 'the words of an item stand in an item',
    faults: standsIn('LBody', 'LI'),
    plant: put('LBody', 'Document'),
  },
  {
    id: '7.2-19',
    source: profile,
    says: 'a list holds items and lists, a caption first',
    faults: holds('L', /^$|^Caption$|^(Caption )?(L|LI)( (L|LI))*$/u),
    plant: put('P', 'L'),
  },
  {
    id: '7.2-20',
    source: profile,
    says: 'an item holds its mark and its words',
    faults: holds('LI', /^$|^(Lbl|LBody)( (Lbl|LBody))*$/u),
    plant: retype('LBody', 'P'),
  },
  {
    id: '7.2-26',
    source: profile,
    says: 'an entry of the contents stands in contents',
    faults: standsIn('TOCI', 'TOC'),
    plant: put('TOCI', 'Document'),
  },
  {
    id: '7.2-27',
    source: profile,
    says: 'contents hold entries and contents, a caption first',
    faults: holds('TOC', /^$|^Caption$|^(Caption )?(TOC|TOCI)( (TOC|TOCI))*$/u),
    plant: put('P', 'TOC'),
  },
  {
    id: '7.3-1',
    source: profile,
    says: 'a drawing has words',
    faults: (tagged) =>
      ofType(tagged, 'Figure')
        .filter((tag) => !hasWords(tag))
        .map(() => 'a Figure without words'),
    plant: (document) => {
      elementOf(document, 'Figure').delete(key('Alt'));
    },
  },
  {
    id: '7.4.2-1',
    source: profile,
    says: 'headings begin at the first level, and go down one at a time',
    faults: (tagged) => {
      const levels = tagged.tags.map(levelOf).filter((level) => level > 0);
      return levels.flatMap((level, at) =>
        level > (levels[at - 1] ?? 0) + 1 ? [`H${level} after H${levels[at - 1] ?? 0}`] : [],
      );
    },
    plant: retype('H1', 'H6'),
  },
  {
    id: '7.4.4-1',
    source: profile,
    says: 'no element has two headings without a level',
    faults: (tagged) =>
      tagged.tags.filter((tag) => kidTypes(tag).filter((one) => one === 'H').length > 1).map(({ type }) => type),
    plant: (document) => {
      put('H', 'Document')(document);
      put('H', 'Document')(document);
    },
  },
  {
    id: '7.4.4-2',
    source: profile,
    says: 'headings have levels throughout, or not at all',
    faults: (tagged) => (ofType(tagged, 'H').length > 0 && tagged.tags.some((tag) => levelOf(tag) > 0) ? ['both'] : []),
    plant: put('H', 'Document'),
  },
  {
    id: '7.7-1',
    source: profile,
    says: 'a formula has words',
    faults: (tagged) =>
      ofType(tagged, 'Formula')
        .filter((tag) => !hasWords(tag))
        .map(() => 'a Formula without words'),
    plant: put('Formula', 'Document'),
  },
  {
    id: '7.9-1',
    source: profile,
    says: 'a note has an ID',
    faults: (tagged) =>
      ofType(tagged, 'Note')
        .filter(({ dict }) => (textIn(dict, 'ID') ?? '') === '')
        .map(() => 'a Note without ID'),
    plant: put('Note', 'Document'),
  },
  {
    id: '7.9-2',
    source: profile,
    says: 'no two notes have one ID',
    faults: (tagged) => {
      const ids = ofType(tagged, 'Note').map(({ dict }) => textIn(dict, 'ID') ?? '');
      return ids.filter((id, at) => id !== '' && ids.indexOf(id) < at);
    },
    plant: (document) => {
      for (const at of ['H1', 'H2']) {
        const element = elementOf(document, at);
        element.set(key('S'), key('Note'));
        element.set(key('ID'), PDFString.of('one'));
      }
    },
  },
  {
    id: '14.8.4.2',
    source: memory,
    says: 'one document holds everything (ISO 32000-1)',
    faults: ({ tags }) =>
      tags
        .filter(({ parent }) => !parent)
        .flatMap(({ standard = '?' }, at) => (at > 0 || standard !== 'Document' ? [standard] : [])),
    plant: retype('Document', 'Sect'),
  },
];
