import { request } from 'undici';
import { type Finding, findingsOn } from './finding.ts';

const { good, look, fix } = findingsOn('Clock');

const WITHIN_MS = 8000;
/** Signed requests are taken within 300 s; a warning's minute does not matter before that. Judgement. */
const MUCH_S = 120;
const SOME_S = 20;
/** Zone rules change most years; older data than this may be an hour off somewhere. Judgement. */
const OLD_ZONE_YEARS = 3;

/** Zones whose offsets are known and do not change: a quarter of an hour, and both halves of a year. */
const KNOWN_OFFSETS = [
  ['Asia/Kathmandu', '2026-01-20T12:00:00Z', '17:45'],
  ['America/New_York', '2026-01-20T12:00:00Z', '07:00'],
  ['America/New_York', '2026-07-20T12:00:00Z', '08:00'],
  ['Australia/Lord_Howe', '2026-01-20T12:00:00Z', '23:00'],
] as const;

export interface ClockWish {
  /** A server that tells the time with its answers; undefined where none may be asked. */
  readonly timeUrl: string | undefined;
  readonly userAgent: string;
  /** The machine's, whatever is rehearsed. */
  readonly wallMs: () => number;
  readonly zoneDataVersion: string | undefined;
}

/** Whether this machine's clock agrees with the world's, and whether it knows time zones. */
export async function clockFindings(wish: ClockWish): Promise<readonly Finding[]> {
  const { timeUrl } = wish;
  return [...(timeUrl === undefined ? [] : [await offsetFinding(timeUrl, wish)]), ...zoneFindings(wish)];
}

async function offsetFinding(timeUrl: string, { userAgent, wallMs }: ClockWish): Promise<Finding> {
  const told = await toldMs(timeUrl, userAgent);
  if (told === undefined) {
    return look("This machine's clock could not be compared with another.", 'Check it against a clock you trust.');
  }
  const offS = Math.round(Math.abs(wallMs() - told) / 1000);
  const todo = 'Let a time service set it (NTP).';
  if (offS > MUCH_S) return fix(`This machine's clock is ${spoken(offS)} off.`, todo);
  if (offS > SOME_S) return look(`This machine's clock is ${spoken(offS)} off.`, todo);
  return good('This machine agrees with the time on the network.');
}

function spoken(seconds: number): string {
  if (seconds < 120) return `${seconds} s`;
  return seconds < 7200 ? `${Math.round(seconds / 60)} minutes` : `${Math.round(seconds / 3600)} hours`;
}

async function toldMs(url: string, userAgent: string): Promise<number | undefined> {
  try {
    const { headers, body } = await request(url, {
      headers: { 'user-agent': userAgent },
      signal: AbortSignal.timeout(WITHIN_MS),
    });
    await body.dump();
    const ms = Date.parse(String(headers['date']));
    return Number.isNaN(ms) ? undefined : ms;
  } catch {
    return undefined;
  }
}

function zoneFindings({ zoneDataVersion, wallMs }: ClockWish): Finding[] {
  const wrong = KNOWN_OFFSETS.filter(([zone, instant, hour]) => hourIn(zone, new Date(instant)) !== hour);
  if (wrong.length > 0) {
    const zones = [...new Set(wrong.map(([zone]) => zone))].join(', ');
    return [fix(`The time zones of this Node are incomplete or wrong (${zones}).`, 'Install Node from nodejs.org.')];
  }
  const year = Number.parseInt(zoneDataVersion ?? '', 10);
  const thisYear = new Date(wallMs()).getUTCFullYear();
  if (Number.isNaN(year) || year >= thisYear - OLD_ZONE_YEARS) return [good('Time zones are there.')];
  return [look(`The time zones of this Node are those of ${zoneDataVersion}.`, 'Update Node.')];
}

function hourIn(timeZone: string, at: Date): string | undefined {
  try {
    return new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', minute: '2-digit' }).format(at);
  } catch {
    return undefined;
  }
}
