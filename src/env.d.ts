declare namespace App {
  interface Locals {
    /** Set by a page before it renders a coach's text; the words in the text read it. */
    reader: import("./components/reader.ts").Reader;
  }
}

declare module "virtual:rigsheet-worker" {
  /** The text of the worker's script. */
  export const worker: string;
}

declare module "*.astro" {
  /** A component as the bundle of the program has it; its props are known to `astro check` alone. */
  const component: import("astro/runtime/server/index.js").AstroComponentFactory;
  export default component;
}
