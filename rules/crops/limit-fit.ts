import type { SourceKey } from '../sources.ts';
import { factorize, solvedColumn } from './cholesky.ts';
import {
  ALL_GAPS_SD_K,
  CROP_SD_K,
  ICE_BELOW_C,
  ICE_SD_K,
  KIND_SD_K,
  SOURCE_SD_K,
  type Strength,
  VARIETY_SD_K,
  WARM_FOLLOWS_FRACTION,
  WARM_GAP_FRACTION,
} from './limit-priors-table.ts';
import { spacing, startingLt50C } from './spacing.ts';
import { type PairKey, STARTING_PAIRS, type StartingPair } from './starting-pairs-table.ts';
import type { Statement } from './statement.ts';
import { pullOf } from './statement-likelihood.ts';
import { type Subject, subjectKey } from './subjects.ts';

/** An organ with all that is said of it. */
export interface Told {
  readonly subject: Subject;
  readonly statements: readonly Statement[];
}

/** A limit as believed. */
export interface BelievedLimit {
  readonly meanC: number;
  readonly sdK: number;
}

/** What each statement of an organ moved at one of its limits. */
export interface LimitFit {
  /** First mark or half lost of an organ at a hardening of 0…1. */
  limit(subject: Subject, about: Statement['about'], hardeningIndex: number): BelievedLimit;
  /** How far a statement pulls a limit, to first order: without it the limit would lie so much the other way. [K] */
  movedK(statement: Statement, of: Subject, about: Statement['about'], hardeningIndex: number): number;
}

/** Share of an unknown in a limit. */
type Term = readonly [unknown: number, factor: number];

interface Linear {
  readonly baseC: number;
  readonly terms: readonly Term[];
}

interface Fact extends Linear {
  readonly says: Pick<Statement, 'limit' | 'organC'>;
  readonly sdK: number;
}

/** Unknowns of one organ or one kind: shift when hardened, further shift when grown warm, shift of the gap. */
interface Shifts {
  readonly cold: number;
  readonly warm: number;
  readonly gap: number;
}

const MOST_ROUNDS = 25;
const SETTLED_K = 1e-6;

/**
 * Fits first mark and half lost of all organs to all statements at once: starting pair of the kind, a shift of the kind, a shift of
 * the crop, and one offset for each source. The most probable values and, from the curvature there, their spread (a Laplace
 * approximation); the problem has one summit but for the few statements that are about something else.
 *
 * @param told - Organs with their statements; organs that the same rows speak of are told once.
 * @see limit-statements (judgement)
 */
export function fitLimits(told: readonly Told[]): LimitFit {
  const unknowns = new Unknowns(told);
  const facts = once(told).flatMap(({ subject, statements }) => [
    ...statements.map((statement) => factOf(statement, subject, unknowns)),
    ...(statements.length === 0 ? [] : iceFacts(subject, unknowns)),
  ]);
  const values = new Float64Array(unknowns.sdsK.length);
  let factor = new Float64Array(0);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const step = newtonStep(facts, unknowns.sdsK, values);
    factor = step.factor;
    for (const [index, byK] of step.byK.entries()) values[index] = (values[index] ?? 0) + byK;
    if (step.byK.every((byK) => Math.abs(byK) < SETTLED_K)) break;
  }
  return fitAt(unknowns, values, factor);
}

function fitAt(unknowns: Unknowns, values: Float64Array, factor: Float64Array): LimitFit {
  const spreadOf = (linear: Linear) => solvedColumn(factor, asRow(linear.terms, values.length));
  return {
    limit(subject, about, hardeningIndex) {
      const linear = unknowns.linear(subject, about, hardeningIndex);
      const variance = weighted(linear.terms, spreadOf(linear)) + unknowns.unseenVarianceK2(subject);
      return { meanC: at(linear, values), sdK: Math.sqrt(variance) };
    },
    movedK(statement, of, about, hardeningIndex) {
      const fact = factOf(statement, of, unknowns);
      const { slopePerK } = pullOf(fact.says, at(fact, values), fact.sdK);
      return slopePerK * weighted(fact.terms, spreadOf(unknowns.linear(of, about, hardeningIndex)));
    },
  };
}

/** All that is not known, crops first: what concerns one crop alone keeps the matrix nearly empty. */
class Unknowns {
  readonly sdsK: number[] = [];
  readonly #crops = new Map<string, Shifts>();
  readonly #kinds = new Map<PairKey, Shifts>();
  readonly #sources = new Map<SourceKey, number>();
  readonly #allGaps: number;

