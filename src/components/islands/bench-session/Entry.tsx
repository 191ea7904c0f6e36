import type { RefObject } from 'preact';
import { pressureUnits } from '../../../calculators/index.ts';

type Props = {
  readonly carburettor: number;
  readonly expected: string | null;
  readonly typed: string;
  readonly wrong: string | null;
  readonly question: readonly { readonly label: string; readonly choose: () => void }[];
  readonly unit: string;
  readonly mark: 'point' | 'comma';
  readonly records: string;
  readonly undoes: string;
  readonly canUndo: boolean;
  readonly systemKeyboard: boolean;
  readonly speed: { readonly typed: string; readonly target: string; readonly wrong: string | null } | null;
  readonly field: RefObject<HTMLInputElement>;
  readonly onType: (typed: string) => void;
  readonly onSpeed: (typed: string) => void;
  readonly onUnit: (unit: string) => void;
  readonly onUndo: () => void;
  readonly onRecord: () => void;
};

/** The reading and the keys: big enough for a glove, and the system's own keyboard where it is wanted. */
export function Entry(props: Props) {
  const { typed, wrong, speed, mark } = props;
  const press = (text: string) => () => props.onType(typed + text);
  const key = (text: string, label?: string) => (
    <button class="key" type="button" aria-label={label} onClick={press(text)}>
      {text === ' ' ? '␣' : text}
    </button>
  );
  return (
    <form
      class="entry"
      aria-label="Reading after the move"
      onSubmit={(event) => {
        event.preventDefault();
        props.onRecord();
      }}
    >
      {wrong !== null && (
        <div class="wrong entry-wrong" role="alert" id="reading-wrong">
          <p>{wrong}</p>
          {props.question.map(({ label, choose }) => (
            <button key={label} class="button" type="button" onClick={choose}>
              {label}
            </button>
          ))}
        </div>
      )}
      <p class="reading">
        <label for="reading">
          <b>Carburettor {props.carburettor}</b>
          {props.expected !== null && (
            <>
              <br />
              expect {props.expected}
            </>
          )}
        </label>
        <input
          ref={props.field}
          id="reading"
          inputMode={props.systemKeyboard ? 'text' : 'none'}
          autocomplete="off"
          autocapitalize="none"
          enterkeyhint="done"
          spellcheck={false}
          value={typed}
          aria-invalid={wrong !== null}
          aria-describedby={wrong === null ? undefined : 'reading-wrong'}
          onInput={(event) => props.onType(event.currentTarget.value)}
        />
      </p>
      <select
        class="key word"
        aria-label="Unit of the readings"
        value={props.unit}
        onChange={(event) => props.onUnit(event.currentTarget.value)}
      >
        {pressureUnits
          .filter(({ rare, id }) => !rare || id === props.unit)
          .map(({ id, symbol }) => (
            <option key={id} value={id}>
              {symbol}
            </option>
          ))}
      </select>
      {key('1')}
      {key('2')}
      {key('3')}
      <button class="key word" type="button" disabled={!props.canUndo} onClick={props.onUndo}>
        Undo <small>{props.undoes}</small>
      </button>
      {key('4')}
      {key('5')}
      {key('6')}
      {key(' ', 'space, between 9 and 1/2')}
      {key('7')}
      {key('8')}
      {key('9')}
      <button class="key word first" type="submit">
        Record <small>{props.records}</small>
      </button>
      {key('/', 'fraction stroke')}
      {key('0')}
      {key(mark === 'comma' ? ',' : '.', 'decimal mark')}
      {speed !== null && (
        <p class="speed">
          {speed.wrong !== null && (
            <span class="wrong" role="alert" id="speed-wrong">
              {speed.wrong}
            </span>
          )}
          <label for="speed">Speed at this reading, if not {speed.target}</label>
          <input
            id="speed"
            class="write"
            inputMode="numeric"
            autocomplete="off"
            value={speed.typed}
            aria-invalid={speed.wrong !== null}
            aria-describedby={speed.wrong === null ? undefined : 'speed-wrong'}
            onInput={(event) => props.onSpeed(event.currentTarget.value)}
          />
          <span>rpm</span>
        </p>
      )}
    </form>
  );
}
