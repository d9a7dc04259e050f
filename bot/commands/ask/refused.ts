import type { Understood } from '../../language/understood.ts';
import type { Section } from '../../talk/reply.ts';
import type { Answered } from './answered.ts';

/** An answer that judges nothing: what was wrong, and what would be right. */
export function refused(understood: Understood, headline: string, lines: readonly string[] = []): Answered {
  const sections: Section[] = lines.length === 0 ? [] : [{ lines }];
  return { understood, judged: [], cautions: [], reply: { headline, sections, private: false, refused: true } };
}
