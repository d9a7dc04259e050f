import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { CropId } from '../../../rules/crops/crop-names-table.ts';
import { CROP_TRAITS } from '../../../rules/crops/crop-traits-table.ts';
import { CROPS, cropById, knownOfKind } from '../../../rules/crops/crops.ts';
import { derivation } from '../../../rules/crops/derivation.ts';
import { HARDINESS_ROWS } from '../../../rules/crops/hardiness-list.ts';
import { fitLimits } from '../../../rules/crops/limit-fit.ts';
import { limitsOf, toldWithout, wholeFit } from '../../../rules/crops/limits.ts';
import { LIMITS } from '../../../rules/crops/limits-table.ts';
import { OUTCOME_ROWS } from '../../../rules/crops/outcome-list.ts';
import { plantSize, SIZED_ROWS } from '../../../rules/crops/plant-size-table.ts';
import { SET_ASIDE, setAsideReason } from '../../../rules/crops/set-aside-table.ts';
import { spacing, startingLt50C } from '../../../rules/crops/spacing.ts';
import { STARTING_PAIRS } from '../../../rules/crops/starting-pairs-table.ts';
import type { Statement } from '../../../rules/crops/statement.ts';
import { subjectsOf } from '../../../rules/crops/subjects.ts';
import { adjusted } from '../../../rules/verdict/circumstances.ts';

/** The table is rounded to hundredths. [K] */
const ROUNDING_K = 0.011;

test('the table is what the rows come to today', () => {
  const { fit, told } = wholeFit();
  expect(Object.keys(LIMITS)).toEqual(CROPS.map(({ id }) => id));
  for (const { subject } of told) {
    const row = LIMITS[subject.cropId];
    const kept = subject.part === 'eaten' ? row : row?.other;
    const { unhardened, hardened } = limitsOf(fit, subject);
    const found = { unhardened, hardened };
    for (const state of ['unhardened', 'hardened'] as const) {
      const line = kept?.[state] ?? kept?.unhardened ?? [];
      const { firstMarkC, lt50C, killC, sdK } = found[state];
      for (const [index, valueC] of [firstMarkC, lt50C, killC, sdK].entries()) {
        expect([subject.cropId, state, Math.abs((line[index] ?? Number.NaN) - valueC) < ROUNDING_K]).toEqual([
          subject.cropId,
          state,
          true,
        ]);
      }
    }
  }
});

describe.each(CROPS.map((crop) => [crop.id, crop] as const))('%s', (_id, crop) => {
  const organs = [crop, ...(crop.other === undefined ? [] : [crop.other])];

  test('is marked before half are lost, and half are lost before all', () => {
    for (const { firstMarkC, lt50C, killC } of organs.flatMap((organ) => [organ.unhardened, organ.hardened])) {
      expect(firstMarkC).toBeGreaterThan(lt50C);
      expect(lt50C).toBeGreaterThan(killC);
      expect(firstMarkC).toBeLessThan(0.6);
      expect(killC).toBeGreaterThan(-30);
    }
  });

  test('is never more tender hardened than unhardened', () => {
    for (const { unhardened, hardened, hardens } of organs) {
      for (const line of ['firstMarkC', 'lt50C', 'killC'] as const) {
        expect(hardened[line]).toBeLessThanOrEqual(unhardened[line]);
      }
      if (!hardens) expect(hardened).toEqual(unhardened);
    }
  });

  test('has a spread no narrower than its kind allows', () => {
    for (const { sdK } of organs.flatMap((organ) => [organ.unhardened, organ.hardened])) {
      expect(sdK).toBeGreaterThanOrEqual(1);
      expect(sdK).toBeLessThanOrEqual(3.5);
    }
  });
});

describe('a statement', () => {
  test('moves its limit towards what it says, and without it the limit lies about so much the other way', () => {
    const { fit, told } = wholeFit();
    const [subject] = subjectsOf('leek');
    if (subject === undefined) throw new Error('leek is a crop');
    const before = fit.limit(subject, 'mark', 1).meanC;
    const own = told.find((one) => one.subject.cropId === 'leek')?.statements ?? [];
    const strongest = own.toSorted(
      (a, b) => Math.abs(fit.movedK(b, subject, 'mark', 1)) - Math.abs(fit.movedK(a, subject, 'mark', 1)),
    )[0];
    if (strongest === undefined) throw new Error('leek has statements');
    const movedK = fit.movedK(strongest, subject, 'mark', 1);
    expect(Math.sign(movedK)).toBe(strongest.limit === 'colder' ? -1 : 1);
    const without = fitLimits(
      told.map((one) => ({ ...one, statements: one.statements.filter((statement) => statement !== strongest) })),
    ).limit(subject, 'mark', 1).meanC;
    expect((before - without) / movedK).toBeGreaterThan(0.5);
    expect((before - without) / movedK).toBeLessThan(2);
  });

  test('of no harm never makes a crop more tender, of harm never hardier', () => {
    const heard = (['kale', 'cabbage', 'lettuce', 'carrot', 'tomato'] as const)
      .flatMap((cropId) => derivation(cropId))
      .flatMap((organ) => organ.heard);
    const moved = (side: string) =>
      heard.filter(({ statement }) => statement.limit === side).map((one) => one.movedMarkK);
    expect(Math.max(...moved('colder'))).toBeLessThanOrEqual(1e-9);
    expect(Math.min(...moved('warmer'))).toBeGreaterThanOrEqual(-1e-9);
  });

  test('that a crop came through much colder than thought makes it hardier', () => {
    const { told } = wholeFit();
    const [subject] = subjectsOf('chard');
    if (subject === undefined) throw new Error('chard is a crop');
    const row = OUTCOME_ROWS[0];
    if (row === undefined) throw new Error('there are outcomes');
    const told40: Statement = {
      about: 'mark',
      limit: 'colder',
      hardeningIndex: 1,
      organC: -12,
      sdK: 1,
      softFactor: 1,
      source: 'seed-house-michigan',
      row,
    };
    const more = told.map((one) =>
      JSON.stringify(one.subject.rows) === JSON.stringify(subject.rows)
        ? { ...one, statements: [...one.statements, told40] }
        : one,
    );
    const before = wholeFit().fit.limit(subject, 'mark', 1).meanC;
    expect(fitLimits(more).limit(subject, 'mark', 1).meanC).toBeLessThan(before - 0.1);
  });
});

