import type { Lasting } from '../../../device/lasting-storage.ts';
import { knowsOtherWindows } from '../../../device/one-writer.ts';
import { isKept, type Saved } from '../../../device/session-keeper.ts';

const lastingWords: Record<Lasting, string> = {
  granted: 'The browser has promised not to clear it by itself.',
  refused: 'The browser may clear it when the device runs short of space: save it to a file at the end.',
  unknown: 'The browser does not say whether it may clear it: save it to a file at the end.',
};

/** Whether what is shown is also kept; the loud form stands above the keys. */
export function SavedLine({ saved, lasting = null }: { saved: Saved; lasting?: Lasting | null }) {
  const words =
    saved === 'saving' ? 'Saving.' : saved === 'saved' ? 'Saved on this device only.' : 'Not saved.';
  return (
    <>
      <p class="aside" role="status">
        {words}
      </p>
      {isKept(saved) && lasting && <p class="aside">{lastingWords[lasting]}</p>}
      {isKept(saved) && !knowsOtherWindows() && (
        <p class="aside">Keep this session in one window: this browser cannot tell a second one to wait.</p>
      )}
    </>
  );
}

const reasons: Record<Exclude<Saved, 'saved' | 'saving'>, string> = {
  missing: 'This browser keeps nothing.',
  refused: 'This browser refuses to keep anything.',
  newer:
    'A newer version of this site keeps its sessions here; they are left as they are. Load this page anew.',
  silent:
    'The storage of this browser gives no answer. What it holds comes as soon as it does; or load this page again.',
  full: 'Not saved: the space for this site is full.',
  failed: 'Not saved on this device.',
  cleared: 'What this site had saved was cleared.',
};

export function NotSavedBanner({
  saved,
  onSaveFile,
  onTryAgain,
}: {
  saved: Saved;
  onSaveFile: (() => void) | null;
  onTryAgain: () => void;
}) {
  if (saved === 'saved' || saved === 'saving') return null;
  return (
    <div class="errors" role="alert">
      <p>
        <b>{reasons[saved]}</b> The session goes on while this page stays open.
      </p>
      {onSaveFile && (
        <p class="actions">
          <button class="button" type="button" onClick={onSaveFile}>
            Save to a file
          </button>
          <button class="button" type="button" onClick={onTryAgain}>
            Try again
          </button>
        </p>
      )}
    </div>
  );
}
