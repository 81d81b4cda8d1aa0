import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { useWords } from './pane-context';
import type { Progress } from './use-task';

/** Work that is over sooner needs no bar. */
const PATIENCE_MS = 500;

/** How far a piece of work is; one that counts its steps can be stopped. */
export function ProgressBar({
  progress: { what, done, of, stop },
  onStop,
}: {
  readonly progress: Progress;
  readonly onStop: () => void;
}): JSX.Element | null {
  const W = useWords().frame;
  const [isLong, setIsLong] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setIsLong(true), PATIENCE_MS);
    return () => clearTimeout(timer);
  }, []);
  if (!isLong) return null;
  return (
    <div class="bw-progress">
      <label>
        {what} <progress value={done} max={of} />
      </label>
      {(of !== undefined || stop !== undefined) && (
        <button type="button" onClick={onStop}>
          {W.stop}
        </button>
      )}
    </div>
  );
}
