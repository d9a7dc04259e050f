import { Body, Equator, Horizon, Observer } from 'astronomy-engine';
import fc from 'fast-check';
import { getPosition } from 'suncalc';
import { describe, expect, test } from 'vitest';
import { clearSkyGlobalWPerM2, diffuseFraction, incidentLight, solarPosition } from '../../rules/index.ts';
import { between, thisCentury } from '../rules/sun/arbitrary-places.ts';
import { SERIES_DEG } from './accuracy/sun.ts';

const RAD_PER_DEG = Math.PI / 180;
const anyFrame = fc.record({
  at: thisCentury,
  latitudeDeg: between(-60, 60),
  longitudeDeg: between(-180, 180),
  tiltDeg: between(0, 60),
  azimuthDeg: between(0, 360),
});

interface SunAngles {
  readonly heightRad: number;
  /** From north through east. */
  readonly azimuthRad: number;
}

function engineSun(at: Date, latitudeDeg: number, longitudeDeg: number): SunAngles {
  const observer = new Observer(latitudeDeg, longitudeDeg, 0);
  const { ra, dec } = Equator(Body.Sun, at, observer, true, true);
  const { altitude, azimuth } = Horizon(at, observer, ra, dec);
  return { heightRad: altitude * RAD_PER_DEG, azimuthRad: azimuth * RAD_PER_DEG };
}

/** SunCalc 2 gives degrees from north. */
function calcSun(at: Date, latitudeDeg: number, longitudeDeg: number): SunAngles {
  const { altitude, azimuth } = getPosition(at, latitudeDeg, longitudeDeg);
  return { heightRad: altitude * RAD_PER_DEG, azimuthRad: azimuth * RAD_PER_DEG };
}

/** Angle of incidence the textbook way, from the angles of the sun and of the pane instead of from vectors. */
function cosIncidence({ heightRad, azimuthRad }: SunAngles, tiltDeg: number, azimuthDeg: number): number {
  const [tiltRad, facingRad] = [tiltDeg * RAD_PER_DEG, azimuthDeg * RAD_PER_DEG];
  const level = Math.sin(heightRad) * Math.cos(tiltRad);
  return level + Math.cos(heightRad) * Math.sin(tiltRad) * Math.cos(azimuthRad - facingRad);
}

// Sources: Astronomy Engine 2.1 and SunCalc 2.0 for where the sun stands; SunCalc counts refraction in, so only well above the horizon.
describe('the sun on a tilted light', () => {
  test.each([
    ['Astronomy Engine', engineSun],
    ['SunCalc', calcSun],
  ] as const)('meets it at the angle that %s gives, wherever it faces', (_library, sunAngles) => {
    fc.assert(
      fc.property(anyFrame, ({ at, latitudeDeg, longitudeDeg, tiltDeg, azimuthDeg }) => {
        const theirs = sunAngles(at, latitudeDeg, longitudeDeg);
        fc.pre(theirs.heightRad > 20 * RAD_PER_DEG);
        const sun = solarPosition(at, latitudeDeg, longitudeDeg);
        const light = incidentLight(500, sun, { kind: 'tilt', tiltDeg, azimuthDeg });
        const theirCos = Math.max(0, cosIncidence(theirs, tiltDeg, azimuthDeg));
        // The sun's own error, turned square on to the pane at worst.
        expect(Math.abs(light.cosIncidence - theirCos)).toBeLessThan(Math.sin(SERIES_DEG * RAD_PER_DEG));
      }),
    );
  });

  test('brings the beam of level ground, turned to the pane', () => {
    fc.assert(
      fc.property(anyFrame, ({ at, latitudeDeg, longitudeDeg, tiltDeg, azimuthDeg }) => {
        const theirs = engineSun(at, latitudeDeg, longitudeDeg);
        fc.pre(theirs.heightRad > 25 * RAD_PER_DEG);
        const sun = solarPosition(at, latitudeDeg, longitudeDeg);
        const globalWPerM2 = clearSkyGlobalWPerM2(sun.cosZenith);
        const light = incidentLight(globalWPerM2, sun, { kind: 'tilt', tiltDeg, azimuthDeg });
        const beamWPerM2 = globalWPerM2 * (1 - diffuseFraction(globalWPerM2, sun.cosZenith, sun.eccentricity));
        const normalWPerM2 = beamWPerM2 / Math.sin(theirs.heightRad);
        const onPaneWPerM2 = normalWPerM2 * Math.max(0, cosIncidence(theirs, tiltDeg, azimuthDeg));
        // 0.7° off on the pane and in the sun's height, from 25° up.
        const slackWPerM2 = normalWPerM2 * 0.0125 + onPaneWPerM2 * 0.03;
        expect(Math.abs(light.beamWPerM2 * Math.cos(tiltDeg * RAD_PER_DEG) - onPaneWPerM2)).toBeLessThan(slackWPerM2);
      }),
    );
  });
});

/**
 * Day sums on clear days at 40° N on panes that face south. Source: ASHRAE clear-day insolation tables, from memory.
 * [Btu ft⁻² for tilts of 0°, 30° and 40°]
 */
const TABLED: readonly (readonly [date: string, sums: readonly number[]])[] = [
  ['2025-10-21', [1348, 1962, 2060]],
  ['2025-12-21', [782, 1480, 1634]],
  ['2026-01-21', [948, 1660, 1810]],
  ['2026-03-21', [1852, 2308, 2330]],
];
const TILTS_DEG = [0, 30, 40];
const J_PER_M2_AND_BTU_PER_FT2 = 11_357;
const GROUND_REFLECTS = 0.2;
/**
 * A regression: the band was drawn about our own sums after they had been seen; the tables alone would not set it.
 * Always the dark side: of a low winter sun the split takes more as sky light than those tables, and the share that a tilt gains is capped.
 */
const [LOWEST_SHARE, HIGHEST_SHARE] = [0.84, 1.02];

/** As those tables count it: per area of pane, with half a turn of sky lost to the tilt and the ground's share won. */
function paneSumJPerM2(date: string, tiltDeg: number): number {
  const cosTilt = Math.cos(tiltDeg * RAD_PER_DEG);
  let sum = 0;
  for (let minute = 0; minute < 1440; minute += 5) {
    const sun = solarPosition(new Date(Date.parse(`${date}T00:00Z`) + minute * 60_000), 40, 0);
    const globalWPerM2 = clearSkyGlobalWPerM2(sun.cosZenith);
    if (globalWPerM2 === 0) continue;
    const { beamWPerM2, diffuseWPerM2 } = incidentLight(globalWPerM2, sun, { kind: 'tilt', tiltDeg, azimuthDeg: 180 });
    const fromGround = (GROUND_REFLECTS * globalWPerM2 * (1 - cosTilt)) / 2;
    sum += 300 * (beamWPerM2 * cosTilt + (diffuseWPerM2 * (1 + cosTilt)) / 2 + fromGround);
  }
  return sum;
}

test.each(TABLED)('a clear day on tilted panes, %s, has between 84 and 102 %% of the tabled sums', (date, sums) => {
  expect(sums).toHaveLength(TILTS_DEG.length);
  for (const [index, tabled] of sums.entries()) {
    const share = paneSumJPerM2(date, TILTS_DEG[index] ?? Number.NaN) / (tabled * J_PER_M2_AND_BTU_PER_FT2);
    expect(share).toBeGreaterThan(LOWEST_SHARE);
    expect(share).toBeLessThan(HIGHEST_SHARE);
  }
});
