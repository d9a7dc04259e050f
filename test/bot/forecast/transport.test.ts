import { afterEach, beforeEach, expect, it } from 'vitest';
import { answerJson } from '../../../bot/forecast/answer-json.ts';
import type { ForecastServiceError } from '../../../bot/forecast/forecast-error.ts';
import {
  jitteredWaitMs,
  type ServiceEvent,
  Transport,
  type TransportOptions,
} from '../../../bot/forecast/transport.ts';
import { ForecastServices } from '../../fakes/forecast-services.ts';

let services: ForecastServices;
let transport: Transport;
let events: ServiceEvent[];
let clockMs: number;

const MET = '/weatherapi/locationforecast/2.0/complete?lat=1&lon=2';
const GRID = '/gridpoints/XYZ/11,22';
const OPEN = '/v1/forecast?latitude=1';
const JSON_HEADERS = { 'content-type': 'application/json' };

function connect(options: Partial<TransportOptions> = {}): Transport {
  return new Transport({
    bases: services.bases,
    contact: 'grower@example.org',
    tell: (event) => events.push(event),
    retryWaitMs: () => 1,
    spacingMs: { nws: 0, metno: 0, openmeteo: 0 },
    clockMs: () => clockMs,
    ...options,
  });
}

beforeEach(async () => {
  services = await ForecastServices.start();
  events = [];
  clockMs = 1000;
  transport = connect();
});

afterEach(async () => {
  await transport.close();
  await services.close();
});

async function failure(asking: Promise<unknown>): Promise<ForecastServiceError> {
  const error: unknown = await asking.then(
    () => undefined,
    (cause: unknown) => cause,
  );
  expect(error).toBeInstanceOf(Error);
  return error as ForecastServiceError;
}

it('names the program and how to reach its operator, and asks for packed answers', async () => {
  await transport.get('metno', MET);
  expect(services.requests[0]?.headers['user-agent']).toBe('Eiderdown/0.1 (grower@example.org)');
  expect(services.requests[0]?.headers['accept-encoding']).toBe('gzip');
});

it('writes only plain characters into its name, whatever the contact holds', async () => {
  await transport.close();
  transport = connect({ contact: 'gärtner@example.org\r\nx: 1' });
  await transport.get('metno', MET);
  expect(services.requests[0]?.headers['user-agent']).toBe('Eiderdown/0.1 (grtner@example.orgx: 1)');
});

it('unpacks a packed answer', async () => {
  services.script(MET.slice(0, 20), { body: '{"a":1}', headers: JSON_HEADERS, gzip: true });
  expect(answerJson('metno', await transport.get('metno', MET))).toEqual({ a: 1 });
});

it('does not ask again before the answer expires', async () => {
  const expires = new Date(Date.now() + 1_800_000).toUTCString();
  services.script('/weatherapi', { headers: { ...JSON_HEADERS, expires }, body: '{"run":1}' });
  await transport.get('metno', MET);
  const again = await transport.get('metno', MET);
  expect(again.body).toBe('{"run":1}');
  expect(services.requests).toHaveLength(1);
});

it('asks an expired answer with its exact Last-Modified and keeps the body when nothing changed', async () => {
  const lastModified = 'Tue, 20 Jan 2026 19:31:07 GMT';
  const expires = new Date(Date.now() - 1000).toUTCString();
  services.script(
    '/weatherapi',
    { headers: { ...JSON_HEADERS, expires, 'last-modified': lastModified }, body: '{"run":1}' },
    {
      status: 304,
      headers: { expires: new Date(Date.now() + 600_000).toUTCString(), 'last-modified': lastModified },
      gzip: false,
    },
  );
  await transport.get('metno', MET);
  const again = await transport.get('metno', MET);
  expect(services.requests.map(({ headers }) => headers['if-modified-since'])).toEqual([undefined, lastModified]);
  expect(again).toMatchObject({ status: 200, body: '{"run":1}' });
});

it('revalidates National Weather Service answers by its own clock, since theirs has been seen in the future', async () => {
  const future = new Date(Date.now() + 7_200_000).toUTCString();
  services.script('/gridpoints', {
    headers: { ...JSON_HEADERS, 'cache-control': 'max-age=0', 'last-modified': future },
    body: '{}',
  });
  await transport.get('nws', GRID);
  await transport.get('nws', GRID);
  const said = services.requests[1]?.headers['if-modified-since'] ?? '';
  expect(said).not.toBe(future);
  expect(Math.abs(Date.parse(said) - Date.now())).toBeLessThan(60_000);
});

it('keeps an answer of a service that says nothing about keeping for half an hour', async () => {
  await transport.get('openmeteo', OPEN);
  const again = await transport.get('openmeteo', OPEN);
  expect(services.requests).toHaveLength(1);
  expect(again.ageS).toBeLessThan(5);
});

it('tries once more after a broken answer and then succeeds', async () => {
  services.script('/gridpoints', { status: 500 }, { status: 200, body: '{"ok":true}' });
  expect((await transport.get('nws', GRID)).body).toBe('{"ok":true}');
  expect(services.requests).toHaveLength(2);
});