test('no source moves the hardened first mark of any crop by more than its spread', () => {
  const { told, fit } = wholeFit();
  const without = fitLimits(toldWithout(told, 'winterkill-list-2020'));
  for (const { subject } of told) {
    const shiftK = fit.limit(subject, 'mark', 1).meanC - without.limit(subject, 'mark', 1).meanC;
    expect(Math.abs(shiftK)).toBeLessThan(3.5);
  }
});

/** Said of the crop itself, not of the crop at large of which it is one kind. */
function isOwn(cropId: CropId, { row }: Statement): boolean {
  return CROP_TRAITS[cropId].rows.some(([crop, part]) => crop === row.crop && part === row.part);
}

test('a crop that no source speaks of says so, and names a crop of its kind that some do', () => {
  const unknown = CROPS.filter(({ isKnown }) => !isKnown);
  expect(unknown.length).toBeGreaterThan(15);
  for (const { id } of unknown) {
    expect(derivation(id)[0]?.heard.filter(({ statement }) => isOwn(id, statement))).toEqual([]);
    expect(knownOfKind(id)?.isKnown ?? true).toBe(true);
  }
  expect(cropById('shungiku')?.isKnown).toBe(false);
  expect(cropById('kale')?.isKnown).toBe(true);
});

test('what sources say of whole plants counts for both parts of a crop, of harm for the tender one above all', () => {
  const [root, tops] = derivation('carrot');
  const from = (organ: typeof root) => organ?.heard.filter(({ statement }) => 'seen' in statement.row) ?? [];
  expect(from(root).length).toBeGreaterThan(0);
  expect(from(tops).length).toBeGreaterThan(0);
  const alive = (organ: typeof root) => from(organ).filter(({ statement }) => statement.about === 'loss');
  expect(alive(root).length).toBeGreaterThan(0);
  expect(alive(tops)).toEqual([]);
});

test('every row that is set aside exists, and each has a reason', () => {
  for (const entry of SET_ASIDE) {
    const rows = HARDINESS_ROWS.filter((row) => row.source === entry.source && row.crop === entry.crop);
    expect(rows.some((row) => setAsideReason(row) === entry.reason)).toBe(true);
  }
});

test('every crop and part that the table names is in the sources', () => {
  const named = [...HARDINESS_ROWS, ...OUTCOME_ROWS].map(({ crop, part }) => `${crop}, ${part}`);
  for (const { rows, other, alike = [] } of Object.values(CROP_TRAITS)) {
    for (const [crop, part] of [...rows, ...(other?.rows ?? []), ...alike]) {
      expect(named.includes(`${crop}, ${part}`) || named.includes(`${crop}, plant`) ? '' : `${crop}, ${part}`).toBe('');
    }
  }
});

test('every outcome speaks of some crop of the table', () => {
  const heard = new Set(wholeFit().told.flatMap(({ statements }) => statements.map(({ row }) => row)));
  expect(OUTCOME_ROWS.filter((row) => !heard.has(row)).map(({ id }) => id)).toEqual([]);
});

test('every starting pair is used', () => {
  const used = new Set(Object.values(CROP_TRAITS).flatMap(({ pair, other }) => [pair, other?.pair]));
  expect(Object.keys(STARTING_PAIRS).filter((key) => !used.has(key as keyof typeof STARTING_PAIRS))).toEqual([]);
});

test('limits of a starting pair lie 3 K and 1 K apart, and closer where the pair is closer', () => {
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
      const rows = [...HARDINESS_ROWS, ...OUTCOME_ROWS].filter(
        (row) => row.source === source && row.crop === crop && (row.note ?? '').includes(noted),
      );
      expect([crop, new Set(rows.map(plantSize))]).toEqual([crop, new Set([size])]);
    }
  });

  test('gives back its own figure when the big plant is the one in the bed', () => {
    const lettuce = cropById('lettuce');
    if (lettuce === undefined) throw new Error('lettuce is a crop');
    expect(adjusted(lettuce.hardened, ['mature-head']).lt50C - lettuce.hardened.lt50C).toBeCloseTo(1.5, 9);
  });
});

test('an outside low becomes the temperature of an organ in one place', () => {
  const text = readFileSync(new URL('../../../rules/crops/statements.ts', import.meta.url), 'utf8');
  expect(text).toContain('organNight(');
  expect(text).not.toMatch(/DEPRESSION|COLDER_K/);
});
