/** A map that forgets what was used least recently once it holds more than `limit` entries. */
export class BoundedMap<Key, Value> {
  readonly #entries = new Map<Key, Value>();
  readonly #limit: number;

  constructor(limit: number) {
    this.#limit = limit;
  }

  get(key: Key): Value | undefined {
    const value = this.#entries.get(key);
    if (value === undefined) return undefined;
    this.#entries.delete(key);
    this.#entries.set(key, value);
    return value;
  }

  set(key: Key, value: Value): void {
    this.#entries.delete(key);
    this.#entries.set(key, value);
    if (this.#entries.size <= this.#limit) return;
    const [oldest] = this.#entries.keys();
    if (oldest !== undefined) this.#entries.delete(oldest);
  }

  delete(key: Key): void {
    this.#entries.delete(key);
  }

  get size(): number {
    return this.#entries.size;
  }
}
