/** A load just over a round one at which many stop, kilograms. */
export type Cut = { readonly load: number; readonly over: number };
