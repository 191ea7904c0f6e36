import type { ComponentChildren } from 'preact';
import type { Announced, Calculator } from './use-calculator.ts';

interface Props<Described extends Announced, Field extends string> {
  readonly calculator: Calculator<Described, Field>;
  /** The answer in a sentence: the largest thing beside the form. */
  readonly lead: (answer: Described) => string;
  readonly children: (answer: Described) => ComponentChildren;
}

/** The answer, and what can be done with it. Without one its place is kept, and nothing of an older one can be read. */
export default function AnswerSection<Described extends Announced, Field extends string>({
  calculator,
  lead,
  children,
}: Props<Described, Field>) {
  const { answer, stale } = calculator;
  return (
    <section class="answered flow" aria-label="Answer">
      {stale || answer === null ? (
        <div class="understood">
          <p>No answer yet.</p>
          <button type="button" class="plain" onClick={calculator.lookAtProblem}>
            Go to what has to be put right
          </button>
        </div>
      ) : (
        <p class="understood">{lead(answer)}</p>
      )}
      {answer !== null && <div class={stale ? 'flow stale' : 'flow'}>{children(answer)}</div>}
      <p class="copied aside" role="status">
        {calculator.copied.words}
      </p>
      <p class="actions">
        <button type="button" class="button" onClick={calculator.copyLink}>
          Copy the link
        </button>
        <button type="button" class="button" onClick={calculator.startAgain}>
          Back to the example
        </button>
      </p>
      <p class="unseen" role="status">
        {calculator.announced}
      </p>
    </section>
  );
}
