export const canFillScreen = (): boolean => document.fullscreenEnabled === true;

/** Call from a tap. False when the browser will not. */
export const fillScreen = async (): Promise<boolean> => {
  if (!canFillScreen()) return false;
  try {
    await document.documentElement.requestFullscreen();
    return true;
  } catch {
    return false;
  }
};

export const leaveFullScreen = (): void => {
  if (document.fullscreenElement) document.exitFullscreen().catch(() => {});
};
