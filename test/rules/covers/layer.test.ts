import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COVERS } from '../../../rules/covers/cover-table.ts';
import { coveredSkin, touchingSkin } from '../../../rules/covers/layer.ts';
import { MATERIALS, type Skin } from '../../../rules/covers/material-table.ts';

const anySkin = fc.constantFrom<Skin>(...Object.values(MATERIALS).map(({ skin }) => skin));
const LEAKS = ['leak0MmPerS', 'leak1MmPerM', 'leak2MmSPerM2', 'leakMmPerSK'] as const;

describe('two covers that touch', () => {
  test('two medium fabrics let through, reflect and insulate as worked out by hand', () => {
    const { skin } = MATERIALS['fabric-medium'];
    const both = touchingSkin(skin, skin);
    // τ = 0.5²/(1 − 0.12²), ρ = 0.12 + 0.5²·0.12/(1 − 0.12²), leaks halve, light 0.75².
    expect(both.longwaveTransmittedDryFraction).toBeCloseTo(0.25365, 5);
    expect(both.longwaveReflectedDryFraction).toBeCloseTo(0.15044, 5);
    expect(both.resistanceM2KPerW).toBeCloseTo(0.016, 12);
    expect(both.leak0MmPerS).toBeCloseTo(0.35, 12);
    expect(both.leak2MmSPerM2).toBeCloseTo(0.6, 12);
    expect(both.sunTransmittedFraction).toBeCloseTo(0.5625, 12);
  });

  test('pass on no more than either alone, and account for all radiation', () => {
    fc.assert(
      fc.property(anySkin, anySkin, (outer, inner) => {
        const both = touchingSkin(outer, inner);
        for (const state of ['Dry', 'Wet'] as const) {
          const transmitted = both[`longwaveTransmitted${state}Fraction`];
          const reflected = both[`longwaveReflected${state}Fraction`];
          expect(transmitted).toBeLessThanOrEqual(outer[`longwaveTransmitted${state}Fraction`] + 1e-12);
          expect(transmitted).toBeLessThanOrEqual(inner[`longwaveTransmitted${state}Fraction`] + 1e-12);
          expect(transmitted + reflected).toBeLessThanOrEqual(1);
        }
        for (const leak of LEAKS) expect(both[leak]).toBeLessThanOrEqual(Math.min(outer[leak], inner[leak]));
        expect(both.sunTransmittedFraction + both.sunAbsorbedFraction).toBeLessThanOrEqual(1);
        expect(both.resistanceM2KPerW).toBeGreaterThan(outer.resistanceM2KPerW + inner.resistanceM2KPerW);
      }),
    );
  });

  test('do not depend on which is outside, but for reflection upward and where light is absorbed', () => {
    fc.assert(
      fc.property(anySkin, anySkin, (one, other) => {
        const a = touchingSkin(one, other);
        const b = touchingSkin(other, one);
        expect(a.longwaveTransmittedWetFraction).toBeCloseTo(b.longwaveTransmittedWetFraction, 12);
        expect(a.leak0MmPerS).toBeCloseTo(b.leak0MmPerS, 12);
        expect(a.resistanceM2KPerW).toBeCloseTo(b.resistanceM2KPerW, 12);
      }),
    );
  });
});

describe('a cover with something laid on it', () => {
  const blanket = { addition: COVERS.blanket.nightAddition, top: MATERIALS.blanket.skin };

  test('is opaque, dark, and holds the warmth of both', () => {
    fc.assert(
      fc.property(anySkin, fc.boolean(), (skin, isPressed) => {
        if (blanket.addition === undefined) throw new Error('a blanket can be laid on covers');
        const covered = coveredSkin(skin, blanket.addition, blanket.top, isPressed);
        expect(covered.longwaveTransmittedDryFraction + covered.longwaveTransmittedWetFraction).toBe(0);
        expect(covered.sunTransmittedFraction).toBe(0);
        expect(covered.resistanceM2KPerW).toBeCloseTo(skin.resistanceM2KPerW + 0.2, 12);
        expect(covered.leak0MmPerS).toBeLessThanOrEqual(Math.max(0.3, 0.5 * skin.leak0MmPerS));
      }),
    );
  });
});
