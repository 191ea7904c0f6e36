import { adjusterNumbers } from '../../../calculators/index.ts';
import type { QuestionsProps } from './calculator.ts';

const columns = [
  ['closing', 'to close'],
  ['opening', 'to open'],
  ['planned', 'plan'],
] as const;

const why = {
  lengths:
    'Millimetres of thread that show on the side that is used up by closing, and by opening; the nut is part of it. Plan: turns, such as 1/2 or -1/4; plus opens.',
  turns:
    'Turns to the end each way, counted with the engine cold, the nut loose and the screw brought back. Stop before the last threads. Plan: turns, such as 1/2 or -1/4; plus opens.',
} as const;

/** Thread and plan of every adjuster, a line each; a problem stands above the lines and names its own. */
export default function AdjusterQuestions({ calculator }: QuestionsProps) {
  const { form, change, problemOf } = calculator;
  const shown = adjusterNumbers.filter((number) => String(number) <= form.adjusters);
  const fields = shown.flatMap((number) =>
    columns.map(([column, words]) => ({ field: `${column}${number}` as const, words, number })),
  );
  const problems = fields.flatMap(({ field, words, number }) => {
    const problem = problemOf(field);
    return problem === undefined
      ? []
      : [{ field, sentence: `Adjuster ${number}, ${words}: ${problem.sentence}` }];
  });
  return (
    <fieldset class="question">
      <legend>Thread and plan of each adjuster</legend>
      <p class="why" id="adjusters-why">
        {why[form.showing === 'turns' ? 'turns' : 'lengths']}
      </p>
      {problems.map(({ field, sentence }) => (
        <p key={field} class="wrong" id={`${field}-wrong`}>
          {sentence}
        </p>
      ))}
      <table class="table cells">
        <thead>
          <tr>
            <th scope="col">No.</th>
            {columns.map(([column, words]) => (
              <th key={column} scope="col">
                {words}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shown.map((number) => (
            <tr key={number}>
              <th scope="row">{number}</th>
              {fields
                .filter((each) => each.number === number)
                .map(({ field, words }) => (
                  <td key={field}>
                    <input
                      class="write"
                      type="text"
                      id={field}
                      name={field}
                      autocomplete="off"
                      autocapitalize="none"
                      spellcheck={false}
                      enterkeyhint="next"
                      aria-label={`Adjuster ${number}, ${words}`}
                      aria-invalid={problemOf(field) !== undefined}
                      aria-describedby={problemOf(field) === undefined ? 'adjusters-why' : `${field}-wrong`}
                      value={form[field]}
                      onInput={({ currentTarget: { value } }) => change({ [field]: value })}
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
