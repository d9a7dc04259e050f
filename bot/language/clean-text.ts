/** A true minus, however typed; a hyphen or dash may also be a dash. */
export const MINUS = '−';

const ALWAYS_MINUS = /[\u2212\uff0d\ufe63\u2796\u207b]/g;
const DASHES = /[\u2010-\u2015\u00ad]/g;
const DEGREE_SIGNS = /[\u00ba\u02da\u2070\u1d52]/g;
const APOSTROPHES = /[\u2018\u2019\u201b\u02bc\u00b4`]/g;
/** "<@123>", "<#123>", "<:frost:123>": people, channels and pictures of a chat. */
const CHAT_MARKUP = /<(?:@[!&]?|#|a?:\w{1,32}:)\d{1,20}>/g;
/** "~~blanket~~": struck out by its writer; the words stay, and {@link STRUCK} says so behind them. */
const STRUCK_OUT = /~~([^~]{1,200})~~/g;
export const STRUCK = 'struckout';
const INVISIBLE = /\p{Cf}|\ufe0f/gu;

/**
 * Text with the look-alikes of phones and keyboards made one: full-width letters and digits, every minus, dash,
 * degree sign and apostrophe; invisible characters dropped. Letters keep their case, for saying back.
 */
export function cleanText(text: string): string {
  return text
    .replace(CHAT_MARKUP, ' ')
    .replace(STRUCK_OUT, ` $1 ${STRUCK} , `)
    .replace(DEGREE_SIGNS, '°')
    .replace(ALWAYS_MINUS, MINUS)
    .normalize('NFKC')
    .replace(INVISIBLE, '')
    .replace(DASHES, '-')
    .replace(APOSTROPHES, "'");
}

/** A word as it is looked up: lower case, accents folded, apostrophes dropped. */
export function plainWord(word: string): string {
  return word
    .normalize('NFD')
    .replace(/[\u0300-\u036f']/g, '')
    .toLowerCase();
}
