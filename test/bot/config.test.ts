import { expect, test } from 'vitest';
import { readConfig } from '../../bot/config.ts';

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
