import type { LimitLine } from '../../../calculators/index.ts';

interface Props {
  readonly lines: readonly LimitLine[];
}

/** Every published limit, and how soon this sum is past it. */
export default function LimitTable({ lines }: Props) {
  return (
    <table class="table loose">
      <caption>
        How soon each published limit is passed, in minutes and seconds, if the engine runs on. A time tells
        when the sum is past the limit, not how long anybody may stay. A dash tells only that this sum does
        not pass it within a day. The last column is the average over the limit’s own time, all other air
        being clean.
      </caption>
      <thead>
        <tr>
          <th scope="col">limit</th>
          <th scope="col" class="num">
            air
          </th>
          <th scope="col" class="num">
            average
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <tr key={line.id} data-limit={line.id}>
            <th scope="row">
              {line.value} {line.over}{' '}
              <small>
                {line.who}: {line.meaning}
                {line.fromMemory && ' (from memory)'}
              </small>
            </th>
            <td class="num">{line.airAfter}</td>
            <td class="num">{line.averageAfter}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
