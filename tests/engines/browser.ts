/** One window of a browser, as a person uses it and as a test looks into it. */
export interface EngineWindow {
  /** Ends also where nothing answers: the window then shows the browser's own page. */
  readonly open: (address: string) => Promise<void>;
  readonly reload: () => Promise<void>;
  /** Presses the first shown element of a selector whose name begins with the words; waits until there is one. */
  readonly click: (selector: string, words?: string) => Promise<void>;
  /** Types into a field by keys, in place of what stands there. */
  readonly type: (selector: string, text: string) => Promise<void>;
  /** Chooses a file in a file field. */
  readonly choose: (selector: string, file: string) => Promise<void>;
  /** Runs a function in the page; it sees nothing but what it is given. */
  readonly evaluate: <Given extends readonly unknown[], Answer>(
    work: (...given: Given) => Answer | Promise<Answer>,
    ...given: Given
  ) => Promise<Answer>;
  /** A picture of what is in sight, as PNG. */
  readonly picture: () => Promise<Buffer>;
  readonly close: () => Promise<void>;
}

export interface EngineBrowser {
  readonly version: string;
  /** Where it puts what is saved to a file. */
  readonly downloads: string;
  /** What its pages have logged as an error or a warning. */
  readonly complaints: readonly string[];
  readonly newWindow: () => Promise<EngineWindow>;
  readonly close: () => Promise<void>;
}

export interface Start {
  /** A folder with everything that the browser keeps. */
  readonly profile: string;
  /** A script that every page runs before its own. */
  readonly beforeLoad?: string;
}

export interface Engine {
  readonly name: string;
  readonly start: (start: Start) => Promise<EngineBrowser>;
}

/** A machine that does other work as well is slow, not wrong. */
export const patienceMs = 30_000;

/** A call of a function as an expression that a page can be given. */
export const callOf = (work: (...given: never[]) => unknown, given: readonly unknown[]): string =>
  `(${work.toString()})(...${JSON.stringify(given)})`;

/** Runs in the page. */
export const findShown = (selector: string, words: string): Element | null => {
  const nameOf = (element: Element) =>
    (element.getAttribute('aria-label') ?? element.textContent ?? '').replaceAll(/\s+/gu, ' ').trim();
  const isShown = (element: Element) => element.checkVisibility() && !element.matches(':disabled');
  const found = [...document.querySelectorAll(selector)];
  return found.find((element) => isShown(element) && nameOf(element).startsWith(words)) ?? null;
};
