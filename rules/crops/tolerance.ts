import { SOURCES, type SourceKey } from '../sources.ts';
import type { SourcedTolerance } from './crop.ts';
import type { CropTraits } from './crop-traits.ts';
import { HARDINESS_ROWS } from './hardiness-list.ts';
import type { Authority, HardinessRow } from './hardiness-row.ts';
import { organReading } from './organ-reading.ts';
import { plantSize } from './plant-size-table.ts';
import { setAsideReason } from './set-aside-table.ts';
import { type Spacing, spacing, startingLt50C } from './spacing.ts';
import { STARTING_PAIRS, type StartingPair } from './starting-pairs-table.ts';
import { weightedQuantileC } from './weighted-quantile.ts';

/** How much one source counts (`tolerance-weights`). */
const AUTHORITY_WEIGHT: Readonly<Record<Authority, number>> = {
  journal: 3,
  station: 2,
  growers: 2,
  weblog: 1,
  trade: 0.5,
};
/** A remembered figure counts half, and so does a plant of unknown state (`tolerance-weights`). */
const MEMORY_SHARE = 0.5;
const UNKNOWN_STATE_SHARE = 0.5;
/** The starting pair speaks like a remembered extension figure (`tolerance-weights`). */
const STARTING_WEIGHT = 1;
/** Least spreads: hardy, tender, and either where only memory or one source speaks (`tolerance-weights`). [K] */
const LEAST_SD_K = { hardy: { known: 1.5, thin: 2.5 }, tender: { known: 1, thin: 1.5 } } as const;

/** From big or small plants to ordinary ones: what a big head or a small rosette counts for tonight, undone (`circumstance-steps`). [K] */
const TO_ORDINARY_K = { big: -1.5, small: 1.5 } as const;

/** A crop spread wider than this is several varieties; no answer gets better by saying so twice (`tolerance-weights`). [K] */
const MOST_SD_K = 3.5;

export type HardeningState = 'unhardened' | 'hardened';

/** One voice on where half of the plants are lost, and how it got there. */
export interface Voice {
  /** Absent for the starting pair. */
  readonly row?: HardinessRow;
  /** As a temperature of the organ, before it was moved to the same effect and state. [°C] */
  readonly organC: number;
  /** Moves from the source's reading: thermometer, effect, unknown state, big or small plants. [K] */
  readonly thermometerK: number;
  readonly effectK: number;
  readonly stateK: number;
  readonly sizeK: number;
  /** Where it puts the median lethal temperature. [°C] */
  readonly lt50C: number;
  readonly sdK: number;
  readonly weight: number;
  /** Alive there: counted only where it pushes colder. */
  readonly bound: boolean;
}

/** How one tolerance came about. */
export interface StateDerivation {
  readonly state: HardeningState;
  readonly voices: readonly Voice[];
  readonly bounds: readonly Voice[];
  readonly halfRangeK: number;
  /** Least spread applied. [K] */
  readonly leastSdK: number;
  readonly tolerance: SourcedTolerance;
  readonly remarks: readonly string[];
}

/** How both tolerances of a crop came about. */
export interface CropDerivation {
  readonly unhardened: StateDerivation;
  readonly hardened: StateDerivation;
  readonly setAside: readonly { readonly row: HardinessRow; readonly reason: string }[];
}

/**
 * Derives both tolerances of a crop from the sources.
 *
 * @param traits - Organ, kind and rows of the crop.
 * @returns The tolerances with every row that spoke, its weight and its moves, and every row set aside.
 *
 * @remarks
 * Rows are turned into temperatures of the organ, moved to the median lethal temperature of the state and of ordinary plants, and
 * weighed by authority; the sources' weighted median is the default, half the weighted interquartile range its spread. One source
 * has one voice, shared among its rows. A plant of unknown state is taken as half hardened. A bound ("alive at") joins
 * only where it is colder than what the rest say, so it never makes a crop look more tender.
 *
 * @see tolerance-weights, starting-pairs, two-thermometers, circumstance-steps (judgement)
 */