it('waits once before that second try', async () => {
  const waits: number[] = [];
  await transport.close();
  transport = connect({ retryWaitMs: () => waits.push(1) });
  services.script('/gridpoints', { status: 503 }, { status: 200, body: '{}' });
  await transport.get('nws', GRID);
  expect(waits).toHaveLength(1);
});

it('waits five to ten seconds unless told otherwise', () => {
  const waits = Array.from({ length: 200 }, jitteredWaitMs);
  expect(Math.min(...waits)).toBeGreaterThanOrEqual(5000);
  expect(Math.max(...waits)).toBeLessThanOrEqual(10_000);
  expect(new Set(waits).size).toBeGreaterThan(1);
});

it('gives up after the second failure and leaves that address alone for a minute and a half', async () => {
  services.script('/gridpoints', { status: 503 });
  expect(await failure(transport.get('nws', GRID))).toMatchObject({
    code: 'unavailable',
    service: 'nws',
    retryAfterS: 90,
  });
  expect(services.requests).toHaveLength(2);
  expect(await failure(transport.get('nws', GRID))).toMatchObject({ code: 'unavailable', retryAfterS: 90 });
  expect(services.requests).toHaveLength(2);
  clockMs += 90_001;
  services.script('/gridpoints', { body: '{}' });
  expect((await transport.get('nws', GRID)).status).toBe(200);
});

it('leaves a whole service alone for two minutes after three addresses in a row failed', async () => {
  services.script('/gridpoints', { status: 503 });
  for (const cell of ['1,1', '2,2', '3,3']) await failure(transport.get('nws', `/gridpoints/XYZ/${cell}`));
  const before = services.requests.length;
  expect(await failure(transport.get('nws', '/gridpoints/XYZ/4,4'))).toMatchObject({
    code: 'unavailable',
    retryAfterS: 110,
  });
  expect(services.requests).toHaveLength(before);
  expect((await transport.get('metno', MET)).status).toBe(200);
});

for (const [status, code] of [
  [401, 'refused'],
  [403, 'refused'],
  [429, 'rate-limited'],
] as const) {
  it(`never repeats a ${status}: the whole service rests for an hour and the operator hears of it`, async () => {
    services.script('/weatherapi', { status });
    expect(await failure(transport.get('metno', MET))).toMatchObject({ code, retryAfterS: 3600 });
    expect(await failure(transport.get('metno', `${MET}&other`))).toMatchObject({ code });
    expect(services.requests).toHaveLength(1);
    expect(events).toEqual([{ service: 'metno', code, status }]);
    clockMs += 3_599_000;
    expect(await failure(transport.get('metno', MET))).toMatchObject({ retryAfterS: 1 });
    clockMs += 2000;
    await failure(transport.get('metno', MET));
    expect(services.requests).toHaveLength(2);
  });
}

it('rests longer when the service asks for longer', async () => {
  services.script('/v1', { status: 429, headers: { 'retry-after': '7200' } });
  expect(await failure(transport.get('openmeteo', OPEN))).toMatchObject({ retryAfterS: 7200 });
});

it('rests no longer than six hours, whatever the service asks for', async () => {
  services.script('/v1', { status: 429, headers: { 'retry-after': '946080000' } });
  expect(await failure(transport.get('openmeteo', OPEN))).toMatchObject({ retryAfterS: 6 * 3600 });
});

it('does not keep an answer that cannot be read, and tells the operator of it', async () => {
  const headers = { ...JSON_HEADERS, 'cache-control': 'max-age=3600' };
  services.script('/gridpoints', { headers, body: '{"properties":' }, { headers, body: '{"fine":true}' });
  const garbage = await transport.get('nws', GRID);
  expect(() => answerJson('nws', garbage)).toThrow('breaks off');
  expect(events).toEqual([{ service: 'nws', code: 'bad-answer', status: 200 }]);
  expect(answerJson('nws', await transport.get('nws', GRID))).toEqual({ fine: true });
  expect(services.requests).toHaveLength(2);
});

it('follows a redirect within the service', async () => {
  services.script('/points', { status: 301, headers: { location: `${services.base}/gridpoints/XYZ/1,1` } });
  services.script('/gridpoints', { body: '{"here":true}' });
  expect((await transport.get('nws', '/points/1.23450,2')).body).toBe('{"here":true}');
});

it('does not follow a redirect to another host', async () => {
  services.script('/points', { status: 302, headers: { location: 'http://localhost:1/elsewhere' } });
  expect(await failure(transport.get('nws', '/points/1,2'))).toMatchObject({ code: 'unavailable' });
});

it('gives up on a service that does not answer', async () => {
  await transport.close();
  transport = connect({ headersWithinMs: 50 });
  services.script('/gridpoints', { silent: true });
  expect(await failure(transport.get('nws', GRID))).toMatchObject({ code: 'unavailable' });
  expect(services.requests).toHaveLength(2);
});

