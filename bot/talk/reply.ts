/**
 * An answer before any door has drawn it. Every string is plain text: doors escape it for their own medium, so nothing
 * here may carry markup, and nothing a member typed can turn into markup or a mention.
 */
export interface Reply {
  /** Verdict or result in one line; doors set it off from the rest. */
  readonly headline: string;
  readonly sections: readonly Section[];
  readonly cautions?: readonly string[];
  /** Who is owed credit for data shown, with the link that their licence asks for. */
  readonly credits?: readonly Credit[];
  readonly picture?: Picture;
  readonly files?: readonly ReplyFile[];
  readonly buttons?: readonly Button[];
  /** Asks the person to fill in something; doors that can open a form do, others list the questions. */
  readonly form?: Form;
  /** Only the asking person may see it. */
  readonly private: boolean;
  /** True when the request could not be done as asked; one-shot doors exit non-zero. */
  readonly refused?: boolean;
}

/** Lines that belong together, under a title of a few words where one helps. */
export interface Section {
  readonly title?: string;
  readonly lines: readonly string[];
}

export interface Credit {
  readonly text: string;
  readonly url: string;
}

export interface Picture {
  readonly name: string;
  readonly png: Uint8Array;
  /** The same said in a sentence. */
  readonly altText: string;
  /** The same drawn in characters, line by line, for doors that show no pictures. */
  readonly text?: readonly string[];
}

export interface ReplyFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export interface Button {
  /** At most 100 characters; handed back as `Press.buttonId`. */
  readonly id: string;
  readonly label: string;
}

/** The answers come back as a request: of the command that `id` names (`site set`), with its options named as the fields. */
export interface Form {
  readonly id: string;
  readonly title: string;
  readonly fields: readonly { readonly id: string; readonly label: string; readonly required: boolean }[];
}
