// One piece of work at a time, with how far it is and a way to stop it.
import { useMemo, useRef, useState } from 'preact/hooks';
import type { Words } from '../words/english';
import { troubleOf } from '../files/trouble';
import type { PaneState } from './pane-context';

export interface Progress {
  readonly what: string;
  readonly done?: number;
  readonly of?: number;
  /** Stops work that does not count its steps. */
  readonly stop?: () => void;
}

export interface TaskRunner {
  readonly progress: Progress | null;
  readonly work: PaneState['work'];
  readonly stop: () => void;
}

export function useTask(say: (text: string) => void, failed: Words['frame']['failed']): TaskRunner {
  const [progress, setProgress] = useState<Progress | null>(null);
  const isStopped = useRef(false);
  const work = useMemo(
    (): PaneState['work'] => async (what, task) => {
      isStopped.current = false;
      setProgress({ what });
      try {
        await task(
          (done, of) => {
            setProgress({ what, done, of });
            return !isStopped.current;
          },
          stop => setProgress({ what, stop }),
        );
      } catch (thrown) {
        say(failed(what, troubleOf(thrown)));
      } finally {
        setProgress(null);
      }
    },
    [say],
  );
  return {
    progress,
    work,
    stop: () => {
      isStopped.current = true;
      progress?.stop?.();
    },
  };
}
