import { textAt } from "../charts/shapes.ts";
import type { Station } from "../wording/stations.ts";
import { TEXT_CAPITALS } from "./figure-size.ts";
import { PIECE_GAP, WORD_PITCH, type KeyPanel } from "./key-panel.ts";
import { panelHeading } from "./panel-heading.ts";
import type { Measured } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

/** Capitals of what to load, set and see, as a share of those of the work: it is set before, the work is read on the way. */
const DETAIL_SHARE = 0.62;

const detailSize = (capitals: number, setter: Setter): number =>
  setter.sizeFor(Math.max(TEXT_CAPITALS, capitals * DETAIL_SHARE), true);

/** Width of a station with everything about it on one line. */
function stationWidth({ work, details }: Station, capitals: number, setter: Setter): number {
  const words = setter.measure(work, setter.sizeFor(capitals, true), true);
  const more = setter.measure(details.join("  "), detailSize(capitals, setter), true);
  return words + (details.length > 0 ? capitals * PIECE_GAP + more : 0);
}

function stationRow({ work, details }: Station, capitals: number, setter: Setter): Measured {
  const size = setter.sizeFor(capitals, true);
  const after = setter.measure(work, size, true) + capitals * PIECE_GAP;
  return {
    height: capitals * WORD_PITCH,
    place: (x, y) => ({
      marks: [],
      nodes: [
        {
          tag: "TR",
          children: [
            {
              tag: "TH",
              scope: "Row",
              shapes: [textAt(x, y + capitals, `${work} `, size, { strong: true })],
            },
            ...(details.length === 0
              ? []
              : [
                  {
                    tag: "TD" as const,
                    shapes: [
                      textAt(x + after, y + capitals, details.join("  "), detailSize(capitals, setter), {
                        strong: true,
                      }),
                    ],
                  },
                ]),
          ],
        },
      ],
    }),
  };
}

/** What each round is made of, a station a row: amount, movement, own load, height and pace. */
export function stationPanel(
  stations: readonly Station[],
  heading: string,
  capitals: number,
  setter: Setter,
): KeyPanel | undefined {
  if (stations.length === 0) return undefined;
  const width = Math.max(...stations.map((station) => stationWidth(station, capitals, setter)));
  return {
    width,
    heading: panelHeading([{ text: heading, left: 0 }], { capitals, width }, setter),
    rows: stations.map((station) => stationRow(station, capitals, setter)),
  };
}
