import type { ChecklistRecord } from '../../../calculators/index.ts';

/** A line of paper for each carburettor, to be written in by hand. */
export function PaperRecord({
  record: { caption, columns },
  carburettors,
}: {
  readonly record: ChecklistRecord;
  readonly carburettors: number;
}) {
  return (
    <table class="table record">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <td />
          {columns.map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: carburettors }, (_, place) => (
          <tr key={place}>
            <th scope="row">{place + 1}</th>
            {columns.map((column) => (
              <td key={column} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
