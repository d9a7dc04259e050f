import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  blankRung,
  lowerGainWPerM2,
  type Rung,
  setLadderOptics,
  setRung,
  soilRung,
  solveLadder,
  upperGainWPerM2,
} from '../../../rules/balance/ladder.ts';
import { blackBodyWPerM2 } from '../../../rules/constants.ts';

interface Layer {
  readonly transmitted: number;
  readonly reflected: number;
  readonly upperC: number;
  readonly lowerC: number;
}

const celsius = fc.double({ min: -40, max: 50, noNaN: true });
const layer: fc.Arbitrary<Layer> = fc
  .record({
    transmitted: fc.double({ min: 0, max: 1, noNaN: true }),
    reflectedOfRest: fc.double({ min: 0, max: 0.9, noNaN: true }),
    upperC: celsius,
    lowerC: celsius,
  })
  .map(({ reflectedOfRest, ...rest }) => ({ ...rest, reflected: (1 - rest.transmitted) * reflectedOfRest }));
const sky = fc.double({ min: 100, max: 450, noNaN: true });

function ladder(layers: readonly Layer[], soilC: number, skyWPerM2: number): Rung[] {
  const rungs = [...layers.map(() => blankRung()), soilRung()];
  for (const [i, { transmitted, reflected }] of layers.entries()) setRung(at(rungs, i), transmitted, reflected);
  setLadderOptics(rungs);
  for (const [i, { upperC, lowerC }] of layers.entries()) {
    at(rungs, i).upperBlackWPerM2 = blackBodyWPerM2(upperC);
    at(rungs, i).lowerBlackWPerM2 = blackBodyWPerM2(lowerC);
  }
  at(rungs, layers.length).upperBlackWPerM2 = blackBodyWPerM2(soilC);
  solveLadder(rungs, skyWPerM2);
  return rungs;
}

function at(rungs: readonly Rung[], i: number): Rung {
  const rung = rungs[i];
  if (rung === undefined) throw new Error(`no rung ${i}`);
  return rung;
}

function gains(rungs: readonly Rung[]): number[] {
  return rungs.flatMap((rung, i) => {
    const below = rungs[i + 1];
    return below === undefined ? [upperGainWPerM2(rung)] : [upperGainWPerM2(rung), lowerGainWPerM2(rung, below)];
  });
}

describe('the longwave ladder', () => {
  test('gains what comes down from the sky less what goes up to it, and nothing else', () => {
    fc.assert(
      fc.property(fc.array(layer, { maxLength: 5 }), celsius, sky, (layers, soilC, skyWPerM2) => {
        const rungs = ladder(layers, soilC, skyWPerM2);
        const sum = gains(rungs).reduce((total, gain) => total + gain, 0);
        expect(sum).toBeCloseTo(skyWPerM2 - at(rungs, 0).risingWPerM2, 8);
      }),
    );
  });

  test('is at rest when sky and all faces have one temperature', () => {
    fc.assert(
      fc.property(fc.array(layer, { maxLength: 5 }), celsius, (layers, soilC) => {
        const alike = layers.map((one) => ({ ...one, upperC: soilC, lowerC: soilC }));
        for (const gain of gains(ladder(alike, soilC, blackBodyWPerM2(soilC)))) expect(gain).toBeCloseTo(0, 8);
      }),
    );
  });

  test('is not changed by a layer that lets everything through', () => {
    fc.assert(
      fc.property(
        fc.array(layer, { minLength: 1, maxLength: 4 }),
        fc.nat(4),
        celsius,
        sky,
        (layers, place, soilC, skyWPerM2) => {
          const plain = ladder(layers, soilC, skyWPerM2);
          const clear = { transmitted: 1, reflected: 0, upperC: 0, lowerC: 0 };
          const more = ladder(layers.toSpliced(place, 0, clear), soilC, skyWPerM2);
          expect(at(more, 0).risingWPerM2).toBeCloseTo(at(plain, 0).risingWPerM2, 8);
          expect(at(more, more.length - 1).arrivingWPerM2).toBeCloseTo(at(plain, plain.length - 1).arrivingWPerM2, 8);
        },
      ),
    );
  });

  test('under black covers hands on each face only what its neighbour sends', () => {
    const black = { transmitted: 0, reflected: 0, upperC: -10, lowerC: -5 };
    const rungs = ladder([black], 4, 200);
    expect(upperGainWPerM2(at(rungs, 0))).toBeCloseTo(200 - blackBodyWPerM2(-10), 8);
    // The soil, ε 0.96, against a black ceiling.
    const soilGain = 0.96 * (blackBodyWPerM2(-5) - blackBodyWPerM2(4));
    expect(upperGainWPerM2(at(rungs, 1))).toBeCloseTo(soilGain, 8);
    expect(lowerGainWPerM2(at(rungs, 0), at(rungs, 1))).toBeCloseTo(-soilGain, 8);
  });
});
