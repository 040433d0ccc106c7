import type { Issue, Source } from '../../core/model/index.js';
import { readIssueRecord, readSigners, type Signer } from '../../core/records/index.js';
import { readFileInside, readHouseFolder } from '../store/index.js';
import { issuedPath } from './read-snapshot.js';

/** What a house folder knows of signed books. */
interface Signing {
  readonly issues: readonly Issue[];
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
  const records = files.filter(({ path }) => path.startsWith('content/issues/'));
  const read = records.map((source) => ({ path: source.path, issue: readIssueRecord(source) }));
  const problems = [
    ...(broken ? ['signers in content/house.md cannot all be read: bookmatch check says why'] : []),
    ...read.flatMap(({ path, issue }) => (issue ? [] : [`${path} cannot be read: bookmatch check says why`])),
  ];
  return { issues: read.flatMap(({ issue }) => issue ?? []), signers, problems };
}

/** The PDF of an issue as it was printed; undefined when it is not in the folder. */
export async function readIssuedPdf(houseDir: string, number: number): Promise<Uint8Array | undefined> {
  return readFileInside(houseDir, `${issuedPath(number)}.pdf`);
}
