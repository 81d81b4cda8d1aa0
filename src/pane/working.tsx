import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";

export interface Progress {
  readonly what: string;
  readonly done: number;
  readonly of: number;
}

/** Work that is over sooner needs no bar. */
const PATIENCE_MS = 500;

export function Working({ progress: { what, done, of }, onCancel }: { readonly progress: Progress; readonly onCancel: () => void }): JSX.Element | null {
  const [isLong, setIsLong] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setIsLong(true), PATIENCE_MS);
    return () => clearTimeout(timer);
  }, []);
  if (!isLong) return null;
  return (
    <p class="bw-progress">
      <label>{what} <progress value={done} max={of} /></label>
      <button type="button" onClick={onCancel}>Stop</button>
    </p>
  );
}
