import { Counter, collectDefaultMetrics, Histogram, Registry } from 'prom-client';
import { LATE_AFTER_S } from '../jobs/run-tally.ts';
import type { Work } from '../jobs/work.ts';

/** Around Discord's limit of three seconds. [s] */
const ANSWER_BUCKETS_S = [0.005, 0.02, 0.05, 0.1, 0.3, 0.7, 1.5, 3, 10, 60];
const STORE_BUCKETS_S = [0.001, 0.005, 0.02, 0.1, 0.5, 2, 10];
/** Around what still counts as in time. [s] */
const DELAY_BUCKETS_S = [5, 30, 60, 120, 300, 600, 1800, 3600, 10_800];

export type CommandOutcome = 'answered' | 'refused' | 'failed';
export type NightlyOutcome = 'done' | 'late' | 'postponed' | 'failed' | 'missed';

/**
 * What a host's monitoring may read. Labels come from short lists of our own: never a member, a channel, a place or
 * anything that was typed.
 */
export class Metrics {
  readonly #registry = new Registry();
  readonly #commands = this.#counter('commands_total', 'Commands and buttons, by name and outcome.', [
    'command',
    'outcome',
  ]);
  readonly #answerS = this.#histogram('answer_seconds', 'Working out an answer.', ['command'], ANSWER_BUCKETS_S);
  readonly #nightly = this.#counter('nightly_total', 'Work that runs by itself, by kind and outcome.', [
    'work',
    'outcome',
  ]);
  readonly #delayS = this.#histogram(
    'nightly_delay_seconds',
    'From due, or from when it was put off to, to done.',
    ['work'],
    DELAY_BUCKETS_S,
  );
  readonly #requests = this.#counter('requests_total', 'Requests that went out, by server and outcome.', [
    'to',
    'outcome',
  ]);
  readonly #operations = this.#counter('store_operations_total', 'Store operations, by name and outcome.', [
    'operation',
    'outcome',
  ]);
  readonly #storeS = this.#histogram('store_seconds', 'Store operations.', ['operation'], STORE_BUCKETS_S);

  constructor() {
    collectDefaultMetrics({ register: this.#registry });
  }

  get contentType(): string {
    return this.#registry.contentType;
  }

  /** Everything, in the text form that Prometheus reads. */
  text(): Promise<string> {
    return this.#registry.metrics();
  }

  commandDone(command: string, outcome: CommandOutcome, seconds: number): void {
    this.#commands.inc({ command, outcome });
    this.#answerS.observe({ command }, seconds);
  }

  operationDone(operation: string, outcome: string, seconds: number): void {
    this.#operations.inc({ operation, outcome });
    this.#storeS.observe({ operation }, seconds);
  }

  requestDone(to: string, outcome: string): void {
    this.#requests.inc({ to, outcome });
  }

  /** @param delayS - From due to done. */
  nightlyDone(work: Work['kind'], delayS: number): void {
    this.#nightly.inc({ work, outcome: delayS > LATE_AFTER_S ? 'late' : 'done' });
    this.#delayS.observe({ work }, Math.max(0, delayS));
  }

  nightlyNotDone(work: Work['kind'], outcome: Exclude<NightlyOutcome, 'done' | 'late'>): void {
    this.#nightly.inc({ work, outcome });
  }

  #counter(name: string, help: string, labelNames: string[]): Counter {
    return new Counter({ name: `eiderdown_${name}`, help, labelNames, registers: [this.#registry] });
  }

  #histogram(name: string, help: string, labelNames: string[], buckets: number[]): Histogram {
    return new Histogram({ name: `eiderdown_${name}`, help, labelNames, buckets, registers: [this.#registry] });
  }
}
