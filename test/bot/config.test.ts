import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { isService, processEnvironment, readConfig, SETTING_NAMES } from '../../bot/config.ts';
import { PlainProblem } from '../../bot/ground/errors.ts';

test('with nothing set, the program runs in the terminal with a file of its own', () => {
  const config = readConfig({});
  expect(config.DISCORD_TOKEN).toBeUndefined();
  expect(config.DATABASE_URL).toBe('sqlite:eiderdown.db');
  expect(config.LOG_LEVEL).toBe('info');
});

test('an empty value counts as not set', () => {
  expect(readConfig({ DISCORD_TOKEN: '', HTTP_PORT: '' }).HTTP_PORT).toBeUndefined();
});

test.each([
  ['DISCORD_TOKEN', 'short'],
  ['DISCORD_APPLICATION_ID', 'abc'],
  ['DISCORD_PUBLIC_KEY', 'zz'],
  ['DISCORD_API_BASE', 'http://example.org/api'],
  ['DATABASE_URL', 'mysql://somewhere'],
  ['FORECAST_CONTACT', 'nobody'],
  ['FORECAST_ORDER', 'nws,tea-leaves'],
  ['NWS_BASE', 'ftp://example.org'],
  ['LOG_LEVEL', 'loud'],
  ['CLOCK_START', 'yesterday'],
  ['HTTP_PORT', '99999'],
  ['METRICS_PORT', 'abc'],
  ['NWS_BASE', 'foo'],
  ['METRICS_HOST', 'my host'],
  ['CLOCK_RATE', 'fast'],
  ['SHARDS', '-1'],
  ['DISCORD_TOKEN', '“token-of-the-loopback-double”'],
  ['DISCORD_TOKEN', 'token-of-the-loopback\ndouble'],
])('a wrong %s is named in one sentence that does not repeat the value', (name, value) => {
  expect(() => readConfig({ [name]: value })).toThrow(new RegExp(name));
  expect(() => readConfig({ [name]: value })).not.toThrow(value);
});

test('plain http is accepted on this machine only, and trailing slashes are dropped', () => {
  expect(readConfig({ DISCORD_API_BASE: 'http://127.0.0.1:8123/api/' }).DISCORD_API_BASE).toBe(
    'http://127.0.0.1:8123/api',
  );
});

test('the HTTP door without a public key is refused', () => {
  expect(() => readConfig({ HTTP_PORT: '8080' })).toThrow(/DISCORD_PUBLIC_KEY/);
});

test('a rehearsal needs both an instant and a rate', () => {
  expect(() => readConfig({ CLOCK_RATE: '60' })).toThrow(/CLOCK_START and CLOCK_RATE/);
});

test('the order of services is read as a list', () => {
  expect(readConfig({ FORECAST_ORDER: 'metno, openmeteo' }).FORECAST_ORDER).toEqual(['metno', 'openmeteo']);
});

test.each(SETTING_NAMES)('whatever %s is set to, it is taken or refused in words of ours', (name) => {
  for (const value of [
    'foo',
    '-1',
    '0',
    'https://',
    'a b',
    '“quoted-by-a-word-processor”',
    'NaN',
    '1e99',
    'x'.repeat(300),
  ]) {
    try {
      readConfig({ [name]: value });
    } catch (error) {
      expect(error).toBeInstanceOf(PlainProblem);
      expect(String(error)).toContain(name);
      expect(String(error)).not.toMatch(/Invalid|expected|received|undefined/);
    }
  }
});

describe('the file .env', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'eiderdown-env-'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test('is read below what the process was started with', () => {
    const file = join(folder, 'plain');
    writeFileSync(file, 'DUTY=nights\nLOG_LEVEL=debug\n');
    expect(processEnvironment({ DUTY: 'answers' }, file)).toEqual({ DUTY: 'answers', LOG_LEVEL: 'debug' });
  });

  test('may begin with a byte-order mark, as some editors write it', () => {
    const file = join(folder, 'marked');
    writeFileSync(file, '\uFEFFLOG_LEVEL=debug\nDUTY=nights\n');
    expect(processEnvironment({}, file)).toEqual({ LOG_LEVEL: 'debug', DUTY: 'nights' });
  });

  test('need not be there', () => {
    expect(processEnvironment({}, join(folder, 'none'))).toEqual({});
  });

  test('that is there and cannot be read stops the start in one sentence', () => {
    const file = join(folder, 'unreadable');
    mkdirSync(file);
    expect(() => processEnvironment({}, file)).toThrow(/There is a file \.env, but I cannot read it/);
  });
});

test('a service manager or the container is known by what it sets', () => {
  expect([isService({}), isService({ INVOCATION_ID: 'a' }), isService({ NODE_ENV: 'production' })]).toEqual([
    ...[false, true, true],
  ]);
});
