import { Writable } from 'node:stream';
import type { interceptors } from 'undici';

/** The port behind undici's cache interceptor; another store can take its place. */
export type AnswerStore = NonNullable<NonNullable<Parameters<typeof interceptors.cache>[0]>['store']>;
type Key = Parameters<AnswerStore['get']>[0];
type Value = Parameters<AnswerStore['createWriteStream']>[1];
type Stored = NonNullable<Awaited<ReturnType<AnswerStore['get']>>>;

interface Entry {
  readonly value: Value;
  readonly body: Buffer;
}

export interface AnswerCacheOptions {
  readonly maxBytes: number;
  /**
   * How long an answer with a Last-Modified is kept after it went stale, so that the service can say "not modified". [ms]
   */
  readonly keepStaleMs: number;
  /** False where the service dates answers into the future: revalidation then names our own fetch time instead. */
  readonly trustLastModified: boolean;
  /** By the clock that undici dates answers with. [ms] */
  readonly nowMs?: () => number;
}

/** However long a service says: forecasts are renewed several times a day. [ms] (judgement) */
const LONGEST_FRESH_MS = 6 * 3_600_000;
const LONGEST_KEPT_MS = 48 * 3_600_000;

/**
 * Answers in memory, those used longest ago dropped first. undici's own memory store does not shrink when every address is a
 * different one, as with gardens.
 */
export class AnswerCache implements AnswerStore {
  readonly #entries = new Map<string, Entry>();
  readonly #options: AnswerCacheOptions;
  #bytes = 0;

  constructor(options: AnswerCacheOptions) {
    this.#options = options;
  }

  get bytes(): number {
    return this.#bytes;
  }

  get(key: Key): Stored | undefined {
    const name = nameOf(key);
    const entry = this.#entries.get(name);
    if (entry === undefined || !variantFits(entry.value, key)) return undefined;
    // The clock ran ahead and was put right: nobody knows how old this is.
    if (entry.value.cachedAt > (this.#options.nowMs ?? Date.now)()) {
      this.#drop(name);
      return undefined;
    }
    this.#entries.delete(name);
    this.#entries.set(name, entry);
    const { cacheControlDirectives = {}, ...value } = entry.value;
    return { ...value, cacheControlDirectives, body: entry.body };
  }

  /** Is there an answer for which nobody need be asked? */
  isFresh(key: Key): boolean {
    const entry = this.#entries.get(nameOf(key));
    const nowMs = (this.#options.nowMs ?? Date.now)();
    return entry !== undefined && entry.value.cachedAt <= nowMs && nowMs < entry.value.staleAt;
  }

  createWriteStream(key: Key, value: Value): Writable {
    const chunks: Buffer[] = [];
    return new Writable({
      write(chunk: Buffer | string, _encoding, done) {
        chunks.push(Buffer.from(chunk));
        done();
      },
      final: (done) => {
        this.#keep(nameOf(key), { value: capped(this.#adjusted(value)), body: Buffer.concat(chunks) });
        done();
      },
    });
  }

  delete(key: Key): void {
    this.#drop(nameOf(key));
  }

  #keep(name: string, entry: Entry): void {
    this.#drop(name);
    if (entry.body.byteLength > this.#options.maxBytes) return;
    this.#entries.set(name, entry);
    this.#bytes += entry.body.byteLength;
    for (const oldest of this.#entries.keys()) {
      if (this.#bytes <= this.#options.maxBytes) break;
      this.#drop(oldest);
    }
  }

  #drop(name: string): void {
    const entry = this.#entries.get(name);
    if (entry === undefined) return;
    this.#bytes -= entry.body.byteLength;
    this.#entries.delete(name);
  }

  #adjusted(value: Value): Value {
    const { 'last-modified': lastModified, ...others } = value.headers;
    if (lastModified === undefined) return value;
    const deleteAt = Math.max(value.deleteAt, value.staleAt + this.#options.keepStaleMs);
    return this.#options.trustLastModified ? { ...value, deleteAt } : { ...value, deleteAt, headers: others };
  }
}

function capped(value: Value): Value {
  const staleAt = Math.min(value.staleAt, value.cachedAt + LONGEST_FRESH_MS);
  return { ...value, staleAt, deleteAt: Math.min(value.deleteAt, value.cachedAt + LONGEST_KEPT_MS) };
}

function nameOf(key: Key): string {
  return `${key.method} ${key.origin}${key.path}`;
}

/** Vary: the stored answer fits only the request headers that it was given for. */
function variantFits(value: Value, key: Key): boolean {
  return Object.entries(value.vary ?? {}).every(
    ([name, wanted]) => String(key.headers?.[name] ?? '') === String(wanted ?? ''),
  );
}
