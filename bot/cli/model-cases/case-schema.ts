import { z } from 'zod';

const instant = z.iso.datetime({ offset: true, error: 'should be an instant such as 2025-12-01T12:00:00Z' });
const numbers = z.array(z.number());
const span = { from: instant, to: instant };

const layer = z.strictObject({
  lwTrans: z.number(),
  lwRefl: z.number(),
  lwTransWet: z.number(),
  lwReflWet: z.number(),
  R: z.number(),
  C: z.number(),
  area: z.number(),
  leak0: z.number(),
  leak1: z.number(),
  leak2: z.number(),
  leakT: z.number().default(0),
  swTrans: z.number(),
  swAbs: z.number(),
  space: z.number(),
  diffusing: z.boolean(),
  contact: z.number().default(0),
});

const geometry = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.enum(['flat', 'arch']), height: z.number() }),
  z.strictObject({ kind: z.literal('tilt'), height: z.number(), tiltDeg: z.number(), azimuthDeg: z.number() }),
]);

/** Input of one case: SI units, °C, UTC. A word that is not known is refused, so that a slip does not pass for a default. */
export const caseInputSchema = z.strictObject({
  site: z.strictObject({
    lat: z.number(),
    lon: z.number(),
    elevation: z.number(),
    skyView: z.number(),
    shelter: z.number(),
    inversion: z.number(),
  }),
  start: instant,
  end: instant,
  weather: z.strictObject({
    first: instant,
    stepHours: z.number(),
    temperature: numbers,
    dewPoint: numbers,
    /** Absent: a clear sky. */
    cloud: numbers.nullish(),
    wind10m: numbers,
    globalRadiation: numbers.nullish(),
  }),
  soil: z.strictObject({
    conductivity: z.number(),
    heatCapacity: z.number(),
    freezable: z.number(),
    surfaceResistance: z.number(),
    mulchR: z.number(),
    albedo: z.number(),
  }),
  soilProfile: z.array(z.strictObject({ z: z.number(), T: z.number() })).min(1),
  crop: z.strictObject({ lai: z.number(), leafSize: z.number() }),
  layers: z.array(layer).max(3),
  geometry,
  walls: z.strictObject({ area: z.number(), R: z.number(), C: z.number() }).nullish(),
  waterMass: z.strictObject({ kg: z.number(), area: z.number(), T0: z.number() }).nullish(),
  blanket: z.strictObject({ R: z.number(), C: z.number(), ...span }).nullish(),
  snow: z.strictObject({ depth: z.number(), k: z.number() }).nullish(),
  vent: z.strictObject({ area: z.number(), height: z.number(), ...span }).nullish(),
  floorFraction: z.number(),
});

/** What a run is asked for; in `expected` of a case, and in `computed` of the answer. */
export const caseResultSchema = z.looseObject({
  nightWindow: z.tuple([z.string(), z.string()]),
  outsideScreenMin: z.number(),
  outsideCropLevelMin: z.number(),
  leafMin: z.number(),
  leafMinTime: z.string(),
  airMin: z.number(),
  surfaceMin: z.number(),
  /** Start, middle and end of the window: instant, leaf, air. */
  leafAt: z.array(z.tuple([z.string(), z.number(), z.number()])),
  thermoMax: z.number(),
  thermoMaxTime: z.string(),
  airMax: z.number(),
  first24: z.string().nullable(),
  frozenShare: z.number(),
  thawTime: z.string().nullable(),
});

/** One case. Of `expected` only the window is used. */
export const caseSchema = z.looseObject({
  id: z.string(),
  title: z.string().optional(),
  input: caseInputSchema,
  expected: z.looseObject({ nightWindow: z.tuple([instantOfMinutes(), instantOfMinutes()]) }).optional(),
});

/** A file of cases. */
export const caseFileSchema = z.looseObject({
  schema: z.literal(1),
  model: z.literal(2),
  cases: z.array(caseSchema).min(1),
});

export type CaseInput = z.infer<typeof caseInputSchema>;
export type CaseResult = z.infer<typeof caseResultSchema>;
export type ModelCase = z.infer<typeof caseSchema>;

/** Windows may leave out the seconds. */
function instantOfMinutes() {
  return z.string().refine((text) => /^\d{4}-\d\d-\d\dT\d\d:\d\d/.test(text) && Number.isFinite(Date.parse(text)), {
    error: 'should be an instant such as 2025-12-01T22:00Z',
  });
}
