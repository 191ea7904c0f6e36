/** Another window writes this session; here it can only be looked at. */
export function ElsewhereBanner({ onLeave }: { onLeave: () => void }) {
  return (
    <div class="errors" role="alert">
      <p>
        <b>This session is open in another window.</b> That one writes; this one only shows it, and takes over
        when the other is closed.
      </p>
      <p class="actions">
        <button class="button" type="button" onClick={onLeave}>
          All sessions
        </button>
      </p>
    </div>
  );
}
