import {
  type Crop,
  cropById,
  type DarkWeeks,
  darkWeeks,
  grownAt,
  type LastSowing,
  lastSowing,
  pickingSizeAt,
  sunTimes,
  WINTER_CROPS,
} from '../../rules/index.ts';
import type { Garden } from './garden.ts';

/** A garden's winter: when the days are short, what to sow by when, and where the plantings stand. */
export interface WinterPlan {
  readonly garden: Garden;
  /** Absent within some 32° of the equator. */
  readonly weeks: DarkWeeks | undefined;
  /** Length of the shortest day. [h] */
  readonly shortestH: number | undefined;
  /** Earliest date first. */
  readonly sowings: readonly CropSowing[];
  readonly plantings: readonly PlantedCrop[];
}

export interface CropSowing {
  readonly crop: Crop;
  /** Absent where no day is under ten hours. */
  readonly sowing: LastSowing | undefined;
  /** When it is big enough if it is sown now. */
  readonly ifSownNow: Date;
}

/** A planting of a garden as far as a calendar is concerned. */
export interface DatedPlanting {
  readonly bedName: string;
  readonly cropId: string;
  readonly stage: 'just-set-out' | 'growing' | 'grown';
  readonly since: Date;
  readonly sown?: Date;
  readonly setOut?: Date;
}

export interface PlantedCrop {
  readonly bedName: string;
  readonly crop: Crop;
  readonly stage: DatedPlanting['stage'];
  /** Absent for what stands for years. */
  readonly grown: Date | undefined;
  /** Nobody told when it was sown or set out: it counts as half grown. */
  readonly isGuessed: boolean;
}

/** The winter in which an instant lies or the next to come, for what is usually sown for it and for what is planted. */
export function winterPlan(
  garden: Garden,
  planted: readonly DatedPlanting[],
  now: Date,
  asked: readonly Crop[] = [],
): WinterPlan {
  const { latitudeDeg, longitudeDeg } = garden;
  const weeks = darkWeeks(now, latitudeDeg, longitudeDeg);
  const ids = [...WINTER_CROPS, ...planted.map(({ cropId }) => cropId), ...asked.map(({ id }) => id)];
  const crops = new Set(ids.flatMap((id) => cropById(id) ?? []));
  const sowings = [...crops].flatMap((crop) => cropSowing(crop, garden, now) ?? []);
  return {
    garden,
    weeks,
    shortestH: weeks && shortestDayH(weeks, garden),
    sowings: sowings.toSorted((a, b) => sowByMs(a) - sowByMs(b)),
    plantings: planted.flatMap(({ bedName, cropId, ...facts }) => {
      const crop = cropById(cropId);
      if (crop === undefined) return [];
      const grown = grownAt(crop, facts, latitudeDeg);
      const isGuessed = facts.stage === 'growing' && facts.sown === undefined && facts.setOut === undefined;
      return [{ bedName, crop, stage: facts.stage, grown, isGuessed: isGuessed && grown !== undefined }];
    }),
  };
}

/** Only what cold does not kill outright is sown for winter. */
function cropSowing(crop: Crop, { latitudeDeg, longitudeDeg }: Garden, now: Date): CropSowing | undefined {
  const { maturityDays, hardens } = crop;
  if (maturityDays === undefined || !hardens) return undefined;
  return {
    crop,
    sowing: lastSowing(maturityDays, now, latitudeDeg, longitudeDeg),
    ifSownNow: pickingSizeAt(maturityDays, now, latitudeDeg),
  };
}

function sowByMs({ sowing, ifSownNow }: CropSowing): number {
  return (sowing?.sowBy ?? ifSownNow).getTime();
}

function shortestDayH({ firstDay, lastDay }: DarkWeeks, { latitudeDeg, longitudeDeg }: Garden): number | undefined {
  const middle = new Date((firstDay.getTime() + lastDay.getTime()) / 2);
  const sun = sunTimes(middle, latitudeDeg, longitudeDeg);
  return sun.kind === 'rises' ? sun.dayLengthH : undefined;
}
