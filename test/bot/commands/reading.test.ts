import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { COMMANDS } from '../../../bot/commands/commands.ts';
import { answer } from '../../../bot/commands/dispatch.ts';
import type { Reply } from '../../../bot/talk/reply.ts';
import type { UploadedFile } from '../../../bot/talk/request.ts';
import { FIXTURE_NOW } from '../../fakes/forecast-services.ts';
import { CHANNEL, Club, HOME, LAST_NIGHT, wordsOf } from './club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
  await club.say(HOME);
  await club.say('bed add name:"Long tunnel" crop:kale covers:"low tunnel"');
  await club.toldLastNight();
});
afterEach(() => club.close());

const readings = async () => {
  const [bed] = await club.store.beds.list('anna');
  return club.store.readings.ofBed('anna', bed?.id ?? '');
};

async function upload(text: string, options: Record<string, string> = {}): Promise<Reply> {
  const file: UploadedFile = {
    name: 'logger.csv',
    sizeBytes: text.length,
    contentType: 'text/csv',
    text: async () => text,
  };
  return answer(
    {
      ...{ memberId: 'anna', place: CHANNEL, command: 'reading', options: { ...options, file } },
      ...{ locale: 'en-US', mayManageChannel: false, now: FIXTURE_NOW },
    },
    club.services,
    COMMANDS,
  );
}

describe('the lows of one night', () => {
  test('are kept for last night, in the reader’s units, and held against what was told', async () => {
    const reply = await club.say('reading inside:21F outside:14F');
    expect(reply.private).toBe(true);
    expect(reply.headline).toBe(
      `Noted for Long tunnel, night of ${LAST_NIGHT}: 21 °F under the cover and 14 °F outside.`,
    );
    expect(wordsOf(reply)).toContain('inside the range');
    const [kept] = await readings();
    expect(kept).toMatchObject({ night: LAST_NIGHT, origin: 'typed', doubt: undefined, covers: ['low-tunnel'] });
    expect(kept?.underCoverLowC).toBeCloseTo(-6.11, 2);
  });

  test('say what the bed has learned', async () => {
    await club.say('reading inside:28F outside:15.8F');
    const reply = await club.say('reading inside:28F outside:15.8F');
    expect(wordsOf(reply)).toMatch(/Long tunnel: your low tunnel has run \d+ °F warmer than the book, from 1 night\./);
  });

  test('warmer than any bed would be are kept apart until the grower says so', async () => {
    const reply = await club.say('reading inside:75F');
    expect(reply.headline).toContain('warmer under the cover than I can explain');
    expect((await readings())[0]?.doubt).toBe('too-warm');
    const [right, out] = reply.buttons ?? [];
    expect((await club.press(right?.id ?? '')).headline).toContain('1 reading kept');
    expect((await readings())[0]?.doubt).toBeUndefined();
    expect((await club.press(out?.id ?? '')).headline).toContain('no reading in doubt');
  });

  test('in doubt stay so when the other low of their night comes later', async () => {
    await club.say('reading inside:75F');
    expect((await club.say('reading outside:15F')).headline).toContain('warmer under the cover than I can explain');
    const [right] = (await club.say('reading outside:15F')).buttons ?? [];
    await club.press(right?.id ?? '');
    expect((await club.say('reading outside:15F')).headline).toContain('Noted');
  });

  test('in doubt can be taken out, and only by their own member', async () => {
    const [, out] = (await club.say('reading inside:75F')).buttons ?? [];
    expect((await club.press(out?.id ?? '', { member: 'ben' })).refused).toBe(true);
    expect(await readings()).toHaveLength(1);
    expect((await club.press(out?.id ?? '')).headline).toContain('1 reading taken out');
    expect(await readings()).toHaveLength(0);
  });

  test('of a bed marked as covered are asked about: more than usual may have lain there', async () => {
    const [bed] = await club.store.beds.list('anna');
    await club.store.covered.mark('anna', [bed?.id ?? ''], LAST_NIGHT, FIXTURE_NOW);
    expect((await club.say('reading inside:26F')).headline).toContain('Did anything more than usual');
    expect((await club.say('reading outside:15F')).headline).toContain('Did anything more than usual');
    expect((await club.say('reading inside:26F covers:"low tunnel"')).headline).toContain('Noted');
  });

  test('under other covers than were told teach nothing of these', async () => {
    await club.say('reading inside:26F covers:"blanket over low tunnel"');
    expect((await readings())[0]?.covers).toEqual(['blanket', 'low-tunnel']);
    expect(wordsOf(await club.say('record'))).not.toContain('1 of 1');
  });

  test('of a night that was not told are kept, and said to teach nothing', async () => {
    const reply = await club.say('reading inside:21F night:2026-01-10');
    expect(wordsOf(reply)).toContain('the bed learns nothing from it');
    expect((await readings()).map(({ night }) => night)).toEqual(['2026-01-10']);
  });

  test.each([
    ['reading inside:21F night:2026-01-20', 'not over yet'],
    ['reading inside:21F night:soon', 'I cannot read "soon" as a night'],
    ['reading inside:warm', 'I cannot read "warm" as a temperature'],
    ['reading inside:21F bed:Shed', 'You have no bed called "Shed"'],
  ])('%s is refused with one sentence', async (line, words) => {
    const reply = await club.say(line);
    expect(reply.refused).toBe(true);
    expect(reply.headline).toContain(words);
  });

  test('come by a form where none are given', async () => {
    const { form, sections } = await club.say('reading');
    expect(form?.id).toBe('reading form');
    expect(form?.fields.map(({ id }) => id)).toEqual(['inside', 'outside', 'night']);
    expect(sections[0]?.lines[0]).toContain('/reading inside:');
    expect((await club.press('reading-form')).form?.id).toBe('reading form');
  });

  test('are asked for by bed where there are several', async () => {
    await club.say('bed add name:Frame crop:spinach covers:"cold frame"');
    expect((await club.say('reading')).form?.fields.map(({ id }) => id)).toContain('bed');
    expect((await club.say('reading inside:21F')).headline).toContain('Say which bed');
  });
});

