declare namespace App {
  interface Locals {
    /** Sources of the handbook page that is being rendered, in the order of their numbers. */
    sources?: readonly import('./content/sources.ts').SourceId[];
    /** Terms of the glossary that this page has explained already. */
    explainedTerms?: Set<import('./content/glossary.ts').TermId>;
  }
}
