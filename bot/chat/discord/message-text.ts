import type { Credit, Form, Reply, Section } from '../../talk/reply.ts';
import { escaped, plainLine } from './escape.ts';
import { LIMITS } from './limits.ts';

/** The written part of a message. */
export interface MessageText {
  readonly content: string;
  /** True when something was left out, and the whole must be attached. */
  readonly shortened: boolean;
}

export interface MessageTextOptions {
  /** Small print by which the post can be found again. */
  readonly reference?: string | undefined;
  /** Longest text; Discord’s own limit unless told. */
  readonly characters?: number | undefined;
}

/** Longest single lines of a reply that must be shortened; judgement: enough for a phone's screen. */
const SHORT = { headline: 300, line: 600, address: 300 } as const;
const FULL = { headline: LIMITS.contentCharacters, line: LIMITS.contentCharacters, address: 512 } as const;
type Caps = Readonly<Record<keyof typeof SHORT, number>>;

/** What of cautions and credits a long answer may not crowd out. */
const KEPT_TAIL_CHARACTERS = 700;
const REST_NOTICE = 'The whole answer is in the attached text.';

/**
 * A reply in Discord's markup: the headline bold, what belongs together under an underlined title, cautions, credits in
 * small print as links. Too long a reply keeps its beginning, its cautions and its credits.
 *
 * @param notes - Lines of our own, such as about a file that was too big.
 */
export function messageText(
  reply: Reply,
  notes: readonly string[] = [],
  { reference, characters = LIMITS.contentCharacters }: MessageTextOptions = {},
): MessageText {
  const last = reference === undefined ? [] : [smallPrint(escaped(reference))];
  const whole = [...bodyLines(reply, FULL), ...tailLines(reply, notes, FULL), ...last].join('\n').trim();
  if (whole === '') return { content: 'There is nothing to show.', shortened: false };
  if (whole.length <= characters) return { content: whole, shortened: false };
  const tail = [...fitting(tailLines(reply, notes, SHORT), KEPT_TAIL_CHARACTERS), REST_NOTICE, ...last];
  const room = characters - tail.reduce((sum, each) => sum + each.length + 1, 0);
  return { content: [...fitting(bodyLines(reply, SHORT), room), ...tail].join('\n').trim(), shortened: true };
}

/** The lines, in order, until one does not fit any more. */
function fitting(lines: readonly string[], characters: number): string[] {
  const kept: string[] = [];
  let used = 0;
  for (const each of lines) {
    used += each.length + 1;
    if (used > characters) break;
    kept.push(each);
  }
  return kept;
}

function bodyLines(reply: Reply, caps: Caps): string[] {
  const headline = isShown(reply.headline) ? [`**${escaped(reply.headline, caps.headline)}**`] : [];
  const form = reply.form === undefined ? [] : sectionLines(formQuestions(reply.form), caps);
  return [...headline, ...reply.sections.flatMap((section) => sectionLines(section, caps)), ...form];
}

function tailLines(reply: Reply, notes: readonly string[], caps: Caps): string[] {
  return [
    ...notes.map((note) => escaped(note, caps.line)),
    ...(reply.cautions ?? []).filter(isShown).map((caution) => `**Caution:** ${escaped(caution, caps.line)}`),
    ...(reply.credits ?? []).filter((credit) => isShown(credit.text)).map((credit) => creditLine(credit, caps)),
  ];
}

/** Where no form can be opened, its questions are listed. */
function formQuestions(form: Form): Section {
  return { title: form.title, lines: form.fields.map((field) => field.label) };
}

/** One line stands behind its title; several stand under it, with a blank line before. */
function sectionLines(section: Section, caps: Caps): string[] {
  const lines = section.lines.filter(isShown).map((each) => escaped(each, caps.line));
  if (section.title === undefined || !isShown(section.title)) return lines;
  const title = escaped(section.title, caps.headline);
  const [only, ...others] = lines;
  if (only !== undefined && others.length === 0) return [`${title}: ${only}`];
  return ['', `__${title}__`, ...lines.map((each) => `- ${each}`)];
}

function creditLine(credit: Credit, caps: Caps): string {
  const text = escaped(credit.text, caps.headline);
  const address = linkAddress(credit.url, caps.address);
  return smallPrint(address === undefined ? text : `[${text}](<${address}>)`);
}

/** Only web addresses become links; characters that could end the link early are written as codes. */
function linkAddress(text: string, most: number): string | undefined {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  if (url === undefined || (url.protocol !== 'https:' && url.protocol !== 'http:')) return undefined;
  const address = url.href.replace(/[\\()<>]/g, (glyph) => `%${glyph.charCodeAt(0).toString(16).toUpperCase()}`);
  return address.length <= most ? address : undefined;
}

function smallPrint(text: string): string {
  return `-# ${text}`;
}

/** Something a reader can see: not blanks or marks without width alone. */
function isShown(text: string): boolean {
  return /[\p{L}\p{N}\p{P}\p{S}]/u.test(plainLine(text));
}
