import { describe, expect, test } from 'vitest';
import { CROP_TRAITS } from '../../../rules/crops/crop-traits-table.ts';
import { CROPS, cropById, derivation } from '../../../rules/crops/crops.ts';
import { HARDINESS_ROWS } from '../../../rules/crops/hardiness-list.ts';
import { plantSize, SIZED_ROWS } from '../../../rules/crops/plant-size-table.ts';
import { SET_ASIDE, setAsideReason } from '../../../rules/crops/set-aside-table.ts';
import { spacing, startingLt50C } from '../../../rules/crops/spacing.ts';
import { STARTING_PAIRS } from '../../../rules/crops/starting-pairs-table.ts';
import { SOURCES } from '../../../rules/sources.ts';
import { adjusted } from '../../../rules/verdict/circumstances.ts';

/** Sums of decimals. [K] */
const ROUNDING_K = 1e-9;

describe.each(CROPS.map((crop) => [crop.id, crop] as const))('%s', (id, crop) => {
  test('is marked before half are lost, and half are lost before all', () => {
    for (const state of [crop.unhardened, crop.hardened]) {
      expect(state.firstMarkC).toBeGreaterThan(state.lt50C);
      expect(state.lt50C).toBeGreaterThan(state.killC);
      expect(state.firstMarkC).toBeLessThan(2);
      expect(state.killC).toBeGreaterThan(-30);
    }
  });

  test('is never more tender hardened than unhardened', () => {
    for (const line of ['firstMarkC', 'lt50C', 'killC'] as const) {
      expect(crop.hardened[line]).toBeLessThanOrEqual(crop.unhardened[line] + ROUNDING_K);
    }
    if (!crop.hardens) expect(crop.hardened).toEqual(crop.unhardened);
  });

  test('has a spread no narrower than its kind allows', () => {
    for (const state of [crop.unhardened, crop.hardened]) {
      expect(state.sdK).toBeGreaterThanOrEqual(crop.hardens ? 1.5 : 1);
      expect(state.sdK).toBeLessThanOrEqual(3.5);
    }
  });

  test('names a source for every limit, and its derivation shows them all', () => {
    const { unhardened, hardened } = derivation(id);
    for (const state of [unhardened, hardened]) {
      expect(state.tolerance.sources.every((key) => key in SOURCES)).toBe(true);
      const spoken = new Set(state.voices.map((voice) => voice.row?.source ?? 'starting-pairs'));
      expect([...spoken].sort()).toEqual([...state.tolerance.sources].sort());
    }
  });

  test('counts no source for more than its authority', () => {
    const { hardened } = derivation(id);
    const totals = new Map<string, number>();
    for (const { row, weight } of hardened.voices) {
      if (row !== undefined) totals.set(row.source, (totals.get(row.source) ?? 0) + weight);
    }
    for (const weight of totals.values()) expect(weight).toBeLessThanOrEqual(3 + ROUNDING_K);
  });

  test('takes a bound only where it pushes colder', () => {
    const { unhardened, hardened } = derivation(id);
    for (const state of [unhardened, hardened]) {
      const values = state.voices.filter((voice) => !voice.bound).map((voice) => voice.lt50C);
      expect(state.tolerance.lt50C).toBeLessThanOrEqual(Math.max(...values) + ROUNDING_K);
      for (const bound of state.bounds) {
        if (!state.voices.includes(bound))
          expect(bound.lt50C).toBeGreaterThanOrEqual(state.tolerance.lt50C - ROUNDING_K);
      }
    }
  });
});

test('no freezing point decides on a leaf that hardens', () => {
  for (const crop of CROPS) {
    if (!crop.hardens || CROP_TRAITS[crop.id].spoiltByIce === true) continue;
    const { unhardened, hardened } = derivation(crop.id);
    const effects = [...unhardened.voices, ...hardened.voices].map((voice) => voice.row?.effect);
    expect(effects).not.toContain('freezing-point');
  }
});

test('no outside low decides on a root in the soil', () => {
  for (const crop of CROPS.filter(({ judgedBy }) => judgedBy === 'surface')) {
    const { unhardened, hardened } = derivation(crop.id);
    for (const { row } of [...unhardened.voices, ...hardened.voices]) {
      expect(row?.thermometer ?? 'organ').toBe('organ');
    }
  }
});

test('every row that is set aside exists, and each has a reason', () => {
  for (const entry of SET_ASIDE) {
    const rows = HARDINESS_ROWS.filter((row) => row.source === entry.source && row.crop === entry.crop);
    expect(rows.some((row) => setAsideReason(row) === entry.reason)).toBe(true);
  }
});

test('every crop and part that the table names is in the sources', () => {
  for (const [id, traits] of Object.entries(CROP_TRAITS)) {
    for (const [crop, part] of traits.rows) {
      expect([id, HARDINESS_ROWS.some((row) => row.crop === crop && row.part === part)]).toEqual([id, true]);
    }
  }
});

test('every starting pair is used', () => {
  const used = new Set(Object.values(CROP_TRAITS).map((traits) => traits.pair));
  expect(Object.keys(STARTING_PAIRS).filter((key) => !used.has(key as keyof typeof STARTING_PAIRS))).toEqual([]);
});

test('limits lie 3 K and 1 K apart, and closer where the starting pair is closer', () => {
  expect(spacing([-9, -14])).toEqual({ firstK: 3, killK: 1 });
  expect(spacing([-1, -3])).toEqual({ firstK: 1.5, killK: 0.5 });
  expect(startingLt50C([-1, -3])).toBe(-2.5);
  expect(startingLt50C([-9, -14])).toBe(-12.5);
});

test('a crop is found by its key and by nothing else', () => {
  expect(cropById('spinach')?.name.american).toBe('spinach');
  expect(cropById('constructor')).toBeUndefined();
});

describe('a source that means big or small plants', () => {
  test('is marked so by words that stand in its row', () => {
    for (const { source, crop, noted, size } of SIZED_ROWS) {
      const rows = HARDINESS_ROWS.filter(
        (row) => row.source === source && row.crop === crop && row.note.includes(noted),
      );
      expect([crop, rows.map(plantSize)]).toEqual([crop, [size]]);
    }
  });

  test('speaks for ordinary plants 1.5 K hardier than big ones and 1.5 K more tender than small ones', () => {
    const voices = [...derivation('lettuce').hardened.voices, ...derivation('spinach').hardened.voices];
    const sized = voices.filter(({ row }) => row !== undefined && plantSize(row) !== undefined);
    expect(sized.map(({ sizeK }) => sizeK).sort()).toEqual([-1.5, -1.5, 1.5]);
    for (const { lt50C, organC, effectK, stateK, sizeK } of sized) {
      expect(lt50C).toBeCloseTo(organC + effectK + stateK + sizeK, 9);
    }
  });

  test('gives back its own figure when the big plant is the one in the bed', () => {
    const lettuce = cropById('lettuce');
    if (lettuce === undefined) throw new Error('lettuce is a crop');
    const big = adjusted(lettuce.hardened, ['mature-head']);
    expect(big.lt50C - lettuce.hardened.lt50C).toBeCloseTo(1.5, 9);
  });
});

test('what growers say without a source counts only as a bound, and half as much as a remembered list', () => {
  const said = CROPS.flatMap(({ id }) => derivation(id).hardened.voices).filter(
    ({ row }) => row?.source === 'common-practice',
  );
  expect(said.length).toBeGreaterThan(0);
  for (const { bound, weight } of said) {
    expect(bound).toBe(true);
    expect(weight).toBeLessThanOrEqual(0.5);
  }
});
