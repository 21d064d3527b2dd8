/** Opens the browser's print dialog for the page on screen. Call it from a tap. */
export const printPage = (): void => globalThis.print();
