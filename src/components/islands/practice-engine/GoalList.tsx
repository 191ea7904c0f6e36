import type { GoalPart } from '../../../calculators/index.ts';

/** The parts of a lesson's goal, and which are reached. */
export function GoalList({ parts }: { readonly parts: readonly GoalPart[] }) {
  const isReached = parts.every(({ reached }) => reached);
  return (
    <section class="goal" aria-labelledby="goal">
      <h2 id="goal">{isReached ? 'Goal reached' : 'Goal'}</h2>
      <ul class="leaders">
        {parts.map(({ words, reached }) => (
          <li key={words}>
            <span>{words}</span>
            <b>{reached ? 'reached' : 'not yet'}</b>
          </li>
        ))}
      </ul>
      <p class="unseen" role="status">
        {isReached ? 'The goal of the lesson is reached.' : ''}
      </p>
    </section>
  );
}
