import { afterEach, beforeEach, expect, test } from 'vitest';
import { openLog } from '../../../bot/log.ts';
import { addClub } from './club.ts';
import { type JobsWorld, jobsWorld } from './jobs-world.ts';

const ANNE = '100000000000000021';
const BEN = '100000000000000022';
const BEFORE = new Date('2026-11-01T12:00:00Z');
const at = (time: string) => new Date(`2026-12-01T${time}:00Z`);

let world: JobsWorld;
let lines: Record<string, unknown>[];
beforeEach(async () => {
  world = await jobsWorld(at('12:00'));
  world.forecasts.meanC = -6;
  lines = [];
});
afterEach(() => world.close());

function toldRound(lookBackH = 0) {
  const write = (line: string) => lines.push(JSON.parse(line) as Record<string, unknown>);
  return world.round({ lookBackH }, { log: openLog('info', { write }) });
}

const done = () => lines.filter(({ msg }) => msg === 'a nightly run is done');

test('a run that posts is told of in one line, the fetches before it included', async () => {
  await addClub(world.store, { id: 'one' }, [{ id: ANNE }], BEFORE);
  await addClub(world.store, { id: 'two' }, [{ id: BEN }], BEFORE);
  world.poster.fail('two', 'missing-permission', { times: 1 });
  await world.runUntil(at('16:45'), toldRound());
  // Who set the second channel up is told by direct message why it is paused.
  expect(done()).toMatchObject([{ level: 30, channels: 2, sent: 2, failed: 1, late: 0, cells: 1, seconds: 0 }]);
});

test('what is caught up after a stand-still counts as late', async () => {
  await addClub(world.store, { id: 'one' }, [{ id: ANNE }], BEFORE);
  world.now = at('17:30');
  await world.runUntil(at('17:40'), toldRound(12));
  expect(done()).toMatchObject([{ channels: 1, sent: 1, failed: 0, late: 1, cells: 1 }]);
});

test('nothing is told where nothing was owed', async () => {
  await addClub(world.store, { id: 'one' }, [{ id: ANNE }], BEFORE);
  await world.runUntil(at('16:30'), toldRound());
  expect(world.forecasts.asked).not.toEqual([]);
  expect(done()).toEqual([]);
});

test('no line names a channel, a member or a place', async () => {
  await addClub(world.store, { id: 'one' }, [{ id: ANNE }], BEFORE);
  await world.runUntil(at('16:45'), toldRound());
  for (const line of done()) {
    expect(Object.keys(line).toSorted()).toEqual(
      ['cells', 'channels', 'failed', 'late', 'level', 'msg', 'seconds', 'sent', 'time'].toSorted(),
    );
  }
});
