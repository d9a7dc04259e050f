import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bedFacts, homeFacts, minute, type World, withBed } from './world.ts';

const RUNS = { numRuns: 60 };

/** Nearer to zero than this, the SQLite package for Node 20 binds a zero; no quantity kept here is that small. */
const SMALLEST_KEPT = 1e-15;

const anyNumber = fc
  .double({ noNaN: true, noDefaultInfinity: true })
  .filter((value) => Object.is(value, 0) || Math.abs(value) >= SMALLEST_KEPT);

const anyText = fc
  .string({ unit: 'binary', minLength: 1, maxLength: 60 })
  .filter((text) => !text.includes('\0') && !/\p{Surrogate}/u.test(text));

export function valuesSpecification(world: World): void {
  it('gives back any text to the letter', async () => {
    const { store } = world;
    const { bedId } = await withBed(store, 'discord:1');
    await fc.assert(
      fc.asyncProperty(anyText, fc.array(anyText, { maxLength: 5 }), async (note, covers) => {
        await store.beds.change('discord:1', bedId, { hardeningNote: note, soil: note, covers }, minute(1));
        expect(await store.beds.find('discord:1', bedId)).toMatchObject({ hardeningNote: note, soil: note, covers });
      }),
      RUNS,
    );
  });

  it.each([
    ["Robert'); drop table bed;--"],
    ['Ä beds\u0301 ß ﬁ İ'],
    ['👩🏽‍🌾 北 شتاء'],
    ['%_\\"`$1?:name'],
    ['\u202Eright to left\u200B'],
  ])('gives back the name %j to the letter', async (name) => {
    const { store } = world;
    const site = await store.sites.add('discord:1', { ...homeFacts, name }, minute(0));
    expect(await store.sites.find('discord:1', site.id)).toMatchObject({ name });
    await store.beds.add('discord:1', bedFacts(site.id, { name }), minute(0));
    expect((await store.beds.list('discord:1'))[0]).toMatchObject({ name });
  });

  it('gives back any finite number to the last bit', async () => {
    const { weather } = world.store;
    await fc.assert(
      fc.asyncProperty(anyNumber, anyNumber, async (airC, dewPointC) => {
        const at = minute(0);
        const rest = { cloudFraction: undefined, wind10MPerS: 0, globalWPerM2: undefined };
        await weather.keepHours('cell', [{ at, airC, dewPointC, ...rest }], at);
        expect(await weather.hours('cell', at, minute(1))).toEqual([{ at, airC, dewPointC, ...rest }]);
      }),
      RUNS,
    );
  });

  it('gives back any instant to the millisecond', async () => {
    const { members } = world.store;
    await fc.assert(
      fc.asyncProperty(fc.date({ noInvalidDate: true }), fc.uuid(), async (since, id) => {
        await members.change(id, {}, since);
        expect((await members.find(id))?.since).toEqual(since);
      }),
      RUNS,
    );
  });

  it.each([
    ['a NUL in a text', { hardeningNote: 'a\0b' }],
    ['half a character', { hardeningNote: 'a\uD83Cb' }],
    ['NaN', { frame: { walls: 'wood', depthM: Number.NaN, lengthM: 1, backM: 1, frontM: 1, facingDeg: 1 } }],
    ['infinity', { frame: { walls: 'wood', depthM: 1, lengthM: Infinity, backM: 1, frontM: 1, facingDeg: 1 } }],
    ['an empty name', { name: '' }],
    ['a name of 101 characters', { name: 'ä'.repeat(101) }],
  ] as const)('refuses %s and keeps what was there', async (_what, change) => {
    const { store } = world;
    const { bedId } = await withBed(store, 'discord:1');
    const before = await store.beds.find('discord:1', bedId);
    await expect(store.beds.change('discord:1', bedId, change, minute(1))).rejects.toMatchObject({ code: 'bad-value' });
    expect(await store.beds.find('discord:1', bedId)).toEqual(before);
  });

  it('takes a name of 100 characters outside the Latin alphabet', async () => {
    const { store } = world;
    const name = '🥬'.repeat(100);
    await expect(store.sites.add('discord:1', { ...homeFacts, name }, minute(0))).resolves.toMatchObject({ name });
  });

  it('refuses an instant that is none', async () => {
    await expect(world.store.members.change('discord:1', {}, new Date(Number.NaN))).rejects.toMatchObject({
      code: 'bad-value',
    });
  });
}
