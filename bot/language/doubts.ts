import type { Doubt, Understood } from './understood.ts';

/** What a question leaves open and is therefore answered both ways. */
export function doubtsOf({ coversOtherwise, lowOtherwise }: Understood): readonly Doubt[] {
  return [...(coversOtherwise ? (['covers'] as const) : []), ...(lowOtherwise ? (['low'] as const) : [])];
}
