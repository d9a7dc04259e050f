import { COVER_KEYS, COVERS, type CoverKey, orderProblem } from '../../../rules/index.ts';
import { readCovers } from '../../language/covers.ts';
import { cropVocabulary } from '../../language/crop-vocabulary.ts';
import { spansOf } from '../../language/spans.ts';
import { orderSentence } from '../../text/order-words.ts';
import { list, saidBack } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import { type Read, read, unread } from './read.ts';

/** Joins the names of covers from outside to inside; names so joined are read back exactly. */
export const OVER = ' over ';

const NO_COVER = ['none', 'no cover', 'bare', 'nothing', 'uncovered'];

/** A stack of covers in a grower's words, "blanket over low tunnel", from outside to inside; "none" is a bare bed. */
export function typedCovers(text: string, reader: Reader): Read<readonly CoverKey[]> {
  if (NO_COVER.includes(text.toLowerCase())) return read([]);
  const exact = exactCovers(text);
  if (exact !== undefined) return inOrder(exact, reader);
  const vocabulary = cropVocabulary();
  // A thing that is no cover shows as one only where it is said to lie over something.
  const { unknownCovers } = readCovers(spansOf(`under ${text}`, vocabulary));
  if (unknownCovers.length > 0) {
    const names = list(unknownCovers.map((name) => `"${saidBack(name)}"`));
    return unread(`I do not know ${names} as a cover. I know ${KNOWN}.`);
  }
  const said = readCovers(spansOf(text, vocabulary));
  if (said.options !== undefined) {
    return unread(`"${saidBack(text)}" leaves a choice; name what lies over the bed, from the outside in.`);
  }
  if (said.covers === undefined) {
    return unread(`I find no cover in "${saidBack(text)}". Write it like: blanket over low tunnel. I know ${KNOWN}.`);
  }
  return inOrder(said.covers, reader);
}

const KNOWN = 'row cover, sheet, blanket, quilt, tarp, mat, straw, leaves, low tunnel, cold frame and high tunnel';

function inOrder(keys: readonly CoverKey[], reader: Reader): Read<readonly CoverKey[]> {
  const unsound = orderProblem(keys);
  return unsound === undefined ? read(keys) : unread(orderSentence(unsound, reader));
}

/** Covers by their own names or keys, joined as suggestions join them; undefined where anything else stands there. */
export function exactCovers(text: string): readonly CoverKey[] | undefined {
  const parts = text.toLowerCase().split(OVER);
  const keys = parts.flatMap((part) => BY_NAME.get(part.trim().replace(/^an? /, '')) ?? []);
  return keys.length === parts.length ? keys : undefined;
}

const BY_NAME: ReadonlyMap<string, CoverKey> = new Map(
  COVER_KEYS.flatMap((key) =>
    [key, COVERS[key].american, COVERS[key].british].map((name) => [name.toLowerCase(), key]),
  ),
);
