import {
  type APIActionRowComponent,
  type APIButtonComponentWithCustomId,
  type APIModalInteractionResponseCallbackData,
  ButtonStyle,
  ComponentType,
  TextInputStyle,
} from 'discord.js';
import type { Button, Form } from '../../talk/reply.ts';
import { plainLine } from './escape.ts';
import { LIMITS } from './limits.ts';

export type ButtonRow = APIActionRowComponent<APIButtonComponentWithCustomId>;

/** Buttons in rows, all of one colour: the words say what they do. One without words, or twice the same, is left out. */
export function buttonRows(buttons: readonly Button[]): ButtonRow[] {
  const usable = new Map<string, APIButtonComponentWithCustomId>();
  for (const button of buttons) {
    const label = cut(plainLine(button.label), LIMITS.buttonLabelCharacters);
    if (label === '' || !isId(button.id)) continue;
    usable.set(button.id, { type: ComponentType.Button, style: ButtonStyle.Secondary, label, custom_id: button.id });
  }
  const all = [...usable.values()].slice(0, LIMITS.rows * LIMITS.buttonsPerRow);
  const rows: ButtonRow[] = [];
  for (let first = 0; first < all.length; first += LIMITS.buttonsPerRow) {
    rows.push({ type: ComponentType.ActionRow, components: all.slice(first, first + LIMITS.buttonsPerRow) });
  }
  return rows;
}

/** The form as a window to fill in; undefined where Discord could not show it, and its questions must be listed. */
export function formWindow(form: Form): APIModalInteractionResponseCallbackData | undefined {
  const title = cut(plainLine(form.title), LIMITS.formTitleCharacters);
  const ids = new Set(form.fields.map((field) => field.id));
  const showable =
    title !== '' &&
    isId(form.id) &&
    form.fields.length > 0 &&
    form.fields.length <= LIMITS.formFields &&
    ids.size === form.fields.length &&
    form.fields.every((field) => isId(field.id) && plainLine(field.label) !== '');
  if (!showable) return undefined;
  const components = form.fields.map((field) => ({
    type: ComponentType.Label as const,
    label: cut(plainLine(field.label), LIMITS.formLabelCharacters),
    component: {
      type: ComponentType.TextInput as const,
      custom_id: field.id,
      style: TextInputStyle.Short,
      required: field.required,
    },
  }));
  return { custom_id: form.id, title, components };
}

function isId(text: string): boolean {
  return text.trim() !== '' && text.length <= LIMITS.customIdCharacters;
}

/** At most so many characters, never half of a pair; a longer text ends in an ellipsis. */
export function cut(text: string, most: number): string {
  if (text.length <= most) return text;
  let out = '';
  for (const glyph of text) {
    if (out.length + glyph.length > most - 1) break;
    out += glyph;
  }
  return `${out}…`;
}
