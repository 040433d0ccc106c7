/** What the package offers to a script. In: a house folder. Out: its Book, and what is wrong in its records. Absent: pages, PDFs and git, which
 *  the commands have; a script that wants these runs `bookmatch`. */
export { readBook, type ReadBook } from './read-book.js';
export { printProblems, type Problem, type ProblemCode } from '../base/problem/index.js';
export type {
  Alternative,
  Book,
  BookCategory,
  BookChangeOrder,
  BookHouse,
  BookHouseAlternative,
  BookIssue,
  BookMoney,
  BookOption,
  BookRoom,
  BookSelection,
  BookTrade,
  JointDecision,
  Schedules,
} from '../core/book/index.js';