export function derivedTolerance(traits: CropTraits): CropDerivation {
  const rows = HARDINESS_ROWS.filter((row) =>
    traits.rows.some(([crop, part]) => crop === row.crop && part === row.part),
  );
  const setAside: { row: HardinessRow; reason: string }[] = [];
  const used: HardinessRow[] = [];
  for (const row of rows) {
    const reason = setAsideReason(row) ?? unfitReason(row, traits);
    if (reason === undefined) used.push(row);
    else setAside.push({ row, reason });
  }
  const hardened = derivedState(traits, 'hardened', used);
  const pair: StartingPair = STARTING_PAIRS[traits.pair];
  if (pair.hardened === undefined) return { unhardened: { ...hardened, state: 'unhardened' }, hardened, setAside };
  const unhardened = notHardierThan(derivedState(traits, 'unhardened', used), hardened);
  return { unhardened, hardened: notTendererThan(hardened, unhardened), setAside };
}

/** Rows that no crop of this kind can use. */
function unfitReason(row: HardinessRow, traits: CropTraits): string | undefined {
  if (row.effect === 'freezing-point' && traits.spoiltByIce !== true) return 'a freezing point is no kill point here';
  if (traits.judgedBy === 'surface' && row.thermometer !== 'organ')
    return 'an outside low: the soil decides, not the air';
  return undefined;
}

function derivedState(traits: CropTraits, state: HardeningState, rows: readonly HardinessRow[]): StateDerivation {
  const pair: StartingPair = STARTING_PAIRS[traits.pair];
  const line = state === 'hardened' ? (pair.hardened ?? pair.unhardened) : pair.unhardened;
  const gaps = spacing(line);
  const fitting = rows.filter((row) => speaksOf(row, state, pair));
  const spoken = fitting.map((row) => voiceOf(row, { state, pair, gaps, rowsOfSource: sameSource(row, fitting) }));
  const values = [startingVoice(line), ...spoken.filter((voice) => !voice.bound)];
  const offered = spoken.filter((voice) => voice.bound).sort((a, b) => b.lt50C - a.lt50C);
  const bounds: Voice[] = [];
  for (const bound of offered) {
    if (bound.lt50C < quantileC([...values, ...bounds], 0.5)) bounds.push(bound);
  }
  const voices = [...values, ...bounds];
  const lt50C = quantileC(voices, 0.5);
  const halfRangeK = (quantileC(voices, 0.75) - quantileC(voices, 0.25)) / 2;
  const leastSdK = leastSd(voices, pair);
  const sdK = Math.min(MOST_SD_K, Math.max(leastSdK, Math.hypot(halfRangeK, conversionSdK(voices))));
  const sources = [...new Set<SourceKey>(voices.map((voice) => voice.row?.source ?? 'starting-pairs'))];
  const tolerance = { firstMarkC: lt50C + gaps.firstK, lt50C, killC: lt50C - gaps.killK, sdK, sources };
  return { state, voices, bounds: offered, halfRangeK, leastSdK, tolerance, remarks: [] };
}

/** Does a row say something on this state? A crop that cold does not harden has one state for all. */
function speaksOf(row: HardinessRow, state: HardeningState, pair: StartingPair): boolean {
  if (pair.hardened === undefined || row.state === 'tender') return true;
  if (row.effect === 'freezing-point') return state === 'unhardened';
  if (row.state === 'any') return state === 'hardened' || typeof row.value === 'number';
  return row.state === state;
}

function sameSource(row: HardinessRow, rows: readonly HardinessRow[]): number {
  return rows.filter((other) => other.source === row.source).length;
}

interface VoiceContext {
  readonly state: HardeningState;
  readonly pair: StartingPair;
  readonly gaps: Spacing;
  readonly rowsOfSource: number;
}

