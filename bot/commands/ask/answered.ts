import { CAUTIONS, type CautionKey } from '../../../rules/index.ts';
import type { Understood } from '../../language/understood.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Reader } from '../../text/reader.ts';
import type { AskedNight, HardeningUnder } from './asked-night.ts';
import type { Judged } from './judged.ts';
import type { Plot } from './plots.ts';

/** A question answered: what was judged, what to take care of, and the words. */
export interface Answered {
  readonly understood: Understood;
  readonly judged: readonly Judged[];
  readonly cautions: readonly CautionKey[];
  readonly reply: Reply;
}

/** What answers are made with. */
export interface AskContext {
  readonly reader: Reader;
  readonly now: Date;
  /** The night meant: of the low that was named, or of a forecast. Absent when neither is there. */
  readonly night: AskedNight | undefined;
  /** How hard plants are at the member's site, where a site is kept and the question does not say. */
  readonly hardeningUnder?: HardeningUnder;
  /** The member's own beds and crops that are meant, where they are; else what the question names. */
  readonly plots?: readonly Plot[];
}

/** The reply with its cautions in words; safety questions carry theirs in the text already. */
export function withCautions({ reply, cautions, understood }: Answered): Reply {
  return understood.intent === 'caution' || cautions.length === 0
    ? reply
    : { ...reply, cautions: cautions.map((key) => CAUTIONS[key].text) };
}
