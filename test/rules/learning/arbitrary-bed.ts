import { type BedNight, type BedNightInput, bedNight, type CoverKey, ordinaryNight } from '../../../rules/index.ts';

/** A computed frost night as a forecast gives it. */
export function frostNight(covers: readonly CoverKey[], lowC = -6): BedNight {
  const input: BedNightInput = {
    ...ordinaryNight(lowC),
    bed: { covers },
    forecast: { kind: 'forecast', nightsAhead: 0 },
  };
  const night = bedNight(input);
  if (night.kind !== 'night') throw new RangeError('these covers cannot lie so');
  return night;
}

/** The same with its low named by the asker. */
export function namedNight(covers: readonly CoverKey[], lowC = -6): BedNight {
  const night = bedNight({ ...ordinaryNight(lowC), bed: { covers } });
  if (night.kind !== 'night') throw new RangeError('these covers cannot lie so');
  return night;
}
