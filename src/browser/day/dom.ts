/** What an element is made with: a class, a click, and attributes by their names. */
type Props = {
  readonly class?: string;
  readonly click?: () => void;
  readonly attributes?: Readonly<Record<string, string>>;
};

/** Makes an element with what stands in it. Text stays text. */
export function make<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  { class: className, click, attributes = {} }: Props = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag);
  if (className !== undefined) element.className = className;
  if (click) element.addEventListener("click", click);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children);
  return element;
}

/** A button; `key` finds it again after the screen is drawn anew, so that the focus stays where it was. */
export const button = (
  label: string,
  click: () => void,
  { key = label, class: className = "", pressed }: { key?: string; class?: string; pressed?: boolean } = {},
): HTMLButtonElement =>
  make(
    "button",
    {
      class: className,
      click,
      attributes: {
        type: "button",
        "data-key": key,
        ...(pressed !== undefined && { "aria-pressed": String(pressed) }),
      },
    },
    label,
  );

/** Sets a text only where it differs, so that nothing is drawn or read out again for nothing. */
export function setText(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}

const SVG = "http://www.w3.org/2000/svg";

/** Makes a shape of a drawing. */
export function shape(tag: string, attributes: Readonly<Record<string, string | number>>): SVGElement {
  const element: SVGElement = document.createElementNS<"svg">(SVG, tag as "svg");
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  return element;
}
