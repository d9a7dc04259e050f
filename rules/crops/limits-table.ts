type Line = readonly [firstMarkC: number, lt50C: number, killC: number, sdK: number];
export interface LimitsOfOrgan { readonly unhardened: Line; readonly hardened?: Line; }
export interface LimitsRow extends LimitsOfOrgan { readonly statements: number; readonly other?: LimitsOfOrgan; }
export const LIMITS = {} as Readonly<Record<string, LimitsRow>>;
