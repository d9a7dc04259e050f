import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { MORNING_PLANNER } from '../../../bot/jobs/opening-planner.ts';
import { addClub } from './club.ts';
import { type JobsWorld, jobsWorld } from './jobs-world.ts';

const CLUB = 'club-1';
const ANNE = '100000000000000021';
const BEN = '100000000000000022';
const BEFORE = new Date('2026-09-01T12:00:00Z');
/** At the gardens: midnight. The sun rises there at 7:23 am and sets at 6:17 pm. */
const MIDNIGHT = new Date('2026-10-15T04:00:00Z');
const at = (time: string) => new Date(`2026-10-15T${time}:00Z`);
const opening = { opening: MORNING_PLANNER };

let world: JobsWorld;
beforeEach(async () => {
  world = await jobsWorld(MIDNIGHT);
  world.forecasts.meanC = 8;
});
afterEach(() => world.close());

const morningClub = () => addClub(world.store, { id: CLUB, morningPost: true }, [{ id: ANNE }, { id: BEN }], BEFORE);

describe('the morning post', () => {
  test('comes once, at sunrise, and tells for all gardens together what to open', async () => {
    await morningClub();
    const round = world.round({}, opening);
    await world.runUntil(at('11:10'), round);
    expect(world.poster.to(CLUB)).toEqual([]);
    await world.runUntil(at('15:00'), round);
    const [post, ...others] = world.poster.to(CLUB);
    expect(others).toEqual([]);
    expect(post?.text).toMatch(/^Open \d+ beds today, the first (now|at \d+:\d\d am)\./);
    expect(post?.text).toMatch(/Spinach under cold frame over medium row cover, 2 beds: /);
    expect(post?.text).not.toMatch(/Bed \d|Home/);
    const posted = world.postedAt.get(post?.messageId ?? '')?.toISOString();
    expect(posted?.slice(0, 16)).toMatch(/^2026-10-15T11:[23]/);
  });

  test('is left out where nothing is to be opened, and where nobody wants it', async () => {
    world.forecasts.meanC = -2;
    world.forecasts.cloudFraction = 1;
    await morningClub();
    await world.runUntil(at('15:00'), world.round({}, opening));
    expect(world.poster.to(CLUB)).toEqual([]);
  });

  test('is not sent to a channel that did not ask for it', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    await world.runUntil(at('15:00'), world.round({}, opening));
    expect(world.poster.to(CLUB)).toEqual([]);
  });

  test('waits an hour for a forecast, and then says that there is none', async () => {
    await morningClub();
    world.forecasts.silent = true;
    const round = world.round({}, opening);
    await world.runUntil(at('12:15'), round);
    expect(world.poster.to(CLUB)).toEqual([]);
    await world.runUntil(at('13:30'), round);
    const [post, ...others] = world.poster.to(CLUB);
    expect(others).toEqual([]);
    expect(post?.text).toMatch(/No forecast can be had this morning/);
    expect(post?.text).toMatch(/open above 75 °F/);
  });

  test('comes after all when a service answers within the hour', async () => {
    await morningClub();
    world.forecasts.silent = true;
    const round = world.round({}, opening);
    await world.runUntil(at('11:50'), round);
    world.forecasts.silent = false;
    await world.runUntil(at('13:00'), round);
    expect(world.poster.to(CLUB).map(({ text }) => text.slice(0, 4))).toEqual(['Open']);
  });
});
