import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CoverKey,
  commonFrame,
  coverStack,
  type NightInput,
  nightRun,
  OPENING_LIMIT_C,
  openable,
  openingAdvice,
  windowHigh,
} from '../../../rules/index.ts';
import { between } from '../sun/arbitrary-places.ts';
import { arbitraryFacts, DAY_STACKS, type PlainDay, plainDay, shutInput } from './arbitrary-day.ts';

/** Steps of ten minutes and the switching of linearised coefficients leave this much. [K] */
const SLACK_K = 0.05;
const anyStack = fc.constantFrom(...DAY_STACKS);
const RUNS = { numRuns: 40 };

function highC(input: NightInput, { day }: PlainDay): number {
  return windowHigh(nightRun(input), 'thermometerC', day.sunrise, day.sunset).valueC;
}

function planFor(plain: PlainDay, keys: readonly CoverKey[]) {
  const frame = commonFrame(plain.latitudeDeg);
  const found = openable(keys, frame);
  if (found === undefined) throw new Error('nothing to open');
  const without = found.without === undefined ? undefined : coverStack(found.without, { frame });
  return {
    input: shutInput(plain, keys),
    from: plain.day.sunrise,
    shutBy: plain.day.shutBy,
    to: plain.day.sunset,
    openings: found.openings,
    ...(without?.kind === 'stack' && { uncovered: without.day }),
  };
}

const OCTOBER = plainDay({
  date: '2025-10-25',
  latitudeDeg: 43,
  lowC: 2,
  rangeK: 12,
  cloudFraction: 0,
  windMPerS: 1.5,
  soilC: 10,
});
const MIDWINTER = plainDay({
  date: '2025-12-21',
  latitudeDeg: 43,
  lowC: -8,
  rangeK: 10,
  cloudFraction: 0,
  windMPerS: 1.5,
  soilC: 4,
});

test('nobody is sent out to open just before it is time to shut', () => {
  const plan = planFor(OCTOBER, ['cold-frame']);
  const asked = (beforeMin: number) => {
    const from = new Date(plan.shutBy.getTime() - beforeMin * 60_000);
    return openingAdvice({ ...plan, from }).kind;
  };
  expect(openingAdvice(plan).kind).toBe('open');
  expect([asked(120), asked(10), asked(-10)]).toEqual(['open', 'stay-shut', 'stay-shut']);
});

describe('a day under cover', () => {
  test('is never hotter for a wider opening, unless the air outside is', () => {
    fc.assert(
      fc.property(arbitraryFacts, anyStack, between(0, 0.4), between(0, 0.4), (facts, keys, areaRatio, more) => {
        const plain = plainDay(facts);
        const input = shutInput(plain, keys);
        const opened = (ratio: number) => ({
          ...input,
          stack: {
            ...input.stack,
            vent: { areaRatio: ratio, heightM: ratio, from: plain.day.sunrise, to: plain.day.sunset },
          },
        });
        const narrowC = highC(opened(areaRatio), plain);
        const outsideC = Math.max(...plain.weather.screenC);
        expect(highC(opened(areaRatio + more), plain)).toBeLessThanOrEqual(Math.max(narrowC, outsideC) + SLACK_K);
      }),
      RUNS,
    );
  });

  test('is never cooler for more sun', () => {
    fc.assert(
      fc.property(arbitraryFacts, anyStack, between(0, 1), between(0, 1), (facts, keys, some, more) => {
        const plain = plainDay(facts);
        const input = shutInput(plain, keys);
        const under = (share: number) => {
          const globalWPerM2 = plain.weather.screenC.map(() => 900 * share);
          return { ...input, weather: { ...plain.weather, globalWPerM2 } };
        };
        const brighter = some + more * (1 - some);
        expect(highC(under(brighter), plain)).toBeGreaterThanOrEqual(highC(under(some), plain) - SLACK_K);
      }),
      RUNS,
    );
  });

  test('is never warmer under a cover that lets less sun through', () => {
    fc.assert(
      fc.property(arbitraryFacts, anyStack, between(0, 1), (facts, keys, share) => {
        const plain = plainDay(facts);
        const input = shutInput(plain, keys);
        const layers = input.stack.layers.map((layer) => ({
          ...layer,
          sunTransmittedFraction: share * layer.sunTransmittedFraction,
        }));
        const darker = { ...input, stack: { ...input.stack, layers } };
        expect(highC(darker, plain)).toBeLessThanOrEqual(highC(input, plain) + SLACK_K);
      }),
      RUNS,
    );
  });

  test('is never warmer behind a hill that hides the sun', () => {
    fc.assert(
      fc.property(arbitraryFacts, anyStack, between(0, 60), (facts, keys, heightDeg) => {
        const plain = plainDay(facts);
        const input = shutInput(plain, keys);
        const shaded = { ...input, site: { ...input.site, horizonDeg: [heightDeg] } };
        expect(highC(shaded, plain)).toBeLessThanOrEqual(highC(input, plain) + SLACK_K);
      }),
      RUNS,
    );
  });
});

