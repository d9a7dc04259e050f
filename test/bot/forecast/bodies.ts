import { fixture } from '../../fakes/forecast-services.ts';

type Json = string | number | boolean | null | Json[] | { [name: string]: Json };

/** A fixture with changes: each path of names leads to the value to put there; `undefined` removes it. */
export function changed(
  name: string,
  ...changes: readonly (readonly [string, Json | undefined])[]
): Record<string, Json> {
  const body = JSON.parse(fixture(name)) as Record<string, Json>;
  for (const [path, value] of changes) {
    const names = path.split('.');
    const last = names.pop() ?? '';
    let at: Record<string, Json> = body;
    for (const step of names) at = at[step] as Record<string, Json>;
    if (value === undefined) delete at[last];
    else at[last] = value;
  }
  return body;
}
