import { linesOf } from '../../../calculators/index.ts';
import type { ChecklistBlock } from '../../../calculators/index.ts';
import type { Ticks } from './use-ticks.ts';

interface Props {
  readonly block: ChecklistBlock;
  readonly ticks: Ticks;
  readonly level: 'h2' | 'h3';
}

/** A block of lines with its hold points. */
export function Block({ block, ticks, level: Heading }: Props) {
  const ids = linesOf(block).map(({ id }) => id);
  const done = ids.filter(ticks.isTicked).length;
  return (
    <section data-block={block.id}>
      <div class="block-head">
        <Heading id={`block-${block.id}`}>{block.heading}</Heading>
        <button
          type="button"
          class="plain needs-script"
          aria-label={`Start the block again: ${block.heading}`}
          disabled={done === 0}
          onClick={() => ticks.clear(ids)}
        >
          Start the block again
        </button>
      </div>
      {block.parts.map((part, place) => (
        <div key={place}>
          <ol class="leaders" aria-labelledby={`block-${block.id}`}>
            {part.lines.map(({ id, item, answer }) => (
              <li key={id}>
                <label>
                  <input
                    type="checkbox"
                    name={id}
                    aria-describedby={`answer-${id}`}
                    checked={ticks.isTicked(id)}
                    onChange={(event) => ticks.tick(id, event.currentTarget.checked)}
                  />
                  {item}
                </label>
                <span id={`answer-${id}`}>{answer}</span>
              </li>
            ))}
          </ol>
          {part.hold !== undefined && <p class="hold">{part.hold}</p>}
        </div>
      ))}
    </section>
  );
}
