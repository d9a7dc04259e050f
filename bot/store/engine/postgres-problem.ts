import { StoreProblem } from '../store-problem.ts';

const SQLSTATE = /^[0-9A-Z]{5}$/;
const NAME_TAKEN = new Map([
  ['site_name', 'A site of that name is already kept.'],
  ['bed_name', 'A bed of that name is already kept there.'],
]);

/** From PostgreSQL's SQLSTATE; its messages and details quote rows, so none of them is passed on. */
export function postgresProblem(thrown: unknown): StoreProblem {
  if (thrown instanceof StoreProblem) return thrown;
  const code = field(thrown, 'code');
  if (code === undefined || !SQLSTATE.test(code)) return unreachable(code);
  return constraintProblem(code, field(thrown, 'constraint')) ?? serverProblem(code);
}

function field(thrown: unknown, name: 'code' | 'constraint'): string | undefined {
  if (typeof thrown !== 'object' || thrown === null || !(name in thrown)) return undefined;
  const value: unknown = Reflect.get(thrown, name);
  return typeof value === 'string' ? value : undefined;
}

function unreachable(code: string | undefined): StoreProblem {
  return new StoreProblem(
    'unreachable',
    `The database server does not answer (${code ?? 'connection lost'}); check that it runs and that DATABASE_URL names it.`,
  );
}

function constraintProblem(code: string, constraint: string | undefined): StoreProblem | undefined {
  if (code === '23514' || code === '22003') {
    return new StoreProblem('bad-value', 'A value to be stored lies outside what is allowed.');
  }
  if (code === '23503') return new StoreProblem('not-found', 'What this belongs to is no longer kept.');
  const taken = code === '23505' ? NAME_TAKEN.get(constraint ?? '') : undefined;
  return taken === undefined ? undefined : new StoreProblem('name-taken', taken);
}

function serverProblem(code: string): StoreProblem {
  if (code === '3D000') {
    return new StoreProblem('bad-address', 'The database that DATABASE_URL names does not exist; create it first.');
  }
  if (code.startsWith('28')) {
    return new StoreProblem('unreachable', 'The database server refused the user or the password of DATABASE_URL.');
  }
  if (code.startsWith('08') || code.startsWith('57') || code === '53300') return unreachable(code);
  if (code === '53100') {
    return new StoreProblem('full', 'The disk of the database server is full; nothing was changed.');
  }
  if (code.startsWith('40') || code === '55P03') {
    return new StoreProblem('busy', 'Two programs wanted the same rows of the database; try again.');
  }
  return new StoreProblem('failed', `The database refused a statement (SQLSTATE ${code}).`);
}
