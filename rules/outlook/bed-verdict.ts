import type { CoverKey } from '../covers/cover-key.ts';
import type { Crop } from '../crops/crop.ts';
import type { LearnedHardiness } from '../learning/crop-history.ts';
import type { BedNight } from '../night/bed-night.ts';
import type { Circumstances } from '../verdict/circumstances.ts';
import { type NightVerdict, nightVerdict } from '../verdict/night-verdict.ts';

/** What grows in a bed and how hard it has become. */
export interface Planting {
  readonly crop: Crop;
  /** 0 grown warm … 1 fully hardened. */
  readonly hardeningIndex: number;
  /** What that rests on, where it was neither said nor followed. */
  readonly assumedFrom?: 'weather' | 'season' | 'set-out' | 'assumed';
  /** The other end of what the plants may be like, where the index was assumed. [0…1] */
  readonly otherwiseIndex?: number;
  /** What makes this planting hardier or more tender than the table. */
  readonly circumstances?: Circumstances;
  /** What outcomes, its own and the club's, have taught about the crop. */
  readonly learned?: LearnedHardiness;
}

/** The night under any stack of covers; `undefined` where the covers cannot lie so. */
export type NightUnder = (keys: readonly CoverKey[]) => BedNight | undefined;

export interface PlantingVerdict extends NightVerdict {
  readonly planting: Planting;
  /** If the plants are at the other end, where their hardening was assumed. */
  readonly otherwise?: NightVerdict;
}

/** What a night comes to for everything in one bed. */
export interface BedVerdict {
  readonly keys: readonly CoverKey[];
  readonly night: BedNight;
  /** Worst first. */
  readonly plantings: readonly PlantingVerdict[];
  readonly worst: PlantingVerdict;
}

/** Wind above which bare leaves suffer more than their temperature tells (`circumstance-steps`). [m s⁻¹] */
const WINDY_M_PER_S = 5;

/**
 * What a night comes to for every planting of a bed.
 *
 * @param plantings - At least one.
 * @param keys - The stack that the night was computed for, from outside to inside.
 * @param night - The computed night.
 * @param windMPerS - Wind at 10 m when the leaf is coldest. [m s⁻¹]
 * @throws RangeError when no planting is given.
 */
export function bedVerdict(
  plantings: readonly Planting[],
  keys: readonly CoverKey[],
  night: BedNight,
  windMPerS: number,
): BedVerdict {
  const bare = keys.every((key) => key === 'hoops' || key === 'jugs');
  const judged = plantings.map((planting) => judgedPlanting(planting, night, bare && windMPerS > WINDY_M_PER_S));
  judged.sort((a, b) => b.odds.winterkill - a.odds.winterkill || a.odds.noMark - b.odds.noMark);
  const [worst] = judged;
  if (worst === undefined) throw new RangeError('plantings is empty: a bed needs at least one');
  return { keys, night, plantings: judged, worst };
}

function judgedPlanting(planting: Planting, night: BedNight, windyBare: boolean): PlantingVerdict {
  const at = (hardeningIndex: number) =>
    nightVerdict({
      crop: planting.crop,
      hardeningIndex,
      leafLowC: night.leafLowC,
      surfaceLowC: night.surfaceLowC,
      sdK: night.spread.sdK,
      circumstances: { ...planting.circumstances, windyBare },
      ...(planting.learned && { learned: planting.learned }),
    });
  const { hardeningIndex, otherwiseIndex } = planting;
  return {
    planting,
    ...at(hardeningIndex),
    ...(otherwiseIndex !== undefined && { otherwise: at(otherwiseIndex) }),
  };
}
