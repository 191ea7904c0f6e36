declare namespace App {
  interface Locals {
    /** Sources of the handbook page that is being rendered, in the order of their numbers. */
    sources?: readonly import('./content/sources.ts').SourceId[];
  }
}
