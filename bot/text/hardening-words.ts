import { type CropId, cropById, type PlantingVerdict } from '../../rules/index.ts';
import { bedCropWords } from './night-words.ts';
import { capitalised, list } from './phrases.ts';
import { cropWord, type Reader } from './reader.ts';

/** How hard plants are, in quarters: what the index is good for. */
const QUARTERS = ['not hardened', 'a quarter hardened', 'half hardened', 'three quarters hardened', 'fully hardened'];

/** "three quarters hardened". @param hardeningIndex - 0 grown warm … 1 fully hardened. */
export function hardeningWords(hardeningIndex: number): string {
  const quarter = Math.round(Math.max(0, Math.min(1, hardeningIndex)) * (QUARTERS.length - 1));
  return QUARTERS[quarter] ?? '';
}

interface KnownPlanting {
  readonly cropId: CropId;
  readonly hardeningIndex?: number;
}

/** "Spinach and kale are three quarters hardened, lettuce is half hardened."; empty where nothing is known. */
export function hardeningLines(plantings: readonly KnownPlanting[], reader: Reader): string[] {
  const crops = new Map<string, Set<string>>();
  for (const { cropId, hardeningIndex } of plantings.toSorted(softestFirst)) {
    const crop = cropById(cropId);
    if (crop === undefined || !crop.hardens || hardeningIndex === undefined) continue;
    const words = hardeningWords(hardeningIndex);
    crops.set(words, (crops.get(words) ?? new Set()).add(cropWord(crop, reader)));
  }
  if (crops.size === 0) return [];
  const parts = [...crops].map(([words, names]) => `${list([...names])} ${names.size === 1 ? 'is' : 'are'} ${words}`);
  return [`${capitalised(parts.join(', '))}.`];
}

function softestFirst(one: KnownPlanting, other: KnownPlanting): number {
  return (one.hardeningIndex ?? 1) - (other.hardeningIndex ?? 1);
}

/** A planting in its bed, where how hard it is had to be assumed. */
export interface JudgedPlanting {
  readonly bedName: string;
  readonly planting: PlantingVerdict;
}

/** Beds of which the other end is told. */
const MOST_OTHERWISE = 3;
const BASES = {
  weather: 'the past week here',
  season: 'the season alone',
  'set-out': 'their being just set out',
  assumed: 'the time of year',
} as const;

/** "Hardening assumed from the past week here: kale half hardened. If they are not hardened: Long tunnel, kale: leaf burn." */
export function assumedHardeningLines(all: readonly JudgedPlanting[], reader: Reader): string[] {
  const assumed = all.filter(({ planting }) => planting.planting.assumedFrom !== undefined);
  const [first] = assumed;
  if (first === undefined) return [];
  const basis = BASES[first.planting.planting.assumedFrom ?? 'assumed'];
  const states = new Map<string, Set<string>>();
  for (const { planting } of assumed) {
    const words = hardeningWords(planting.planting.hardeningIndex);
    states.set(words, (states.get(words) ?? new Set()).add(cropWord(planting.planting.crop, reader)));
  }
  const parts = [...states].map(([words, names]) => `${list([...names])} ${words}`);
  const what = `Hardening assumed from ${basis}: ${parts.join('; ')}`;
  const changes = otherEndLines(assumed, reader);
  return changes.length === 0 ? [`${what}. At the other end the verdicts are the same.`] : [`${what}.`, ...changes];
}

/** What changes for plants at the other end. */
function otherEndLines(assumed: readonly JudgedPlanting[], reader: Reader): string[] {
  return ([0, 1] as const).flatMap((index) => {
    const changed = assumed.flatMap(({ bedName, planting: { planting, verdict, otherwise } }) =>
      planting.otherwiseIndex !== index || otherwise === undefined || otherwise.verdict === verdict
        ? []
        : [`${bedCropWords(bedName, planting.crop, reader)}: ${otherwise.verdict}`],
    );
    if (changed.length === 0) return [];
    const more = changed.length - MOST_OTHERWISE;
    const told = more > 0 ? [...changed.slice(0, MOST_OTHERWISE), `and ${more} more`] : changed;
    return [`${index === 0 ? 'If they are not hardened' : 'If they are fully hardened'}: ${told.join('; ')}.`];
  });
}