it('gives up on an answer that trickles', async () => {
  await transport.close();
  transport = connect({ answerWithinMs: 150 });
  services.script('/gridpoints', { crumbs: true, body: 'x'.repeat(10_000), gzip: false });
  expect(await failure(transport.get('nws', GRID))).toMatchObject({ code: 'unavailable' });
});

it('never glues a broken answer to the rest of another one', async () => {
  services.script(
    '/gridpoints',
    { body: '{"values":[1,2,3]}', breakAfter: 9, gzip: false },
    { body: '{"values":[4,5,6]}', gzip: false },
  );
  expect(await failure(transport.get('nws', GRID))).toMatchObject({ code: 'unavailable' });
  expect(services.requests.some(({ headers }) => headers['range'] !== undefined)).toBe(false);
});

it('refuses an answer that is too long, packed or not', async () => {
  await transport.close();
  transport = connect({ maxAnswerBytes: 1000 });
  services.script('/gridpoints', { body: 'x'.repeat(1001), gzip: false });
  services.script('/v1', { body: 'x'.repeat(100_000), gzip: true });
  expect(await failure(transport.get('nws', GRID))).toMatchObject({ code: 'bad-answer' });
  expect(await failure(transport.get('openmeteo', OPEN))).toMatchObject({ code: 'bad-answer' });
});

it('fails clearly when nobody listens', async () => {
  await transport.close();
  transport = connect({ bases: { ...services.bases, metno: 'http://127.0.0.1:9' } });
  const error = await failure(transport.get('metno', MET));
  expect(error).toMatchObject({ code: 'unavailable', message: 'MET Norway did not answer.' });
  expect(error.cause).toBeInstanceOf(Error);
});

it('tells the operator of a product that the service calls beta or deprecated', async () => {
  services.script('/weatherapi', { status: 203, headers: JSON_HEADERS, body: '{}' });
  await transport.get('metno', MET);
  expect(events).toEqual([{ service: 'metno', code: 'deprecated', status: 203 }]);
});

it('keeps requests to one service apart, but not answers that it has kept', async () => {
  await transport.close();
  transport = connect({ spacingMs: { nws: 80, metno: 0, openmeteo: 0 }, clockMs: () => performance.now() });
  services.script('/gridpoints', { headers: { ...JSON_HEADERS, 'cache-control': 'max-age=60' }, body: '{}' });
  const begun = performance.now();
  await Promise.all(['1,1', '2,2', '3,3'].map((cell) => transport.get('nws', `/gridpoints/XYZ/${cell}`)));
  expect(performance.now() - begun).toBeGreaterThanOrEqual(155);
  const kept = performance.now();
  await transport.get('nws', '/gridpoints/XYZ/1,1');
  expect(performance.now() - kept).toBeLessThan(75);
});

it('names no place in its messages and events', async () => {
  services.script('/points', { status: 503 });
  const error = await failure(transport.get('nws', '/points/41.211,-96.63'));
  expect(`${error.message}${String(error.cause)}${JSON.stringify(events)}`).not.toMatch(/41\.211|96\.63/);
});

it('looks at the content type before it parses', async () => {
  services.script('/weatherapi', {
    status: 400,
    headers: { 'content-type': 'text/html' },
    body: '<html>1</html>',
    gzip: false,
  });
  services.script('/v1', { headers: { 'content-type': 'text/plain' }, body: '{"fine":true}' });
  const bad = await transport.get('metno', MET);
  expect(() => answerJson('metno', bad)).toThrow('MET Norway answered with status 400.');
  const odd = await transport.get('openmeteo', OPEN);
  expect(() => answerJson('openmeteo', odd)).toThrow('Open-Meteo did not answer with JSON.');
});

it("passes on the service's own reason for turning a question down", async () => {
  services.script('/v1', { status: 400, headers: JSON_HEADERS, body: '{"error":true,"reason":"Unknown variable"}' });
  const answer = await transport.get('openmeteo', OPEN);
  expect(() => answerJson('openmeteo', answer)).toThrow('Open-Meteo answered with status 400 (Unknown variable).');
});

it('calls JSON that breaks off damaged', async () => {
  services.script('/v1', { headers: JSON_HEADERS, body: '{"hourly":' });
  const answer = await transport.get('openmeteo', OPEN);
  expect(() => answerJson('openmeteo', answer)).toThrow('Open-Meteo sent JSON that breaks off or is damaged.');
});

it('turns a question away while too many wait for their turn, so that another service can be asked', async () => {
  await transport.close();
  transport = connect({ spacingMs: { nws: 1500, metno: 0, openmeteo: 0 }, clockMs: () => performance.now() });
  const asked = await Promise.allSettled(
    ['1,1', '2,2', '3,3', '4,4'].map((cell) => transport.get('nws', `/gridpoints/XYZ/${cell}`)),
  );
  expect(asked.map(({ status }) => status)).toEqual(['fulfilled', 'fulfilled', 'rejected', 'rejected']);
  expect(asked[3]).toMatchObject({ reason: { code: 'busy' } });
  expect((await transport.get('metno', MET)).status).toBe(200);
});
