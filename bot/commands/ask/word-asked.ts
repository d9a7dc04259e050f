import { plainPhrase } from '../../../rules/index.ts';
import type { Reply } from '../../talk/reply.ts';
import { coverSections, cropSections, GLOSSARY, type GlossaryEntry } from '../../text/glossary.ts';
import { capitalised } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';

/** "what does leaf burn mean", "what is a cold frame", "meaning of hardened", "define row cover". */
const MEANING = [
  /^(?:so |and |but |ok |please )*(?:what|whats) (?:does|do|is|are|s|about)?\s*(?:you mean by |meant by |it mean to be |the word |by |an? |the )*(?<word>.+?)(?: (?:mean|means|even mean|supposed to mean))?(?: here| exactly| please)?$/,
  /^(?:explain|define|meaning of|definition of|help with) (?:the word |an? |the )?(?<word>.+)$/,
  /^(?<word>.+?) (?:meaning|definition|means what|mean)$/,
];

const LISTS = [
  {
    asks: /^(?:what|which|list|show|all)(?: all)?(?: the)?(?: kinds of)? (?<thing>covers?|crops?|plants?|vegetables?|veg)(?: (?:do you know|are known|are there|can i name|you know|are in (?:your|the) table|do you have|can you judge))?$/,
  },
  { asks: /^list (?:of )?(?:all )?(?:the |your )?(?<thing>covers?|crops?|plants?)$/ },
] as const;

const LONGEST = 80;

/** The meaning of a word of mine, or what can be named, where a text asks for just that. */
export function wordAsked(text: string, reader: Reader): Reply | undefined {
  const plain = plainPhrase(text.slice(0, LONGEST + 1));
  if (plain.length > LONGEST) return undefined;
  const thing = LISTS.map(({ asks }) => asks.exec(plain)?.groups?.['thing']).find((each) => each !== undefined);
  if (thing !== undefined) return listed(thing, reader);
  const word = MEANING.map((pattern) => pattern.exec(plain)?.groups?.['word']).find((each) => each !== undefined);
  const entry = word === undefined ? undefined : entryOf(word);
  return entry && { headline: `${capitalised(entry.word)}: ${entry.meaning}`, sections: [], private: false };
}

function listed(thing: string, reader: Reader): Reply {
  if (thing.startsWith('cover')) {
    return { headline: 'The covers that I know:', sections: coverSections(reader), private: false };
  }
  return { headline: 'The crops that I know:', sections: cropSections(reader), private: false };
}

function entryOf(word: string): GlossaryEntry | undefined {
  return GLOSSARY.find((entry) => [entry.word, ...(entry.also ?? [])].some((each) => plainPhrase(each) === word));
}
