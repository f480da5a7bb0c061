/** Everything that can keep a locked page from opening, or a file of it from being saved. */
export type Trouble =
  | "insecure"
  | "old-browser"
  | "no-key"
  | "cut-off-key"
  | "mistyped-key"
  | "wrong-key"
  | "damaged-file"
  | "newer-version"
  | "wrong-passcode"
  | "no-network"
  | "file-missing";

type Message = { readonly title: string; readonly text: string };

/** What each trouble is called and what helps. Shown on the page as it stands here. */
export const MESSAGES: Readonly<Record<Trouble, Message>> = {
  insecure: {
    title: "This connection cannot open locks",
    text: "The address begins with http and not https, so the browser does not let the page open anything. Put an s behind http in the address, or ask your coach for the right link. Your link itself is fine.",
  },
  "old-browser": {
    title: "This browser is too old",
    text: "It lacks what opening the lock needs. Update it, or open the link in a current version of another browser. Some messengers show links in a browser of their own: choose “open in browser” there.",
  },
  "no-key": {
    title: "The key is missing",
    text: "The end of the link, from the sign # on, is the key, and it is not there. Open the link your coach sent you by tapping it, or copy all of it.",
  },
  "cut-off-key": {
    title: "The link was cut off",
    text: "The key at the end of the link is too short: a part was lost on the way. Copy the whole link, to its very end, or ask your coach to send it again.",
  },
  "mistyped-key": {
    title: "There is a slip in the link",
    text: "The key at the end of the link has a wrong sign. Copy the link instead of typing it, or ask your coach to send it again.",
  },
  "wrong-key": {
    title: "The key does not fit this page",
    text: "The key belongs to another page, or your links were renewed since. Ask your coach for the new link.",
  },
  "damaged-file": {
    title: "The page arrived damaged",
    text: "Its content is not what was locked. Load it again with a better connection; if that does not help, tell your coach that the site must be put up again. Your link is fine.",
  },
  "newer-version": {
    title: "This page is older than its content",
    text: "The browser kept an old copy of the page. Load it again.",
  },
  "wrong-passcode": {
    title: "The passcode is not right",
    text: "Nothing was opened. Capitals, spaces and hyphens do not matter; look at each sign once more, or ask your coach for the passcode.",
  },
  "no-network": {
    title: "There is no network",
    text: "The file is not kept on this device. Save it once while you have a network.",
  },
  "file-missing": {
    title: "The file is not there",
    text: "The site no longer has it. Load the page again; if that does not help, tell your coach.",
  },
};
