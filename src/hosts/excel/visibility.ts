// Whether anybody sees the pane. The page also runs without being seen: from the first calculation on, and after it was closed.

/** Until Excel tells, what the page knows of itself: a page that is not shown is hidden, or has no width. */
const looksSeen = (): boolean => document.visibilityState === 'visible' && window.innerWidth > 0;

/** Tells now and at each change; answers how to stop. */
export function onSeen(listener: (isSeen: boolean) => void): () => void {
  let isTold = false;
  const look = () => {
    if (!isTold) listener(looksSeen());
  };
  document.addEventListener('visibilitychange', look);
  window.addEventListener('resize', look);
  const stopLooking = () => {
    document.removeEventListener('visibilitychange', look);
    window.removeEventListener('resize', look);
  };
  const telling = Office.addin.onVisibilityModeChanged(({ visibilityMode }) => {
    // From the first event on it is Excel that knows.
    isTold = true;
    stopLooking();
    listener(visibilityMode === Office.VisibilityMode.taskpane);
  });
  telling.catch((thrown: unknown) => console.warn(thrown));
  look();
  return () => {
    isTold = true;
    stopLooking();
    telling.then(
      stop => stop(),
      () => {},
    );
  };
}
