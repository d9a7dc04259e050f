/** The person's language as this machine is set: `LC_ALL`, `LC_MESSAGES` or `LANG` through the runtime's own reading of them. */
export function machineLocale(): string {
  return new Intl.DateTimeFormat().resolvedOptions().locale;
}
