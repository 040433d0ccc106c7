import type * as Disk from 'node:fs/promises';

/** Operations that change a disk, counted; from the one that is named by its number, the program is dead, or the disk refuses it. */
export const fate: {
  count: number;
  at: number;
  how: 'killed' | 'refused';
  dead: () => void;
  when: (name: string, path: string) => boolean;
} = {
  count: 0,
  when: () => false,
  at: Infinity,
  how: 'killed',
  dead: () => undefined,
};

/** Files that a dead program had open. */
const opened: Disk.FileHandle[] = [];

const changing = ['mkdir', 'rename', 'link', 'rm', 'rmdir', 'writeFile', 'mkdtemp', 'chmod'] as const;

/** A disk of which each change is an operation that may be the last. What is asked of a dead program's disk is never answered, as nothing goes on then. */
export function mortalDisk(disk: typeof Disk): typeof Disk {
  const step = <T>(work: () => Promise<T>, name = '', path = ''): Promise<T> => {
    fate.count += 1;
    if (fate.when(name, path)) fate.at = fate.count;
    if (fate.count < fate.at) return work();
    if (fate.how === 'refused' && fate.count > fate.at) return work();
    if (fate.how === 'refused')
      return Promise.reject(
        Object.assign(new Error('ENOSPC: no space left on device'), {
          code: 'ENOSPC',
          errno: -28,
          syscall: 'write',
          path: 'x',
        }),
      );
    fate.dead();
    return new Promise(() => undefined);
  };
  const mortal = Object.fromEntries(
    changing.map((name) => [
      name,
      (...given: never[]) =>
        step(
          () => (disk[name] as (...given: never[]) => Promise<unknown>)(...given),
          name,
          String(name === 'rename' ? given[1] : given[0]),
        ),
    ]),
  );
  const open = async (path: string, flags?: string): Promise<Disk.FileHandle> => {
    const file = flags === 'wx' ? await step(() => disk.open(path, flags)) : await disk.open(path, flags);
    if (flags === 'wx') opened.push(file);
    return new Proxy(file, {
      get: (of, key: keyof Disk.FileHandle) => {
        const value: unknown = of[key];
        if (typeof value !== 'function') return value;
        const call = (...given: unknown[]): Promise<unknown> =>
          (value as (...given: unknown[]) => Promise<unknown>).apply(of, given);
        return key === 'writeFile' || (key === 'sync' && flags === 'wx')
          ? (...given: unknown[]) => step(() => call(...given))
          : call;
      },
    });
  };
  return { ...disk, ...mortal, open } as typeof Disk;
}

/** Does work that is killed, or refused, at the operation of this number. Answers whether it came to its end before that. */
export async function until(
  at: number,
  how: 'killed' | 'refused',
  work: () => Promise<unknown>,
): Promise<'done' | 'killed' | 'refused'> {
  Object.assign(fate, { count: 0, at, how });
  const death = new Promise<'killed'>((resolve) => (fate.dead = () => resolve('killed')));
  const end = await Promise.race([
    death,
    work().then(
      () => 'done' as const,
      () => 'refused' as const,
    ),
  ]);
  const wasReached = fate.count >= at;
  Object.assign(fate, { count: 0, at: Infinity, when: () => false });
  for (const file of opened.splice(0)) await file.close().catch(() => undefined);
  return end === 'done' && wasReached && how === 'killed' ? 'killed' : end;
}

/** The same, killed at the first operation of which `when` is so; `path` is where it leads. */
export function killWhen(
  when: (name: string, path: string) => boolean,
  work: () => Promise<unknown>,
): Promise<'done' | 'killed' | 'refused'> {
  fate.when = when;
  return until(Infinity, 'killed', work);
}
