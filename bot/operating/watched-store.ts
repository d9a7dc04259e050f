import type { Clock } from '../ground/clock.ts';
import { type Work, workOf } from '../jobs/work.ts';
import type { Deliveries, DeliveryKey } from '../store/port/deliveries.ts';
import type { Store } from '../store/store.ts';
import { StoreProblem } from '../store/store-problem.ts';
import type { Metrics } from './metrics.ts';

const PORTS = [
  'members',
  'sites',
  'beds',
  'plantings',
  'shed',
  'channels',
  'deliveries',
  'readings',
  'predictions',
  'outcomes',
  'covered',
  'weather',
] as const satisfies readonly (keyof Store)[];

/** The same store, its operations counted and timed, and what the ledger says of the nightly work counted too. */
export function watchedStore(store: Store, metrics: Metrics, clock: Clock): Store {
  const ports = PORTS.map((name) => [name, watchedPort(store[name], `${name}.`, metrics)] as const);
  const byName = Object.fromEntries(ports) as Pick<Store, (typeof PORTS)[number]>;
  const deliveries = countedDeliveries(byName.deliveries, metrics, clock);
  const own: Partial<Store> = { ...byName, deliveries };
  const rest = watchedPort(store, '', metrics);
  return new Proxy(rest, { get: (target, key) => Reflect.get(own, key) ?? Reflect.get(target, key) });
}

function watchedPort<T extends object>(port: T, prefix: string, metrics: Metrics): T {
  return new Proxy(port, {
    get(target, key) {
      const value: unknown = Reflect.get(target, key);
      if (typeof value !== 'function' || typeof key !== 'string') return value;
      return (...words: unknown[]) =>
        timed(`${prefix}${key}`, metrics, async () => Reflect.apply(value, target, words));
    },
  });
}

async function timed(operation: string, metrics: Metrics, work: () => Promise<unknown>): Promise<unknown> {
  const begun = performance.now();
  let outcome = 'failed';
  try {
    const result = await work();
    outcome = 'done';
    return result;
  } catch (error) {
    if (error instanceof StoreProblem) outcome = error.code;
    throw error;
  } finally {
    metrics.operationDone(operation, outcome, (performance.now() - begun) / 1000);
  }
}

/** Whoever does the work, in whatever process, each ending is counted where it is written down. */
function countedDeliveries(deliveries: Deliveries, metrics: Metrics, clock: Clock): Deliveries {
  const counts: Pick<Deliveries, 'settle' | 'postpone' | 'giveUp' | 'expire'> = {
    async settle(claim, messageId) {
      const isOurs = await deliveries.settle(claim, messageId);
      const delayS = (clock.now().getTime() - claim.dueAt.getTime()) / 1000;
      if (isOurs) ofKnownKind(claim, (work) => metrics.nightlyDone(work, delayS));
      return isOurs;
    },
    async postpone(claim, until, problem) {
      const isOurs = await deliveries.postpone(claim, until, problem);
      if (isOurs) ofKnownKind(claim, (work) => metrics.nightlyNotDone(work, 'postponed'));
      return isOurs;
    },
    async giveUp(claim, problem) {
      const isOurs = await deliveries.giveUp(claim, problem);
      if (isOurs) ofKnownKind(claim, (work) => metrics.nightlyNotDone(work, 'failed'));
      return isOurs;
    },
    async expire(now) {
      const ended = await deliveries.expire(now);
      for (const each of ended) {
        const outcome = each.state === 'missed' ? 'missed' : 'failed';
        ofKnownKind(each, (work) => metrics.nightlyNotDone(work, outcome));
      }
      return ended;
    },
  };
  return new Proxy(deliveries, { get: (target, key) => Reflect.get(counts, key) ?? Reflect.get(target, key) });
}

function ofKnownKind(key: DeliveryKey, count: (work: Work['kind']) => void): void {
  const work = workOf(key);
  if (work !== undefined) count(work.kind);
}
