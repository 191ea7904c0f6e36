import { saveFile } from '../../../device/save-file.ts';
import type { DamagedSession } from '../../../device/stored-session.ts';

/** Sessions that cannot be opened: they stay as they are, and can be saved as they stand. */
export function DamagedSessions({ damaged }: { damaged: readonly DamagedSession[] }) {
  if (damaged.length === 0) return null;
  return (
    <section aria-labelledby="damaged">
      <h2 id="damaged">Damaged sessions</h2>
      <p class="text">
        These cannot be opened. They are left as they are; save one to a file if somebody is to look at it.
      </p>
      <ul class="records">
        {damaged.map((session) => (
          <li key={session.id}>
            <button
              class="plain"
              type="button"
              onClick={() =>
                saveFile(
                  `evendraw-damaged-${session.id}.json`,
                  `${JSON.stringify(session, null, 2)}\n`,
                  'application/json',
                )
              }
            >
              Save {session.id} as it stands
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
