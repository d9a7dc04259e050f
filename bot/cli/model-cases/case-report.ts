import { PlainProblem } from '../../ground/errors.ts';
import { caseResult } from './case-result.ts';
import { caseFileSchema, type ModelCase } from './case-schema.ts';

/**
 * Runs every case of a file.
 *
 * @param text - A file of cases as JSON.
 * @returns The same document with `computed` in each case.
 * @throws PlainProblem that says in one sentence what is wrong with the file.
 */
export function caseReport(text: string): string {
  const document = parsed(text);
  const checked = caseFileSchema.safeParse(document);
  if (!checked.success) {
    const [issue] = checked.error.issues;
    throw new PlainProblem(`The file is not as it should be at ${placeOf(issue?.path ?? [])}: ${issue?.message}.`);
  }
  const cases = checked.data.cases.map((modelCase) => ({ ...modelCase, computed: resultOf(modelCase) }));
  return JSON.stringify({ ...checked.data, cases }, undefined, 1);
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new PlainProblem(
      'The file is not complete JSON; it should hold { "schema": 1, "model": 2, "cases": [ … ] } from the first brace to the last.',
    );
  }
}

function resultOf(modelCase: ModelCase) {
  try {
    return caseResult(modelCase);
  } catch (thrown) {
    if (!(thrown instanceof RangeError)) throw thrown;
    throw new PlainProblem(`Case ${modelCase.id} cannot be run: ${thrown.message}.`);
  }
}

function placeOf(path: readonly PropertyKey[]): string {
  const place = path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${String(step)}`)).join('');
  return place === '' ? 'its outermost level' : place.replace(/^\./, '');
}
