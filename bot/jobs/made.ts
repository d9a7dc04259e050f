import type { Reply } from '../talk/reply.ts';

/** Where a post goes. */
export type Target =
  | { readonly kind: 'channel'; readonly channelId: string }
  | { readonly kind: 'member'; readonly memberId: string };

/** What came of working on a row of the ledger. */
export type Made =
  /** `afterwards` keeps what was told, once it has been. */
  | { readonly kind: 'post'; readonly to: Target; readonly reply: Reply; readonly afterwards?: () => Promise<void> }
  /** The work is done without a post. */
  | { readonly kind: 'nothing-to-say'; readonly afterwards?: () => Promise<void> }
  | { readonly kind: 'later'; readonly until: Date; readonly problem: string }
  /** There is nobody to tell any more. */
  | { readonly kind: 'drop'; readonly problem: string };

export const NOTHING: Made = { kind: 'nothing-to-say' };
