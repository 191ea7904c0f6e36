import type { AnswerLine } from '../../../calculators/index.ts';
import type { Announced, Calculator } from './use-calculator.ts';

interface Props<Field extends string> {
  readonly calculator: Calculator<Announced, Field>;
  readonly caption: string;
  readonly lines: readonly AnswerLine[];
}

/** A figure a line; a tap copies it with its unit. */
export default function AnswerRows<Field extends string>({ calculator, caption, lines }: Props<Field>) {
  const { copied } = calculator;
  const note = ({ copied: text, note: words }: AnswerLine): string =>
    copied.text === text ? (copied.done ? 'copied' : 'not copied') : (words ?? '');
  return (
    <table class="table answers">
      <caption>{caption}</caption>
      <tbody>
        {lines.map((line) => (
          <tr key={line.id} data-answer={line.id}>
            <th scope="row">
              {line.label} <small>{note(line)}</small>
            </th>
            <td class="num">
              <button
                type="button"
                class="plain"
                aria-label={`Copy ${line.label}: ${line.text}`}
                onClick={() => calculator.copy(line.copied)}
              >
                {line.text}
              </button>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
