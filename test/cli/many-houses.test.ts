import { execFile, execFileSync } from 'node:child_process';
import { chmodSync, cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import process from 'node:process';
import { Job } from 'kubernetes-models/batch/v1';
import ts from 'typescript';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { parse } from 'yaml';

const root = join(import.meta.dirname, '../..');
const example = (name: string): unknown =>
  parse(readFileSync(join(root, 'docs/how-to/many-houses', name), 'utf8')) as unknown;

/** As much of both files as is asked for here. */
interface Manifest {
  readonly spec: {
    readonly completions: number;
    readonly parallelism: number;
    readonly template: {
      readonly spec: {
        readonly containers: readonly {
          readonly command: readonly string[];
          readonly image: string;
          readonly env: readonly { readonly name: string; readonly value: string }[];
          readonly resources: unknown;
          readonly securityContext: unknown;
          readonly volumeMounts: readonly { readonly mountPath: string }[];
        }[];
      };
    };
  };
}
interface Workflow {
  readonly jobs: Readonly<
    Record<
      string,
      { readonly needs?: string; readonly steps: readonly { readonly id?: string; readonly run?: string }[] }
    >
  >;
}

const job = example('job.yaml') as Manifest;
const [container] = job.spec.template.spec.containers;

/** What is wrong with a Job by the definitions that Kubernetes publishes (OpenAPI), as the package kubernetes-models 4.5.1 has them: values by its validator, which passes
 *  over keys that it does not know, and these by its types. */
function wrongIn(manifest: unknown): readonly string[] {
  try {
    new Job(manifest as ConstructorParameters<typeof Job>[0]).validate();
  } catch (error) {
    return [String(error)];
  }
  const path = join(root, 'job.ts');
  const text = `import type { IJob } from 'kubernetes-models/batch/v1';\nexport const job: IJob = ${JSON.stringify(manifest)};\n`;
  const options = { strict: true, noEmit: true, skipLibCheck: true, types: [], module: ts.ModuleKind.NodeNext };
  const host = ts.createCompilerHost(options);
  const { getSourceFile } = host;
  host.getSourceFile = (name, version) =>
    name === path ? ts.createSourceFile(name, text, version) : getSourceFile(name, version);
  const program = ts.createProgram([path], options, host);
  return ts.getPreEmitDiagnostics(program).map((one) => ts.flattenDiagnosticMessageText(one.messageText, ' '));
}

test('the Job is one by the definitions that Kubernetes publishes, which find what is wrong', () => {
  expect(wrongIn(job)).toEqual([]);
  const spec = { ...job.spec };
  for (const wrong of [
    { ...job, spec: { ...spec, completionMode: 'indexed' } },
    { ...job, spec: { ...spec, completions: '50' } },
    { ...job, spec: { ...spec, backoffLimitByIndex: 2 } },
    { ...job, spec: { ...spec, template: { spec: { ...spec.template.spec, runAsNonRoot: true } } } },
    { ...job, spec: { ...spec, template: { spec: { ...spec.template.spec, containers: [{ image: 'a' }] } } } },
  ])
    expect(wrongIn(wrong).length).toBeGreaterThan(0);
});

test('it asks for no rights, on a disk of which it may write the houses and what is thrown away', () => {
  expect(job).toMatchObject({
    kind: 'Job',
    spec: {
      completionMode: 'Indexed',
      template: {
        spec: {
          restartPolicy: 'Never',
          automountServiceAccountToken: false,
          securityContext: { runAsNonRoot: true, seccompProfile: { type: 'RuntimeDefault' } },
        },
      },
    },
  });
  expect(container).toMatchObject({
    resources: { requests: { cpu: '1', memory: '1536Mi' }, limits: { memory: '3Gi' } },
    securityContext: {
      allowPrivilegeEscalation: false,
      readOnlyRootFilesystem: true,
      privileged: false,
      capabilities: { drop: ['ALL'] },
    },
  });
  expect(container?.volumeMounts.map(({ mountPath }) => mountPath)).toEqual(['/houses', '/tmp']);
  // A name without a host: whose it is says who makes it.
  expect(container?.image).toMatch(/^[a-z]+:\d+\.\d+\.\d+$/u);
});

const dir = mkdtempSync(join(tmpdir(), 'bookmatch-many-'));
const houses = join(dir, 'houses');
const bin = join(dir, 'bin');
const small = join(root, 'test/cases/small-house');

beforeAll(() => {
  for (const name of ['elm', 'old oak', 'wrong']) cpSync(small, join(houses, name), { recursive: true });
  const room = join(houses, 'wrong/content/rooms/study.md');
  writeFileSync(room, readFileSync(room, 'utf8').replace('chosen: pine', 'chosen: none-such'));
  writeFileSync(join(houses, 'list.txt'), 'elm\nold oak\nwrong\n');
  mkdirSync(bin);
  // The command as it is installed, run from its sources.
  const command = join(root, 'src/cli/bookmatch.ts');
  const [tsx, types] = [join(root, 'node_modules/tsx/dist/loader.mjs'), join(root, 'tsconfig.json')];
  const line = `TSX_TSCONFIG_PATH="${types}" exec "${process.execPath}" --import "${tsx}" "${command}" "$@"`;
  writeFileSync(join(bin, 'bookmatch'), `#!/bin/sh\n${line}\n`);
  chmodSync(join(bin, 'bookmatch'), 0o755);
});
afterAll(() => rmSync(dir, { recursive: true, force: true }));

interface Ended {
  readonly code: number;
  readonly out: string;
  readonly error: string;
}

/** What the container of the Job does for one of its indexes, at the houses' place here. */
function runIndex(index: number): Promise<Ended> {
  const [program = '', ...args] = container?.command ?? [];
  const named = Object.fromEntries((container?.env ?? []).map(({ name, value }) => [name, value]));
  const env = {
    ...named,
    HOUSES: houses,
    HOME: dir,
    XDG_STATE_HOME: join(dir, 'state'),
    JOB_COMPLETION_INDEX: String(index),
    PATH: `${bin}${delimiter}${process.env['PATH'] ?? ''}`,
  };
  return new Promise((done) => {
    execFile(program, args, { env, cwd: '/' }, (error, out, said) =>
      done({ code: error ? Number(error.code) : 0, out, error: said }),
    );
  });
}

test('its container builds the house of its index; one with errors is told by the exit code that is not tried again', async () => {
  const [first, second] = [await runIndex(0), await runIndex(1)];
  expect([first.code, second.code]).toEqual([0, 0]);
  for (const name of ['elm', 'old oak'])
    for (const made of ['book/index.html', 'book.pdf', 'data/book.json'])
      expect(existsSync(join(houses, name, '_site', made)), `${name} ${made}`).toBe(true);
  const wrong = await runIndex(2);
  expect(wrong.code).toBe(1);
  expect(wrong.error).toContain('content/rooms/study.md');
  expect(existsSync(join(houses, 'wrong/_site'))).toBe(false);
  const again = await runIndex(1);
  expect(again).toMatchObject({ code: 0 });
  expect(again.out).toContain('is up to date');
  const beyond = await runIndex(3);
  expect(beyond).toMatchObject({ code: 2, error: 'list.txt has no line 4\n' });
}, 240_000);

test('the workflow lists the houses that are there, and runs commands of the program', async () => {
  const { jobs } = example('workflow.yaml') as Workflow;
  expect(jobs['build']?.needs).toBe('list');
  const list = jobs['list']?.steps.find(({ id }) => id === 'list')?.run ?? '';
  const output = join(dir, 'output');
  execFileSync('sh', ['-ec', list], { cwd: dir, env: { PATH: process.env['PATH'], GITHUB_OUTPUT: output } });
  expect(readFileSync(output, 'utf8')).toBe('houses=["elm","old oak","wrong"]\n');
  const runs = jobs['build']?.steps.flatMap(({ run }) => run ?? []) ?? [];
  expect(runs[0]).toBe('npm ci');
  const line = (runs[1] ?? '').replace('${{ matrix.house }}', 'elm').replace(/^npx /u, '');
  const code = await new Promise((done) => {
    // It is built above, unless this test runs alone.
    const env = {
      ...process.env,
      XDG_STATE_HOME: join(dir, 'state'),
      PATH: `${bin}${delimiter}${process.env['PATH'] ?? ''}`,
    };
    execFile('sh', ['-ec', line], { cwd: dir, env }, (error) => done(error ? error.code : 0));
  });
  expect(line).toContain('bookmatch build');
  expect(code).toBe(0);
  expect(runs).toHaveLength(2);
}, 120_000);
