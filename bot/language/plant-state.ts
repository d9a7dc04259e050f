import { isCue, isMark, type Span, senseOf } from './span.ts';
import type { Stage } from './understood.ts';

export interface PlantState {
  readonly hardened?: boolean;
  readonly stage?: Stage;
}

const DENIALS: ReadonlySet<string> = new Set(
  'not havent hasnt isnt arent never wasnt werent without no hardly barely dont didnt unless'.split(' '),
);

/** How far back a denial reaches. */
const DENIAL_REACH = 4;

/** Age and hardening of the plants, as far as the question tells. */
export function readPlantState(spans: readonly Span[]): PlantState {
  let hardened: boolean | undefined;
  let stage: Stage | undefined = spans.some(saysBabyCrop) ? 'baby' : undefined;
  for (const at of spans.keys()) {
    const state = stateAt(spans, at);
    if (state === undefined) continue;
    if (state.hardened !== undefined && hardened !== false) hardened = state.hardened !== isDenied(spans, at);
    stage ??= state.stage;
  }
  return { ...(hardened !== undefined && { hardened }), ...(stage && { stage }) };
}

function stateAt(spans: readonly Span[], at: number): PlantState | undefined {
  const span = spans[at];
  if (span?.plain.endsWith(' seedlings') && senseOf(span, 'crop')) return { stage: 'seedling' };
  return senseOf(span, 'state');
}

/** "baby kale", "baby spinach": the leaf, not the child. */
function saysBabyCrop(span: Span, at: number, spans: readonly Span[]): boolean {
  if (span.plain.startsWith('baby ') && senseOf(span, 'crop')) return true;
  return span.plain === 'baby' && senseOf(spans[at + 1], 'crop') !== undefined;
}

function isDenied(spans: readonly Span[], at: number): boolean {
  for (let back = at - 1; back >= at - DENIAL_REACH; back -= 1) {
    const span = spans[back];
    if (span === undefined || isMark(span, ',', '.', ';', '?')) return false;
    if (DENIALS.has(span.plain) || isCue(span, 'without')) return true;
  }
  return false;
}
