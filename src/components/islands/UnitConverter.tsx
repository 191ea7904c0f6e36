import { useRef } from 'preact/hooks';
import {
  pressureKindWords,
  pressureKinds,
  pressureUnits,
  unitConverterExample,
} from '../../calculators/index.ts';
import type { ConversionTable } from '../../calculators/index.ts';
import ConversionRows from './unit-converter/ConversionRows.tsx';
import TextQuestion from './unit-converter/TextQuestion.tsx';
import { useUnitConverter } from './unit-converter/use-unit-converter.ts';

export default function UnitConverter() {
  const converter = useUnitConverter();
  const { form, answer, change } = converter;
  // The shape of the last answer stays while there is none, so that nothing jumps.
  const lastTable = useRef<ConversionTable | null>(null);
  if ('table' in answer) lastTable.current = answer.table;
  const table = lastTable.current;
  const rows = {
    headings: table?.headings ?? [],
    answered: 'table' in answer,
    copied: converter.copied,
    onCopy: converter.copy,
  };
  const usual = table?.lines.filter(({ rare }) => !rare) ?? [];
  const rare = table?.lines.filter((line) => line.rare) ?? [];
  const negative = 'problem' in answer && answer.problem.kind === 'negative-depression';
  const noAnswer = `No answer yet: see the words beside “${'field' in answer && answer.field === 'ambient' ? 'Ambient pressure' : 'Reading'}”.`;

  return (
    <form class="converter" onSubmit={(event) => event.preventDefault()}>
      {converter.notices.length > 0 && (
        <div class="errors across" role="alert">
          {converter.notices.map((notice) => (
            <p key={notice}>{notice}</p>
          ))}
        </div>
      )}

      <div>
        <TextQuestion
          id="typed"
          label="Reading"
          why="Such as 9 inHg, 12,5 cmHg or 9 1/2 inHg. Without a unit, the one beside it is taken."
          first={unitConverterExample.typed}
          answer={answer}
          field={converter.typedField}
          onType={(typed) => change({ typed })}
          cures={
            negative && (
              <p class="actions">
                <button type="button" class="button" onClick={() => change({ kind: 'gauge' })}>
                  Read it as a signed gauge pressure
                </button>
              </p>
            )
          }
        >
          <select
            class="write"
            aria-label="Unit, if none is typed"
            value={form.usualUnit}
            onChange={(event) => converter.changeUnit(event.currentTarget.value)}
          >
            {pressureUnits.map(({ id, symbol }) => (
              <option key={id} value={id}>
                {symbol}
              </option>
            ))}
          </select>
        </TextQuestion>

        <section aria-label="Answer">
          <p class="understood">{'table' in answer ? answer.table.understood : noAnswer}</p>
          <p class="copied aside" role="status">
            {converter.copied.words}
          </p>
          <ConversionRows
            {...rows}
            caption="In every unit. Tap a figure to copy it with its unit."
            lines={usual}
            columns={[0]}
          />
          <details>
            <summary>Columns at a named temperature</summary>
            <ConversionRows
              {...rows}
              caption="For an instrument that says 60 °F or 39.2 °F. Without such a mark the table above is meant."
              lines={rare}
              columns={[0]}
            />
          </details>
          <p class="actions">
            <button type="button" class="button" onClick={converter.copyLink}>
              Copy the link
            </button>
          </p>
          <p class="unseen" role="status">
            {converter.announced}
          </p>
        </section>
      </div>

      <div>
        <fieldset class="question">
          <legend>Counted from</legend>
          <p class="why">
            A vacuum gauge shows a depression: how far the intake is below the air around the engine.
          </p>
          <div class="options list">
            {pressureKinds.map((kind) => (
              <label key={kind}>
                <input
                  type="radio"
                  name="kind"
                  checked={form.kind === kind}
                  onChange={() => change({ kind })}
                />
                <span>{pressureKindWords[kind].choice}</span>
              </label>
            ))}
          </div>
        </fieldset>

        <TextQuestion
          id="ambient"
          label="Ambient pressure"
          why="101.325 kPa is the standard atmosphere at sea level (source 2). A barometer’s own figure is better, not the one reduced to sea level. Without a unit: kPa."
          first={unitConverterExample.ambientTyped}
          answer={answer}
          field={converter.ambientField}
          onType={(ambientTyped) => change({ ambientTyped })}
        />

        {rows.headings.length > 1 && (
          <ConversionRows
            {...rows}
            caption="The same state, counted otherwise."
            lines={usual}
            columns={[1, 2]}
          />
        )}
      </div>
    </form>
  );
}
