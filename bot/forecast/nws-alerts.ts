import { z } from 'zod';
import { instant, shaped } from './answer-body.ts';
import type { OfficialWarning } from './forecast.ts';

type Kind = OfficialWarning['kind'];

/** The two-letter phenomena of VTEC that concern frost and cold. */
const KIND_BY_PHENOMENON: Readonly<Record<string, Kind>> = {
  FZ: 'freeze',
  FR: 'frost',
  HZ: 'hard-freeze',
  CW: 'cold',
  EC: 'extreme-cold',
};
/** Names, for the rare message without VTEC; the longer ones first. */
const KIND_BY_NAME: readonly (readonly [string, Kind])[] = [
  ['Hard Freeze', 'hard-freeze'],
  ['Freeze', 'freeze'],
  ['Frost', 'frost'],
  ['Extreme Cold', 'extreme-cold'],
  ['Cold Weather', 'cold'],
];
/** Cancelled, upgraded to another warning, expired. */
const ENDED_ACTIONS = new Set(['CAN', 'UPG', 'EXP']);

/** `/O.NEW.KTAE.FZ.W.0013.251216T0600Z-251216T1400Z/`: class, action, office, phenomenon, significance, number, begin and end. */
const VTEC = /^\/([A-Z])\.([A-Z]{3})\.([A-Z]{4})\.([A-Z]{2})\.([A-Z])\.(\d{4})\./;

const time = instant.nullish().catch(undefined);
const text = z.string().nullish().catch(undefined);
const alertSchema = z.looseObject({
  event: z.string(),
  status: z.string(),
  messageType: z.string(),
  headline: text,
  senderName: text,
  web: text,
  sent: instant,
  onset: time,
  effective: time,
  expires: time,
  ends: time,
  parameters: z
    .looseObject({ VTEC: z.array(z.string()).optional() })
    .nullish()
    .catch(undefined),
});
type Alert = z.output<typeof alertSchema>;

const bodySchema = z.looseObject({ features: z.array(z.looseObject({ properties: z.unknown() })) });

interface Reading {
  readonly warning: OfficialWarning;
  readonly sentMs: number;
  readonly active: boolean;
}

/**
 * The frost and cold warnings in force, soonest first; one for each office, phenomenon, significance and number.
 *
 * A cancelled or replaced watch still arrives as an ordinary alert that begins and ends in the future: only the action inside
 * its VTEC code tells. Messages that cannot be read are left out; a list that cannot be read is an error.
 *
 * @throws ForecastBodyError when this is no list of alerts.
 */
export function readWarnings(sent: unknown, now: Date): readonly OfficialWarning[] {
  const newest = new Map<string, Reading>();
  for (const feature of shaped(bodySchema, sent, 'The list of warnings').features) {
    const alert = alertSchema.safeParse(feature.properties);
    const reading = alert.success ? readingOf(alert.data) : undefined;
    if (reading !== undefined && outranks(reading, newest.get(reading.warning.key)))
      newest.set(reading.warning.key, reading);
  }
  return [...newest.values()]
    .filter(({ active, warning }) => active && warning.until > now)
    .map(({ warning }) => warning)
    .sort((a, b) => a.from.getTime() - b.from.getTime());
}

/** The later message counts; of two sent together the one still in force, which is the safe side. */
function outranks(one: Reading, other: Reading | undefined): boolean {
  if (other === undefined || one.sentMs !== other.sentMs) return other === undefined || one.sentMs > other.sentMs;
  return one.active && !other.active;
}

function readingOf(alert: Alert): Reading | undefined {
  if (alert.status !== 'Actual') return undefined;
  const coded = codedKind(alert.parameters?.VTEC ?? []);
  const kind = coded?.kind ?? namedKind(alert);
  const until = alert.ends ?? alert.expires;
  if (kind === undefined || !until) return undefined;
  const headline = alert.headline ?? alert.event;
  const sender = alert.senderName ?? 'National Weather Service';
  return {
    active: coded?.active ?? alert.messageType !== 'Cancel',
    sentMs: alert.sent.getTime(),
    warning: {
      kind,
      event: alert.event,
      headline,
      from: alert.onset ?? alert.effective ?? alert.sent,
      until,
      sender,
      url: linkOf(alert.web),
      key: coded?.key ?? `${sender} ${alert.event} ${until.toISOString()}`,
    },
  };
}

function codedKind(codes: readonly string[]): { kind: Kind; key: string; active: boolean } | undefined {
  for (const code of codes) {
    const [, product, action = '', office, phenomenon = '', significance, number] = VTEC.exec(code) ?? [];
    const kind = KIND_BY_PHENOMENON[phenomenon];
    if (product !== 'O' || kind === undefined) continue;
    return { kind, key: `${office}.${phenomenon}.${significance}.${number}`, active: !ENDED_ACTIONS.has(action) };
  }
  return undefined;
}

/** By name only where there is no code at all: a coded message of another kind is another kind. */
function namedKind(alert: Alert): Kind | undefined {
  if ((alert.parameters?.VTEC ?? []).length > 0) return undefined;
  return KIND_BY_NAME.find(([name]) => alert.event.startsWith(name))?.[1];
}

/** The service's own site; anything else in that field is not passed on to members. */
function linkOf(web: string | null | undefined): string {
  const home = 'https://www.weather.gov/';
  if (!web || !URL.canParse(web)) return home;
  const url = new URL(web);
  if (!(url.hostname === 'weather.gov' || url.hostname.endsWith('.weather.gov'))) return home;
  url.protocol = 'https:';
  return url.href;
}
