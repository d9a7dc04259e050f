import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { SETTING_NAMES } from '../../../bot/config.ts';

/** So that a developer's own `.env` has no say in tests. */
const NOTHING_SET = Object.fromEntries(SETTING_NAMES.map((name) => [name, '']));
const COMPILED = new URL('../../../dist/', import.meta.url);

/** A program of ours in a process of its own, run from what `npm run check` has compiled. */
export class Child {
  readonly ended: Promise<number | null>;
  readonly #process: ChildProcess;
  #output = '';
  #complaints = '';

  constructor(program: string, args: readonly string[], environment: Readonly<Record<string, string>> = {}) {
    const file = fileURLToPath(new URL(program, COMPILED));
    if (!existsSync(file)) throw new Error(`${program} is not compiled; "npm run check" does it.`);
    // Node 22 warns that its own SQLite is an experiment.
    const flags = ['--disable-warning=ExperimentalWarning'];
    this.#process = spawn(process.execPath, [...flags, file, ...args], {
      env: { ...process.env, ...NOTHING_SET, ...environment },
    });
    this.#process.stdout?.setEncoding('utf8').on('data', (text: string) => {
      this.#output += text;
    });
    this.#process.stderr?.setEncoding('utf8').on('data', (text: string) => {
      this.#complaints += text;
    });
    this.ended = new Promise((resolve) => this.#process.once('close', resolve));
  }

  /** Complete lines written so far. */
  get lines(): readonly string[] {
    return this.#output.split('\n').slice(0, -1);
  }

  get complaints(): string {
    return this.#complaints;
  }

  /** Waits for a line; false if the process ends without it. */
  says(line: string): Promise<boolean> {
    return this.#waitUntil(() => this.lines.includes(line));
  }

  saysAnything(): Promise<boolean> {
    return this.saysMoreThan(0);
  }

  saysMoreThan(lines: number): Promise<boolean> {
    return this.#waitUntil(() => this.lines.length > lines);
  }

  async #waitUntil(isSo: () => boolean): Promise<boolean> {
    let running = true;
    const ended = this.ended.then(() => {
      running = false;
    });
    while (running && !isSo()) await Promise.race([ended, pause(5)]);
    return isSo();
  }

  /** Asks it to end, as a service manager does. */
  terminate(): void {
    this.#process.kill('SIGTERM');
  }

  async kill(): Promise<void> {
    this.#process.kill('SIGKILL');
    await this.ended;
  }
}
