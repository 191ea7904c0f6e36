import type { Saved } from './use-bench.ts';

/** Whether what is shown is also kept; the loud form stands above the keys. */
export function SavedLine({ saved }: { saved: Saved }) {
  const words = {
    saved: 'Saved on this device only.',
    saving: 'Saving.',
    'not-saved': 'Not saved.',
    memory: 'Kept in this page only.',
  }[saved];
  return (
    <p class="aside" role="status">
      {words}
    </p>
  );
}

export function NotSavedBanner({ saved, onSaveFile }: { saved: Saved; onSaveFile: (() => void) | null }) {
  if (saved === 'saved' || saved === 'saving') return null;
  return (
    <div class="errors" role="alert">
      <p>
        <b>{saved === 'memory' ? 'This browser keeps nothing.' : 'Not saved on this device.'}</b> The session
        goes on while this page stays open.
      </p>
      {onSaveFile && (
        <p>
          <button class="button" type="button" onClick={onSaveFile}>
            Save to a file
          </button>
        </p>
      )}
    </div>
  );
}
