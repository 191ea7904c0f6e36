import type { SetUpAnswers } from '../../../calculators/index.ts';
import { membersWords } from '../../../calculators/index.ts';

type Thread = SetUpAnswers['thread'];
const sides = ['closing', 'opening'] as const;

/** Thread left on every screw; what was not counted stays empty. */
export function ThreadQuestion({
  screws,
  thread,
  wrong,
  onChange,
}: {
  screws: readonly (readonly number[])[];
  thread: Thread;
  wrong: (field: string) => string | undefined;
  onChange: (thread: Thread) => void;
}) {
  if (screws.length === 0) return null;
  const write = (screw: number, side: 'closing' | 'opening', value: string): void =>
    onChange(
      screws.map((_, j) => {
        const left = thread[j] ?? { closing: '', opening: '' };
        return j === screw ? { ...left, [side]: value } : left;
      }),
    );
  const problems = screws.flatMap((_, j) => sides.flatMap((side) => wrong(`thread.${j}.${side}`) ?? []));
  return (
    <fieldset class="question">
      <legend>Thread left on each screw, in turns</legend>
      <p class="why">
        Count turns to the stop, engine cold, and bring the screw back. Leave empty what you have not counted:
        the advice then cannot keep to it.
      </p>
      {problems.map((words) => (
        <p key={words} class="wrong">
          {words}
        </p>
      ))}
      <table class="table">
        <thead>
          <tr>
            <th scope="col">Screw</th>
            <th scope="col">to close</th>
            <th scope="col">to open</th>
          </tr>
        </thead>
        <tbody>
          {screws.map((moves, j) => (
            <tr key={j}>
              <th scope="row">{membersWords(moves)}</th>
              {sides.map((side) => (
                <td key={side}>
                  <input
                    class="write"
                    id={`thread.${j}.${side}`}
                    autocomplete="off"
                    autocapitalize="none"
                    aria-label={`Screw of ${membersWords(moves)}, turns ${side === 'closing' ? 'to close' : 'to open'}`}
                    aria-invalid={wrong(`thread.${j}.${side}`) !== undefined}
                    value={thread[j]?.[side] ?? ''}
                    onInput={(event) => write(j, side, event.currentTarget.value)}
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </fieldset>
  );
}
