import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { nightLater } from '../../../bot/learning/night-days.ts';
import { FIXTURE_NOW } from '../../fakes/forecast-services.ts';
import { Club, HOME, LAST_NIGHT } from '../commands/club.ts';

const TONIGHT = nightLater(LAST_NIGHT, 1);

let club: Club;
beforeEach(async () => {
  club = await Club.open();
  await club.say(HOME);
  await club.say('bed add name:Tunnel crop:kale covers:"low tunnel"');
  await club.say('bed add name:Row crop:leek');
});
afterEach(() => club.close());

async function told(name: string) {
  const beds = await club.store.beds.list('anna');
  const id = beds.find((bed) => bed.name === name)?.id ?? '';
  const found = (await club.store.predictions.latest([id], TONIGHT)).get(id);
  if (found === undefined) throw new Error('nothing was kept');
  return found;
}

describe('what is told of a night', () => {
  test('is kept for each bed under its covers, with service and lead time', async () => {
    await club.say('tonight');
    expect((await told('Tunnel')).covers).toEqual(['low-tunnel']);
    expect((await told('Row')).covers).toEqual([]);
    const { service, leadH, issuedAt, outsideSpreadK, underCoverSpreadK } = await told('Tunnel');
    expect(service).toBe('nws');
    expect(issuedAt).toEqual(FIXTURE_NOW);
    expect(leadH).toBeGreaterThan(6);
    expect(leadH).toBeLessThan(30);
    expect(outsideSpreadK).toBeGreaterThan(1);
    expect(underCoverSpreadK).toBeGreaterThan(1);
  });

  test('is what the book says before any reading', async () => {
    await club.say('tonight');
    const { book, outsideLowC, outsideSpreadK, underCoverLowC, underCoverSpreadK } = await told('Tunnel');
    expect({ outsideLowC, outsideSpreadK, underCoverLowC, underCoverSpreadK }).toEqual(book);
  });

  test('keeps what the book says beside what was learned, so that nothing is learned twice', async () => {
    await club.say('tonight');
    const { book } = await told('Tunnel');
    await club.toldLastNight();
    await club.say('reading bed:Tunnel inside:28F outside:12F');
    await club.say('tonight', { now: new Date(FIXTURE_NOW.getTime() + 600_000) });
    const after = await told('Tunnel');
    expect(after.book).toEqual(book);
    expect(after.underCoverLowC).not.toBeCloseTo(book.underCoverLowC, 1);
  });
});