describe('advice', () => {
  test('keeps the bed at the limit while it is open, and opens no wider than needed', () => {
    const plan = planFor(OCTOBER, ['cold-frame']);
    const advice = openingAdvice(plan);
    if (advice.kind !== 'open') throw new Error(`expected to open, not ${advice.kind}`);
    expect(advice.thermometerHigh.valueC).toBeLessThanOrEqual(OPENING_LIMIT_C + 0.1);
    const narrower = plan.openings.filter(({ sizeM }) => sizeM < advice.sizeM);
    const tooHot = openingAdvice({ ...plan, openings: narrower });
    expect(tooHot.kind).toBe('off');
  });

  test('says what happens if it stays shut', () => {
    const { shut } = openingAdvice(planFor(OCTOBER, ['cold-frame']));
    expect(shut.thermometerHigh.valueC).toBeGreaterThan(30);
    expect(shut.thermometerHigh.at.getTime()).toBeGreaterThan(OCTOBER.day.sunrise.getTime());
  });

  test('shuts two hours before sunset at the latest', () => {
    fc.assert(
      fc.property(arbitraryFacts, anyStack, (facts, keys) => {
        const plain = plainDay(facts);
        const advice = openingAdvice(planFor(plain, keys));
        if (advice.kind === 'stay-shut') return;
        expect(advice.shutAt.getTime()).toBeLessThanOrEqual(plain.day.shutBy.getTime());
        expect(advice.shutAt.getTime() - advice.openAt.getTime()).toBeGreaterThanOrEqual(15 * 60_000);
      }),
      { numRuns: 25 },
    );
  });

  test('shuts earlier once a hill hides the sun', () => {
    const plan = planFor(OCTOBER, ['cold-frame']);
    const open = openingAdvice(plan);
    // South-west and west are walled off from about two in the afternoon on.
    const site = { ...plan.input.site, horizonDeg: [0, 0, 0, 0, 0, 60, 60, 0] };
    const shaded = openingAdvice({ ...plan, input: { ...plan.input, site } });
    if (open.kind !== 'open' || shaded.kind !== 'open') throw new Error('expected both to open');
    expect(shaded.shutAt.getTime()).toBeLessThan(open.shutAt.getTime());
  });

  test('leaves a frame shut in midwinter', () => {
    expect(openingAdvice(planFor(MIDWINTER, ['cold-frame'])).kind).toBe('stay-shut');
  });

  test('takes fabric off when it is too warm under it: fabric has no lid to prop', () => {
    const warm = plainDay({
      date: '2026-03-25',
      latitudeDeg: 40,
      lowC: 6,
      rangeK: 14,
      cloudFraction: 0,
      windMPerS: 1,
      soilC: 10,
    });
    const advice = openingAdvice(planFor(warm, ['row-cover-medium', 'hoops']));
    if (advice.kind !== 'off') throw new Error(`expected it off, not ${advice.kind}`);
    expect(advice.thermometerHigh.valueC).toBeLessThan(advice.shut.thermometerHigh.valueC);
  });

  test('opens earlier or wider under a lower limit', () => {
    const plan = planFor(OCTOBER, ['low-tunnel']);
    const usual = openingAdvice(plan);
    const low = openingAdvice({ ...plan, limitC: 16 });
    if (usual.kind !== 'open' || low.kind === 'stay-shut') throw new Error('expected both to open');
    expect(low.openAt.getTime()).toBeLessThan(usual.openAt.getTime());
    if (low.kind === 'open') expect(low.sizeM).toBeGreaterThan(usual.sizeM);
  });

  test('for less than a kelvin above the limit nobody needs to walk out', () => {
    const plan = planFor(OCTOBER, ['cold-frame']);
    const { shut } = openingAdvice(plan);
    expect(openingAdvice({ ...plan, limitC: shut.thermometerHigh.valueC - 0.9 }).kind).toBe('stay-shut');
    expect(openingAdvice({ ...plan, limitC: shut.thermometerHigh.valueC - 1.1 }).kind).not.toBe('stay-shut');
  });
});
