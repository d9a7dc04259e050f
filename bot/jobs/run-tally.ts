import { MS_PER_S } from '../../rules/index.ts';
import type { Claim } from '../store/port/deliveries.ts';
import type { Work } from './work.ts';

/** A post that comes later after its hour counts as late (judgement). [s] */
export const LATE_AFTER_S = 300;

/** What a run came to, as it stands in the log. */
export interface RunFigures {
  /** That were told, or looked at again. */
  readonly channels: number;
  /** Posts, direct messages among them. */
  readonly sent: number;
  /** Posts that came to nothing. */
  readonly failed: number;
  readonly late: number;
  /** Of which a forecast was asked for. */
  readonly cells: number;
  readonly seconds: number;
}

const OF_A_CHANNEL: ReadonlySet<Work['kind']> = new Set(['warning', 'check', 'late', 'opening']);

/** Counts what is done between one rest and the next. */
export class RunTally {
  readonly #channels = new Set<string>();
  readonly #cells = new Set<string>();
  #sent = 0;
  #failed = 0;
  #late = 0;
  #fromMs = Number.POSITIVE_INFINITY;
  #toMs = Number.NEGATIVE_INFINITY;

  worked(work: Work, { placeId }: Claim, from: Date, to: Date): void {
    if (OF_A_CHANNEL.has(work.kind)) this.#channels.add(placeId);
    if (work.kind === 'gather' || work.kind === 'hardening') return;
    this.#fromMs = Math.min(this.#fromMs, from.getTime());
    this.#toMs = Math.max(this.#toMs, to.getTime());
  }

  sent({ dueAt }: Claim, at: Date): void {
    this.#sent += 1;
    if (at.getTime() - dueAt.getTime() > LATE_AFTER_S * MS_PER_S) this.#late += 1;
  }

  failed(): void {
    this.#failed += 1;
  }

  asked(cellId: string): void {
    this.#cells.add(cellId);
  }

  /** The figures, and all begins anew; undefined while no post was worked on, as when forecasts are fetched for a run to come. */
  ended(): RunFigures | undefined {
    if (this.#toMs < this.#fromMs) return undefined;
    const seconds = Math.round((this.#toMs - this.#fromMs) / 100) / 10;
    const [channels, cells] = [this.#channels.size, this.#cells.size];
    const figures = { channels, sent: this.#sent, failed: this.#failed, late: this.#late, cells, seconds };
    this.#channels.clear();
    this.#cells.clear();
    this.#sent = this.#failed = this.#late = 0;
    this.#fromMs = Number.POSITIVE_INFINITY;
    this.#toMs = Number.NEGATIVE_INFINITY;
    return figures;
  }
}
