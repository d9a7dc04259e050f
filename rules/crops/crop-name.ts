/** What people call one crop. All words as they stand in print: `plainPhrase` reduces them to what is looked up. */
export interface CropName {
  /** Stable key of our own, kebab-case. Stored with beds: never renamed. */
  readonly id: string;
  /** Usual name in the United States, without capital unless it is a proper name. */
  readonly american: string;
  /** Usual name in Britain where it is another word. */
  readonly british?: string;
  /** Plural of the American name; the same word where it is not counted ("spinach"). */
  readonly plural: string;
  readonly botanical: string;
  /** Other names of the same crop, singular and plural as people type them. */
  readonly aliases?: readonly string[];
  readonly misspellings?: readonly string[];
  /** Varieties put in front of the name, or used in place of it. */
  readonly varieties?: readonly string[];
}

/** One way of saying a crop, reduced by {@link plainPhrase}. */
export interface CropPhrase {
  readonly cropId: string;
  readonly phrase: string;
  readonly kind: 'name' | 'alias' | 'misspelling' | 'variety';
}

/**
 * A phrase as it is looked up: lower case, accents folded, apostrophes dropped, anything else between words one space.
 *
 * @param text - Anything a person typed.
 * @returns Letters a–z, digits and single spaces; may be empty. Linear in the length of `text`.
 */
export function plainPhrase(text: string): string {
  return text
    .normalize('NFD')
    .replace(/[\u0300-\u036f'’‘`]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();
}
