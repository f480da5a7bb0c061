#!/usr/bin/env bash
# Cuts the web fonts out of the full fonts beside this file. Needs Debian's python3-fonttools and python3-brotli.
# The ranges are those of `WEB_SUBSETS` in font-files.ts; a test compares them.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

cut() { # name, ranges
  for weight in 400 600; do
    /usr/bin/python3 -m fontTools.subset "fira-sans-condensed-$weight.ttf" --unicodes="$2" --flavor=woff2 \
      --layout-features=kern,liga,mark,mkmk,ccmp,locl,tnum --no-hinting --desubroutinize \
      --output-file="fira-sans-condensed-$weight-$1.woff2"
  done
}

cut latin "U+0020-007E,U+00A0-017F,U+0192,U+0218-021B,U+02BC,U+02C6-02DD,U+2010-2027,U+202F-203A,U+20AC,U+2190-2193,U+2212,U+2248,U+2260,U+2264-2265"
cut vietnamese "U+01A0-01A1,U+01AF-01B0,U+0300-0303,U+0309,U+0323,U+1EA0-1EF9,U+20AB"
cut greek "U+0370-03FF"
cut cyrillic "U+0400-045F,U+0490-0491,U+04B0-04B1,U+2116"
