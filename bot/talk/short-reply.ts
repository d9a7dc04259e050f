import type { Reply, Section } from './reply.ts';

/** What a phone shows without scrolling far: a verdict and what to do first. [characters] */
export const PHONE_CHARACTERS = 1400;

export interface ShortReply {
  readonly short: Reply;
  /** What did not fit; absent where all did. */
  readonly rest?: Reply;
}

/** Cut between lines, never within one: the headline and the first lines stay with cautions, credits, picture and buttons. */
export function shortReply(reply: Reply, most: number = PHONE_CHARACTERS): ShortReply {
  const fixed = [
    reply.headline,
    ...(reply.cautions ?? []).map((caution) => `Caution: ${caution}`),
    ...(reply.credits ?? []).map(({ text }) => text),
  ];
  const { kept, left } = fitting(reply.sections, most - lengthOf(fixed));
  if (left.length === 0) return { short: reply };
  const rest = { headline: 'The rest:', sections: left, private: reply.private };
  return { short: { ...reply, sections: kept }, rest };
}

/** As many lines as there is room for, at least one: a line by itself is never too long to be read. */
function fitting(sections: readonly Section[], characters: number): { kept: Section[]; left: Section[] } {
  const costs = sections.flatMap((section) => section.lines.map((line, at) => costOf(section, line, at)));
  let room = characters;
  const first = costs.findIndex((cost, index) => {
    room -= cost;
    return room < 0 && index > 0;
  });
  let fits = first < 0 ? costs.length : first;
  const kept: Section[] = [];
  const left: Section[] = [];
  for (const section of sections) {
    const count = Math.min(fits, section.lines.length);
    fits -= count;
    if (count > 0) kept.push({ ...section, lines: section.lines.slice(0, count) });
    if (count < section.lines.length) left.push({ ...section, lines: section.lines.slice(count) });
  }
  return { kept, left };
}

/** The first line of a section brings its title. */
function costOf({ title = '' }: Section, line: string, at: number): number {
  return line.length + 1 + (at === 0 ? title.length + 2 : 0);
}

function lengthOf(texts: readonly string[]): number {
  return texts.reduce((sum, text) => sum + text.length + 1, 0);
}