function voiceOf(row: HardinessRow, context: VoiceContext): Voice {
  const reading = organReading(row);
  const effectK = reading.aliveThere ? boundMoveK(row, context.gaps) : effectMoveK(row, context.gaps);
  const unknown = row.state === 'any' && row.effect !== 'freezing-point' && context.pair.hardened !== undefined;
  const stateK = unknown && !reading.aliveThere ? halfHardenedMoveK(context) : 0;
  const size = plantSize(row);
  const sizeK = size === undefined ? 0 : TO_ORDINARY_K[size];
  const weight =
    (AUTHORITY_WEIGHT[row.authority] *
      (SOURCES[row.source].standing === 'READ' ? 1 : MEMORY_SHARE) *
      (unknown ? UNKNOWN_STATE_SHARE : 1)) /
    context.rowsOfSource;
  return {
    row,
    organC: reading.organC,
    thermometerK: reading.stepK,
    effectK,
    stateK,
    sizeK,
    lt50C: reading.organC + effectK + stateK + sizeK,
    sdK: reading.sdK,
    weight,
    bound: reading.aliveThere,
  };
}

/** From what the source saw to where half are lost. What growers call dead outdoors already lies near that. */
function effectMoveK(row: HardinessRow, gaps: Spacing): number {
  switch (row.effect) {
    case 'first-damage':
    case 'freezing-point':
      return -gaps.firstK;
    case 'lt50':
      return 0;
    case 'kill':
      return row.authority === 'growers' || row.authority === 'weblog' ? 0 : gaps.killK;
  }
}

/** A plant alive at a temperature is lost below it, one unmarked there keeps its whole distance. */
function boundMoveK(row: HardinessRow, gaps: Spacing): number {
  return row.effect === 'first-damage' ? -gaps.firstK : 0;
}

/** From a half hardened plant to either state: half of what the starting pair gains by hardening. */
function halfHardenedMoveK(context: VoiceContext): number {
  const { unhardened, hardened = unhardened } = context.pair;
  const halfGainK = (startingLt50C(unhardened) - startingLt50C(hardened)) / 2;
  return context.state === 'hardened' ? -halfGainK : halfGainK;
}

function startingVoice(line: readonly [number, number]): Voice {
  const lt50C = startingLt50C(line);
  return {
    organC: lt50C,
    thermometerK: 0,
    effectK: 0,
    stateK: 0,
    sizeK: 0,
    lt50C,
    sdK: 0,
    weight: STARTING_WEIGHT,
    bound: false,
  };
}

function quantileC(voices: readonly Voice[], share: number): number {
  return weightedQuantileC(
    voices.map((voice) => ({ valueC: voice.lt50C, weight: voice.weight })),
    share,
  );
}

/** Root mean square of the doubt that the thermometers' places add. */
function conversionSdK(voices: readonly Voice[]): number {
  const weight = voices.reduce((sum, voice) => sum + voice.weight, 0);
  return Math.sqrt(voices.reduce((sum, voice) => sum + voice.weight * voice.sdK ** 2, 0) / weight);
}

function leastSd(voices: readonly Voice[], pair: StartingPair): number {
  const sources = new Set(voices.flatMap((voice) => voice.row?.source ?? []));
  const read = [...sources].some((source) => SOURCES[source].standing === 'READ');
  const least = pair.hardened === undefined ? LEAST_SD_K.tender : LEAST_SD_K.hardy;
  return sources.size > 1 && read ? least.known : least.thin;
}

/** Hardening never makes a plant more tender: where sources say so, the unhardened limit is raised, the cautious side. */
function notHardierThan(unhardened: StateDerivation, hardened: StateDerivation): StateDerivation {
  const raiseK = hardened.tolerance.lt50C - unhardened.tolerance.lt50C;
  if (!(raiseK > 0)) return unhardened;
  const { firstMarkC, lt50C, killC, sdK, sources } = unhardened.tolerance;
  const tolerance = { firstMarkC: firstMarkC + raiseK, lt50C: lt50C + raiseK, killC: killC + raiseK, sdK, sources };
  return { ...unhardened, tolerance, remarks: ['raised to the hardened limit'] };
}

/** The wider spacing of a hardened plant must not put its first mark above that of an unhardened one. */
function notTendererThan(hardened: StateDerivation, unhardened: StateDerivation): StateDerivation {
  const firstMarkC = Math.min(hardened.tolerance.firstMarkC, unhardened.tolerance.firstMarkC);
  if (firstMarkC === hardened.tolerance.firstMarkC) return hardened;
  return {
    ...hardened,
    tolerance: { ...hardened.tolerance, firstMarkC },
    remarks: ['first mark held at the unhardened one'],
  };
}
