import { printLength, type Length } from '../../../base/units/index.js';
import type { Course, Departure } from './layout.js';
import type { Plan, Task } from './search/task.js';

/** Where a finished plan does not keep the rules. Pieces that fill a whole span are as long as they can be. */
export function departuresOf(task: Task, courses: readonly Course[], plan: Plan): readonly Departure[] {
  const joints = jointsByCourse(task, plan);
  return [
    ...shortPieces(task, courses, plan),
    ...courses.flatMap((course, i) => closeJoints(task, course, i, joints)),
    ...offFraming(task, courses, plan),
  ];
}

/** Joints of each course: ends of pieces that meet within a span. */
function jointsByCourse({ spans }: Task, { pieces }: Plan): ReadonlyMap<number, readonly number[]> {
  const joints = new Map<number, number[]>();
  pieces.forEach((piece, i) => {
    const course = spans[piece.span]?.course ?? 0;
    if (pieces[i - 1]?.span === piece.span) joints.set(course, [...(joints.get(course) ?? []), piece.start]);
  });
  return joints;
}

function closeJoints(
  task: Task,
  course: Course,
  index: number,
  joints: ReadonlyMap<number, readonly number[]>,
): Departure[] {
  if (course.number === 1) return [];
  const above = joints.get(index - 1) ?? [];
  return (joints.get(index) ?? []).flatMap((at) => {
    const apart = Math.min(...above.map((other) => Math.abs(other - at)));
    if (apart >= task.stagger) return [];
    const words = `course ${course.number}: a joint ${printLength(apart as Length)} from one in the course before, rule ${printLength(task.stagger as Length)}`;
    return [{ kind: 'stagger', course: index, at: at as Length, words }];
  });
}

function shortPieces({ spans, leastPiece }: Task, courses: readonly Course[], { pieces }: Plan): Departure[] {
  return pieces.flatMap(({ span: index, start, end }): Departure[] => {
    const span = spans[index];
    const short = span && end - start < leastPiece && end - start < span.end - span.start;
    if (!short) return [];
    const number = courses[span.course]?.number ?? 0;
    const words = `course ${number}: a piece of ${printLength((end - start) as Length)}, rule ${printLength(leastPiece as Length)}`;
    return [{ kind: 'least piece', course: span.course, at: start as Length, words }];
  });
}

function offFraming({ spans, framing }: Task, courses: readonly Course[], { pieces }: Plan): Departure[] {
  if (framing === undefined) return [];
  return pieces.flatMap((piece, i): Departure[] => {
    const span = spans[piece.span];
    const joins = pieces[i - 1]?.span === piece.span;
    if (!span || !joins || (piece.start - span.framingAt) % framing === 0) return [];
    const words = `course ${courses[span.course]?.number ?? 0}: a joint off the framing`;
    return [{ kind: 'framing', course: span.course, at: piece.start, words } as Departure];
  });
}
