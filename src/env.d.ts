declare namespace App {
  interface Locals {
    /** Sources of the handbook page that is being rendered, in the order of their numbers. */
    sources?: readonly import('./content/sources.ts').SourceId[];
    /** Terms of the glossary that this page has explained already. */
    explainedTerms?: Set<import('./content/glossary.ts').TermId>;
  }
}

declare namespace Astro {
  interface ClientDirectives {
    /** Starts the island with the page: src/device/start-now.ts. */
    'client:now'?: boolean;
    /** Starts the island when it is used; the value is the slug of its kept entries: src/device/start-when-used.ts. */
    'client:use'?: string | true;
  }
}
