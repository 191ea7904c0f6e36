import { threadNamed, threadsOf, threadTables } from '../../../calculators/index.ts';
import type { ThreadSystem } from '../../../calculators/index.ts';
import ChoiceField from '../calculator/ChoiceField.tsx';
import TextField from '../calculator/TextField.tsx';
import type { QuestionsProps, ThreadField } from './calculator.ts';

interface Props extends QuestionsProps {
  /** What the thread belongs to: “Thread of the adjusters”. */
  readonly label: string;
  readonly why?: string;
  readonly fields: Readonly<Record<'from' | 'thread' | 'turns' | 'travel', ThreadField>>;
}

/** The size that a system begins with: the one that adjusters are seen with most (from memory). */
const usual: Readonly<Record<ThreadSystem, string>> = {
  'iso-coarse': 'M5',
  'iso-fine': 'M5x0.5',
  unc: '#10 UNC',
  unf: '#10 UNF',
  ba: '2BA',
  bsf: '1/4 BSF',
  bsw: '3/16 BSW',
};

/** A thread by its system and size, or by what a measured number of turns goes. */
export default function ThreadQuestions({ calculator, label, why, fields }: Props) {
  const { form, change } = calculator;
  const measured = form[fields.from] === 'measured';
  const chosen = threadNamed(form[fields.thread]);
  const system = chosen?.system ?? 'iso-coarse';
  const systemId = `${fields.thread}System`;
  return (
    <div class="pairs">
      <div class="question">
        <label for={systemId}>{label}</label>
        {why !== undefined && (
          <p class="why" id={`${systemId}-why`}>
            {why}
          </p>
        )}
        <p class="with-unit">
          <select
            class="write"
            id={systemId}
            value={measured ? 'measured' : system}
            aria-describedby={why && `${systemId}-why`}
            onChange={({ currentTarget: { value } }) =>
              change(
                value === 'measured'
                  ? { [fields.from]: 'measured' }
                  : { [fields.from]: 'table', [fields.thread]: usual[value as ThreadSystem] },
              )
            }
          >
            {threadTables.map((table) => (
              <option key={table.system} value={table.system} selected={!measured && table.system === system}>
                {table.heading}
              </option>
            ))}
            <option value="measured" selected={measured}>
              Measured pitch
            </option>
          </select>
        </p>
      </div>
      {measured ? (
        <>
          <TextField
            calculator={calculator}
            field={fields.turns}
            label="So many turns"
            why="Ten or more: then a ruler is good enough."
            digits
          />
          <TextField
            calculator={calculator}
            field={fields.travel}
            label="go this far"
            why="Without a unit: millimetres."
          />
        </>
      ) : (
        <ChoiceField
          calculator={calculator}
          field={fields.thread}
          label="Size"
          options={[
            // A name that a link brought and no table holds stays on offer, so that the field shows what is wrong.
            ...(chosen === undefined ? [[form[fields.thread], form[fields.thread]] as const] : []),
            ...threadsOf(system).map(({ name }) => [name, name.replace('x', ' × ')] as const),
          ]}
          as="select"
        />
      )}
    </div>
  );
}