  constructor(told: readonly Told[]) {
    for (const { subject, statements } of once(told)) {
      if (statements.length > 0) this.#crops.set(subjectKey(subject), this.#shifts(CROP_SD_K[strength(subject)]));
    }
    for (const { subject } of told) {
      if (!this.#kinds.has(subject.pair)) this.#kinds.set(subject.pair, this.#shifts(KIND_SD_K[strength(subject)]));
    }
    for (const { source } of told.flatMap(({ statements }) => statements)) {
      if (!this.#sources.has(source)) this.#sources.set(source, this.#unknown(SOURCE_SD_K));
    }
    this.#allGaps = this.#unknown(ALL_GAPS_SD_K);
  }

  /** A limit from the starting pair and the shifts of its kind and its crop. */
  linear(subject: Subject, about: Statement['about'], hardeningIndex: number): Linear {
    const { unhardened, hardened = unhardened }: StartingPair = STARTING_PAIRS[subject.pair];
    const cold = subject.hardens ? hardeningIndex : 1;
    const warm = 1 - cold;
    const startC = (line: typeof unhardened) => startingLt50C(line) + (about === 'mark' ? spacing(line).firstK : 0);
    const gap = about === 'mark' ? cold + WARM_GAP_FRACTION * warm : 0;
    const kind = this.#kinds.get(subject.pair);
    const own = this.#crops.get(subjectKey(subject));
    const terms = [kind, own].flatMap((shifts): Term[] =>
      shifts === undefined
        ? []
        : [
            [shifts.cold, cold + WARM_FOLLOWS_FRACTION * warm],
            [shifts.warm, warm],
            [shifts.gap, gap],
          ],
    );
    if (subject.hardens) terms.push([this.#allGaps, gap]);
    return {
      baseC: warm * startC(unhardened) + cold * startC(hardened),
      terms: terms.filter(([, factor]) => factor !== 0),
    };
  }

  /** The offset of a source; `undefined` for a source that the fit has not heard. */
  offsetOf(source: SourceKey): number | undefined {
    return this.#sources.get(source);
  }

  /** Doubt in a crop that no statement speaks of. [K²] */
  unseenVarianceK2(subject: Subject): number {
    return this.#crops.has(subjectKey(subject)) ? 0 : CROP_SD_K[strength(subject)].coldK ** 2;
  }

  #shifts({ coldK, warmK, gapK }: (typeof CROP_SD_K)[Strength]): Shifts {
    // A crop that does not harden has one state: its shift when warm is never used and must not be without bounds.
    return { cold: this.#unknown(coldK), warm: this.#unknown(warmK === 0 ? 1 : warmK), gap: this.#unknown(gapK) };
  }

  #unknown(sdK: number): number {
    return this.sdsK.push(sdK) - 1;
  }
}

function once(told: readonly Told[]): readonly Told[] {
  return [...new Map(told.map((one) => [subjectKey(one.subject), one])).values()];
}

/** Which column of the priors an organ goes by. */
export function strength({ hardens, judgedBy }: Subject): Strength {
  if (judgedBy === 'surface') return 'soil';
  return hardens ? 'hardy' : 'tender';
}

/** Error of a statement: its thermometer and night, and how far one report lies from the crop at large. [K] */
export function statementSdK({ sdK, softFactor }: Statement, subject: Subject): number {
  return Math.hypot(sdK, VARIETY_SD_K[strength(subject)]) * softFactor;
}

function factOf(statement: Statement, subject: Subject, unknowns: Unknowns): Fact {
  const { baseC, terms } = unknowns.linear(subject, statement.about, statement.hardeningIndex);
  const offset = unknowns.offsetOf(statement.source);
  return {
    says: statement,
    baseC,
    terms: offset === undefined ? terms : [...terms, [offset, -1]],
    sdK: statementSdK(statement, subject),
  };
}

/** No mark without ice, in either state. */
function iceFacts(subject: Subject, unknowns: Unknowns): readonly Fact[] {
  const says = { limit: 'colder', organC: ICE_BELOW_C } as const;
  return [0, 1].map((index) => ({ says, sdK: ICE_SD_K, ...unknowns.linear(subject, 'mark', index) }));
}

/** Towards the summit of prior and statements together, by their slopes and curvatures. */
function newtonStep(facts: readonly Fact[], sdsK: readonly number[], values: Float64Array) {
  const size = sdsK.length;
  const factor = new Float64Array(size * size);
  const slopes = new Float64Array(size);
  for (const [index, sdK] of sdsK.entries()) {
    factor[index * size + index] = 1 / sdK ** 2;
    slopes[index] = -(values[index] ?? 0) / sdK ** 2;
  }
  for (const fact of facts) {
    const { slopePerK, curvePerK2 } = pullOf(fact.says, at(fact, values), fact.sdK);
    for (const [left, share] of fact.terms) {
      slopes[left] = (slopes[left] ?? 0) + slopePerK * share;
      for (const [right, other] of fact.terms) {
        const cell = left * size + right;
        factor[cell] = (factor[cell] ?? 0) + curvePerK2 * share * other;
      }
    }
  }
  factorize(factor, size);
  return { factor, byK: solvedColumn(factor, slopes) };
}

function at({ baseC, terms }: Linear, values: Float64Array): number {
  return baseC + weighted(terms, values);
}

function weighted(terms: readonly Term[], values: Float64Array): number {
  return terms.reduce((sum, [index, factor]) => sum + factor * (values[index] ?? 0), 0);
}

function asRow(terms: readonly Term[], size: number): Float64Array {
  const row = new Float64Array(size);
  for (const [index, factor] of terms) row[index] = (row[index] ?? 0) + factor;
  return row;
}
