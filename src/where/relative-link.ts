/** The link from one page of the book to another, relative, so that it works from a disk: `../rooms/study.html#walls`. */
export function relativeLink(from: string, to: string): string {
  const [path = '', anchor] = to.split('#');
  const here = from.split('/').slice(0, -1);
  const there = path === '' ? from.split('/') : path.split('/');
  let shared = 0;
  while (shared < here.length && shared < there.length - 1 && here[shared] === there[shared]) shared++;
  const up = here.slice(shared).map(() => '..');
  const link = [...up, ...there.slice(shared)].join('/');
  return anchor === undefined ? link : `${path === '' ? '' : link}#${anchor}`;
}
