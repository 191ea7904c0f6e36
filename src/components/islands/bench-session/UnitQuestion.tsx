import { pressureUnits } from '../../../calculators/index.ts';

/** The unit that the gauge is marked in; readings may still be typed in another. */
export function UnitQuestion({
  value,
  wrong,
  onChange,
}: {
  value: string;
  wrong: string | undefined;
  onChange: (unit: string) => void;
}) {
  return (
    <div class="question">
      <label for="unit">Unit of the gauge</label>
      <p class="why">As printed on its dial. A reading may still be typed with another unit: 9 1/2 inHg.</p>
      {wrong !== undefined && (
        <p class="wrong" id="unit-wrong">
          {wrong}
        </p>
      )}
      <p>
        <select
          id="unit"
          class="write"
          value={value}
          aria-invalid={wrong !== undefined}
          aria-describedby={wrong === undefined ? undefined : 'unit-wrong'}
          onChange={(event) => onChange(event.currentTarget.value)}
        >
          {pressureUnits.map(({ id, symbol }) => (
            <option key={id} value={id}>
              {symbol}
            </option>
          ))}
        </select>
      </p>
    </div>
  );
}
