/** Whether an error of the system has a code such as `ENOSPC`, itself or in what caused it. */
export function hasCode(error: unknown, code: string): boolean {
  if (!(error instanceof Error)) return false;
  return ("code" in error && error.code === code) || hasCode(error.cause, code);
}
