import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { Club, HOME, LAST_NIGHT, wordsOf } from './club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
  await club.say(HOME);
  await club.say('bed add name:Tunnel crop:"lettuce, tatsoi" stage:grown hardened:yes covers:"low tunnel"');
});
afterEach(() => club.close());

const outcomes = (crop: string) => club.store.outcomes.ofMember('anna', crop);

describe('after a risky night', () => {
  beforeEach(() => club.toldLastNight('anna', { leafLowC: -8 }));

  test('each crop at risk is asked about once, one after the other', async () => {
    const first = await club.press('how-it-went');
    expect(first.headline).toMatch(/^Tunnel, .+: how did it come through/);
    expect(first.buttons?.map(({ label }) => label)).toEqual(['No mark', 'Leaf burn', 'Lost', 'Not looked']);
    const second = await club.press(first.buttons?.[1]?.id ?? '');
    expect(second.headline).toMatch(/^Noted: .+ in Tunnel, leaf burn\.$/);
    const last = await club.press(second.buttons?.[3]?.id ?? '');
    expect(last.headline).toBe('That was all. Thank you.');
  });

  test('an answer is kept with the leaf low of that night and the hardness of the crop', async () => {
    await club.say('outcome bed:Tunnel crop:tatsoi saw:"no mark"');
    expect(await outcomes('tatsoi')).toMatchObject([
      { night: LAST_NIGHT, outcome: 'no-mark', leafLowC: -8, hardeningFraction: 1 },
    ]);
  });

  test('a reading of that night corrects the leaf low', async () => {
    await club.say('reading bed:Tunnel inside:-4C');
    await club.say('outcome bed:Tunnel crop:tatsoi saw:no-mark');
    // Told −6 °C at the thermometer and −8 at the leaf; read −4.
    expect((await outcomes('tatsoi'))[0]?.leafLowC).toBeCloseTo(-6, 6);
  });

  test('a crop that keeps coming through is told to be hardier here', async () => {
    const reply = await club.say('outcome bed:Tunnel crop:lettuce saw:no-mark');
    expect(wordsOf(reply)).toMatch(/Lettuce.* has proved \d+ °F hardier here than the table says, from 1 night\./i);
  });

  test('another member cannot answer for it', async () => {
    const [button] = (await club.press('how-it-went')).buttons ?? [];
    expect((await club.press(button?.id ?? '', { member: 'ben' })).refused).toBe(true);
    expect(await outcomes('lettuce')).toEqual([]);
  });

  test.each(['outcome:x:2026-01-19:kale:no-mark', 'outcome:', 'outcome:a:b:c:d'])(
    '%s is refused in a sentence',
    async (id) => {
      const reply = await club.press(id);
      expect([reply.refused, reply.headline.length > 10]).toEqual([true, true]);
    },
  );
});

test('after a mild night nothing is asked', async () => {
  await club.toldLastNight('anna', { leafLowC: 5, verdict: 'holds' });
  expect((await club.press('how-it-went')).headline).toBe('None of your crops was at risk last night.');
});

test('of a night that was not told, or a crop that does not grow there, nothing is kept', async () => {
  expect((await club.say('outcome bed:Tunnel crop:tatsoi saw:lost')).headline).toContain(
    'I had told nothing of Tunnel',
  );
  expect((await club.say('outcome bed:Tunnel crop:kale saw:lost')).headline).toContain('does not grow in Tunnel');
  expect((await club.say('outcome bed:Tunnel crop:parsnip saw:lost')).headline).toContain('leaves only');
});
