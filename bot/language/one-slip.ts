const LETTERS = [...'abcdefghijklmnopqrstuvwxyz'];

/**
 * The first word one slip of the finger from another for which `isMeant` holds; the commonest slips first: letters
 * swapped, one too many, one too few, one mistaken. The first letter is seldom wrong and is tried last.
 */
export function oneSlipFrom(word: string, isMeant: (slip: string) => boolean): string | undefined {
  const places = [...Array.from({ length: word.length }, (_, index) => index + 1), 0];
  for (const slipsAt of [swapped, dropped, added, mistaken]) {
    for (const at of places) {
      const meant = slipsAt(word.slice(0, at), word.slice(at)).find(isMeant);
      if (meant !== undefined) return meant;
    }
  }
  return undefined;
}

function swapped(front: string, back: string): readonly string[] {
  return back.length > 1 ? [front + back.charAt(1) + back.charAt(0) + back.slice(2)] : [];
}

function dropped(front: string, back: string): readonly string[] {
  return back.length > 0 ? [front + back.slice(1)] : [];
}

function added(front: string, back: string): readonly string[] {
  return LETTERS.map((letter) => front + letter + back);
}

function mistaken(front: string, back: string): readonly string[] {
  return back.length > 0 ? LETTERS.map((letter) => front + letter + back.slice(1)) : [];
}
