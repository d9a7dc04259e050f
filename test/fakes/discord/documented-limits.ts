/**
 * Rules that Discord documents and its OpenAPI description does not hold (resources/message, components/reference,
 * interactions/application-commands). Written apart from the product's own limits, so that a slip there shows here.
 */

type Json = Readonly<Record<string, unknown>>;

/** What a message breaks. */
export function messageProblems(message: Json, fileNames: readonly string[], fileBytes: number): string[] {
  const problems: string[] = [];
  const content = typeof message['content'] === 'string' ? message['content'] : '';
  if (content.length > 2000) problems.push(`content has ${content.length} characters`);
  if (content.trim() === '' && fileNames.length === 0) problems.push('an empty message');
  if (fileNames.length > 10) problems.push(`${fileNames.length} files`);
  if (fileBytes > 25 * 1024 * 1024) problems.push(`${fileBytes} bytes of files`);
  const mentions = message['allowed_mentions'] as Json | undefined;
  if (!isEmptyList(mentions?.['parse'])) problems.push('allowed_mentions could ping somebody');
  return [
    ...problems,
    ...attachmentProblems(list(message['attachments']), fileNames),
    ...buttonProblems(list(message['components'])),
  ];
}

function attachmentProblems(attachments: readonly Json[], fileNames: readonly string[]): string[] {
  const named = attachments.map((each) => each['filename']);
  const described = attachments.map((each) => each['description']).filter((text) => text !== undefined);
  const problems: string[] = [];
  if (named.join('|') !== fileNames.join('|')) problems.push('attachments and files differ');
  if (described.some((text) => String(text).length < 1 || String(text).length > 1024)) problems.push('alt text');
  return problems;
}

function buttonProblems(rows: readonly Json[]): string[] {
  const buttons = rows.flatMap((row) => list(row['components']));
  const ids = buttons.map((button) => String(button['custom_id']));
  const problems: string[] = [];
  if (rows.length > 5) problems.push(`${rows.length} rows`);
  if (rows.some((row) => list(row['components']).length > 5 || list(row['components']).length === 0)) {
    problems.push('a row without or with more than 5 buttons');
  }
  if (new Set(ids).size !== ids.length) problems.push('a custom_id twice');
  if (ids.some((id) => id.length < 1 || id.length > 100)) problems.push('a custom_id too long or empty');
  if (buttons.some(({ label }) => typeof label !== 'string' || label === '' || label.length > 80))
    problems.push('label');
  return problems;
}

/** What a window with a form breaks. */
export function formProblems(form: Json): string[] {
  const parts = list(form['components']);
  const title = String(form['title'] ?? '');
  const labels = parts.map((part) => String(part['label'] ?? ''));
  const problems: string[] = [];
  if (title === '' || title.length > 45) problems.push('title of a form');
  if (parts.length < 1 || parts.length > 5) problems.push(`${parts.length} fields in a form`);
  if (labels.some((label) => label === '' || label.length > 45)) problems.push('label of a field');
  return problems;
}

const NAME = /^[-_'\p{L}\p{N}]{1,32}$/u;

/** What a list of commands breaks. */
export function commandProblems(commands: readonly Json[]): string[] {
  const problems: string[] = [];
  if (commands.length > 100) problems.push(`${commands.length} commands`);
  for (const command of commands) {
    if (JSON.stringify(command).length > 8000) problems.push(`${String(command['name'])}: over 8000 characters`);
    problems.push(...namedProblems(command));
  }
  return problems;
}

function namedProblems(named: Json): string[] {
  const name = String(named['name']);
  const description = String(named['description'] ?? '');
  const options = list(named['options']);
  const required = options.map((option) => option['required'] === true);
  const problems: string[] = [];
  if (!NAME.test(name) || name.toLowerCase() !== name) problems.push(`name ${name}`);
  if (description === '' || description.length > 100) problems.push(`description of ${name}`);
  if (options.length > 25) problems.push(`${options.length} options in ${name}`);
  if (new Set(options.map((option) => option['name'])).size !== options.length)
    problems.push(`an option of ${name} twice`);
  if (required.lastIndexOf(true) > required.indexOf(false) && required.includes(false)) {
    problems.push(`${name}: required options after others`);
  }
  if (named['autocomplete'] === true && list(named['choices']).length > 0) problems.push(`${name}: both completions`);
  if (list(named['choices']).some((choice) => String(choice['value']).length > 100)) problems.push(`choice of ${name}`);
  return [...problems, ...options.flatMap(namedProblems)];
}

function list(value: unknown): readonly Json[] {
  return Array.isArray(value) ? (value as Json[]) : [];
}

function isEmptyList(value: unknown): boolean {
  return Array.isArray(value) && value.length === 0;
}
