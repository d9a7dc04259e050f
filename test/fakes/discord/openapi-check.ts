import { existsSync, readFileSync } from 'node:fs';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';

/** Discord's own description of its HTTP interface, beside the project where it is kept at all. */
const DESCRIPTION = new URL('../../../../shared/discord/openapi.json', import.meta.url);

export interface BodyCheck {
  /** What is wrong with a body by Discord's description; undefined when nothing is. */
  problem(method: string, path: string, body: unknown): string | undefined;
}

interface Description {
  readonly paths: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
}

export const DESCRIPTION_ABSENT = "Discord's OpenAPI description is not beside the project";

let loaded: BodyCheck | undefined;

/** The check of request bodies; undefined where the description is absent. */
export function bodyCheck(): BodyCheck | undefined {
  if (loaded === undefined && existsSync(DESCRIPTION)) loaded = describedBodies(readFileSync(DESCRIPTION, 'utf8'));
  return loaded;
}

function describedBodies(text: string): BodyCheck {
  const description = withoutEmptyEnums(JSON.parse(text)) as Description;
  const ajv = new Ajv2020({ strict: false, allErrors: false });
  formats.default(ajv);
  for (const name of ['int32', 'int64', 'double', 'nonce', 'snowflake']) ajv.addFormat(name, true);
  ajv.addSchema(description, 'discord');
  const compiled = new Map<string, ValidateFunction>();
  const patterns = Object.keys(description.paths).map((path) => ({ path, matches: pathPattern(path) }));
  return {
    problem(method, path, body) {
      const described = patterns.find((each) => each.matches.test(path) && method.toLowerCase() in pathOf(each.path));
      if (described === undefined) return `${method} ${path} is not described`;
      const pointer = bodyPointer(described.path, method);
      const validate = compiled.get(pointer) ?? ajv.compile({ $ref: pointer });
      compiled.set(pointer, validate);
      if (validate(adapted(body))) return undefined;
      return `${method} ${described.path}: ${ajv.errorsText(validate.errors)}`;
    },
  };

  function pathOf(path: string): Readonly<Record<string, unknown>> {
    return description.paths[path] ?? {};
  }
}

function bodyPointer(path: string, method: string): string {
  const escapedPath = encodeURIComponent(path.replaceAll('~', '~0').replaceAll('/', '~1'));
  return `discord#/paths/${escapedPath}/${method.toLowerCase()}/requestBody/content/application~1json/schema`;
}

function pathPattern(path: string): RegExp {
  const source = path.replace(/[.*+?^$()|[\]\\]/g, '\\$&').replace(/\{[^}]+\}/g, '[^/]+');
  return new RegExp(`^${source}$`);
}

/** Ajv refuses an enumeration of nothing, which the description has once. */
function withoutEmptyEnums(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutEmptyEnums);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).filter(([name, held]) => !(name === 'enum' && isEmptyList(held)));
  return Object.fromEntries(entries.map(([name, held]) => [name, withoutEmptyEnums(held)]));
}

function isEmptyList(value: unknown): boolean {
  return Array.isArray(value) && value.length === 0;
}

/** Integers may be sent as text (the description's own notes): bits of rights are. */
function adapted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(adapted);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, held]) => [
      name,
      name === 'default_member_permissions' && typeof held === 'string' ? Number(held) : adapted(held),
    ]),
  );
}
