import { IFCSPACE, IfcAPI } from 'web-ifc';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { inLocale } from '../../../src/base/units/index.js';
import { measureHouse } from '../../../src/core/measure/index.js';
import { readRecords } from '../../../src/core/records/index.js';
import {
  additionText,
  drafted,
  extruded,
  faceted,
  indexed,
  leftOut,
  metricHouse,
  modelText,
  type GivenSpace,
  type Triple,
} from '../../draft/ifc/model-text.js';
import { houseRecord } from '../../draft/ifc/house-record.js';

/** Another reader of ISO 16739, web-ifc 0.0.78, meshes the same models: volume and floor of each space, against those of its drafted
 *  record as the program measures it. Nothing is shared but the text. */

interface Meshed {
  readonly cubicMetres: number;
  readonly floor: number;
}

const api = new IfcAPI();
beforeAll(() => api.Init());
afterAll(() => api.Dispose());

const gable: readonly Triple[] = [
  [0, 0, 0],
  [4, 0, 0],
  [4, 6, 0],
  [0, 6, 0],
  [0, 0, 2],
  [4, 0, 2],
  [4, 6, 2.4],
  [0, 6, 2.4],
  [2, 0, 3.5],
  [2, 6, 3.9],
];
const triangles = [
  [0, 2, 1],
  [0, 3, 2],
  [0, 1, 5],
  [0, 5, 8],
  [0, 8, 4],
  [2, 3, 7],
  [2, 7, 9],
  [2, 9, 6],
  [1, 2, 6],
  [1, 6, 5],
  [3, 0, 4],
  [3, 4, 7],
  [4, 8, 9],
  [4, 9, 7],
  [8, 5, 6],
  [8, 6, 9],
];
const ell: readonly (readonly [number, number])[] = [
  [0, 0],
  [6.2, 0],
  [6.2, 3.1],
  [2.4, 3.1],
  [2.4, 5.75],
  [0, 5.75],
];

function spacesOf(body: GivenSpace['body']): readonly GivenSpace[] {
  return [{ number: '1', name: 'Hall', body, at: [3, -2, 0.4] }];
}

test.each<[string, string]>([
  ['the addition, in feet: an indexed curve, a half-space', additionText],
  ['an outline, extruded', modelText({ spaces: spacesOf(extruded(ell, 2.55)) })],
  ['turned by 22°', modelText({ turn: 22, spaces: spacesOf(extruded(ell, 2.55)) })],
  [
    'in millimetres, with a hole',
    modelText({
      prefix: 'MILLI',
      spaces: spacesOf(
        extruded(
          [
            [0, 0],
            [5000, 0],
            [5000, 4000],
            [0, 4000],
          ],
          2700,
          [
            [
              [1000, 1000],
              [1000, 2000],
              [2500, 2000],
              [2500, 1000],
            ],
          ],
        ),
      ),
    }),
  ],
  [
    'odd angles',
    modelText({
      spaces: spacesOf(
        extruded(
          [
            [0, 0],
            [5, 1],
            [4, 4],
            [-1, 3],
          ],
          2.4,
        ),
      ),
    }),
  ],
  ['a faceted body', modelText({ spaces: spacesOf(faceted(gable, triangles)) })],
  ['triangles', modelText({ spaces: spacesOf(indexed(gable, triangles, 'triangles')) })],
])('%s', (_, text) => {
  const meshed = meshes(text);
  const drawn = measures(text);
  expect(meshed.length).toBeGreaterThan(0);
  expect(drawn.length).toBe(meshed.length);
  meshed.forEach(({ cubicMetres, floor }, index) => {
    // The mesh is of single precision; records are on steps of 0.1 mm.
    expect(Math.abs((drawn[index]?.cubicMetres ?? 0) / cubicMetres - 1)).toBeLessThan(1e-4);
    expect(Math.abs((drawn[index]?.floor ?? 0) / floor - 1)).toBeLessThan(1e-4);
  });
});

/** Each space of the drafts, in the order of the model. */
function measures(text: string): readonly Meshed[] {
  const draft = drafted(text, { locale: metricHouse });
  expect(leftOut(draft)).toEqual([]);
  const levels = draft.levels.map(({ line }) => line);
  const sources = [...draft.files].map(([path, record]) => ({ path, text: record }));
  const records = readRecords([{ path: 'content/house.md', text: houseRecord({ metric: true, levels }) }, ...sources]);
  if (!records.value) throw new Error(JSON.stringify(records.problems, null, 2));
  const { value } = inLocale(metricHouse, () => measureHouse(records.value as NonNullable<typeof records.value>));
  return [...draft.files.keys()].map((path) => {
    const room = value?.get(path.replace(/^.*\/|\.md$/gu, ''));
    return { cubicMetres: (room?.volume ?? 0) * 0.3048 ** 3, floor: (room?.floor.net ?? 0) * 0.3048 ** 2 };
  });
}

/** Each space as web-ifc meshes it. It turns z up into y up. */
function meshes(text: string): readonly Meshed[] {
  const model = api.OpenModel(new TextEncoder().encode(text));
  const found: Meshed[] = [];
  api.StreamAllMeshesWithTypes(model, [IFCSPACE], (mesh) => {
    const triangles: Triple[][] = [];
    for (let index = 0; index < mesh.geometries.size(); index += 1) {
      const { geometryExpressID, flatTransformation } = mesh.geometries.get(index);
      const geometry = api.GetGeometry(model, geometryExpressID);
      const vertices = api.GetVertexArray(geometry.GetVertexData(), geometry.GetVertexDataSize());
      const corners = [...api.GetIndexArray(geometry.GetIndexData(), geometry.GetIndexDataSize())].map((corner) =>
        placed([...vertices.subarray(corner * 6, corner * 6 + 3)], flatTransformation),
      );
      for (let at = 0; at < corners.length; at += 3) triangles.push(corners.slice(at, at + 3));
    }
    found.push(figures(triangles));
  });
  api.CloseModel(model);
  return found;
}

/** By a matrix of four columns. */
function placed([x = 0, y = 0, z = 0]: readonly number[], matrix: readonly number[]): Triple {
  const row = (of: number): number =>
    (matrix[of] ?? 0) * x + (matrix[of + 4] ?? 0) * y + (matrix[of + 8] ?? 0) * z + (matrix[of + 12] ?? 0);
  return [row(0), row(1), row(2)];
}

function figures(triangles: readonly (readonly Triple[])[]): Meshed {
  const low = Math.min(...triangles.flat().map(([, y]) => y));
  let [volume, floor] = [0, 0];
  for (const [[ax, ay, az], [bx, by, bz], [cx, cy, cz]] of triangles as readonly [Triple, Triple, Triple][]) {
    volume += (ax * (by * cz - bz * cy) - ay * (bx * cz - bz * cx) + az * (bx * cy - by * cx)) / 6;
    if (Math.max(ay, by, cy) - low < 1e-4) floor += Math.abs((bx - ax) * (cz - az) - (bz - az) * (cx - ax)) / 2;
  }
  return { cubicMetres: Math.abs(volume), floor };
}
