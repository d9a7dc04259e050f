import {
  type AssumedHardening,
  assumedHardening,
  type BedNight,
  type CoverKey,
  type Crop,
  type NightVerdict,
  nightVerdict,
  otherPartVerdict,
  type UnsoundOrder,
  type VerdictInput,
} from '../../../rules/index.ts';
import type { Stage } from '../../language/understood.ts';
import { type AskedNight, hardinessThere } from './asked-night.ts';

/** One crop under one stack on the asked night. */
export interface Judged {
  readonly crop: Crop;
  readonly covers: readonly CoverKey[];
  /** Of the member's own bed, where one is meant. */
  readonly bedName?: string;
  readonly night: BedNight;
  readonly verdict: NightVerdict;
  /** Of the part that is not eaten, where growers keep the two apart. */
  readonly otherPart?: NightVerdict;
  /** What it was judged at. [0…1] */
  readonly hardeningIndex: number;
  /** The verdict if the plants have grown warm, where that was not said and would change the word. */
  readonly grownWarm?: NightVerdict;
  /** The verdict if the plants are fully hardened, where they were taken to be softer and that would change the word. */
  readonly fullyHardened?: NightVerdict;
  /** The verdict for leaves that press against a thin cover lying on them, where that would change the word. */
  readonly pressed?: NightVerdict;
  readonly hardening: AssumedHardening['basis'];
}

export interface PlantState {
  readonly hardened: boolean | undefined;
  readonly stage: Stage | undefined;
  /** Followed from the temperatures in the bed; what was said comes before it. [0…1] */
  readonly followedIndex?: number;
}

const WINDY_M_PER_S = 5;

/** What the asked night comes to for a crop under a stack; or why the covers cannot lie so. */
export function judged(
  crop: Crop,
  covers: readonly CoverKey[],
  night: AskedNight,
  state: PlantState,
): Judged | UnsoundOrder {
  const bed = night.under({ covers, canopy: { leafAreaIndex: state.stage === 'seedling' ? 0.3 : 1, leafSizeM: 0.05 } });
  return bed.kind === 'unsound' ? bed : judgedNight(crop, covers, bed, night, state);
}

/** The same for a night that is computed already. */
export function judgedNight(
  crop: Crop,
  covers: readonly CoverKey[],
  night: BedNight,
  asked: Pick<AskedNight, 'windMPerS' | 'outcomes' | 'hardeningUnder'>,
  state: PlantState,
): Judged {
  const said = saidHardening(state);
  const { followedIndex } = state;
  const { hardeningIndex, basis, otherwiseIndex } = assumedHardening(crop, {
    ...(said !== undefined && { said }),
    ...(followedIndex !== undefined && { followedIndex }),
    ...(asked.hardeningUnder && { there: asked.hardeningUnder(covers, night) }),
  });
  const inputAt = (index: number, leafTouchesCover = false): VerdictInput => {
    const learned = hardinessThere(asked, crop, index);
    return {
      crop,
      hardeningIndex: index,
      leafLowC: night.leafLowC,
      surfaceLowC: night.surfaceLowC,
      sdK: night.spread.sdK,
      circumstances: {
        leafTouchesCover,
        windyBare: covers.length === 0 && asked.windMPerS > WINDY_M_PER_S,
        matureHead: state.stage === 'mature' && crop.organ === 'head',
        smallRosette: state.stage === 'baby' && crop.organ === 'leaf',
      },
      ...(learned && { learned }),
    };
  };
  const at = (index: number, leafTouchesCover = false) => nightVerdict(inputAt(index, leafTouchesCover));
  const verdict = at(hardeningIndex);
  const otherPart = otherPartVerdict(inputAt(hardeningIndex));
  const otherwise = otherwiseIndex === undefined ? undefined : at(otherwiseIndex);
  const pressed = night.stack.touchesLeaves ? at(hardeningIndex, true) : undefined;
  return {
    crop,
    covers,
    night,
    verdict,
    ...(otherPart !== undefined && { otherPart }),
    hardeningIndex,
    hardening: basis,
    ...(otherwise !== undefined &&
      otherwise.verdict !== verdict.verdict && {
        [otherwiseIndex === 0 ? 'grownWarm' : 'fullyHardened']: otherwise,
      }),
    ...(pressed !== undefined && pressed.verdict !== verdict.verdict && { pressed }),
  };
}

function saidHardening({ hardened, stage }: PlantState): 'hardened' | 'grown-warm' | undefined {
  if (hardened !== undefined) return hardened ? 'hardened' : 'grown-warm';
  return stage === 'seedling' ? 'grown-warm' : undefined;
}
