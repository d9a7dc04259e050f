import { z } from 'zod';
import { CAUTION_KEYS, VERDICTS } from '../../rules/index.ts';
import type { Answered } from '../commands/ask/answered.ts';
import { withCautions } from '../commands/ask/answered.ts';
import { doubtsOf } from '../language/doubts.ts';
import { PUBLIC_COVER_NAMES, publicCovers } from '../language/public-cover-names.ts';
import { DOUBTS, INTENTS, PROBLEMS, type Understood, WHENS } from '../language/understood.ts';
import { drawn } from '../talk/plain-text.ts';

const covers = z.array(z.enum(PUBLIC_COVER_NAMES));
const share = z.number().min(0).max(1);

/** One line of `ask --json`. A promise to other programs: fields may be added, none is renamed or removed. */
export const askLineSchema = z.strictObject({
  /** False when `problem` says why the question could not be taken as it stands. */
  ok: z.boolean(),
  problem: z.enum(PROBLEMS).optional(),
  understood: z.strictObject({
    intent: z.enum(INTENTS),
    /** Ids of the crop table. */
    crops: z.array(z.string()),
    /** Outside low that was named, in °C; null when none was. */
    lowC: z.number().nullable(),
    /** Outside to inside; empty when not said, `none` when said to be bare. */
    covers,
    /** The stacks to compare; null when there are none. */
    options: z.array(covers).nullable(),
    when: z.enum(WHENS).nullable(),
    hardened: z.boolean().nullable(),
    /** Plants that are not in the table, as typed. */
    unknownCrops: z.array(z.string()),
    /** What the question leaves open; `answers` then holds both readings. */
    inDoubt: z.array(z.enum(DOUBTS)),
    /** Misspelt words of weight, as they were read. */
    readAs: z.array(z.string()),
  }),
  answers: z.array(
    z.strictObject({
      crop: z.string(),
      covers,
      /** Low of the leaf, or of the soil surface for what grows in the soil. */
      leafLowC: z.number(),
      sdK: z.number().nonnegative(),
      odds: z.strictObject({ noMark: share, leafBurn: share, winterkill: share }),
      verdict: z.enum(VERDICTS),
      /** Of the part that is not eaten ("tops"), for crops that growers keep in two. */
      otherPart: z.strictObject({ name: z.string(), verdict: z.enum(VERDICTS) }).optional(),
      /** False where no source speaks of the crop, so that it is judged by its kind. */
      isKnown: z.boolean(),
    }),
  ),
  cautions: z.array(z.enum(CAUTION_KEYS)),
  /** The answer as a person reads it. */
  text: z.string(),
});

export type AskLine = z.infer<typeof askLineSchema>;

/** An answer as one JSON object. */
export function askLine(answered: Answered): AskLine {
  const { understood, judged, cautions } = answered;
  const hasProblem = understood.problem !== undefined && !['off-topic', 'not-english'].includes(understood.problem);
  return askLineSchema.parse({
    ok: !hasProblem,
    ...(hasProblem && { problem: understood.problem }),
    understood: understoodFields(understood),
    answers: judged.map(({ crop, covers: keys, night, verdict, otherPart }) => ({
      crop: crop.id,
      covers: publicCovers(keys),
      leafLowC: rounded(verdict.organLowC, 10),
      sdK: rounded(night.spread.sdK, 10),
      odds: {
        noMark: rounded(verdict.odds.noMark, 1000),
        leafBurn: rounded(verdict.odds.leafBurn, 1000),
        winterkill: rounded(verdict.odds.winterkill, 1000),
      },
      verdict: verdict.verdict,
      ...(crop.other !== undefined &&
        otherPart !== undefined && { otherPart: { name: crop.other.name, verdict: otherPart.verdict } }),
      isKnown: crop.isKnown,
    })),
    cautions,
    text: drawn(withCautions(answered), Number.POSITIVE_INFINITY),
  });
}

/** What was understood, as it goes out. */
export function understoodFields(understood: Understood): AskLine['understood'] {
  return {
    intent: understood.intent,
    crops: understood.crops.map(({ id }) => id),
    lowC: isNight(understood) ? rounded(understood.lowC, 100) : null,
    covers: [...publicCovers(understood.covers)],
    options: understood.options?.map((keys) => [...publicCovers(keys)]) ?? null,
    when: understood.when ?? null,
    hardened: understood.hardened ?? null,
    unknownCrops: [...understood.unknownCrops],
    inDoubt: [...doubtsOf(understood)],
    readAs: [...understood.readAs],
  };
}

/** What is said of a day on which to open is no low of a night. */
function isNight<U extends Pick<Understood, 'intent' | 'lowC'>>(
  understood: U,
): understood is U & { readonly lowC: number } {
  return understood.lowC !== undefined && understood.intent !== 'vent';
}

function rounded(value: number, perUnit: number): number {
  return Math.round(value * perUnit) / perUnit + 0;
}
