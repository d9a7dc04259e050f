import type { FrameBuild, WeatherHarm } from '../../rules/index.ts';
import { clockTime } from '../ground/times.ts';
import { ballast, load, rainDepth, shortLength, windSpeed } from '../ground/units.ts';
import type { HarmfulHours } from '../weather/harmful-weather.ts';
import { shortCover } from './night-words.ts';
import { list } from './phrases.ts';
import type { Reader } from './reader.ts';

export const HARM_TITLE = 'Wind, snow and wet';

/** A bed and what the weather does to its covers. */
export interface HarmedBed {
  readonly name: string;
  readonly frame?: FrameBuild | undefined;
  readonly harms: readonly WeatherHarm[];
}

/** What the weather breaks and what to do about it, one line for each kind of weather. */
export function harmLines(
  beds: readonly HarmedBed[],
  hours: HarmfulHours,
  timeZone: string,
  reader: Reader,
): readonly string[] {
  const near = (at: Date | undefined) =>
    at === undefined ? '' : ` near ${clockTime(at, timeZone, reader.units === 'us')}`;
  const doings = (kind: WeatherHarm['kind']) =>
    together(
      beds.flatMap((bed) => {
        const harm = bed.harms.find((each) => each.kind === kind);
        return harm === undefined ? [] : [[doing(harm, bed, reader), bed.name] as const];
      }),
    );
  const { gustMPerS, gustAt, snowfall, freezingRainMm, iceAt, rainBeforeFreezeMm } = hours;
  const opening: Readonly<Record<WeatherHarm['kind'], string>> = {
    wind: `Gusts of ${windSpeed(gustMPerS ?? 0, reader.units)}${near(gustAt)}.`,
    snow: `${shortLength(snowfall?.depthM ?? 0, reader.units)} of new snow.`,
    'freezing-rain': `Freezing rain, ${rainDepth(freezingRainMm ?? 0, reader.units)}${near(iceAt)}.`,
    'wet-fabric': `${rainDepth(rainBeforeFreezeMm ?? 0, reader.units)} of rain before the frost.`,
    sunless: sunlessOpening(beds),
  };
  const kinds = ['wind', 'snow', 'freezing-rain', 'wet-fabric', 'sunless'] as const;
  return kinds.flatMap((kind) => {
    const found = doings(kind);
    return found.length === 0 ? [] : [`${opening[kind]} ${found.join(' ')}`];
  });
}

/** "Frame by the shed: hook the light down. Long tunnel and Tent: …"; what holds for all of them is said once. */
function together(doings: readonly (readonly [doing: string, bed: string])[]): string[] {
  const beds = new Map<string, string[]>();
  for (const [doing, bed] of doings) beds.set(doing, [...(beds.get(doing) ?? []), bed]);
  return [...beds].map(([doing, names]) => (doing.endsWith('.') ? doing : `${list(names)}: ${doing}.`));
}

function sunlessOpening(beds: readonly HarmedBed[]): string {
  const days = Math.max(
    0,
    ...beds.flatMap(({ harms }) => harms.map((harm) => (harm.kind === 'sunless' ? harm.days : 0))),
  );
  return `${days} days without sun behind us.`;
}

function doing(harm: WeatherHarm, bed: HarmedBed, reader: Reader): string {
  switch (harm.kind) {
    case 'wind':
      return windDoing(harm, bed, reader);
    case 'snow':
      return snowDoing(harm, reader);
    case 'freezing-rain':
      return 'Ice glues lights and film shut: open or cover what you must before it begins.';
    case 'wet-fabric':
      return `soaked ${shortCover(harm.cover, reader)} freezes stiff and cold on the leaves; hold it off them with hoops, or lay it after the rain`;
    case 'sunless':
      return 'The soil under the covers has little warmth left to give; the figures here allow for it.';
  }
}

/** A light of the common frame, 4 by 8 ft. */
const COMMON_LIGHT_M2 = 3;

function windDoing(harm: Extract<WeatherHarm, { kind: 'wind' }>, { frame }: HarmedBed, reader: Reader): string {
  const cover = shortCover(harm.cover, reader);
  const step = reader.units === 'us' ? 'yard' : 'metre';
  switch (harm.advice) {
    case 'weigh-down': {
      const areaM2 = frame === undefined ? COMMON_LIGHT_M2 : frame.depthM * frame.lengthM;
      const weight = ballast((harm.ballastKgPerM2 ?? 0) * areaM2, reader.units);
      return `hook the light down or lay ${weight} on it, and do not leave it propped`;
    }
    case 'take-down':
      return `double every anchor of the ${cover}, or take it down`;
    case 'shut':
      return 'shut doors and sides';
    case 'anchor':
      return `anchor the ${cover} every ${step} or so`;
  }
}

function snowDoing(harm: Extract<WeatherHarm, { kind: 'snow' }>, reader: Reader): string {
  const weight = load(harm.loadKgPerM2, reader.units);
  const usual = load(harm.bearsKgPerM2, reader.units);
  switch (harm.advice) {
    case 'breaks':
      return `${weight}, where the like usually bears ${usual}; push it off gently while it falls`;
    case 'clear':
      return `${weight}, where the like usually bears ${usual}; push it off gently before more falls`;
    case 'insulates':
      return 'light enough to leave, it keeps warmth in; brush it off when the sun is out';
  }
}
