import type {
  BedLearning,
  CoverKey,
  CropId,
  Exposure,
  FrameBuild,
  MulchKind,
  SeenOutcome,
  SoilKind,
} from '../../rules/index.ts';

/** A garden as a night is worked out for it, whether it is a member's, a sample, or typed on a command line. */
export interface Garden {
  readonly name: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** Above the sea, where known. [m] */
  readonly elevationM?: number;
  readonly exposure: Exposure;
  /** Height of what hides the sun, round the compass from north through east; absent where it is open. [°] */
  readonly horizonDeg?: readonly number[];
  /** IANA name. */
  readonly timeZone: string;
  readonly beds: readonly GardenBed[];
  /** Spare covers at hand; a key stands as often as there are pieces. */
  readonly shed: readonly CoverKey[];
}

export interface GardenBed {
  readonly name: string;
  readonly plantings: readonly GardenPlanting[];
  /** From outside to inside. */
  readonly covers: readonly CoverKey[];
  readonly frame?: FrameBuild;
  readonly soilKind?: SoilKind;
  readonly mulch?: MulchKind;
  /** What its thermometers have taught; absent where nothing has been read there. */
  readonly learned?: BedLearning;
}

export const STAGES = ['just-set-out', 'growing', 'grown'] as const;

export interface GardenPlanting {
  readonly cropId: CropId;
  readonly stage: (typeof STAGES)[number];
  /** 0 grown warm … 1 fully hardened; assumed from the season when not known. */
  readonly hardeningIndex?: number;
  /** How the crop came through earlier nights here and in the club's gardens. */
  readonly outcomes?: readonly SeenOutcome[];
}
