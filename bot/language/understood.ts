import type { AdviceKey, CautionKey, CoverKey, Exposure, WallKey } from '../../rules/index.ts';

/** What a question can be about. */
export const INTENTS = [
  'survive',
  'how-cold',
  'what-cover',
  'which-crops',
  /** A night or the week as a whole, no crop or low named: "do I need to cover tonight?" */
  'outlook',
  'compare-covers',
  'vent',
  'close',
  'pick',
  'season',
  'caution',
  /** What no night's figures answer: "the fleece is frozen to my lettuce". */
  'advice',
  'unknown-crop',
  'decline',
] as const;

export type Intent = (typeof INTENTS)[number];

export const WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'] as const;

/** The night or day asked about. A weekday means the night that begins on it; `week` the nights to come. */
export const WHENS = [
  'now',
  'today',
  'morning',
  'tonight',
  'tomorrow-night',
  'last-night',
  ...WEEKDAYS,
  'week',
] as const;

export type When = (typeof WHENS)[number];

export const STAGES = ['seedling', 'growing', 'mature', 'baby'] as const;

export type Stage = (typeof STAGES)[number];

/** What the program took for granted, to be said in the answer. */
export const ASSUMPTIONS = [
  'unit-preferred',
  'unit-sensible',
  'colder-end',
  'colder-of-several',
  'crop-chosen',
  'spelling',
  'tunnel-is-low',
  'plastic-on-hoops',
  'greenhouse-as-high-tunnel',
  'tomorrow-as-night',
  'felt-as-air',
] as const;

export type Assumption = (typeof ASSUMPTIONS)[number];

/** The one thing to ask back for. `crop-choice`: a word that is several crops, see `Understood.choices`. */
export const MISSING = ['crop', 'crop-choice', 'temperature', 'covers', 'place'] as const;

export type Missing = (typeof MISSING)[number];

/** Why a text cannot be answered as asked. `impossible-stack`: `covers` stands in the order said; rules say what is wrong with it. */
export const PROBLEMS = [
  'empty',
  'too-long',
  'off-topic',
  'not-english',
  'impossible-cold',
  'impossible-heat',
  'unknown-cover',
  'impossible-stack',
] as const;

export type Problem = (typeof PROBLEMS)[number];

export interface SaidCrop {
  readonly id: string;
  /** As typed, for saying it back: plain text that doors must escape. */
  readonly said: string;
}

/** What a question leaves open, so that both readings are answered. */
export const DOUBTS = ['covers', 'low'] as const;

export type Doubt = (typeof DOUBTS)[number];

export type Unit = 'F' | 'C';

/** How the unit came about: typed, the member's or locale's, or the only one in which the value makes sense. */
export type UnitReason = 'said' | 'preferred' | 'sensible';

export interface SaidTemperature {
  /** In `unit`; of a range the colder end. */
  readonly value: number;
  readonly unit: Unit;
  readonly unitReason: UnitReason;
  /** Both ends, colder first, in `unit`. */
  readonly range?: readonly [number, number];
  /** How long it stays that cold, when said. [h] */
  readonly hours?: number;
}

export interface SaidSky {
  readonly cloud?: 'clear' | 'half' | 'overcast';
  readonly wind?: 'calm' | 'light' | 'breezy' | 'windy';
  /** In figures. [m s⁻¹] */
  readonly windMPerS?: number;
  readonly gustMPerS?: number;
  /** Snow lies or falls. */
  readonly snow?: boolean;
}

/** How a garden lies; or that the bed is under a tree. */
export type SaidExposure = Exposure | 'tree';

/** What is done before the night besides covering, and what stands open. */
export interface SaidMeasures {
  /** Water in vessels, in all. [kg] */
  readonly waterKg?: number;
  /** Set out warm at dusk. [°C] */
  readonly waterAtDuskC?: number;
  readonly heatWPerM2?: number;
  readonly opening?: 'open' | 'end' | 'ajar' | 'hole';
  readonly soil?: 'watered' | 'dry' | 'raised-bed' | 'bench';
}

/** Snow that is spoken of, and where it lies. */
export interface SaidSnow {
  readonly where: 'on-plants' | 'on-ground' | 'falling';
  readonly depthM?: number;
  readonly isFresh?: boolean;
  readonly isWet?: boolean;
}

/** Which of the member's own beds are meant. */
export interface SaidBeds {
  /** "my chard", "our tunnel", "the frame". */
  readonly mine: boolean;
  /** "bed 3". */
  readonly numbers: readonly number[];
  /** Of the names that the caller gave in the context. */
  readonly named: readonly string[];
}

/** What was read from one question. A slot that was not said is absent; lists are empty. */
export interface Understood {
  readonly intent: Intent;
  /** What was asked of the plant, when `intent` is `unknown-crop`; otherwise the intent again. */
  readonly asked: Intent;
  readonly crops: readonly SaidCrop[];
  /** Plants that are not in the table, as typed. */
  readonly unknownCrops: readonly string[];
  /** The low asked about, from `temperature`. [°C] */
  readonly lowC?: number;
  readonly temperature?: SaidTemperature;
  /** Outside to inside; absent when not said, empty when said to be bare. */
  readonly covers?: readonly CoverKey[];
  /** What lies over each crop, where the text tells it of each; `covers` is then absent. */
  readonly byCrop?: readonly { readonly cropId: string; readonly covers: readonly CoverKey[] }[];
  /** What lies there if the covers are off that may or may not be on; present only where the text leaves it open. */
  readonly coversOtherwise?: readonly CoverKey[];
  /** The other, warmer temperature where the text leaves open which of two is the night's low. */
  readonly lowOtherwise?: { readonly lowC: number; readonly temperature: SaidTemperature };
  /** The stacks compared, in the order typed; an empty stack is the bare bed. */
  readonly options?: readonly (readonly CoverKey[])[];
  /** Things laid over plants that the table does not hold ("cardboard"), as typed. */
  readonly unknownCovers: readonly string[];
  readonly walls?: WallKey;
  readonly when?: When;
  readonly hardened?: boolean;
  readonly stage?: Stage;
  readonly sky?: SaidSky;
  readonly snow?: SaidSnow;
  readonly measures?: SaidMeasures;
  /** What lies at hand to be laid on; not on the bed. */
  readonly shed?: readonly CoverKey[];
  /** How the garden lies. */
  readonly exposure?: SaidExposure;
  /** What was told and has no part in the answer, in words to say back. */
  readonly unused?: readonly string[];
  readonly beds: SaidBeds;
  /** Words of weight that were misspelt, as they were read: "without". */
  readonly readAs: readonly string[];
  readonly cautionTopics: readonly CautionKey[];
  /** Which advice answers it best, where no place is known. */
  readonly advice?: AdviceKey;
  /** Of `pick`: whether to pick before a night to come, not when to pick after one. */
  readonly beforeNight?: boolean;
  /** Crop ids to choose from when `missing` is `crop-choice`. */
  readonly choices: readonly string[];
  readonly assumptions: readonly Assumption[];
  readonly missing?: Missing;
  readonly problem?: Problem;
}
