import type { Facts } from './facts.ts';
import type { Intent } from './understood.ts';

export type Pattern = (facts: Facts) => boolean;

/** An intent holds when one of its patterns does, and none of its exceptions. */
export interface IntentRule {
  readonly intent: Intent;
  readonly when: readonly Pattern[];
  readonly unless?: readonly Pattern[];
}

export function holds({ when, unless = [] }: IntentRule, facts: Facts): boolean {
  return when.some((pattern) => pattern(facts)) && !unless.some((pattern) => pattern(facts));
}
