import type { ChangeOrder, Issue, Source } from '../../core/model/index.js';
import {
  readChangeOrderRecord,
  readFrontMatter,
  readIssueRecord,
  readSigners,
  type Signer,
} from '../../core/records/index.js';
import { readFileInside, readHouseFolder } from '../store/index.js';
import { recordNumber } from '../../base/units/index.js';
import { changeOrderDigest, type IssuedFacts } from '../../signoff/index.js';
import { issuedPath } from './read-snapshot.js';

/** What a house folder knows of signed books. */
interface Signing {
  readonly issues: readonly Issue[];
  readonly changeOrders: readonly ChangeOrder[];
  /** The builder's job number, as the record writes it. */
  readonly job: string;
  readonly signers: readonly Signer[];
  /** Records that cannot be read so far, in words. */
  readonly problems: readonly string[];
}

/** Reads the issues and the signers of a house; undefined for a folder that holds no house. */
export async function loadSigning(houseDir: string): Promise<Signing | undefined> {
  return signingOf((await readHouseFolder(houseDir)).files);
}

/** The same from records whose text is at hand. */
export function signingOf(files: readonly Source[]): Signing | undefined {
  const house = files.find(({ path }) => path === 'content/house.md');
  if (!house) return undefined;
  const { signers, broken } = readSigners(house);
  const issues = readAll(files, 'content/issues/', readIssueRecord);
  const orders = readAll(files, 'content/changes/', readChangeOrderRecord);
  const job = String(readFrontMatter(house).value?.data.number ?? '');
  const problems = [
    ...(broken ? ['signers in content/house.md cannot all be read: bookmatch check says why'] : []),
    ...[...orders.unreadable, ...issues.unreadable].map((path) => `${path} cannot be read: bookmatch check says why`),
  ];
  return { issues: issues.records, changeOrders: orders.records, job, signers, problems };
}

/** The records of a folder that can be read, and the paths of those that cannot. */
function readAll<T>(
  files: readonly Source[],
  folder: string,
  read: (source: Source) => T | undefined,
): { readonly records: readonly T[]; readonly unreadable: readonly string[] } {
  const all = files
    .filter(({ path }) => path.startsWith(folder))
    .map((source) => ({ path: source.path, record: read(source) }));
  return {
    records: all.map(({ record }) => record).filter((record) => record !== undefined),
    unreadable: all.filter(({ record }) => record === undefined).map(({ path }) => path),
  };
}

/** What a PDF may be held against: the issues of a house and its change orders. */
export function documentsOf({ issues, changeOrders, job }: Signing): readonly IssuedFacts[] {
  return [
    ...issues,
    ...changeOrders.map((order): IssuedFacts => {
      const { number, state, proposedOn, decidedOn = proposedOn, decidedBy = '', voidReason = '' } = order;
      const taken = state === 'void' ? { void: { on: decidedOn, by: decidedBy, why: voidReason } } : {};
      return {
        is: 'change order',
        number,
        purpose: state,
        date: proposedOn,
        digest: changeOrderDigest(job, order),
        ...taken,
      };
    }),
  ];
}

/** Where the PDF of an issue or of a change order that is signed lies in the house folder. */
export function documentPath({ is, number }: Pick<IssuedFacts, 'is' | 'number'>): string {
  return is === undefined ? `${issuedPath(number)}.pdf` : `issued/change-${recordNumber(number)}.pdf`;
}

/** The PDF of an issue or a change order as it was printed; undefined when it is not in the folder. */
export async function readIssuedPdf(
  houseDir: string,
  document: Pick<IssuedFacts, 'is' | 'number'>,
): Promise<Uint8Array | undefined> {
  return readFileInside(houseDir, documentPath(document));
}
