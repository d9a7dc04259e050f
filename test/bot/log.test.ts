import { expect, test } from 'vitest';
import { PlainProblem } from '../../bot/ground/errors.ts';
import { errorFacts, openLog, plainWords } from '../../bot/log.ts';
import { StoreProblem } from '../../bot/store/store-problem.ts';

function logged(error: unknown): string {
  let text = '';
  openLog('info', {
    write: (line: string) => {
      text += line;
    },
  }).error({ err: error }, 'failed');
  return text;
}

test('what an unknown error says may hold anything, and is not written', () => {
  const error = Object.assign(new RangeError('latitudeDeg 41.2109871 is off'), {
    url: 'https://example.org/secret-token',
  });
  expect(logged(error)).toContain('"type":"RangeError"');
  expect(logged(error)).toMatch(/log\.test\.ts/);
  expect(logged(error)).not.toMatch(/41\.2|secret-token/);
  expect(logged(new Error('first line 41.2\n    at heart 96.6'))).not.toContain('41.2');
});

test('our own errors speak, with their code', () => {
  expect(logged(new StoreProblem('busy', 'Two programs wanted it.'))).toContain(
    '"code":"busy","message":"Two programs',
  );
  expect(logged(new PlainProblem('Do this.'))).toContain('Do this.');
});

test('something else that was thrown is told by its kind alone', () => {
  expect(errorFacts('41.2109871')).toEqual({ type: 'string' });
});

test('lines carry neither the process nor the name of the machine', () => {
  expect(Object.keys(JSON.parse(logged(new Error('x')))).sort()).toEqual(['err', 'level', 'msg', 'time']);
});

test('at a terminal a line of the log is words, and each kind is told once', () => {
  const seen: string[] = [];
  const log = openLog('info', plainWords({ write: (line: string) => void seen.push(line) }));
  for (let count = 0; count < 3; count += 1) {
    log.warn({ service: 'metno', code: 'unavailable' }, 'a forecast service did not serve');
    log.error({ err: new TypeError('x is not a function') }, 'a command failed');
  }
  expect(seen).toEqual([
    '(a forecast service did not serve: metno, unavailable)\n',
    '(a command failed: x is not a function)\n',
  ]);
});
