// What happens in the sheets, told at most once a frame.
import type { Sheets } from "./sheets";

/** The selection moved, or something on a sheet is another than before. */
export type Change = "selection" | "content";

function changeOf(id: string): Change | undefined {
  if (id.startsWith("sheet.mutation.") || id.startsWith("formula.mutation.")) return "content";
  return id === "sheet.operation.set-selections" || id === "sheet.operation.set-worksheet-active" ? "selection" : undefined;
}

/** Answers how to stop. */
export function onChange({ commands }: Sheets, listener: (change: Change) => void): () => void {
  let frame = 0;
  let waiting: Change = "selection";
  const watching = commands.onCommandExecuted(({ id }) => {
    const change = changeOf(id);
    if (change === undefined) return;
    if (change === "content") waiting = change;
    if (frame !== 0) return;
    frame = requestAnimationFrame(() => {
      const change = waiting;
      frame = 0;
      waiting = "selection";
      listener(change);
    });
  });
  return () => {
    cancelAnimationFrame(frame);
    watching.dispose();
  };
}
