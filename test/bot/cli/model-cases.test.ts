import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { caseReport } from '../../../bot/cli/model-cases/case-report.ts';
import { PlainProblem } from '../../../bot/ground/errors.ts';
import { ran } from './program.ts';

const FILE = fileURLToPath(new URL('../../fixtures/model-cases/model-cases.json', import.meta.url));
const TEXT = readFileSync(FILE, 'utf8');

type Json = Record<string, unknown>;

/** The file with its first case alone, changed. */
function oneCase(change: (input: Json, whole: Json) => void): string {
  const document = JSON.parse(TEXT);
  const first = document.cases[0];
  document.cases = [first];
  change(first.input, first);
  return JSON.stringify(document);
}

function problemOf(text: string): string {
  try {
    caseReport(text);
  } catch (thrown) {
    if (thrown instanceof PlainProblem) return thrown.message;
    throw thrown;
  }
  throw new Error('no problem');
}

function computed(text: string): Json {
  return JSON.parse(caseReport(text)).cases[0].computed;
}

describe('a file of model cases', () => {
  test('comes back whole with what was computed beside each input', () => {
    const report = JSON.parse(caseReport(TEXT));
    const original = JSON.parse(TEXT);
    expect(report.cases).toHaveLength(original.cases.length);
    for (const [i, { computed: result, ...rest }] of report.cases.entries()) {
      expect(Object.keys(result)).toEqual(Object.keys(rest.expected));
      expect(rest).toEqual(withDefaults(original.cases[i]));
    }
  });

  test('can be read again', () => {
    const report = caseReport(oneCase(() => undefined));
    expect(caseReport(report)).toBe(report);
  });

  test('without a window is asked for its longest dark', () => {
    const { nightWindow } = computed(oneCase((_input, whole) => delete whole['expected']));
    // The sun sets at 16:36 and rises at 7:03 local time.
    expect(nightWindow).toEqual(['2025-12-01T21:40:00.000Z', '2025-12-02T12:00:00.000Z']);
  });

  test('without cloud has a clear sky', () => {
    const clear = computed(oneCase((input) => delete (input['weather'] as Json)['cloud']));
    expect(clear).toEqual(computed(oneCase(() => undefined)));
  });

  test.each<[string, string, string]>([
    ['cut short', TEXT.slice(0, 5000), 'The file is not complete JSON'],
    ['empty', '', 'The file is not complete JSON'],
    ['no object', '[]', 'its outermost level'],
    ['of another model', TEXT.replace('"model": 2', '"model": 3'), 'at model: '],
    ['with a word for a number', oneCase((input) => (input['floorFraction'] = 'all')), 'cases[0].input.floorFraction'],
    ['with a slip in a name', oneCase((input) => (input['soil'] = { ...(input['soil'] as Json), albdo: 1 })), 'albdo'],
    ['with a time that is none', oneCase((input) => (input['start'] = 'noon')), 'should be an instant such as'],
    [
      'with a number out of range',
      oneCase((input) => (input['soil'] = { ...(input['soil'] as Json), albedo: 2 })),
      'Case P01 cannot be run: soil.albedoFraction 2 is outside 0…1.',
    ],
    [
      'with too little weather',
      oneCase((input) => (input['end'] = '2025-12-05T00:00:00Z')),
      'Case P01 cannot be run: end 2025-12-05T00:00:00.000Z is after the last weather value',
    ],
  ])('that is %s is refused in one sentence', (_what, text, part) => {
    const problem = problemOf(text);
    expect(problem).toContain(part);
    expect(problem).not.toContain('\n');
    expect(problem.endsWith('.')).toBe(true);
  });
});

describe('model', () => {
  test('prints the report and exits 0', async () => {
    const { code, out, err } = await ran('cli/model', [FILE]);
    expect([code, err]).toEqual([0, '']);
    expect(out.trim()).toBe(caseReport(TEXT));
  });

  test.each([
    ['no file', []],
    ['a file that is not there', ['no-such-cases.json']],
    ['a file that is no JSON', [fileURLToPath(import.meta.url)]],
  ])('with %s says so in one line and exits 1', async (_what, words) => {
    const { code, out, err } = await ran('cli/model', words);
    expect([code, out]).toEqual([1, '']);
    expect(err.trim().split('\n')).toHaveLength(1);
  });
});

/** Zeros that the format lets a layer leave out are written out. */
function withDefaults(original: { input: { layers: Json[] } }): Json {
  const { input } = original;
  return { ...original, input: { ...input, layers: input.layers.map((one) => ({ leakT: 0, contact: 0, ...one })) } };
}
