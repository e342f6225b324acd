/** Longest wait for a frame, milliseconds: a page that nobody sees has none (judgement: some six frames). */
const NO_FRAME_MS = 100;

/** Waits until what has been drawn so far is on the screen; what comes then is a task of its own. */
export const afterFrame = (): Promise<void> =>
  new Promise((go) => {
    requestAnimationFrame(() => setTimeout(go));
    setTimeout(go, NO_FRAME_MS);
  });
