/** A file somebody wrote. `path` as it is shown to people, such as `content/workouts/x.mdx`. */
export type SourceFile = { readonly path: string; readonly text: string };
