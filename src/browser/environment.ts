/** What the browser must have before a lock can be opened; nothing when it has it all. */
export function lackOf(scope: {
  readonly isSecureContext?: boolean;
  readonly crypto?: { readonly subtle?: unknown };
  readonly DecompressionStream?: unknown;
}): "insecure" | "old-browser" | undefined {
  // Over plain http a current browser hides its cryptography; that must not be taken for its age.
  if (scope.isSecureContext === false) return "insecure";
  if (!scope.crypto?.subtle || typeof scope.DecompressionStream !== "function") return "old-browser";
  return undefined;
}
