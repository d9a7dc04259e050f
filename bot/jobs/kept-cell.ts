import { z } from 'zod';
import type { HourlyForecast, OfficialWarnings } from '../forecast/forecast.ts';

/** What is known of a cell, shared by all processes through the store. */
export interface CellNews {
  readonly forecast: HourlyForecast;
  readonly official: OfficialWarnings;
}

/** Raised whenever the shape of what is kept changes; what an earlier version kept is then fetched anew. */
const SHAPE = 1;

const date = z.iso.datetime().transform((text) => new Date(text));
const column = z.array(
  z
    .number()
    .nullable()
    .transform((value) => value ?? undefined),
);
const newsSchema = z.object({
  shape: z.literal(SHAPE),
  forecast: z.looseObject({
    updatedAt: date,
    fetchedAt: date,
    first: date,
    hours: z.number(),
    columns: z.record(z.string(), column),
    lowWindows: z.array(z.looseObject({ from: date, to: date })),
  }),
  official: z.looseObject({
    kind: z.string(),
    warnings: z.array(z.looseObject({ from: date, until: date })).optional(),
  }),
});

export function newsText(news: CellNews): string {
  return JSON.stringify({ shape: SHAPE, ...news });
}

/** Undefined for what another version of the program has kept. */
export function newsFrom(text: string): CellNews | undefined {
  const parsed = newsSchema.safeParse(JSON.parse(text)).data;
  if (parsed === undefined) return undefined;
  const { forecast, official } = parsed;
  return { forecast: forecast as unknown as HourlyForecast, official: official as unknown as OfficialWarnings };
}
