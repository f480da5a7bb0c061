import { describe, expect, it } from "vitest";
import { hostingFiles } from "../../src/site/hosting-files.ts";

const files = (base: string) => new Map(hostingFiles(base).map(({ name, text }) => [name, text]));

describe("files for the host", () => {
  it("give headers by path, below the path of the site", () => {
    expect(files("/gym/").get("_headers")).toBe(`/gym/*
  X-Content-Type-Options: nosniff
  Referrer-Policy: no-referrer
  Content-Security-Policy: frame-ancestors 'none'
  Cross-Origin-Opener-Policy: same-origin
  Permissions-Policy: camera=(), geolocation=(), microphone=()

/gym/b/*
  X-Robots-Tag: noindex, nofollow, noarchive
  Cache-Control: no-cache

/gym/_astro/*
  Cache-Control: public, max-age=31536000, immutable
`);
  });

  it("say the same to Apache, with the types it does not know", () => {
    const text = files("/").get(".htaccess");
    expect(text).toContain("AddType text/calendar .ics\n");
    expect(text).toContain("ErrorDocument 404 /404.html\n");
    expect(text).toContain(
      '<If "%{REQUEST_URI} =~ m#^/b/#">\n  Header always set X-Robots-Tag "noindex, nofollow, noarchive"',
    );
  });

  it("keep folders that begin with an underscore on a host that leaves them out", () => {
    expect(files("/").get(".nojekyll")).toBe("");
  });
});