describe('a logger’s file', () => {
  const rows = (lowC: number) => {
    const noon = Date.UTC(2026, 0, 19, 18);
    return Array.from({ length: 48 }, (_, step) => {
      const hour = step / 2;
      const at = new Date(noon + step * 1_800_000);
      return `${at.toISOString()},${(lowC + Math.abs(hour - 18) * 0.4).toFixed(1)}`;
    });
  };

  test('is kept night by night, and what was understood is said', async () => {
    const reply = await upload(['time,inside °C', ...rows(-5)].join('\n'));
    expect(reply.headline).toBe('Long tunnel: 1 night noted from 48 rows.');
    expect(wordsOf(reply)).toContain('Temperatures under the cover in °C, times by the zone written with them.');
    expect((await readings())[0]).toMatchObject({ night: LAST_NIGHT, underCoverLowC: -5, origin: 'logger' });
  });

  test('without units is asked for them', async () => {
    const reply = await upload(rows(-5).join('\n'));
    expect([reply.refused, reply.headline]).toEqual([
      true,
      'The file does not say its units: give the command again with units:°F or units:°C.',
    ]);
    expect((await upload(rows(-5).join('\n'), { units: '°C' })).headline).toContain('1 night noted');
  });

  test('with bad rows tells them by line, and keeps the good ones', async () => {
    const bad = rows(-5).toSpliced(2, 0, 'never,4', '2026-01-19T19:10:00Z,900');
    expect(wordsOf(await upload(['time,inside °C', ...bad].join('\n')))).toContain(
      'Not read: line 4 (no time that I can read) and line 5 (no possible temperature).',
    );
  });

  test('that cannot be so is kept apart, all of it settled by one button', async () => {
    const reply = await upload(['time,inside °C', ...rows(30)].join('\n'));
    expect(reply.headline).toBe('Long tunnel: 0 nights noted from 48 rows.');
    expect(wordsOf(reply)).toContain(`Kept apart until you say: ${LAST_NIGHT}.`);
    expect((await club.press(reply.buttons?.[1]?.id ?? '')).headline).toContain('taken out');
    expect(await readings()).toEqual([]);
  });
});

test('a member’s readings are seen by nobody else', async () => {
  await club.say('reading inside:21F');
  expect((await club.say('reading inside:21F bed:"Long tunnel"', { member: 'ben' })).headline).toContain('no bed');
  expect(wordsOf(await club.say('record', { member: 'ben' }))).not.toContain('Long tunnel');
});
