/** The name of a file without folders and ending: what other files call it. @example idOfFile("content/gyms/mill.yaml") // => "mill" */
export function idOfFile(path: string): string {
  const name = path.slice(path.lastIndexOf("/") + 1);
  return name.replace(/\.[A-Za-z0-9]+$/, "").normalize("NFC");
}
