import fc from 'fast-check';
import type { CoverStack, NightInput } from '../../../rules/index.ts';
import {
  BARE,
  DOUBLE_TUNNEL,
  DRY_LOAM,
  FIRST,
  fabricInHighTunnel,
  fabricInTunnel,
  frame,
  HIGH_TUNNEL,
  hoops,
  laid,
  MOIST_LOAM,
  referenceInput,
  specLayer,
} from './spec-stacks.ts';

const HOURS = 30;

function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}

const THREE_COVERS: CoverStack = {
  ...fabricInHighTunnel('F30'),
  layers: [...fabricInHighTunnel('F30').layers, specLayer('F19', { areaRatio: 1.1, spaceM: 0.2 })],
};

const plainStack = fc.constantFrom<CoverStack>(
  BARE,
  hoops('F19'),
  laid('F50'),
  hoops('PE'),
  hoops('PEP'),
  frame('GL', 'wood'),
  frame('PC10', 'straw'),
  frame('PE', 'metal'),
  DOUBLE_TUNNEL,
  fabricInTunnel('F30'),
  HIGH_TUNNEL,
  fabricInHighTunnel('F50'),
  THREE_COVERS,
);

function instant(): fc.Arbitrary<Date> {
  return fc.integer({ min: -60, max: HOURS * 60 + 60 }).map((min) => new Date(FIRST.getTime() + min * 60_000));
}

const span = fc
  .tuple(instant(), instant())
  .map(([one, other]): { from: Date; to: Date } => (one < other ? { from: one, to: other } : { from: other, to: one }));

/** Any stack, with jugs, blankets, snow and vents at odd minutes. */
const stack: fc.Arbitrary<CoverStack> = fc
  .record({
    plain: plainStack,
    waterMass: fc.option(fc.record({ kgPerM2: between(5, 80), areaRatio: between(0.1, 2), startC: between(-3, 15) })),
    blanket: fc.option(fc.record({ resistanceM2KPerW: between(0.1, 1), heatCapacityJPerM2K: between(0, 2e4) })),
    snow: fc.option(fc.record({ depthM: between(0, 0.3), conductivityWPerMK: between(0.1, 0.3) })),
    vent: fc.option(fc.record({ areaRatio: between(0, 0.5), heightM: between(0, 0.5) })),
    blanketSpan: span,
    ventSpan: span,
  })
  .map(({ plain, waterMass, blanket, blanketSpan, snow, vent, ventSpan }) => ({
    ...plain,
    ...(waterMass && { waterMass }),
    ...(blanket && { blanket: { ...blanket, ...blanketSpan } }),
    ...(snow && { snow }),
    ...(vent && { vent: { ...vent, ...ventSpan } }),
  }));

const weather = fc.record({
  screenC: fc.array(between(-35, 40), { minLength: HOURS + 1, maxLength: HOURS + 1 }),
  drynessK: between(0, 25),
  cloudFraction: fc.array(between(0, 1), { minLength: HOURS + 1, maxLength: HOURS + 1 }),
  wind10MPerS: fc.array(between(0, 20), { minLength: HOURS + 1, maxLength: HOURS + 1 }),
});

/** Any run within the limits that section 17 of the specification asks for, weather jumping from hour to hour. */
export const randomRun: fc.Arbitrary<NightInput> = fc
  .record({
    first: stack,
    changes: fc.array(fc.record({ at: instant(), stack }), { maxLength: 2 }),
    weather,
    soil: fc.constantFrom(MOIST_LOAM, DRY_LOAM, { ...MOIST_LOAM, freezableFraction: 0.5 }),
    soil10CmC: between(-5, 25),
    deepC: between(-5, 25),
    leafAreaIndex: between(0.05, 5),
    month: fc.nat(11),
    latitudeDeg: between(-70, 70),
    skyViewFraction: between(0, 1),
    shelterFraction: between(0, 1),
    inversionK: between(0, 6),
    elevationM: between(0, 3000),
  })
  .map(({ first, changes, weather: series, soil, soil10CmC, deepC, leafAreaIndex, month, ...site }) => {
    const start = new Date(Date.UTC(2025, month, 10, 12));
    const shiftMs = start.getTime() - FIRST.getTime();
    const plain = referenceInput(shifted(first, shiftMs), {
      screenC: series.screenC,
      soil,
      soil10CmC,
      deepC,
      leafAreaIndex,
      site,
      first: start,
    });
    return {
      ...plain,
      weather: {
        ...plain.weather,
        dewPointC: series.screenC.map((screenC) => screenC - series.drynessK),
        cloudFraction: series.cloudFraction,
        wind10MPerS: series.wind10MPerS,
      },
      changes: changes
        .map((change) => ({ at: moved(change.at, shiftMs), stack: shifted(change.stack, shiftMs) }))
        .sort((one, other) => one.at.getTime() - other.at.getTime()),
    };
  });

function shifted(plain: CoverStack, byMs: number): CoverStack {
  const { blanket, vent } = plain;
  return {
    ...plain,
    ...(blanket && { blanket: { ...blanket, from: moved(blanket.from, byMs), to: moved(blanket.to, byMs) } }),
    ...(vent && { vent: { ...vent, from: moved(vent.from, byMs), to: moved(vent.to, byMs) } }),
  };
}

function moved(at: Date, byMs: number): Date {
  return new Date(at.getTime() + byMs);
}
