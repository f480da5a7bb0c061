import { describe, expect, it } from "vitest";
import { fillShell, SHELL_ADDRESS, SHELL_CONTENT } from "../../src/site/page-shell.ts";

describe("the page from which locked pages are made", () => {
  it("takes an address and what is locked", () => {
    const shell = `<main data-address="${SHELL_ADDRESS}"><template>${SHELL_CONTENT}</template></main>`;
    expect(fillShell(shell, "0123456789ABCDEF", "$&bG9jaw==")).toBe(
      '<main data-address="0123456789ABCDEF"><template>$&bG9jaw==</template></main>',
    );
  });

  it("is refused where it has no single place for them", () => {
    for (const shell of ["", SHELL_ADDRESS, SHELL_CONTENT, SHELL_ADDRESS + SHELL_CONTENT + SHELL_CONTENT]) {
      expect(() => fillShell(shell, "A", "B")).toThrow(/no single place/);
    }
  });
});
