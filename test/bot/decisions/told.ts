import type { GardenBed } from '../../../bot/outlook/garden.ts';
import { namedNight } from '../../../bot/outlook/named-night.ts';
import { nightOutlook } from '../../../bot/outlook/night-outlook.ts';
import { weekOutlook } from '../../../bot/outlook/week-outlook.ts';
import { drawn } from '../../../bot/talk/plain-text.ts';
import { outlookReply } from '../../../bot/text/outlook-reply.ts';
import { readerOf } from '../../../bot/text/reader.ts';
import { weekReply } from '../../../bot/text/week-reply.ts';
import type { CoverKey } from '../../../rules/index.ts';
import { gardenOf, type InventedSpell, inventedForecast, noonOf } from './invented-week.ts';

/** What was asked, and where. */
export interface Asked {
  readonly locale: string;
  readonly spell: InventedSpell;
  readonly beds: readonly GardenBed[];
  readonly shed?: readonly CoverKey[];
}

const official = { kind: 'not-covered' } as const;
const WIDE = 10_000;

/** The week of a garden in words and by its verdicts. */
export function toldWeek({ locale, spell, beds, shed = [] }: Asked) {
  const week = weekOutlook(gardenOf(spell, beds, shed), inventedForecast(spell), noonOf(spell));
  if (week === undefined) throw new Error('the sun sets there');
  const reply = weekReply({ week, official, reader: readerOf(locale), now: noonOf(spell) });
  return { week, reply, words: drawn(reply, WIDE) };
}

/** This night of a garden. */
export function toldTonight({ locale, spell, beds, shed = [] }: Asked) {
  const garden = gardenOf(spell, beds, shed);
  const night = namedNight('tonight', noonOf(spell), garden);
  if (night === undefined) throw new Error('the sun sets there');
  const outlook = nightOutlook(garden, inventedForecast(spell), night.span, noonOf(spell));
  const reply = outlookReply({
    outlook,
    official,
    reader: readerOf(locale),
    now: noonOf(spell),
    nightWords: night.words,
  });
  return { outlook, reply, words: drawn(reply, WIDE) };
}
