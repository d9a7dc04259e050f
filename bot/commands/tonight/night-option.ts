import { NIGHT_NAMES } from '../../outlook/named-night.ts';

/** What of the time to come can be asked for: a night by name, or all nights that the forecast reaches. */
export const NIGHTS_AND_WEEK = [...NIGHT_NAMES, 'week'] as const;
export type NightOrWeek = (typeof NIGHTS_AND_WEEK)[number];
