/** A small file for the host, by its name in the site. */
type HostingFile = { readonly name: string; readonly text: string };

const EVERYWHERE: readonly (readonly [string, string])[] = [
  ["X-Content-Type-Options", "nosniff"],
  ["Referrer-Policy", "no-referrer"],
  // The rest of the policy stands in each page, where every host lets it; this part only works as a header.
  ["Content-Security-Policy", "frame-ancestors 'none'"],
  ["Cross-Origin-Opener-Policy", "same-origin"],
  ["Permissions-Policy", "camera=(), geolocation=(), microphone=()"],
];
const LOCKED: readonly (readonly [string, string])[] = [
  ["X-Robots-Tag", "noindex, nofollow, noarchive"],
  ["Cache-Control", "no-cache"],
];
const NEVER_CHANGING: readonly (readonly [string, string])[] = [
  ["Cache-Control", "public, max-age=31536000, immutable"],
];

/**
 * Headers for the hosts that read them from a file: `_headers` for many, `.htaccess` for Apache. Nothing private depends on
 * them, since some hosts read neither. None names a locked page.
 */
export function hostingFiles(base: string): readonly HostingFile[] {
  const block = (path: string, headers: typeof EVERYWHERE): string =>
    [`${base}${path}`, ...headers.map(([name, value]) => `  ${name}: ${value}`)].join("\n");
  const apache = (headers: typeof EVERYWHERE): string =>
    headers.map(([name, value]) => `  Header always set ${name} "${value}"`).join("\n");
  return [
    {
      name: "_headers",
      text: `${[block("*", EVERYWHERE), block("b/*", LOCKED), block("_astro/*", NEVER_CHANGING)].join("\n\n")}\n`,
    },
    {
      name: ".htaccess",
      text: `AddType text/calendar .ics
AddType application/octet-stream .bin
ErrorDocument 404 ${base}404.html
<IfModule mod_headers.c>
${apache(EVERYWHERE)}
<If "%{REQUEST_URI} =~ m#^${base}b/#">
${apache(LOCKED)}
</If>
<If "%{REQUEST_URI} =~ m#^${base}_astro/#">
${apache(NEVER_CHANGING)}
</If>
</IfModule>
`,
    },
    // One host would leave out folders that begin with an underscore.
    { name: ".nojekyll", text: "" },
  ];
}
