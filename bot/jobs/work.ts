import { CELL_START } from '../store/delivery-key.ts';
import type { DeliveryKey } from '../store/port/deliveries.ts';

/** What a row of the ledger asks for. Places are channels, members (`direct:…`) or forecast cells (`cell:…`). */
export type Work =
  /** Tell a channel of the night. */
  | { readonly kind: 'warning' }
  /** Look again before covers are shut, and tell the channel if it has become worse. */
  | { readonly kind: 'check' }
  /** Tell a channel of gardens for which there was no forecast when it was told, as soon as there is one. */
  | { readonly kind: 'late' }
  /** Tell a channel when to open. */
  | { readonly kind: 'opening' }
  /** Follow how hard a channel's plants have become; nothing is posted. */
  | { readonly kind: 'hardening' }
  /** Fetch a cell's forecast, shared by all gardens there; nothing is posted. */
  | { readonly kind: 'gather' }
  /** Tell a member the own part of a channel's warning. */
  | { readonly kind: 'own-part'; readonly memberId: string; readonly siteId: string }
  /** Tell who set a channel up that the bot cannot post there. */
  | { readonly kind: 'pause-notice'; readonly memberId: string; readonly channelId: string };

export const WARNING = 'warning';
export const LATE = 'late';
export const OPENING = 'opening';
export const HARDENING = 'hardening';
const CHECK_START = 'worse-';
const GATHER_START = 'forecast-';
const PAUSE_START = 'paused:';
const DIRECT_START = 'direct:';

/** @param suffix - Of the party that it looks after. */
export const checkKind = (suffix: string): string => `${CHECK_START}1${suffix}`;
/** The party that a row looks after. */
export const suffixOf = (kind: string): string => /-at-\d\dT\d\d/.exec(kind)?.[0] ?? '';
/** One for each hour in which posts need it; a forecast that is still fresh then is not fetched again. */
export const gatherKind = (neededAt: Date): string => `${GATHER_START}${neededAt.toISOString().slice(0, 13)}`;
export const ownPartKind = (kind: string, siteId: string): string => `${kind}:${siteId}`;
export const pauseKind = (channelId: string): string => `${PAUSE_START}${channelId}`;

export function cellIdOf(placeId: string): string {
  return placeId.slice(CELL_START.length);
}

/** Undefined for a kind that this version does not know. */
export function workOf({ placeId, kind }: DeliveryKey): Work | undefined {
  if (placeId.startsWith(CELL_START)) return { kind: 'gather' };
  const memberId = placeId.startsWith(DIRECT_START) ? placeId.slice(DIRECT_START.length) : '';
  if (kind.startsWith(PAUSE_START))
    return { kind: 'pause-notice', memberId, channelId: kind.slice(PAUSE_START.length) };
  const colon = kind.indexOf(':');
  if (colon >= 0) return { kind: 'own-part', memberId, siteId: kind.slice(colon + 1) };
  const whole = kind.slice(0, kind.length - suffixOf(kind).length);
  if (whole === WARNING) return { kind: 'warning' };
  if (whole === LATE) return { kind: 'late' };
  if (whole === OPENING) return { kind: 'opening' };
  if (kind === HARDENING) return { kind: 'hardening' };
  return kind.startsWith(CHECK_START) ? { kind: 'check' } : undefined;
}
