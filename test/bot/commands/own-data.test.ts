import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { Club, DIRECT, HOME, posterWith } from './club.ts';

const ANNA = '4711471147114711';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
  club.with({ poster: posterWith([]) });
});
afterEach(() => club.close());

const anna = { member: ANNA };

/** Uses every command that keeps something. */
async function live(): Promise<void> {
  await club.say(HOME, anna);
  await club.say('bed add name:Frame crop:spinach covers:"cold frame"', anna);
  await club.say('shed put cover:blanket', anna);
  await club.say('units use:metric', anna);
  await club.say('warnings start', { ...anna, manager: true });
  await club.say('warnings join direct:yes', anna);
  await club.say('warnings start', { ...anna, place: DIRECT });
  await club.press('covered:2026-01-20', anna);
}

/** Everything that lies in the files of the database. */
async function onDisk(): Promise<string> {
  const files = (await readdir(club.folder)).filter((file) => file.startsWith('club.db'));
  const texts = await Promise.all(files.map((file) => readFile(join(club.folder, file), 'latin1')));
  return texts.join('');
}

describe('mydata', () => {
  test('export gives everything as JSON, to the member alone', async () => {
    await live();
    const reply = await club.say('mydata export', anna);
    expect(reply.private).toBe(true);
    const [file] = reply.files ?? [];
    expect(file?.name).toBe('eiderdown-mydata.json');
    const kept = JSON.parse(Buffer.from(file?.bytes ?? []).toString());
    expect(kept.member).toMatchObject({ id: ANNA, units: 'metric' });
    expect(kept.sites).toMatchObject([{ name: 'Home', latitudeDeg: 41.210_987_1 }]);
    expect(kept.beds).toMatchObject([{ name: 'Frame', plantings: [{ crop: 'spinach' }] }]);
    expect(kept.spareCovers).toEqual([{ cover: 'blanket', count: 1 }]);
    expect(kept.memberships).toHaveLength(2);
    expect(kept.covered).toHaveLength(1);
  });

  test('erase asks first, and leaves no trace in the files once the button is pressed', async () => {
    await live();
    const asked = await club.say('mydata erase', anna);
    expect(asked.headline).toContain('Erase your sites, beds, shed and readings');
    expect(await onDisk()).toContain(ANNA);
    const [button] = asked.buttons ?? [];
    const done = await club.press(button?.id ?? '', anna);
    expect([done.headline, done.private]).toEqual(['Erased: I keep nothing about you any more.', true]);
    const left = await onDisk();
    expect(left).toContain('spare_cover');
    for (const trace of [ANNA, 'Home', 'Frame', 'spinach']) expect(left).not.toContain(trace);
    expect(club.logged.join('')).not.toContain(ANNA);
  });

  test('the button erases only what the presser has', async () => {
    await live();
    const [button] = (await club.say('mydata erase', anna)).buttons ?? [];
    expect((await club.press(button?.id ?? '', { member: 'ben' })).headline).toBe('I keep nothing about you.');
    expect(await club.store.sites.list(ANNA)).toHaveLength(1);
  });

  test('erase sure:yes does not ask', async () => {
    await live();
    expect((await club.say('mydata erase sure:yes', anna)).headline).toContain('Erased');
    expect(await club.store.exportMember(ANNA)).toBeUndefined();
  });

  test('the club’s warnings go on for the others', async () => {
    await live();
    await club.say('mydata erase sure:yes', anna);
    expect((await club.say('warnings show', { member: 'ben' })).headline).toBe('Warnings come in this channel.');
  });

  test.each(['mydata export', 'mydata erase', 'mydata erase sure:yes'])(
    '%s with nothing kept says so',
    async (line) => {
      const reply = await club.say(line, anna);
      expect([reply.refused, reply.private, reply.headline]).toEqual([true, true, 'I keep nothing about you.']);
    },
  );

  test('a wrong answer to sure is refused', async () => {
    expect((await club.say('mydata erase sure:perhaps', anna)).headline).toBe('Answer sure with yes or no.');
  });
});

describe('units', () => {
  test('without a choice they are those of the language', async () => {
    expect((await club.say('units')).headline).toBe(
      'I write to you like this: 14 °F, wind 4 mph (the usual ones of your language).',
    );
    expect((await club.say('units', { locale: 'de' })).headline).toContain('−10 °C, wind 2 m/s');
  });

  test('a choice holds in every answer until it is taken back', async () => {
    await club.say('units use:metric');
    expect((await club.say('check crop:kale low:14F')).headline).toContain('at −10 °C');
    expect((await club.say('ask will kale survive 14 °F?')).headline).toContain('at −10 °C');
    await club.say('units use:usual');
    expect((await club.say('check crop:kale low:14F')).headline).toContain('at 14 °F');
  });

  test('anything else is refused with what there is', async () => {
    const reply = await club.say('units use:kelvin');
    expect([reply.refused, reply.headline]).toEqual([true, 'use is one of metric, us or usual.']);
  });
});
