import { formatFixed, isShort, type Estimate } from '../../../calculators/index.ts';
import { threadPlace } from '../../../drawing/thread-place.ts';
import { screwLabel, type Figures } from './words.ts';

/** Thread left on every screw, in turns each way, and where the screw stands in it. */
export function ThreadTable({ turnsLeft, figures }: { turnsLeft: Estimate['turnsLeft']; figures: Figures }) {
  const known = turnsLeft.some((left) => left !== null);
  if (!known)
    return (
      <p class="quiet">Not counted at set-up, so the advice cannot keep to it. Stop before a screw binds.</p>
    );
  const turns = (amount: number): string => formatFixed(amount, 2, { mark: figures.mark });
  return (
    <table class="table">
      <thead>
        <tr>
          <th scope="col">Screw</th>
          <th scope="col" class="num">
            to close
          </th>
          <th scope="col">
            <span class="unseen">where it stands</span>
          </th>
          <th scope="col">to&nbsp;open</th>
        </tr>
      </thead>
      <tbody>
        {turnsLeft.map((left, j) => {
          const place = left && threadPlace(left);
          return (
            <tr key={j}>
              <th scope="row">{screwLabel(figures.setUp, j + 1)}</th>
              {left && place ? (
                <>
                  <td class={`num${isShort({ closing: left.closing }) ? ' late' : ''}`}>
                    {turns(left.closing)}
                  </td>
                  <td class="travel">
                    <svg class="strip" height="18" aria-hidden="true">
                      <line class="axis" x1="0" x2="100%" y1="9" y2="9" />
                      <line class="whisker" x1={place} x2={place} y1="2" y2="16" />
                    </svg>
                  </td>
                  <td class={isShort({ opening: left.opening }) ? 'late' : undefined}>
                    {turns(left.opening)}
                  </td>
                </>
              ) : (
                <td colSpan={3}>not counted</td>
              )}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
